import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it, vi } from 'vitest';
import { parseRange, splitSheet } from '../../../src/hosts/address';
import { inTheDark, onPaper } from '../../../src/workbench/charts/chart-colors';
import { readWorkbook } from '../../../src/workbooks/read-xlsx';
import { chooseSample, type OpenPage, openWorkbench, withoutSaving } from '../open-workbench';
import { servedSite } from '../served-site';

const site = servedSite();
/** The page that tests share which do not need another theme. */
let light: OpenPage;

beforeAll(async () => {
  light = await openWorkbench(site.browser, site.address);
  await openCharts(light.page);
});

function showSheet(page: Page, name: string): Promise<void> {
  return page.evaluate((wanted) => {
    const { facade } = window.workbench.spreadsheet.current();
    const sheet = facade.getSheetByName(wanted);
    if (sheet !== null) facade.setActiveSheet(sheet);
  }, name);
}

/** The charts of a sheet as its file describes them: the titles, and where the numbers of each series are. */
function chartsOf(page: Page, sheet: string): Promise<{ title: string; values: string[] }[]> {
  return page.evaluate((wanted) => {
    const { charts = [] } =
      window.workbench.spreadsheet.current().opened.sheets.find(({ name }) => name === wanted) ?? {};
    return charts.map(({ title, series }) => ({ title, values: series.map(({ values }) => values) }));
  }, sheet);
}

/** Opens the strip, which starts open only on a tall page. */
async function openCharts(page: Page): Promise<void> {
  const toggle = page.locator('#charts-toggle');
  if ((await toggle.getAttribute('aria-expanded')) === 'false') await toggle.dispatchEvent('click');
}

async function numbersAt(page: Page, reference: string): Promise<(number | undefined)[]> {
  const { sheet = '', rest } = splitSheet(reference);
  const range = parseRange(rest)!;
  const { values } = await page.evaluate((place) => window.workbench.host.read(place), { sheet, range });
  return values.flat().map((value) => (typeof value === 'number' ? value : undefined));
}

const drawn = (page: Page) => page.evaluate(() => window.workbench.charts.readBack());

/** Waits until each chart of the sheet in view shows the numbers of its cells, and gives those numbers. */
async function agreed(page: Page, sheet: string): Promise<(number | undefined)[]> {
  const charts = await chartsOf(page, sheet);
  return vi.waitFor(
    async () => {
      const seen = await drawn(page);
      expect(seen.map(({ title }) => title)).toEqual(charts.map(({ title }) => title));
      const all: (number | undefined)[] = [];
      for (const [at, chart] of charts.entries()) {
        for (const [index, reference] of chart.values.entries()) {
          const cells = await numbersAt(page, reference);
          const plotted = seen[at]?.series[index] ?? [];
          // A place on the canvas is a fraction of its height.
          const height = Math.max(...cells.map((cell) => Math.abs(cell ?? 0)));
          expect(plotted.length).toBe(cells.length);
          for (const [point, cell] of cells.entries()) {
            if (cell === undefined) expect(plotted[point] ?? undefined, `${chart.title}, ${point + 1}`).toBeUndefined();
            else expect(Math.abs((plotted[point] ?? Number.NaN) - cell), chart.title).toBeLessThan(height * 1e-6);
          }
          all.push(...cells);
        }
      }
      return all;
    },
    { timeout: 60_000 },
  );
}

const edits = [
  ['US/water-book.xlsx', 'Tests', 'D8', 3.5, ['Tests']],
  ['US/harvest-book.xlsx', 'Pulls', 'B7', 40, ['Months']],
  ['US/materials-sheet.xlsx', 'Build or buy', 'B4', 700, ['Build or buy']],
  ['US/own-figures.xlsx', 'Air', 'B8', 3.5, ['Air']],
  ['US/stocking-scenarios.xlsx', 'Scenarios', 'D5', 500, ['Compare', 'Balance', 'How sure']],
] as const;

it('plots in every chart of the samples the numbers of its cells, also after an edit', async () => {
  const { page, faults } = light;
  for (const [sample, sheet, cell, value, charted] of edits) {
    await chooseSample(page, sample);
    const before = new Map<string, (number | undefined)[]>();
    for (const name of charted) {
      await showSheet(page, name);
      before.set(name, await agreed(page, name));
    }
    const { row = 0, column = 0 } = parseRange(cell) ?? {};
    await page.evaluate((write) => window.workbench.host.write([write]), { sheet, row, column, cells: [[value]] });
    for (const name of charted) {
      await showSheet(page, name);
      await expect.poll(() => agreed(page, name), { message: `${sample}, ${name}` }).not.toEqual(before.get(name));
    }
  }
  expect(faults).toEqual([]);
});

