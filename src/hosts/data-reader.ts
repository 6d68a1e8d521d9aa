import { type CellRange, parseRange } from './address';
import { type Block, HostError, type Place, type SheetHost } from './sheet-host';
import type { CellData, SheetData, WorkbookData } from './workbook-model';

/** A sheet's cells by their place, and what its formulas fill. */
interface IndexedSheet {
  readonly name: string;
  readonly cells: ReadonlyMap<string, CellData>;
  readonly spills: readonly CellRange[];
  readonly used: CellRange | undefined;
}

function indexed({ name, cells }: SheetData): IndexedSheet {
  const held = cells.filter(({ formula, value }) => formula !== undefined || value !== undefined);
  let used: CellRange | undefined;
  for (const { row, column } of held) {
    const top = Math.min(used?.row ?? row, row);
    const left = Math.min(used?.column ?? column, column);
    const rows = Math.max(used === undefined ? row : used.row + used.rows - 1, row) - top + 1;
    const columns = Math.max(used === undefined ? column : used.column + used.columns - 1, column) - left + 1;
    used = { row: top, column: left, rows, columns };
  }
  return {
    name,
    used,
    cells: new Map(held.map((cell) => [`${cell.row},${cell.column}`, cell])),
    spills: held.flatMap(({ spill }) => {
      const range = spill === undefined ? undefined : parseRange(spill);
      return range === undefined ? [] : [range];
    }),
  };
}

function blockOf({ name, cells, spills }: IndexedSheet, range: CellRange): Block {
  const each = <T>(pick: (cell: CellData | undefined) => T): T[][] =>
    Array.from({ length: range.rows }, (_, down) =>
      Array.from({ length: range.columns }, (__, across) =>
        pick(cells.get(`${range.row + down},${range.column + across}`)),
      ),
    );
  return {
    sheet: name,
    range,
    values: each((cell) => cell?.value ?? ''),
    formulas: each((cell) => cell?.formula),
    spills,
  };
}

/** Reads a workbook that no spreadsheet has open, with the results that stand in it. */
export function dataReader({ sheets, names = [] }: WorkbookData): Pick<SheetHost, 'read' | 'readUsed' | 'names'> {
  const byName = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), indexed(sheet)]));
  return {
    names: async () => names,
    read: async ({ sheet: name, range }: Place) => {
      const sheet = byName.get(name.toLowerCase());
      if (sheet === undefined) throw new HostError('missing', `There is no sheet called ${name}.`);
      return blockOf(sheet, range);
    },
    readUsed: async () =>
      [...byName.values()].flatMap((sheet) => (sheet.used === undefined ? [] : [blockOf(sheet, sheet.used)])),
  };
}
