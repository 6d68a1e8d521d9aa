import { readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { ChartData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { all, openPackage } from './package-parts';

const charts: readonly ChartData[] = [
  {
    type: 'column',
    title: 'Feed & solids',
    place: 'D2:K16',
    series: [
      { name: "'Log'!$B$1", categories: "'Log'!$A$2:$A$3", values: "'Log'!$B$2:$B$3" },
      { name: 'twice', categories: "'Log'!$A$2:$A$3", values: "'Log'!$C$2:$C$3" },
    ],
    categoryTitle: 'day',
    valueTitle: 'kg a day',
    valueFormat: '0.0',
    categoryFormat: 'yyyy-mm-dd',
  },
  {
    type: 'line',
    title: 'Line',
    place: 'D18:K30',
    series: [{ name: 'feed', values: "'Log'!$B$2:$B$3" }],
    valueTitle: "'Log'!$B$1",
  },
  { type: 'bar', title: 'Bar', place: 'M2:T16', series: [{ name: 'feed', values: "'Log'!$B$2:$B$3" }] },
  {
    type: 'scatter',
    title: 'Points',
    place: 'M18:T30',
    series: [{ name: 'feed', categories: "'Log'!$A$2:$A$3", values: "'Log'!$B$2:$B$3" }],
  },
];
const rows = [
  ['day', 'feed', 'twice'],
  [46_083, 2, 4],
  [46_084, 3, 6],
];
const cells = rows.flatMap((line, row) => line.map((value, column) => ({ row, column, value })));
const written = writeWorkbook({ sheets: [{ name: 'Log', cells, charts }] });

describe('charts of a file', () => {
  it('are read as they were written, so that saving keeps them', async () => {
    const [sheet] = (await readWorkbook(await written)).sheets;
    expect(sheet!.charts).toEqual(charts);
  });

  it('hold their values, so that a viewer that cannot calculate shows them', async () => {
    const file = openPackage(await written);
    const [first] = all(file.xml('xl/charts/chart1.xml'), 'c:ser');
    const cached = (name: string): string[] => all(all(first!, name)[0]!, 'c:v').map(({ text }) => text);
    expect([cached('c:tx'), cached('c:cat'), cached('c:val')]).toEqual([['feed'], ['46083', '46084'], ['2', '3']]);
    // Dates under the axis are numbers with a format; as text they would show as 46083.
    expect(all(all(first!, 'c:cat')[0]!, 'c:numRef')).toHaveLength(1);
  });

  it('name an axis by the cell that holds its unit, with the text that the cell shows', async () => {
    const file = openPackage(await written);
    const axis = all(file.xml('xl/charts/chart2.xml'), 'c:valAx')[0]!;
    const texts = ['c:f', 'c:v'].map((name) => all(all(axis, 'c:title')[0]!, name).map(({ text }) => text));
    expect(texts).toEqual([["'Log'!$B$1"], ['feed']]);
  });
});

describe('a chart of another kind', () => {
  it('is named by its kind and title', async () => {
    const [sheet] = (await readWorkbook(readFileSync('test/workbooks/files/drum-store.xlsx'))).sheets;
    expect(sheet!.charts).toBeUndefined();
    expect(sheet!.otherCharts).toEqual([{ kind: 'pie', title: 'Volume by drum' }]);
  });

  it('is told apart from the plain one where its bars are stacked', async () => {
    const bytes = await written;
    const files = unzipSync(bytes);
    const path = 'xl/charts/chart1.xml';
    const stacked = strFromU8(files[path]!).replace('<c:grouping val="clustered"/>', '<c:grouping val="stacked"/>');
    const [sheet] = (await readWorkbook(zipSync({ ...files, [path]: strToU8(stacked) }))).sheets;
    expect(sheet!.charts).toHaveLength(charts.length - 1);
    expect(sheet!.otherCharts).toEqual([{ kind: 'stacked column', title: 'Feed & solids' }]);
  });
});
