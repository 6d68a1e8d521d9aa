import { BooleanNumber, type IRange, type IWorkbookData, type IWorksheetData, type Nullable } from '@univerjs/core';
import type { FWorkbook } from '@univerjs/sheets/facade';
import { type CellRange, overlaps, parseRange, rangeName } from '../address';
import type { Move } from '../moved-lines';
import { keptParts, nameInParts } from '../moved-parts';
import type { CellData, DefinedName, SheetData, WorkbookData } from '../workbook-model';
import type { CellReader } from './cell-reader';
import type { Notes } from './notes';
import { fromEngineRange, toCharacters, toPixels } from './snapshot';
import { fromEngineStyle, toEngineStyle } from './snapshot-style';

interface Open {
  readonly facade: FWorkbook;
  readonly reader: CellReader;
  readonly opened: WorkbookData;
  /** The data from which sheets were made, by their id in the spreadsheet. */
  readonly sources: ReadonlyMap<string, SheetData>;
  readonly notes: Notes;
  readonly moves: ReadonlyMap<string, readonly Move[]>;
}

function records<T>(table: { readonly [key: number]: T } | undefined): [number, T][] {
  return Object.entries((table ?? {}) as Record<string, T>).map(([key, value]) => [Number(key), value]);
}

function readCells(
  open: Open,
  snapshot: IWorkbookData,
  sheet: Partial<IWorksheetData>,
  notes: ReadonlyMap<string, string>,
): CellData[] {
  const worksheet = open.facade.getWorkbook().getSheetBySheetId(sheet.id ?? '');
  if (!worksheet) return [];
  const spills: CellRange[] = [];
  const cells = new Map<string, CellData>();
  const add = (row: number, column: number): void => {
    const raw = worksheet.getCellMatrix().getValue(row, column);
    const { value, formula, spill } = open.reader.read(worksheet, row, column);
    const styleOf = raw?.s;
    const style = fromEngineStyle(typeof styleOf === 'string' ? snapshot.styles[styleOf] : styleOf);
    const note = notes.get(`${row},${column}`);
    const range = spill === undefined ? undefined : parseRange(spill);
    if (range !== undefined) spills.push(range);
    if (value === '' && formula === undefined && style === undefined && note === undefined) return;
    cells.set(`${row},${column}`, {
      row,
      column,
      ...(formula === undefined ? {} : { formula }),
      ...(value === '' && formula === undefined ? {} : { value }),
      ...(spill === undefined ? {} : { spill }),
      ...(style === undefined ? {} : { style }),
      ...(note === undefined ? {} : { note }),
    });
  };
  for (const [row, line] of records(sheet.cellData)) for (const [column] of records(line)) add(row, column);
  for (const range of [...spills]) {
    for (let row = range.row; row < range.row + range.rows; row += 1) {
      for (let column = range.column; column < range.column + range.columns; column += 1) {
        if (!cells.has(`${row},${column}`)) add(row, column);
      }
    }
  }
  for (const [key, note] of notes) {
    const [row, column] = key.split(',').map(Number) as [number, number];
    if (!cells.has(key)) cells.set(key, { row, column, note });
  }
  return [...cells.values()].sort((one, other) => one.row - other.row || one.column - other.column);
}

/**
 * The merged cells, without those that lie on others: the spreadsheet leaves some so when rows of a sheet are deleted
 * that is not in front, and no program opens a file that holds them.
 */
function apart(merges: readonly IRange[]): readonly string[] {
  const all = merges.map(fromEngineRange);
  return all.filter((one, i) => !all.slice(0, i).some((other) => overlaps(one, other))).map(rangeName);
}

