import { make, replace } from '../../task-pane/dom';
import type { PlottedChart } from './plotted-chart';

const kindWords = { column: 'Column chart', bar: 'Bar chart', line: 'Line chart', scatter: 'Scatter chart' } as const;

/** The text that a screen reader reads for the chart; the numbers are in the table below it. */
function inWords({ type, title, series, categories, valueTitle }: PlottedChart): string {
  const names = series.map(({ name }) => name).join(', ');
  const unit = valueTitle === '' ? '' : ` Values: ${valueTitle}.`;
  return `${kindWords[type]}: ${title}. Series: ${names}. Points: ${categories.length}.${unit} The table below has the numbers.`;
}

function tableRows(plotted: PlottedChart): HTMLElement[] {
  const { series, categories, categoryTitle, formatCategory } = plotted;
  const heading = (name: string) => make('th', { scope: 'col' }, name);
  const first = make('tr', {}, heading(categoryTitle || 'Point'), ...series.map(({ name }) => heading(name)));
  const rows = categories.map((category, at) => {
    const across = series[0]?.across[at];
    const head = make('th', { scope: 'row' }, across === undefined ? category : formatCategory(across));
    return make('tr', {}, head, ...series.map(({ shown }) => make('td', {}, shown[at] ?? '')));
  });
  return [make('thead', {}, first), make('tbody', {}, ...rows)];
}

/** Lying bars need a line of text each, or some would have no name; the axis is below them. */
function heightOfBars({ categories, series }: PlottedChart): number {
  return Math.max(190, 60 + categories.length * Math.max(20, 12 * series.length));
}

/** The place of one chart in the page: title, drawing, what is missing, and its numbers as a table. */
export class ChartFigure {
  readonly canvas = make('canvas', { role: 'img' });
  private readonly title = make('figcaption');
  /** What the values are in. Along its axis it would be turned, and cut off where the plot is low. */
  private readonly unit = make('p', { class: 'chart-unit' });
  private readonly plot = make('div', { class: 'chart-plot' }, this.canvas);
  private readonly missing = make('p', { class: 'chart-missing' });
  private readonly table = make('table');
  readonly element = make(
    'figure',
    { class: 'chart' },
    this.title,
    this.unit,
    this.plot,
    this.missing,
    make('details', {}, make('summary', {}, 'Numbers'), this.table),
  );

  show(plotted: PlottedChart): void {
    this.title.textContent = plotted.title;
    this.unit.textContent = plotted.type === 'bar' ? '' : plotted.valueTitle;
    this.unit.hidden = this.unit.textContent === '';
    this.plot.style.height = plotted.type === 'bar' ? `${heightOfBars(plotted)}px` : '';
    this.canvas.setAttribute('aria-label', inWords(plotted));
    this.missing.hidden = plotted.missing.length === 0;
    this.missing.textContent = `Not drawn: ${plotted.missing.join(', ')} is not in this workbook.`;
    replace(this.table, ...tableRows(plotted));
  }
}
