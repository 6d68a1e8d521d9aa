import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { instrument, type Mutant } from './instrument';
import type { MutatePart } from './mutate-parts';
import { openTrials } from './open-trials';
import type { Verdict } from './trial-log';

export interface Judged extends Mutant {
  /** `unreached` by any test. */
  readonly verdict: Verdict | 'unreached';
  /** Also reached while code or tests are loaded, before it is switched on. */
  readonly whileLoading: boolean;
}

/**
 * Tries every change to the files of a part and says which of them its tests notice. What only the loading of the code
 * reaches is left out: it is the data, which the tests read as it is.
 */
export async function judgePart(
  root: string,
  part: MutatePart,
  report: (done: number, of: number) => void,
): Promise<readonly Judged[]> {
  const { mutants, sites, code } = await instrument(
    root,
    part.mutate.flatMap((path) => sourceFiles(root, path)),
  );
  const trials = await openTrials(root, part.tests, code, sites);
  const verdicts = new Map<string, Verdict>();
  try {
    const { tests, whileLoading } = await trials.measure();
    const reached = new Set(tests.flatMap(({ hits }) => Object.keys(hits)));
    const loaded = new Set(whileLoading);
    const toTry = mutants.map(({ id }) => id).filter((id) => reached.has(id));
    for (let left = toTry; left.length > 0; left = toTry.filter((id) => !verdicts.has(id))) {
      const before = verdicts.size;
      await trials.run(tests, left, (mutant, verdict) => {
        verdicts.set(mutant, verdict);
        report(verdicts.size, toTry.length);
      });
      if (verdicts.size === before) throw new Error('a process that tries changes ended before it tried one');
    }
    return mutants
      .filter(({ id }) => reached.has(id) || !loaded.has(id))
      .map((mutant) => ({
        ...mutant,
        verdict: verdicts.get(mutant.id) ?? 'unreached',
        whileLoading: loaded.has(mutant.id),
      }));
  } finally {
    await trials.close();
  }
}

function sourceFiles(root: string, path: string): readonly string[] {
  if (path.endsWith('.ts')) return [path];
  return readdirSync(join(root, path))
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${path}/${name}`);
}
