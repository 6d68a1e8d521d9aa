import { SaxesParser } from 'saxes';

/** An element of a part, without the prefixes that programs choose as they like. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlNode[];
  /** The text in it, that of its descendants included. */
  readonly text: string;
}

type OpenNode = { name: string; attributes: Record<string, string>; children: OpenNode[]; text: string };

const local = (name: string): string => name.slice(name.indexOf(':') + 1);

/** A part as a tree; for parts that are small, such as charts. */
export function xmlTree(xml: string): XmlNode {
  const top: OpenNode = { name: '', attributes: {}, children: [], text: '' };
  const open = [top];
  const parser = new SaxesParser({ xmlns: false });
  parser.on('error', (error) => {
    throw new SyntaxError(error.message);
  });
  parser.on('opentag', ({ name, attributes }) => {
    const own = Object.entries(attributes).map(([key, value]) => [local(key), String(value)] as const);
    const node: OpenNode = { name: local(name), attributes: Object.fromEntries(own), children: [], text: '' };
    open.at(-1)?.children.push(node);
    open.push(node);
  });
  parser.on('text', (text) => {
    for (const node of open) node.text += text;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(xml).close();
  const [root] = top.children;
  if (root === undefined) throw new SyntaxError('there is nothing in it');
  return root;
}

/** The first element that these names lead to, one level down a name. */
export function nodeAt(node: XmlNode | undefined, ...names: readonly string[]): XmlNode | undefined {
  return names.reduce<XmlNode | undefined>((at, name) => at?.children.find((child) => child.name === name), node);
}

/** Every descendant of that name, in document order. */
export function nodesNamed(node: XmlNode | undefined, name: string): readonly XmlNode[] {
  return (node?.children ?? []).flatMap((child) => [
    ...(child.name === name ? [child] : []),
    ...nodesNamed(child, name),
  ]);
}
