import { catalogue } from '../../catalogue/all';
import { callOf } from './arguments';
import type { FuzzLog } from './fuzz-log';
import { type Judge, judge } from './judge';
import { Random } from './random';

/** The longest time for a call, ms; functions that sample a farm a thousand times may take longer. */
const MOST_MS = 200;
const SAMPLING_MS = 3000;

/** How much more rarely than others a function is called: those that read tables, and those that sample a farm. */
function rarity({ name, arguments: args }: Judge['row']): number {
  if (sampling.test(name)) return 20_000;
  if (name.startsWith('CUT.')) return Number.POSITIVE_INFINITY;
  return Object.values(args).some((spec) => 'cells' in spec || 'table' in spec) || name.endsWith('.LIST') ? 40 : 1;
}

const sampling = /^PLAN\.(?:RANGE|DRIVERS)$/;

/** Makes that many calls of single values over the whole catalogue. */
export function scalarCalls(seed: number, count: number, log: FuzzLog): void {
  const random = new Random(seed);
  const judges = catalogue.map(judge).map((one) => ({ ...one, share: 1 / rarity(one.row) }));
  for (let i = 0; i < count; i++) {
    let one = random.pick(judges);
    while (one.share < 1 && !random.chance(one.share)) one = random.pick(judges);
    const call = callOf(random, one.row);
    log.before(call);
    const fault = one.faultOf(call, log.patience * (sampling.test(one.row.name) ? SAMPLING_MS : MOST_MS));
    if (fault !== undefined) log.fault(call, fault);
  }
}
