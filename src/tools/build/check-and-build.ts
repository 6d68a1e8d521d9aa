/**
 * Checks the source and builds the site side by side, since neither needs the other, and installs the programs that tests
 * drive: the first part of `npm test`.
 */
import { spawn } from 'node:child_process';

interface Ended {
  readonly code: number | null;
  readonly output: string;
}

/** Runs a command. What it prints is kept until its end, so that two do not print into each other. */
function run(command: string): Promise<Ended> {
  return new Promise((resolve, reject) => {
    // npm is a program on one system and a batch file on another; the shell of each finds it.
    const child = spawn(command, { shell: true, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data: Buffer) => (output += data.toString()));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, output }));
  });
}

async function main(): Promise<void> {
  const scripts = [
    'npm run -s check',
    'npm run -s build',
    'node src/command-line/run.cjs ../tools/install/test-programs',
  ].map(run);
  for (const script of scripts) {
    const { code, output } = await script;
    process.stdout.write(output);
    if (code !== 0) process.exitCode = 1;
  }
}

main().catch((thrown: unknown) => {
  process.stderr.write(`${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
});
