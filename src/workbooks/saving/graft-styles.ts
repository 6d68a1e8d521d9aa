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

/** The order in which a file lists its styles (ECMA-376 part 1, 18.8.39). */
const order = [
  'numFmts',
  'fonts',
  'fills',
  'borders',
  'cellStyleXfs',
  'cellXfs',
  'cellStyles',
  'dxfs',
  'tableStyles',
  'colors',
  'extLst',
];
const mainNamespace = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
/** Number formats below this are built into the file format. */
const firstOwnFormat = 164;

export interface GraftedStyles {
  /** The target's styles, followed by the source's. */
  readonly xml: string;
  /** A cell style's number in the target by its number in the source. */
  readonly cellStyle: (number: number) => number;
  readonly conditionStyle: (number: number) => number;
}

/** Adds the styles of one file to another, whose own styles keep their numbers. */
export function graftStyles(target: string, source: string): GraftedStyles {
  const [into, from] = [elementTree(target, 2), elementTree(source, 2)];
  const prefix = prefixOf(into);
  const countOf = (name: string): number => childNamed(into, name)?.children.length ?? 0;
  const offsets = {
    fonts: countOf('fonts'),
    fills: countOf('fills'),
    borders: countOf('borders'),
    cellXfs: countOf('cellXfs'),
    dxfs: countOf('dxfs'),
  };
  const taken = childrenNamed(childNamed(into, 'numFmts'), 'numFmt').map(({ attributes }) =>
    Number(attributes.numFmtId),
  );
  const firstFree = Math.max(firstOwnFormat, ...taken.map((number) => number + 1));
  const formats = new Map(
    childrenNamed(childNamed(from, 'numFmts'), 'numFmt').map(({ attributes }, index) => [
      attributes.numFmtId,
      String(firstFree + index),
    ]),
  );
  const moved: Record<string, (element: ElementSpan) => Record<string, string | undefined>> = {
    numFmts: ({ attributes }) => ({ numFmtId: formats.get(attributes.numFmtId) }),
    cellXfs: ({ attributes }) => ({
      numFmtId: formats.get(attributes.numFmtId) ?? attributes.numFmtId,
      fontId: String(offsets.fonts + Number(attributes.fontId ?? 0)),
      fillId: String(offsets.fills + Number(attributes.fillId ?? 0)),
      borderId: String(offsets.borders + Number(attributes.borderId ?? 0)),
      xfId: '0',
    }),
  };
  const namespace = prefix === '' ? {} : { xmlns: mainNamespace };
  const edits: Edit[] = [];
  for (const name of ['numFmts', 'fonts', 'fills', 'borders', 'cellXfs', 'dxfs']) {
    const added = childNamed(from, name)?.children ?? [];
    if (added.length === 0) continue;
    const text = added
      .map((element) => {
        const open = retagged(source, element, { ...moved[name]?.(element), ...namespace });
        return open.text + source.slice(element.openEnd, element.end);
      })
      .join('');
    const list = childNamed(into, name);
    const count = String(countOf(name) + added.length);
    if (list === undefined) {
      const at =
        into.children.find((child) => order.indexOf(child.name) > order.indexOf(name))?.start ??
        target.lastIndexOf('</');
      const tag = `${prefix}${name}`;
      edits.push({ start: at, end: at, text: `<${tag}${attributesText({ count })}>${text}</${tag}>` });
    } else {
      const open = retagged(target, list, { count }).text.replace(/\/>$/, '>');
      edits.push({ start: list.start, end: list.end, text: `${open}${innerText(target, list)}${text}</${list.tag}>` });
    }
  }
  return {
    xml: applyEdits(target, edits),
    cellStyle: (number) => offsets.cellXfs + number,
    conditionStyle: (number) => offsets.dxfs + number,
  };
}
