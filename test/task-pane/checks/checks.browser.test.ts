import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { launchBrowser } from '../../harness/browser';
import { until } from '../../harness/until';
import { axeFindings } from '../axe';
import { openPane } from '../pane-harness';
import { sampleWorkbook } from '../sample-host';

let browser: Browser;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

beforeEach(async () => {
  ({ page, complaints } = await openPane(browser, { viewport: { width: 320, height: 900 } }));
  const workbook = await sampleWorkbook('US/cone-cut-plan');
  await page.evaluate((data) => {
    window.paneTest.openWorkbook(data);
    window.paneTest.pane.show('checks');
  }, workbook);
  await page.getByText(/to look at in this workbook/).waitFor();
});
afterEach(async () => {
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('the keyboard goes from a caution to its cell', async () => {
  await page.getByRole('button', { name: 'Go to Patterns!A16' }).focus();
  await page.keyboard.press('Enter');
  await until(page, async () => (await window.paneTest.host.selection()).sheet === 'Patterns');
  const { range } = await page.evaluate(() => window.paneTest.host.selection());
  expect(range).toEqual({ row: 15, column: 0, rows: 1, columns: 1 });
});

test('new cautions appear by themselves, errors first, typed markup as text', async () => {
  await page.evaluate(() => {
    const { host } = window.paneTest;
    host.change('Start', 'Z1', '=SILT.UNIT.READ("US","dimension","<b>4</b> in")');
    host.give('Start', 'Z1', { error: { code: '#VALUE!', message: '' } });
  });
  const first = page.locator('.findings li').first();
  await first.filter({ hasText: '<b>4</b> in' }).waitFor();
  expect(await first.getByRole('button').textContent()).toBe('Start!Z1');
});

test('numbers typed in other units are the first thing to look at', async () => {
  await page.evaluate(() => window.paneTest.host.change('Silt units', 'B4', 'metric'));
  await page.locator('.caution', { hasText: 'Numbers were typed in US' }).waitFor();
  await page.getByRole('button', { name: 'Check again' }).click();
  const first = page.locator('.findings li').first();
  await first.filter({ hasText: 'Numbers were typed in US but are read as metric' }).waitFor();
});

test('dangers are listed by kind of work', async () => {
  expect(await page.locator('.safety dt').allTextContents()).toEqual([
    'Drums',
    'Dust and lime',
    'Metals and sealants',
    'Weight',
    'Electricity',
    'Solids',
    'Water',
  ]);
});

test.each(['light', 'dark'])('axe finds nothing and nothing sticks out at 320 pixels: %s', async (theme) => {
  await page.evaluate((dark) => window.paneTest.host.turn(dark), theme === 'dark');
  expect(await axeFindings(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});
