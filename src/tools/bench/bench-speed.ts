import { catalogue } from '../../catalogue/all';
import type { CatalogueRow } from '../../catalogue/define';
import { type Call, isCall, readCall } from '../../command-line/read-call';
import { textTable } from '../../command-line/text-table';
import { adapt } from '../../functions/adapter';
import { type Profile, readProfile } from '../../units/profile';
import { readQuantity, toProfile } from '../../units/quantity';
import { adapted, callsASecond } from './bench-calls';
import { isMet, verdictText, type Wanted } from './bench-wanted';

interface Speed {
  readonly name: string;
  /** Calls a second, as a host makes them. */
  readonly adapted: number;
  /** Calls a second of what the adapter wraps, its arguments already read. */
  readonly bare: number;
  /** What the adapter reads and writes besides numbers and words of a list; empty for one value from those. */
  readonly extraWork: string;
  readonly wanted: Wanted;
}

/** Calls a second that are wanted of a closed form that gives one value from numbers. */
const closedForm: Wanted = { atLeast: 1_000_000 };

/** Functions that search for their result step by step, and what is wanted of some of them. */
const iterative: Readonly<Record<string, Wanted>> = {
  'SETTLE.VELOCITY': { atLeast: 200_000 },
  'SETTLE.REYNOLDS': {},
  'SETTLE.GRAIN': {},
  'SETTLE.CAPTURE': { atLeast: 20_000 },
  'PIPE.LOSS': { atLeast: 300_000 },
  'PIPE.GRAVITY': {},
  'PIPE.DUTY': { atLeast: 20_000 },
};

/** The arguments of a catalogue example as a host passes them, with inner calls already computed. */
export function argumentsOf({ values }: Call): unknown[] {
  return values.map((value) => (isCall(value) ? adapted(value.name)(...argumentsOf(value)) : value));
}

/** The same with every figure in text converted to a number of the profile, but for a 0 that must be text to count. */
function asNumbers(row: CatalogueRow, values: readonly unknown[]): unknown[] {
  if (row.units === false) return [...values];
  const [units, ...own] = values;
  const profile = readProfile(units);
  const specs = Object.values(row.arguments);
  const numbers = own.map((value, i) => {
    const spec = specs[i];
    if (typeof value !== 'string' || spec === undefined || 'reader' in spec || !('kind' in spec)) return value;
    const number = toProfile(profile, spec.kind, readQuantity(profile, spec.kind, value));
    return number === 0 ? value : number;
  });
  return [units, ...numbers];
}

/** The arguments of a function's own example, with figures as numbers. */
export function numbersOfExample(row: CatalogueRow): unknown[] {
  return asNumbers(row, argumentsOf(readCall(row.example.formula)));
}

function speedOf(row: CatalogueRow): Speed {
  const values = numbersOfExample(row);
  let read: readonly [Readonly<Record<string, unknown>>, Profile] | undefined;
  const compute: CatalogueRow['compute'] = (given, profile) => {
    read = [given, profile];
    return row.compute(given, profile);
  };
  adapt({ ...row, compute }, (code, message) => new Error(`${code} ${message}`))(...values);
  if (read === undefined) throw new Error(`${row.name} was not computed from its example`);
  const [given, profile] = read;
  const call = adapted(row.name);
  const more = besides(row, values);
  return {
    name: row.name,
    extraWork: more,
    wanted: iterative[row.name] ?? (more === '' ? closedForm : {}),
    adapted: callsASecond(() => call(...values)),
    bare: callsASecond(() => row.compute(given, profile)),
  };
}

/** Why a call is more than one value from plain numbers. */
function besides(row: CatalogueRow, values: readonly unknown[]): string {
  const specs = Object.values(row.arguments);
  const own = row.units === false ? values : values.slice(1);
  const reads = own.some((value, i) => typeof value === 'string' && !('choice' in (specs[i] ?? {})));
  const table = own.some(Array.isArray);
  const block = 'row' in row.result ? 'a row' : 'scalar' in row.result ? '' : gives(row.result);
  const search = row.name in iterative ? 'a search' : '';
  return [reads ? 'text read' : '', table ? 'table read' : '', block, search].filter(Boolean).join(', ');
}

function gives(result: CatalogueRow['result']): string {
  return 'rows' in result || 'lines' in result || 'grid' in result ? 'rows' : '';
}

const whole = (value: number) => Math.round(value).toLocaleString('en-US');

/** Measures again if it was too slow, in case the machine was busy. */
function fairSpeedOf(row: CatalogueRow): Speed {
  const first = speedOf(row);
  return isMet(first.adapted, first.wanted) ? first : speedOf(row);
}

/** How fast every function computes its own example, figures as numbers, and which of them miss what is wanted. */
export function speedTable(): string {
  const speeds = catalogue.map(fairSpeedOf);
  const table = textTable(
    ['function', 'calls a second', 'bare formula', 'wanted', 'besides one value from numbers'],
    speeds.map(({ name, adapted: rate, bare, wanted, extraWork: more }) => [
      name,
      whole(rate),
      whole(bare),
      verdictText(rate, wanted),
      more,
    ]),
  );
  const judgedOnes = speeds.filter(({ wanted }) => wanted.atLeast !== undefined);
  const missed = judgedOnes.filter(({ adapted: rate, wanted }) => !isMet(rate, wanted)).map(({ name }) => name);
  return `${table}

${judgedOnes.length - missed.length} of ${judgedOnes.length} are as fast as is wanted; too slow: ${missed.join(', ') || 'none'}`;
}
