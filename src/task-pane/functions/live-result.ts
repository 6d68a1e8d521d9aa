import type { CatalogueRow } from '../../catalogue/define';
import type { FunctionLibrary } from '../../functions/function-library';
import type { CellResult, CellScalar } from '../../hosts/workbook-model';
import { type Profile, readProfile } from '../../units/profile';
import { Unreadable } from '../../units/unreadable';

/** What a function gives for the fields of a form. */
export type CallResult =
  /** `unit` is that of a single figure. */
  | {
      readonly is: 'result';
      readonly heading: readonly string[] | undefined;
      readonly rows: readonly (readonly CellResult[])[];
      readonly unit: string;
    }
  | { readonly is: 'fault'; readonly code: string; readonly message: string };

/** A value, or a block of cells. */
export type Given = CellScalar | readonly (readonly CellResult[])[];

class ShownError extends Error {
  readonly code: string;
  constructor(code: string, message: string) {
    super(message);
    this.code = code;
  }
}

/** Computes with the same functions as the cells; `given` are the arguments after the units, blank if left out. */
export function computeResult(
  functionLibrary: FunctionLibrary,
  row: CatalogueRow,
  units: string,
  given: readonly Given[],
): CallResult {
  const call = functionLibrary.adapt(row, (code, message) => new ShownError(code, message));
  const wantsHeading = functionLibrary.takesHeadings(row);
  const blanks = new Array<string>(Object.keys(row.arguments).length - given.length).fill('');
  const values = [...(row.units === false ? [] : [units]), ...given.map(forAdapter), ...blanks];
  if (wantsHeading) values.push(true);
  let block: readonly (readonly CellResult[])[];
  try {
    block = call(...values).map((line) => line.map(toCellResult));
  } catch (error) {
    if (error instanceof ShownError) return { is: 'fault', code: error.code, message: error.message };
    throw error;
  }
  const [first, ...rest] = block;
  return {
    is: 'result',
    heading: wantsHeading ? first?.map(String) : undefined,
    rows: wantsHeading ? rest : block,
    unit: unitOf(row, units),
  };
}

/** Errors in cells are handed over as hosts do, with their code. */
function forAdapter(given: Given): unknown {
  if (typeof given !== 'object') return given;
  return given.map((line) => line.map((value) => (typeof value === 'object' ? value.error : value)));
}

function toCellResult(value: unknown): CellResult {
  if (value instanceof ShownError) return { error: { code: value.code, message: value.message } };
  return typeof value === 'number' || typeof value === 'boolean' ? value : String(value ?? '');
}

function unitOf(row: CatalogueRow, units: string): string {
  const profile = profileOf(units);
  return 'scalar' in row.result && profile ? profile.units[row.result.scalar].symbol : '';
}

/** The profile that a text asks for; undefined where it asks for none. */
export function profileOf(units: string): Profile | undefined {
  try {
    return readProfile(units);
  } catch (error) {
    if (error instanceof Unreadable) return undefined;
    throw error;
  }
}
