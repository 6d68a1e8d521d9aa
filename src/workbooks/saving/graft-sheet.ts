import { SaxesParser } from 'saxes';
import { relationsOf } from '../workbook-parts';
import type { GraftedStyles } from './graft-styles';
import type { WorkbookPackage } from './package';
import { applyEdits, attributesText, childNamed, type Edit, elementTree, innerText, retagged } from './xml-elements';

const relationshipsType = 'http://schemas.openxmlformats.org/package/2006/relationships';

/** Copies a part and everything that it refers to into another file; returns its name there. */
export function graftPart(
  from: WorkbookPackage,
  into: WorkbookPackage,
  path: string,
  names: Map<string, string>,
): string {
  const known = names.get(path);
  if (known !== undefined) return known;
  const name = into.freeName(path);
  names.set(path, name);
  into.set(name, from.bytes(path) ?? new Uint8Array(0));
  const type = from.contentType(path);
  if (type !== undefined) into.setContentType(name, type);
  const relations = from.relations(path).map(({ id, type: Type, target, isExternal }) => {
    const Target = isExternal ? target : `/${graftPart(from, into, target, names)}`;
    return `<Relationship${attributesText({ Id: id, Type, Target, TargetMode: isExternal ? 'External' : undefined })}/>`;
  });
  if (relations.length > 0)
    into.set(
      relationsOf(name),
      `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${relationshipsType}">${relations.join('')}</Relationships>`,
    );
  return name;
}

/** The XML content of each shared text of a file. */
function sharedTexts(file: WorkbookPackage): readonly string[] {
  const xml = file.text('xl/sharedStrings.xml');
  return xml === undefined ? [] : elementTree(xml, 1).children.map((item) => innerText(xml, item));
}

/** A worksheet of one file for another: texts in the cells themselves, styles by their numbers there. */
function movedSheet(xml: string, texts: readonly string[], styles: GraftedStyles, flag: string | undefined): string {
  const edits: Edit[] = [];
  const parser = new SaxesParser({ xmlns: false });
  let start = 0;
  let cell: { start: number; tag: string; attributes: Record<string, string>; value: string } | undefined;
  const styled = (attributes: Readonly<Record<string, string>>, name: string): Record<string, string | undefined> =>
    attributes[name] === undefined ? {} : { [name]: String(styles.cellStyle(Number(attributes[name]))) };
  const replace = (tag: string, attributes: Readonly<Record<string, string | undefined>>, isEmpty: boolean): void => {
    edits.push({ start, end: parser.position, text: `<${tag}${attributesText(attributes)}${isEmpty ? '/>' : '>'}` });
  };
  parser.on('opentagstart', () => {
    start = xml.lastIndexOf('<', parser.position - 1);
  });
  parser.on('opentag', ({ name, attributes, isSelfClosing }) => {
    if (name === 'c') {
      const next = { ...attributes, ...styled(attributes, 's'), ...(attributes.cm === undefined ? {} : { cm: flag }) };
      if (attributes.t === 's')
        cell = { start, tag: name, attributes: { ...next, t: 'inlineStr' } as Record<string, string>, value: '' };
      else replace(name, next, isSelfClosing);
    } else if (name === 'row' && attributes.s !== undefined)
      replace(name, { ...attributes, ...styled(attributes, 's') }, isSelfClosing);
    else if (name === 'col' && attributes.style !== undefined)
      replace(name, { ...attributes, ...styled(attributes, 'style') }, isSelfClosing);
    else if (name === 'cfRule' && attributes.dxfId !== undefined)
      replace(name, { ...attributes, dxfId: String(styles.conditionStyle(Number(attributes.dxfId))) }, isSelfClosing);
    else if (name === 'sheetView') replace(name, { ...attributes, tabSelected: undefined }, isSelfClosing);
  });
  parser.on('text', (text) => {
    if (cell !== undefined) cell.value += text;
  });
  parser.on('closetag', ({ name }) => {
    if (name !== 'c' || cell === undefined) return;
    const text = `<c${attributesText(cell.attributes)}><is>${texts[Number(cell.value)] ?? '<t/>'}</is></c>`;
    edits.push({ start: cell.start, end: parser.position, text });
    cell = undefined;
  });
  parser.write(xml).close();
  return applyEdits(xml, edits);
}

/** Tables have a number and a name that are unique in the workbook. */
function renumberTables(into: WorkbookPackage, added: readonly string[]): void {
  const isTable = (name: string): boolean => /\.table\+xml$/.test(into.contentType(name) ?? '');
  const tables = into.names().filter((name) => name.endsWith('.xml') && isTable(name));
  const others = tables
    .filter((name) => !added.includes(name))
    .map((name) => elementTree(into.needed(name), 0).attributes);
  let number = Math.max(0, ...others.map(({ id }) => Number(id)));
  const taken = new Set(others.map(({ displayName }) => displayName?.toLowerCase()));
  for (const name of tables.filter((table) => added.includes(table))) {
    const xml = into.needed(name);
    const table = elementTree(xml, 0);
    number += 1;
    let called = table.attributes.displayName ?? `Table${number}`;
    while (taken.has(called.toLowerCase())) called += '_2';
    taken.add(called.toLowerCase());
    into.set(name, applyEdits(xml, [retagged(xml, table, { id: String(number), name: called, displayName: called })]));
  }
}

/** Copies a worksheet with its charts, notes and tables into another file; returns the name of its part there. */
export function graftSheet(
  from: WorkbookPackage,
  into: WorkbookPackage,
  path: string,
  styles: GraftedStyles,
  flag: () => string | undefined,
): string {
  const names = new Map<string, string>();
  const part = graftPart(from, into, path, names);
  const xml = into.needed(part);
  into.set(part, movedSheet(xml, sharedTexts(from), styles, / cm="/.test(xml) ? flag() : undefined));
  renumberTables(into, [...names.values()]);
  return part;
}

/** The number of the style that the first cell of each row of a sheet has. */
export function stylesDownColumn(xml: string): readonly number[] {
  const data = childNamed(elementTree(xml, 3), 'sheetData');
  return data?.children.map((row) => Number(row.children[0]?.attributes.s ?? 0)) ?? [];
}
