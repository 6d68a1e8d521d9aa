import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createVitest, type TestModule } from 'vitest/node';
import { watched } from './as-loaded';
import { followLog } from './follow-log';
import type { TestRun, TrialEvent, TrialOrder, Verdict } from './trial-log';

type Measured = Extract<TrialEvent, { is: 'measured' }>;

export interface Trials {
  /** Runs all tests without any change. */
  readonly measure: () => Promise<Measured>;
  /** Tries changes in one process, until it cannot go on: perhaps not all of them. */
  readonly run: (
    tests: readonly TestRun[],
    mutants: readonly string[],
    judged: (mutant: string, verdict: Verdict) => void,
  ) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Opens vitest with the changed code in place of the code, and with the runner that switches the changes. */
export async function openTrials(
  root: string,
  tests: readonly string[],
  code: ReadonlyMap<string, string>,
  sites: readonly (readonly string[])[],
): Promise<Trials> {
  const vitest = await createVitest(
    'test',
    {
      root,
      config: false,
      watch: false,
      include: [...tests],
      // The sheets of many random banks would take minutes, and judge the search for a cut plan.
      exclude: ['**/*.browser.test.ts', 'test/functions/sheets-of-banks.test.ts'],
      runner: `${root}/src/tools/mutate/mutant-runner.mts`,
      pool: 'forks',
      isolate: false,
      maxWorkers: 1,
      // Without a timer for each test; a process that hangs is ended as a whole.
      testTimeout: 0,
      reporters: [{}],
      server: { deps: { inline: ['maxrects-packer'] } },
    },
    {
      plugins: [
        {
          name: 'changed-code',
          enforce: 'pre',
          transform: (text, id) => (code.has(id) || isWatched(root, id) ? watched(code.get(id) ?? text) : undefined),
        },
      ],
    },
  );
  const files = await vitest.globTestSpecifications();
  const folder = mkdtempSync(join(tmpdir(), 'mutate-'));
  let runs = 0;

  async function run(
    order: Omit<TrialOrder, 'log' | 'files' | 'sites'>,
    seen: (event: TrialEvent) => void,
  ): Promise<string[]> {
    const log = join(folder, `${++runs}.log`);
    vitest.provide('trialOrder', { ...order, log, sites, files: files.length });
    const endFollowing = followLog(log, seen);
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(files);
    endFollowing();
    return [...testModules.flatMap(failures), ...unhandledErrors.map(String)];
  }

  return {
    async measure() {
      let measured: Measured | undefined;
      const failed = await run({ mutants: [] }, (event) => {
        if (event.is === 'measured') measured = event;
      });
      if (measured === undefined || failed.length > 0)
        throw new Error(`tests fail without any change:\n${failed.join('\n')}`);
      return measured;
    },
    async run(tests, mutants, judged) {
      await run({ tests, mutants }, (event) => {
        if (event.is === 'judged') judged(event.mutant, event.verdict);
      });
    },
    async close() {
      await vitest.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Tests keep what they have made in maps too. */
function isWatched(root: string, id: string): boolean {
  const folders = ['src/formulas', 'src/units', 'src/catalogue', 'src/functions', 'test'];
  return folders.some((folder) => id.startsWith(`${root}/${folder}/`));
}

function failures(module: TestModule): readonly string[] {
  const tests = [...module.children.allTests('failed')];
  return [
    ...tests.map((test) => `${test.fullName}: ${test.result().errors?.[0]?.message}`),
    ...module.errors().map(({ message }) => `${module.moduleId}: ${message}`),
  ];
}
