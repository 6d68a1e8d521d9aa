import { execFile } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { promisify } from 'node:util';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'install-'));
const at = (name: string) => join(folder, name);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeAll(() => {
  buildSync({
    stdin: {
      contents: `import { existsSync, writeFileSync } from 'node:fs';
        import { installDebian, waitForInstallation } from './src/tools/install/debian';
        if (process.argv[2] === 'wait') {
          writeFileSync('${at('waits')}', '');
          waitForInstallation();
          console.log(existsSync('${at('installed')}') ? 'installed' : 'half installed');
        } else installDebian('a-package', 'advice');`,
      resolveDir: process.cwd(),
    },
    ...{ bundle: true, platform: 'node', outfile: at('install.cjs') },
  });
});

/** Puts a program in the place of apt-get. */
function asApt(script: string): void {
  writeFileSync(at('apt-get'), `#!/bin/sh\n${script}\n`);
  chmodSync(at('apt-get'), 0o755);
}

const start = (...words: readonly string[]) => {
  const env = { ...process.env, TMPDIR: folder, PATH: `${folder}${delimiter}${process.env.PATH}` };
  return promisify(execFile)(process.execPath, [at('install.cjs'), ...words], { env });
};

it('lets one process at a time install, because apt-get does not wait', async () => {
  // It fails, as apt-get does, while another one runs.
  asApt(`mkdir '${at('busy')}' || exit 100\nsleep 0.3\necho "$1" >> '${at('log')}'\nrmdir '${at('busy')}'`);
  await Promise.all([start(), start()]);
  const log = readFileSync(at('log'), 'utf8').trim().split('\n');
  expect(log.sort()).toEqual(['install', 'install', 'update', 'update']);
});

it('lets a process that looks for a program wait until it is wholly installed', async () => {
  // It does not end before the other process waits, nor at once then.
  asApt(
    `[ "$1" = install ] || exit 0\ntouch '${at('begun')}'\nuntil [ -e '${at('waits')}' ]; do sleep 0.05; done\nsleep 0.5\ntouch '${at('installed')}'`,
  );
  const installing = start();
  const waiting = promisify(execFile)('sh', ['-c', `until [ -e '${at('begun')}' ]; do sleep 0.05; done`]).then(() =>
    start('wait'),
  );
  const [{ stdout }] = await Promise.all([waiting, installing]);
  expect(stdout.trim()).toBe('installed');
});
