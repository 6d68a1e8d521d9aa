import { type CellRange, parseRange, rangeName } from '../../hosts/address';
import { type Move, movedLines, movedRange } from '../../hosts/moved-lines';
import type { CellData, SheetData } from '../../hosts/workbook-model';
import type { WorkbookPackage } from './package';
import {
  applyEdits,
  attributesText,
  childNamed,
  childrenNamed,
  type Edit,
  type ElementSpan,
  elementTree,
  prefixOf,
  retagged,
} from './xml-elements';

/** Names of columns are stored with their line breaks in this form. */
const storedName = (text: string): string => text.replaceAll('\n', '_x000a_');
const typedName = (name: string): string => name.replace(/_x000a_/gi, '\n');

interface Column {
  /** The column as it stands in the file; a new one has none. */
  readonly element: ElementSpan | undefined;
  readonly name: string;
  /** Whether the heading is as it was, so that it agrees with the file. */
  readonly isSame: boolean;
}

/** A sheet now, and as it was opened with its cells where they are now. */
interface Sheets {
  readonly was: SheetData;
  readonly now: SheetData;
}

/** The heading in each column, and a name for one that has none, each once, as tables need them. */
function columnNames(range: CellRange, elements: readonly (ElementSpan | undefined)[], { was, now }: Sheets): Column[] {
  const taken = new Set<string>();
  return elements.map((element, index) => {
    const at = ({ cells }: SheetData): CellData | undefined =>
      cells.find(({ row, column }) => row === range.row && column === range.column + index);
    const cell = at(now);
    const isSame = element !== undefined && cell?.formula === at(was)?.formula && cell?.value === at(was)?.value;
    const before = typedName(element?.attributes.name ?? '');
    const heading = typeof cell?.value === 'object' ? '' : String(cell?.value ?? '');
    // The heading that a formula gives is not the name of its column.
    const wanted = (cell?.formula === undefined && !isSame ? heading : before) || before || `Column${index + 1}`;
    let name = wanted;
    for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${wanted}${number}`;
    taken.add(name.toLowerCase());
    return { element, name, isSame };
  });
}

function columnsEdits(xml: string, table: ElementSpan, columns: readonly Column[]): Edit[] {
  const list = childNamed(table, 'tableColumns');
  if (list === undefined) return [];
  let id = Math.max(0, ...list.children.map(({ attributes }) => Number(attributes.id)));
  const text = columns.map(({ element, name }) => {
    if (element !== undefined) {
      const own = xml.slice(element.start, element.end);
      if (typedName(element.attributes.name ?? '') === name) return own;
      const { start, end, text: open } = retagged(xml, element, { name: storedName(name) });
      return open + own.slice(end - start);
    }
    id += 1;
    return `<${prefixOf(list)}tableColumn${attributesText({ id: String(id), name: storedName(name) })}/>`;
  });
  const { text: open } = retagged(xml, list, { count: String(columns.length) });
  const is = `${open}${text.join('')}</${list.tag}>`;
  return is === xml.slice(list.start, list.end) ? [] : [{ start: list.start, end: list.end, text: is }];
}

/** A table's part where its cells are now; undefined if it has lost its headings, or all of its cells. */
function movedTable(xml: string, moves: readonly Move[], sheets: Sheets) {
  const table = elementTree(xml, 3);
  const before = parseRange(table.attributes.ref ?? '');
  if (before === undefined || table.attributes.headerRowCount === '0') return { xml, range: before, columns: [] };
  const range = movedRange(before, moves);
  if (range === undefined || movedLines('row', before.row, 1, moves)?.[0] !== range.row) return undefined;
  const old = childrenNamed(childNamed(table, 'tableColumns'), 'tableColumn');
  const places = old.map((_, index) => movedLines('column', before.column + index, 1, moves)?.[0]);
  const elements = Array.from({ length: range.columns }, (_, index) => old[places.indexOf(range.column + index)]);
  const columns = columnNames(range, elements, sheets);
  const ref = rangeName(range);
  const edits = columnsEdits(xml, table, columns);
  if (ref !== table.attributes.ref) {
    edits.push(retagged(xml, table, { ref }));
    for (const name of ['autoFilter', 'sortState']) {
      const element = childNamed(table, name);
      const place = element && parseRange(element.attributes.ref ?? '');
      const moved = place && movedRange(place, moves);
      if (element && moved) edits.push(retagged(xml, element, { ref: rangeName(moved) }));
    }
  }
  return { xml: applyEdits(xml, edits), range, columns };
}

function dropTable(file: WorkbookPackage, path: string, id: string, target: string): void {
  const xml = file.needed(path);
  const list = childNamed(elementTree(xml, 2), 'tableParts');
  const parts = list?.children.filter(({ attributes }) => attributes['r:id'] !== id) ?? [];
  if (list !== undefined) {
    const inside = parts.map(({ start, end }) => xml.slice(start, end)).join('');
    const { text: open } = retagged(xml, list, { count: String(parts.length) });
    const text = parts.length === 0 ? '' : `${open}${inside}</${list.tag}>`;
    file.set(path, applyEdits(xml, [{ start: list.start, end: list.end, text }]));
  }
  file.unrelate(path, target);
  file.remove(target);
}

function withHeadings(sheet: SheetData, { row, column }: CellRange, columns: readonly Column[]): SheetData {
  const cells = new Map(sheet.cells.map((cell) => [`${cell.row},${cell.column}`, cell]));
  columns.forEach(({ name, isSame }, index) => {
    const key = `${row},${column + index}`;
    const cell: CellData = cells.get(key) ?? { row, column: column + index };
    if (!isSame && cell.formula === undefined && cell.value !== name) cells.set(key, { ...cell, value: name });
  });
  return { ...sheet, cells: [...cells.values()] };
}

/**
 * Lets the tables of a sheet follow its rows and columns and the texts of their headings, without which Excel takes
 * the file for damaged. Returns the sheet with a heading in every column of its tables.
 */
export function editTables(file: WorkbookPackage, path: string, sheets: Sheets): SheetData {
  let sheet = sheets.now;
  for (const { id, type, target } of file.relations(path)) {
    if (!type.endsWith('/table')) continue;
    const table = movedTable(file.needed(target), sheets.now.moves ?? [], sheets);
    if (table === undefined) dropTable(file, path, id, target);
    else {
      file.set(target, table.xml);
      if (table.range !== undefined) sheet = withHeadings(sheet, table.range, table.columns);
    }
  }
  return sheet;
}
