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

/** Everything that is tried; the part that takes longest begins first, so that others run beside it. */
export const fuzzParts: readonly FuzzPart[] = [
  { name: 'cut plans', count: 5_000, run: cutPlans },
  { name: 'calls', count: 10_000_000, run: scalarCalls },
  { name: 'ranges', count: 100_000, run: rangeCalls },
  { name: 'files', count: 5_000, run: files },
  { name: 'drawings', count: 20_000, run: drawings },
  { name: 'command lines', count: 100_000, run: commandLines },
];
