import { parseRange, splitSheet } from '../../hosts/address';
import type { MovesOf } from '../../hosts/moved-formula';
import { withMovedParts } from '../../hosts/moved-parts';
import type { CellStyle, SheetData, WorkbookData } from '../../hosts/workbook-model';
import { key, writeCells } from '../patch-sheet';
import { scanSheet } from '../sheet-scan';
import { storedFormula } from '../stored-formula';
import { writeWorkbook } from '../write-xlsx';
import { arrayFlag } from './array-flag-part';
import { editSheetParts } from './edit-sheet-parts';
import { editTables } from './edit-tables';
import { editWorkbook, sheetRenamer } from './edit-workbook';
import { graftSheet, stylesDownColumn } from './graft-sheet';
import { graftStyles } from './graft-styles';
import { moveAttached, moveOutside } from './move-references';
import { moveSheet } from './move-sheet';
import { movedBefore } from './moved-before';
import { WorkbookPackage } from './package';
import { replaceNotes } from './replace-notes';
import { changedCells, sameStyle } from './wanted-cells';
import { applyEdits, childNamed, elementTree, retagged } from './xml-elements';

/** Parts other than worksheets whose formulas name sheets. */
const namesSheets = /^xl\/(?:charts|chartsheets|drawings|pivotCache|pivotTables)\/[^_]*\.xml$/;

/** Names of temporary sheets that only carry styles and notes. */
const stylesName = 'styles of changed cells';
const notesName = (index: number): string => `notes ${index}`;

interface Kept {
  readonly before: SheetData;
  readonly now: SheetData;
}

function notesOf({ cells }: SheetData): string {
  return JSON.stringify(cells.flatMap(({ row, column, note }) => (note === undefined ? [] : [[row, column, note]])));
}

/** Every style that a cell has now but did not have before, each once. */
function newStyles(kept: readonly Kept[]): CellStyle[] {
  const found = new Map<string, CellStyle>();
  for (const { before, now } of kept) {
    const was = new Map(
      movedBefore(before, now.moves ?? []).cells.map(({ row, column, style }) => [`${row},${column}`, style]),
    );
    for (const { row, column, style } of now.cells)
      if (style !== undefined && !sameStyle(was.get(`${row},${column}`), style))
        found.set(JSON.stringify(style), style);
  }
  return [...found.values()];
}

/** A file with the parts to copy: new sheets, and sheets that hold only new styles or only notes. */
async function makeAdditions(now: WorkbookData, kept: readonly Kept[], added: readonly SheetData[]) {
  const styles = newStyles(kept);
  const noted = kept.filter((sheet) => notesOf(sheet.before) !== notesOf(sheet.now));
  const sheets: SheetData[] = [
    { name: stylesName, cells: styles.map((style, row) => ({ row, column: 0, value: 0, style })) },
    ...noted.map((sheet, index) => ({
      name: notesName(index),
      cells: sheet.now.cells.flatMap(({ row, column, note }) => (note === undefined ? [] : [{ row, column, note }])),
    })),
    ...added,
  ];
  if (styles.length + noted.length + added.length === 0) return undefined;
  const file = new WorkbookPackage(await writeWorkbook({ sheets, names: now.names ?? [] }));
  return { file, styles, noted, parts: file.sheets() };
}

/** Renames a sheet in the formulas of rules and charts. */
function renameIn(
  file: WorkbookPackage,
  path: string,
  renamed: (formula: string) => string,
  names: ReadonlyMap<string, string>,
) {
  const xml = file
    .needed(path)
    .replace(
      /(<(?:\w+:)?(?:f|formula|formula1|formula2|sqref)\b[^>]*>)([^<]*)(?=<\/)/g,
      (_, open: string, text: string) => open + renamed(text),
    )
    .replace(/(<(?:\w+:)?worksheetSource\b[^>]*? sheet=")([^"]*)(?=")/g, (whole, open: string, name: string) => {
      const now = names.get(name.replaceAll('&amp;', '&'));
      return now === undefined ? whole : open + now.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
    });
  file.set(path, xml);
}

/** Selects only the active sheet, so that nobody types into several sheets at once. */
function select(file: WorkbookPackage, path: string, isActive: boolean): void {
  const xml = file.needed(path);
  const view = childNamed(childNamed(elementTree(xml, 2), 'sheetViews') ?? elementTree(xml, 0), 'sheetView');
  if (view === undefined || (view.attributes.tabSelected === '1') === isActive) return;
  file.set(path, applyEdits(xml, [retagged(xml, view, { tabSelected: isActive ? '1' : undefined })]));
}

/** The moves of the sheets by their names in the file. */
function movesIn(kept: readonly Kept[]): MovesOf {
  const moves = new Map(kept.map(({ before, now }) => [before.name.toLowerCase(), now.moves ?? []]));
  return (sheet) => moves.get(sheet.toLowerCase()) ?? [];
}

/** A worksheet's part with its rows and columns where they are now. */
function movedPart(xml: string, { name, cells }: SheetData, movesOf: MovesOf): string {
  const formulas = new Map(cells.map(({ row, column, formula }) => [key(row, column), formula]));
  return moveSheet(xml, name, movesOf, ({ row, column }) => {
    const formula = formulas.get(key(row, column));
    return formula === undefined ? undefined : storedFormula(formula);
  });
}

function isRangeName(now: WorkbookData): (name: string) => boolean {
  const ranges = new Set(
    (now.names ?? []).flatMap(({ name, refersTo }) => {
      const range = parseRange(splitSheet(refersTo).rest);
      return range !== undefined && range.rows * range.columns === 1 ? [] : [name.toLowerCase()];
    }),
  );
  return (name) => ranges.has(name.toLowerCase());
}

