import type { FunctionLibrary } from '../../functions/function-library';
import { cellName } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellData, CellResult, CellScalar, SheetData, WorkbookData } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { openBook } from '../cell-formula/book';
import { findingsOf } from '../convert-typed/findings';
import { findUses } from '../convert-typed/uses';
import { unitsName } from '../workbook-units';

/** A ready-made workbook whose typed numbers were converted to another profile. */
export interface ConvertedWorkbook {
  readonly workbook: WorkbookData;
  /** Cells that a person must check, such as `Drums!C5`. */
  readonly byHand: readonly string[];
}

/** Converts the typed numbers of a ready-made workbook to a profile with exceptions, such as `US, flow L/min`. */
export async function inProfile(
  workbook: WorkbookData,
  { from, to }: { readonly from: Profile; readonly to: Profile },
  functionLibrary: FunctionLibrary,
): Promise<ConvertedWorkbook> {
  const book = openBook(workbook.sheets.map(blockOf), workbook.names ?? []);
  const uses = await findUses(book, { catalogue: functionLibrary.catalogue, unitsName });
  const { plain, apart, byHand } = findingsOf(book, uses, from, to);
  const changes = new Map<string, CellScalar>();
  const left = byHand.map(({ spot }) => placeOf(spot.sheet, spot.row, spot.column));
  for (const { spot, choices } of [...plain, ...apart]) {
    const [choice, ...others] = choices;
    if (choice !== undefined && others.length === 0)
      changes.set(placeOf(spot.sheet, spot.row, spot.column), choice.content);
    else left.push(placeOf(spot.sheet, spot.row, spot.column));
  }
  const sheets = workbook.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => withContent(cell, changes.get(placeOf(sheet.name, cell.row, cell.column)))),
  }));
  return { workbook: { ...workbook, sheets }, byHand: [...new Set(left)] };
}

function placeOf(sheet: string, row: number, column: number): string {
  return `${sheet}!${cellName(row, column)}`;
}

function withContent(cell: CellData, content: CellScalar | undefined): CellData {
  if (content === undefined) return cell;
  return cell.formula === undefined ? { ...cell, value: content } : { ...cell, formula: String(content) };
}

function blockOf({ name, cells }: SheetData): Block {
  const rows = Math.max(0, ...cells.map(({ row }) => row)) + 1;
  const columns = Math.max(0, ...cells.map(({ column }) => column)) + 1;
  const values: CellResult[][] = Array.from({ length: rows }, () => new Array(columns).fill(''));
  const formulas: (string | undefined)[][] = Array.from({ length: rows }, () => new Array(columns).fill(undefined));
  for (const { row, column, value, formula } of cells) {
    const [valueRow, formulaRow] = [values[row], formulas[row]];
    if (valueRow === undefined || formulaRow === undefined) continue;
    valueRow[column] = value ?? '';
    formulaRow[column] = formula;
  }
  return { sheet: name, range: { row: 0, column: 0, rows, columns }, values, formulas, spills: [] };
}
