import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Everything that the built site is made from. */
const sources = [
  'src',
  'sample-workbooks',
  'manifest.xml',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'webpack.config.js',
];
const site = 'dist';
const record = join('node_modules', '.cache', 'siltstead', 'built.json');

/** Builds dist, unless it is already up to date with the sources. */
export async function buildSite(): Promise<void> {
  const wanted = markOf(sources, readFileSync, `${process.version} ${process.env.SILTSTEAD_SITE ?? ''}`);
  if (isBuilt(wanted)) {
    process.stdout.write('The site is built already; nothing has changed.\n');
    return;
  }
  process.stdout.write('Building the site … ');
  const started = Date.now();
  // A dot every two seconds shows that it is still at work.
  const dots = setInterval(() => process.stdout.write('.'), 2_000);
  try {
    await webpack();
  } finally {
    clearInterval(dots);
  }
  process.stdout.write(` ${((Date.now() - started) / 1000).toFixed(1)} s\n`);
  mkdirSync(dirname(record), { recursive: true });
  writeFileSync(record, JSON.stringify({ sources: wanted, site: markOf([site], sizeAndTime) }));
}

function isBuilt(wanted: string): boolean {
  if (!existsSync(record) || !existsSync(site)) return false;
  try {
    const built: unknown = JSON.parse(readFileSync(record, 'utf8'));
    return JSON.stringify(built) === JSON.stringify({ sources: wanted, site: markOf([site], sizeAndTime) });
  } catch {
    return false;
  }
}

/** A fingerprint of many files, from their names and the content or size of each. */
function markOf(names: readonly string[], take: (file: string) => string | Buffer, more = ''): string {
  const hash = createHash('sha256').update(more);
  for (const file of names.flatMap(filesAt)) hash.update(`\0${file}\0`).update(take(file));
  return hash.digest('hex');
}

function filesAt(name: string): readonly string[] {
  if (!existsSync(name)) return [];
  if (statSync(name).isFile()) return [name];
  return readdirSync(name, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

function sizeAndTime(file: string): string {
  const { size, mtimeMs } = statSync(file);
  return `${size} ${mtimeMs}`;
}

function webpack(): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join('node_modules', 'webpack', 'bin', 'webpack.js')], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (data: Buffer) => (output += data.toString()));
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(`the build failed:\n${output}`))));
  });
}
