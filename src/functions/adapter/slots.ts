import type { Argument, CellValue, QuantityArgument } from '../../catalogue/argument';
import { coefficient } from '../../catalogue/coefficients/all';
import { ArgumentError, asArgumentError } from '../../catalogue/reading/argument-error';
import { isBlank } from '../../catalogue/reading/blank';
import { allowed } from '../../catalogue/reading/bounds';
import { figureReader, missing } from '../../catalogue/reading/read-figure';
import { readTable } from '../../catalogue/reading/read-table';
import { blankIsNotZero, typedZeroReader } from '../../catalogue/reading/typed-zero';
import { nearest } from '../../units/nearest';
import type { Profile } from '../../units/profile';
import { wordList } from '../../units/text';
import { openRows, plainRows } from './cells';

export type GivenSoFar = Record<string, unknown>;

/** One argument made ready to read: `value` is a plain cell, or for a table whatever was given. */
export interface Slot {
  readonly name: string;
  readonly spec: Argument;
  /** Whether it takes a range, one value a row. */
  readonly broadcasts: boolean;
  readonly read: (value: CellValue | unknown, profile: Profile, given: GivenSoFar) => unknown;
}

export function slot(name: string, spec: Argument): Slot {
  if ('choice' in spec) return { name, spec, broadcasts: false, read: (value) => readChoice(name, spec, value) };
  if ('table' in spec) {
    return {
      name,
      spec,
      broadcasts: false,
      read: (value, profile) =>
        spec.optional && isBlank(value)
          ? undefined
          : spec.faulty === 'kept'
            ? readTable(name, spec.table, openRows(value), profile, 'kept')
            : readTable(name, spec.table, plainRows(value), profile),
    };
  }
  if ('cells' in spec) {
    return {
      name,
      spec,
      broadcasts: false,
      read: (value) => {
        if (isBlank(value)) throw missing(name, 'a range');
        return openRows(value);
      },
    };
  }
  if ('reader' in spec) {
    return {
      name,
      spec,
      broadcasts: true,
      read: (value, profile) => {
        if (isBlank(value)) {
          if ('default' in spec) return spec.default;
          if (spec.optional || spec.blank) return undefined;
          throw missing(name, spec.accepts);
        }
        try {
          return spec.reader(value as CellValue, profile);
        } catch (error) {
          throw asArgumentError(name, error);
        }
      },
    };
  }
  const readFigure = (blankIsNotZero(spec) ? typedZeroReader : figureReader)(name, spec);
  const otherwise = defaultOf(name, spec);
  return {
    name,
    spec,
    broadcasts: true,
    read: (value, profile, given) =>
      typeof value === 'number' || !isBlank(value)
        ? readFigure(value as CellValue, profile)
        : otherwise(given, profile),
  };
}

/** What a blank stands for, looked up once where it does not depend on the other arguments. */
function defaultOf(name: string, spec: QuantityArgument): (given: GivenSoFar, profile: Profile) => number | undefined {
  const { default: otherwise } = spec;
  if (typeof otherwise === 'function') return otherwise as (given: GivenSoFar, profile: Profile) => number;
  if (otherwise === undefined && !spec.optional) {
    return (_, profile) => {
      throw missing(name, allowed(spec, profile));
    };
  }
  const value = typeof otherwise === 'string' ? coefficient(otherwise).typical : otherwise;
  return () => value;
}

function readChoice(
  name: string,
  spec: { readonly choice: readonly string[]; readonly default?: string; readonly optional?: true },
  value: unknown,
): string | undefined {
  // No word is 0, so a 0 is an empty cell of an older host.
  if (isBlank(value) || value === 0) {
    if (spec.default !== undefined) return spec.default;
    if (spec.optional) return undefined;
    if (value === 0) throw new ArgumentError(`${name}: 0 or blank is not allowed; give ${oneOf(spec.choice)}`);
    throw missing(name, oneOf(spec.choice));
  }
  const typed = String(value).trim();
  if (spec.choice.includes(typed)) return typed;
  const folded = typed.toLowerCase().replace(/\s+/g, ' ');
  const found = spec.choice.find((word) => word.toLowerCase() === folded);
  if (found !== undefined) return found;
  const near = spec.choice.length > 6 ? `; nearest are ${wordList(nearest(typed, spec.choice))}` : '';
  throw new ArgumentError(`${name}: "${typed.slice(0, 40)}" is not allowed; give ${oneOf(spec.choice)}${near}`);
}

/** Short lists in full; of long ones the first few. */
function oneOf(words: readonly string[]): string {
  return words.length > 8 ? `one of ${wordList(words.slice(0, 8))} …` : wordList(words);
}
