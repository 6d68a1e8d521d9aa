import type { Worksheet } from '@univerjs/core';
import type { CellRange } from '../address';
import type { CellReader } from './cell-reader';

/** The smallest range that holds every cell with content, spills included; undefined for a blank sheet. */
export function usedRange({ reader }: { readonly reader: CellReader }, sheet: Worksheet): CellRange | undefined {
  let [firstRow, firstColumn, lastRow, lastColumn] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1, -1];
  const include = (row: number, column: number): void => {
    firstRow = Math.min(firstRow, row);
    firstColumn = Math.min(firstColumn, column);
    lastRow = Math.max(lastRow, row);
    lastColumn = Math.max(lastColumn, column);
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    if (cell && (cell.f || cell.p || (cell.v !== null && cell.v !== undefined && cell.v !== ''))) include(row, column);
  });
  for (const range of reader.spills(sheet)) {
    include(range.row, range.column);
    include(range.row + range.rows - 1, range.column + range.columns - 1);
  }
  if (lastRow < 0) return undefined;
  return { row: firstRow, column: firstColumn, rows: lastRow - firstRow + 1, columns: lastColumn - firstColumn + 1 };
}