it('keeps charts at their cells when rows are inserted above them, here and in the saved file', async () => {
  const { page, faults } = light;
  await chooseSample(page, 'US/stocking-scenarios.xlsx');
  await showSheet(page, 'Compare');
  const numbers = await agreed(page, 'Compare');
  const before = await chartsOf(page, 'Compare');
  const plotted = async () => (await drawn(page)).flatMap(({ series }) => series.flat());
  const insert = (row: number, count: number) =>
    page.evaluate(
      ([at, many]) => {
        window.workbench.spreadsheet.current().facade.getSheetByName('Compare')!.insertRows(at!, many!);
      },
      [row, count],
    );
  const isAsBefore = async () => {
    const now = await plotted();
    expect(now.length).toBe(numbers.length);
    // A place on the canvas is a fraction of its height.
    for (const [at, value] of numbers.entries()) {
      expect(Math.abs((now[at] ?? 0) - (value ?? 0))).toBeLessThanOrEqual(1e-4 * Math.abs(value ?? 0) + 1e-6);
    }
  };
  const drawings = () => page.getAttribute('#charts', 'data-drawn');
  const drawnBefore = await drawings();
  await insert(1, 2);
  await expect.poll(drawings).not.toBe(drawnBefore);
  await vi.waitFor(isAsBefore, { timeout: 60_000 });

  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const saved = (await readWorkbook(new Uint8Array(readFileSync(await download.path())))).sheets.find(
    ({ name }) => name === 'Compare',
  );
  const rowOf = (reference: string): number => parseRange(splitSheet(reference).rest)!.row;
  expect(saved?.charts?.map(({ series }) => series.map(({ values }) => rowOf(values)))).toEqual(
    before.map(({ values }) => values.map((reference) => rowOf(reference) + 2)),
  );
  expect(faults).toEqual([]);
});

it('names a chart of a kind that it does not draw, and saving keeps it', async () => {
  const { page, faults } = light;
  const file = 'test/workbooks/files/drum-store.xlsx';
  await withoutSaving(page, () => page.setInputFiles('#open', file));
  await page.locator('#charts').getByText('“Volume by drum” of the kind “pie” is not drawn here').waitFor();
  await page.evaluate(() => {
    const { facade } = window.workbench.spreadsheet.current();
    facade.getActiveSheet().getRange('A2').setValue('Larch');
  });
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const part = 'xl/charts/chart1.xml';
  const [was, is] = [readFileSync(file), readFileSync(await download.path())].map((bytes) => unzipSync(bytes)[part]);
  expect(is).toEqual(was);
  expect(faults).toEqual([]);
  await page.context().close();
});

/** Dots of a color on the first chart. */
function dots(page: Page, color: string): Promise<number> {
  return page.$eval(
    '#charts canvas',
    (canvas, wanted) => {
      if (!(canvas instanceof HTMLCanvasElement)) return 0;
      const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
      const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(wanted.slice(at, at + 2), 16));
      let count = 0;
      for (let at = 0; at < data.length; at += 4)
        if (data[at] === red && data[at + 1] === green && data[at + 2] === blue) count += 1;
      return count;
    },
    color,
  );
}

it('draws for the dark, for paper and for 200 %, each with its numbers as a table', async () => {
  const { page, faults } = await openWorkbench(site.browser, site.address, { dark: true });
  await openCharts(page);
  await chooseSample(page, 'US/water-book.xlsx');
  await showSheet(page, 'Tests');
  await agreed(page, 'Tests');
  expect(await dots(page, inTheDark.series[0]!)).toBeGreaterThan(100);
  // What the values are in stands upright above the plot, whole.
  expect(await page.locator('#charts .chart-unit').allTextContents()).toEqual(['mg/L as N', 'mg/L as N']);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect.poll(() => dots(page, onPaper.series[0]!)).toBeGreaterThan(100);
  expect(await page.locator('#pane').isVisible()).toBe(false);
  expect(await page.locator('#charts canvas').first().isVisible()).toBe(true);
  // The cells are on paper as words, because the grid is empty there.
  expect(await page.locator('#grid').isVisible()).toBe(false);
  await page.locator('#paper-sheet tr', { hasText: '2026-04-06' }).getByText('2.2', { exact: true }).waitFor();
  expect(await page.locator('#paper-sheet h2').textContent()).toBe('water-book.xlsx: Tests');
  await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
  await expect.poll(() => dots(page, onPaper.series[0]!)).toBeGreaterThan(100);

  // 1280 pixels at 200 %: the charts open over the sheet, as wide as the page and no wider.
  await page.setViewportSize({ width: 640, height: 400 });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await page.emulateMedia({ media: 'print' });
  // On paper each chart stays inside its frame, however wide it was in the window.
  const tooWide = await page.$$eval('.chart', (frames) =>
    frames.filter(
      (frame) =>
        (frame.querySelector('canvas')?.getBoundingClientRect().right ?? 0) > frame.getBoundingClientRect().right,
    ),
  );
  expect(tooWide).toHaveLength(0);
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect.poll(() => page.$eval('#charts', (strip) => strip.scrollWidth <= innerWidth)).toBe(true);
  await expect.poll(() => page.locator('#charts canvas').first().isVisible()).toBe(true);
  const table = page.locator('#charts table').first();
  await page.locator('#charts summary').first().click();
  // Typed readings of the sample: ammonia and nitrite of 2 March.
  await expect.poll(() => table.locator('tbody tr').first().textContent()).toMatch(/^2 Mar0\.40\.05$/);
  // F6 from the charts leads to the pane; back again, to the sheet, closes them.
  await page.locator('#charts-toggle').focus();
  for (const key of ['F6', 'Shift+F6', 'Shift+F6']) await page.keyboard.press(key);
  await expect.poll(() => page.locator('#charts-list').isVisible()).toBe(false);
  expect(faults).toEqual([]);
  await page.context().close();
});
