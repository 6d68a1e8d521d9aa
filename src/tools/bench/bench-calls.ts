/**
 * Calls of the worksheet functions as a host makes them, and how many of them a second can be made.
 */
import { catalogue } from '../../catalogue/all';
import { type Adapted, adapt } from '../../functions/adapter';

const makeError = (code: string, message: string) => new Error(`${code} ${message}`);
const functions: ReadonlyMap<string, Adapted> = new Map(catalogue.map((row) => [row.name, adapt(row, makeError)]));

/** A function as a host calls it. */
export function adapted(name: string): Adapted {
  const found = functions.get(name);
  if (found === undefined) throw new Error(`there is no function ${name}`);
  return found;
}

/** Short, so that other work on the machine leaves some of the spells alone. */
const spellMs = 8;
/** The engine has compiled what it runs, and nothing else has been in the way, once this many spells bring nothing better. */
const spellsInVain = 8;
const mostSpells = 80;

/** Calls a second on one core: the best of many short spells, as whatever else the machine does can only slow one down. */
export function callsASecond(call: () => unknown): number {
  let best = 0;
  let inVain = 0;
  for (let spells = 0; spells < mostSpells && inVain < spellsInVain; spells++) {
    const rate = spell(call);
    inVain = rate > best ? 0 : inVain + 1;
    best = Math.max(best, rate);
  }
  return best;
}

function spell(call: () => unknown): number {
  const start = performance.now();
  let calls = 0;
  let batch = 1;
  for (;;) {
    for (let i = 0; i < batch; i++) sink = call();
    calls += batch;
    const passed = performance.now() - start;
    if (passed >= spellMs) return (calls * 1000) / passed;
    if (batch < 256) batch *= 2;
  }
}

/** Results go here, so that no compiler finds out that nobody wants them. */
export let sink: unknown;
