import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';

/** An element of a part, as read by a parser that the writer does not use. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

export function parseXml(xml: string): Element {
  const top: Element = { name: '', attributes: {}, children: [], text: '' };
  const open = [top];
  const parser = new SaxesParser({ xmlns: false });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element: Element = { name, attributes, children: [], text: '' };
    open.at(-1)!.children.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    open.at(-1)!.text += text;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(xml).close();
  return top.children[0]!;
}

/** Every descendant of that name. */
export function all(element: Element, name: string): Element[] {
  return element.children.flatMap((child) => [...(child.name === name ? [child] : []), ...all(child, name)]);
}

export interface Package {
  readonly names: readonly string[];
  readonly has: (name: string) => boolean;
  readonly xml: (name: string) => Element;
  /** Worksheets by name, with their parts. */
  readonly sheets: readonly { readonly name: string; readonly part: string }[];
}

export function openPackage(bytes: Uint8Array): Package {
  const files = unzipSync(bytes);
  const xml = (name: string): Element => parseXml(strFromU8(files[name]!));
  const targets = new Map(
    all(xml('xl/_rels/workbook.xml.rels'), 'Relationship').map(({ attributes }) => [
      attributes.Id,
      attributes.Target?.startsWith('/') ? attributes.Target.slice(1) : `xl/${attributes.Target}`,
    ]),
  );
  return {
    names: Object.keys(files),
    has: (name) => files[name] !== undefined,
    xml,
    sheets: all(xml('xl/workbook.xml'), 'sheet').map(({ attributes }) => ({
      name: attributes.name!,
      part: targets.get(attributes['r:id'])!,
    })),
  };
}

/** The cells of a worksheet by address: value as text, formula as stored. */
export interface StoredCell {
  readonly address: string;
  readonly type: string | undefined;
  readonly value: string | undefined;
  readonly formula: string | undefined;
  readonly ref: string | undefined;
  readonly element: Element;
}

export function storedCells(sheet: Element): StoredCell[] {
  return all(sheet, 'c').map((element) => {
    const formula = element.children.find((child) => child.name === 'f');
    return {
      address: element.attributes.r!,
      type: element.attributes.t,
      value: element.children.find((child) => child.name === 'v')?.text,
      formula: formula?.text,
      ref: formula?.attributes.ref,
      element,
    };
  });
}
