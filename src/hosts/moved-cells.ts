import { type CellRange, overlaps } from './address';

/** Cells that were cut and pasted elsewhere on their sheet, over what was there. */
export interface CellMove {
  readonly across: 'cells';
  readonly from: CellRange;
  /** Where the first of them is now. */
  readonly row: number;
  readonly column: number;
}

/** A range as far from its place as the cells of a move went. */
export const shifted = (range: CellRange, { from, row, column }: CellMove): CellRange => ({
  ...range,
  row: range.row + row - from.row,
  column: range.column + column - from.column,
});

export const isWithin = (range: CellRange, other: CellRange): boolean =>
  range.row >= other.row &&
  range.column >= other.column &&
  range.row + range.rows <= other.row + other.rows &&
  range.column + range.columns <= other.column + other.columns;

/** The cells that two ranges have in common. */
export function common(one: CellRange, other: CellRange): CellRange | undefined {
  if (!overlaps(one, other)) return undefined;
  const row = Math.max(one.row, other.row);
  const column = Math.max(one.column, other.column);
  return {
    row,
    column,
    rows: Math.min(one.row + one.rows, other.row + other.rows) - row,
    columns: Math.min(one.column + one.columns, other.column + other.columns) - column,
  };
}

/** The cells of a range that are not in a hole, as ranges: those above it, left and right of it, and below it. */
function without(range: CellRange, hole: CellRange): readonly CellRange[] {
  const shared = common(range, hole);
  if (shared === undefined) return [range];
  const { row, column, rows, columns } = range;
  const [below, right] = [shared.row + shared.rows, shared.column + shared.columns];
  const beside = { row: shared.row, rows: shared.rows };
  return [
    { row, column, rows: shared.row - row, columns },
    { ...beside, column, columns: shared.column - column },
    { ...beside, column: right, columns: column + columns - right },
    { row: below, column, rows: row + rows - below, columns },
  ].filter((part) => part.rows > 0 && part.columns > 0);
}

/** Which cells of some blocks stay when cells are cut and pasted, and which go, by their places before. */
export function partsOf(
  blocks: readonly CellRange[],
  move: CellMove,
): { readonly stay: readonly CellRange[]; readonly go: readonly CellRange[] } {
  const over = shifted(move.from, move);
  const stay = blocks.flatMap((block) => without(block, move.from)).flatMap((block) => without(block, over));
  return { stay, go: blocks.flatMap((block) => common(block, move.from) ?? []) };
}
