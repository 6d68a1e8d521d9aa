import { SaxesParser } from 'saxes';
import { parseRange } from '../hosts/address';

/** Where something stands in the text of a sheet's part: from `start` up to, not including, `end`. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface ScannedFormula extends Span {
  /** `normal`, `array`, `shared` or `dataTable`. */
  readonly type: string;
  readonly ref: string | undefined;
  readonly text: string;
  readonly attributes: Readonly<Record<string, string>>;
}

export interface ScannedCell extends Span {
  readonly row: number;
  readonly column: number;
  /** As written, with the prefix that the file uses. */
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly formula: ScannedFormula | undefined;
  /** The text of the cell's value as it is stored, an index for shared strings. */
  readonly value: string | undefined;
}

export interface ScannedRow extends Span {
  readonly row: number;
  readonly tag: string;
  /** The end of the opening tag, which is the end of the row where it holds nothing. */
  readonly openEnd: number;
  readonly attributes: Readonly<Record<string, string>>;
  readonly cells: readonly ScannedCell[];
}

export interface ScannedSheet {
  readonly rows: readonly ScannedRow[];
  readonly data: Span & { readonly tag: string; readonly openEnd: number };
  readonly dimension: (Span & { readonly ref: string }) | undefined;
}

const localName = (tag: string): string => tag.slice(tag.indexOf(':') + 1);

/** What is being read, filled while its tags go by. */
interface OpenCell {
  start: number;
  row: number;
  column: number;
  tag: string;
  attributes: Record<string, string>;
  formula: ScannedFormula | undefined;
  value: string | undefined;
}
interface OpenRow {
  start: number;
  row: number;
  tag: string;
  openEnd: number;
  attributes: Record<string, string>;
  cells: ScannedCell[];
}

/** Finds every row and cell of a sheet's part, by position, so that single cells can be written anew. Throws where the text is no well-formed XML. */
export function scanSheet(xml: string): ScannedSheet {
  const parser = new SaxesParser({ xmlns: false });
  const rows: ScannedRow[] = [];
  let data: { start: number; end: number; tag: string; openEnd: number } | undefined;
  let dimension: ScannedSheet['dimension'];
  let row: OpenRow | undefined;
  let cell: OpenCell | undefined;
  let formula: { start: number; attributes: Record<string, string> } | undefined;
  let text = '';
  let tagStart = 0;

  parser.on('error', (error) => {
    throw new SyntaxError(error.message);
  });
  parser.on('opentagstart', () => {
    tagStart = xml.lastIndexOf('<', parser.position - 1);
  });
  parser.on('opentag', ({ name, attributes }) => {
    const local = localName(name);
    const end = parser.position;
    if (local === 'sheetData') data = { start: tagStart, end, tag: name, openEnd: end };
    else if (local === 'dimension' && row === undefined)
      dimension = { start: tagStart, end, ref: attributes.ref ?? 'A1' };
    else if (data !== undefined && local === 'row' && row === undefined) {
      const number = attributes.r === undefined ? (rows.at(-1)?.row ?? -1) + 1 : Number(attributes.r) - 1;
      row = { start: tagStart, row: number, tag: name, openEnd: end, attributes, cells: [] };
    } else if (row !== undefined && local === 'c' && cell === undefined) {
      cell = {
        start: tagStart,
        ...placeOf(attributes.r, row),
        tag: name,
        attributes,
        formula: undefined,
        value: undefined,
      };
    } else if (cell !== undefined && local === 'f') {
      formula = { start: tagStart, attributes };
      text = '';
    } else if (cell !== undefined && (local === 'v' || local === 't')) text = '';
  });
  const addText = (more: string): void => {
    text += more;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  parser.on('closetag', ({ name }) => {
    const local = localName(name);
    const end = parser.position;
    if (cell !== undefined && formula !== undefined && local === 'f') {
      const { attributes } = formula;
      cell.formula = {
        start: formula.start,
        end,
        type: attributes.t ?? 'normal',
        ref: attributes.ref,
        text,
        attributes,
      };
      formula = undefined;
    } else if (cell !== undefined && (local === 'v' || local === 't'))
      cell.value = (local === 't' ? (cell.value ?? '') : '') + text;
    else if (cell !== undefined && row !== undefined && local === 'c') {
      row.cells.push({ ...cell, end });
      cell = undefined;
    } else if (row !== undefined && local === 'row') {
      rows.push({ ...row, end });
      row = undefined;
    } else if (data !== undefined && local === 'sheetData') data.end = end;
  });
  parser.write(xml).close();
  if (data === undefined) throw new SyntaxError('the sheet holds no sheetData');
  return { rows, data, dimension };
}

/** A cell without an address stands after the one before it. */
function placeOf(address: string | undefined, row: OpenRow): { row: number; column: number } {
  if (address === undefined) return { row: row.row, column: (row.cells.at(-1)?.column ?? -1) + 1 };
  const place = parseRange(address);
  if (place === undefined) throw new SyntaxError(`${address} is no cell`);
  return { row: place.row, column: place.column };
}
