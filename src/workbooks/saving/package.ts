import { DamagedWorkbook, relationsOf, resolvePart, sheetParts, workbookPart } from '../workbook-parts';
import { newEntry, readZip, repack, unpack, type ZipEntry } from '../zip-container';
import { writeZip } from '../zip-writer';
import { appended, applyEdits, attributesText, childrenNamed, elementTree } from './xml-elements';

const relationshipsType = 'http://schemas.openxmlformats.org/package/2006/relationships';
const documentType = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export interface Relation {
  readonly id: string;
  readonly type: string;
  /** The path of the target part in the package; an address if it is outside. */
  readonly target: string;
  readonly isExternal: boolean;
}

/** The parts of a workbook file; only changed parts are packed again. */
export class WorkbookPackage {
  private readonly entries: ZipEntry[];
  private readonly texts = new Map<string, string>();

  constructor(bytes: Uint8Array) {
    this.entries = readZip(bytes);
  }

  names(): readonly string[] {
    return this.entries.map(({ name }) => name);
  }

  bytes(path: string): Uint8Array | undefined {
    const entry = this.entries.find(({ name }) => name === path);
    return entry === undefined ? undefined : unpack(entry);
  }

  readonly text = (path: string): string | undefined => {
    const known = this.texts.get(path);
    if (known !== undefined) return known;
    const bytes = this.bytes(path);
    if (bytes === undefined) return undefined;
    const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
    this.texts.set(path, text);
    return text;
  };

  needed(path: string): string {
    const text = this.text(path);
    if (text === undefined) throw new DamagedWorkbook(`the workbook is damaged: ${path} is missing`);
    return text;
  }

  set(path: string, content: string | Uint8Array): void {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    if (typeof content === 'string') {
      if (this.text(path) === content) return;
      this.texts.set(path, content);
    }
    const at = this.entries.findIndex(({ name }) => name === path);
    const entry = this.entries[at];
    if (entry === undefined) this.entries.push(newEntry(path, bytes));
    else this.entries[at] = repack(entry, bytes);
  }

  /** Removes a part with its relations and its content type. */
  remove(path: string): void {
    for (const name of [path, relationsOf(path)]) {
      const at = this.entries.findIndex((entry) => entry.name === name);
      if (at >= 0) this.entries.splice(at, 1);
      this.texts.delete(name);
    }
    const types = this.needed('[Content_Types].xml');
    const edits = elementTree(types, 1)
      .children.filter(({ attributes }) => attributes.PartName === `/${path}`)
      .map(({ start, end }) => ({ start, end, text: '' }));
    this.set('[Content_Types].xml', applyEdits(types, edits));
  }

  workbook(): string {
    return workbookPart(this.text).part;
  }

  sheets() {
    return sheetParts(this.text);
  }

  relations(path: string): readonly Relation[] {
    const text = this.text(relationsOf(path));
    if (text === undefined) return [];
    return elementTree(text, 1).children.map(({ attributes }) => ({
      id: attributes.Id ?? '',
      type: attributes.Type ?? '',
      isExternal: attributes.TargetMode === 'External',
      target:
        attributes.TargetMode === 'External' ? (attributes.Target ?? '') : resolvePart(path, attributes.Target ?? ''),
    }));
  }

  /** Adds a relation from one part to another; returns its id. */
  relate(path: string, kind: string, target: string): string {
    const list = relationsOf(path);
    const text = this.text(list) ?? `${xmlHead}<Relationships xmlns="${relationshipsType}"></Relationships>`;
    const taken = new Set(this.relations(path).map(({ id }) => id));
    let number = taken.size + 1;
    while (taken.has(`rId${number}`)) number += 1;
    const Type = kind.startsWith('http') ? kind : `${documentType}/${kind}`;
    const relation = `<Relationship${attributesText({ Id: `rId${number}`, Type, Target: `/${target}` })}/>`;
    this.set(list, applyEdits(text, [appended(text, elementTree(text, 0), relation)]));
    return `rId${number}`;
  }

  unrelate(path: string, target: string): void {
    const text = this.text(relationsOf(path));
    if (text === undefined) return;
    const edits = elementTree(text, 1)
      .children.filter(
        ({ attributes }) =>
          attributes.TargetMode !== 'External' && resolvePart(path, attributes.Target ?? '') === target,
      )
      .map(({ start, end }) => ({ start, end, text: '' }));
    this.set(relationsOf(path), applyEdits(text, edits));
  }

  /** The content type of a part, by its name or its extension. */
  contentType(path: string): string | undefined {
    const types = elementTree(this.needed('[Content_Types].xml'), 1);
    const named = childrenNamed(types, 'Override').find(({ attributes }) => attributes.PartName === `/${path}`);
    const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
    const usual = childrenNamed(types, 'Default').find(
      ({ attributes }) => attributes.Extension?.toLowerCase() === ending,
    );
    return (named ?? usual)?.attributes.ContentType;
  }

  setContentType(path: string, type: string): void {
    if (this.contentType(path) === type) return;
    const text = this.needed('[Content_Types].xml');
    const override = `<Override${attributesText({ PartName: `/${path}`, ContentType: type })}/>`;
    this.set('[Content_Types].xml', applyEdits(text, [appended(text, elementTree(text, 0), override)]));
  }

  /** A free name for a new part: `xl/charts/chart7.xml` for `xl/charts/chart1.xml`. */
  freeName(like: string): string {
    const taken = new Set(this.names().map((name) => name.toLowerCase()));
    const [, stem = like, ending = ''] = /^(.*?)\d*(\.\w+)$/.exec(like) ?? [];
    let number = 1;
    while (taken.has(`${stem}${number}${ending}`.toLowerCase())) number += 1;
    return `${stem}${number}${ending}`;
  }

  toBytes(): Uint8Array {
    return writeZip(this.entries);
  }
}
