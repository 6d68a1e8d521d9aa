import { type CellRange, cellName, contains, parseRange, rangeName } from '../hosts/address';
import type { CellResult } from '../hosts/workbook-model';
import { applyEdits, type Edit } from './saving/xml-elements';
import { type ScannedCell, type ScannedRow, type ScannedSheet, scanSheet } from './sheet-scan';
import { markup, storedResult } from './stored-value';

/** What a formula cell gives now: its own value first, then, where it spills, every row of the spill. */
export interface FormulaResult {
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly CellResult[])[];
}

/** What a cell must hold. */
export interface WantedCell {
  /** Undefined leaves the cell without a value. */
  readonly value: CellResult | undefined;
  /** The cells that the formula fills, where it is an array formula. */
  readonly spill?: string;
  /** Another formula as files store it, with the number of the dynamic-array flag where it has one; `none` takes it away. Left out, it stays. */
  readonly formula?: { readonly text: string; readonly array?: string; readonly flag?: string } | 'none';
  /** The number of another cell style. */
  readonly style?: number;
  /** Only the style changes. */
  readonly keepsValue?: boolean;
}

type Wanted = Map<string, WantedCell>;

export const key = (row: number, column: number): string => `${row},${column}`;

function rangeOf(result: FormulaResult): CellRange {
  return { ...result, rows: result.values.length, columns: result.values[0]?.length ?? 0 };
}

/** The cells that get a value: undefined clears what an earlier, larger spill left behind. */
export function wantedValues(sheet: ScannedSheet, results: readonly FormulaResult[]): Wanted {
  const wanted: Wanted = new Map();
  const formulas = new Map<string, ScannedCell>();
  for (const { cells } of sheet.rows)
    for (const cell of cells) if (cell.formula !== undefined) formulas.set(key(cell.row, cell.column), cell);
  for (const result of results) {
    const before = parseRange(formulas.get(key(result.row, result.column))?.formula?.ref ?? '');
    if (before === undefined || formulas.get(key(result.row, result.column))?.formula?.type !== 'array') continue;
    for (let row = before.row; row < before.row + before.rows; row += 1)
      for (let column = before.column; column < before.column + before.columns; column += 1)
        if (!formulas.has(key(row, column))) wanted.set(key(row, column), { value: undefined });
  }
  for (const result of results)
    result.values.forEach((line, downwards) => {
      line.forEach((value, across) => {
        const isFirst = downwards === 0 && across === 0;
        wanted.set(
          key(result.row + downwards, result.column + across),
          isFirst ? { value, spill: rangeName(rangeOf(result)) } : { value },
        );
      });
    });
  return wanted;
}

