/**
 * The cells that a packet is made of, found by their headings and labels: a workbook laid out as the ready-made cone cut
 * plan, whose rows and columns may have been moved since.
 */
import type { CellResult, CellScalar } from '../../hosts/workbook-model';

/** A sheet's values from its first cell on. */
export interface SheetCells {
  readonly name: string;
  readonly rows: readonly (readonly CellResult[])[];
}

/** Why a packet cannot be made, in one sentence that says what to do. */
export class PacketMistake extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'PacketMistake';
  }
}

const like = 'a packet is made of a workbook like the ready-made Cone cut plan';

export function sheetNamed(sheets: readonly SheetCells[], name: string): SheetCells {
  const found = sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  if (found === undefined) throw new PacketMistake(`there is no sheet ${name}; ${like}`);
  return found;
}

/** Cells under a row of headings, by what a heading begins with. */
export interface NamedTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly CellResult[])[];
  readonly column: (heading: string) => number;
}

/** The rows under the headings that begin with a word, down to the first row whose first cell is blank. */
export function tableIn(sheet: SheetCells, firstHeading: string, secondHeading?: string): NamedTable {
  const begins = (value: CellResult | undefined, words: string) =>
    typeof value === 'string' && value.toLowerCase().startsWith(words.toLowerCase());
  const top = sheet.rows.findIndex(
    (row) =>
      begins(row[0], firstHeading) && (secondHeading === undefined || row.some((one) => begins(one, secondHeading))),
  );
  if (top < 0)
    throw new PacketMistake(`the sheet ${sheet.name} has no table that begins with ${firstHeading}; ${like}`);
  const headings = (sheet.rows[top] ?? []).map(String);
  const below = sheet.rows.slice(top + 1);
  const end = below.findIndex((row) => row[0] === undefined || row[0] === '');
  return {
    headings,
    rows: end < 0 ? below : below.slice(0, end),
    column: (heading) => {
      const place = headings.findIndex((one) => begins(one, heading));
      if (place < 0) throw new PacketMistake(`the sheet ${sheet.name} has no column ${heading}; ${like}`);
      return place;
    },
  };
}

/** The first value to the right of a label in the first column. */
export function beside(sheet: SheetCells, label: string): CellScalar {
  const row = sheet.rows.find(
    ([first]) => typeof first === 'string' && first.toLowerCase().startsWith(label.toLowerCase()),
  );
  const value = row?.slice(1).find((one) => one !== '' && one !== undefined);
  if (value === undefined) throw new PacketMistake(`the sheet ${sheet.name} has no value beside ${label}; ${like}`);
  return plain(value, `${sheet.name}, ${label}`);
}

/** A value that is not an error. */
export function plain(value: CellResult | undefined, where: string): CellScalar {
  if (typeof value === 'object') throw new PacketMistake(`${where} holds ${value.error.code}; put it right first`);
  return value ?? '';
}
