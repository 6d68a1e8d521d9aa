/**
 * What the embedded spreadsheet brings along for documents of prose in any language, which a grid of cells never asks
 * for, replaced by nothing: 5 of its 12 MB are hyphenation patterns. And what only later work needs, which is loaded later.
 */
const path = require('node:path');
const webpack = require('webpack');

const here = (file) => path.join(__dirname, 'lighter-grid', file);
const isIn =
  (folder) =>
  ({ context = '' }) =>
    context.replaceAll('\\', '/').includes(`/node_modules/${folder}`);
const isInRenderer = isIn('@univerjs/engine-render/');
const isInPreset = isIn('@univerjs/preset-sheets-core/');

/** Plugins that replace the modules. The names of the pattern files end in eight signs of their content. */
function lighterGrid() {
  const replaceIn = (isThere, request, file) =>
    new webpack.NormalModuleReplacementPlugin(request, (asked) => {
      if (isThere(asked)) asked.request = here(file);
    });
  return [
    replaceIn(isInRenderer, /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/, 'no-patterns.js'),
    replaceIn(isInRenderer, /^franc-min$/, 'no-language.js'),
    replaceIn(isInPreset, /^@univerjs\/sheets-formula\/locale\/en-US$/, 'no-function-words.cjs'),
    replaceIn(isInPreset, /^@univerjs\/network$/, 'no-network.js'),
    replaceIn(isInPreset, /^@univerjs\/network\/lib\/facade$/, 'nothing.js'),
    replaceIn(isIn('@univerjs/ui/'), /^localforage$/, 'no-storage.cjs'),
    replaceIn(isInRenderer, /^opentype\.js$/, 'no-font-files.js'),
  ];
}

/** A loader's rule that keeps, of the table of character classes, those that the renderer asks for. */
const characterClasses = {
  test: /[\\/]unicode-regex[\\/]lib[\\/]data\.generated[\\/](\w+[\\/])?index\.js$/,
  loader: path.join(__dirname, 'lighter-grid', 'keep-classes.cjs'),
  type: 'javascript/esm',
};

/** A loader's rule that takes the address of its own developers out of the grid. */
const noOwnComputer = {
  test: /[\\/]@univerjs[\\/]core[\\/]lib[\\/]es[\\/]index\.js$/,
  loader: path.join(__dirname, 'lighter-grid', 'no-own-computer.cjs'),
};

/** A loader's rule that has the ranges of formulas follow rows and columns as everything else does. */
const rangesOfFormulas = {
  test: /[\\/]@univerjs[\\/]sheets-formula[\\/]lib[\\/]es[\\/]index\.js$/,
  loader: path.join(__dirname, 'lighter-grid', 'ranges-of-formulas.cjs'),
};

module.exports = { lighterGrid, characterClasses, noOwnComputer, rangesOfFormulas };
