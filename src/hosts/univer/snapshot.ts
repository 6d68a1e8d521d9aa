import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IColumnData,
  type IObjectArrayPrimitiveType,
  type IObjectMatrixPrimitiveType,
  type IRange,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from '@univerjs/core';
import { type CellRange, contains, parseRange } from '../address';
import type { CellData, CellResult, SheetData, WorkbookData } from '../workbook-model';
import { toEngineStyle } from './snapshot-style';
import { expectSpill } from './spill-repairs';
import { messageKey } from './value-objects';

/** The engine keeps defined names in this resource of a snapshot. */
export const namesResource = 'SHEET_DEFINED_NAME_PLUGIN';

/** Room for the longest spill a function gives, below the last typed row. */
const spareRows = 10_200;
const spareColumns = 30;

/** Excel counts column widths in characters of its standard font, 7 pixels wide, with 5 pixels of padding. */
export const toPixels = (characters: number): number => Math.round(characters * 7 + 5);
export const toCharacters = (pixels: number): number => Math.round(((pixels - 5) / 7) * 100) / 100;
const pixelsAPoint = 96 / 72;

export function toEngineRange(range: CellRange): IRange {
  return {
    startRow: range.row,
    startColumn: range.column,
    endRow: range.row + range.rows - 1,
    endColumn: range.column + range.columns - 1,
  };
}

export function fromEngineRange({ startRow, startColumn, endRow, endColumn }: IRange): CellRange {
  return { row: startRow, column: startColumn, rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 };
}

/** Types are always given, since the engine would otherwise read text such as `3/4` as a date. */
export function toEngineValue(value: CellResult): ICellData {
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === 'string') return { v: value, t: CellValueType.STRING };
  return { v: value.error.code, t: CellValueType.STRING, custom: { [messageKey]: value.error.message } };
}

function toEngineCell(cell: CellData, style: string | IStyleData | undefined, hasValue: boolean): ICellData {
  return {
    ...(hasValue && cell.value !== undefined ? toEngineValue(cell.value) : {}),
    ...(cell.formula === undefined ? {} : { f: cell.formula }),
    ...(style === undefined ? {} : { s: style }),
  };
}

/** A cell's style: an id in the workbook's table, or, in a sheet added later, the style itself. */
type StyleOf = (style: CellData['style']) => string | IStyleData | undefined;

const inlineStyle: StyleOf = (style) => (style === undefined ? undefined : toEngineStyle(style));

function styleTable(styles: Record<string, IStyleData>): StyleOf {
  const ids = new Map<string, string>();
  return (style) => {
    if (style === undefined) return undefined;
    const engineStyle = toEngineStyle(style);
    const key = JSON.stringify(engineStyle);
    if (key === '{}') return undefined;
    let id = ids.get(key);
    if (id === undefined) {
      id = `s${ids.size + 1}`;
      ids.set(key, id);
      styles[id] = engineStyle;
    }
    return id;
  };
}

/** One sheet for an open workbook. */
export function toEngineSheet(sheet: SheetData, id: string, styleOf: StyleOf = inlineStyle): Partial<IWorksheetData> {
  const spills = sheet.cells.flatMap((cell) => {
    const range = cell.spill === undefined ? undefined : parseRange(cell.spill);
    return range === undefined ? [] : [range];
  });
  const cellData: IObjectMatrixPrimitiveType<ICellData> = {};
  let lastRow = 0;
  let lastColumn = 0;
  for (const cell of sheet.cells) {
    // The last results of a spill would block the spill itself.
    const spilled = cell.formula === undefined && spills.some((range) => contains(range, cell.row, cell.column));
    const row = cellData[cell.row] ?? {};
    cellData[cell.row] = row;
    row[cell.column] = toEngineCell(cell, styleOf(cell.style), !spilled);
    lastRow = Math.max(lastRow, cell.row);
    lastColumn = Math.max(lastColumn, cell.column);
  }
  const columnData: IObjectArrayPrimitiveType<Partial<IColumnData>> = {};
  for (const [column, width] of Object.entries(sheet.columnWidths ?? {}))
    columnData[Number(column)] = { w: toPixels(width) };
  for (const column of sheet.hiddenColumns ?? [])
    columnData[column] = { ...columnData[column], hd: BooleanNumber.TRUE };
  const rowData: IObjectArrayPrimitiveType<Partial<IRowData>> = {};
  for (const [row, height] of Object.entries(sheet.rowHeights ?? {})) {
    rowData[Number(row)] = { h: Math.round(height * pixelsAPoint), ia: BooleanNumber.FALSE };
  }
  for (const row of sheet.hiddenRows ?? []) rowData[row] = { ...rowData[row], hd: BooleanNumber.TRUE };
  const frozenRows = sheet.frozenRows ?? 0;
  const frozenColumns = sheet.frozenColumns ?? 0;
  return {
    id,
    name: sheet.name,
    cellData,
    columnData,
    rowData,
    rowCount: lastRow + spareRows,
    columnCount: lastColumn + spareColumns,
    mergeData: (sheet.merges ?? []).flatMap((text) => {
      const range = parseRange(text);
      return range === undefined ? [] : [toEngineRange(range)];
    }),
    freeze: {
      xSplit: frozenColumns,
      ySplit: frozenRows,
      startRow: frozenRows > 0 ? frozenRows : -1,
      startColumn: frozenColumns > 0 ? frozenColumns : -1,
    },
    ...(sheet.tabColor === undefined ? {} : { tabColor: `#${sheet.tabColor}` }),
    hidden: sheet.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    showGridlines: sheet.hideGridlines ? BooleanNumber.FALSE : BooleanNumber.TRUE,
  };
}

/** The id of a sheet that a workbook is opened with. */
export const sheetId = (index: number): string => `sheet-${index + 1}`;

/** A workbook as the embedded spreadsheet opens it. */
export function toSnapshot(workbook: WorkbookData, id: string): IWorkbookData {
  const styles: Record<string, IStyleData> = {};
  const styleOf = styleTable(styles);
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  workbook.sheets.forEach((sheet, index) => {
    const own = sheetId(index);
    sheets[own] = toEngineSheet(sheet, own, styleOf);
    for (const { spill } of sheet.cells) {
      const range = spill === undefined ? undefined : parseRange(spill);
      if (range !== undefined) expectSpill(id, own, toEngineRange(range));
    }
  });
  const names = Object.fromEntries(
    (workbook.names ?? []).map((name, index) => [
      `name-${index + 1}`,
      { id: `name-${index + 1}`, name: name.name, formulaOrRefString: name.refersTo, comment: name.comment ?? '' },
    ]),
  );
  return {
    id,
    name: workbook.title ?? '',
    appVersion: '0.25.1',
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: Object.keys(sheets),
    sheets,
    resources: [{ name: namesResource, data: JSON.stringify(names) }],
  };
}
