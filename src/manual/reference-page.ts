import { catalogue } from '../catalogue/all';
import type { Argument, Column, QuantityArgument } from '../catalogue/argument';
import { coefficient } from '../catalogue/coefficients/all';
import type { CatalogueRow, GridRow, Result } from '../catalogue/define';
import { allowed } from '../catalogue/reading/bounds';
import { inWords } from '../catalogue/reading/headings';
import { zeroToType } from '../catalogue/reading/typed-zero';
import { argumentNames, takesHeadings } from '../functions/adapter';
import { isOptional } from '../functions/metadata';
import type { Kind } from '../units/kinds';
import { readProfile } from '../units/profile';
import { evidenceTotals, figuresChecking } from './evidence/evidence-page';
import { exampleDrawing } from './example-drawings';
import { typesetFormula } from './formulas/typeset';
import { inBothUnits } from './in-both-units';
import { markupSafe, withCode } from './markup-safe';
import { page } from './page';
import { checkTable, type PublishedCheck } from './published-checks';
import { table } from './table';

const metric = readProfile('metric');
const us = readProfile('US');

/** One function's reference page: everything its catalogue row says, for a reader. */
export function referencePage(row: CatalogueRow, published: readonly PublishedCheck[] = []): string {
  const title = `SILT.${row.name}`;
  return page(
    title,
    [
      // A narrow page breaks a long name after a dot.
      `<h1>${title.replaceAll('.', '.<wbr/>')}</h1>`,
      `<p class="lead">${markupSafe(row.summary)}</p>`,
      `<p><code>=${title}(${signature(row)})</code></p>`,
      '<h2>Arguments</h2>',
      argumentTable(row),
      '<h2>Result</h2>',
      resultText(row.result),
      takesHeadings(row) ? '<p><code>headings</code> TRUE puts a heading row, with units, on top.</p>' : '',
      formulaText(row),
      row.notes?.length ? `<h2>Range and care</h2>${list(row.notes)}` : '',
      '<h2>Sources</h2>',
      list(row.sources),
      '<h2>Example</h2>',
      `<p><code>${markupSafe(row.example.formula)}</code> gives ${/^(a|sentences)\b/.test(row.example.gives) ? markupSafe(row.example.gives) : `<code>${markupSafe(row.example.gives)}</code>`}</p>`,
      picture(row.name),
      checkTable(row.name, published),
      related(row),
      checkedText(row),
    ].join('\n'),
  );
}

/** The formula as MathML; a method in words as it is. */
function formulaText({ name, formula }: CatalogueRow): string {
  if (!formula) return '';
  const typeset = typesetFormula(name);
  return typeset === undefined
    ? `<h2>Formula</h2><p class="formula">${markupSafe(formula)}</p>`
    : `<h2>Formula</h2><div class="wide" tabindex="0">${typeset}</div>`;
}

/** How many published figures check a function; without any, why, and with a few, what they leave to its tests. */
function checkedText({ name, unpublished }: CatalogueRow): string {
  const count = figuresChecking(name);
  const why = unpublished === undefined ? '' : markupSafe(unpublished);
  if (count === 0) return why ? `<p>No published figure checks this function: ${why}</p>` : '';
  const rest = why ? ` The rest: ${why}` : '';
  return `<p><a href="evidence.html">Published figures</a> that check this function: ${count}.${rest}</p>`;
}

/** The page that lists every function by family. */
export function referenceIndex(rows: readonly CatalogueRow[]): string {
  const families = [...new Set(rows.map((row) => row.name.split('.', 1).join('')))];
  const sections = families.map((family) => {
    const items = rows
      .filter((row) => row.name.startsWith(`${family}.`))
      .map(
        (row) => `<li><a href="${row.name.toLowerCase()}.html">SILT.${row.name}</a>: ${markupSafe(row.summary)}</li>`,
      );
    return `<h2>${family}</h2><ul>${items.join('\n')}</ul>`;
  });
  return page(
    'Function reference',
    `<h1>Function reference</h1>\n<p hidden="hidden"><label>Find <input id="find" type="search" autocomplete="off"/></label> <span id="found" role="status"></span></p>\n<script src="find.js" defer="defer"></script>\n<p><a href="figures.html">Figures behind the defaults</a>: every coefficient, with its range, source and how it is known.</p>\n<p><a href="evidence.html">What the functions are checked against</a>: ${markupSafe(evidenceTotals())}</p>\n${sections.join('\n')}`,
  );
}

/** The functions that its texts name, and the others of its family. */
function related(row: CatalogueRow): string {
  const texts = [row.summary, ...(row.notes ?? []), row.formula ?? '', row.unpublished ?? ''].join(' ');
  const named = new Set(texts.match(/\b[A-Z]{2,}(\.[A-Z0-9]+)+\b/g));
  const family = `${row.name.split('.')[0]}.`;
  const others = catalogue
    .map(({ name }) => name)
    .filter((name) => name !== row.name && (named.has(name) || name.startsWith(family)));
  if (others.length === 0) return '';
  const links = others.map((name) => `<a href="${name.toLowerCase()}.html">${name}</a>`);
  return `<h2>Related functions</h2><p>${links.join(', ')}</p>`;
}

function picture(name: string): string {
  const drawing = exampleDrawing(name);
  return drawing === undefined ? '' : `<figure>${drawing}</figure>`;
}

function signature(row: CatalogueRow): string {
  return argumentNames(row)
    .map((name) => {
      const spec = row.arguments[name];
      const optional = name === 'headings' || (spec !== undefined && isOptional(spec));
      return optional ? `[${name}]` : name;
    })
    .join(', ');
}

