import { type Cell as FileCell, type Worksheet as FileSheet, Workbook as FileWorkbook } from '@cj-tech-master/excelts';
import { installChartSupport } from '@cj-tech-master/excelts/chart';
import type { CellData, CellResult, SheetData, WorkbookData } from '../hosts/workbook-model';
import { readSheetParts } from './read-sheet-parts';
import { chartsInFile, type SheetCharts } from './reading/chart-parts';
import { checkFile } from './reading/file-limits';
import { namesInFile } from './reading/names-in-file';
import { typedFormula } from './typed-formula';
import { withUsualNames } from './usual-names';
import { serial } from './xlsx-date';
import { readStyle } from './xlsx-style';

/** The file is not a workbook that can be read; the message says what to do. */
export class UnreadableWorkbook extends Error {
  constructor(message: string, cause?: unknown) {
    super(message, { cause });
    this.name = 'UnreadableWorkbook';
  }
}

function readValue(value: unknown): CellResult | undefined {
  if (value === null || value === undefined) return undefined;
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  if (value instanceof Date) return serial(value);
  const shape = value as {
    error?: unknown;
    richText?: readonly { text: string }[];
    text?: unknown;
    checkbox?: unknown;
  };
  if (typeof shape.error === 'string') return { error: { code: shape.error, message: '' } };
  if (Array.isArray(shape.richText)) return shape.richText.map((run) => run.text).join('');
  if (typeof shape.checkbox === 'boolean') return shape.checkbox;
  return shape.text === undefined ? undefined : String(shape.text);
}

function noteText(cell: FileCell): string | undefined {
  const note = cell.note;
  if (note === undefined) return undefined;
  const text = typeof note === 'string' ? note : (note.texts ?? []).map((run) => run.text).join('');
  return text === '' ? undefined : text;
}

function readCell(cell: FileCell): CellData | undefined {
  const { model } = cell;
  if (model.master !== undefined) return undefined;
  const formula = cell.formula;
  // The file library says nothing where a formula has given empty text.
  const value = formula === undefined ? readValue(cell.value) : (readValue(cell.result) ?? '');
  const style = readStyle(model.style);
  const note = noteText(cell);
  if (formula === undefined && value === undefined && style === undefined && note === undefined) return undefined;
  const spill = model.shareType === 'array' && model.ref?.includes(':') ? model.ref : undefined;
  return {
    row: cell.row - 1,
    column: cell.col - 1,
    ...(formula === undefined ? {} : { formula: typedFormula(formula) }),
    ...(value === undefined ? {} : { value }),
    ...(spill === undefined ? {} : { spill }),
    ...(style === undefined ? {} : { style }),
    ...(note === undefined ? {} : { note }),
  };
}

/** Some files hide all columns that they do not use, to the last one; saving leaves those further away as they are. */
const mostHidden = 500;

function readSheet(sheet: FileSheet, charts: SheetCharts | undefined): SheetData {
  const cells: CellData[] = [];
  const rowHeights: Record<number, number> = {};
  const hiddenRows: number[] = [];
  sheet.eachRow({ includeEmpty: true }, (row, number) => {
    // A height that the program fitted to the text itself is left to each program, and follows the text.
    if (row.height !== undefined && row.customHeight === true) rowHeights[number - 1] = row.height;
    if (row.hidden) hiddenRows.push(number - 1);
    row.eachCell({ includeEmpty: true }, (cell) => {
      const read = readCell(cell);
      if (read !== undefined) cells.push(read);
    });
  });
  const columnWidths: Record<number, number> = {};
  (sheet.columns ?? []).forEach((column, index) => {
    if (column.width !== undefined) columnWidths[index] = column.width;
  });
  const hiddenColumns = (sheet.columns ?? [])
    .slice(0, mostHidden)
    .flatMap(({ hidden }, index) => (hidden ? [index] : []));
  const view = sheet.views?.[0];
  const frozen = view?.state === 'frozen' ? view : undefined;
  const tabColor = sheet.properties.tabColor?.argb?.slice(-6);
  const merges = sheet.model.mergeCells ?? [];
  return {
    name: sheet.name,
    cells,
    columnWidths,
    rowHeights,
    ...(hiddenRows.length > 0 ? { hiddenRows } : {}),
    ...(hiddenColumns.length > 0 ? { hiddenColumns } : {}),
    ...(merges.length > 0 ? { merges } : {}),
    ...readSheetParts(sheet, charts),
    ...(frozen?.ySplit ? { frozenRows: frozen.ySplit } : {}),
    ...(frozen?.xSplit ? { frozenColumns: frozen.xSplit } : {}),
    ...(tabColor === undefined ? {} : { tabColor }),
    ...(sheet.state === 'visible' ? {} : { hidden: true }),
    ...(view?.showGridLines === false ? { hideGridlines: true } : {}),
  };
}

/** Reads an .xlsx file: values, formulas as typed, last results, styles, widths, merges, names, validation and notes. */
export async function readWorkbook(bytes: Uint8Array): Promise<WorkbookData> {
  checkFile(bytes);
  // Without this a file that holds charts cannot be read at all.
  installChartSupport();
  const file = new FileWorkbook();
  try {
    await file.xlsx.load(withUsualNames(bytes));
  } catch (thrown) {
    throw new UnreadableWorkbook(
      'this is not a readable .xlsx workbook; open it in a spreadsheet and save it as .xlsx',
      thrown,
    );
  }
  if (file.worksheets.length === 0) throw new UnreadableWorkbook('the workbook has no sheets');
  const names = namesInFile(bytes);
  const charts = chartsInFile(bytes);
  const active = file.worksheets[file.views?.[0]?.activeTab ?? 0]?.name;
  return {
    sheets: file.worksheets.map((sheet) => readSheet(sheet, charts.get(sheet.name))),
    ...(names.length > 0 ? { names } : {}),
    ...(active === undefined ? {} : { activeSheet: active }),
    ...(file.title ? { title: file.title } : {}),
  };
}
