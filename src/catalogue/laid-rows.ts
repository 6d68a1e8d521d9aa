import { layPatterns, type PlacedPattern, type SheetStock } from '../formulas/cut/cut-plan';
import type { Profile } from '../units/profile';
import type { FaultyRow, RowOf } from './argument';
import { planColumns } from './pattern-columns';

/** The columns of a plan that can end with rows that say why a pattern row was not placed. */
export const laidColumns = {
  ...planColumns,
  piece: { ...planColumns.piece, blank: true },
  sheet: { mixed: true },
  x: { ...planColumns.x, blank: true },
  y: { ...planColumns.y, blank: true },
  direction: { ...planColumns.direction, blank: true },
} as const;

type LaidRow = RowOf<typeof laidColumns>;

/** The plan of the rows that can be placed, then one row for each of the others; throws if none can be read. */
export function planRows(
  given: readonly (PlacedPattern | FaultyRow)[],
  stock: SheetStock,
  effort: number,
  profile: Profile,
): readonly LaidRow[] {
  const readable = given.filter((row): row is PlacedPattern => !('fault' in row));
  const faulty = given.filter((row): row is FaultyRow => 'fault' in row);
  if (readable.length === 0 && faulty[0] !== undefined) throw faulty[0].fault;
  const plan = layPatterns(readable, stock, { effort, under: profile.text });
  const refused = [
    ...faulty.map(({ row, fault }) => notLaid(row, `not laid: ${fault.message || fault.code}`)),
    ...plan.notLaid.map(({ pattern, refusal, tooLarge }) =>
      notLaid(pattern, `${tooLarge ? 'does not fit' : 'not laid'}: ${refusal.advice}`),
    ),
  ];
  return [...plan.rows, ...refused.sort((one, other) => one.pattern - other.pattern)];
}

function notLaid(pattern: number, why: string): LaidRow {
  return { pattern, piece: undefined, sheet: why, x: undefined, y: undefined, direction: undefined };
}
