// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the rows of the sheet or by the lists, and
// a check would slow the search.
/**
 * What pieces take of each row of a sheet, and the place at which one more piece overlaps them least.
 *
 * Lengths are counted in small whole steps. Where a stretch slides along a taken one, their overlap grows evenly, stays
 * the same and falls evenly, so each pair changes the rise of the overlap at four places of the piece; one sum of these
 * changes along the row gives the overlap at every place.
 */
import type { Rows } from './cut-rows';
import type { Grown } from './cut-sheet';

/** So many steps make up the length of the sheet that is used. */
const steps = 160;
/** No piece has more stretches than this in many rows; further ones are left out, as the overlap only guides a search. */
const stretchesAPiece = 4;
/** An overlap has to be less by so much, so that rounding never counts. */
const tiny = 1e-9;

/** The rows on which a piece is tried. */
export interface TriedRows {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

export interface LeastPlace {
  readonly row: number;
  readonly x: number;
  /** The lengths of overlap in all rows times the weights of the pieces overlapped, in steps. */
  readonly overlap: number;
}

/** Stretches in steps, by row as in rows of lengths. */
interface InSteps {
  readonly starts: Int32Array;
  readonly ends: Int32Array;
}

export class TakenRows {
  /** Places looked at and pairs of stretches met, as a measure of the time taken. */
  work = 0;
  private readonly rowCount: number;
  private readonly step: number;
  private readonly gapSteps: number;
  private readonly most: number;
  private readonly counts: Int32Array;
  private readonly lefts: Int32Array;
  private readonly rights: Int32Array;
  private readonly weights: Float64Array;
  private readonly changes: Float64Array;
  private readonly known = new Map<InRows, InSteps>();

  /** For so many pieces, within a length of sheet. */
  constructor(rowCount: number, length: number, gap: number, pieces: number) {
    this.rowCount = rowCount;
    this.step = length / steps;
    this.gapSteps = Math.ceil(gap / this.step) + 2;
    this.most = stretchesAPiece * pieces;
    this.counts = new Int32Array(rowCount);
    this.lefts = new Int32Array(rowCount * this.most);
    this.rights = new Int32Array(rowCount * this.most);
    this.weights = new Float64Array(rowCount * this.most);
    this.changes = new Float64Array(2 * (steps + this.gapSteps) + 8);
  }

  clear(): void {
    this.counts.fill(0);
  }

  /** Takes what a piece with its gap needs; row 0 of the piece lies on `bottom`. */
  take(grown: Grown, bottom: number, x: number, weight: number): void {
    const { starts, ends } = this.inSteps(grown);
    const at = Math.round(x / this.step);
    const lowest = bottom - grown.below;
    for (let i = Math.max(0, -lowest); i + 1 < starts.length && lowest + i < this.rowCount; i++) {
      const row = lowest + i;
      for (let s = starts[i]!; s < starts[i + 1]! && this.counts[row]! < this.most; s += 2) {
        const place = row * this.most + this.counts[row]!;
        this.lefts[place] = at + ends[s]!;
        this.rights[place] = at + ends[s + 1]!;
        this.weights[place] = weight;
        this.counts[row]!++;
      }
    }
  }

  /** The place with the least overlap, of equal ones the first; undefined if none is below a limit. */
  leastPlace(rows: Rows, length: number, tried: TriedRows, limit: number): LeastPlace | undefined {
    const last = Math.floor((length - rows.length) / this.step);
    if (last < 0) return undefined;
    const { starts, ends } = this.inSteps(rows);
    // A stretch that only begins to overlap lies so many steps left of the sheet at most.
    const before = Math.ceil(rows.length / this.step) + this.gapSteps;
    let found: LeastPlace | undefined;
    let least = limit - tiny;
    const to = Math.min(tried.to, this.rowCount - rows.count);
    for (let row = Math.max(0, tried.from); row <= to; row += tried.step) {
      const pairs = this.addChanges(starts, ends, row, before);
      let place = -1;
      let rise = 0;
      let overlap = 0;
      for (let i = 0; i < before; i++) {
        overlap += rise;
        rise += this.changes[i]!;
      }
      for (let i = 0; i <= last; i++) {
        overlap += rise;
        rise += this.changes[before + i]!;
        if (overlap >= least) continue;
        least = overlap;
        place = i;
      }
      if (place >= 0) found = { row, x: place * this.step, overlap: least };
      this.work += pairs + (before + last) / 4 + 5;
    }
    return found;
  }

  /** The changes of rise for a piece on a row, from so many steps before the sheet; the number of pairs of stretches. */
  private addChanges(starts: Int32Array, ends: Int32Array, bottom: number, before: number): number {
    const { changes, lefts, rights, weights, counts, most } = this;
    let pairs = 0;
    changes.fill(0, 0, before + steps + this.gapSteps + 3);
    for (let i = 0; i + 1 < starts.length; i++) {
      const first = (bottom + i) * most;
      const end = first + counts[bottom + i]!;
      for (let s = starts[i]!; s < starts[i + 1]!; s += 2) {
        const from = ends[s]! - before;
        const to = ends[s + 1]! - before;
        for (let taken = first; taken < end; taken++) {
          const left = lefts[taken]!;
          const right = rights[taken]!;
          const weight = weights[taken]!;
          changes[left - to]! += weight;
          changes[left - from]! -= weight;
          changes[right - to]! -= weight;
          changes[right - from]! += weight;
        }
        pairs += end - first;
      }
    }
    return pairs;
  }

  private inSteps(rows: InRows): InSteps {
    let found = this.known.get(rows);
    if (found === undefined) {
      found = {
        starts: Int32Array.from(rows.starts),
        ends: Int32Array.from(rows.stretches, (x) => Math.round(x / this.step)),
      };
      this.known.set(rows, found);
    }
    return found;
  }
}

type InRows = Pick<Rows, 'starts' | 'stretches'>;
