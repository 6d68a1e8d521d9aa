/**
 * Tries the functions, files, drawings and commands with random input: `npm run fuzz`, or `npm run fuzz -- --seed 7
 * --share 0.01 calls`.
 *
 * Each part runs in its own process, one on each processor, and records each call before it makes it. If a part dies or
 * hangs, its last call is reported. The same seed tries the same input.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, statSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { commandOptions } from '../command-options';
import { fuzzLog } from './fuzz-log';
import { fuzzParts } from './fuzz-parts';

const usage = `usage: npm run fuzz -- [--seed N] [--share 0.01] [PART...]
  parts: ${fuzzParts.map(({ name }) => `'${name}'`).join(', ')}; all of them where left out
`;

/** A part that reports nothing for this long hangs, ms. */
const SILENCE = 60_000;

const { values, positionals } = commandOptions(
  { seed: { type: 'string', default: '1' }, share: { type: 'string', default: '1' }, log: { type: 'string' } },
  usage,
);

/** Inside the process of one part. */
async function runPart(name: string, file: string): Promise<number> {
  Error.stackTraceLimit = 0;
  const part = fuzzParts.find((one) => one.name === name);
  if (part === undefined) throw new Error(`there is no part ${name}`);
  const log = fuzzLog(file);
  const count = Math.max(1, Math.round(part.count * Number(values.share)));
  await part.run(Number(values.seed), count, log);
  log.close();
  for (const { fault, call } of log.faults) process.stdout.write(`${fault}\n    ${call}\n`);
  process.stdout.write(`${name}: seed ${values.seed}, ${log.calls} tried, ${log.faults.length} sorts of fault\n`);
  return log.faults.length === 0 ? 0 : 1;
}

/** Starts a part and waits for it; ends it if it hangs. */
function supervised(name: string, folder: string): Promise<number> {
  const file = join(folder, `${name.replace(/ /g, '-')}.log`);
  const again = [
    ...process.execArgv,
    runner(),
    '../tools/fuzz/fuzz',
    '--log',
    file,
    '--seed',
    values.seed,
    '--share',
    values.share,
    name,
  ];
  const child = spawn(process.execPath, again, { stdio: 'inherit' });
  const watch = setInterval(() => endIfSilent(child, file), SILENCE / 10);
  return new Promise((resolve) => {
    child.on('exit', (code, signal) => {
      clearInterval(watch);
      if (signal !== null || (code !== 0 && code !== 1)) {
        process.stdout.write(
          `${name}: ended by ${signal ?? `exit ${code}`} at\n    ${readFileSync(file, 'utf8').split('\n')[0]}\n`,
        );
      }
      resolve(code ?? 1);
    });
  });
}

function runner(): string {
  return join(__dirname, '../../command-line/run.cjs');
}

function endIfSilent(child: ChildProcess, file: string): void {
  try {
    if (Date.now() - statSync(file).mtimeMs > SILENCE) child.kill('SIGKILL');
  } catch {
    // The part has not begun to write yet.
  }
}

async function main(): Promise<number> {
  const known = new Set(fuzzParts.map(({ name }) => name));
  if (positionals.some((name) => !known.has(name))) {
    process.stderr.write(usage);
    return 2;
  }
  if (values.log !== undefined) return runPart(positionals[0] ?? '', values.log);
  const folder = mkdtempSync(join(tmpdir(), 'fuzz-'));
  const waiting = positionals.length > 0 ? [...positionals] : [...known];
  let worst = 0;
  const runNext = async (): Promise<void> => {
    for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
      const code = await supervised(name, folder);
      worst = Math.max(worst, code);
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, runNext));
  return worst;
}

void main().then((code) => {
  process.exitCode = code;
});
