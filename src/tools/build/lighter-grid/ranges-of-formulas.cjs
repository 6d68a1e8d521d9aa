/**
 * A webpack loader: where whole rows or columns are moved, the ranges of formulas follow by our own rule, which those of
 * lists, colors and charts follow too.
 */
const path = require('node:path');

const rule = path.join(__dirname, '..', '..', '..', 'hosts', 'univer', 'range-after-move');
const start = '} else if (type === 1) {';

module.exports = (source) => {
  if (source.split(start).length !== 2) throw new Error('the grid has another rule for ranges of formulas now');
  const ours = `} else if (type === 1 || type === 2) {
    if (from == null || to == null) return;
    newRange = rangeAfterMove(sequenceRange, from, to, type === 1 ? 'row' : 'column');
    if (newRange === undefined) return;
  ${start.replace('type === 1', 'false')}`;
  return `import { rangeAfterMove } from ${JSON.stringify(rule)};\n${source.replace(start, ours)}`;
};
