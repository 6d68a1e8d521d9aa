import { quoteSheet } from '../../hosts/address';
import type { DefinedName, WorkbookData } from '../../hosts/workbook-model';
import { storedFormula } from '../stored-formula';
import { markup } from '../stored-value';
import {
  applyEdits,
  attributesText,
  childNamed,
  childrenNamed,
  type Edit,
  type ElementSpan,
  elementTree,
  innerText,
  prefixOf,
  retagged,
} from './xml-elements';

/** A worksheet that has been added: the name of the relation from the workbook to its part. */
export type AddedSheets = ReadonlyMap<string, string>;

const officeRelations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** The sheets in their present order; sheets whose cells cannot be read stay after the sheet before them. */
function sheetOrder(
  old: readonly ElementSpan[],
  now: WorkbookData,
  known: ReadonlySet<string>,
): (ElementSpan | string)[] {
  const order: (ElementSpan | string)[] = now.sheets.map(
    ({ name, openedAs }) => old.find(({ attributes }) => attributes.name === openedAs) ?? name,
  );
  old.forEach((sheet, index) => {
    if (known.has(sheet.attributes.name ?? '')) return;
    const before = old
      .slice(0, index)
      .reverse()
      .find((one) => order.includes(one));
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, sheet);
  });
  return order;
}

function sheetsText(
  xml: string,
  list: ElementSpan,
  order: readonly (ElementSpan | string)[],
  now: WorkbookData,
  added: AddedSheets,
) {
  let lastId = Math.max(0, ...list.children.map(({ attributes }) => Number(attributes.sheetId)));
  return order
    .map((sheet) => {
      if (typeof sheet === 'string') {
        lastId += 1;
        const attributes = {
          name: sheet,
          sheetId: String(lastId),
          'xmlns:r': officeRelations,
          'r:id': added.get(sheet),
        };
        return `<${prefixOf(list)}sheet${attributesText(attributes)}/>`;
      }
      const is = now.sheets.find(({ openedAs }) => openedAs === sheet.attributes.name);
      if (is === undefined) return xml.slice(sheet.start, sheet.end);
      const { state } = sheet.attributes;
      const hidden = is.hidden ? (state ?? 'hidden') : undefined;
      return retagged(xml, sheet, { name: is.name, state: hidden }).text.replace(/[^/]>$/, (end) => `${end[0]}/>`);
    })
    .join('');
}

/** What a name refers to, as the file stores it. */
export const refersToText = (refersTo: string): string =>
  markup(refersTo.includes('!') ? refersTo : storedFormula(refersTo));

/** What an added sheet prints and repeats, which files keep as names of that sheet. */
function printNames(order: readonly (ElementSpan | string)[], now: WorkbookData, tag: string): string[] {
  return order.flatMap((sheet, place) => {
    const print = typeof sheet === 'string' ? now.sheets.find(({ name }) => name === sheet)?.print : undefined;
    const named = (name: string, range: string | undefined): string[] => {
      if (range === undefined || typeof sheet !== 'string') return [];
      const fixed = range.replace(
        /([A-Z]*)(\d+)/g,
        (_, column: string, row: string) => `${column && `$${column}`}$${row}`,
      );
      const attributes = attributesText({ name: `_xlnm.${name}`, localSheetId: String(place) });
      return [`<${tag}${attributes}>${markup(`${quoteSheet(sheet)}!${fixed}`)}</${tag}>`];
    };
    return [...named('Print_Area', print?.area), ...named('Print_Titles', print?.titleRows)];
  });
}

interface NameChanges {
  readonly before: readonly DefinedName[];
  readonly now: readonly DefinedName[];
  readonly newIndex: (oldIndex: number) => number;
  readonly renamed: (formula: string) => string;
}

