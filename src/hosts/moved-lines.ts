import type { CellRange } from './address';

/** Rows or columns that came, or with a negative count went. */
export interface LineMove {
  readonly across: 'row' | 'column';
  readonly first: number;
  readonly count: number;
}

/** Notes another move; what takes back the last one leaves neither. Deleted lines are the same again only if undone. */
export function withMove(moves: readonly LineMove[], move: LineMove, isUndo: boolean): readonly LineMove[] {
  const last = moves.at(-1);
  const isBack =
    last !== undefined && last.across === move.across && last.first === move.first && last.count === -move.count;
  return isBack && (isUndo || move.count < 0) ? moves.slice(0, -1) : [...moves, move];
}

/** Where a range is after rows and columns came and went; undefined where nothing is left of it. */
export function movedRange(range: CellRange, moves: readonly LineMove[]): CellRange | undefined {
  let { row, column, rows, columns } = range;
  for (const { across, first, count } of moves) {
    if (across === 'row') [row, rows] = moved(row, rows, first, count);
    else [column, columns] = moved(column, columns, first, count);
    if (rows === 0 || columns === 0) return undefined;
  }
  return { row, column, rows, columns };
}

function moved(start: number, length: number, first: number, count: number): [start: number, length: number] {
  const end = start + length;
  if (count > 0) {
    if (first <= start) return [start + count, length];
    return [start, first < end ? length + count : length];
  }
  const after = (at: number): number => (at <= first ? at : Math.max(first, at + count));
  return [after(start), after(end) - after(start)];
}
