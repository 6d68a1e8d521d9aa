import { type CellRange, cellName, contains } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellResult, DefinedName } from '../../hosts/workbook-model';

/** One cell of a workbook. */
export interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export function isSameSpot(one: Spot, other: Spot): boolean {
  return one.sheet === other.sheet && one.row === other.row && one.column === other.column;
}

/** A cell as messages name it. */
export function placeText({ sheet, row, column }: Spot): string {
  return `${sheet}!${cellName(row, column)}`;
}

export interface BookCell extends Spot {
  readonly value: CellResult;
  readonly formula: string | undefined;
  /** The cell whose formula fills this one, where this cell only shows part of its result. */
  readonly source: BookCell | undefined;
}

/** The used cells and the names of a workbook, found by place. */
export interface Book {
  readonly cell: (spot: Spot) => BookCell | undefined;
  /** The used cells of a range; a bound that is null is the edge of the sheet. */
  readonly cellsIn: (sheet: string, range: OpenRange) => readonly BookCell[];
  readonly formulas: readonly BookCell[];
  readonly typed: readonly BookCell[];
  /** The formula whose result covers a cell, blank places of the result too. */
  readonly fillerOf: (spot: Spot) => BookCell | undefined;
  /** A cell with a formula and the cells that it fills. */
  readonly filledBy: (home: BookCell) => readonly BookCell[];
  /** What a name refers to, without `=`; undefined if it is not defined. */
  readonly named: (name: string) => string | undefined;
}

export interface OpenRange {
  readonly top: number | null;
  readonly left: number | null;
  readonly bottom: number | null;
  readonly right: number | null;
}

interface Mutable extends Spot {
  readonly value: CellResult;
  readonly formula: string | undefined;
  source: BookCell | undefined;
}

export function openBook(blocks: readonly Block[], names: readonly DefinedName[]): Book {
  const sheets = new Map<string, SheetCells>();
  for (const block of blocks) sheets.set(block.sheet.toLowerCase(), new SheetCells(block));
  const cells = [...sheets.values()].flatMap((sheet) => sheet.cells);
  const filled = new Map<BookCell, BookCell[]>();
  for (const cell of cells) {
    if (cell.source === undefined) continue;
    const others = filled.get(cell.source) ?? [];
    others.push(cell);
    filled.set(cell.source, others);
  }
  const byName = new Map(names.map((one) => [one.name.toLowerCase(), one.refersTo.replace(/^=/, '')]));
  return {
    cell: ({ sheet, row, column }) => sheets.get(sheet.toLowerCase())?.at(row, column),
    cellsIn: (sheet, range) => sheets.get(sheet.toLowerCase())?.within(range) ?? [],
    formulas: cells.filter((cell) => cell.formula !== undefined),
    typed: cells.filter((cell) => cell.formula === undefined && cell.source === undefined),
    fillerOf: ({ sheet, row, column }) => sheets.get(sheet.toLowerCase())?.fillerOf(row, column),
    filledBy: (home) => [home, ...(filled.get(home) ?? [])],
    named: (name) => byName.get(name.toLowerCase()),
  };
}

class SheetCells {
  readonly cells: readonly BookCell[];
  private readonly rows: readonly (readonly (Mutable | undefined)[])[];
  private readonly range: CellRange;
  private readonly spills: readonly CellRange[];

  constructor({ sheet, range, values, formulas, spills }: Block) {
    this.range = range;
    this.spills = spills;
    this.rows = values.map((line, down) =>
      line.map((value, across) => {
        const formula = formulas[down]?.[across];
        if (value === '' && formula === undefined) return undefined;
        return { sheet, row: range.row + down, column: range.column + across, value, formula, source: undefined };
      }),
    );
    for (const spill of spills) {
      const source = this.at(spill.row, spill.column);
      if (source === undefined) continue;
      for (const cell of this.within(closed(spill)) as Mutable[]) if (cell !== source) cell.source = source;
    }
    this.cells = this.rows.flat().filter((cell) => cell !== undefined);
  }

  fillerOf(row: number, column: number): BookCell | undefined {
    const spill = this.spills.find((one) => contains(one, row, column));
    return spill === undefined ? undefined : this.at(spill.row, spill.column);
  }

  at(row: number, column: number): BookCell | undefined {
    return this.rows[row - this.range.row]?.[column - this.range.column];
  }

  within({ top, left, bottom, right }: OpenRange): readonly BookCell[] {
    const { row, column, rows, columns } = this.range;
    const found: BookCell[] = [];
    for (let at = Math.max(top ?? 0, row); at <= Math.min(bottom ?? Infinity, row + rows - 1); at++) {
      for (
        let across = Math.max(left ?? 0, column);
        across <= Math.min(right ?? Infinity, column + columns - 1);
        across++
      ) {
        const cell = this.at(at, across);
        if (cell !== undefined) found.push(cell);
      }
    }
    return found;
  }
}

function closed({ row, column, rows, columns }: CellRange): OpenRange {
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}
