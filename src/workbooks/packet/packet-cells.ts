/**
 * Finds the cells for a packet by their headings and labels. The workbook must be like the ready-made cone cut plan, but
 * its rows and columns can have moved.
 */
import type { CellResult, CellScalar } from '../../hosts/workbook-model';

/** The values of a sheet, from its first cell. */
export interface SheetCells {
  readonly name: string;
  readonly rows: readonly (readonly CellResult[])[];
}

/** Why the packet cannot be made; the message also says what to do. */
export class PacketMistake extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'PacketMistake';
  }
}

const neededWorkbook = 'a packet needs a workbook like the ready-made Cone cut plan';

export function sheetNamed(sheets: readonly SheetCells[], name: string): SheetCells {
  const match = sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  if (match === undefined) throw new PacketMistake(`there is no sheet ${name}; ${neededWorkbook}`);
  return match;
}

/** The cells under a row of headings; a column is found by the first words of its heading. */
export interface NamedTable {
  readonly headings: readonly string[];
  readonly rows: readonly (readonly CellResult[])[];
  /** All rows below the headings: a blank row can stand between two that are filled in. */
  readonly below: readonly (readonly CellResult[])[];
  readonly column: (heading: string) => number;
}

/** The rows under the headings that begin with given words, down to the first row whose first cell is blank. */
export function tableIn(sheet: SheetCells, firstHeading: string, secondHeading?: string): NamedTable {
  const begins = (value: CellResult | undefined, words: string) =>
    typeof value === 'string' && value.toLowerCase().startsWith(words.toLowerCase());
  const top = sheet.rows.findIndex(
    (row) =>
      begins(row[0], firstHeading) &&
      (secondHeading === undefined || row.some((value) => begins(value, secondHeading))),
  );
  if (top < 0)
    throw new PacketMistake(`the sheet ${sheet.name} has no table that begins with ${firstHeading}; ${neededWorkbook}`);
  const headings = (sheet.rows[top] ?? []).map(String);
  const below = sheet.rows.slice(top + 1);
  const end = below.findIndex((row) => row[0] === undefined || row[0] === '');
  return {
    headings,
    rows: end < 0 ? below : below.slice(0, end),
    below,
    column: (heading) => {
      const place = headings.findIndex((name) => begins(name, heading));
      if (place < 0) throw new PacketMistake(`the sheet ${sheet.name} has no column ${heading}; ${neededWorkbook}`);
      return place;
    },
  };
}

/** The first value to the right of a label in the first column. */
export function valueBeside(sheet: SheetCells, label: string): CellScalar {
  const row = sheet.rows.find(
    ([first]) => typeof first === 'string' && first.toLowerCase().startsWith(label.toLowerCase()),
  );
  const value = row?.slice(1).find((cell) => cell !== '' && cell !== undefined);
  if (value === undefined)
    throw new PacketMistake(`the sheet ${sheet.name} has no value beside ${label}; ${neededWorkbook}`);
  return valueOrThrow(value, `${sheet.name}, ${label}`);
}

/** The first value to the right of a label, or another value if there is none. */
export function valueBesideOr(sheet: SheetCells, label: string, otherwise: CellScalar): CellScalar {
  try {
    return valueBeside(sheet, label);
  } catch (error) {
    if (error instanceof PacketMistake) return otherwise;
    throw error;
  }
}

/** A value that is not an error. */
export function valueOrThrow(value: CellResult | undefined, where: string): CellScalar {
  if (typeof value === 'object') throw new PacketMistake(`${where} holds ${value.error.code}; correct it first`);
  return value ?? '';
}
