import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { buildSync } from 'esbuild';
import { expect, it } from 'vitest';

it('a process in an endless loop ends with the process that started it', async () => {
  const { outputFiles } = buildSync({
    entryPoints: ['src/tools/mutate/end-with-parent.ts'],
    bundle: true,
    platform: 'node',
    format: 'iife',
    globalName: 'made',
    write: false,
  });
  const child = `${outputFiles[0]!.text}; made.endWithParent(); console.log(process.pid); for (;;);`;
  const parent = `require('node:child_process').spawn(process.execPath, ['-e', ${JSON.stringify(child)}], { stdio: 'inherit' })`;
  const { stdout, pid } = spawn(process.execPath, ['-e', parent]);
  const [started] = await once(stdout, 'data');
  expect(Number(String(started))).not.toBe(pid);
  const ended = once(stdout, 'close');
  process.kill(pid!, 'SIGKILL');
  // Both write there, so that it is closed once both are gone, and never if the loop goes on.
  await ended;
});
