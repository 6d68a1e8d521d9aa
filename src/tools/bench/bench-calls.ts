/**
 * Calls of the worksheet functions as a host makes them, and how many are possible per second.
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

/** Short, so that other work on the machine does not disturb every spell. */
const spellMs = 8;
/** When this many spells bring nothing better, the engine has compiled the code and nothing else disturbed it. */
const spellsInVain = 8;
const mostSpells = 80;

/** Calls per second on one core: the best of many short spells, because other work can only slow a spell down. */
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

/** Results are stored here, so that the compiler does not remove the calls as useless. */
export let sink: unknown;
