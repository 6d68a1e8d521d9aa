/**
 * A step of the build: has a browser read a large script once. The functions around a whole bundle are called where they
 * are written, but written as arrows; a browser looks over such a function while the script arrives, and reads the 5 MB
 * again when it is called, before anything else can happen. A function in parentheses is made ready as it arrives.
 */
const { createRequire } = require('node:module');
const webpack = require('webpack');

const { parse } = createRequire(require.resolve('webpack'))('acorn');

/** Functions of more characters hold a whole bundle. */
const wholeBundle = 1_000_000;

/** The arrow functions around a bundle, the outermost first. */
function outerArrows(node, found = []) {
  if (node === null || typeof node !== 'object') return found;
  if (Array.isArray(node)) {
    for (const one of node) outerArrows(one, found);
    return found;
  }
  if (typeof node.type !== 'string' || node.end - node.start < wholeBundle) return found;
  if (node.type === 'ArrowFunctionExpression') found.push(node);
  for (const part of Object.values(node)) outerArrows(part, found);
  return found;
}

function inParentheses(script) {
  const edits = outerArrows(parse(script, { ecmaVersion: 'latest' })).flatMap(({ start, end, body, params }) => [
    { from: end, to: end, text: ')' },
    {
      from: start,
      to: body.start,
      text: `(function(${params.map((one) => script.slice(one.start, one.end)).join()})`,
    },
  ]);
  let text = script;
  for (const edit of edits.sort((one, other) => other.from - one.from))
    text = text.slice(0, edit.from) + edit.text + text.slice(edit.to);
  return text;
}

class ReadOnce {
  constructor(script) {
    this.script = script;
  }

  apply(compiler) {
    const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_TRANSFER;
    compiler.hooks.thisCompilation.tap('ReadOnce', (compilation) => {
      compilation.hooks.processAssets.tap({ name: 'ReadOnce', stage }, () => {
        compilation.updateAsset(
          this.script,
          (source) => new webpack.sources.RawSource(inParentheses(source.source().toString())),
        );
      });
    });
  }
}

module.exports = { ReadOnce };
