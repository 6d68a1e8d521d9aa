import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';

/** A project of one command, since what is kept of the real ones is in use by other tests. */
const project = mkdtempSync(join(tmpdir(), 'run-'));
const kept = join(project, 'node_modules', '.cache', 'siltstead');
const write = (text: string): void => writeFileSync(join(project, 'src/command-line/say.ts'), text);

beforeAll(() => {
  mkdirSync(join(project, 'src/command-line'), { recursive: true });
  mkdirSync(join(project, 'node_modules'));
  cpSync('src/command-line/run.cjs', join(project, 'src/command-line/run.cjs'));
  for (const name of ['esbuild', 'maxrects-packer'])
    symlinkSync(resolve('node_modules', name), join(project, 'node_modules', name), 'junction');
});
afterAll(() => rmSync(project, { recursive: true }));

function say(...options: string[]): string {
  const { stdout, stderr } = spawnSync('node', [...options, 'src/command-line/run.cjs', 'say', '°C'], {
    cwd: project,
    encoding: 'utf8',
  });
  return stdout + stderr;
}

it('runs a command as it now is, with what is kept of it or without', () => {
  write('console.log("one", process.argv.slice(2), __dirname.endsWith("command-line"));');
  expect([say(), say()]).toEqual(Array(2).fill("one [ '°C' ] true\n"));
  // Of the same length, which is all that V8 compares.
  write('console.log("two", process.argv.slice(2), __dirname.endsWith("command-line"));');
  expect([say(), say(), say('--stack-size=3900')]).toEqual(Array(3).fill("two [ '°C' ] true\n"));
  expect(readdirSync(kept).sort()).toEqual(['say--stack-size_3900.v8', 'say.js', 'say.v8']);
  for (const name of readdirSync(kept)) writeFileSync(join(kept, name), '{"id":"spoiled"}\nnothing');
  expect(say()).toBe("two [ '°C' ] true\n");
});
