import type { Caution } from '../formulas/caution';
import type { Kind } from '../units/kinds';
import type { Profile } from '../units/profile';
import type { Arguments, CellFault, Columns, Given, MixedCell, Quantity, RowOf } from './argument';

/**
 * What a function returns. `rows` and `row` can have a heading row; `lines` are sentences in one column; `grid` is a block
 * whose columns depend on the arguments, with each error in its own cell.
 */
export type Result =
  | { readonly scalar: Kind }
  | { readonly quantity: true }
  | { readonly text: true }
  | { readonly date: true }
  | { readonly row: Columns }
  | { readonly rows: Columns }
  | { readonly lines: true }
  | { readonly grid: true; readonly rowsOf?: readonly GridRow[] };

/** A row of a grid that has a name, for help. */
export interface GridRow {
  readonly name: string;
  readonly kind: Kind;
  readonly meaning: string;
}

export type Computed<R> = R extends { readonly scalar: Kind } | { readonly date: true }
  ? number
  : R extends { readonly quantity: true }
    ? Quantity
    : R extends { readonly text: true }
      ? string
      : R extends { readonly row: infer C extends Columns }
        ? RowOf<C>
        : R extends { readonly rows: infer C extends Columns }
          ? readonly RowOf<C>[]
          : R extends { readonly lines: true }
            ? readonly Caution[]
            : readonly (readonly (MixedCell | CellFault)[])[];

/** The whole contract of one worksheet function; help, metadata, checks and reference pages all come from it. */
export interface FunctionRow<A extends Arguments = Arguments, R extends Result = Result> {
  /** The name a user types after `SILT.`. */
  readonly name: string;
  readonly summary: string;
  /** False only if neither an argument nor the result has a unit, so that the function needs no profile. */
  readonly units?: false;
  /** True if it needs the search for cut plans, which Excel loads when it is first needed. */
  readonly search?: true;
  readonly arguments: A;
  readonly result: R;
  readonly compute: (given: Given<A>, profile: Profile) => Computed<R>;
  /** The formula in plain text, for the reference page. */
  readonly formula?: string;
  /** The range in which the source is valid, how to measure, how far sources differ. */
  readonly notes?: readonly string[];
  /** Where the formula or figures come from. */
  readonly sources: readonly string[];
  /** A cell formula and, if it is one value, its result (full precision not needed). */
  readonly example: { readonly formula: string; readonly gives: string };
  /** Why no published figure can check it, if none can (a definition, a count). */
  readonly unpublished?: string;
}

/** A row as the adapter sees it, after its types were checked. */
export interface CatalogueRow extends Omit<FunctionRow, 'compute'> {
  readonly compute: (given: Readonly<Record<string, unknown>>, profile: Profile) => unknown;
}

/** Checks the types of one row, so that a wrong kind, column or argument name does not compile. */
export function define<const A extends Arguments, const R extends Result>(row: FunctionRow<A, R>): CatalogueRow;
// The adapter reads each argument by the row itself, so the types of `given` are kept without being known there.
export function define(row: CatalogueRow): CatalogueRow {
  return row;
}
