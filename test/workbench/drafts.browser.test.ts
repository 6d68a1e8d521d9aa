import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { closePages, inWideLetters, launchBrowser } from '../harness/browser';
import { until } from '../harness/until';
import { cells, serveWorkbench, shortenSearches } from './open-workbench';

let browser: Browser;
let context: BrowserContext;
/** One test leaves it to the next, as a page takes long to open. */
let page: Page;
/** Another that is open beside it. */
let beside: Page;
let server: Awaited<ReturnType<typeof serveWorkbench>>;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveWorkbench()]);
  context = await browser.newContext({ viewport: { width: 1280, height: 720 }, serviceWorkers: 'block' });
  await shortenSearches(context);
  page = await openPage();
});
afterAll(async () => {
  await closePages(browser);
  await server?.close();
});

async function openPage(): Promise<Page> {
  const opened = await context.newPage();
  opened.on('dialog', (dialog) => void dialog.accept());
  await opened.goto(`${server.address}workbench/`);
  await opened.waitForSelector('body[data-ready]');
  return opened;
}

const height = { sheet: 'Drums', row: 4, column: 6, rows: 1, columns: 1 };

/** Types a cone height for the first drum and waits until it is kept. */
async function typeHeight(into: Page, value: number): Promise<void> {
  const before = (await into.evaluate(() => document.body.dataset.kept)) ?? '0';
  await into.evaluate(
    (number) => window.workbench.host.write([{ sheet: 'Drums', row: 4, column: 6, cells: [[number]] }]),
    value,
  );
  await into.waitForFunction((kept) => Number(document.body.dataset.kept ?? 0) > Number(kept), before);
}

const title = (of: Page) => of.textContent('#title');

test('choosing another sample asks first, and staying keeps list, title and work', async () => {
  await typeHeight(page, 12);
  await page.locator('#samples').selectOption('US/water-book.xlsx');
  await page.getByRole('alertdialog', { name: /cone-cut-plan.xlsx has changes that are not saved/ }).waitFor();
  await page.getByRole('button', { name: 'Stay here' }).click();
  await expect.poll(() => page.inputValue('#samples')).toBe('US/cone-cut-plan.xlsx');
  await expect.poll(async () => (await cells(page, height)).values).toEqual([[12]]);

  await page.locator('#samples').selectOption('US/water-book.xlsx');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save, then open the other' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('cone-cut-plan.xlsx');
  await expect.poll(() => title(page)).toBe('water-book.xlsx');
  await page.reload();
  await page.waitForSelector('body[data-ready][data-drafts=known]');
  expect(await page.locator('#draft').isVisible()).toBe(false);
});

test('F6 goes from bar to sheet to pane and Shift+F6 back; a narrow page changes between sheet and pane', async () => {
  const where = () =>
    page.evaluate(() => {
      const { activeElement } = document;
      if (document.getElementById('bar')?.contains(activeElement)) return 'bar';
      return document.getElementById('pane')?.contains(activeElement) ? 'pane' : 'sheet';
    });
  await page.locator('#samples').focus();
  const stops: string[] = [];
  for (const key of ['F6', 'F6', 'F6', 'Shift+F6', 'Shift+F6']) {
    await page.keyboard.press(key);
    stops.push(await where());
  }
  expect(stops).toEqual(['sheet', 'pane', 'bar', 'pane', 'sheet']);
  // The keys reach the sheet again.
  await page.waitForFunction(() => document.getElementById('grid')?.contains(document.activeElement));
  const before = await page.evaluate(async () => (await window.workbench.host.selection()).range.row);
  await page.keyboard.press('ArrowDown');
  await until(page, async (row) => (await window.workbench.host.selection()).range.row === row + 1, before);

  // 1280 pixels at 200 %.
  await page.setViewportSize({ width: 640, height: 360 });
  await inWideLetters(page);
  await expect.poll(() => page.locator('#pane').isVisible()).toBe(false);
  await expect.poll(async () => (await page.locator('#grid').boundingBox())?.height).toBeGreaterThan(190);
  await page.getByRole('button', { name: 'Show the pane' }).click();
  await expect.poll(() => page.locator('#pane').isVisible()).toBe(true);
  await page.getByRole('button', { name: 'Show the sheet' }).click();
  await expect.poll(() => page.locator('#pane').isVisible()).toBe(false);
  await page.setViewportSize({ width: 1280, height: 720 });
});

