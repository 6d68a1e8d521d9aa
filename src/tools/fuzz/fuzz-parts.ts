import { scalarCalls } from './calls-part';
import { cutPlans } from './cut-plans-part';
import { commandLines, drawings } from './drawings-part';
import { files } from './files-part';
import type { FuzzLog } from './fuzz-log';
import { rangeCalls } from './ranges-part';

interface FuzzPart {
  readonly name: string;
  /** How many of them a long run makes. */
  readonly count: number;
  readonly run: (seed: number, count: number, log: FuzzLog) => void | Promise<void>;
}

/** The second half of the cut plans begins with another seed, which no short run reaches. */
const otherSeed = 1_000_000;

/** Everything that is tried; what takes longest begins first, in halves for two processors, and the others follow. */
export const fuzzParts: readonly FuzzPart[] = [
  { name: 'cut plans', count: 2_500, run: cutPlans },
  { name: 'more cut plans', count: 2_500, run: (seed, count, log) => cutPlans(seed + otherSeed, count, log) },
  { name: 'calls', count: 10_000_000, run: scalarCalls },
  { name: 'ranges', count: 100_000, run: rangeCalls },
  { name: 'files', count: 5_000, run: files },
  { name: 'drawings', count: 20_000, run: drawings },
  { name: 'command lines', count: 100_000, run: commandLines },
];