function namesText(xml: string, list: ElementSpan | undefined, tag: string, changes: NameChanges): string[] {
  const { before, now, newIndex, renamed } = changes;
  const handled = new Set<string>();
  const kept = childrenNamed(list, 'definedName').map((element) => {
    const { name = '', localSheetId, hidden } = element.attributes;
    const stored = innerText(xml, element);
    const was = before.find((one) => one.name === name);
    if (localSheetId === undefined && hidden === undefined && was !== undefined && !handled.has(name)) {
      handled.add(name);
      const is = now.find((one) => one.name === name);
      if (is === undefined) return '';
      const text = is.refersTo === was.refersTo ? stored : refersToText(is.refersTo);
      return `${retagged(xml, element, { comment: is.comment ?? element.attributes.comment }).text}${text}</${element.tag}>`;
    }
    const place = localSheetId === undefined ? undefined : newIndex(Number(localSheetId));
    if (place !== undefined && place < 0) return '';
    const open = retagged(xml, element, { localSheetId: place === undefined ? undefined : String(place) }).text;
    return `${open}${renamed(stored)}</${element.tag}>`;
  });
  const added = now
    .filter(({ name }) => !handled.has(name) && !before.some((one) => one.name === name))
    .map(
      ({ name, refersTo, comment }) => `<${tag}${attributesText({ name, comment })}>${refersToText(refersTo)}</${tag}>`,
    );
  return [...kept, ...added];
}

/** The workbook's part with the present sheets, names and active sheet. */
export function editWorkbook(
  xml: string,
  before: WorkbookData,
  now: WorkbookData,
  added: AddedSheets,
  renamed: (formula: string) => string,
): string {
  const root = elementTree(xml, 2);
  const list = childNamed(root, 'sheets');
  if (list === undefined) return xml;
  const prefix = prefixOf(root);
  const order = sheetOrder(list.children, now, new Set(before.sheets.map(({ name }) => name)));
  const edits: Edit[] = [
    { start: list.openEnd, end: xml.lastIndexOf('</', list.end - 1), text: sheetsText(xml, list, order, now, added) },
  ];
  const names = childNamed(root, 'definedNames');
  const tag = `${prefix}definedName`;
  const listed = namesText(xml, names, tag, {
    before: before.names ?? [],
    now: now.names ?? [],
    newIndex: (old) => {
      const sheet = list.children[old];
      return sheet === undefined ? -1 : order.indexOf(sheet);
    },
    renamed,
  });
  const all = [...listed, ...printNames(order, now, tag)].join('');
  const text = all === '' ? '' : `<${tag}s>${all}</${tag}s>`;
  const after = ['externalReferences', 'functionGroups', 'sheets']
    .map((name) => childNamed(root, name))
    .find((one) => one);
  if (names !== undefined) edits.push({ start: names.start, end: names.end, text });
  else if (after !== undefined) edits.push({ start: after.end, end: after.end, text });
  const active = order.findIndex((sheet) =>
    typeof sheet === 'string'
      ? sheet === now.activeSheet
      : now.sheets.find(({ openedAs }) => openedAs === sheet.attributes.name)?.name === now.activeSheet,
  );
  const view = childrenNamed(childNamed(root, 'bookViews'), 'workbookView')[0];
  if (view !== undefined && active >= 0 && Number(view.attributes.activeTab ?? 0) !== active)
    edits.push(retagged(xml, view, { activeTab: String(active), firstSheet: undefined }));
  return applyEdits(xml, edits);
}

/** Renames sheets in formulas as files store them. */
export function sheetRenamer(names: ReadonlyMap<string, string>): (stored: string) => string {
  if (names.size === 0) return (stored) => stored;
  const quoted = (name: string): string => (/^[A-Za-z_]\w*$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`);
  return (stored) =>
    stored
      .split(/("(?:[^"]|"")*")/)
      .map((piece, index) =>
        index % 2 === 1
          ? piece
          : piece.replace(/(?:'((?:[^']|'')+)'|([A-Za-z_][\w.]*))!/g, (whole, inQuotes: string, plain: string) => {
              const now = names.get(inQuotes?.replaceAll("''", "'").replaceAll('&amp;', '&') ?? plain);
              return now === undefined ? whole : `${markup(quoted(now))}!`;
            }),
      )
      .join('');
}
