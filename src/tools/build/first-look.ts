import type { CellData, SheetData, WorkbookData } from '../../hosts/workbook-model';
import { markupSafe } from '../../manual/markup-safe';
import { decimalsOf, shownText } from '../../workbench/first-look/shown-text';
import { lookPlan } from './look-plan';

/** As much of a sheet as a window shows at first; rows without a word are left out. */
const rows = 12;

/** The sheet that a workbook opens with, as a plain table that computes itself while the spreadsheet loads. */
export function firstLook(workbook: WorkbookData): string {
  const { sheets, activeSheet } = workbook;
  const sheet = sheets.find(({ name }) => name === activeSheet) ?? sheets[0];
  if (sheet === undefined) return '';
  const columns = 1 + Math.max(...sheet.cells.map(({ column }) => column));
  const lines = Array.from({ length: rows }, (_, row) => row)
    .filter((row) => sheet.cells.some((cell) => cell.row === row && shown(cell) !== ''))
    .map((row) => line(sheet, row, columns));
  const plan = JSON.stringify(lookPlan(workbook, sheet, rows));
  return `<table aria-label="${markupSafe(sheet.name)}" data-plan="${markupSafe(plan)}"><tbody>${lines.join('\n')}</tbody></table>`;
}

function line(sheet: SheetData, row: number, columns: number): string {
  const cells = new Map(sheet.cells.filter((cell) => cell.row === row).map((cell) => [cell.column, cell]));
  const [first] = cells.values();
  // Words that stand alone in their row run across it.
  if (first !== undefined && [...cells.values()].filter((cell) => shown(cell) !== '').length === 1) {
    return `<tr data-row="${row}"><td colspan="${columns}"${first.style?.bold ? ' class="title"' : ''}>${shown(first)}</td></tr>`;
  }
  const all = Array.from({ length: columns }, (_, column) => cellMarkup(cells.get(column), column));
  return `<tr data-row="${row}">${all.join('')}</tr>`;
}

function cellMarkup(cell: CellData | undefined, column: number): string {
  const place = ` data-column="${column}"`;
  if (cell === undefined) return `<td${place}></td>`;
  const tag = cell.style?.bold ? 'th' : 'td';
  const kind = typeof cell.value === 'number' ? ' class="figure"' : '';
  return `<${tag}${place}${kind}>${shown(cell)}</${tag}>`;
}

/** A value as the sheet shows it. */
function shown({ value, style }: CellData): string {
  const plain = typeof value === 'object' ? value.error : value;
  return markupSafe(shownText(plain, decimalsOf(style?.numberFormat)));
}
