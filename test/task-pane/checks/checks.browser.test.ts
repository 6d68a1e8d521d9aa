import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { closePages, launchBrowser } from '../../harness/browser';
import { until } from '../../harness/until';
import { axeFindings } from '../axe';
import { openPane } from '../pane-harness';
import { sampleAsJson } from '../sample-host';

let browser: Browser;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  browser = await launchBrowser();
  ({ page, complaints } = await openPane(browser, { viewport: { width: 320, height: 900 } }));
});
afterAll(() => closePages(browser));

// Each opens a new pane in the page.
beforeEach(async () => {
  const workbook = await sampleAsJson('US/cone-cut-plan');
  await page.evaluate((data) => {
    window.paneTest.openWorkbook(data);
    window.paneTest.pane.show('checks');
  }, workbook);
  await page.getByText(/to look at in this workbook/).waitFor();
});
afterEach(() => {
  expect(complaints).toEqual([]);
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

test('the three figures most worth measuring are listed for a plan, at the cell where they belong', async () => {
  await page.evaluate(() => {
    const farm = [
      ['input', 'Sedge farm'],
      ['fish count', 350],
      ['fish mass', 250],
      ['feeding rate', 0.015],
      ['pump flow', 120],
      ['drums', 2],
      ['drum diameter', 570],
    ];
    const typed = farm.flatMap(([name = '', value = ''], row) => [
      [`A${row + 1}`, name],
      [`B${row + 1}`, value],
    ]);
    window.paneTest.open({ Farm: { ...Object.fromEntries(typed), D1: '=SILT.PLAN.COMPARE("metric",A1:B7)' } });
    window.paneTest.pane.show('checks');
  });
  const worth = page.locator('.findings li', { hasText: 'Worth measuring on your own farm' });
  await worth.nth(2).waitFor();
  expect(await worth.count()).toBe(3);
  const first = await worth.first().textContent();
  // The 350-fish farm: the share of feed that becomes solids is the least known of all.
  expect(first).toMatch(/Sedge farm.*solids share\. Alone it explains \d+ % of the uncertainty of solids/);
  await worth.first().getByRole('button', { name: 'Go to Farm!B1' }).click();
  await until(page, async () => (await window.paneTest.host.selection()).range.column === 1);
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
