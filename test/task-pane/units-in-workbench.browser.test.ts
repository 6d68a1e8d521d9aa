import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Block } from '../../src/hosts/sheet-host';
import { closePages, launchBrowser } from '../harness/browser';
import { cells, chooseSample, openWorkbench, serveWorkbench } from '../workbench/open-workbench';

let browser: Browser;
let page: Page;
let faults: readonly string[];
let server: Awaited<ReturnType<typeof serveWorkbench>>;

beforeAll(async () => {
  server = await serveWorkbench();
  browser = await launchBrowser();
  ({ page, faults } = await openWorkbench(browser, server.address));
  await chooseSample(page, 'US/cone-cut-plan.xlsx');
  await page.locator('.banner .profile', { hasText: 'US' }).waitFor();
  await page.locator('#tab-units').click();
});

afterAll(async () => {
  await closePages(browser);
  await server?.close();
});

afterEach(() => {
  expect(faults).toEqual([]);
});

const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
const messageShown = (text: string | RegExp) => page.locator('.message', { hasText: text }).waitFor();
const typed = { sheet: 'Drums', row: 5, column: 2, rows: 1, columns: 1 };
const diameter = { ...typed, column: 10 };
const slant = { sheet: 'Patterns', row: 4, column: 2, rows: 3, columns: 1 };
const mixAndWeight = { sheet: 'Stand and ports', row: 5, column: 1, rows: 1, columns: 3 };
const numbers = ({ values }: Block) => values.flat().map(Number);
const near = (wanted: readonly number[]) => (block: Block) =>
  numbers(block).every((value, at) => Math.abs(value / wanted[at]! - 1) < 1e-9);

let before: readonly number[];

test('a sample in US units is converted whole: typed numbers and results', async () => {
  before = numbers(await cells(page, slant, ({ values }) => typeof values[0]?.[0] === 'number'));
  const weight = numbers(await cells(page, mixAndWeight, ({ values }) => typeof values[0]?.[0] === 'number'));
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await page.getByRole('heading', { name: 'Typed numbers' }).waitFor();
  expect(await page.getByRole('heading', { name: /Not converted|by hand/ }).count()).toBe(0);
  await press(/^Change units and convert \d+$/);
  await messageShown('cells were converted');
  await cells(page, typed, near([21.75 * 25.4]));
  await cells(page, diameter, near([21.75 * 25.4]));
  await cells(page, slant, near(before.map((value) => value * 25.4)));
  // The pound is 0.45359237 kg exactly.
  await cells(page, mixAndWeight, near(weight.map((value) => value * 0.45359237)));
});

test('the pane undoes it, and the grid is as before', async () => {
  await page.locator('.message').getByRole('button', { name: 'Undo' }).click();
  await messageShown('as they were before');
  await cells(page, typed, near([21.75]));
  await cells(page, slant, near(before));
  expect(await page.locator('.banner .profile').textContent()).toBe('US');
});

test('the spreadsheet’s own undo undoes it too, in one step', async () => {
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await press(/^Change units and convert \d+$/);
  await messageShown('cells were converted');
  await cells(page, typed, near([21.75 * 25.4]));
  await page.evaluate(() => window.workbench.spreadsheet.api.undo());
  await cells(page, typed, near([21.75]));
  await page.locator('.banner .profile', { hasText: 'US' }).waitFor();
});

test('units changed only in their cell show the caution on the sheets and in the pane', async () => {
  await page.evaluate(() =>
    window.workbench.host.write([{ sheet: 'Silt units', row: 3, column: 1, cells: [['metric']] }]),
  );
  await page.locator('.caution', { hasText: 'typed in US but are read as metric' }).waitFor();
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Silt units', row: 3, column: 1, cells: [['US']] }]));
  await expect.poll(() => page.locator('.caution').count()).toBe(0);
});

test('a function is inserted beside the data and computed by the grid', async () => {
  await page.locator('#tab-functions').click();
  await page.getByRole('searchbox').fill('CONE.VOLUME');
  await page.locator('[data-function="CONE.VOLUME"]').click();
  await page.getByRole('textbox', { name: /^top\b/ }).fill('=Drums!K5');
  await page.getByRole('textbox', { name: /^bottom\b/ }).fill('=Drums!F5');
  await page.getByRole('textbox', { name: /^height\b/ }).fill('=Drums!G5');
  const shown = page.locator('.figure-result');
  await shown.waitFor();
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Drums', range: { row: 40, column: 1, rows: 1, columns: 1 } }),
  );
  await press('Insert at Drums!B41');
  await messageShown('Inserted in Drums!B41');
  const { values } = await cells(
    page,
    { ...typed, row: 40, column: 1 },
    (block) => typeof block.values[0]?.[0] === 'number',
  );
  const [figure] = ((await shown.textContent()) ?? '').split(' ');
  expect(Number(values[0]![0])).toBeCloseTo(Number(figure), 6);
});
