import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { readDxf } from '../drawing/read-dxf';
import { readPdf } from '../drawing/read-pdf';
import { closePages, launchBrowser } from '../harness/browser';
import { until } from '../harness/until';
import { chooseSample, openWorkbench, serveWorkbench } from '../workbench/open-workbench';

let browser: Browser;
let page: Page;
let faults: readonly string[];
let server: Awaited<ReturnType<typeof serveWorkbench>>;

beforeAll(async () => {
  server = await serveWorkbench();
  browser = await launchBrowser();
  ({ page, faults } = await openWorkbench(browser, server.address));
  await chooseSample(page, 'US/cone-cut-plan.xlsx');
  await until(page, async () => (await window.workbench.host.sheets()).includes('Cut plan'));
});

afterAll(async () => {
  await closePages(browser);
  await server?.close();
});

afterEach(() => {
  expect(faults).toEqual([]);
});

async function select(sheet: string, row: number, column: number): Promise<void> {
  await page.evaluate(
    (place) =>
      window.workbench.host.select({
        sheet: place.sheet,
        range: { row: place.row, column: place.column, rows: 1, columns: 1 },
      }),
    { sheet, row, column },
  );
}

const open = (tab: string) => page.locator('#pane').getByRole('tab', { name: tab }).click();
const sheets = () => page.evaluate(() => window.workbench.host.sheets());
const captioned = (words: string) => page.locator('figcaption', { hasText: words }).waitFor();

test('the drawing follows the selection in the grid', async () => {
  await open('Drawings');
  await select('Patterns', 4, 1);
  await captioned('Fern: cone pattern, cut 1 (Patterns!B5:K5)');
  await select('Cut plan', 8, 2);
  await captioned('Cut plan (Cut plan!A7');
  await select('Drums', 4, 0);
  await captioned('Settling drum in section (Drums, row 5)');
  await select('Drums', 0, 0);
  await page.getByText('Nothing here can be drawn').waitFor();
});

test('the form of a drum begins anew when another workbook is opened', async () => {
  await select('Drums', 4, 0);
  await captioned('Settling drum in section (Drums, row 5)');
  const [diameter, height] = [page.getByLabel('Inside diameter of the drum'), page.getByLabel('Height of the drum')];
  await diameter.fill('30');
  await height.fill('40');
  await page.evaluate(() => window.workbench.spreadsheet.open(window.workbench.spreadsheet.opened()));
  await expect.poll(async () => [await diameter.inputValue(), await height.inputValue()]).toEqual(['', '']);
  await select('Drums', 4, 0);
  await captioned('Settling drum in section (Drums, row 5)');
  expect([await diameter.inputValue(), await height.inputValue()]).toEqual(['22.5', '']);
});

test('the saved file has what the grid computed', async () => {
  await select('Patterns', 5, 0);
  await captioned('Moss: cone pattern');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save DXF' }).click(),
  ]);
  const { arcs } = readDxf(readFileSync((await download.path())!, 'utf8'));
  const [row] = await page.evaluate(async () => {
    const range = { row: 5, column: 1, rows: 1, columns: 10 };
    return (await window.workbench.host.read({ sheet: 'Patterns', range })).values;
  });
  const cut = arcs.filter(({ layer }) => layer === 'cut').map(({ radius }) => radius);
  expect(Math.min(...cut)).toBeCloseTo(row![2] as number, 5);
  expect(Math.max(...cut)).toBeCloseTo(row![3] as number, 5);
});

test('the papers of the whole job are saved as pages and as a workbook', async () => {
  const saved = async (button: string) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: button }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync((await download.path())!)) };
  };
  const pdf = await saved('Save job packet as PDF');
  expect(pdf.name).toBe('job-packet.pdf');
  const words = (await readPdf(pdf.bytes)).map(({ texts }) => texts.map(({ text }) => text).join(' '));
  for (const title of [
    'Job packet: 3 drums',
    'Fern: shop sheet',
    'Moss: shop sheet',
    'Sedge: shop sheet',
    'Centers of the arcs',
  ])
    expect(
      words.filter((text) => text.includes(title)),
      title,
    ).toHaveLength(1);
  const workbook = await saved('Save job packet as a workbook');
  expect(workbook.name).toBe('job-packet.xlsx');
  const { sheets: made } = await readWorkbook(workbook.bytes);
  expect(made.map(({ name }) => name)).toEqual(['Job', 'Fern', 'Moss', 'Sedge', 'Cut plan']);
  const [[slant] = []] = await page.evaluate(async () => {
    const range = { row: 4, column: 2, rows: 1, columns: 1 };
    return (await window.workbench.host.read({ sheet: 'Patterns', range })).values;
  });
  const cells = made.flatMap(({ cells: all }) => all);
  expect(cells.some(({ value }) => value === slant)).toBe(true);
  expect(cells.some(({ formula }) => formula !== undefined)).toBe(false);
});

test('a marking-out table computes in the grid, and can be undone', async () => {
  await page.getByRole('button', { name: 'Insert marking-out table' }).click();
  await page.getByText('The marking-out table is on the sheet Marking out 2.').waitFor();
  await until(page, async () => {
    const range = { row: 3, column: 0, rows: 2, columns: 7 };
    const { values } = await window.workbench.host.read({ sheet: 'Marking out 2', range });
    return values[0]![0] === 'mark' && values[1]![2] !== '';
  });
  await page.locator('.message').getByRole('button', { name: 'Undo' }).click();
  await until(page, async () => !(await window.workbench.host.sheets()).includes('Marking out 2'));
});

