import { markupSafe } from '../markup-safe';
import { page } from '../page';
import { table } from '../table';
import { computedBy } from './computed-by';
import counts from './counts.json';
import { type ReferenceKey, references } from './references';

type Known = 'read' | 'computed' | 'worked' | 'memory' | 'common practice';

/** How many figures of a source are known in which way. */
type Counted = Readonly<Partial<Record<Known, number>>>;

const meanings: Readonly<Record<Known, string>> = {
  read: 'read in a copy of the source',
  computed: 'computed by a script beside the tests, with a library or an equation that is not ours',
  worked: 'worked by hand from the source, as the test shows',
  memory: 'from memory, not read again',
  'common practice': 'common practice, no source',
};
const ways = Object.keys(meanings) as readonly Known[];

const bySource: Readonly<Partial<Record<string, Counted>>> = counts.bySource;
const byFunction: Readonly<Partial<Record<string, number>>> = counts.byFunction;

/** The sum of all sources, in one sentence. */
export function evidenceTotals(): string {
  const parts = ways.map((way) => `${total(way)} ${meanings[way]}`);
  const all = ways.reduce((sum, way) => sum + total(way), 0);
  return `${all} published figures check these functions: ${parts.join('; ')}.`;
}

function total(way: Known): number {
  return Object.values(bySource).reduce((sum, one) => sum + (one?.[way] ?? 0), 0);
}

/** How many published figures check one function. */
export function figuresChecking(name: string): number {
  return byFunction[name] ?? 0;
}

/** The page of every source that the tests compare with, and how its figures are known. */
export function evidencePage(): string {
  return page(
    'What the functions are checked against',
    `<h1>What the functions are checked against</h1>
<p class="lead">${markupSafe(evidenceTotals())}</p>
${table(['source', 'figures', 'how known', 'computed by'], (Object.keys(references) as ReferenceKey[]).map(line))}`,
  );
}

function line(key: ReferenceKey): string {
  const counted = bySource[key] ?? {};
  const known = ways.flatMap((way) => (counted[way] === undefined ? [] : [`${way} ${counted[way]}`]));
  const sum = ways.reduce((all, way) => all + (counted[way] ?? 0), 0);
  const cells = [String(sum), known.join(', '), computedBy[key] ?? ''];
  return `<tr id="${key}"><th scope="row">${markupSafe(references[key])}</th>${cells.map((cell) => `<td>${markupSafe(cell)}</td>`).join('')}</tr>`;
}
