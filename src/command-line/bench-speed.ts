import { catalogue } from '../catalogue/all';
import type { CatalogueRow } from '../catalogue/define';
import { adapt } from '../functions/adapter';
import type { Profile } from '../units/profile';
import { type Call, isCall, readCall } from './read-call';
import { textTable } from './text-table';

interface Speed {
  readonly name: string;
  /** Calls a second, as a host makes them. */
  readonly adapted: number;
  /** Calls a second of what the adapter wraps, its arguments already read. */
  readonly bare: number;
  /** What the adapter has to read and write besides plain numbers; empty for one value from numbers and choices. */
  readonly besides: string;
}

/** Long enough for the engine to have compiled what it runs and for the clock to be exact. */
const warmUp = 30;
const measured = 100;

/** Calls a second, the best of three spells, since whatever else the machine does can only slow one down. */
function callsASecond(call: () => unknown): number {
  spell(call, warmUp);
  return Math.max(...[1, 2, 3].map(() => spell(call, measured / 3)));
}

function spell(call: () => unknown, milliseconds: number): number {
  const start = performance.now();
  let calls = 0;
  let batch = 1;
  for (;;) {
    for (let i = 0; i < batch; i++) sink = call();
    calls += batch;
    const passed = performance.now() - start;
    if (passed >= milliseconds) return (calls * 1000) / passed;
    if (batch < 4096) batch *= 2;
  }
}

/** Results go here, so that no compiler finds out that nobody wants them. */
export let sink: unknown;

const makeError = (code: string, message: string) => new Error(`${code} ${message}`);
const adapted = new Map(catalogue.map((row) => [row.name, adapt(row, makeError)]));

/** The arguments of a catalogue example as a host hands them over, calls inside calls already answered. */
function argumentsOf({ values }: Call): unknown[] {
  return values.map((value) => (isCall(value) ? adapted.get(value.name)!(...argumentsOf(value)) : value));
}

function speedOf(row: CatalogueRow): Speed {
  const values = argumentsOf(readCall(row.example.formula));
  let read: readonly [Readonly<Record<string, unknown>>, Profile] | undefined;
  const compute: CatalogueRow['compute'] = (given, profile) => {
    read = [given, profile];
    return row.compute(given, profile);
  };
  adapt({ ...row, compute }, makeError)(...values);
  const [given, profile] = read!;
  const call = adapted.get(row.name)!;
  return {
    name: row.name,
    besides: besides(row, values),
    adapted: callsASecond(() => call(...values)),
    bare: callsASecond(() => row.compute(given, profile)),
  };
}

/** What makes a call more than one value from plain numbers. */
function besides(row: CatalogueRow, values: readonly unknown[]): string {
  const specs = Object.values(row.arguments);
  const own = row.units === false ? values : values.slice(1);
  const reads = own.some((value, i) => typeof value === 'string' && !('choice' in (specs[i] ?? {})));
  const table = own.some(Array.isArray);
  const block = 'row' in row.result ? 'a row' : 'rows' in row.result || 'lines' in row.result ? 'rows' : '';
  return [reads ? 'text read' : '', table ? 'table read' : '', block].filter(Boolean).join(', ');
}

const whole = (value: number) => Math.round(value).toLocaleString('en-US');
const wanted = 1_000_000;

/** How fast every function answers its own example, and which single values from plain numbers miss a million a second. */
export function speedTable(): string {
  const speeds = catalogue.map(speedOf);
  const table = textTable(
    ['function', 'calls a second', 'bare formula', 'besides one value from numbers'],
    speeds.map(({ name, adapted, bare, besides }) => [name, whole(adapted), whole(bare), besides]),
  );
  const plain = speeds.filter((speed) => speed.besides === '');
  const slow = plain.filter(({ adapted }) => adapted < wanted).map(({ name }) => name);
  return `${table}

one value from numbers: ${plain.length - slow.length} of ${plain.length} answer at least ${whole(wanted)} calls a second
below that: ${slow.join(', ') || 'none'}`;
}
