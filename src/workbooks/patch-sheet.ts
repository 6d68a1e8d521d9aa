import { type CellRange, cellName, contains, parseRange, rangeName } from '../hosts/address';
import { type ScannedCell, type ScannedRow, type ScannedSheet, scanSheet } from './sheet-scan';
import { markup, storedResult } from './stored-value';
import type { CellResult } from './workbook-model';

/** What a formula cell gives now: its own value first, then, where it spills, every row of the spill. */
export interface FormulaResult {
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly CellResult[])[];
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const key = (row: number, column: number): string => `${row},${column}`;

function rangeOf(result: FormulaResult): CellRange {
  return { ...result, rows: result.values.length, columns: result.values[0]!.length };
}

/** The cells that get a value: undefined clears what an earlier, larger spill left behind. */
function wantedValues(sheet: ScannedSheet, results: readonly FormulaResult[]): Map<string, CellResult | undefined> {
  const wanted = new Map<string, CellResult | undefined>();
  const formulas = new Map<string, ScannedCell>();
  for (const { cells } of sheet.rows)
    for (const cell of cells) if (cell.formula !== undefined) formulas.set(key(cell.row, cell.column), cell);
  for (const result of results) {
    const before = parseRange(formulas.get(key(result.row, result.column))?.formula?.ref ?? '');
    if (before === undefined || formulas.get(key(result.row, result.column))?.formula?.type !== 'array') continue;
    for (let row = before.row; row < before.row + before.rows; row += 1)
      for (let column = before.column; column < before.column + before.columns; column += 1)
        if (!formulas.has(key(row, column))) wanted.set(key(row, column), undefined);
  }
  for (const result of results)
    result.values.forEach((line, downwards) => {
      line.forEach((value, across) => {
        wanted.set(key(result.row + downwards, result.column + across), value);
      });
    });
  return wanted;
}

