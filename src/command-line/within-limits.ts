import { spawn } from 'node:child_process';
import { basename, dirname, join } from 'node:path';
import { fileAt, removePartial, type UserFile } from './write-file';

/** Set in the process that does the work, so that it does not start another. */
const insideVariable = 'SILTSTEAD_WITHIN_LIMITS';

const seconds = Number(process.env.SILTSTEAD_SECONDS ?? 120);
const megabytes = Number(process.env.SILTSTEAD_MEGABYTES ?? 2_048);

const reasons = {
  late: `took longer than ${seconds} s`,
  interrupted: 'was interrupted',
  killed: 'was ended by the system, which may be short of memory,',
  large: `needs more than ${megabytes.toLocaleString('en-US')} MB of memory`,
} as const;

/** Long formulas are parsed recursively; systems other than Windows have a stack large enough for that. */
const roomy = process.platform === 'win32' ? [] : ['--stack-size=3900'];

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** How the process that did the work ended. */
interface End {
  readonly code: number | null;
  readonly why: 'done' | keyof typeof reasons;
  readonly pid: number;
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
    let isInterrupted = false;
    const stop = (signal: NodeJS.Signals): void => {
      isInterrupted = true;
      child.kill(signal);
    };
    for (const signal of signals) process.on(signal, stop);
    child.on('error', reject);
    child.on('close', (code, by) => {
      clearTimeout(timer);
      for (const signal of signals) process.off(signal, stop);
      isInterrupted ||= signals.some((signal) => signal === by);
      // What it had to say when it was interrupted depends on the moment.
      const isDone = code === 0 || code === 3 || (code !== null && code < 3 && !isInterrupted && !isLate);
      if (isDone) process.stderr.write(output);
      const pid = child.pid ?? 0;
      if (isDone) resolve({ code, why: 'done', pid });
      else if (isLate) resolve({ code, why: 'late', pid });
      else if (isInterrupted) resolve({ code, why: 'interrupted', pid });
      // Past its own limit the process aborts itself; a system that is short of memory kills it.
      else resolve({ code, why: by === 'SIGKILL' ? 'killed' : 'large', pid });
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
 * program without a message. `what` names the file in that message; `output` is the file that is written.
 */
export async function withinLimits(what: string, work: () => Promise<void>, output?: UserFile): Promise<void> {
  if (process.env[insideVariable] !== undefined) return workInside(what, work);
  const before = output && fileAt(output.path);
  const { code, why, pid } = await runAgain();
  if (why === 'done') {
    process.exitCode = code ?? 2;
    return;
  }
  if (output !== undefined) removePartial(output.path, pid);
  const isWritten = output !== undefined && fileAt(output.path) !== before;
  const end = isWritten ? `${output.named} was written before that` : 'nothing was written';
  process.stderr.write(`${what}: the work ${reasons[why]} and was stopped; ${end}\n`);
  process.exitCode = 2;
}