function readSheet(open: Open, snapshot: IWorkbookData, sheet: Partial<IWorksheetData>): SheetData {
  const before = open.sources.get(sheet.id ?? '');
  const notes = new Map(open.notes.of(sheet.id ?? '').map(({ row, column, note }) => [`${row},${column}`, note]));
  const widths = records(sheet.columnData).flatMap(([column, data]): [number, number][] =>
    data?.w ? [[column, toCharacters(data.w)]] : [],
  );
  const heights = records(sheet.rowData).flatMap(([row, data]): [number, number][] =>
    data?.h && data.ia === BooleanNumber.FALSE ? [[row, inPoints(data.h)]] : [],
  );
  const hidden = (lines: Parameters<typeof records<{ readonly hd?: BooleanNumber }>>[0]): number[] =>
    records(lines).flatMap(([line, data]) => (data?.hd === BooleanNumber.TRUE ? [line] : []));
  const [hiddenRows, hiddenColumns] = [hidden(sheet.rowData), hidden(sheet.columnData)];
  const merges = apart(sheet.mergeData ?? []);
  const kept = Object.fromEntries(
    keptParts.flatMap((part) => (before?.[part] === undefined ? [] : [[part, before[part]] as const])),
  );
  const tabColor = sheet.tabColor?.replace('#', '').toUpperCase();
  const moves = open.moves.get(sheet.id ?? '') ?? [];
  return {
    name: sheet.name ?? 'Sheet',
    ...originOf(open, before, sheet.name),
    cells: readCells(open, snapshot, sheet, notes),
    columnWidths: Object.fromEntries(widths),
    rowHeights: Object.fromEntries(heights),
    ...(hiddenRows.length > 0 ? { hiddenRows } : {}),
    ...(hiddenColumns.length > 0 ? { hiddenColumns } : {}),
    ...(merges.length > 0 ? { merges } : {}),
    ...(sheet.freeze?.ySplit ? { frozenRows: sheet.freeze.ySplit } : {}),
    ...(sheet.freeze?.xSplit ? { frozenColumns: sheet.freeze.xSplit } : {}),
    ...(tabColor ? { tabColor } : {}),
    ...(sheet.hidden === BooleanNumber.TRUE ? { hidden: true } : {}),
    ...(sheet.showGridlines === BooleanNumber.FALSE ? { hideGridlines: true } : {}),
    ...kept,
    ...(moves.length > 0 ? { moves } : {}),
  };
}

/** What the sheet was called in the file; or, if it was added later, when it was added. */
function originOf(open: Open, before: SheetData | undefined, now: string | undefined): Partial<SheetData> {
  if (before === undefined) return {};
  const { sheets } = open.opened;
  // The sheets of a draft know their names in the file; those without one were added.
  const isDraft = sheets.some(({ openedAs }) => openedAs !== undefined);
  const isOpened = isDraft ? before.openedAs !== undefined : sheets.includes(before);
  const name = nameInParts(before);
  if (isOpened) return { openedAs: name };
  return name === now ? {} : { addedAs: name };
}

const pixelsAPoint = 96 / 72;
const inPoints = (pixels: number): number => Math.round((pixels / pixelsAPoint) * 100) / 100;

/** A workbook as the spreadsheet returns it if nothing was changed. */
export function asOpened(workbook: WorkbookData): WorkbookData {
  const numbers = (sizes: Readonly<Record<number, number>> | undefined, change: (size: number) => number) =>
    Object.fromEntries(Object.entries(sizes ?? {}).map(([at, size]) => [at, change(size)]));
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      columnWidths: numbers(sheet.columnWidths, (width) => toCharacters(toPixels(width))),
      rowHeights: numbers(sheet.rowHeights, (height) => inPoints(Math.round(height * pixelsAPoint))),
      cells: sheet.cells.map(({ style, ...cell }) => {
        const kept = style === undefined ? undefined : fromEngineStyle(toEngineStyle(style));
        return kept === undefined ? cell : { ...cell, style: kept };
      }),
    })),
  };
}

/** The names of a workbook, as cell formulas use them. */
export function readNames(facade: FWorkbook): DefinedName[] {
  return facade.getDefinedNames().map((name) => {
    const comment = name.getComment();
    return {
      name: name.getName(),
      refersTo: name.getFormulaOrRefString().replace(/^=/, ''),
      ...(comment ? { comment } : {}),
    };
  });
}

/** An open workbook as plain data, to be written to a file. */
export function fromSnapshot(open: Open): WorkbookData {
  const snapshot = open.facade.save();
  const names = readNames(open.facade);
  const { title, subject } = open.opened;
  return {
    sheets: snapshot.sheetOrder.flatMap((id: string) => {
      const sheet: Nullable<Partial<IWorksheetData>> = snapshot.sheets[id];
      return sheet ? [readSheet(open, snapshot, sheet)] : [];
    }),
    ...(names.length > 0 ? { names } : {}),
    activeSheet: open.facade.getActiveSheet().getSheetName(),
    ...(title === undefined ? {} : { title }),
    ...(subject === undefined ? {} : { subject }),
  };
}
