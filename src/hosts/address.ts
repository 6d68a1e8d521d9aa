/** Addresses as a user writes them (`B5:K7`, `'Silt units'!$B$2`) and as numbers counted from 0. */

export interface CellRange {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** 0 is A, 26 is AA. */
export function columnName(column: number): string {
  let name = '';
  for (let rest = column; rest >= 0; rest = Math.floor(rest / 26) - 1)
    name = String.fromCharCode(65 + (rest % 26)) + name;
  return name;
}

/** A is 0, AA is 26. */
export function columnNumber(name: string): number {
  let number = 0;
  for (const letter of name.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

export function cellName(row: number, column: number): string {
  return `${columnName(column)}${row + 1}`;
}

export function rangeName(range: CellRange): string {
  const first = cellName(range.row, range.column);
  if (range.rows === 1 && range.columns === 1) return first;
  return `${first}:${cellName(range.row + range.rows - 1, range.column + range.columns - 1)}`;
}

/** Reads `B5`, `B5:K7`, with or without `$`; undefined for anything else, whole rows and columns included. */
export function parseRange(text: string): CellRange | undefined {
  const match = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})(?::\$?([A-Z]{1,3})\$?([1-9]\d{0,6}))?$/i.exec(text.trim());
  if (match === null) return undefined;
  const [, fromColumn = '', fromRow, toColumn = fromColumn, toRow = fromRow] = match;
  const [column, lastColumn] = [columnNumber(fromColumn), columnNumber(toColumn)];
  const [row, lastRow] = [Number(fromRow) - 1, Number(toRow) - 1];
  return {
    row: Math.min(row, lastRow),
    column: Math.min(column, lastColumn),
    rows: Math.abs(lastRow - row) + 1,
    columns: Math.abs(lastColumn - column) + 1,
  };
}

/** Splits `'Silt units'!$B$2` into sheet name and the rest; the sheet is undefined if the text names none. */
export function splitSheet(text: string): { readonly sheet: string | undefined; readonly rest: string } {
  const match = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(text.trim());
  if (match === null) return { sheet: undefined, rest: text.trim() };
  const [, quoted, bare, rest = ''] = match;
  return { sheet: quoted?.replaceAll("''", "'") ?? bare, rest };
}

/** A sheet name as a cell formula needs it. */
export function quoteSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

export function contains(range: CellRange, row: number, column: number): boolean {
  return (
    row >= range.row && row < range.row + range.rows && column >= range.column && column < range.column + range.columns
  );
}

export function overlaps(one: CellRange, other: CellRange): boolean {
  return (
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}
