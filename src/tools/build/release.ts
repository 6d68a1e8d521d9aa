/** Writes a zip that anybody can put on a web host: `npm run release -- https://farm.example/siltstead`. */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Zippable, zipSync } from 'fflate';
import { isStartedAs } from './started-as';

export interface ReleaseFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** One zip of the files, with the same bytes at any time and on any machine. */
export function releaseZip(files: readonly ReleaseFile[]): Uint8Array {
  const entries: Zippable = {};
  // The earliest date that a zip can hold, in local time.
  const always = new Date(1980, 0, 1);
  for (const { path, bytes } of [...files].sort((a, b) => (a.path < b.path ? -1 : 1))) {
    entries[path] = [bytes, { mtime: always, level: 9, os: 3 }];
  }
  return zipSync(entries);
}

/** One line per file, as `sha256sum -c` reads them. */
export function checksums(files: readonly ReleaseFile[]): string {
  return files
    .map(({ path, bytes }) => `${createHash('sha256').update(bytes).digest('hex')}  ${path}\n`)
    .sort((a, b) => (a.slice(66) < b.slice(66) ? -1 : 1))
    .join('');
}

export function stepsFor(site: string, version: string): string {
  return `Siltstead ${version} for ${site}

Put it on your host
  1. Copy everything in the folder "site" to ${site}/ . Any host that serves files over https will do.
  2. functions.json must come as application/json with the header Access-Control-Allow-Origin: *
  3. From a copy of the source: npm run check-site -- ${site}
     It says what is wrong with headers, types, manifest or files, or that all is well.

Open the workbench
  ${site}/workbench/ works in any browser, and without a network after the first visit.

Load it in Excel (each person once)
  Web      Open a workbook. Home > Add-ins > More Settings > Upload My Add-in; pick manifest.xml of this folder.
  Windows  Put manifest.xml into a shared folder. File > Options > Trust Center > Trust Center Settings > Trusted
           Add-in Catalogs: type its network path, press Add catalog, tick Show in Menu, OK; start Excel again.
           Home > Add-ins > Advanced > SHARED FOLDER; pick Siltstead.
  Mac      Copy manifest.xml to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef ; start Excel again.
           Home > Add-ins; pick Siltstead.

No host at hand
  A school's own server will do: copy "site" to it; the workbench needs no more than files. On one computer alone, any
  program that serves a folder to localhost does, such as: python3 -m http.server, in the folder "site".
  Excel wants https, with a certificate that the computer trusts; from the source, npm run start:excel makes one.

checksums.txt holds the SHA-256 of every file: sha256sum -c checksums.txt
`;
}

function filesOf(folder: string, prefix: string): ReleaseFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({
      path: `${prefix}${file.slice(folder.length + 1).replaceAll('\\', '/')}`,
      bytes: readFileSync(file),
    }));
}

/** All files of a release: the site as it is built, the samples, what a person needs beside them, and their checksums. */
export function releaseFiles(site: string, version: string, root = '.'): readonly ReleaseFile[] {
  const at = (...names: readonly string[]): string => join(root, ...names);
  const files = [
    ...filesOf(at('dist'), 'site/'),
    ...filesOf(at('sample-workbooks'), 'samples/'),
    { path: 'manifest.xml', bytes: readFileSync(at('dist', 'manifest.xml')) },
    { path: 'LICENSE', bytes: readFileSync(at('LICENSE')) },
    { path: 'README.txt', bytes: new TextEncoder().encode(stepsFor(site, version)) },
  ];
  return [...files, { path: 'checksums.txt', bytes: new TextEncoder().encode(checksums(files)) }];
}

function main(): void {
  const site = (process.argv[2] ?? process.env.SILTSTEAD_SITE ?? '').replace(/\/+$/, '');
  if (!/^https:\/\/[^\s/]+/.test(site)) {
    process.stderr.write('Give the https address of your site: npm run release -- https://farm.example/siltstead\n');
    process.exitCode = 2;
    return;
  }
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
  const webpack = join('node_modules', 'webpack', 'bin', 'webpack.js');
  const built = spawnSync(process.execPath, [webpack, '--env', `site=${site}`], { stdio: 'inherit' });
  if (built.status !== 0) {
    process.exitCode = 1;
    return;
  }
  const files = releaseFiles(site, version);
  mkdirSync('release', { recursive: true });
  const name = join('release', `siltstead-${version}.zip`);
  writeFileSync(name, releaseZip(files));
  process.stdout.write(`${name}: ${files.length} files for ${site}\n`);
}

if (isStartedAs('release.ts')) main();
