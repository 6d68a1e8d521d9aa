import type { CellFault, Column, MixedCell, Quantity } from '../../catalogue/argument';
import type { Result } from '../../catalogue/define';
import { headings } from '../../catalogue/reading/headings';
import { AnswerFault, finite, formatMessage, type KindOf } from '../../catalogue/reading/wording';
import type { Caution } from '../../formulas/caution';
import type { Profile } from '../../units/profile';
import { toProfile } from '../../units/quantity';

/** An error stands only in a grid; the adapter makes it the host's own. */
export type Cell = string | number | CellFault;

/** More rows than this would fill a sheet before anyone could read them. */
export const mostRows = 10_000;

/** What one computation spills: always a block, never an empty one. */
export type Presenter = (computed: unknown, profile: Profile) => Cell[][];

/** A presenter for each kind of result, made once a function. */
export function presenter(result: Result, kindOf: KindOf): Presenter {
  if ('scalar' in result) {
    const { scalar } = result;
    return (computed, profile) => [[finite(toProfile(profile, scalar, computed as number))]];
  }
  if ('quantity' in result) return (computed, profile) => [[mixed(computed as Quantity, kindOf, profile)]];
  if ('text' in result) return (computed) => [[computed as string]];
  if ('date' in result) return (computed) => [[finite(computed as number)]];
  if ('row' in result) {
    const columns = Object.entries(result.row);
    return (computed, profile) => [rowOf(columns, computed as RowValues, kindOf, profile)];
  }
  if ('rows' in result) {
    const columns = Object.entries(result.rows);
    return (computed, profile) => capped((computed as RowValues[]).map((row) => rowOf(columns, row, kindOf, profile)));
  }
  if ('lines' in result) {
    return (computed, profile) => (computed as Caution[]).map((sentence) => [formatMessage(sentence, kindOf, profile)]);
  }
  return (computed, profile) =>
    capped(
      (computed as (MixedCell | CellFault)[][]).map((line) =>
        line.map((value) => (value instanceof Error ? value : mixed(value, kindOf, profile))),
      ),
    );
}

/** The heading row above a result, if it has one. */
export function headingRow(result: Result, profile: Profile): Cell[] | undefined {
  if ('row' in result) return headings(result.row, profile);
  if ('rows' in result) return headings(result.rows, profile);
  if ('lines' in result) return ['cautions'];
  return undefined;
}

type RowValues = Readonly<Record<string, MixedCell | undefined>>;

function rowOf(
  columns: readonly (readonly [key: string, column: Column])[],
  values: RowValues,
  kindOf: KindOf,
  profile: Profile,
): Cell[] {
  return columns.map(([key, column]) => {
    const value = values[key];
    if (value === undefined) return '';
    if ('kind' in column) return finite(toProfile(profile, column.kind, value as number));
    return mixed(value, kindOf, profile);
  });
}

function mixed(value: MixedCell, kindOf: KindOf, profile: Profile): Cell {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return finite(value);
  if ('text' in value) return formatMessage(value, kindOf, profile);
  return finite(toProfile(profile, value.kind, value.si));
}

function capped(rows: Cell[][]): Cell[][] {
  if (rows.length > mostRows) {
    throw new AnswerFault(`the result would be ${rows.length} rows; the limit is ${mostRows}, so ask for fewer`);
  }
  return rows.length > 0 ? rows : [['']];
}
