import { cellName } from '../../hosts/address';
import type { SheetData } from '../../hosts/workbook-model';
import {
  appended,
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

/** The order of what a worksheet holds (ECMA-376 part 1, 18.3.1.99), as far as this code adds elements. */
const order =
  `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter
  sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions
  pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing
  legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst`.split(/\s+/);

/** The edit that replaces an element of a worksheet, or adds it at its place. */
export function elementEdit(xml: string, root: ElementSpan, name: string, text: string): Edit {
  const old = childNamed(root, name);
  if (old !== undefined) return { start: old.start, end: old.end, text };
  const next = root.children.find((child) => order.indexOf(child.name) > order.indexOf(name));
  const at = next?.start ?? xml.lastIndexOf('</', root.end - 1);
  return { start: at, end: at, text };
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one ?? null) === JSON.stringify(other ?? null);

type Attributes = Readonly<Record<string, string | undefined>>;

/** The lines that are hidden now and were not, or the other way round. */
function newlyHidden(before: readonly number[] = [], now: readonly number[] = []): ReadonlyMap<number, boolean> {
  const lines = [...new Set([...before, ...now])].filter((line) => before.includes(line) !== now.includes(line));
  return new Map(lines.map((line) => [line, now.includes(line)]));
}

/** Excel's own width, for a column that has none. */
const usualWidth = '9.140625';

function columnChanges(before: SheetData, now: SheetData): Map<number, Attributes> {
  const changes = new Map<number, Attributes>();
  for (const [column, width] of Object.entries(now.columnWidths ?? {}))
    if (before.columnWidths?.[Number(column)] !== width)
      changes.set(Number(column) + 1, { width: String(width), customWidth: '1' });
  for (const [column, isHidden] of newlyHidden(before.hiddenColumns, now.hiddenColumns))
    changes.set(column + 1, { ...changes.get(column + 1), hidden: isHidden ? '1' : undefined });
  return changes;
}

function columnsEdit(xml: string, root: ElementSpan, before: SheetData, now: SheetData): Edit[] {
  const changes = columnChanges(before, now);
  if (changes.size === 0) return [];
  const prefix = prefixOf(root);
  const columns: Attributes[] = [];
  for (const { attributes } of childrenNamed(childNamed(root, 'cols'), 'col')) {
    let min = Number(attributes.min);
    const max = Number(attributes.max);
    // A run of columns is split at a column that is changed.
    for (const column of [...changes.keys()].filter((one) => one >= min && one <= max).sort((a, b) => a - b)) {
      if (column > min) columns.push({ ...attributes, min: String(min), max: String(column - 1) });
      columns.push({ ...attributes, min: String(column), max: String(column), ...changes.get(column) });
      changes.delete(column);
      min = column + 1;
    }
    if (min <= max) columns.push({ ...attributes, min: String(min), max: String(max) });
  }
  for (const [column, attributes] of changes)
    columns.push({ min: String(column), max: String(column), width: usualWidth, ...attributes });
  const text = columns
    .sort((one, other) => Number(one.min) - Number(other.min))
    .map((column) => `<${prefix}col${attributesText(column)}/>`)
    .join('');
  return [elementEdit(xml, root, 'cols', `<${prefix}cols>${text}</${prefix}cols>`)];
}

/** What of rows has changed: heights, and which are hidden. */
function rowChanges(before: SheetData, now: SheetData): ReadonlyMap<number, Attributes> {
  const changes = new Map<number, Attributes>();
  const [were, are] = [before.rowHeights ?? {}, now.rowHeights ?? {}];
  for (const row of new Set([...Object.keys(were), ...Object.keys(are)].map(Number))) {
    const height = are[row];
    if (were[row] === height) continue;
    const isSet = height !== undefined;
    changes.set(row, { ht: isSet ? String(height) : undefined, customHeight: isSet ? '1' : undefined });
  }
  for (const [row, isHidden] of newlyHidden(before.hiddenRows, now.hiddenRows))
    changes.set(row, { ...changes.get(row), hidden: isHidden ? '1' : undefined });
  return changes;
}

function rowEdits(xml: string, root: ElementSpan, before: SheetData, now: SheetData): Edit[] {
  const data = childNamed(root, 'sheetData');
  if (data === undefined) return [];
  const rows = new Map(data.children.map((row) => [Number(row.attributes.r) - 1, row]));
  const added: string[] = [];
  const changes = [...rowChanges(before, now)].sort(([one], [other]) => one - other);
  const edits = changes.flatMap(([row, attributes]): Edit[] => {
    const element = rows.get(row);
    if (element !== undefined) return [retagged(xml, element, attributes)];
    if (Object.values(attributes).every((value) => value === undefined)) return [];
    const text = `<${prefixOf(root)}row${attributesText({ r: String(row + 1), ...attributes })}/>`;
    const next = data.children.find(({ attributes: { r } }) => Number(r) > row + 1);
    if (next === undefined) added.push(text);
    return next === undefined ? [] : [{ start: next.start, end: next.start, text }];
  });
  return added.length === 0 ? edits : [...edits, appended(xml, data, added.join(''))];
}

function mergesEdit(xml: string, root: ElementSpan, before: SheetData, now: SheetData): Edit[] {
  const merges = [...(now.merges ?? [])].sort();
  if (same([...(before.merges ?? [])].sort(), merges)) return [];
  const prefix = prefixOf(root);
  const cells = merges.map((ref) => `<${prefix}mergeCell ref="${ref}"/>`).join('');
  const text = cells === '' ? '' : `<${prefix}mergeCells count="${merges.length}">${cells}</${prefix}mergeCells>`;
  return [elementEdit(xml, root, 'mergeCells', text)];
}

function viewEdits(xml: string, root: ElementSpan, before: SheetData, now: SheetData): Edit[] {
  const view = childNamed(childNamed(root, 'sheetViews') ?? root, 'sheetView');
  if (view === undefined) return [];
  const edits: Edit[] = [];
  if (same(before.hideGridlines, now.hideGridlines) === false)
    edits.push(retagged(xml, view, { showGridLines: now.hideGridlines ? '0' : undefined }));
  const [rows, columns] = [now.frozenRows ?? 0, now.frozenColumns ?? 0];
  if (rows === (before.frozenRows ?? 0) && columns === (before.frozenColumns ?? 0)) return edits;
  const prefix = prefixOf(root);
  const shift = ({ start, openEnd, end, ...rest }: ElementSpan): ElementSpan => ({
    ...rest,
    start: start + view.start,
    openEnd: openEnd + view.start,
    end: end + view.start,
  });
  const inside = elementTree(xml.slice(view.start, view.end), 1).children.map(shift);
  const pane = inside.find(({ name }) => name === 'pane');
  const activePane = rows > 0 && columns > 0 ? 'bottomRight' : rows > 0 ? 'bottomLeft' : 'topRight';
  const attributes = {
    ...(columns > 0 ? { xSplit: String(columns) } : {}),
    ...(rows > 0 ? { ySplit: String(rows) } : {}),
    topLeftCell: cellName(rows, columns),
    activePane,
    state: 'frozen',
  };
  const text = rows + columns === 0 ? '' : `<${prefix}pane${attributesText(attributes)}/>`;
  // Selections may refer to panes that are removed.
  for (const { name, start, end } of inside) if (name === 'selection') edits.push({ start, end, text: '' });
  if (pane !== undefined) edits.push({ start: pane.start, end: pane.end, text });
  else if (view.openEnd < view.end) edits.push({ start: view.openEnd, end: view.openEnd, text });
  else if (text !== '') {
    const open = xml.slice(view.start, view.end).replace(/\s*\/>$/, '>');
    return [{ start: view.start, end: view.end, text: `${open}${text}</${view.tag}>` }];
  }
  return edits;
}

function tabEdits(xml: string, root: ElementSpan, before: SheetData, now: SheetData): Edit[] {
  if (same(before.tabColor, now.tabColor)) return [];
  const prefix = prefixOf(root);
  const text = now.tabColor === undefined ? '' : `<${prefix}tabColor rgb="FF${now.tabColor}"/>`;
  const properties = childNamed(root, 'sheetPr');
  if (properties === undefined)
    return [elementEdit(xml, root, 'sheetPr', `<${prefix}sheetPr>${text}</${prefix}sheetPr>`)];
  const color = childNamed(properties, 'tabColor');
  if (color !== undefined) return [{ start: color.start, end: color.end, text }];
  // The color is the first of the properties.
  if (properties.openEnd < properties.end) return [{ start: properties.openEnd, end: properties.openEnd, text }];
  return [appended(xml, properties, text)];
}

/**
 * A worksheet's part with the color, widths, heights, hidden lines, merged cells and frozen panes that have been
 * changed; all else stays.
 */
export function editSheetParts(xml: string, before: SheetData, now: SheetData): string {
  const root = elementTree(xml, 2);
  return applyEdits(xml, [
    ...tabEdits(xml, root, before, now),
    ...columnsEdit(xml, root, before, now),
    ...rowEdits(xml, root, before, now),
    ...mergesEdit(xml, root, before, now),
    ...viewEdits(xml, root, before, now),
  ]);
}
