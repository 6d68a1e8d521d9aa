import type { DefinedName } from '../../hosts/workbook-model';
import { typedFormula } from '../typed-formula';
import { workbookPart } from '../workbook-parts';
import { readZip, unpack } from '../zip-container';
import { nodeAt, xmlTree } from './xml-tree';

/**
 * The names of a file, with what they refer to as it is stored: the file library takes a formula such as `2*Plan!$A$1` for
 * the cell A1, and doubles the apostrophes of a sheet's name once more. A name of the whole workbook goes before one of the
 * same spelling that belongs to a sheet.
 */
export function namesInFile(bytes: Uint8Array): readonly DefinedName[] {
  const entries = readZip(bytes);
  const textOf = (path: string): string | undefined => {
    const entry = entries.find(({ name }) => name === path);
    return entry === undefined ? undefined : new TextDecoder().decode(unpack(entry));
  };
  const list = nodeAt(xmlTree(textOf(workbookPart(textOf).part) ?? ''), 'definedNames');
  const names = new Map<string, DefinedName>();
  for (const { attributes, text } of list?.children ?? []) {
    const { name = '', hidden = '0', localSheetId } = attributes;
    const refersTo = text.trim();
    if (refersTo === '' || hidden === '1' || hidden === 'true' || name.startsWith('_xlnm.')) continue;
    if (localSheetId !== undefined && names.has(name.toLowerCase())) continue;
    names.set(name.toLowerCase(), { name, refersTo: typedFormula(refersTo).slice(1) });
  }
  return [...names.values()];
}
