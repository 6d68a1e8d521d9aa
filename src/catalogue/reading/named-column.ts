import { fishKinds, fishLimits } from '../../formulas/water/water-species';
import { nearest } from '../../units/nearest';
import type { Profile } from '../../units/profile';
import { isRangeText } from '../../units/quantity-range';
import { wordList, wordText } from '../../units/text';
import type { CellValue } from '../argument';
import { coefficient } from '../coefficients/all';
import type { FigureInput, Named, NamedInput, NamedInputs, ReaderInput, WordInput } from '../plan/named-input';
import { ArgumentError, asArgumentError, withPlace } from './argument-error';
import { allowed, boundsTest } from './bounds';
import { type InputTable, inputName, isNothing, whatIsGiven } from './input-table';
import { type FigureReader, figureReader } from './read-figure';
import { rangeReader, type TypedRange } from './typed-range';

/** One column of named inputs, read. */
export interface NamedColumn<T extends NamedInputs> {
  readonly values: Named<T>;
  /** Names of the inputs that use their default, in the order of the table. */
  readonly defaults: readonly string[];
  /** The keys of those inputs. */
  readonly left: ReadonlySet<string>;
  /** Typed ranges by key; the middle is the value. */
  readonly ranges: ReadonlyMap<string, TypedRange>;
}

const absent = Symbol('use the default');

type CellReader = (value: CellValue, profile: Profile) => unknown;

interface Reader {
  readonly key: string;
  readonly name: string;
  readonly spec: NamedInput;
  readonly read: CellReader;
  readonly readRange: ReturnType<typeof rangeReader>;
}

const readersOf = new WeakMap<NamedInputs, readonly Reader[]>();

function readers(inputs: NamedInputs): readonly Reader[] {
  let made = readersOf.get(inputs);
  if (made === undefined) {
    made = Object.entries(inputs).map(([key, spec]) => {
      const name = inputName(inputs, key);
      return { key, name, spec, read: cellReader(name, spec), readRange: rangeReader(name, spec) };
    });
    readersOf.set(inputs, made);
  }
  return made;
}

/** Whether a column holds only blanks and zeros. */
export function isBlankColumn({ lines }: InputTable, column: number): boolean {
  return [...lines.values()].every((cells) => isNothing(cells[column]));
}

/**
 * Reads a column of a table into SI. `place` begins every message. An input without a row counts as blank; an error in a
 * cell is thrown as it is. If the table may hold ranges, the middle of a range is its value.
 */
export function namedColumn<T extends NamedInputs>(
  inputs: T,
  table: InputTable,
  column: number,
  place: string,
  profile: Profile,
  mayBeRange = false,
): NamedColumn<T> {
  const values: Record<string, unknown> = {};
  const defaults: string[] = [];
  const left = new Set<string>();
  const ranges = new Map<string, TypedRange>();
  for (const { key, name, spec, read, readRange } of readers(inputs)) {
    const cell = table.lines.get(key)?.[column] ?? '';
    if (cell instanceof Error) throw cell;
    if (mayBeRange && readRange !== undefined && isRangeText(cell)) {
      const range = withPlace(place, () => readRange(cell, profile));
      ranges.set(key, range);
      values[key] = inputValue(key, range.middle);
      continue;
    }
    const value = withPlace(place, () => read(cell, profile));
    if (value !== absent) values[key] = value;
    else if ('required' in spec && spec.required)
      throw new ArgumentError(`${place}${name}: ${whatIsGiven(table, key, column)}; give ${allowed(spec, profile)}`);
    else {
      const bySpecies = speciesLimit(spec, values);
      values[key] = bySpecies ?? withPlace(place, () => defaultOf(name, spec, values, profile));
      if (values[key] === undefined) continue;
      left.add(key);
      defaults.push(bySpecies === undefined ? name : `${name} (from species)`);
    }
  }
  return { values: values as Named<T>, defaults, left, ranges };
}

/** The value of an input for a figure: for a crop its feed, for all others the figure itself. */
export function inputValue(key: string, figure: number): unknown {
  return key === 'crop' ? { feed: figure, plants: undefined } : figure;
}

/** The limit of the species, if one was given. */
function speciesLimit(spec: NamedInput, { species }: Readonly<Record<string, unknown>>): number | undefined {
  if (!('species' in spec) || spec.species === undefined) return undefined;
  const kind = fishKinds.find((one) => one === species);
  return kind === undefined ? undefined : spec.species(fishLimits(kind));
}

function defaultOf(
  name: string,
  spec: NamedInput,
  before: Readonly<Record<string, unknown>>,
  profile: Profile,
): unknown {
  if ('reader' in spec) return spec.reader(spec.default, profile);
  if ('as' in spec && spec.as !== undefined) return before[spec.as];
  return spec.default === 'coefficient' ? coefficient(name).typical : spec.default;
}

/** Text that means no value: a dash, a zero, or the results' own words. */
const nothingText = /^(?:[-–—]|0+(?:[.,]0*)?|not given)$/i;

function cellReader(name: string, spec: NamedInput): CellReader {
  const read =
    'choice' in spec ? wordReader(name, spec) : 'reader' in spec ? ownReader(name, spec) : stageReader(name, spec);
  return (value, profile) => {
    if (isNothing(value)) return absent;
    if (typeof value !== 'string') return read(value, profile);
    const text = value.trim();
    return nothingText.test(text) ? absent : read(text, profile);
  };
}

/** `none` means an absent stage, 0 for a coefficient that may be 0, and otherwise not given. */
function stageReader(name: string, spec: FigureInput): CellReader {
  const figure: FigureReader = figureReader(name, spec);
  const mayBeZero = spec.kind !== 'temperature' && boundsTest(spec)(0);
  const ofNone = spec.equipment ? 'none' : spec.default === undefined ? absent : mayBeZero ? 0 : undefined;
  return (value, profile) => {
    if (ofNone !== undefined && typeof value === 'string' && value.toLowerCase() === 'none') return ofNone;
    const si = figure(value, profile);
    return spec.equipment && si === 0 ? absent : si;
  };
}

function wordReader(name: string, spec: WordInput): CellReader {
  const words = new Map(spec.choice.map((word) => [word.toLowerCase(), word]));
  return (value) => {
    const typed = String(value);
    const word = words.get(typed.toLowerCase().replace(/\s+/g, ' '));
    if (word !== undefined) return word;
    const near = spec.choice.length > 6 ? nearest(typed, spec.choice) : spec.choice;
    throw new ArgumentError(
      `${name}: ${wordText(typed)} is not allowed; ${near === spec.choice ? 'give' : 'nearest are'} ${wordList(near)}`,
    );
  };
}

function ownReader(name: string, spec: ReaderInput): CellReader {
  return (value, profile) => {
    if (typeof value === 'string' && value.toLowerCase() === 'none') return absent;
    try {
      return spec.reader(value, profile);
    } catch (error) {
      throw asArgumentError(name, error);
    }
  };
}