function openingTag(tag: string, attributes: Readonly<Record<string, string>>): string {
  return `<${tag}${Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${markup(value)}"`)
    .join('')}`;
}

/** A cell with another value; its formula and every attribute that does not speak of the value stay. */
function cellText(
  xml: string,
  cell: ScannedCell | undefined,
  at: { row: number; column: number; tag: string },
  value: CellResult | undefined,
  spill: string | undefined,
): string {
  const tag = cell?.tag ?? at.tag;
  const valueTag = tag.replace(/c$/, 'v');
  const stored = value === undefined ? undefined : storedResult(value);
  // `vm` points to what Excel knows beyond the value, such as the kind of an error, and would contradict a new value.
  const { t: _type, vm: _metadata, ...kept } = cell?.attributes ?? { r: cellName(at.row, at.column) };
  const open = openingTag(tag, { ...kept, ...(stored?.type === undefined ? {} : { t: stored.type }) });
  let formula = cell?.formula === undefined ? '' : xml.slice(cell.formula.start, cell.formula.end);
  if (spill !== undefined && cell?.formula?.type === 'array')
    formula = formula.replace(/(\sref\s*=\s*)(["'])[^"']*\2/, `$1"${spill}"`);
  const inside = formula + (stored === undefined ? '' : `<${valueTag}>${markup(stored.text)}</${valueTag}>`);
  return inside === '' ? `${open}/>` : `${open}>${inside}</${tag}>`;
}

/** Excel may use `spans` to find a row's cells, so it has to cover them. */
function spansEdit(xml: string, row: ScannedRow, columns: readonly number[]): Edit | undefined {
  const [first, last] = row.attributes.spans?.split(':').map(Number) ?? [];
  if (first === undefined || last === undefined || row.attributes.spans!.includes(' ')) return undefined;
  const spans = `${Math.min(first, ...columns.map((column) => column + 1))}:${Math.max(last, ...columns.map((column) => column + 1))}`;
  if (spans === row.attributes.spans) return undefined;
  const open = xml.slice(row.start, row.openEnd);
  return {
    start: row.start,
    end: row.openEnd,
    text: open.replace(/(\sspans\s*=\s*)(["'])[^"']*\2/, `$1"${spans}"`),
  };
}

/** Writes the results of formulas into a sheet's part; every other character stays. */
export function patchSheet(xml: string, results: readonly FormulaResult[]): string {
  const sheet = scanSheet(xml);
  const wanted = wantedValues(sheet, results);
  const spills = new Map(results.map((result) => [key(result.row, result.column), rangeName(rangeOf(result))]));
  const edits: Edit[] = [];
  const rowPrefix = sheet.data.tag.replace(/sheetData$/, '');
  const write = (cell: ScannedCell | undefined, row: number, column: number): string =>
    cellText(
      xml,
      cell,
      { row, column, tag: `${rowPrefix}c` },
      wanted.get(key(row, column)),
      spills.get(key(row, column)),
    );
  const missing = new Map<number, number[]>();
  for (const [place, value] of wanted) {
    if (value === undefined) continue;
    const [row, column] = place.split(',').map(Number) as [number, number];
    missing.set(row, [...(missing.get(row) ?? []), column]);
  }

  for (const row of sheet.rows) {
    const present = new Set(row.cells.map((cell) => cell.column));
    const added = (missing.get(row.row) ?? []).filter((column) => !present.has(column)).sort((a, b) => a - b);
    missing.delete(row.row);
    const wide = spansEdit(xml, row, [...present, ...added]);
    const insert = (from: readonly number[]): string =>
      from.map((column) => write(undefined, row.row, column)).join('');
    for (const cell of row.cells) {
      const before = added.filter((column) => column < cell.column);
      added.splice(0, before.length);
      const place = key(cell.row, cell.column);
      const text = wanted.has(place) ? write(cell, cell.row, cell.column) : xml.slice(cell.start, cell.end);
      if (before.length > 0 || (wanted.has(place) && !sameValue(cell, wanted.get(place), spills.get(place))))
        edits.push({ start: cell.start, end: cell.end, text: insert(before) + text });
    }
    if (added.length === 0) {
      if (wide !== undefined) edits.push(wide);
    } else if (row.openEnd === row.end) {
      const open = (wide?.text ?? xml.slice(row.start, row.openEnd)).replace(/\s*\/>$/, '>');
      edits.push({ start: row.start, end: row.end, text: `${open}${insert(added)}</${row.tag}>` });
    } else {
      if (wide !== undefined) edits.push(wide);
      const at = xml.lastIndexOf('</', row.end - 1);
      edits.push({ start: at, end: at, text: insert(added) });
    }
  }
  addRows(xml, sheet, missing, write, edits);
  widenDimension(xml, sheet, wanted, edits);
  return applied(xml, edits);
}

/** Whether the cell already holds the value, so that its text need not be touched. */
function sameValue(cell: ScannedCell, value: CellResult | undefined, spill: string | undefined): boolean {
  if (cell.formula?.type === 'array' && spill !== cell.formula.ref) return false;
  if (value === undefined) return cell.value === undefined;
  const stored = storedResult(value);
  // Shared strings are only told apart by their table; a text result is written into the cell itself.
  const type = cell.attributes.t === 'n' ? undefined : cell.attributes.t;
  return cell.value === stored.text && type === stored.type && cell.attributes.vm === undefined;
}

function addRows(
  xml: string,
  sheet: ScannedSheet,
  missing: ReadonlyMap<number, readonly number[]>,
  write: (cell: undefined, row: number, column: number) => string,
  edits: Edit[],
): void {
  const { data } = sheet;
  const rowTag = data.tag.replace(/sheetData$/, 'row');
  const rowText = (row: number): string =>
    `<${rowTag} r="${row + 1}">${[...missing.get(row)!]
      .sort((a, b) => a - b)
      .map((column) => write(undefined, row, column))
      .join('')}</${rowTag}>`;
  const numbers = [...missing.keys()].sort((a, b) => a - b);
  if (numbers.length === 0) return;
  if (data.openEnd === data.end) {
    const open = xml.slice(data.start, data.end).replace(/\s*\/>$/, '>');
    edits.push({ start: data.start, end: data.end, text: `${open}${numbers.map(rowText).join('')}</${data.tag}>` });
    return;
  }
  for (const number of numbers) {
    const next = sheet.rows.find((row) => row.row > number);
    const at = next?.start ?? xml.lastIndexOf('</', data.end - 1);
    edits.push({ start: at, end: at, text: rowText(number) });
  }
}

function widenDimension(
  xml: string,
  sheet: ScannedSheet,
  wanted: ReadonlyMap<string, CellResult | undefined>,
  edits: Edit[],
): void {
  const used = parseRange(sheet.dimension?.ref ?? '');
  if (sheet.dimension === undefined || used === undefined) return;
  let { row, column } = used;
  let [lastRow, lastColumn] = [row + used.rows - 1, column + used.columns - 1];
  for (const [place, value] of wanted) {
    const [atRow, atColumn] = place.split(',').map(Number) as [number, number];
    if (value === undefined || contains(used, atRow, atColumn)) continue;
    [row, column] = [Math.min(row, atRow), Math.min(column, atColumn)];
    [lastRow, lastColumn] = [Math.max(lastRow, atRow), Math.max(lastColumn, atColumn)];
  }
  const ref = rangeName({ row, column, rows: lastRow - row + 1, columns: lastColumn - column + 1 });
  if (ref === rangeName(used)) return;
  const { start, end } = sheet.dimension;
  edits.push({ start, end, text: xml.slice(start, end).replace(/(\sref\s*=\s*)(["'])[^"']*\2/, `$1"${ref}"`) });
}

function applied(xml: string, edits: readonly Edit[]): string {
  // Insertions at one place keep the order in which they were found; sorting is stable.
  const inOrder = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  let text = '';
  let at = 0;
  for (const edit of inOrder) {
    text += xml.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return text + xml.slice(at);
}
