/** A loop that goes round this many times more often than in all tests without the change is endless. */
const HIT_FACTOR = 100;
/** Processor time that a test may take with a change: so many times what it takes without it, and so many ms more. */
const TIME_FACTOR = 10;
const TIME_MORE = 3000;
/** So many sites are passed before the time is looked at again. */
const STEPS = 4096;

/** What changed code calls: at each site that can be changed, and to ask whether a change is switched on. */
interface Switches {
  readonly reach: (site: number) => void;
  readonly isOn: (mutant: string) => boolean;
}

declare global {
  var mutationSwitches: Switches | undefined;
}

/** What stands before changed code: Stryker's names for the two calls. Its own header counts change by change. */
export const switchHeader = 'const { reach: stryCov_9fa48, isOn: stryMutAct_9fa48 } = globalThis.mutationSwitches;';

export type Hits = Readonly<Record<string, number>>;
export type Outcome = 'passes' | 'fails' | 'endless';

export interface MutationSwitch {
  /** Counts how often a test reaches each change. */
  readonly counted: (run: () => Promise<void>) => Promise<Hits>;
  /** Changes that are reached outside tests, while code is loaded. */
  readonly whileLoading: () => readonly string[];
  /** Whether a test fails with the change, or does not end. `hits` is how often all tests reach it without it. */
  readonly tried: (mutant: string, hits: number, took: number, run: () => Promise<void>) => Promise<Outcome>;
}

export function processorTime(): number {
  return process.cpuUsage().user / 1000;
}

/** Puts the switches where changed code finds them, all of them off. */
export function mutationSwitch(sites: readonly (readonly string[])[]): MutationSwitch {
  const passed = new Float64Array(sites.length);
  const loading = new Float64Array(sites.length);
  let active: string | undefined;
  let hits = 0;
  let hitLimit = 0;
  let steps = STEPS;
  let until = Number.POSITIVE_INFINITY;
  let late = false;

  function lookAtTime(): void {
    late ||= processorTime() > until;
    // From then on each step fails, in case the code catches what ends its loop.
    if (late) throw new Error('takes too long');
    steps = STEPS;
  }

  /** Sums up what was passed since the last time. */
  function takePassed(): Float64Array {
    const taken = passed.slice();
    passed.fill(0);
    return taken;
  }

  function addLoading(): void {
    for (const [site, count] of takePassed().entries()) loading[site] = (loading[site] ?? 0) + count;
  }

  globalThis.mutationSwitches = {
    reach(site) {
      passed[site] = (passed[site] as number) + 1;
      steps -= 1;
      if (steps < 0) lookAtTime();
    },
    isOn(mutant) {
      if (mutant !== active) return false;
      hits += 1;
      if (hits > hitLimit) throw new Error('goes round too often');
      return true;
    },
  };

  return {
    async counted(run) {
      addLoading();
      await run();
      return hitsOf(takePassed(), sites);
    },
    whileLoading() {
      addLoading();
      return Object.keys(hitsOf(loading, sites));
    },
    async tried(mutant, allHits, took, run) {
      active = mutant;
      hits = 0;
      hitLimit = HIT_FACTOR * allHits;
      until = processorTime() + TIME_FACTOR * took + TIME_MORE;
      const failed = await run().then(
        () => false,
        () => true,
      );
      // The code may have caught what ended its loop.
      const endless = late || hits > hitLimit;
      active = undefined;
      until = Number.POSITIVE_INFINITY;
      late = false;
      steps = STEPS;
      return endless ? 'endless' : failed ? 'fails' : 'passes';
    },
  };
}

function hitsOf(passed: Float64Array, sites: readonly (readonly string[])[]): Hits {
  const hits: Record<string, number> = {};
  for (const [site, mutants] of sites.entries()) {
    const count = passed[site] ?? 0;
    if (count > 0) for (const mutant of mutants) hits[mutant] = (hits[mutant] ?? 0) + count;
  }
  return hits;
}
