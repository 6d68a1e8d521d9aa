import type { IRange } from '@univerjs/core';
import { type LineMove, movedLines } from '../moved-lines';

/**
 * The range that a formula reads, after whole rows or columns were moved; undefined where it stays. The build puts this in
 * the place of the spreadsheet's own rule, which loses or adds a line where one is moved to beside an end of the range,
 * or lines from both sides of an end are moved together (`ranges-of-formulas.cjs`). `to` begins where the lines are put
 * down, as counted before they are taken up.
 */
export function rangeAfterMove<R extends IRange>(
  range: R,
  from: IRange,
  to: IRange,
  across: LineMove['across'],
): R | undefined {
  const [start, end] = across === 'row' ? (['startRow', 'endRow'] as const) : (['startColumn', 'endColumn'] as const);
  // A range of whole columns has no rows, and the other way around.
  if (Number.isNaN(range[start]) || Number.isNaN(range[end])) return undefined;
  const move: LineMove = { across, first: from[start], count: from[end] - from[start] + 1, to: to[start] };
  const [at, length] = movedLines(across, range[start], range[end] - range[start] + 1, [move]) ?? [];
  if (at === undefined || length === undefined) return undefined;
  const last = at + length - 1;
  return at === range[start] && last === range[end] ? undefined : { ...range, [start]: at, [end]: last };
}
