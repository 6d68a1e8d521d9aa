import { type Coefficient, coefficients, differs } from '../catalogue/coefficients/all';
import { inBothUnits } from './in-both-units';
import { markupSafe } from './markup-safe';
import { page } from './page';
import { table } from './table';

/** The page of every coefficient: what it is, its range, where it comes from and how it is known. */
export function figuresPage(): string {
  const topics = [...new Set(coefficients.map((one) => one.topic))];
  return page(
    'Figures behind the defaults',
    `<h1>Figures behind the defaults</h1>
<p class="lead">Functions use these figures if you give none. Give your own figure if you have measured it. If published figures differ by more than a fifth, the range is shown; no single figure in it is the right one.</p>
${topics.map((topic) => `<h2>${topic}</h2>${table(titles, coefficients.filter((one) => one.topic === topic).map(line))}`).join('\n')}`,
  );
}

const titles = ['name', 'used', 'published range', 'what it is', 'source', 'how known'];

function line(one: Coefficient): string {
  const { key, kind, low, typical, high, meaning, source, known } = one;
  const range = differs(one) ? `${inBothUnits(kind, low ?? typical)} to ${inBothUnits(kind, high ?? typical)}` : '';
  const cells = [inBothUnits(kind, typical), range, meaning, source, known];
  return `<tr id="${markupSafe(key)}"><th scope="row">${markupSafe(key)}</th>${cells.map((cell) => `<td>${markupSafe(cell)}</td>`).join('')}</tr>`;
}
