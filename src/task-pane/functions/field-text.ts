import { parseRange, quoteSheet, rangeName, splitSheet } from '../../hosts/address';
import type { Place } from '../../hosts/sheet-host';
import type { CellScalar } from '../../hosts/workbook-model';
import { wordText } from '../../units/text';

/** What is typed into a field of a form: nothing, a value as a cell would hold it, or cells, written `=Farm!B5:B9`. */
export type Field =
  | { readonly is: 'blank' }
  | { readonly is: 'value'; readonly value: CellScalar }
  | { readonly is: 'cells'; readonly place: Place }
  | { readonly is: 'fault'; readonly why: string };

/** A spreadsheet takes no longer text inside a formula. */
const longestText = 255;
/** More cells than any function takes; reading a whole sheet would stop the page. */
const mostCells = 200_000;

/** Reads a field; references without a sheet mean `sheet`. */
export function readField(text: string, sheet: string | undefined): Field {
  const typed = text.trim();
  if (typed === '') return { is: 'blank' };
  if (!typed.startsWith('=')) {
    if (typed.length <= longestText) return { is: 'value', value: typedValue(typed) };
    return { is: 'fault', why: `${typed.length} characters are not allowed; give at most ${longestText}` };
  }
  const { sheet: named, rest } = splitSheet(typed.slice(1));
  const range = parseRange(rest);
  const owner = named ?? sheet;
  if (range === undefined)
    return { is: 'fault', why: `${wordText(typed)} is not a range of cells; write one such as =B5 or =Farm!B5:B9` };
  if (range.rows * range.columns > mostCells) {
    return {
      is: 'fault',
      why: `${wordText(typed)} has too many cells; give at most ${mostCells.toLocaleString('en')}`,
    };
  }
  if (owner === undefined) return { is: 'fault', why: 'there is no sheet here to read cells from; type a value' };
  return { is: 'cells', place: { sheet: owner, range } };
}

function typedValue(typed: string): CellScalar {
  // A number that no cell can hold stays text, so that the message about it says what was typed.
  if (/^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i.test(typed) && Number.isFinite(Number(typed))) return Number(typed);
  if (/^true$/i.test(typed)) return true;
  if (/^false$/i.test(typed)) return false;
  return typed;
}

/** Cells as a field shows them. */
export function fieldText({ sheet, range }: Place): string {
  return `=${sheetPrefix(sheet)}${rangeName(range)}`;
}

/** A sheet's name before an address, in quotes only where it needs them. */
function sheetPrefix(sheet: string): string {
  return `${/^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && parseRange(sheet) === undefined ? sheet : quoteSheet(sheet)}!`;
}

/** A field as an argument of a cell formula that stands on a sheet. */
function argumentText(field: Field, home: string): string {
  if (field.is === 'cells') {
    const { sheet, range } = field.place;
    return `${sheet.toLowerCase() === home.toLowerCase() ? '' : sheetPrefix(sheet)}${rangeName(range)}`;
  }
  if (field.is !== 'value') return '';
  const { value } = field;
  if (typeof value === 'string') return `"${value.replaceAll('"', '""')}"`;
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
}

/** The cell formula that calls a function; blank arguments at the end are left out. */
export function cellFormula(
  name: string,
  call: { readonly units: string | undefined; readonly fields: readonly Field[]; readonly headings: boolean },
  home: string,
): string {
  const given = call.fields.map((field) => argumentText(field, home));
  if (call.headings) given.push('TRUE');
  while (given.at(-1) === '') given.pop();
  return `=SILT.${name}(${[...(call.units === undefined ? [] : [call.units]), ...given].join(',')})`;
}
