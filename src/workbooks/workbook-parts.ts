import { SaxesParser } from 'saxes';

/** The file holds the parts of a zip but not those of a workbook. */
export class DamagedWorkbook extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'DamagedWorkbook';
  }
}

export interface SheetPart {
  readonly name: string;
  /** Path inside the file: `xl/worksheets/sheet1.xml`. */
  readonly path: string;
}

type Attributes = Readonly<Record<string, string>>;

/** The attributes of every element of that local name, in document order. */
export function elementsNamed(xml: string, wanted: string): readonly Attributes[] {
  const found: Attributes[] = [];
  const parser = new SaxesParser({ xmlns: false });
  parser.on('error', (error) => {
    throw new SyntaxError(error.message);
  });
  parser.on('opentag', ({ name, attributes }) => {
    if (name.slice(name.indexOf(':') + 1) === wanted) found.push(attributes);
  });
  parser.write(xml).close();
  return found;
}

/** Follows `..` and a leading `/` of a relationship's target, as seen from the part that has it. */
export function resolvePart(from: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1);
  const folders = from.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') folders.pop();
    else if (step !== '.') folders.push(step);
  }
  return folders.join('/');
}

/** The part that lists what a part refers to. */
export function relationsOf(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

function attribute(attributes: Attributes, local: string): string | undefined {
  return Object.entries(attributes).find(([name]) => name.slice(name.indexOf(':') + 1) === local)?.[1];
}

function requiredText(textOf: TextOf, path: string): string {
  const text = textOf(path);
  if (text === undefined) throw new DamagedWorkbook(`the file is no workbook: ${path} is missing`);
  return text;
}

/** The text of a part by its path; undefined if there is no such part. */
export type TextOf = (path: string) => string | undefined;

/** The part that holds the workbook, and the part that says what it refers to. */
export function workbookPart(textOf: TextOf): { readonly part: string; readonly relations: string } {
  const office = elementsNamed(requiredText(textOf, '_rels/.rels'), 'Relationship').find((relation) =>
    relation.Type?.endsWith('/officeDocument'),
  );
  if (office?.Target === undefined) throw new DamagedWorkbook('the file is no workbook: it does not say where one is');
  const part = resolvePart('', office.Target);
  return { part, relations: relationsOf(part) };
}

/** The worksheets of a workbook in their order; chart sheets and macro sheets are left out. */
export function sheetParts(textOf: TextOf): readonly SheetPart[] {
  const { part: workbook, relations: relationsPart } = workbookPart(textOf);
  const relations = new Map(
    elementsNamed(requiredText(textOf, relationsPart), 'Relationship').map((relation) => [relation.Id, relation]),
  );
  return elementsNamed(requiredText(textOf, workbook), 'sheet').flatMap((sheet): SheetPart[] => {
    const id = Object.entries(sheet).find(([name]) => name.endsWith(':id'))?.[1];
    const relation = relations.get(id ?? '');
    const name = attribute(sheet, 'name');
    if (relation?.Target === undefined || name === undefined)
      throw new DamagedWorkbook(`the workbook is damaged: sheet ${name ?? ''} has no part`);
    if (!relation.Type?.endsWith('/worksheet')) return [];
    const path = resolvePart(workbook, relation.Target);
    if (textOf(path) === undefined) throw new DamagedWorkbook(`the workbook is damaged: ${path} is missing`);
    return [{ name, path }];
  });
}
