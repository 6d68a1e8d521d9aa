// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the loop or list beside it, and a
// check would slow the search.
/**
 * A turned piece as a stack of rows, each with the stretches of x that the piece needs somewhere in that row.
 *
 * Two pieces whose stretches do not overlap in any row do not overlap; no length is lost along x, and less than two
 * rows across. The stretches are exact: the outline is cut into lines and arcs that run one way, and between two
 * neighboring
 * heights at which any of them begins or ends, each stretch is bounded by one of them on the left and one on the right.
 */

import { type Run, runsOf, xAt } from './cut-runs';
import type { Pose } from './laid-piece';
import type { OutlinePart } from './piece-outline';

export interface Rows {
  /** Turn from the piece's own frame, rad counter-clockwise. */
  readonly turn: number;
  readonly length: number;
  readonly width: number;
  /** From the lower-left corner of the box to the origin of the piece. */
  readonly originX: number;
  readonly originY: number;
  /** From the left of the box to the middle of the area. */
  readonly middleX: number;
  readonly count: number;
  /** Row i has the stretches from `starts[i]` up to `starts[i + 1]`, each a pair of numbers in `stretches`. */
  readonly starts: readonly number[];
  readonly stretches: readonly number[];
  /** The left end of each row's first stretch. */
  readonly lefts: readonly number[];
  /** A stride that visits every row and soon comes near each of them. */
  readonly stride: number;
}

/** Where the origin of a piece lies whose box has its lower-left corner at a point. */
export function poseAt({ turn, originX, originY }: Rows, x: number, y: number): Pose {
  return { x: x + originX, y: y + originY, turn };
}

/** Rough rows take away so many of a row's height from the piece before it is counted in whole rows. */
const roughLess = 0.7;

/** The lists that rows are made in, before each is copied at its length: a search makes and keeps thousands of rows. */
const made = { starts: [0], stretches: [0], lefts: [0], ends: [0] };

/**
 * Rough rows hold what the piece needs at their middles alone: they are fewer and no piece seems larger than it is, but two
 * pieces on them may overlap by up to a row.
 */
export function pieceRows(outline: readonly OutlinePart[], turn: number, rowHeight: number, isRough = false): Rows {
  const { starts, stretches, lefts, ends } = made;
  const runs = runsOf(outline, turn);
  let left = Infinity;
  let right = -Infinity;
  for (const { leftmost, rightmost } of runs) {
    left = Math.min(left, leftmost);
    right = Math.max(right, rightmost);
  }
  const heights = levels(runs);
  const low = heights[0]!;
  const width = heights.at(-1)! - low;
  const slabs = slabsBetween(heights, runs);
  const count = Math.max(1, Math.ceil((width / rowHeight - (isRough ? roughLess : 0)) * (1 - 1e-12)));
  const start = isRough ? low + (width - count * rowHeight) / 2 : low;
  let lowest = 0;
  let filled = 0;
  let weight = 0;
  let moment = 0;
  for (let row = 0; row < count; row++) {
    const bottom = isRough ? start + (row + 0.5) * rowHeight : low + row * rowHeight;
    const top = isRough ? bottom : row === count - 1 ? low + width : bottom + rowHeight;
    while (lowest < slabs.length - 1 && slabs[lowest]!.to <= bottom) lowest++;
    let found = 0;
    for (let i = lowest; i < slabs.length && (i === lowest || slabs[i]!.from < top); i++) {
      found = addStretches(ends, found, slabs[i]!, bottom, top);
    }
    found = merged(ends, found);
    lefts[row] = ends[0]! - left;
    for (let i = 0; i < found; i += 2) {
      const from = ends[i]! - left;
      const to = ends[i + 1]! - left;
      stretches[filled++] = from;
      stretches[filled++] = to;
      weight += to - from;
      moment += ((to - from) * (to + from)) / 2;
    }
    starts[row + 1] = filled;
  }
  return {
    ...{ turn, width, count, length: right - left, originX: -left, originY: -start, middleX: moment / weight },
    // Plain lists, because a typed array of this size takes longer to allocate than to fill.
    ...{ starts: starts.slice(0, count + 1), stretches: stretches.slice(0, filled), lefts: lefts.slice(0, count) },
    stride: strideOf(count),
  };
}

