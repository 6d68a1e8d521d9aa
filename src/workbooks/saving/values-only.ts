import type { CellResult } from '../../hosts/workbook-model';
import { key, type WantedCell, writeCells } from '../patch-sheet';
import { type ScannedCell, scanSheet } from '../sheet-scan';
import { WorkbookPackage } from './package';
import { applyEdits, childNamed, childrenNamed, elementTree, innerText } from './xml-elements';

/** The stored last result of a formula. */
function resultOf({ attributes, value = '' }: ScannedCell): CellResult | undefined {
  if (attributes.t === 'b') return value === '1';
  if (attributes.t === 'e') return { error: { code: value, message: '' } };
  if (attributes.t === 'str') return value;
  return value === '' ? undefined : Number(value);
}

/** A sheet with the results of its formulas in their place. */
function withoutFormulas(xml: string): string {
  const sheet = scanSheet(xml);
  const wanted = new Map<string, WantedCell>();
  for (const { cells } of sheet.rows)
    for (const cell of cells)
      if (cell.formula !== undefined)
        wanted.set(key(cell.row, cell.column), { value: resultOf(cell), formula: 'none' });
  return writeCells(xml, sheet, wanted);
}

/** Names that use functions that other programs do not know would be errors there. */
function withoutOwnNames(xml: string): string {
  const names = childNamed(elementTree(xml, 2), 'definedNames');
  const edits = childrenNamed(names, 'definedName')
    .filter((name) => /_xl(?:udf|dudf|fn)/i.test(innerText(xml, name)))
    .map(({ start, end }) => ({ start, end, text: '' }));
  return applyEdits(xml, edits);
}

/**
 * The same workbook with results in place of formulas, for programs and people without the add-in. All else stays as
 * it is.
 */
export function valuesOnlyFile(bytes: Uint8Array): Uint8Array {
  const file = new WorkbookPackage(bytes);
  const workbook = file.workbook();
  for (const { path } of file.sheets()) file.set(path, withoutFormulas(file.needed(path)));
  file.set(workbook, withoutOwnNames(file.needed(workbook)));
  const order = file.relations(workbook).find(({ type }) => type.endsWith('/calcChain'))?.target;
  if (order !== undefined) {
    file.unrelate(workbook, order);
    file.remove(order);
  }
  return file.toBytes();
}
