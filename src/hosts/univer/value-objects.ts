import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import type { CellResult, CellScalar } from '../workbook-model';
import { CustomFunctionError } from './custom-functions';

/** Under this key an error carries its reason: through the engine as custom data, in a cell as its `custom` field. */
export const messageKey = 'siltMessage';

const errorTypes: ReadonlySet<string> = new Set(Object.values(ErrorType));

/** An error that keeps its reason when functions of the engine pass it on. Never the engine's shared instance. */
export function errorObject(code: string, message: string): ErrorValueObject {
  const type = (errorTypes.has(code) ? code : ErrorType.VALUE) as ErrorType;
  const error = new ErrorValueObject(type, message);
  return message === '' ? error : error.withCustomData({ [messageKey]: message });
}

export function messageOf(custom: unknown): string {
  const message = (custom as Record<string, unknown> | null | undefined)?.[messageKey];
  return typeof message === 'string' ? message : '';
}

type Handed = CellScalar | null | CustomFunctionError;

function handCell(object: BaseValueObject | null | undefined): Handed {
  if (object === null || object === undefined || object.isNull()) return null;
  if (object.isError()) {
    return new CustomFunctionError((object as ErrorValueObject).getErrorType(), messageOf(object.getCustomData()));
  }
  if (object.isLambda() || object.isCube()) return new CustomFunctionError(ErrorType.VALUE, 'a LAMBDA is not a value');
  return object.getValue();
}

/**
 * The engine's result as Excel would pass it to a custom function; empty cells stay null, although `toValue()` gives
 * 0.
 */
export function handOver(object: BaseValueObject): Handed | Handed[][] {
  if (!object.isArray()) return handCell(object);
  return object.getArrayValue().map((row) => Array.from(row, (cell) => handCell(cell ?? null)));
}

function cellObject(value: unknown): BaseValueObject {
  switch (typeof value) {
    case 'number':
      return Number.isFinite(value)
        ? NumberValueObject.create(value)
        : errorObject('#NUM!', 'the result is not a finite number');
    case 'string':
      return StringValueObject.create(value);
    case 'boolean':
      return BooleanValueObject.create(value);
    default:
      break;
  }
  if (value === null || value === undefined) return StringValueObject.create('');
  if (value instanceof CustomFunctionError) return errorObject(value.code, value.message);
  return errorObject('#VALUE!', `a cell cannot hold ${typeof value}`);
}

/**
 * A function's result for the engine. One cell becomes a plain value, because each spill costs a pass of the engine.
 */
export function toEngineResult(result: unknown): BaseValueObject {
  if (!Array.isArray(result)) return cellObject(result);
  const rows = result.map((row: unknown) => (Array.isArray(row) ? row : [row]).map(cellObject));
  const [[first, ...others] = []] = rows;
  if (first === undefined) return errorObject('#VALUE!', 'the function gave no cells');
  const columnCount = 1 + others.length;
  if (rows.length === 1 && columnCount === 1) return first;
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

/** One computed value as plain data. */
export function plainCell(object: BaseValueObject | null | undefined): CellResult {
  const value = handCell(object);
  if (value instanceof CustomFunctionError) return { error: { code: value.code, message: value.message } };
  return value ?? '';
}
