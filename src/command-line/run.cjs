/**
 * Runs one of the commands in this folder from its TypeScript source: `node src/command-line/run.cjs calc …`.
 *
 * Mostly the project's own files alone are translated; packages are loaded as they are. A loader that looks at every file of
 * every package takes twice as long to start with the spreadsheet engine. What has been translated is kept beside the
 * packages and used until one of the files that it was made from changes.
 */
const fs = require('node:fs');
const Module = require('node:module');
const path = require('node:path');

const name = process.argv[2];
const entry = path.join(__dirname, `${name}.ts`);
const root = path.join(__dirname, '..', '..');
const cache = path.join(root, 'node_modules', '.cache', 'siltstead', `${name.replace(/[^\w-]+/g, '_')}.json`);

/** For these commands packages of hundreds of small files are put together, which takes a fifth less time to start. */
const isPutTogether = ['recalc', 'draw'].includes(name);

/** Says whether a file is still the one that was translated. */
function stamp(file) {
  try {
    const { mtimeMs, size } = fs.statSync(path.join(root, file));
    return `${mtimeMs} ${size}`;
  } catch {
    return 'missing';
  }
}

function kept() {
  try {
    const { code, stamps } = JSON.parse(fs.readFileSync(cache, 'utf8'));
    return Object.entries(stamps).every(([file, was]) => stamp(file) === was) ? code : undefined;
  } catch {
    return undefined;
  }
}

function translate() {
  const { buildSync } = require('esbuild');
  const { outputFiles, metafile } = buildSync({
    entryPoints: [entry],
    absWorkingDir: root,
    bundle: true,
    write: false,
    metafile: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    // The spreadsheet engine's packages are single files already.
    ...(isPutTogether ? { external: ['@univerjs/*'], mainFields: ['module', 'main'] } : { packages: 'external' }),
    // Its script for Node says that it is a module and is not one.
    alias: { 'maxrects-packer': path.join(path.dirname(require.resolve('maxrects-packer')), 'maxrects-packer.mjs') },
    logLevel: 'error',
  });
  const code = outputFiles[0].text;
  const files = [
    // The lock file stands for all packages.
    ...Object.keys(metafile.inputs).filter((file) => !file.startsWith('node_modules/')),
    'package-lock.json',
    'tsconfig.json',
    path.relative(root, __filename),
  ];
  const unfinished = `${cache}.${process.pid}`;
  try {
    const stamps = Object.fromEntries(files.map((file) => [file, stamp(file)]));
    fs.mkdirSync(path.dirname(cache), { recursive: true });
    fs.writeFileSync(unfinished, JSON.stringify({ stamps, code }));
    fs.renameSync(unfinished, cache);
  } catch {
    // A folder that may not be written to, or a full disk, costs only time.
    fs.rmSync(unfinished, { force: true });
  }
  return code;
}

const code = kept() ?? translate();
process.argv.splice(1, 2, entry);
const command = new Module(entry);
command.filename = entry;
command.paths = Module._nodeModulePaths(__dirname);
command._compile(code, entry);
