import { contains } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellResult } from '../../hosts/workbook-model';
import type { Surroundings } from '../follow/evaluate';

/** Reads cells that have been read already. */
export function readerOf(blocks: readonly Block[]): Surroundings['host'] {
  return {
    read: async ({ sheet, range }) => {
      const block = blocks.find((one) => one.sheet.toLowerCase() === sheet.toLowerCase());
      const each = <T>(grid: readonly (readonly T[])[] | undefined, otherwise: T): T[][] =>
        Array.from({ length: range.rows }, (_, down) =>
          Array.from({ length: range.columns }, (__, across) => {
            const [row, column] = [
              range.row + down - (block?.range.row ?? 0),
              range.column + across - (block?.range.column ?? 0),
            ];
            return grid?.[row]?.[column] ?? otherwise;
          }),
        );
      const isHere = (one: Block['range']): boolean =>
        contains(range, one.row, one.column) || contains(one, range.row, range.column);
      return {
        sheet,
        range,
        values: each<CellResult>(block?.values, ''),
        formulas: each<string | undefined>(block?.formulas, undefined),
        spills: block?.spills.filter(isHere) ?? [],
      };
    },
  };
}
