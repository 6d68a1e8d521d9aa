import { CellValueType, type ICellData, type Nullable } from '@univerjs/core';
import { ErrorType } from '@univerjs/engine-formula';
import type { CellResult } from '../workbook-model';
import { messageOf } from './value-objects';

const errorCodes: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

/** The plain value of a cell of the grid; blank is the empty string. */
export function plainCellData(cell: Nullable<ICellData>): CellResult {
  const value = cell?.v;
  if (!cell || value === null || value === undefined) return cell?.p?.body?.dataStream?.replace(/\r\n$/, '') ?? '';
  if (cell.t === CellValueType.BOOLEAN) return value === 1 || value === true;
  if (typeof value === 'string' && errorCodes.has(value) && cell.t !== CellValueType.FORCE_STRING) {
    return { error: { code: value, message: messageOf(cell.custom) } };
  }
  return value as string | number | boolean;
}
