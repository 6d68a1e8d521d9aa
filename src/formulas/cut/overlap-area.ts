// biome-ignore-all lint/style/noNonNullAssertion: every index below is bounded by the rows of the two pieces, and a check
// would slow the search.
/**
 * How much of its area a piece shares with another one and the gap round that, measured on rows.
 */
import type { Rows } from './cut-rows';
import type { Grown } from './cut-sheet';

/** A piece on a sheet: its bottom row, and the left of its box. */
export interface OnRows {
  readonly rows: Rows;
  readonly row: number;
  readonly x: number;
}

/** Pieces that touch, and whose gaps are by rounding a little larger, do not overlap. m */
const touching = 2e-9;

/** The sum over the rows that both have, m of length; times the height of a row it is an area. */
export function sharedLength(one: OnRows, other: OnRows, grown: Grown): number {
  const { starts, stretches } = one.rows;
  const lowest = other.row - grown.below;
  const to = Math.min(one.row + one.rows.count, lowest + grown.starts.length - 1);
  const aside = other.x - one.x;
  let sum = 0;
  for (let row = Math.max(one.row, lowest); row < to; row++) {
    const i = row - one.row;
    const j = row - lowest;
    for (let s = starts[i]!; s < starts[i + 1]!; s += 2) {
      for (let t = grown.starts[j]!; t < grown.starts[j + 1]!; t += 2) {
        const left = Math.max(stretches[s]!, aside + grown.stretches[t]!);
        const right = Math.min(stretches[s + 1]!, aside + grown.stretches[t + 1]!);
        if (right - left > touching) sum += right - left;
      }
    }
  }
  return sum;
}
