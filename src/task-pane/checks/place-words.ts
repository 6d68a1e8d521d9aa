import { cellName } from '../../hosts/address';
import type { CellResult } from '../../hosts/workbook-model';
import type { Book, Spot } from '../cell-formula/book';

/** Headings are at most this many rows above, and a row of headings has at least this many cells. */
const furthest = 400;
const fewest = 3;

/** `Drums!C5`. */
export function placeOf({ sheet, row, column }: Spot): string {
  return `${sheet}!${cellName(row, column)}`;
}

/** A cell in a person's words, its heading and its row: `Cone height, Moss`. Blank if the sheet does not say. */
export function placeWords(book: Book, { sheet, row, column }: Spot): string {
  const own = rowWord(book, { sheet, row, column });
  const heading = headingAbove(book, { sheet, row, column });
  return [heading === own || /^value$/i.test(heading) ? '' : heading, own].filter((word) => word !== '').join(', ');
}

/** The heading of the table that the cell is in; a cell below a title of its own is not in a table. */
function headingAbove(book: Book, { sheet, row, column }: Spot): string {
  for (let above = row - 1; above >= Math.max(0, row - furthest); above--) {
    const line = book.cellsIn(sheet, { top: above, bottom: above, left: null, right: null });
    const words = line.filter(({ value }) => typeof value === 'string' && /[a-z]/i.test(value));
    const isTitle = words.length === 1 && line.length === 1;
    if (isTitle) return '';
    const isHeadings = words.length >= fewest && words.length === line.filter(({ value }) => value !== '').length;
    if (!isHeadings) continue;
    const heading = words.find((cell) => cell.column === column)?.value;
    // Words typed into the rows of a table are not headings.
    if (typeof heading === 'string' && isHeadingRow(book, sheet, above)) return withoutUnit(heading);
  }
  return '';
}

/** A row of headings has a title, a row of units or nothing above it. */
function isHeadingRow(book: Book, sheet: string, row: number): boolean {
  const numbers = book
    .cellsIn(sheet, { top: row - 1, bottom: row - 1, left: null, right: null })
    .filter(({ value }) => typeof value === 'number');
  return numbers.length === 0;
}

/** What a row is about: the drum or input in its first typed cell, or its day. */
export function rowWord(book: Book, { sheet, row, column }: Spot): string {
  const line = book.cellsIn(sheet, { top: row, bottom: row, left: null, right: column - 1 });
  const first = line.find(
    ({ formula, source, value }) => formula === undefined && source === undefined && value !== '',
  );
  const shown = first ?? line.find(({ value }) => typeof value === 'string' && value.length > 3);
  return shown === undefined ? '' : withoutUnit(dayOrText(shown.value));
}

/** Day numbers from 2000 to 2100. */
const [firstDay, lastDay] = [36_526, 73_050];

function dayOrText(value: CellResult): string {
  if (typeof value === 'object') return '';
  if (typeof value !== 'number') return String(value);
  const isDay = Number.isInteger(value) && value >= firstDay && value <= lastDay;
  return isDay ? new Date((value - 25_569) * 86_400_000).toISOString().slice(0, 10) : String(value);
}

function withoutUnit(heading: string): string {
  return heading.replace(/\s*\([^()]*\)\s*$/, '').trim();
}
