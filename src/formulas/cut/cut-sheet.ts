// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the loop or list beside it, and a
// check would slow the search.
/**
 * A sheet as rows of taken stretches, and the search for the place farthest left that a turned piece can take.
 */
import type { Rows } from './cut-rows';
import type { RowBounds } from './row-bounds';

/** Pieces may touch; rounding must not turn that into an overlap. m */
const apart = 1e-9;

export interface Sheet {
  /** Stretches taken in each row, from left to right; of each list only the first numbers count. */
  readonly taken: readonly number[][];
  readonly counts: Int32Array;
  /** Where the last of them ends; 0 in an empty row. */
  readonly ends: Float64Array;
  /**
   * The least x that each turned piece could have on each row at the last search. A sheet only fills up, so the least
   * x never becomes less.
   */
  readonly bounds: Map<Rows, RowBounds>;
}

/** Steps spent so far: the work is counted, not timed, so that the same input gives the same plan everywhere. */
export interface StepBudget {
  spent: number;
}

export function emptySheet(rowCount: number): Sheet {
  return {
    taken: Array.from({ length: rowCount }, () => []),
    counts: new Int32Array(rowCount),
    ends: new Float64Array(rowCount),
    bounds: new Map(),
  };
}

/** Makes a sheet empty again, which is quicker than a new one. */
export function clearSheet({ counts, ends, bounds }: Sheet): void {
  counts.fill(0);
  ends.fill(0);
  bounds.clear();
}

/**
 * The least place at or after `from` for a piece with its bottom on a row, or some place over the limit.
 * Every row pushes the piece right until it is clear, repeated until no row pushes any more.
 */
export function leftmost(
  sheet: Sheet,
  rows: Rows,
  bottom: number,
  from: number,
  limit: number,
  effort: StepBudget,
): number {
  const { count, starts, stretches, lefts, stride } = rows;
  const { taken, counts, ends } = sheet;
  let x = from;
  let row = 0;
  let clear = 0;
  for (; clear < count && x <= limit; clear++) {
    // Most rows are clear of the piece from the last stretch on.
    if (ends[bottom + row]! - lefts[row]! > x) {
      const pushed = clearOf(taken[bottom + row]!, counts[bottom + row]!, stretches, starts[row]!, starts[row + 1]!, x);
      if (pushed > x) {
        effort.spent += clear;
        x = pushed;
        clear = -1;
      }
    }
    row += stride;
    if (row >= count) row -= count;
  }
  effort.spent += clear + 20;
  return x;
}

/** The least place at or after x at which no stretch of one row of the piece is on a taken one. */
function clearOf(
  taken: readonly number[],
  count: number,
  stretches: readonly number[],
  start: number,
  end: number,
  from: number,
): number {
  let x = from;
  for (let s = start; s < end; s += 2) {
    const left = stretches[s]!;
    const right = stretches[s + 1]!;
    for (let i = 0; i < count; i += 2) {
      if (taken[i + 1]! - left <= x) continue;
      if (taken[i]! - right >= x) break;
      x = taken[i + 1]! - left;
    }
  }
  return x;
}

/**
 * Occupies the stretches of a piece on a sheet. `grown` is the piece with its gap; row 0 of the piece lies on
 * `bottom`.
 */
export function occupy(sheet: Sheet, grown: Grown, x: number, bottom: number, effort: StepBudget): void {
  const { taken, counts, ends } = sheet;
  const { below, starts, stretches } = grown;
  effort.spent += 4 * starts.length;
  for (let i = 0; i < starts.length - 1; i++) {
    const row = bottom - below + i;
    const list = taken[row];
    if (list === undefined) continue;
    let count = counts[row]!;
    for (let s = starts[i]!; s < starts[i + 1]!; s += 2) {
      count = insert(list, count, x + stretches[s]!, x + stretches[s + 1]!);
    }
    counts[row] = count;
    ends[row] = list[count - 1]!;
  }
}

/** Puts a stretch into a list of stretches from left to right, merged with those that it touches; the new count. */
function insert(list: number[], count: number, left: number, right: number): number {
  let from = count;
  while (from > 0 && list[from - 1]! >= left) from -= 2;
  let to = from;
  let leftEnd = left;
  let rightEnd = right;
  while (to < count && list[to]! <= right) {
    leftEnd = Math.min(leftEnd, list[to]!);
    rightEnd = Math.max(rightEnd, list[to + 1]!);
    to += 2;
  }
  const more = from + 2 - to;
  if (more > 0) {
    if (list.length < count + 2) list.push(0, 0);
    for (let i = count - 1; i >= to; i--) list[i + 2] = list[i]!;
  } else if (more < 0) {
    for (let i = to; i < count; i++) list[i + more] = list[i]!;
  }
  list[from] = leftEnd;
  list[from + 1] = rightEnd;
  return count + more;
}

/** A turned piece with the gap all round it: the same stacks of stretches, beginning some rows below the piece. */
export interface Grown {
  readonly below: number;
  readonly starts: readonly number[];
  readonly stretches: readonly number[];
}

/** The lists that these are made in, before each is copied at its length: thousands are made and kept. */
const made = { starts: [0], stretches: [0], found: [0] };

/** Rows that are off the sheet wherever the piece lies are left out, because a gap may be far wider than the sheet. */
export function grownBy(
  rows: Rows,
  gap: number,
  rowHeight: number,
  sheetRows: number,
  budget: StepBudget,
  isRough = false,
): Grown {
  const below = gap > 0 ? Math.min(sheetRows, Math.ceil(gap / rowHeight)) : 0;
  const { starts, stretches, found } = made;
  let filled = 0;
  for (let i = 0; i < rows.count + 2 * below; i++) {
    let count = 0;
    for (let row = Math.max(0, i - 2 * below); row <= Math.min(rows.count - 1, i); row++) {
      // Any two points of two rows are at least this far apart across the sheet; of rough rows, the middles are.
      const rise = Math.max(0, Math.abs(row - (i - below)) - (isRough ? 0 : 1)) * rowHeight;
      const aside = Math.sqrt(Math.max(0, (gap - rise) * (gap + rise))) + apart;
      for (let s = rows.starts[row]!; s < rows.starts[row + 1]!; s += 2) {
        count = insert(found, count, rows.stretches[s]! - aside, rows.stretches[s + 1]! + aside);
        budget.spent += 4;
      }
    }
    for (let end = 0; end < count; end++) stretches[filled++] = found[end]!;
    starts[i + 1] = filled;
  }
  return { below, starts: starts.slice(0, rows.count + 2 * below + 1), stretches: stretches.slice(0, filled) };
}
