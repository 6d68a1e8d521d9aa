import type { CellData, CellResult, SheetData, WorkbookData } from '../../hosts/workbook-model';
import { markupSafe } from '../../manual/markup-safe';

/** As much of a sheet as a window shows at first; rows without a word are left out. */
const rows = 12;

/** The sheet that a workbook opens with, as a plain table to look at while the spreadsheet loads. */
export function firstLook({ sheets, activeSheet }: WorkbookData): string {
  const sheet = sheets.find(({ name }) => name === activeSheet) ?? sheets[0];
  if (sheet === undefined) return '';
  const columns = 1 + Math.max(...sheet.cells.map(({ column }) => column));
  const lines = Array.from({ length: rows }, (_, row) => row)
    .filter((row) => sheet.cells.some((cell) => cell.row === row && shown(cell) !== ''))
    .map((row) => line(sheet, row, columns));
  return `<table aria-label="${markupSafe(sheet.name)}"><tbody>${lines.join('\n')}</tbody></table>`;
}

function line(sheet: SheetData, row: number, columns: number): string {
  const cells = new Map(sheet.cells.filter((cell) => cell.row === row).map((cell) => [cell.column, cell]));
  const [first] = cells.values();
  // Words that stand alone in their row run across it.
  if (first !== undefined && [...cells.values()].filter((cell) => shown(cell) !== '').length === 1) {
    return `<tr data-row="${row}"><td colspan="${columns}"${first.style?.bold ? ' class="title"' : ''}>${shown(first)}</td></tr>`;
  }
  return `<tr data-row="${row}">${Array.from({ length: columns }, (_, column) => cellMarkup(cells.get(column))).join('')}</tr>`;
}

function cellMarkup(cell: CellData | undefined): string {
  if (cell === undefined) return '<td></td>';
  const tag = cell.style?.bold ? 'th' : 'td';
  const kind = typeof cell.value === 'number' ? ' class="figure"' : '';
  return `<${tag}${kind}>${shown(cell)}</${tag}>`;
}

/** A value as the sheet shows it: numbers with the decimals of their format. */
function shown({ value, style }: CellData): string {
  return markupSafe(typeof value === 'number' ? numberText(value, style?.numberFormat) : wordsOf(value));
}

function numberText(value: number, format = ''): string {
  const [, decimals] = /\.(0+)/.exec(format) ?? [];
  return decimals === undefined ? String(Number(value.toPrecision(6))) : value.toFixed(decimals.length);
}

function wordsOf(value: CellResult | undefined): string {
  if (value === undefined) return '';
  return typeof value === 'object' ? value.error.code : String(value);
}
