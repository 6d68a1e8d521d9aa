import { tokenize } from '@borgar/fx';
import { type CellRange, columnName, columnNumber, parseRange, rangeName, splitSheet } from './address';
import { type LineMove, movedLines, movedRange } from './moved-lines';

/** The moves of a sheet, by the name that formulas have for it. */
export type MovesOf = (sheet: string) => readonly LineMove[];

/** The cells that have a formula in common, which is written for the first of them. */
interface FormulaCells {
  readonly sheet: string;
  /** The cell that the formula was written for. */
  readonly writtenFor: CellRange;
  /** All cells that it was for. */
  readonly before: CellRange;
  /** The part of them whose first cell it is to be written for, and where this part is now. */
  readonly part: CellRange;
  readonly now: CellRange;
}

interface Corner {
  readonly at: number;
  /** Written with `$`. */
  readonly isFixed: boolean;
}

type Axis = LineMove['across'];

const start = { row: 'row', column: 'column' } as const;
const length = { row: 'rows', column: 'columns' } as const;

/** A formula as it must be once rows and columns moved, on its own sheet or on those that it reads. */
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
  const moves = movesOf(sheet ?? cells.sheet);
  // A sheet of another file may have the same name.
  if (moves.length === 0 || sheet?.includes('[')) return reference;
  const cell = /^(\$?)([A-Z]{1,3})(\$?)(\d+)(?::(\$?)([A-Z]{1,3})(\$?)(\d+))?$/i.exec(rest);
  const columns = /^(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})$/i.exec(rest);
  const rows = /^(\$?)(\d+):(\$?)(\d+)$/.exec(rest);
  const row = (fixed: string | undefined, number: string | undefined): Corner => ({
    at: Number(number) - 1,
    isFixed: fixed === '$',
  });
  const column = (fixed: string | undefined, name: string | undefined): Corner => ({
    at: columnNumber(name ?? ''),
    isFixed: fixed === '$',
  });
  const moved = (across: Axis, corners: readonly Corner[]): readonly string[] | undefined =>
    movedCorners(across, corners, cells, isOwn, moves)?.map(
      ({ at, isFixed }) => (isFixed ? '$' : '') + (across === 'row' ? String(at + 1) : columnName(at)),
    );
  const parts = (lists: readonly (readonly string[] | undefined)[]): string => {
    const [one, other] = lists;
    if (one === undefined || (lists.length > 1 && other === undefined)) return `${place}#REF!`;
    return place + one.map((text, index) => text + (other?.[index] ?? '')).join(':');
  };
  if (cell !== null) {
    const [, column1, name1, row1, number1, column2, name2, row2, number2] = cell;
    const isRange = name2 !== undefined;
    return parts([
      moved('column', [column(column1, name1), ...(isRange ? [column(column2, name2)] : [])]),
      moved('row', [row(row1, number1), ...(isRange ? [row(row2, number2)] : [])]),
    ]);
  }
  if (columns !== null)
    return parts([moved('column', [column(columns[1], columns[2]), column(columns[3], columns[4])])]);
  if (rows !== null) return parts([moved('row', [row(rows[1], rows[2]), row(rows[3], rows[4])])]);
  return reference;
}

/** The rows, or the columns, of a reference; undefined where none of them is left. */
function movedCorners(
  across: Axis,
  written: readonly Corner[],
  { writtenFor, before, part, now }: FormulaCells,
  isOwn: boolean,
  moves: readonly LineMove[],
): readonly Corner[] | undefined {
  const shift = part[start[across]] - writtenFor[start[across]];
  const corners = written.map(({ at, isFixed }) => ({ at: isFixed ? at : at + shift, isFixed }));
  const several = before[length[across]];
  const goesAlong = (corner: Corner): boolean => !corner.isFixed && several > 1;
  if (!corners.some(goesAlong)) return movedTogether(across, corners, moves);
  const all = corners.map((corner): Corner | undefined => {
    if (!goesAlong(corner)) return movedTogether(across, [corner], moves)?.[0];
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

/** A rule for cells, such as a list to choose from or a color: their blocks with spaces between, and formulas for the first cell. */
export interface CellRule {
  readonly range: string;
  readonly formulas: readonly string[];
}

/** A rule where its cells are now; undefined where none of them is left. */
export function movedRule({ range, formulas }: CellRule, sheet: string, movesOf: MovesOf): CellRule | undefined {
  const blocks = range.trim().split(/\s+/).map(parseRange);
  const [writtenFor] = blocks;
  if (writtenFor === undefined || blocks.includes(undefined)) return { range, formulas };
  const moves = movesOf(sheet);
  const left = (blocks as readonly CellRange[]).flatMap((part) => {
    const now = movedRange(part, moves);
    return now === undefined ? [] : [{ part, now }];
  });
  const [first] = left;
  if (first === undefined) return undefined;
  const cells = { sheet, writtenFor, before: around(blocks as readonly CellRange[]), ...first };
  return {
    range: left.map(({ now }) => rangeName(now)).join(' '),
    formulas: formulas.map((formula) => movedFormula(formula, cells, movesOf)),
  };
}

/** The smallest range that holds all others. */
function around(blocks: readonly CellRange[]): CellRange {
  const row = Math.min(...blocks.map((block) => block.row));
  const column = Math.min(...blocks.map((block) => block.column));
  return {
    row,
    column,
    rows: Math.max(...blocks.map((block) => block.row + block.rows)) - row,
    columns: Math.max(...blocks.map((block) => block.column + block.columns)) - column,
  };
}
