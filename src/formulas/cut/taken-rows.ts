// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the rows and steps of the sheet or by the
// lists, and a check would slow the search.
/**
 * What pieces take of each row of a sheet, and the place at which one more piece overlaps them least.
 *
 * Lengths are counted in small whole steps, and for each step of a row what is taken left of it is summed up, so that the
 * overlap of a stretch is the difference of two sums. Of several neighboring places at once a stretch overlaps at least
 * what all of them share; most are soon left out by that, as little overlap is asked for.
 */
import type { Rows } from './cut-rows';
import type { Grown } from './cut-sheet';

/** So many steps make up the length of the sheet that is used. */
const steps = 112;
/** So many sums a row: those at both of its ends, and one more, as a piece may seem a step longer by rounding. */
const stride = steps + 2;
/** So many neighboring places are looked at together. */
const together = 8;
/** Weights are whole numbers of this part, which are summed up far faster. */
const weightUnit = 64;
/** Limits are rounded up, but not for a rounding error. */
const tiny = 1e-6;
/** More than any overlap of pieces that are searched. */
const anyOverlap = 1e9;

/** The rows on which a piece is tried. */
export interface TriedRows {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

export interface LeastPlace {
  readonly row: number;
  readonly x: number;
  /** The lengths of overlap in all rows times the weights of the pieces overlapped, in m. */
  readonly overlap: number;
}

/** The sums between which each stretch of a piece lies that is at the lower left of the sheet. */
interface Stretches {
  readonly froms: Int32Array;
  readonly tos: Int32Array;
}

export class TakenRows {
  /** Sums looked at, as a measure of the time taken. */
  work = 0;
  private readonly rowCount: number;
  private readonly step: number;
  /** For each row, how the weight taken changes at each step; once summed up, what is taken left of it. */
  private readonly sums: Int32Array;
  private areSums = false;
  private readonly known = new Map<Rows, Stretches>();

  /** For the length of a sheet, or a shorter one. */
  constructor(rowCount: number, length: number) {
    this.rowCount = rowCount;
    this.step = length / steps;
    this.sums = new Int32Array(rowCount * stride);
  }

  clear(): void {
    this.sums.fill(0);
    this.areSums = false;
  }

  /**
   * Takes what a piece with its gap needs; row 0 of the piece lies on `bottom`. All is taken before the first place is
   * looked for, until it is cleared.
   */
  take({ below, starts, stretches }: Grown, bottom: number, x: number, weight: number): void {
    const { sums, step } = this;
    const whole = Math.round(weight * weightUnit);
    const lowest = bottom - below;
    for (let i = Math.max(0, -lowest); i + 1 < starts.length && lowest + i < this.rowCount; i++) {
      const row = (lowest + i) * stride;
      for (let s = starts[i]!; s < starts[i + 1]!; s += 2) {
        const left = Math.max(0, Math.round((x + stretches[s]!) / step));
        const right = Math.min(steps, Math.round((x + stretches[s + 1]!) / step));
        if (left >= right) continue;
        sums[row + left]! += whole;
        sums[row + right]! -= whole;
      }
    }
  }

  /** The place with the least overlap, of equal ones the first; undefined if none is below a limit. */
  leastPlace(rows: Rows, length: number, tried: TriedRows, limit: number): LeastPlace | undefined {
    const { sums, step } = this;
    const last = Math.floor((length - rows.length) / step);
    if (last < 0) return undefined;
    if (!this.areSums) this.sumUp();
    const { froms, tos } = this.stretchesOf(rows);
    const count = froms.length;
    let least = Math.min(anyOverlap, Math.ceil((limit / step) * weightUnit - tiny));
    let row = -1;
    let place = 0;
    let work = 0;
    const to = Math.min(tried.to, this.rowCount - rows.count);
    for (let at = Math.max(0, tried.from); at <= to; at += tried.step) {
      const first = at * stride;
      for (let x = 0; x <= last; x += together) {
        const end = Math.min(x + together - 1, last);
        let shared = 0;
        let k = 0;
        for (; k < count && shared < least; k++) {
          const overlap = sums[first + x + tos[k]!]! - sums[first + end + froms[k]!]!;
          if (overlap > 0) shared = (shared + overlap) | 0;
        }
        work += k;
        for (let here = x; here <= end && shared < least; here++) {
          let overlap = 0;
          for (k = 0; k < count && overlap < least; k++) {
            overlap = (overlap + sums[first + here + tos[k]!]! - sums[first + here + froms[k]!]!) | 0;
          }
          work += k;
          if (overlap >= least) continue;
          least = overlap;
          row = at;
          place = here;
        }
      }
      work += 10;
    }
    this.work += work;
    return row < 0 ? undefined : { row, x: place * step, overlap: (least / weightUnit) * step };
  }

  private sumUp(): void {
    const { sums, rowCount } = this;
    for (let row = 0, at = 0; row < rowCount; row++) {
      let weight = 0;
      let sum = 0;
      for (let i = 0; i < stride; i++, at++) {
        const change = sums[at]!;
        sums[at] = sum;
        weight = (weight + change) | 0;
        sum = (sum + weight) | 0;
      }
    }
    this.areSums = true;
    this.work += sums.length / 4;
  }

  /** In an order that soon comes near every row, from the middle one, which is likely a wide one. */
  private stretchesOf(rows: Rows): Stretches {
    const known = this.known.get(rows);
    if (known !== undefined) return known;
    const { count, starts, stretches } = rows;
    const froms: number[] = [];
    const tos: number[] = [];
    for (let i = 0, row = Math.floor(count / 2); i < count; i++, row = (row + rows.stride) % count) {
      for (let s = starts[row]!; s < starts[row + 1]!; s += 2) {
        froms.push(row * stride + Math.round(stretches[s]! / this.step));
        tos.push(row * stride + Math.round(stretches[s + 1]! / this.step));
      }
    }
    const found = { froms: Int32Array.from(froms), tos: Int32Array.from(tos) };
    this.known.set(rows, found);
    return found;
  }
}
