import { cellName } from '../../src/hosts/address';
import type { CellResult, WorkbookData } from '../../src/hosts/workbook-model';
import { MemoryHost } from './memory-host';

/** A workbook with the results that stand in it; nothing is computed anew. */
export function hostOfData({ sheets, names = [] }: WorkbookData): MemoryHost {
  const typed = sheets.map(({ name, cells }) => {
    const contents = cells.flatMap(({ row, column, formula, value }): [string, CellResult][] => {
      const content = formula ?? value;
      return content === undefined ? [] : [[cellName(row, column), content]];
    });
    return [name, Object.fromEntries(contents)] as const;
  });
  const host = new MemoryHost(
    Object.fromEntries(typed),
    Object.fromEntries(names.map(({ name, refersTo }) => [name, refersTo])),
  );
  for (const { name, cells } of sheets) {
    for (const { row, column, formula, value, spill } of cells) {
      if (formula !== undefined && value !== undefined) host.give(name, cellName(row, column), value);
      if (spill !== undefined) host.spill(name, spill);
    }
  }
  return host;
}
