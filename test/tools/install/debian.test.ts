import { execFile } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { promisify } from 'node:util';
import { buildSync } from 'esbuild';
import { afterAll, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'install-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('lets one process at a time install, because apt-get does not wait', async () => {
  // It fails, as apt-get does, while another one runs.
  const apt = join(folder, 'apt-get');
  writeFileSync(
    apt,
    `#!/bin/sh\nmkdir '${folder}/busy' || exit 100\nsleep 0.3\necho "$1" >> '${folder}/log'\nrmdir '${folder}/busy'\n`,
  );
  chmodSync(apt, 0o755);
  const script = join(folder, 'install.cjs');
  buildSync({
    stdin: {
      contents: "import { installDebian } from './src/tools/install/debian'; installDebian('a-package', 'advice');",
      resolveDir: process.cwd(),
    },
    ...{ bundle: true, platform: 'node', outfile: script },
  });
  const env = { ...process.env, PATH: `${folder}${delimiter}${process.env.PATH}` };
  const install = () => promisify(execFile)(process.execPath, [script], { env });
  await Promise.all([install(), install()]);
  expect(readFileSync(join(folder, 'log'), 'utf8').trim().split('\n').sort()).toEqual([
    'install',
    'install',
    'update',
    'update',
  ]);
});
