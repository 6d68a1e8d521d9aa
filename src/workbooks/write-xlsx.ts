import { Workbook as FileWorkbook } from '@cj-tech-master/excelts';
import { installChartSupport } from '@cj-tech-master/excelts/chart';
import { parseRange, splitSheet } from '../hosts/address';
import type { CellResult, DefinedName, SheetData, WorkbookData } from '../hosts/workbook-model';
import { type FormulaResult, patchSheet } from './patch-sheet';
import { refersToText } from './saving/edit-workbook';
import { storedFormula } from './stored-formula';
import { writeSheet } from './write-sheet';
import { newEntry, readZip, unpack } from './zip-container';
import { writeZip } from './zip-writer';

/** Files carry a date of their making; a fixed one, so that the same data gives the same bytes. */
const made = new Date(Date.UTC(2026, 0, 1));

/** The last results of every formula, those of spills cell by cell. */
function resultsOf(sheet: SheetData): FormulaResult[] {
  const values = new Map(sheet.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]));
  return sheet.cells.flatMap((cell): FormulaResult[] => {
    const spill = cell.formula === undefined ? undefined : parseRange(cell.spill ?? '');
    if (spill === undefined) return [];
    const { row, column, rows, columns } = spill;
    const at = (r: number, c: number): CellResult => values.get(`${row + r},${column + c}`) ?? '';
    return [
      {
        row,
        column,
        values: Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (_, c) => at(r, c))),
      },
    ];
  });
}

/** Whether a name stands for one cell, so that a formula with it gives one value. */
function isOneCell(refersTo: string): boolean {
  const range = parseRange(splitSheet(refersTo).rest);
  return range !== undefined && range.rows * range.columns === 1;
}

/** Marks the sheet that is open first as the one whose tab is selected. */
function selected(xml: string): string {
  return xml.replace('<sheetView ', '<sheetView tabSelected="1" ');
}

/** The optional count of uses no longer holds once spilled text is stored with its formula. */
function withoutCount(bytes: Uint8Array): Uint8Array {
  return new TextEncoder().encode(new TextDecoder().decode(bytes).replace(/(<sst\b[^>]*?) count="\d+"/, '$1'));
}

/** The version of the calculating engine that today's Excel writes. With an older version Excel would calculate again and show `#NAME?` without the add-in. */
const calculatedBy = 191_029;

function asOfToday(xml: string): string {
  return xml.replace(/(<calcPr\b[^>]*? calcId=)"\d+"/, `$1"${calculatedBy}"`);
}

/**
 * Says what each name refers to as it was given: the library takes any text with `!` for a range, and doubles the
 * apostrophes of a sheet's name twice.
 */
function withNames(xml: string, names: readonly DefinedName[]): string {
  const texts = new Map(names.map(({ name, refersTo }) => [name.toLowerCase(), refersToText(refersTo)]));
  return xml.replace(/(<definedName name="([^"]*)">)[^<]*/g, (whole: string, tag: string, name: string) => {
    const text = texts.get(name.toLowerCase());
    // In the spelling of the library, so that a file that it writes rightly has the same bytes.
    return text === undefined ? whole : `${tag}${text.replaceAll("'", '&apos;')}`;
  });
}

/**
 * Writes a workbook as an .xlsx file: formulas as Excel stores them, with their last results, spills with the
 * dynamic-array flag. The same data gives the same bytes, and Excel does not calculate everything again when it opens the file.
 */
export async function writeWorkbook(workbook: WorkbookData): Promise<Uint8Array> {
  installChartSupport();
  const file = new FileWorkbook();
  Object.assign(file, {
    creator: 'Siltstead',
    lastModifiedBy: 'Siltstead',
    company: 'Siltstead',
    created: made,
    modified: made,
    title: workbook.title ?? '',
    subject: workbook.subject ?? '',
  });
  const rangeNames = new Set(
    (workbook.names ?? []).flatMap(({ name, refersTo }) => (isOneCell(refersTo) ? [] : [name.toLowerCase()])),
  );
  for (const sheet of workbook.sheets)
    writeSheet(file.addWorksheet(sheet.name), sheet, (name) => rangeNames.has(name.toLowerCase()));
  for (const { name, refersTo } of workbook.names ?? []) {
    file.definedNames.add(/[!]/.test(refersTo) ? refersTo : storedFormula(refersTo), name);
  }
  const active = workbook.sheets.findIndex((sheet) => sheet.name === workbook.activeSheet);
  file.views = [
    { x: 0, y: 0, width: 28_000, height: 17_000, firstSheet: 0, activeTab: Math.max(0, active), visibility: 'visible' },
  ];
  const entries = readZip(new Uint8Array(await file.xlsx.writeBuffer()));
  const rewritten = entries.map((entry) => {
    const bytes = unpack(entry);
    const number = /^xl\/worksheets\/sheet(\d+)\.xml$/.exec(entry.name)?.[1];
    const sheet = number === undefined ? undefined : workbook.sheets[Number(number) - 1];
    if (entry.name === 'xl/workbook.xml') {
      const xml = withNames(asOfToday(new TextDecoder().decode(bytes)), workbook.names ?? []);
      return newEntry(entry.name, new TextEncoder().encode(xml));
    }
    if (entry.name === 'xl/sharedStrings.xml') return newEntry(entry.name, withoutCount(bytes));
    if (sheet === undefined) return newEntry(entry.name, bytes);
    const isActive = Number(number) - 1 === Math.max(0, active);
    // The results inside a spill are stored with the formula's own types, as Excel does, not as typed text.
    const patched = patchSheet(new TextDecoder().decode(bytes), resultsOf(sheet));
    return newEntry(entry.name, new TextEncoder().encode(isActive ? selected(patched) : patched));
  });
  return writeZip(rewritten);
}
