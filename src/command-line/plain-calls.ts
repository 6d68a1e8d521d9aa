import { CustomFunctionError } from '../hosts/univer/custom-functions';
import type { HostFunction, ParameterMetadata } from '../hosts/univer/function-set';
import type { CellError, CellResult, CellScalar } from '../hosts/workbook-model';
import { type Call, isCall, readCall } from './read-call';

/** The result of one formula, as the spreadsheet engine would return it. */
export type PlainResult = CellScalar | readonly (readonly CellResult[])[] | { readonly error: CellError };

type Cell = CellScalar | null | CustomFunctionError;

/** The formula needs the spreadsheet engine: it is more than calls of the add-in's functions with constants. */
class NeedsEngine extends Error {}

const knownCodes: ReadonlySet<string> = new Set(['#DIV/0!', '#NAME?', '#VALUE!', '#NUM!', '#N/A', '#REF!', '#NULL!']);

/** Excel hands a matrix parameter rows of cells even where one cell or a literal was given, and an omitted one as null. */
function asDeclared(value: Cell | Cell[][], parameter: ParameterMetadata): unknown {
  if (parameter.dimensionality === 'matrix') return value === null || Array.isArray(value) ? value : [[value]];
  return Array.isArray(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value;
}

function cellOf(value: unknown): Cell {
  if (value instanceof CustomFunctionError) return value;
  if (value === null || value === undefined) return '';
  if (typeof value === 'number')
    return Number.isFinite(value) ? value : new CustomFunctionError('#NUM!', 'the result is not a finite number');
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  throw new NeedsEngine();
}

function rowsOf(block: readonly (readonly unknown[])[]): Cell[][] {
  if (block.length === 0 || block.some((row) => row.length !== block[0]?.length)) throw new NeedsEngine();
  return block.map((row) => row.map(cellOf));
}

function argumentOf(value: unknown, functions: ReadonlyMap<string, HostFunction>): Cell | Cell[][] {
  if (value === null) return null;
  if (isCall(value)) return compute(value, functions);
  return Array.isArray(value) ? rowsOf(value as unknown[][]) : cellOf(value);
}

function compute({ name, values }: Call, functions: ReadonlyMap<string, HostFunction>): Cell | Cell[][] {
  const fn = functions.get(`SILT.${name}`.toUpperCase());
  if (fn === undefined || values.length > fn.metadata.parameters.length) throw new NeedsEngine();
  const args = fn.metadata.parameters.map((parameter, index) =>
    index < values.length ? asDeclared(argumentOf(values[index], functions), parameter) : null,
  );
  try {
    const result = fn.implementation(...args, { functionName: fn.metadata.id });
    if (!Array.isArray(result)) return cellOf(result);
    const rows = rowsOf(result.map((row: unknown) => (Array.isArray(row) ? row : [row])));
    const [[first = null, ...more] = [], ...below] = rows;
    return more.length === 0 && below.length === 0 ? first : rows;
  } catch (thrown) {
    if (thrown instanceof CustomFunctionError) return thrown;
    throw new NeedsEngine();
  }
}

function toCellResult(cell: Cell): CellResult {
  if (!(cell instanceof CustomFunctionError)) return cell ?? '';
  if (cell.message === '' || !knownCodes.has(cell.code)) throw new NeedsEngine();
  return { error: { code: cell.code, message: cell.message } };
}

/**
 * Results of formulas that contain only the add-in's functions and constants. The spreadsheet engine is not loaded,
 * because that takes far longer than such calls; undefined if a formula needs the engine.
 */
export function plainResults(
  formulas: readonly string[],
  functions: readonly HostFunction[],
): readonly PlainResult[] | undefined {
  const byName = new Map(functions.map((fn) => [fn.fullName, fn]));
  try {
    return formulas.map((formula) => {
      const result = compute(readPlain(formula), byName);
      return Array.isArray(result) ? result.map((row) => row.map(toCellResult)) : toCellResult(result);
    });
  } catch (thrown) {
    if (thrown instanceof NeedsEngine) return undefined;
    throw thrown;
  }
}

function readPlain(formula: string): Call {
  try {
    return readCall(formula);
  } catch {
    throw new NeedsEngine();
  }
}
