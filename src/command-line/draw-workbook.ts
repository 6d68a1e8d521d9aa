import type { CellValue } from '../catalogue/argument';
import { cellName, contains, parseRange, splitSheet } from '../hosts/address';
import type { SheetData, WorkbookData } from '../hosts/workbook-model';
import { DrawMistake } from './draw-request';
import { readInput } from './read-file';

/** The workbook cannot be read; the command line is not the cause. */
export class UnreadableDrawn extends DrawMistake {}

export async function openDrawn(path: string): Promise<WorkbookData> {
  const { readWorkbook } = await import('../workbooks/read-xlsx');
  let bytes: Uint8Array;
  try {
    bytes = readInput(path);
  } catch (thrown) {
    throw new DrawMistake(thrown instanceof Error ? thrown.message : String(thrown));
  }
  return readWorkbook(bytes).catch((thrown: unknown) => {
    throw new UnreadableDrawn(`${path}: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
  });
}

/** The values of a range as they were last calculated; an error among them is passed on with its cell. */
export function cellsOf(workbook: WorkbookData, address: string): readonly (readonly CellValue[])[] {
  const { sheet: name, rest } = splitSheet(address);
  const range = parseRange(rest);
  if (range === undefined) throw new DrawMistake(`${address} is not a range; write it as 'Patterns'!B5:K7`);
  const sheet = sheetOf(workbook, name);
  if (range.rows > 1000 || range.columns > 100) throw new DrawMistake(`${address}: a drawing takes up to 1000 rows`);
  const block: CellValue[][] = Array.from({ length: range.rows }, () => new Array(range.columns).fill(''));
  for (const { row, column, value } of sheet.cells) {
    if (value === undefined || !contains(range, row, column)) continue;
    if (typeof value === 'object') {
      throw new DrawMistake(
        `${sheet.name}!${cellName(row, column)} holds ${value.error.code}; correct that cell first`,
      );
    }
    const line = block[row - range.row];
    if (line !== undefined) line[column - range.column] = value;
  }
  return block;
}

function sheetOf({ sheets, activeSheet }: WorkbookData, name: string | undefined): SheetData {
  const wanted = name ?? activeSheet ?? sheets[0]?.name ?? '';
  const sheet = sheets.find((one) => one.name.toLowerCase() === wanted.toLowerCase());
  if (sheet === undefined) {
    throw new DrawMistake(`there is no sheet ${wanted}; the workbook has ${sheets.map((one) => one.name).join(', ')}`);
  }
  return sheet;
}

/** What the workbook's `SiltUnits` cell says; undefined where it has none. */
export function unitsOf(workbook: WorkbookData): string | undefined {
  const named = workbook.names?.find(({ name }) => name.toLowerCase() === 'siltunits');
  const value = named === undefined ? undefined : cellsOf(workbook, named.refersTo)[0]?.[0];
  return typeof value === 'string' && value !== '' ? value : undefined;
}
