import type { FishLimits } from '../../formulas/water/water-species';
import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import type { Bounds, CellValue } from '../argument';
import type { NumberFormat } from '../number-formats';

interface Described {
  /** The name in the first column; the key spelled in words if absent. */
  readonly name?: string;
  readonly meaning: string;
  /** The source of a default that is not a coefficient. */
  readonly source?: string;
  /** How a workbook shows it; as typed if absent. */
  readonly format?: NumberFormat;
}

/** A figure by name. Blank and 0 mean the same: the default, or not given. */
export interface FigureInput extends Described, Bounds {
  readonly kind: Kind;
  /** In SI, or the coefficient of its own name. */
  readonly default?: number | 'coefficient';
  /** A choice of the farmer: PLAN.RANGE never varies it, even if its published range is wide. */
  readonly decided?: true;
  /** The limit of the species, if one is given, overrides the default. */
  readonly species?: (limits: FishLimits) => number;
  /** The key of an earlier input whose figure is the default. */
  readonly as?: string;
  /** Must be given. */
  readonly required?: true;
  /** Something built or bought: `none` means that it is absent. */
  readonly equipment?: true;
}

/** A word out of a list. */
export interface WordInput<C extends string = string> extends Described {
  readonly choice: readonly C[];
  readonly default?: C;
}

/** A cell that is a word or a figure. */
export interface ReaderInput<T = unknown> extends Described {
  /** The name of its kind in the list of inputs. */
  readonly accepts: string;
  /** The words that it reads, for a list of choices. */
  readonly words?: readonly string[];
  /** The kind of the figure, if it is one. */
  readonly kind: Kind;
  readonly reader: (value: CellValue, profile: Profile) => T;
  /** As it would be typed, and the coefficient that it stands for. */
  readonly default: string;
  readonly coefficient?: string;
}

export type NamedInput = FigureInput | WordInput | ReaderInput;
/** The words to choose from for a cell; none if it is a figure. */
export function wordsOf(input: NamedInput): readonly string[] {
  if ('choice' in input) return input.choice;
  return 'reader' in input ? (input.words ?? []) : [];
}

export type NamedInputs = Readonly<Record<string, NamedInput>>;

type Known<S> = S extends { readonly default: unknown } | { readonly required: true } ? never : undefined;

type ValueOf<S> = S extends { readonly reader: (value: CellValue, profile: Profile) => infer T }
  ? T
  : S extends { readonly choice: readonly (infer C)[] }
    ? C | Known<S>
    : S extends { readonly equipment: true }
      ? number | 'none' | Known<S>
      : number | Known<S>;

/** The values of a column of named inputs. */
export type Named<T extends NamedInputs> = { readonly [K in keyof T]: ValueOf<T[K]> };
