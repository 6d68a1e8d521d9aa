import type { Caution } from '../formulas/caution';
import type { Kind } from '../units/kinds';
import type { Profile } from '../units/profile';

/** The value of a cell without the host's wrapping; blank is the empty string. */
export type CellValue = string | number | boolean;

/** An error in a cell, given to a function or returned by one. */
export interface CellFault extends Error {
  readonly code: string;
}

interface Described {
  /** What the argument means, in a builder's words; shown while typing, so keep it short. */
  readonly meaning: string;
}

export interface Bounds {
  /** All four in SI, in the base unit of the argument's kind. */
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
  readonly whole?: true;
}

/** A figure of some kind. A default is in SI, the key of a coefficient, or calculated from earlier arguments. */
export interface QuantityArgument extends Described, Bounds {
  readonly kind: Kind;
  readonly default?: number | string | ((given: never, profile: Profile) => number);
  /** The default in help, if it is calculated. */
  readonly defaultReads?: string;
  /** May be left out; it is then undefined. */
  readonly optional?: true;
  /** The period of a rate, if the kind does not name it. */
  readonly per?: 'day' | 'month' | 'year' | 'season';
}

/** One word of a list. The refusal of another word names the nearest ones. */
export interface ChoiceArgument<C extends string = string> extends Described {
  readonly choice: readonly C[];
  readonly default?: C;
  readonly optional?: true;
}

/** A cell that needs its own reader, such as `2 elbow, 1 tee` or `40 mg/L as NO3`. */
export interface ReaderArgument<T = unknown> extends Described {
  /** Throws Unreadable with advice; the adapter adds the argument's name. It never gets a blank. */
  readonly reader: (value: CellValue, profile: Profile) => T;
  /** What it accepts, in words, for help and for the message about a blank. */
  readonly accepts: string;
  /** The kind whose unit messages use for this argument. */
  readonly kind?: Kind;
  readonly default?: T;
  readonly defaultReads?: string;
  readonly optional?: true;
  /** Required in the call, but the cell may be blank; it is then undefined. */
  readonly blank?: true;
}

export interface TableArgument<C extends Columns = Columns> extends Described {
  readonly table: C;
  readonly optional?: true;
  /** Rows that cannot be read are passed with their fault, because the function can work with the others. */
  readonly faulty?: 'kept';
}

/** A row of a table that could not be read, with its number and why. */
export interface FaultyRow {
  readonly row: number;
  readonly fault: CellFault;
}

/**
 * A table that the function reads itself: rows of plain cells, with all-blank rows, so that rows can be counted, and with
 * errors in cells.
 */
export interface CellsArgument extends Described {
  readonly cells: true;
  /** If each row is one input, named in the first column: the kind of its figures by that name in lower case. */
  readonly inputs?: Readonly<Record<string, Kind>>;
}

export type Argument = QuantityArgument | ChoiceArgument | ReaderArgument | TableArgument | CellsArgument;
export type Arguments = Readonly<Record<string, Argument>>;

/** A column of a table that is read or of rows that a function returns. */
export interface QuantityColumn extends Bounds {
  readonly kind: Kind;
  /** The heading, if the key spelled in words does not fit. */
  readonly heading?: string;
  /** The cell may be blank (undefined). */
  readonly blank?: true;
}
export interface TextColumn {
  readonly text: true;
  readonly heading?: string;
  readonly blank?: true;
}
/** Figures of different kinds, or sentences with figures, in one column; returned only, never read. */
export interface MixedColumn {
  readonly mixed: true;
  /** The kind whose unit the heading shows, if all figures are of one kind and the rest are words. */
  readonly unitOf?: Kind;
  readonly heading?: string;
}
export interface ReaderColumn<T = unknown> {
  readonly reader: (value: CellValue, profile: Profile) => T;
  readonly accepts: string;
  readonly heading?: string;
  readonly blank?: true;
}
export type Column = QuantityColumn | TextColumn | MixedColumn | ReaderColumn;
export type Columns = Readonly<Record<string, Column>>;

type Whether<A, T> = A extends { readonly optional: true } | { readonly blank: true } ? T | undefined : T;

type ArgumentValue<A> = A extends { readonly choice: readonly (infer C)[] }
  ? Whether<A, C>
  : A extends { readonly reader: (value: CellValue, profile: Profile) => infer T }
    ? Whether<A, T>
    : A extends { readonly table: infer C extends Columns }
      ? Whether<A, readonly (A extends { readonly faulty: 'kept' } ? TableRow<C> | FaultyRow : TableRow<C>)[]>
      : A extends { readonly cells: true }
        ? readonly (readonly (CellValue | CellFault)[])[]
        : Whether<A, number>;

export type Given<A extends Arguments> = { readonly [K in keyof A]: ArgumentValue<A[K]> };

/** A figure with its kind, for columns and results whose kind is known only when computed. */
export interface Quantity {
  readonly kind: Kind;
  readonly si: number;
}

export type MixedCell = Quantity | Caution | string | number;

type ColumnValue<C> = C extends { readonly mixed: true }
  ? MixedCell
  : C extends { readonly text: true }
    ? Whether<C, string>
    : C extends { readonly reader: (value: CellValue, profile: Profile) => infer T }
      ? Whether<C, T>
      : Whether<C, number>;

/** A row that was read, with its number counted from the first row below the headings. */
export type TableRow<C extends Columns> = RowOf<C> & { readonly row: number };

export type RowOf<C extends Columns> = { readonly [K in keyof C]: ColumnValue<C[K]> };
