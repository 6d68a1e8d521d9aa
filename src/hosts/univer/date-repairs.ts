import type { Nullable } from '@univerjs/core';
import {
  type ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  type IFunctionService,
  NumberValueObject,
} from '@univerjs/engine-formula';

/** Days from the spreadsheet's day 0 to 1970-01-01. */
const epochDays = 25_569;

const repaired = new WeakSet<BaseFunction>();

const dayOfMonth = (serial: number): number => new Date(Math.floor(serial - epochDays) * 86_400_000).getUTCDate();

function at(value: BaseValueObject, row: number, column: number): Nullable<BaseValueObject> {
  if (!value.isArray()) return value;
  const array = value as ArrayValueObject;
  return array.get(Math.min(row, array.getRowCount() - 1), Math.min(column, array.getColumnCount() - 1));
}

/** A month after 31 January is the last day of February; the engine gave a day in March. */
export function repairDates(functions: IFunctionService): void {
  const executor = functions.getExecutor('EDATE');
  if (!(executor instanceof BaseFunction) || repaired.has(executor)) return;
  repaired.add(executor);
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...given: BaseValueObject[]) => {
    const result = calculate(...given) as BaseValueObject;
    const [starts] = given;
    if (starts === undefined || !result.isArray()) return result;
    return (result as ArrayValueObject).map((value, row, column) => {
      const start = at(starts, row, column);
      if (!value.isNumber() || !start) return value;
      const serial = value.getValue() as number;
      const day = dayOfMonth(serial);
      if (day === dayOfMonth(Number(start.getValue()))) return value;
      return NumberValueObject.create(serial - day, value.getPattern());
    });
  };
}
