import { parseRange, splitSheet } from '../../hosts/address';
import { movedReferences } from '../../hosts/moved-formula';
import { nameInParts } from '../../hosts/moved-parts';
import type { SheetHost } from '../../hosts/sheet-host';
import type { Spreadsheet } from '../../hosts/univer/spreadsheet';
import type { ChartData, OtherChart } from '../../hosts/workbook-model';
import { debounced } from '../../task-pane/debounced';
import { make, replace } from '../../task-pane/dom';
import { attempt, part } from '../page-parts';
import { type ChartColors, inPrint, inTheDark, onPaper } from './chart-colors';
import { ChartFigure } from './chart-figure';
import type { DrawnChart } from './draw-chart';
import { type PlottedChart, plotChart, type ReadCells } from './plotted-chart';

/** The drawing library is loaded when the first chart is shown. */
const drawing = () => import(/* webpackChunkName: "charts" */ './draw-chart');

interface Shown {
  readonly chart: ChartData;
  readonly figure: ChartFigure;
  drawn: DrawnChart | undefined;
}

/** More cells than this in one reference are not read, so that a chart of whole columns does not block the page. */
const mostCells = 20_000;

const keptAsIs = ({ kind, title }: OtherChart): string =>
  `${title === '' ? 'A chart' : `“${title}”`} of the kind “${kind}” is not drawn here. Saving keeps it in the file.`;

/** The strip under the grid with the charts of the sheet in view, drawn from their cells. */
export class ChartPanel {
  private readonly spreadsheet: Spreadsheet;
  private readonly colors: () => ChartColors;
  private readonly strip = part('charts');
  private readonly toggle = part<HTMLButtonElement>('charts-toggle');
  private readonly list = part('charts-list');
  /** The charts shown belong to this sheet as it was opened. */
  private of: unknown;
  private shown: Shown[] = [];
  private isPrinting = false;

  constructor(spreadsheet: Spreadsheet, isDark: () => boolean) {
    this.spreadsheet = spreadsheet;
    this.colors = () => (this.isPrinting ? inPrint : isDark() ? inTheDark : onPaper);
  }

  /** Redraws from now on when sheet, cells or theme change, and for printing. */
  async start(host: SheetHost): Promise<void> {
    // A smaller page would have too few rows left.
    this.open(matchMedia('(min-width: 761px) and (min-height: 900px)').matches);
    this.toggle.addEventListener('click', () => this.open(this.toggle.getAttribute('aria-expanded') !== 'true'));
    const update = debounced(() => void attempt('Charts', () => this.update()), 40);
    await host.onSelectionChanged(update);
    await host.onCellsChanged(update);
    host.onThemeChanged(update);
    matchMedia('print').addEventListener('change', ({ matches }) => this.print(matches));
    addEventListener('beforeprint', () => this.print(true));
    addEventListener('afterprint', () => this.print(false));
    update();
  }

  /** The title of each drawn chart with its numbers, read back from the drawing. */
  readBack(): { readonly title: string; readonly series: (number | undefined)[][] }[] {
    return this.shown.flatMap(({ chart, drawn }) =>
      drawn === undefined ? [] : [{ title: chart.title, series: drawn.readBack() }],
    );
  }

  private open(isOpen: boolean): void {
    this.toggle.setAttribute('aria-expanded', String(isOpen));
    this.list.hidden = !isOpen;
    if (isOpen) void attempt('Charts', () => this.update());
  }

  private async update(): Promise<void> {
    const { facade, sources } = this.spreadsheet.current();
    const sheet = facade.getActiveSheet();
    const source = sources.get(sheet.getSheetId());
    if (source !== this.of) this.build(source?.charts ?? [], source?.otherCharts ?? []);
    this.of = source;
    if (this.list.hidden || this.shown.length === 0) return;
    const { shown } = this;
    const { drawChart } = await drawing();
    if (shown !== this.shown) return;
    for (const one of shown) {
      const plotted = this.plot(one.chart);
      one.figure.show(plotted);
      if (one.drawn === undefined) one.drawn = drawChart(one.figure.canvas, plotted, this.colors());
      else one.drawn.show(plotted, this.colors());
    }
    this.strip.dataset.drawn = String(Number(this.strip.dataset.drawn ?? 0) + 1);
  }

  private build(charts: readonly ChartData[], others: readonly OtherChart[]): void {
    for (const { drawn } of this.shown) drawn?.remove();
    this.shown = charts.map((chart) => ({ chart, figure: new ChartFigure(), drawn: undefined }));
    const count = charts.length + others.length;
    this.strip.hidden = count === 0;
    this.toggle.textContent = `Charts of this sheet (${count})`;
    replace(
      this.list,
      ...this.shown.map(({ figure }) => figure.element),
      ...others.map((other) => make('p', { class: 'chart-other' }, keptAsIs(other))),
    );
  }

  private plot(chart: ChartData): PlottedChart {
    return plotChart(chart, this.read);
  }

  /** A file's charts name sheets and cells as they were in it, also after a sheet was renamed or rows came and went here. */
  private readonly read: ReadCells = (reference) => {
    const { facade, reader, sources, moves } = this.spreadsheet.current();
    const { sheet: name, rest } = splitSheet(reference);
    const range = parseRange(rest);
    if (name === undefined || range === undefined || range.rows * range.columns > mostCells) return undefined;
    const id = [...sources].find(([, source]) => nameInParts(source).toLowerCase() === name.toLowerCase())?.[0];
    const sheet = facade.getWorkbook().getSheetBySheetId(id ?? '');
    if (!sheet) return undefined;
    const now = movedReferences(reference, name, () => moves.get(sheet.getSheetId()) ?? []);
    const moved = parseRange(splitSheet(now).rest);
    if (moved === undefined) return undefined;
    const { row, column, rows, columns } = moved;
    return Array.from(
      { length: rows * columns },
      (_, at) => reader.read(sheet, row + Math.floor(at / columns), column + (at % columns)).value,
    );
  };

  private print(isPrinting: boolean): void {
    if (this.isPrinting === isPrinting) return;
    this.isPrinting = isPrinting;
    for (const { chart, drawn } of this.shown) {
      drawn?.show(this.plot(chart), this.colors());
      drawn?.sharpen(isPrinting);
    }
  }
}
