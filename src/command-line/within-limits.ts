import { spawn } from 'node:child_process';
import { basename, dirname, join } from 'node:path';

/** Set in the process that does the work, so that it does not start another. */
const insideVariable = 'SILTSTEAD_WITHIN_LIMITS';

const seconds = Number(process.env.SILTSTEAD_SECONDS ?? 120);
const megabytes = Number(process.env.SILTSTEAD_MEGABYTES ?? 2_048);

/** Long formulas are parsed recursively; systems other than Windows have a stack large enough for that. */
const roomy = process.platform === 'win32' ? [] : ['--stack-size=3900'];

/** How the process that did the work ended. */
interface End {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly isLate: boolean;
}

function runAgain(): Promise<End> {
  const [, entry = '', ...args] = process.argv;
  const runner = join(dirname(entry), 'run.cjs');
  const command = basename(entry).replace(/\.ts$/, '');
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [`--max-old-space-size=${megabytes}`, ...roomy, runner, command, ...args], {
      // The engine's own crash output does not help the user.
      stdio: ['inherit', 'inherit', 'pipe'],
      env: { ...process.env, [insideVariable]: '1' },
    });
    let output = '';
    child.stderr.on('data', (data: Buffer) => (output += data.toString()));
    let isLate = false;
    const timer = setTimeout(() => {
      isLate = true;
      child.kill('SIGKILL');
    }, seconds * 1_000);
    const stop = (signal: NodeJS.Signals): void => void child.kill(signal);
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
    child.on('error', reject);
    child.on('close', (code, signal) => {
      clearTimeout(timer);
      for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.off(signal, stop);
      if (code !== null && code >= 0 && code <= 3) process.stderr.write(output);
      resolve({ code, signal, isLate });
    });
  });
}

/** An error deep inside the spreadsheet engine can leave it waiting for ever, or be swallowed without a message. */
async function workInside(what: string, work: () => Promise<void>): Promise<void> {
  const fail = (why: string): never => {
    process.stderr.write(`${what}: the spreadsheet engine ${why}; nothing was written\n`);
    process.exit(2);
  };
  const onFault = (thrown: unknown): void => {
    fail(
      thrown instanceof RangeError
        ? 'cannot compute a formula as long as one in there'
        : 'stopped because of an internal error',
    );
  };
  process.on('uncaughtException', onFault);
  process.on('unhandledRejection', onFault);
  const onEmpty = (): void => void fail('did not finish');
  process.on('beforeExit', onEmpty);
  try {
    await work();
  } finally {
    process.off('beforeExit', onEmpty);
  }
}

/**
 * Works on a file from elsewhere in a separate process with limits on time and memory, so that no file can stop the
 * program without a message. `what` names the file in that message.
 */
export async function withinLimits(what: string, work: () => Promise<void>): Promise<void> {
  if (process.env[insideVariable] !== undefined) return workInside(what, work);
  const { code, signal, isLate } = await runAgain();
  if (code !== null && code <= 3 && !isLate) {
    process.exitCode = code;
    return;
  }
  const why = isLate
    ? `took longer than ${seconds} s`
    : signal === 'SIGINT' || signal === 'SIGTERM' || signal === 'SIGHUP'
      ? 'was interrupted'
      : `needs more than ${megabytes.toLocaleString('en-US')} MB of memory`;
  process.stderr.write(`${what}: the work ${why} and was stopped; nothing was written\n`);
  process.exitCode = 2;
}
