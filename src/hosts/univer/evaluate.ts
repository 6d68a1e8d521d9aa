import type { Worksheet } from '@univerjs/core';
import { IFunctionService } from '@univerjs/engine-formula';
import type { CellError, CellResult, CellScalar } from '../workbook-model';
import { computeFormula, type EngineParts } from './engine';
import { explain } from './error-text';
import { plainCell } from './value-objects';

/** The result of one formula: a value, rows of values, or one error. */
export type Evaluated = CellScalar | readonly (readonly CellResult[])[] | { readonly error: CellError };

/** Computes a formula as if it were on a sheet, without writing it; each error has its reason. */
export async function evaluate(engine: EngineParts, sheet: Worksheet, formula: string): Promise<Evaluated> {
  const functions = engine.injector.get(IFunctionService);
  const explained = (value: CellResult): CellResult =>
    typeof value === 'object' ? { error: explain(value.error, formula, (name) => functions.hasExecutor(name)) } : value;
  const result = await computeFormula(engine, sheet.getSheetId(), formula);
  if (result === undefined) return explained({ error: { code: '#ERROR!', message: '' } });
  if (!result.isArray()) return explained(plainCell(result));
  const rows = result.getArrayValue().map((row) => Array.from(row, (cell) => explained(plainCell(cell ?? null))));
  const only = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : undefined;
  return only ?? rows;
}
