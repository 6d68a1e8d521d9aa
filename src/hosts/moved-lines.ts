import type { CellRange } from './address';
import type { CellMove } from './moved-cells';

/** Rows or columns that came, or with a negative count went; with `to`, they moved to before the line that had this number. */
export interface LineMove {
  readonly across: 'row' | 'column';
  readonly first: number;
  readonly count: number;
  readonly to?: number;
}

export type Move = LineMove | CellMove;

export const isLineMove = (move: Move): move is LineMove => move.across !== 'cells';

/** As many as a sheet of an .xlsx file has. */
const most = { row: 1_048_576, column: 16_384 } as const;

/** Whether the second move undoes the first one. */
function undoes(move: Move, last: Move): boolean {
  if (move.across === 'cells' || last.across === 'cells')
    return move.across === last.across && isBackFrom(move as CellMove, last as CellMove);
  if (last.across !== move.across) return false;
  if (last.to === undefined || move.to === undefined)
    return last.to === move.to && last.first === move.first && last.count === -move.count;
  const wentDown = last.to > last.first;
  const [isAt, cameFrom] = wentDown ? [last.to - last.count, last.first] : [last.to, last.first + last.count];
  return move.count === last.count && move.first === isAt && move.to === cameFrom;
}

const isBackFrom = (move: CellMove, last: CellMove): boolean =>
  move.row === last.from.row &&
  move.column === last.from.column &&
  move.from.row === last.row &&
  move.from.column === last.column &&
  move.from.rows === last.from.rows &&
  move.from.columns === last.from.columns;

/**
 * Adds a move; one that undoes the last one leaves neither. Deleted lines, and what cells were pasted over, are the same
 * again only if undone.
 */
export function withMove(moves: readonly Move[], move: Move, isUndo: boolean): readonly Move[] {
  const last = moves.at(-1);
  const isBack = last !== undefined && undoes(move, last);
  const isWhole = isUndo || (move.across !== 'cells' && (move.count < 0 || move.to !== undefined));
  return isBack && isWhole ? moves.slice(0, -1) : [...moves, move];
}

/** Where a range is after rows and columns came and went; undefined where nothing is left of it. */
export function movedRange(range: CellRange, moves: readonly Move[]): CellRange | undefined {
  const down = movedLines('row', range.row, range.rows, moves);
  const right = movedLines('column', range.column, range.columns, moves);
  if (down === undefined || right === undefined) return undefined;
  return { row: down[0], column: right[0], rows: down[1], columns: right[1] };
}

/** Where adjacent rows, or columns, are after moves; undefined where none is left. */
export function movedLines(
  across: LineMove['across'],
  start: number,
  length: number,
  moves: readonly Move[],
): readonly [start: number, length: number] | undefined {
  let [at, left] = [start, length];
  for (const move of moves) {
    if (move.across !== across) continue;
    [at, left] = moved(at, left, move);
    // What is pushed over the edge of the sheet is gone too.
    left = Math.min(left, most[across] - at);
    if (left <= 0) return undefined;
  }
  return [at, left];
}

function moved(start: number, length: number, { first, count, to }: LineMove): [start: number, length: number] {
  const end = start + length;
  if (to !== undefined) return exchanged(start, end, first, count, to);
  if (count > 0) {
    if (first <= start) return [start + count, length];
    return [start, first < end ? length + count : length];
  }
  const after = (at: number): number => (at <= first ? at : Math.max(first, at + count));
  return [after(start), after(end) - after(start)];
}

/**
 * A range whose own lines change places has them all as before. Of one that is torn apart, those that stay, or are only
 * passed by, count: what is moved out of it is no longer in it, be it from its middle or its end.
 */
function exchanged(start: number, end: number, first: number, count: number, to: number): [number, number] {
  const isMoved = (line: number): boolean => line >= first && line < first + count;
  const after = (line: number): number => {
    if (isMoved(line)) return line + (to > first ? to - count : to) - first;
    if (line >= first + count && line < to) return line - count;
    return line >= to && line < first ? line + count : line;
  };
  if (isMoved(start) && isMoved(end - 1)) return [after(start), end - start];
  if (first >= start && first + count <= end && to >= start && to <= end) return [start, end - start];
  const from = after(isMoved(start) ? first + count : start);
  return [from, after(isMoved(end - 1) ? first - 1 : end - 1) + 1 - from];
}
