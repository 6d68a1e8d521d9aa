import type { SiltCall, Source } from '../cell-formula/calls';
import { argument, unitsOf, withoutErrors } from '../follow/arguments';
import { first } from '../follow/grid';
import { UserError } from '../user-error';
import { planWidth } from './drawings-of';
import type { Recognition, SelectionContext } from './recognition';

/** A cut plan in the sheet, with the pattern rows and sheet sizes of its formula. */
export async function recognizeCutPlan(
  call: SiltCall,
  source: Source,
  from: string,
  around: SelectionContext,
): Promise<Recognition> {
  const block = await around.host.read({ sheet: source.sheet, range: source.range });
  const plan = withoutErrors(block.values);
  if ((plan[0]?.length ?? 0) < planWidth) {
    throw new UserError(
      `${from} shows only part of a cut plan; give SILT.CUT.PLAN a cell of its own and room to spill.`,
    );
  }
  const [units, patterns, length, width] = await Promise.all([
    unitsOf(call, around),
    argument(call, 1, around),
    argument(call, 2, around),
    argument(call, 3, around),
  ]);
  const [sheetLength, sheetWidth] = [length, width].map((grid) => first(withoutErrors(grid)));
  return {
    recognized: {
      request: {
        what: 'cut plan',
        units,
        plan,
        patterns: withoutErrors(patterns),
        sheetLength: sheetLength as string | number | boolean,
        sheetWidth: sheetWidth as string | number | boolean,
      },
      from,
    },
  };
}