/**
 * Writes a workbook back into the file that it was opened from: what was changed is written, every other part, such as
 * charts, pictures, pivot tables, rules, names, print settings and macros, stays byte for byte.
 *
 * `before` is the content of the file as the spreadsheet opened it; `openedAs` of the sheets of `now` names the sheet
 * that each was.
 */
export async function saveIntoFile(bytes: Uint8Array, before: WorkbookData, now: WorkbookData): Promise<Uint8Array> {
  const file = new WorkbookPackage(bytes);
  const workbook = file.workbook();
  const paths = new Map(file.sheets().map(({ name, path }) => [name, path]));
  const kept = now.sheets.flatMap((sheet): Kept[] => {
    const was = before.sheets.find(({ name }) => name === sheet.openedAs);
    return was === undefined ? [] : [{ before: was, now: sheet }];
  });
  const isKept = now.sheets.map((sheet) => kept.some((one) => one.now === sheet));
  const inPlace = withMovedParts(now);
  const added = inPlace.sheets.filter((_, index) => !isKept[index]);
  const additions = await makeAdditions(now, kept, added);
  const stylesPath = file.relations(workbook).find(({ type }) => type.endsWith('/styles'))?.target ?? 'xl/styles.xml';
  const grafted =
    additions === undefined ? undefined : graftStyles(file.needed(stylesPath), additions.file.needed('xl/styles.xml'));
  if (grafted !== undefined) file.set(stylesPath, grafted.xml);
  const [stylesPart] = additions?.parts ?? [];
  const numbers = additions && stylesPart ? stylesDownColumn(additions.file.needed(stylesPart.path)) : [];
  let flag: { readonly number: string | undefined } | undefined;
  const flagOnce = (): string | undefined => {
    flag ??= { number: arrayFlag(file) };
    return flag.number;
  };
  const context = {
    styleNumber: (style: CellStyle | undefined): number => {
      const index = additions?.styles.findIndex((one) => sameStyle(one, style)) ?? -1;
      const number = numbers[index];
      return number === undefined || grafted === undefined ? 0 : grafted.cellStyle(number);
    },
    arrayFlag: flagOnce,
    isRangeName: isRangeName(now),
  };
  const movesOf = movesIn(kept);
  const hasMoves = kept.some(({ before: { name } }) => movesOf(name).length > 0);
  let formulasChanged = hasMoves || kept.length < before.sheets.length;
  for (const sheet of kept) {
    const path = paths.get(sheet.before.name);
    if (path === undefined) continue;
    const was = movedBefore(sheet.before, movesOf(sheet.before.name));
    const sheetNow = editTables(file, path, { was, now: sheet.now });
    const xml = hasMoves ? movedPart(file.needed(path), sheet.before, movesOf) : file.needed(path);
    const scanned = scanSheet(xml);
    const changes = changedCells(scanned, was, sheetNow, context);
    formulasChanged ||= changes.formulasChanged;
    file.set(path, editSheetParts(writeCells(xml, scanned, changes.wanted), was, sheet.now));
    moveAttached(file, path, sheet.before.name, movesOf);
  }
  if (hasMoves) moveOutside(file, movesOf);
  const renames = new Map(
    kept.flatMap((sheet) =>
      sheet.before.name === sheet.now.name ? [] : [[sheet.before.name, sheet.now.name] as const],
    ),
  );
  const renamed = sheetRenamer(renames);
  if (renames.size > 0)
    for (const name of file.names())
      if (namesSheets.test(name) || [...paths.values()].includes(name)) renameIn(file, name, renamed, renames);
  const relations = new Map<string, string>();
  if (additions !== undefined && grafted !== undefined) {
    additions.noted.forEach((sheet, index) => {
      const source = additions.parts.find(({ name }) => name === notesName(index));
      const path = paths.get(sheet.before.name);
      if (source !== undefined && path !== undefined) replaceNotes(file, path, additions.file, source.path);
    });
    for (const { name } of added) {
      const source = additions.parts.find((part) => part.name === name);
      if (source === undefined) throw new Error(`the new sheet ${name} was not written`);
      const part = graftSheet(additions.file, file, source.path, grafted, flagOnce);
      relations.set(name, file.relate(workbook, 'worksheet', part));
    }
  }
  for (const { name } of before.sheets) {
    const path = paths.get(name);
    if (path === undefined || kept.some((sheet) => sheet.before.name === name)) continue;
    file.unrelate(workbook, path);
    file.remove(path);
  }
  const isSame =
    JSON.stringify([before.names, before.sheets.map(({ name, hidden }) => [name, hidden]), before.activeSheet]) ===
    JSON.stringify([now.names, now.sheets.map(({ name, hidden }) => [name, hidden]), now.activeSheet]);
  if (!isSame) {
    file.set(workbook, editWorkbook(file.needed(workbook), before, inPlace, relations, renamed));
    if (before.activeSheet !== now.activeSheet)
      for (const { name, path } of file.sheets()) select(file, path, name === now.activeSheet);
  }
  if (formulasChanged) dropOrder(file, workbook);
  return file.toBytes();
}

/** The stored order of calculation is removed: programs make a new one, and a wrong one damages the file. */
function dropOrder(file: WorkbookPackage, workbook: string): void {
  const order = file.relations(workbook).find(({ type }) => type.endsWith('/calcChain'))?.target;
  if (order === undefined) return;
  file.unrelate(workbook, order);
  file.remove(order);
}
