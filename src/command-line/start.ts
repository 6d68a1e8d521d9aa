/** Builds everything and serves the workbench: `npm start`. */
import { spawn } from 'node:child_process';
import { buildPage } from '../workbench/build-page';
import { serve } from '../workbench/server';

const defaultPort = 4610;

async function step<T>(what: string, work: () => Promise<T>): Promise<T> {
  const started = Date.now();
  process.stdout.write(`${what} … `);
  // A dot every two seconds shows that it is still at work.
  const dots = setInterval(() => process.stdout.write('.'), 2_000);
  try {
    const result = await work();
    process.stdout.write(` ${((Date.now() - started) / 1000).toFixed(1)} s\n`);
    return result;
  } finally {
    clearInterval(dots);
  }
}

function buildAddIn(): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['node_modules/webpack/bin/webpack.js'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data: Buffer) => (said += data.toString()));
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(`webpack failed:\n${said}`))));
  });
}

async function main(): Promise<void> {
  try {
    await step('Building the add-in: functions, pane, manifest', buildAddIn);
    const page = await step('Building the workbench page', buildPage);
    const { address } = await serve(page, Number(process.env.PORT ?? defaultPort));
    process.stdout.write(`\nThe workbench is at ${address}  (stop it with Ctrl+C)\n`);
  } catch (thrown) {
    process.stderr.write(`\n${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 1;
  }
}

void main();
