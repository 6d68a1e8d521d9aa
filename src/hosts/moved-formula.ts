import { tokenize } from '@borgar/fx';
import { type CellRange, splitSheet } from './address';
import { type CellMove, isWithin } from './moved-cells';
import { type LineMove, type Move, movedLines } from './moved-lines';
import { type Axis, type Corner, type Corners, cornersText, parseCorners } from './reference-corners';

/** The moves of a sheet, by the name that formulas have for it. */
export type MovesOf = (sheet: string) => readonly Move[];

/** The cells that have a formula in common, which is written for the first of them. */
export interface FormulaCells {
  readonly sheet: string;
  /** The cell that the formula was written for. */
  readonly writtenFor: CellRange;
  /** All cells that it was for. */
  readonly before: CellRange;
  /** The part of them whose first cell it is to be written for, and where this part is now. */
  readonly part: CellRange;
  readonly now: CellRange;
}

const start = { row: 'row', column: 'column' } as const;
const length = { row: 'rows', column: 'columns' } as const;

/** A formula as it must be once rows, columns and cells moved, on its own sheet or on those that it reads. */
export function movedFormula(formula: string, cells: FormulaCells, movesOf: MovesOf): string {
  const isTyped = formula.startsWith('=');
  const text = tokenize(isTyped ? formula : `=${formula}`)
    .map(({ type, value }) =>
      type === 'range' || type === 'range_beam' ? movedReference(value, cells, movesOf) : value,
    )
    .join('');
  return isTyped ? text : text.slice(1);
}

/** The same for a formula that stands for itself, such as a name's or a chart's: its references move as they are. */
export function movedReferences(formula: string, sheet: string, movesOf: MovesOf): string {
  const cell = { row: 0, column: 0, rows: 1, columns: 1 };
  return movedFormula(formula, { sheet, writtenFor: cell, before: cell, part: cell, now: cell }, movesOf);
}

function movedReference(reference: string, cells: FormulaCells, movesOf: MovesOf): string {
  const { sheet, rest } = splitSheet(reference);
  const place = reference.slice(0, reference.length - rest.length);
  const isOwn = sheet === undefined || sheet.toLowerCase() === cells.sheet.toLowerCase();
  const written = parseCorners(rest);
  // A sheet of another file may have the same name.
  if (written === undefined || sheet?.includes('[')) return reference;
  const before = besidePart(written, cells);
  let now: Corners | undefined = before;
  for (const run of runsOf(movesOf(sheet ?? cells.sheet))) {
    now = now && (isLines(run) ? movedByLines(now, cells, isOwn, run) : movedByCells(now, cells, isOwn, run));
  }
  if (now === undefined) return `${place}#REF!`;
  return now === before && isSamePlace(cells) ? reference : place + cornersText(now);
}

export type Run = readonly LineMove[] | CellMove;

export const isLines = (run: Run): run is readonly LineMove[] => Array.isArray(run);

/** Moves in order: lines that moved one after the other together, and each move of cells by itself. */
export function runsOf(moves: readonly Move[]): readonly Run[] {
  const runs: (LineMove[] | CellMove)[] = [];
  for (const move of moves) {
    const last = runs.at(-1);
    if (move.across === 'cells') runs.push(move);
    else if (Array.isArray(last)) last.push(move);
    else runs.push([move]);
  }
  return runs;
}

const isSamePlace = ({ writtenFor, part }: FormulaCells): boolean =>
  writtenFor.row === part.row && writtenFor.column === part.column;

/** A reference as it is written for the first cell of the part. */
function besidePart(corners: Corners, { writtenFor, part }: FormulaCells): Corners {
  const on = (across: Axis): Corners => {
    const by = part[start[across]] - writtenFor[start[across]];
    const list = corners[across];
    return list === undefined
      ? {}
      : { [across]: list.map((one) => ({ ...one, at: one.isFixed ? one.at : one.at + by })) };
  };
  return { ...on('column'), ...on('row') };
}

function movedByLines(
  corners: Corners,
  cells: FormulaCells,
  isOwn: boolean,
  moves: readonly LineMove[],
): Corners | undefined {
  const column = corners.column && movedCorners('column', corners.column, cells, isOwn, moves);
  const row = corners.row && movedCorners('row', corners.row, cells, isOwn, moves);
  if ((corners.column && !column) || (corners.row && !row)) return undefined;
  return { ...(column && { column }), ...(row && { row }) };
}

/** Whether a corner is one for each of several cells, which all see another line. */
const goesAlong = (across: Axis, { isFixed }: Corner, { before }: FormulaCells): boolean =>
  !isFixed && before[length[across]] > 1;

/** A reference follows the cells that it reads if all of them were cut and pasted; if its own cell was, it stays beside that. */
function movedByCells(corners: Corners, cells: FormulaCells, isOwn: boolean, move: CellMove): Corners {
  const { column, row } = corners;
  if (column === undefined || row === undefined) return corners;
  const alongIn = (across: Axis): boolean => (corners[across] ?? []).some((one) => goesAlong(across, one, cells));
  const ends = (list: readonly Corner[]): [number, number] => {
    const lines = list.map(({ at }) => at);
    return [Math.min(...lines), Math.max(...lines)];
  };
  const [top, bottom] = ends(row);
  const [left, right] = ends(column);
  const read = {
    row: top,
    column: left,
    rows: bottom - top + (alongIn('row') ? cells.part.rows : 1),
    columns: right - left + (alongIn('column') ? cells.part.columns : 1),
  };
  const reads = isWithin(read, move.from);
  const by = { row: move.row - move.from.row, column: move.column - move.from.column };
  const isMoved = isOwn && (cells.now.row !== cells.part.row || cells.now.column !== cells.part.column);
  if (!reads && !isMoved) return corners;
  const on = (across: Axis, list: readonly Corner[]): readonly Corner[] =>
    list.map((one) => (reads || goesAlong(across, one, cells) ? { ...one, at: one.at + by[across] } : one));
  return { column: on('column', column), row: on('row', row) };
}

/** The rows, or the columns, of a reference; undefined where none of them is left. */
function movedCorners(
  across: Axis,
  corners: readonly Corner[],
  cells: FormulaCells,
  isOwn: boolean,
  moves: readonly LineMove[],
): readonly Corner[] | undefined {
  const { part, now } = cells;
  const along = (corner: Corner): boolean => goesAlong(across, corner, cells);
  if (!corners.some(along)) return movedTogether(across, corners, moves);
  const all = corners.map((corner): Corner | undefined => {
    if (!along(corner)) return movedTogether(across, [corner], moves)?.[0];
    // Beside its own cell, and in another sheet the line where those of all the cells begin.
    if (isOwn) return { ...corner, at: corner.at + now[start[across]] - part[start[across]] };
    const lines = movedLines(across, corner.at, part[length[across]], moves);
    return lines && { ...corner, at: lines[0] };
  });
  return all.includes(undefined) ? undefined : (all as readonly Corner[]);
}

function movedTogether(
  across: Axis,
  corners: readonly Corner[],
  moves: readonly LineMove[],
): readonly Corner[] | undefined {
  const [first, last = first] = corners;
  if (first === undefined || last === undefined) return undefined;
  const isTurned = last.at < first.at;
  const low = Math.min(first.at, last.at);
  const lines = movedLines(across, low, Math.abs(last.at - first.at) + 1, moves);
  if (lines === undefined) return undefined;
  const ends = [lines[0], lines[0] + lines[1] - 1];
  return corners.map((corner, index) => ({ ...corner, at: ends[isTurned ? 1 - index : index] ?? lines[0] }));
}