function openingTag(tag: string, attributes: Readonly<Record<string, string>>): string {
  return `<${tag}${Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${markup(value)}"`)
    .join('')}`;
}

/** A cell with other contents; what is not asked for stays, as does every attribute that does not speak of the value. */
function cellText(
  xml: string,
  cell: ScannedCell | undefined,
  at: { row: number; column: number; tag: string },
  wanted: WantedCell,
): string {
  const { value, spill, formula: other, style, keepsValue } = wanted;
  if (keepsValue && cell !== undefined) {
    const open = openingTag(cell.tag, { ...cell.attributes, s: String(style) });
    return xml.slice(cell.start, cell.end).replace(/^<[^>]*?(\/?)>/, (_, slash: string) => `${open}${slash}>`);
  }
  const tag = cell?.tag ?? at.tag;
  const prefix = tag.replace(/c$/, '');
  const hasFormula = other === undefined ? cell?.formula !== undefined : other !== 'none';
  const isTyped = typeof value === 'string' && !hasFormula && other !== undefined;
  const stored = value === undefined ? undefined : storedResult(value);
  // `vm` points to what Excel knows beyond the value, such as the kind of an error, and would contradict a new value.
  const { t: _type, vm: _metadata, cm, ...kept } = cell?.attributes ?? { r: cellName(at.row, at.column) };
  const flag = other === undefined ? cm : other === 'none' ? undefined : other.flag;
  const type = isTyped ? 'inlineStr' : stored?.type;
  const open = openingTag(tag, {
    ...kept,
    ...(style === undefined ? {} : { s: String(style) }),
    ...(type === undefined ? {} : { t: type }),
    ...(flag === undefined ? {} : { cm: flag }),
  });
  const inside =
    formulaText(xml, cell, prefix, spill, other) +
    (stored === undefined
      ? ''
      : isTyped
        ? `<${prefix}is><${prefix}t xml:space="preserve">${markup(stored.text)}</${prefix}t></${prefix}is>`
        : `<${prefix}v>${markup(stored.text)}</${prefix}v>`);
  return inside === '' ? `${open}/>` : `${open}>${inside}</${tag}>`;
}

function formulaText(
  xml: string,
  cell: ScannedCell | undefined,
  prefix: string,
  spill: string | undefined,
  other: WantedCell['formula'],
): string {
  if (other === 'none') return '';
  if (other !== undefined) {
    const array = other.array === undefined ? '' : ` t="array" ref="${other.array}"`;
    return `<${prefix}f${array}>${markup(other.text)}</${prefix}f>`;
  }
  if (cell?.formula === undefined) return '';
  const formula = xml.slice(cell.formula.start, cell.formula.end);
  return spill !== undefined && cell.formula.type === 'array'
    ? formula.replace(/(\sref\s*=\s*)(["'])[^"']*\2/, `$1"${spill}"`)
    : formula;
}

/** Excel may use `spans` to find a row's cells, so it has to cover them. */
function spansEdit(xml: string, row: ScannedRow, columns: readonly number[]): Edit | undefined {
  const before = row.attributes.spans ?? '';
  const [first, last] = before.split(':').map(Number);
  if (first === undefined || last === undefined || before.includes(' ')) return undefined;
  const spans = `${Math.min(first, ...columns.map((column) => column + 1))}:${Math.max(last, ...columns.map((column) => column + 1))}`;
  if (spans === before) return undefined;
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
  return writeCells(xml, sheet, wantedValues(sheet, results));
}

/** Writes cells into a sheet's part; every other character stays. */
export function writeCells(xml: string, sheet: ScannedSheet, wanted: ReadonlyMap<string, WantedCell>): string {
  const edits: Edit[] = [];
  const rowPrefix = sheet.data.tag.replace(/sheetData$/, '');
  const write = (cell: ScannedCell | undefined, row: number, column: number): string => {
    const content = wanted.get(key(row, column));
    return content === undefined ? '' : cellText(xml, cell, { row, column, tag: `${rowPrefix}c` }, content);
  };
  const missing = new Map<number, number[]>();
  for (const [place, cell] of wanted) {
    if (isBlank(cell)) continue;
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
      const content = wanted.get(key(cell.row, cell.column));
      const text = content ? write(cell, cell.row, cell.column) : xml.slice(cell.start, cell.end);
      if (before.length > 0 || (content && !isAsWanted(cell, content)))
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
  return applyEdits(xml, edits);
}

/** Whether there is nothing to write where there is no cell yet. */
function isBlank({ value, formula, style }: WantedCell): boolean {
  return value === undefined && style === undefined && (formula === undefined || formula === 'none');
}

/** Whether the cell already holds what is wanted, so that its text need not be touched. */
function isAsWanted(cell: ScannedCell, { value, spill, formula, style }: WantedCell): boolean {
  if (formula !== undefined || style !== undefined) return false;
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
  const rowText = ([row, columns]: readonly [number, readonly number[]]): string =>
    `<${rowTag} r="${row + 1}">${[...columns]
      .sort((a, b) => a - b)
      .map((column) => write(undefined, row, column))
      .join('')}</${rowTag}>`;
  const rows = [...missing].sort(([a], [b]) => a - b);
  if (rows.length === 0) return;
  if (data.openEnd === data.end) {
    const open = xml.slice(data.start, data.end).replace(/\s*\/>$/, '>');
    edits.push({ start: data.start, end: data.end, text: `${open}${rows.map(rowText).join('')}</${data.tag}>` });
    return;
  }
  for (const row of rows) {
    const next = sheet.rows.find((other) => other.row > row[0]);
    const at = next?.start ?? xml.lastIndexOf('</', data.end - 1);
    edits.push({ start: at, end: at, text: rowText(row) });
  }
}

function widenDimension(
  xml: string,
  sheet: ScannedSheet,
  wanted: ReadonlyMap<string, WantedCell>,
  edits: Edit[],
): void {
  const used = parseRange(sheet.dimension?.ref ?? '');
  if (sheet.dimension === undefined || used === undefined) return;
  let { row, column } = used;
  let [lastRow, lastColumn] = [row + used.rows - 1, column + used.columns - 1];
  for (const [place, cell] of wanted) {
    const [atRow, atColumn] = place.split(',').map(Number) as [number, number];
    if (isBlank(cell) || contains(used, atRow, atColumn)) continue;
    [row, column] = [Math.min(row, atRow), Math.min(column, atColumn)];
    [lastRow, lastColumn] = [Math.max(lastRow, atRow), Math.max(lastColumn, atColumn)];
  }
  const ref = rangeName({ row, column, rows: lastRow - row + 1, columns: lastColumn - column + 1 });
  if (ref === rangeName(used)) return;
  const { start, end } = sheet.dimension;
  edits.push({ start, end, text: xml.slice(start, end).replace(/(\sref\s*=\s*)(["'])[^"']*\2/, `$1"${ref}"`) });
}