function strideOf(count: number): number {
  let stride = Math.max(1, Math.round(count * 0.381966));
  while (commonDivisor(stride, count) > 1) stride++;
  return stride;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** The last of sorted heights that is not above a level; the first of them is below every level. */
function lastUpTo(heights: readonly number[], level: number): number {
  let at = heights.length - 1;
  while (at > 0 && (heights[at] ?? level) > level) at--;
  return heights[at] ?? level;
}

/** The heights at which runs begin and end; heights that differ only by rounding become one, and runs are set to it. */
function levels(runs: readonly Run[]): readonly number[] {
  const ends: number[] = [];
  for (const { from, to } of runs) {
    insertInOrder(ends, from, itself);
    insertInOrder(ends, to, itself);
  }
  const least = 1e-12 * (ends.at(-1)! - ends[0]!);
  const heights = ends.filter((y, i) => i === 0 || y - ends[i - 1]! > least);
  for (const run of runs) {
    run.from = lastUpTo(heights, run.from);
    run.to = lastUpTo(heights, run.to);
  }
  return heights;
}

/** Puts one more into a list after those whose place is not greater: the lists are short, and sorting takes longer. */
function insertInOrder<T>(sorted: T[], one: T, placeOf: (one: T) => number): void {
  const place = placeOf(one);
  let at = sorted.length;
  for (; at > 0 && placeOf(sorted[at - 1]!) > place; at--) sorted[at] = sorted[at - 1]!;
  sorted[at] = one;
}

function itself(height: number): number {
  return height;
}

/** Between two neighboring levels the same runs bound the piece, in pairs from left to right. */
interface Slab {
  readonly from: number;
  readonly to: number;
  readonly runs: readonly Run[];
}

function slabsBetween(heights: readonly number[], runs: readonly Run[]): readonly Slab[] {
  return heights.slice(1).map((to, i) => {
    const from = heights[i]!;
    const middle = (from + to) / 2;
    const across: Run[] = [];
    const xOf = (run: Run) => xAt(run, middle);
    for (const run of runs) if (run.from < middle && run.to > middle) insertInOrder(across, run, xOf);
    return { from, to, runs: across };
  });
}

/** Adds the stretches of a slab to a list of so many numbers; the new count. */
function addStretches(found: number[], count: number, slab: Slab, bottom: number, top: number): number {
  const from = Math.max(bottom, slab.from);
  const to = Math.min(top, slab.to);
  let at = count;
  for (let i = 0; i + 1 < slab.runs.length; i += 2) {
    const left = slab.runs[i]!;
    const right = slab.runs[i + 1]!;
    found[at++] = Math.min(xAt(left, from), xAt(left, to));
    found[at++] = Math.max(xAt(right, from), xAt(right, to));
  }
  return at;
}

/**
 * Merges the overlapping ones of so many numbers' stretches, from left to right, in the list itself: they are few or nearly
 * in order. The new count.
 */
export function merged(pairs: number[], count: number): number {
  if (count <= 2) return count;
  for (let i = 2; i < count; i += 2) {
    const left = pairs[i]!;
    const right = pairs[i + 1]!;
    let at = i;
    for (; at > 0 && pairs[at - 2]! > left; at -= 2) {
      pairs[at] = pairs[at - 2]!;
      pairs[at + 1] = pairs[at - 1]!;
    }
    pairs[at] = left;
    pairs[at + 1] = right;
  }
  let last = 0;
  for (let i = 2; i < count; i += 2) {
    if (pairs[i]! <= pairs[last + 1]!) {
      pairs[last + 1] = Math.max(pairs[last + 1]!, pairs[i + 1]!);
    } else {
      last += 2;
      pairs[last] = pairs[i]!;
      pairs[last + 1] = pairs[i + 1]!;
    }
  }
  return last + 2;
}
