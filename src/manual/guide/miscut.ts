import { markupSafe } from '../markup-safe';
import { table } from '../table';
import { callResult, formatValue, formulaLine } from './formula-result';

const pattern = '=SILT.CONE.PATTERN("US",22.5,4,9.25,1,0.75)';
/** How many degrees too narrow the piece of the example is. */
const tooNarrow = 12;

const cells = [
  ['B1', 'radius of the outer arc'],
  ['B2', 'radius of the inner arc'],
  ['B3', 'degrees between the straight edges, without the lap'],
] as const;

const formulas = [
  ['B4', 'rim', '=2*B1*B3/360'],
  ['B5', 'foot', '=2*B2*B3/360'],
  ['B6', 'height', '=SQRT((B1-B2)^2-((B4-B5)/2)^2)'],
] as const;

/** What a cone that was cut wrong still fits: its rim, foot and height from the sizes of the piece as it is. */
export function miscutSection(): string {
  const [, , inner = 0, outer = 0, sector = 0] = (callResult(pattern)[0] ?? []).map(Number);
  const angle = Math.round(sector) - tooNarrow;
  const [rim, foot] = [outer, inner].map((radius) => (2 * radius * angle) / 360) as [number, number];
  const height = Math.sqrt((outer - inner) ** 2 - ((rim - foot) / 2) ** 2);
  const [top, bottom, high] = [rim, foot, height].map((size) => size.toFixed(2));
  const row = ([cell, what, formula = '']: readonly string[]) =>
    `<tr><th scope="row">${cell}</th><td>${what}</td><td>${formula && `<code>${markupSafe(formula)}</code>`}</td></tr>`;
  return `<h2>A cone that was cut wrong</h2>
<p>Do not throw it away. The piece still rolls up to a cone, only to another one. Measure the piece as it is, type the three sizes into cells, and let three formulas say what cone it is. For a cone of several equal pieces, take the degrees of all of them together.</p>
${table(['cell', 'what', 'type'], [...cells, ...formulas].map(row))}
<p>The rim is the bore of the drum that it still fits, and the foot is the bore of its drain. Type rim, foot and height as a row of the sheet Drums: checks, base mix and stand follow. A drum a little wider takes it with a ring of sheet around the rim; a narrower drum does not take it.</p>
<p>The cone above, cut at ${formatValue(angle)} degrees instead of ${formatValue(sector)}: rim ${top} in, foot ${bottom} in, height ${high} in. The wall is steeper:</p>
${formulaLine(`=SILT.CONE.ANGLE("US",${top},${bottom},${high})`, 'degrees')}
<p>The pattern of that cone has the degrees of the piece that was cut:</p>
${formulaLine(`=SILT.CONE.PATTERN("US",${top},${bottom},${high})`, 'degrees', 4)}`;
}
