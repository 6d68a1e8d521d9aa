/**
 * Changes the code in small steps and checks whether a test notices: `npm run mutate`, or `npm run mutate -- cone
 * pipe`, or one file of a part: `npm run mutate -- src/formulas/pipe/friction.ts`. Any other file is judged by the
 * tests that `--tests` names.
 *
 * Changes that survive are printed; those with a reason are in the lists of harmless changes.
 */
import { resolve } from 'node:path';
import { commandOptions } from '../command-options';
import { harmless } from './harmless';
import { judgePart } from './judge-part';
import { type MutatePart, mutateParts } from './mutate-parts';
import { reportOf } from './report';

const LEAST_KILLED = 0.9;
// With slashes on Windows too, as vitest names its files.
const root = resolve(__dirname, '../../..').replaceAll('\\', '/');
const usage = `usage: npm run mutate -- [PART...]
       npm run mutate -- FILE... [--tests FILE...]
  parts: ${mutateParts.map(({ name }) => name).join(', ')}; all of them where left out
`;

/** Tries the changes of a part, prints what survives without a reason, and says whether few enough do. */
async function judge(part: MutatePart): Promise<boolean> {
  const started = Date.now();
  const judged = await judgePart(root, part, showProgress);
  const { lines, killed, harmless: explained } = reportOf(judged, harmless);
  const fine = killed + explained;
  const share = ((100 * fine) / Math.max(1, judged.length)).toFixed(1);
  const seconds = Math.round((Date.now() - started) / 1000);
  if (process.stderr.isTTY) process.stderr.write('\r');
  for (const line of lines) process.stdout.write(`${line}\n`);
  process.stdout.write(
    `${part.name}: ${fine} of ${judged.length} killed or harmless, ${share} %; ${killed} killed, ${explained} harmless; ${seconds} s\n`,
  );
  return fine >= LEAST_KILLED * judged.length;
}

function showProgress(done: number, of: number): void {
  if (process.stderr.isTTY) process.stderr.write(`\r${done} of ${of}`);
}

/** The parts that are named, in whole or by a file; undefined where a name is neither. */
function wantedParts(names: readonly string[], tests: readonly string[]): readonly MutatePart[] | undefined {
  if (names.length === 0) return mutateParts;
  const parts = names.map((name) => {
    if (name.endsWith('.ts') && tests.length > 0) return { name, mutate: [name], tests };
    const part = mutateParts.find((one) => one.name === name || one.mutate.some((path) => holds(path, name)));
    return part && name.endsWith('.ts') ? { ...part, name, mutate: [name] } : part;
  });
  return parts.every((part) => part !== undefined) ? parts : undefined;
}

function holds(path: string, file: string): boolean {
  return file === path || (file.endsWith('.ts') && file.slice(0, file.lastIndexOf('/')) === path);
}

async function main(): Promise<number> {
  const options = { tests: { type: 'string', multiple: true, default: [] as string[] } } as const;
  const { values, positionals } = commandOptions(options, usage);
  const parts = wantedParts(positionals, values.tests);
  if (parts === undefined) {
    process.stderr.write(usage);
    return 2;
  }
  let code = 0;
  for (const part of parts) if (!(await judge(part))) code = 1;
  return code;
}

void main().then((code) => {
  process.exitCode = code;
});
