/** A webpack loader: of the exports of `unicode-regex`'s tables, those that `cjk-regex` names. */
const { readFileSync } = require('node:fs');

const user = readFileSync(require.resolve('cjk-regex'), 'utf8');
const named = new Set(user.match(/\w+/g));

module.exports = (source) =>
  source
    .split('\n')
    .filter((line) => {
      const [, name] = /\bas (\w+)\b/.exec(line) ?? [];
      return name === undefined || named.has(name);
    })
    .join('\n');
