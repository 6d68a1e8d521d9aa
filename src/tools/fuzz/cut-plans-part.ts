import { catalogue } from '../../catalogue/all';
import { readProfile } from '../../units/profile';
import { toProfile } from '../../units/quantity';
import type { FuzzLog } from './fuzz-log';
import { type Judge, judge } from './judge';
import { Random } from './random';
import { patternRows } from './tables';

/** A plan of sixty pieces should take 0.3 s on an idle machine. */
const MOST_MS = 2000;

/** Lays out that many small orders on sheets of all sizes, gaps that eat the sheet and ribbons of stock included. */
export function cutPlans(seed: number, count: number, log: FuzzLog): void {
  const random = new Random(seed);
  const judges = catalogue.filter(({ name }) => name.startsWith('CUT.')).map(judge);
  const profiles = ['US', 'metric'].map(readProfile);
  for (let i = 0; i < count; i++) {
    const one: Judge = random.pick(judges);
    const profile = random.pick(profiles);
    const bare = (si: number) => Number(toProfile(profile, 'dimension', si).toPrecision(4));
    const patterns = patternRows(random, profile, random.pick([1, 1, 1, 2, 3]));
    const length = random.pick([1.2192, 2.4384, 3, random.magnitude(0.05, 30)]);
    const width = random.pick([0.6096, 1.2192, random.magnitude(0.001, 5)]);
    const gap = random.pick([0, 0, 0.003, 0.01, random.magnitude(1e-7, 1)]);
    const values = [profile.text, patterns, bare(length), bare(width), bare(gap)];
    const call = { name: one.row.name, values };
    log.before(call);
    const fault = one.faultOf(call, log.patience * MOST_MS);
    if (fault !== undefined) log.fault(call, fault);
  }
}
