import type { CellScalar } from '../../hosts/workbook-model';
import type { SiltCall, Source } from '../cell-formula/calls';
import { argument, unitsOf, withoutErrors } from '../follow/arguments';
import { first } from '../follow/grid';
import { UserError } from '../user-error';
import { planWidth } from './drawings-of';
import { effortPlace, withEffort } from './effort-argument';
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
  const units = await unitsOf(call, around);
  const given = async (at: number) => withoutErrors(await argument(call, at, around));
  const patterns = await given(1);
  const [sheetLength, sheetWidth, gap, effort] = await Promise.all(
    [2, 3, 4, effortPlace].map(async (at) => first(await given(at)) as CellScalar),
  );
  return {
    recognized: {
      request: {
        what: 'cut plan',
        units,
        plan,
        patterns,
        sheetLength: sheetLength ?? '',
        sheetWidth: sheetWidth ?? '',
      },
      from,
      cutSearch: {
        place: { sheet: source.sheet, row: source.range.row, column: source.range.column },
        formula: source.formula,
        formulaWith: (more) => withEffort(source.formula, call, more),
        arguments: [units, patterns, sheetLength, sheetWidth, gap],
        effort: Number(effort || 1),
      },
    },
  };
}
