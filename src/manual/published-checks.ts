import { catalogue } from '../catalogue/all';
import { inWords } from '../catalogue/reading/headings';
import { adapt } from '../functions/adapter';
import { type ReferenceKey, references } from './evidence/references';
import { markupSafe } from './markup-safe';
import { table } from './table';

/** A published figure and the call that should reproduce it, as the tests hold them. */
export interface PublishedCheck {
  readonly call: readonly [name: string, ...args: readonly unknown[]];
  /** Row (counted, or what stands first in it) and column of a spilled result. */
  readonly cell?: readonly [row: number | string, column: number];
  readonly expected: number | string;
  readonly source: ReferenceKey;
  readonly place: string;
  readonly known: 'read' | 'computed' | 'worked' | 'memory' | 'common practice';
  readonly disagrees?: string;
}

const known: Readonly<Record<PublishedCheck['known'], string>> = {
  read: 'read there',
  computed: 'computed with it',
  worked: 'worked by hand from it',
  memory: 'from memory',
  'common practice': 'common practice, no source',
};

const functions = new Map(
  catalogue.map((row) => [row.name, adapt(row, (code, message) => `${code} ${message}`)] as const),
);

const mostShown = 12;

/** The published figures of a function with ours beside them; nothing where there are none. */
export function checkTable(name: string, checks: readonly PublishedCheck[]): string {
  const own = checks.filter(({ call }) => call[0] === name);
  if (own.length === 0) return '';
  const rows = own.slice(0, mostShown).map((check) => {
    const [call, published, ours] = [callText(check.call), figure(check.expected), figure(computedValue(check))];
    return `<tr><td><code>${markupSafe(call).replaceAll(',', ',<wbr/>')}</code></td><td>${markupSafe(published + columnOf(check))}</td><td>${markupSafe(ours)}</td><td>${where(check)}</td></tr>`;
  });
  const more = own.length > mostShown ? `<p>The tests hold ${own.length - mostShown} more.</p>` : '';
  return `<h2>Published figures beside ours</h2>
${table(['call', 'published', 'ours', 'where'], rows)}${more}`;
}

function computedValue({ call, cell: [line, column] = [0, 0] }: PublishedCheck): unknown {
  const [name, ...values] = call;
  const block = functions.get(name)?.(...values) ?? [];
  const row = typeof line === 'number' ? block[line] : block.find(([first]) => first === line);
  return row?.[column];
}

/** Which column of a row of results the figure is in: `, sector angle`. */
function columnOf({ call, cell: [, column] = [0, 0] }: PublishedCheck): string {
  const result = catalogue.find(({ name }) => name === call[0])?.result;
  if (result === undefined || !('row' in result || 'rows' in result)) return '';
  const [key, described] = Object.entries('row' in result ? result.row : result.rows)[column] ?? [];
  return key === undefined || described === undefined ? '' : `, ${described.heading ?? inWords(key)}`;
}

function figure(value: unknown): string {
  return typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);
}

function callText([name, ...values]: PublishedCheck['call']): string {
  const argument = (value: unknown): string => {
    if (Array.isArray(value)) return value.length > 3 ? '{…}' : `{${value.map(argument).join(';')}}`;
    return typeof value === 'string' ? `"${value}"` : String(value ?? '');
  };
  return `SILT.${name}(${values.map(argument).join(',')})`;
}

/** The source by its title, which leads to its line among all sources, and the place in it. */
function where({ source, place, known: how, disagrees }: PublishedCheck): string {
  const title = `<a href="evidence.html#${source}">${markupSafe(references[source])}</a>`;
  return `${title}, ${markupSafe(`${place} (${known[how]})${disagrees === undefined ? '' : `. Differs: ${disagrees}`}`)}`;
}
