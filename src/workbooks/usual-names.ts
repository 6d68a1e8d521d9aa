import { markup } from './stored-value';
import { elementsNamed, resolvePart, sheetParts, workbookPart } from './workbook-parts';
import { readZip, repack, unpack, type ZipEntry } from './zip-container';
import { writeZip } from './zip-writer';

const usual = /^xl\/worksheets\/sheet\d+\.xml$/;

function renamed(entry: ZipEntry, name: string): ZipEntry {
  return { ...entry, name, nameBytes: new TextEncoder().encode(name) };
}

/**
 * The same workbook with its worksheets under the names that nearly every program gives them. Any names are allowed, but
 * the file reader knows only the usual ones. A file that has them, or that cannot be read, is given back as it is.
 */
export function withUsualNames(bytes: Uint8Array): Uint8Array {
  try {
    return withNames(bytes);
  } catch {
    // The reader of the file will report what is wrong.
    return bytes;
  }
}

function withNames(bytes: Uint8Array): Uint8Array {
  const entries = readZip(bytes);
  const textOf = (name: string): string | undefined => {
    const entry = entries.find((one) => one.name === name);
    return entry === undefined ? undefined : new TextDecoder().decode(unpack(entry));
  };
  const parts = sheetParts(textOf).map(({ path }) => path);
  if (parts.every((path) => usual.test(path))) return bytes;
  const names = new Map<string, string>();
  parts.forEach((path, index) => {
    const at = path.lastIndexOf('/') + 1;
    const name = `xl/worksheets/sheet${index + 1}.xml`;
    names.set(path, name);
    names.set(`${path.slice(0, at)}_rels/${path.slice(at)}.rels`, `xl/worksheets/_rels/sheet${index + 1}.xml.rels`);
  });
  const { part: workbook, relations } = workbookPart(textOf);
  const retargeted = elementsNamed(textOf(relations) ?? '', 'Relationship').map((relation) => {
    const target = names.get(resolvePart(workbook, relation.Target ?? ''));
    const attributes = { ...relation, ...(target === undefined ? {} : { Target: `/${target}` }) };
    return `<Relationship${Object.entries(attributes)
      .map(([name, value]) => ` ${name}="${markup(value)}"`)
      .join('')}/>`;
  });
  const packageRelations = 'http://schemas.openxmlformats.org/package/2006/relationships';
  const text = `<Relationships xmlns="${packageRelations}">${retargeted.join('')}</Relationships>`;
  return writeZip(
    entries.map((entry) => {
      if (entry.name === relations) return repack(entry, new TextEncoder().encode(text));
      const name = names.get(entry.name);
      return name === undefined ? entry : renamed(entry, name);
    }),
  );
}
