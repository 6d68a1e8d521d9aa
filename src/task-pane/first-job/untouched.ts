import { cellName } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { SheetData } from '../../hosts/workbook-model';
import { valueAt } from './find-sheets';

/** Whether every typed cell of a ready-made sheet still holds what it was built with. */
export function isAsBuilt(blocks: readonly Block[], { name, cells }: SheetData): boolean {
  const block = blocks.find(({ sheet }) => sheet === name);
  if (block === undefined) return false;
  return cells.every(
    (cell) =>
      cell.formula !== undefined ||
      cell.value === undefined ||
      valueAt(block, cellName(cell.row, cell.column)) === cell.value,
  );
}
