import { cellName, parseRange, rangeName } from '../../hosts/address';
import { type Move, movedLines, movedRange } from '../../hosts/moved-lines';
import { type ScannedCell, type ScannedRow, scanSheet } from '../sheet-scan';
import { markup } from '../stored-value';

export type StoredFormula = (cell: ScannedCell) => string | undefined;

/**
 * The rows and cells of a worksheet's part where they are now. `stored` has the formula of a cell, for those that the file
 * stores as a copy of another's.
 */
export function movedCells(xml: string, moves: readonly Move[], stored: StoredFormula): string {
  const { data, rows } = scanSheet(xml);
  const texts = rows.flatMap((row) => {
    const [now] = movedLines('row', row.row, 1, moves) ?? [];
    return now === undefined ? [] : [{ at: now, text: movedRow(xml, row, now, moves, stored) }];
  });
  const open = xml.slice(data.start, data.openEnd).replace(/\s*\/>$/, '>');
  return `${open}${inOrder(texts)}</${data.tag}>`;
}

const inOrder = (texts: { readonly at: number; readonly text: string }[]): string =>
  texts
    .sort((one, other) => one.at - other.at)
    .map(({ text }) => text)
    .join('');

function movedRow(xml: string, row: ScannedRow, now: number, moves: readonly Move[], stored: StoredFormula): string {
  const cells = row.cells.flatMap((cell) => {
    const place = movedRange({ row: cell.row, column: cell.column, rows: 1, columns: 1 }, moves);
    return place === undefined
      ? []
      : [{ at: place.column, text: movedCell(xml, cell, cellName(place.row, place.column), moves, stored) }];
  });
  const open = tagWith(xml.slice(row.start, row.openEnd), { r: String(now + 1), spans: undefined }).replace(
    /\s*\/>$/,
    '>',
  );
  return `${open}${inOrder(cells)}</${row.tag}>`;
}

/** An opening tag with another value for attributes; undefined removes one. */
export function tagWith(tag: string, attributes: Readonly<Record<string, string | undefined>>): string {
  return Object.entries(attributes).reduce((text, [name, value]) => {
    const without = text.replace(new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), '');
    return value === undefined ? without : without.replace(/^<[^\s/>]+/, (start) => `${start} ${name}="${value}"`);
  }, tag);
}

function movedCell(
  xml: string,
  cell: ScannedCell,
  address: string,
  moves: readonly Move[],
  stored: StoredFormula,
): string {
  const { formula } = cell;
  const text = xml.slice(cell.start, cell.end);
  const readdressed = text.replace(/^<[^>]*>/, (open) => tagWith(open, { r: address }));
  if (formula === undefined || formula.type === 'normal') return readdressed;
  const before = xml.slice(formula.start, formula.end);
  const own = stored(cell);
  if (formula.type === 'shared') {
    const prefix = cell.tag.replace(/c$/, '');
    return own === undefined
      ? readdressed
      : readdressed.replace(before, () => `<${prefix}f>${markup(own)}</${prefix}f>`);
  }
  const range = parseRange(formula.ref ?? '');
  const now = range && movedRange(range, moves);
  return now === undefined
    ? readdressed
    : readdressed.replace(before, () => before.replace(/^<[^>]*>/, (open) => tagWith(open, { ref: rangeName(now) })));
}