function argumentTable(row: CatalogueRow): string {
  const lines = Object.entries(row.arguments).map(
    ([name, spec]) =>
      `<tr><th scope="row">${name}</th><td>${markupSafe(spec.meaning)}</td><td>${markupSafe(accepts(spec))}</td><td>${markupSafe(defaultText(spec))}</td></tr>`,
  );
  const units =
    row.units === false
      ? []
      : [
          '<tr><th scope="row">units</th><td>the units profile for plain numbers and results</td><td>"metric", "US", either with exceptions such as "US, flow L/min", or the cell SiltUnits</td><td></td></tr>',
        ];
  return table(['name', 'meaning', 'takes', 'if left out'], [...units, ...lines]);
}

function accepts(spec: Argument): string {
  if ('choice' in spec) return spec.choice.join(', ');
  if ('reader' in spec) return spec.accepts;
  if ('table' in spec) return `rows of ${Object.keys(spec.table).map(inWords).join(', ')}`;
  if ('cells' in spec) return 'a range';
  const per = spec.per ? `, a ${spec.per}` : '';
  const zeros = new Set([metric, us].flatMap((profile) => zeroToType(spec, profile) ?? []));
  const zero = zeros.size > 0 ? `; type ${[...zeros].join(' or ')} where 0 is meant` : '';
  return `${spec.kind}: ${inBoth(allowed(spec, metric), allowed(spec, us), spec.kind)}${per}${zero}`;
}

/** What is allowed under both profiles, said once where only the units differ. */
function inBoth(inMetric: string, inUs: string, kind: Kind): string {
  if (inMetric === inUs) return inMetric;
  const [metricUnit, usUnit] = [metric.units[kind].symbol, us.units[kind].symbol];
  const bare = inMetric.replaceAll(` ${metricUnit}`, '');
  if (bare !== inUs.replaceAll(` ${usUnit}`, '')) return `${inMetric} (metric); ${inUs} (US)`;
  // Without bounds the words end with the unit: `a mass in kg`.
  const noun = bare.endsWith(' in') ? bare.slice(0, -' in'.length) : bare;
  return `${noun}, in ${metricUnit} (metric) or ${usUnit} (US)`;
}

function defaultText(spec: Argument): string {
  if (!isOptional(spec)) return '';
  if ('defaultReads' in spec && spec.defaultReads) return spec.defaultReads;
  if (!('default' in spec) || spec.default === undefined) return 'not used';
  if ('kind' in spec && !('reader' in spec)) return defaultFigure(spec);
  return String(spec.default);
}

function defaultFigure(spec: QuantityArgument): string {
  const format = (si: number) => inBothUnits(spec.kind, si);
  if (typeof spec.default === 'number') return format(spec.default);
  if (typeof spec.default !== 'string') return '';
  const { key, typical, low, high, source } = coefficient(spec.default);
  const range =
    low !== undefined && high !== undefined && low !== high ? `; published ${format(low)} to ${format(high)}` : '';
  return `${format(typical)} (${key}${range}; ${source})`;
}

function resultText(result: Result): string {
  if ('scalar' in result) {
    const inMetric = metric.units[result.scalar].symbol;
    const inUs = us.units[result.scalar].symbol;
    const unit = inMetric === inUs ? inMetric : `${inMetric} (metric), ${inUs} (US)`;
    return `<p>One figure: ${markupSafe(result.scalar)}${unit ? `, in ${markupSafe(unit)}` : ''}.</p>`;
  }
  if ('quantity' in result) return '<p>One figure, in the profile’s unit of its kind.</p>';
  if ('text' in result) return '<p>Text.</p>';
  if ('date' in result) return '<p>A date, as a serial number: format the cell as a date.</p>';
  if ('lines' in result) return '<p>One sentence per row.</p>';
  if ('grid' in result) return `<p>A block of cells as wide as the input.</p>${gridRows(result.rowsOf ?? [])}`;
  const [columns, shape] = 'row' in result ? [result.row, 'One row'] : [result.rows, 'Rows'];
  return `<p>${shape} of these columns:</p><ol>${Object.entries(columns)
    .map(([key, column]) => `<li>${markupSafe(columnText(key, column))}</li>`)
    .join('')}</ol>`;
}

function gridRows(rows: readonly GridRow[]): string {
  if (rows.length === 0) return '';
  const lines = rows.map(
    ({ name, kind, meaning }) =>
      `<tr><th scope="row">${markupSafe(name)}</th><td>${markupSafe(unitsText(kind))}</td><td>${markupSafe(meaning)}</td></tr>`,
  );
  return table(['row', 'unit', 'meaning'], lines);
}

function unitsText(kind: Kind): string {
  const [inMetric, inUs] = [metric.units[kind].symbol, us.units[kind].symbol];
  return inMetric === inUs ? inMetric : `${inMetric}, ${inUs} (US)`;
}

function columnText(key: string, column: Column): string {
  const name = column.heading ?? inWords(key);
  if (!('kind' in column)) return name;
  const inMetric = metric.units[column.kind].symbol;
  const inUs = us.units[column.kind].symbol;
  if (!inMetric) return `${name} (${column.kind})`;
  return inMetric === inUs ? `${name} in ${inMetric}` : `${name} in ${inMetric} (metric), ${inUs} (US)`;
}

function list(items: readonly string[]): string {
  return `<ul>${items.map((item) => `<li>${withCode(item)}</li>`).join('')}</ul>`;
}
