import { tokenize } from '@borgar/fx';
import { childNamed, childrenNamed, elementTree, innerText } from '../saving/xml-elements';

const most = 10_000;
const longest = 8_192;

/** A name that means something else to JavaScript, which the spreadsheet is written in. */
const unusable = new Set(['__proto__']);

/** The names that a name's formula mentions. */
function mentioned(formula: string): readonly string[] {
  return tokenize(`=${formula}`)
    .filter(({ type }) => type === 'range_named')
    .map(({ value }) => value.toLowerCase());
}

/** The first ring of names that refer to each other; undefined where there is none. */
function ringOf(names: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  for (const start of names.keys()) {
    const path: string[] = [];
    const onPath = new Set<string>();
    const work: { name: string; isEnd: boolean }[] = [{ name: start, isEnd: false }];
    for (let step = work.pop(); step !== undefined; step = work.pop()) {
      const { name, isEnd } = step;
      if (isEnd) {
        path.pop();
        onPath.delete(name);
        done.add(name);
        continue;
      }
      if (onPath.has(name)) return path.slice(path.indexOf(name));
      const targets = names.get(name);
      if (done.has(name) || targets === undefined) continue;
      path.push(name);
      onPath.add(name);
      work.push({ name, isEnd: true });
      for (const next of targets) work.push({ name: next, isEnd: false });
    }
  }
  return undefined;
}

/** Refuses names of sheets and cells that the spreadsheet could not resolve. */
export function checkNames(workbook: string, refused: (message: string) => Error): void {
  const root = elementTree(workbook, 2);
  const sheets = new Set<string>();
  for (const { attributes } of childrenNamed(childNamed(root, 'sheets'), 'sheet')) {
    const name = attributes.name ?? '';
    if (unusable.has(name)) throw refused(`a sheet is named ${name}, which cannot be used here; rename it`);
    if (sheets.has(name.toLowerCase()))
      throw refused(`the workbook is damaged: two sheets are named ${name.slice(0, 40)}`);
    sheets.add(name.toLowerCase());
  }
  const names = new Map<string, readonly string[]>();
  const defined = childrenNamed(childNamed(root, 'definedNames'), 'definedName');
  if (defined.length > most) throw refused(`the workbook has more than ${most.toLocaleString('en-US')} names`);
  for (const element of defined) {
    const name = element.attributes.name ?? '';
    const formula = innerText(workbook, element);
    if (unusable.has(name)) throw refused(`a cell is named ${name}, which cannot be used here; rename it`);
    if (formula.length > longest) throw refused(`the name ${name.slice(0, 40)} stands for more than 8,192 characters`);
    names.set(name.toLowerCase(), [...(names.get(name.toLowerCase()) ?? []), ...mentioned(formula)]);
  }
  const ring = ringOf(names);
  if (ring !== undefined)
    throw refused(
      ring.length === 1
        ? `the name ${ring[0]} refers to itself`
        : `the names ${ring.slice(0, 5).join(', ')} refer to each other in a circle`,
    );
}
