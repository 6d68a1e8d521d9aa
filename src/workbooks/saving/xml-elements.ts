import { SaxesParser } from 'saxes';
import { markup } from '../stored-value';

/** An element of a part, by its place in the text, so that a change leaves every other character unchanged. */
export interface ElementSpan {
  readonly tag: string;
  /** Without the prefix that the file uses. */
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly start: number;
  /** The end of the opening tag. */
  readonly openEnd: number;
  readonly end: number;
  readonly children: readonly ElementSpan[];
}

type Open = { -readonly [key in keyof ElementSpan]: ElementSpan[key] } & { children: ElementSpan[] };

/** The root of a part with the elements in it, down to `depth` levels below it. */
export function elementTree(xml: string, depth: number): ElementSpan {
  const parser = new SaxesParser({ xmlns: false });
  const path: (Open | undefined)[] = [];
  let root: Open | undefined;
  let start = 0;
  parser.on('error', (error) => {
    throw new SyntaxError(error.message);
  });
  parser.on('opentagstart', () => {
    start = xml.lastIndexOf('<', parser.position - 1);
  });
  parser.on('opentag', ({ name: tag, attributes }) => {
    const at = parser.position;
    const wanted = path.length <= depth;
    const name = tag.slice(tag.indexOf(':') + 1);
    const element: Open | undefined = wanted
      ? { tag, name, attributes, start, openEnd: at, end: at, children: [] }
      : undefined;
    if (element !== undefined) path.at(-1)?.children.push(element);
    root ??= element;
    path.push(element);
  });
  parser.on('closetag', () => {
    const element = path.pop();
    if (element !== undefined) element.end = parser.position;
  });
  parser.write(xml).close();
  if (root === undefined) throw new SyntaxError('there is nothing in it');
  return root;
}

export const childNamed = (element: ElementSpan, name: string): ElementSpan | undefined =>
  element.children.find((child) => child.name === name);

export const childrenNamed = (element: ElementSpan | undefined, name: string): readonly ElementSpan[] =>
  element?.children.filter((child) => child.name === name) ?? [];

export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Applies edits that do not overlap; insertions at one place keep their order. */
export function applyEdits(xml: string, edits: readonly Edit[]): string {
  let text = '';
  let at = 0;
  for (const edit of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    text += xml.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  return text + xml.slice(at);
}

export function attributesText(attributes: Readonly<Record<string, string | undefined>>): string {
  return Object.entries(attributes)
    .map(([name, value]) => (value === undefined ? '' : ` ${name}="${markup(value)}"`))
    .join('');
}

/** The opening tag of an element with changed attributes; undefined removes one. */
export function retagged(
  xml: string,
  element: ElementSpan,
  changes: Readonly<Record<string, string | undefined>>,
): Edit {
  const isEmpty = xml.slice(element.start, element.openEnd).endsWith('/>');
  const text = `<${element.tag}${attributesText({ ...element.attributes, ...changes })}${isEmpty ? '/>' : '>'}`;
  return { start: element.start, end: element.openEnd, text };
}

/** The edit that appends text to the content of an element. */
export function appended(xml: string, element: ElementSpan, text: string): Edit {
  if (element.openEnd < element.end) {
    const at = xml.lastIndexOf('</', element.end - 1);
    return { start: at, end: at, text };
  }
  const open = xml.slice(element.start, element.end).replace(/\s*\/>$/, '>');
  return { start: element.start, end: element.end, text: `${open}${text}</${element.tag}>` };
}

/** The content of an element as text. */
export function innerText(xml: string, element: ElementSpan): string {
  return element.openEnd === element.end ? '' : xml.slice(element.openEnd, xml.lastIndexOf('</', element.end - 1));
}

export const prefixOf = (element: ElementSpan): string =>
  element.tag.slice(0, element.tag.length - element.name.length);

const marks: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** Text of XML as it is read. */
export const unmarked = (text: string): string =>
  text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, number?: string, name?: string) => {
    const code = hex === undefined ? Number(number) : Number.parseInt(hex, 16);
    return name === undefined ? String.fromCodePoint(code) : (marks[name] ?? whole);
  });
