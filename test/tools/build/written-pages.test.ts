import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Writes the pages and posts them, in a process that has another clock and another language than the build had. */
const script = `
const { asSent } = require('./src/tools/build/page-policy.cjs');
const { WrittenPages } = require('./src/tools/build/written-pages.cjs');
new WrittenPages(process.argv[1]).next().then((pages) => process.stdout.write(JSON.stringify(
  [pages.map(asSent), new Date(0).getTimezoneOffset(), (1.5).toLocaleString()])));
`;

test('the pages written in Tokyo and in German are those of the built site, byte for byte', () => {
  const site = /"helpUrl":"(https:.*?)\/reference\//.exec(readFileSync('dist/functions.json', 'utf8'))![1]!;
  const env = { ...process.env, TZ: 'Asia/Tokyo', LC_ALL: 'de_DE.UTF-8', LANG: 'de_DE.UTF-8' };
  const output = execFileSync(process.execPath, ['-e', script, site], { env, encoding: 'utf8', maxBuffer: 2 ** 28 });
  const [pages, minutes, number] = JSON.parse(output) as [[string, string][], number, string];
  expect([minutes, number]).toEqual([-540, '1,5']);
  expect(pages.length).toBeGreaterThan(100);
  for (const [path, page] of pages) {
    const built = readFileSync(`dist/${path}`, 'utf8');
    // The build puts the mark of the functions' script around the plans.
    const isSame = path === 'workbench/cut-plans.json' ? built.endsWith(`"plans":${page}}`) : built === page;
    expect(isSame, path).toBe(true);
  }
});
