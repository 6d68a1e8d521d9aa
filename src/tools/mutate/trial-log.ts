import { appendFileSync, existsSync, readFileSync } from 'node:fs';
import type { Hits } from './mutation-switch';

/** A test as it runs without any change. */
export interface TestRun {
  readonly id: string;
  /** Processor time, ms. */
  readonly took: number;
  /** How often the test reaches each change, by the change's id. */
  readonly hits: Hits;
}

export type Verdict = 'killed' | 'endless' | 'survived';

/** What the process that tries changes tells: written at once, so that it is there if the process dies. */
export type TrialEvent =
  | { readonly is: 'measured'; readonly tests: readonly TestRun[]; readonly whileLoading: readonly string[] }
  | { readonly is: 'started'; readonly process: number }
  /** `took`: what its tests take without it. */
  | { readonly is: 'trying'; readonly mutant: string; readonly took: number }
  | { readonly is: 'judged'; readonly mutant: string; readonly verdict: Verdict }
  /** What is loaded was no longer as it was, so that another process must try it. */
  | { readonly is: 'left'; readonly mutant: string };

/** What that process is told. */
export interface TrialOrder {
  readonly log: string;
  /** How many test files there are. */
  readonly files: number;
  /** The changes that are reached at each site of the code. */
  readonly sites: readonly (readonly string[])[];
  /** What an earlier process has measured; this one is to measure where left out. */
  readonly tests?: readonly TestRun[];
  /** Ids of the changes to try, in this order. */
  readonly mutants: readonly string[];
}

export function writeEvent(log: string, event: TrialEvent): void {
  appendFileSync(log, `${JSON.stringify(event)}\n`);
}

export function readEvents(log: string): readonly TrialEvent[] {
  if (!existsSync(log)) return [];
  const lines = readFileSync(log, 'utf8').split('\n');
  // The line behind the last end of line is not yet complete.
  return lines.slice(0, -1).map((line) => JSON.parse(line) as TrialEvent);
}