test('F6 reaches the sheet even as the page opens, before the sheet is drawn', async () => {
  const early = await context.newPage();
  await early.addInitScript(() => {
    const press = () => document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'F6', bubbles: true }));
    document.addEventListener('DOMContentLoaded', () => {
      const watch = new MutationObserver(() => {
        if (document.body.dataset.ready === undefined) return;
        watch.disconnect();
        document.getElementById('samples')?.focus();
        press();
      });
      watch.observe(document.body, { attributes: true });
    });
  });
  await early.goto(`${server.address}workbench/`);
  await early.waitForFunction(() => document.getElementById('grid')?.contains(document.activeElement));
  const before = await early.evaluate(async () => (await window.workbench.host.selection()).range.row);
  await early.keyboard.press('ArrowDown');
  await until(early, async (row) => (await window.workbench.host.selection()).range.row === row + 1, before);
  await early.close();
});

test('looking at other sheets after saving makes no changes that are not saved', async () => {
  beside = await openPage();
  const one = beside;
  await typeHeight(one, 10.25);
  await Promise.all([one.waitForEvent('download'), one.click('#save')]);
  await expect.poll(() => title(one)).toBe('cone-cut-plan.xlsx');
  for (const sheet of ['Patterns', 'Drums']) {
    await one.evaluate(
      (name) => window.workbench.host.select({ sheet: name, range: { row: 5, column: 1, rows: 1, columns: 1 } }),
      sheet,
    );
    await one.locator('#cell-place', { hasText: 'B6' }).waitFor();
  }
  expect(await title(one)).toBe('cone-cut-plan.xlsx');
  await one.click('#undo');
  await expect.poll(() => title(one)).toBe('cone-cut-plan.xlsx, not saved');
  // Saved, it leaves no draft to the tests that follow.
  await Promise.all([one.waitForEvent('download'), one.click('#save')]);
  await expect.poll(() => title(one)).toBe('cone-cut-plan.xlsx');
});

test('a closed page and a reloaded page each leave their own work to be opened again', async () => {
  const [one, other] = [beside, page];
  expect(await title(one)).toBe('cone-cut-plan.xlsx');
  await typeHeight(one, 10.25);
  await typeHeight(other, 11.5);
  expect(await title(one)).toBe('cone-cut-plan.xlsx, not saved');
  expect(await one.title()).toContain('cone-cut-plan.xlsx, not saved');
  // Their work is not offered while they are open.
  const third = await context.newPage();
  await third.goto(`${server.address}workbench/`);
  await third.waitForSelector('body[data-ready][data-drafts=known]');
  expect(await third.locator('#draft').isVisible()).toBe(false);
  await third.close();
  await one.close();

  await other.reload();
  await other.waitForSelector('body[data-ready]');
  await other.getByText('Work on cone-cut-plan.xlsx that was not saved is kept here').waitFor();
  expect(await other.textContent('#draft')).toContain('and 1 more');
  await other.locator('#draft-open').click();
  await cells(other, height, ({ values }) => values[0]?.[0] === 11.5);
  expect(await title(other)).toBe('cone-cut-plan.xlsx, not saved');
  // The pane and the formulas go on from it: a height of 11.5 in on 18.5 in of width is steeper than 45 degrees.
  await cells(other, { sheet: 'Patterns', row: 4, column: 1, rows: 1, columns: 1 }, ({ values }) => {
    const [[angle] = []] = values;
    return typeof angle === 'number' && angle > 50;
  });
  await other.getByText('kept here').waitFor();
  await other.locator('#draft-delete').click();
  await other.locator('#draft').waitFor({ state: 'hidden' });
});

test('what was typed in the last moment before a page is left is kept', async () => {
  const typed = page.evaluate(() =>
    window.workbench.host.write([{ sheet: 'Drums', row: 4, column: 6, cells: [[14.25]] }]),
  );
  // The page waits 400 ms before it keeps a draft of its own accord.
  await Promise.all([typed, page.reload()]);
  await page.waitForSelector('body[data-ready]');
  await page.locator('#draft-open').click();
  await cells(page, height, ({ values }) => values[0]?.[0] === 14.25);
  // The page then keeps the draft as its own; what is typed in the next test is to be the next one kept.
  await page.waitForFunction(() => Number(document.body.dataset.kept) > 0);
});

test('a tab that was killed leaves its work to the next one', async () => {
  await typeHeight(page, 13.5);
  const crashed = page.waitForEvent('crash');
  await page.goto('chrome://crash').catch(() => undefined);
  await crashed;
  const next = await openPage();
  await next.getByText('Work on cone-cut-plan.xlsx that was not saved is kept here').waitFor();
  await next.locator('#draft-open').click();
  await cells(next, height, ({ values }) => values[0]?.[0] === 13.5);
  expect(await title(next)).toBe('cone-cut-plan.xlsx, not saved');
});
