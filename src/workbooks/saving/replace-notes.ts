import { elementEdit } from './edit-sheet-parts';
import { graftPart } from './graft-sheet';
import type { WorkbookPackage } from './package';
import { applyEdits, elementTree, prefixOf } from './xml-elements';

/** Replaces the notes of a sheet in the file. */
export function replaceNotes(file: WorkbookPackage, path: string, from: WorkbookPackage, source: string): void {
  const isNotes = (type: string): boolean => /\/(comments|vmlDrawing)$/.test(type);
  for (const { target, type } of file.relations(path)) {
    if (!isNotes(type)) continue;
    file.unrelate(path, target);
    file.remove(target);
  }
  const names = new Map<string, string>();
  let drawing: string | undefined;
  for (const { target, type } of from.relations(source)) {
    if (!isNotes(type)) continue;
    const id = file.relate(path, type, graftPart(from, file, target, names));
    if (type.endsWith('/vmlDrawing')) drawing = id;
  }
  const xml = file.needed(path);
  const root = elementTree(xml, 1);
  const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const text =
    drawing === undefined ? '' : `<${prefixOf(root)}legacyDrawing xmlns:r="${relations}" r:id="${drawing}"/>`;
  file.set(path, applyEdits(xml, [elementEdit(xml, root, 'legacyDrawing', text)]));
}
