/**
 * Runs one of the commands in this folder from its TypeScript source: `node src/command-line/run.cjs calc …`.
 *
 * Mostly the project's own files alone are translated; packages are loaded as they are. A loader that looks at every file of
 * every package takes twice as long to start with the spreadsheet engine. What has been translated is kept beside the
 * packages and used until one of the files that it was made from changes. What V8 has made of that is kept too: with it the
 * spreadsheet engine is there in half the time.
 */
const { randomUUID } = require('node:crypto');
const fs = require('node:fs');
const Module = require('node:module');
const path = require('node:path');
const { getHeapCodeStatistics } = require('node:v8');
const vm = require('node:vm');

const name = process.argv[2];
const entry = path.join(__dirname, `${name}.ts`);
const root = path.join(__dirname, '..', '..');
const cache = path.join(root, 'node_modules', '.cache', 'siltstead', name.replace(/[^\w-]+/g, '_'));

/** The commands that compute workbooks: of their packages, those of hundreds of small files take longest to start. */
const isPutTogether = ['calc', 'recalc', 'draw'].includes(name);

/** Whether a file of the spreadsheet holds the patterns of one language. */
const isPatterns = (file) => /^[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/.test(file);

/** Says whether a file is still the one that was translated. */
function stamp(file) {
  try {
    const { mtimeMs, size } = fs.statSync(path.join(root, file));
    return `${mtimeMs} ${size}`;
  } catch {
    return 'missing';
  }
}

/** A folder that may not be written to, or a full disk, costs only time. */
function keep(file, parts) {
  const unfinished = `${file}.${process.pid}`;
  try {
    fs.mkdirSync(path.dirname(file), { recursive: true });
    fs.writeFileSync(unfinished, Buffer.concat(parts.map((part) => Buffer.from(part))));
    fs.renameSync(unfinished, file);
  } catch {
    fs.rmSync(unfinished, { force: true });
  }
}

/** A kept file: a line of JSON about it, and what it holds. */
function kept(file) {
  try {
    const bytes = fs.readFileSync(file);
    const end = bytes.indexOf('\n');
    return { ...JSON.parse(bytes.toString('utf8', 0, end)), bytes: bytes.subarray(end + 1) };
  } catch {
    return undefined;
  }
}

/**
 * With the packages in the same script, but for the parts of the spreadsheet for documents of prose, as in the page: more
 * than half of it are patterns to hyphenate the languages of the world.
 */
function putTogether() {
  const without = (file) => path.join(root, 'src', 'tools', 'build', 'lighter-grid', file);
  const renderer = path.join(root, 'node_modules', '@univerjs', 'engine-render', 'lib', 'es');
  return {
    mainFields: ['module', 'main'],
    external: fs
      .readdirSync(renderer)
      .filter(isPatterns)
      .map((file) => path.join(renderer, file)),
    alias: { 'franc-min': without('no-language.js'), 'opentype.js': without('no-font-files.js') },
  };
}

function translated() {
  const was = kept(`${cache}.js`);
  if (was?.stamps && Object.entries(was.stamps).every(([file, then]) => stamp(file) === then)) return was;
  const { buildSync } = require('esbuild');
  const { alias, ...packages } = isPutTogether ? putTogether() : { packages: 'external' };
  const { outputFiles, metafile } = buildSync({
    entryPoints: [entry],
    absWorkingDir: root,
    bundle: true,
    write: false,
    metafile: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    ...packages,
    alias: {
      ...alias,
      // Its script for Node says that it is a module and is not one.
      'maxrects-packer': path.join(path.dirname(require.resolve('maxrects-packer')), 'maxrects-packer.mjs'),
    },
    // Notes of licenses are the only ones that it would leave.
    minifyWhitespace: true,
    legalComments: 'none',
    logLevel: 'error',
  });
  const files = [
    // The lock file stands for all packages.
    ...Object.keys(metafile.inputs).filter((file) => !file.startsWith('node_modules/')),
    'package-lock.json',
    'tsconfig.json',
    path.relative(root, __filename),
  ];
  const stamps = Object.fromEntries(files.map((file) => [file, stamp(file)]));
  const id = randomUUID();
  const bytes = Buffer.from(Module.wrap(outputFiles[0].text));
  keep(`${cache}.js`, [JSON.stringify({ id, stamps }), '\n', bytes]);
  return { id, bytes };
}

const { id, bytes } = translated();
// V8 takes only what it made with the same options, which differ between a command and the process that it starts.
const compiledFile = `${cache}${process.execArgv.join('').replace(/[^\w-]+/g, '_')}.v8`;
const compiled = kept(compiledFile);
const isOfThis = compiled?.id === id;
const script = new vm.Script(bytes.toString(), {
  filename: entry,
  cachedData: isOfThis ? compiled.bytes : undefined,
  importModuleDynamically: vm.constants?.USE_MAIN_CONTEXT_DEFAULT_LOADER,
});
process.on('exit', () => {
  const { bytecode_and_metadata_size: size } = getHeapCodeStatistics();
  // Other arguments may have called much that was not called before.
  if (isOfThis && !script.cachedDataRejected && size < 1.2 * compiled.size) return;
  keep(compiledFile, [JSON.stringify({ id, size }), '\n', script.createCachedData()]);
});
process.argv.splice(1, 2, entry);
const command = new Module(entry);
command.filename = entry;
command.paths = Module._nodeModulePaths(__dirname);
const load = command.require.bind(command);
script.runInThisContext().call(command.exports, command.exports, load, command, entry, path.dirname(entry));