test('ready-made sheets are added to the existing ones, and every formula in them computes', async () => {
  await open('Sheets');
  await page.getByLabel('Stocking scenarios').check();
  await page.getByRole('button', { name: 'Insert' }).click();
  await page.getByRole('button', { name: 'Keep both; name the new Start 2' }).click();
  await page.getByText(/Stocking scenarios: \d sheets inserted\./).waitFor();
  expect(await sheets()).toEqual(expect.arrayContaining(['Start', 'Drums', 'Start 2', 'Scenarios', 'Compare']));
  await until(page, async () => {
    const blocks = await window.workbench.host.readUsed();
    const compare = blocks.find(({ sheet }) => sheet === 'Compare');
    const words = compare?.values.flat() ?? [];
    return words.includes('first limit');
  });
  const faulty = await page.evaluate(async () => {
    const blocks = await window.workbench.host.readUsed();
    return blocks.flatMap(({ sheet, values }) =>
      values.flat().flatMap((value) => (typeof value === 'object' ? [`${sheet}: ${value.error.code}`] : [])),
    );
  });
  expect(faulty).toEqual([]);
  await open('Drawings');
  await select('Compare', 7, 3);
  await captioned(': train (Compare!');
});

test('cautions lead to their cells', async () => {
  await open('Checks');
  await page.getByRole('button', { name: 'Go to Patterns!A16' }).click();
  await until(page, async () => {
    const { sheet, range } = await window.workbench.host.selection();
    return sheet === 'Patterns' && range.row === 15;
  });
});

test('cautions are those of the open workbook in its present state', async () => {
  await open('Checks');
  await page.getByRole('button', { name: 'Go to Patterns!A16' }).waitFor();
  await chooseSample(page, 'US/water-book.xlsx');
  await page.locator('.findings li', { hasText: 'Patterns!' }).first().waitFor({ state: 'detached' });
  // 6.5 mg/L of total ammonia at pH 8.2 and 75 °F has over 0.4 mg/L un-ionized, eight times what harms.
  await page.evaluate(() =>
    window.workbench.host.write([{ sheet: 'Tests', row: 16, column: 1, cells: [[75, 8.2, 6.5]] }]),
  );
  const alarm = page.locator('#caution-line', { hasText: 'Ammonia N, 2026-05-18: 6.5. Too much' });
  await alarm.waitFor();
  await page.locator('.findings li.danger', { hasText: 'Tests!D17' }).waitFor();
  await page.setViewportSize({ width: 1280, height: 720 });
  const text = await alarm.locator('.caution-text').boundingBox();
  expect(text !== null && text.x >= 0 && text.x + text.width <= 1280 && text.y + text.height <= 720).toBe(true);
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Start', range: { row: 0, column: 0, rows: 1, columns: 1 } }),
  );
  await alarm.getByRole('button', { name: 'Go to Tests!D17' }).click();
  await until(page, async () => {
    const { sheet, range } = await window.workbench.host.selection();
    return sheet === 'Tests' && range.row === 16 && range.column === 3;
  });
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Tests', row: 16, column: 2, cells: [[7.4, 0.5]] }]));
  await page.locator('.findings li', { hasText: 'Tests!D17' }).first().waitFor({ state: 'detached' });
  await alarm.waitFor({ state: 'detached' });
});

test('a question about one workbook disappears when another is opened, and nothing is done', async () => {
  await chooseSample(page, 'US/water-book.xlsx');
  await until(page, async () => (await window.workbench.host.sheets()).includes('Verdict'));
  await open('Sheets');
  await page.getByLabel('Harvest book').check();
  await page.getByRole('button', { name: 'Insert', exact: true }).click();
  await page.getByText('called Start').waitFor();
  await chooseSample(page, 'US/cone-cut-plan.xlsx');
  await until(page, async () => (await window.workbench.host.sheets()).includes('Cut plan'));
  await page.getByRole('alertdialog').waitFor({ state: 'detached' });
  expect(await sheets()).not.toContain('Pulls');
});

test('a change of units in one workbook cannot be undone in another', async () => {
  await chooseSample(page, 'US/cone-cut-plan.xlsx');
  await open('Units');
  const sample = page.locator('#pane .profile');
  await expect.poll(() => sample.textContent()).toBe('US');
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await page.getByRole('button', { name: 'Change units', exact: true }).click();
  await page.getByRole('button', { name: /^Change units and convert/ }).click();
  await page.getByRole('button', { name: 'Undo the last change' }).waitFor();
  await chooseSample(page, 'metric/cone-cut-plan.xlsx');
  await page
    .getByRole('button', { name: /Take (the last change|it) back/ })
    .first()
    .waitFor({ state: 'detached' });
  await chooseSample(page, 'US/water-book.xlsx');
  await expect.poll(() => sample.textContent()).toBe('US');
  expect(await page.getByRole('button', { name: /Take (the last change|it) back/ }).count()).toBe(0);
});
