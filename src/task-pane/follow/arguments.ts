import type { CellScalar } from '../../hosts/workbook-model';
import { readProfile } from '../../units/profile';
import type { SiltCall } from '../cell-formula/calls';
import { evaluate, type Surroundings } from './evaluate';
import { first, type Grid, NotFollowed } from './grid';

/** An argument's values; one blank value if it was left out. */
export async function argument(call: SiltCall, at: number, around: Surroundings): Promise<Grid> {
  const part = call.given[at];
  return part ? evaluate(part, call.scope, around) : [['']];
}

/** The profile in a call, which may differ from the workbook's. */
export async function unitsOf(call: SiltCall, around: Surroundings): Promise<string> {
  const units = first(await argument(call, 0, around));
  return readProfile(typeof units === 'object' ? units.error.code : units).text;
}

/** Values without errors; an error among them ends the evaluation with its message. */
export function withoutErrors(grid: Grid): readonly (readonly CellScalar[])[] {
  return grid.map((line) =>
    line.map((value) => {
      if (typeof value !== 'object') return value;
      throw new NotFollowed(`gives ${value.error.code}${value.error.message === '' ? '' : `: ${value.error.message}`}`);
    }),
  );
}
