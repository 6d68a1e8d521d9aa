import type { Caution } from '../formulas/caution';
import type { Kind } from '../units/kinds';
import type { Profile } from '../units/profile';

/** What a cell can hand over once the host's wrappings are off; blank is the empty string. */
export type CellValue = string | number | boolean;

/** An error that stands in a cell, one given to a function or one that a function gives. */
export interface CellFault extends Error {
  readonly code: string;
}

interface Described {
  /** What the argument means, in words a builder uses; shown while typing, so kept short. */
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

/** A figure of some kind. A default is in SI, the key of a coefficient, or worked out from the arguments before it. */
export interface QuantityArgument extends Described, Bounds {
  readonly kind: Kind;
  readonly default?: number | string | ((given: never, profile: Profile) => number);
  /** How the default reads in help, where it is worked out. */
  readonly defaultReads?: string;
  /** May be left out, and then is undefined. */
  readonly optional?: true;
  /** The time a rate is over, where the kind does not already say it. */
  readonly per?: 'day' | 'month' | 'year' | 'season';
}

/** One word of a list. Words not in the list are answered with the nearest ones. */
export interface ChoiceArgument<C extends string = string> extends Described {
  readonly choice: readonly C[];
  readonly default?: C;
  readonly optional?: true;
}

/** A cell that needs a reading of its own, such as `2 elbow, 1 tee` or `40 mg/L as NO3`. */
export interface ReaderArgument<T = unknown> extends Described {
  /** Throws Unreadable with advice; the adapter adds the argument's name. Blank never reaches it. */
  readonly reader: (value: CellValue, profile: Profile) => T;
  /** What it accepts, in words, for help and for the message about a blank. */
  readonly accepts: string;
  /** The kind whose unit words this argument's figures in messages. */
  readonly kind?: Kind;
  readonly default?: T;
  readonly defaultReads?: string;
  readonly optional?: true;
  /** Has its place in the call, but the cell may be blank, and then it is undefined. */
  readonly blank?: true;
}

export interface TableArgument<C extends Columns = Columns> extends Described {
  readonly table: C;
  readonly optional?: true;
  /** Rows that cannot be read are handed over with their fault, where the function can do with the others. */
  readonly faulty?: 'kept';
}

/** A row of a table that could not be read, with its number and why. */
export interface FaultyRow {
  readonly row: number;
  readonly fault: CellFault;
}

/**
 * A table whose shape the function reads itself: rows of plain cells, all-blank rows kept, so that rows can be counted,
 * and errors in cells left where they stand.
 */
export interface CellsArgument extends Described {
  readonly cells: true;
  /** Where each row is one input with its name in the first column: the kind of its figures, by that name in lower case. */
  readonly inputs?: Readonly<Record<string, Kind>>;
}

export type Argument = QuantityArgument | ChoiceArgument | ReaderArgument | TableArgument | CellsArgument;
export type Arguments = Readonly<Record<string, Argument>>;

/** A column of a table that is read or of rows that are given. */
export interface QuantityColumn extends Bounds {
  readonly kind: Kind;
  /** Heading where the key, spelled in words, would not do. */
  readonly heading?: string;
  /** The cell may be blank (undefined). */
  readonly blank?: true;
}
export interface TextColumn {
  readonly text: true;
  readonly heading?: string;
  readonly blank?: true;
}
/** Figures of different kinds, or sentences with figures, down one column; given only, never read. */
export interface MixedColumn {
  readonly mixed: true;
  /** The kind whose unit stands in the heading, where the figures are all of one kind beside words. */
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

/** A figure that carries its own kind, for columns and results whose kind is known only when computed. */
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

/** A row that was read, with its number counted from the first one under the headings. */
export type TableRow<C extends Columns> = RowOf<C> & { readonly row: number };

export type RowOf<C extends Columns> = { readonly [K in keyof C]: ColumnValue<C[K]> };
