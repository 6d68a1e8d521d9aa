/**
 * Runs one of the commands in this folder straight from its TypeScript source: `node src/command-line/run.cjs calc …`.
 *
 * Only the project's own files are translated, in one go and in memory; packages are loaded as they are. A loader that
 * looks at every file of every package takes twice as long to start with the spreadsheet engine.
 */
const Module = require('node:module');
const path = require('node:path');
const { buildSync } = require('esbuild');

const entry = path.join(__dirname, `${process.argv[2]}.ts`);
const { outputFiles } = buildSync({
  entryPoints: [entry],
  bundle: true,
  write: false,
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  packages: 'external',
  // Its script for Node says that it is a module and is not one.
  alias: { 'maxrects-packer': path.join(path.dirname(require.resolve('maxrects-packer')), 'maxrects-packer.mjs') },
  sourcemap: 'inline',
  logLevel: 'error',
});
process.argv.splice(1, 2, entry);
const command = new Module(entry);
command.filename = entry;
command.paths = Module._nodeModulePaths(__dirname);
command._compile(outputFiles[0].text, entry);
