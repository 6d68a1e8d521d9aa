import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseRange, splitSheet } from '../../../src/hosts/address';
import type { CellResult, ChartData, WorkbookData } from '../../../src/hosts/workbook-model';
import { inPrint, inTheDark, onPaper } from '../../../src/workbench/charts/chart-colors';
import { plotChart, type ReadCells } from '../../../src/workbench/charts/plotted-chart';
import { readWorkbook } from '../../../src/workbooks/read-xlsx';
import { all, type Element, openPackage } from '../../workbooks/package-parts';

const samples = readdirSync('sample-workbooks', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.xlsx'))
  .sort();

function cellsOf(workbook: WorkbookData): ReadCells {
  return (reference) => {
    const { sheet, rest } = splitSheet(reference);
    const range = parseRange(rest);
    const cells = workbook.sheets.find(({ name }) => name === sheet)?.cells;
    if (range === undefined || cells === undefined) return undefined;
    return Array.from({ length: range.rows * range.columns }, (_, at): CellResult => {
      const [row, column] = [range.row + Math.floor(at / range.columns), range.column + (at % range.columns)];
      return cells.find((cell) => cell.row === row && cell.column === column)?.value ?? '';
    });
  };
}

/** The numbers that the file keeps beside a chart's references, for programs that cannot calculate. */
function keptNumbers(series: Element): (number | undefined)[] {
  const source = all(series, 'c:val')[0] ?? all(series, 'c:yVal')[0];
  const count = Number(all(source!, 'c:ptCount')[0]?.attributes.val ?? 0);
  const numbers = Array.from({ length: count }, (): number | undefined => undefined);
  for (const point of all(source!, 'c:pt')) numbers[Number(point.attributes.idx)] = Number(all(point, 'c:v')[0]?.text);
  return numbers;
}

/** Charts with their numbers in one text, so that two lists compare in any order. */
const listed = (charts: readonly (readonly [string, readonly (readonly (number | undefined)[])[]])[]): string[] =>
  charts.map(([title, series]) => JSON.stringify([title, series])).sort();

describe('the charts of the samples', () => {
  it('are plotted with the numbers that the file keeps for programs that cannot calculate', async () => {
    let count = 0;
    for (const sample of samples) {
      const bytes = readFileSync(`sample-workbooks/${sample}`);
      const workbook = await readWorkbook(bytes);
      const plotted = workbook.sheets.flatMap(({ charts = [] }) =>
        charts.map((chart) => plotChart(chart, cellsOf(workbook))),
      );
      const file = openPackage(bytes);
      const kept = file.names
        .filter((name) => /^xl\/charts\/chart\d+\.xml$/.test(name))
        .map((name) => {
          const chart = file.xml(name);
          const title = all(all(chart, 'c:title')[0]!, 'a:t').map(({ text }) => text);
          return [title.join(''), all(chart, 'c:ser').map(keptNumbers)] as const;
        });
      expect(listed(plotted.map(({ title, series }) => [title, series.map(({ values }) => values)])), sample).toEqual(
        listed(kept),
      );
      expect(plotted.flatMap(({ missing }) => missing)).toEqual([]);
      count += kept.length;
    }
    expect(count).toBeGreaterThan(20);
  });
});

describe('a chart', () => {
  const held: Readonly<Record<string, readonly CellResult[]>> = {
    'A!B1': ['oxygen'],
    'A!A2:A5': [46_083, 46_090, 46_097, 46_104],
    'A!B2:B5': [6.5, '', 'never', { error: { code: '#N/A', message: 'not measured' } }],
  };
  const chart: ChartData = {
    type: 'line',
    title: '',
    place: 'D2:K16',
    series: [{ name: 'A!B1', categories: 'A!A2:A5', values: 'A!B2:B5' }],
    categoryFormat: 'd mmm',
    valueFormat: '0.00',
  };
  const read: ReadCells = (reference) => held[reference];

  it('leaves a gap where a cell holds no number, and shows in its table what the cell holds', () => {
    const plotted = plotChart(chart, read);
    expect(plotted.series).toEqual([
      {
        name: 'oxygen',
        values: [6.5, undefined, undefined, undefined],
        across: [],
        shown: ['6.5', '', 'never', '#N/A'],
      },
    ]);
    // 46083 is 2 March 2026 (ECMA-376, 18.17.4.1: serial 1 is 1 January 1900, with a 29 February 1900).
    expect(plotted.categories).toEqual(['2 Mar', '9 Mar', '16 Mar', '23 Mar']);
    expect(plotted.title).toBe('oxygen');
  });

  it('counts the points of a scatter chart where its places are words', () => {
    const [first] = plotChart({ ...chart, type: 'scatter' }, read).series;
    expect(first?.across).toEqual(held['A!A2:A5']);
    const [counted] = plotChart(
      { ...chart, type: 'scatter', series: [{ name: 'x', values: 'A!A2:A5', categories: 'A!B1' }] },
      read,
    ).series;
    expect(counted?.across).toEqual([1, 2, 3, 4]);
  });

  it('names an axis by the cell that holds its unit', () => {
    expect(plotChart({ ...chart, valueTitle: 'Log!$B$1' }, () => ['lb/d']).valueTitle).toBe('lb/d');
    expect(plotChart({ ...chart, valueTitle: 'lb per day' }, read).valueTitle).toBe('lb per day');
  });

  it('names a reference that leads nowhere', () => {
    const plotted = plotChart({ ...chart, series: [{ name: 'gone', values: 'Gone!B2:B5' }] }, read);
    expect(plotted.missing).toEqual(['Gone!B2:B5']);
    expect(plotted.series[0]?.values).toEqual([]);
  });
});

/** Relative luminance and contrast of WCAG 2.2. */
function contrast(one: string, other: string): number {
  const luminance = (color: string): number => {
    const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
      const part = Number.parseInt(color.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

describe('the colors of charts', () => {
  it.each([
    ['on paper', onPaper],
    ['in the dark', inTheDark],
    ['in print', inPrint],
  ])('%s stand out from the ground as WCAG 2.2 asks', (_, { paper, ink, quiet, series }) => {
    // 1.4.3 for text, 1.4.11 for graphics.
    for (const color of [ink, quiet]) expect(contrast(color, paper), color).toBeGreaterThanOrEqual(4.5);
    for (const color of series) expect(contrast(color, paper), color).toBeGreaterThanOrEqual(3);
  });
});
