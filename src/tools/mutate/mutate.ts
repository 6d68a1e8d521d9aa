/**
 * Changes the code in small steps and checks whether a test notices: `npm run mutate`, or `npm run mutate -- cone
 * pipe`.
 *
 * Each part takes up to an hour on two cores. Surviving changes are printed; those with a reason are in the lists of
 * harmless changes.
 */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Stryker } from '@stryker-mutator/core';
import { harmless } from './harmless';
import { type MutatePart, mutateParts } from './mutate-parts';

const LEAST_KILLED = 0.9;

interface Survivor {
  readonly place: string;
  readonly change: string;
}

/** Runs one part, and returns the share killed and the changes that survived without a reason. */
async function mutated({
  name,
  mutate,
  tests,
}: MutatePart): Promise<{ killed: number; of: number; survivors: Survivor[] }> {
  process.env.MUTATE_TESTS = tests.join(',');
  const results = await new Stryker({
    mutate: [...mutate],
    testRunner: 'vitest',
    vitest: { configFile: 'src/tools/mutate/vitest.mutate.mts', related: false },
    plugins: ['@stryker-mutator/vitest-runner'],
    reporters: ['progress-append-only'],
    coverageAnalysis: 'perTest',
    concurrency: Number(process.env.MUTATE_CONCURRENCY ?? 2),
    ignorePatterns: ['sample-workbooks', 'dist', 'src/manual/pictures', '.git'],
    ignoreStatic: true,
    // Endless loops are counted; a busy machine alone must not end a run, because that counts as noticed.
    timeoutMS: 60_000,
    // Outside the project, because the other tools would check the copy too.
    tempDirName: mkdtempSync(join(tmpdir(), `mutate-${name}-`)),
    // Tests read a message as a whole if its text matters; a changed word elsewhere is not a fault.
    mutator: { excludedMutations: ['StringLiteral'] },
  }).runMutationTest();
  const counted = results.filter(({ status }) => ['Killed', 'Timeout', 'Survived', 'NoCoverage'].includes(status));
  const survivors = counted
    .filter(({ status }) => status === 'Survived' || status === 'NoCoverage')
    .map(({ fileName, location, replacement, status }) => ({
      place: `${relative(fileName)}:${location.start.line}:${location.start.column}`,
      change: `${(replacement ?? '').replace(/\s+/g, ' ').slice(0, 160)}${status === 'NoCoverage' ? ' (no test gets there)' : ''}`,
    }))
    .filter((one) => !harmless.some(({ place, change }) => one.place.startsWith(place) && one.change.includes(change)));
  return { killed: counted.length - survivors.length, of: counted.length, survivors };
}

function relative(fileName: string): string {
  return fileName.slice(fileName.indexOf('src/'));
}

async function main(): Promise<number> {
  const wanted = process.argv.slice(2);
  const known = mutateParts.map(({ name }) => name);
  if (wanted.some((name) => !known.includes(name))) {
    process.stderr.write(
      `usage: npm run mutate -- [PART...]\n  parts: ${known.join(', ')}; all of them where left out\n`,
    );
    return 2;
  }
  let code = 0;
  for (const part of mutateParts.filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
    const { killed, of, survivors } = await mutated(part);
    for (const { place, change } of survivors) process.stdout.write(`${place}  ${change}\n`);
    const share = ((100 * killed) / Math.max(1, of)).toFixed(1);
    process.stdout.write(`${part.name}: ${killed} of ${of} killed or harmless, ${share} %\n`);
    if (killed < LEAST_KILLED * of) code = 1;
  }
  return code;
}

void main().then((code) => {
  process.exitCode = code;
});
