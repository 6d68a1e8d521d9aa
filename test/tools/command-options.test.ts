import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';

const run = (...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync('node', ['src/command-line/run.cjs', ...args], { encoding: 'utf8' });
  return { status, stdout, stderr };
};

test.each(['../tools/fuzz/fuzz', '../tools/mutate/mutate'])(
  '%s shows its usage, also for what it does not know',
  (tool) => {
    expect(run(tool, '--help')).toEqual({ status: 0, stdout: expect.stringMatching(/^usage: /), stderr: '' });
    const told = expect.stringMatching(/^Unknown option '--sed'\nusage: /);
    expect(run(tool, '--sed', '3')).toEqual({ status: 2, stdout: '', stderr: told });
  },
);
