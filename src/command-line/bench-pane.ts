import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import type { SheetHost } from '../hosts/sheet-host';
import { buildPage } from '../workbench/build-page';
import { serve } from '../workbench/server';
import { findBrowser } from './find-browser';
import { textTable } from './text-table';

/** What the workbench's page leaves for those who drive it. */
type WorkbenchWindow = Window & { readonly workbench: { readonly host: SheetHost } };

const openings = 9;
const inputCells = 2000;

/** The task pane: how soon it can be used, how fast it finds, how fast it converts. */
export async function paneTable(): Promise<string> {
  const server = await serve(await buildPage(), 4730);
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    chromiumSandbox: process.getuid?.() !== 0,
  });
  try {
    const usable: number[] = [];
    for (let opening = 0; opening < openings; opening++) usable.push(await firstUsable(browser, server.address));
    const keystrokes = await findingTimes(browser, server.address);
    const converting = await convertingTime(browser, server.address);
    return textTable(
      ['pane', 'ms', 'allowed'],
      [
        ['usable after its script arrived, median', middle(usable).toFixed(0), '300'],
        ['the finder answers a keystroke, median', middle(keystrokes).toFixed(1), '16'],
        ['the finder answers a keystroke, slowest', Math.max(...keystrokes).toFixed(1), '16'],
        [`looking through ${inputCells} input cells in the workbench`, converting.looking.toFixed(0), ''],
        [`looking and converting them`, (converting.looking + converting.converting).toFixed(0), '2000'],
      ],
    );
  } finally {
    await browser.close();
    await server.close();
  }
}

function middle(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}

/** Opens the pane's own page, with an empty cache and without Excel's library. */
async function openPane(browser: Browser, address: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 350, height: 800 } });
  const page = await context.newPage();
  await page.route(/^https:/, (route) => route.abort());
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (document.querySelector('[role=tab]') === null) return;
      observer.disconnect();
      Object.assign(window, { usable: performance.now() });
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto(`${address}site/task-pane.html`);
  await page.waitForFunction(() => 'usable' in window);
  return page;
}

async function firstUsable(browser: Browser, address: string): Promise<number> {
  const page = await openPane(browser, address);
  const time = await page.evaluate(() => {
    const [script] = performance.getEntriesByName(new URL('task-pane.js', document.baseURI).href);
    const { usable } = window as unknown as { usable: number };
    return usable - (script as PerformanceResourceTiming).responseEnd;
  });
  await page.context().close();
  return time;
}

/** Types questions letter by letter and measures until the list is laid out. */
async function findingTimes(browser: Browser, address: string): Promise<readonly number[]> {
  const page = await openPane(browser, address);
  await page.click('#tab-functions');
  await page.locator('.function-summary', { hasText: /./ }).first().waitFor({ state: 'attached' });
  const times = await page.evaluate(() => {
    const input = document.querySelector<HTMLInputElement>('input[type=search]')!;
    const measured: number[] = [];
    for (const question of ['how many drums', 'ammonia', 'when may i pick', 'pump stops', 'e', 'cone pattern']) {
      for (let letters = 1; letters <= question.length; letters++) {
        const started = performance.now();
        input.value = question.slice(0, letters);
        input.dispatchEvent(new Event('input', { bubbles: true }));
        document.body.getBoundingClientRect();
        measured.push(performance.now() - started);
      }
    }
    return measured;
  });
  await page.context().close();
  return times;
}

/** Converts a column of typed girths, one function beside each, from US units into metric ones. */
async function convertingTime(
  browser: Browser,
  address: string,
): Promise<{ readonly looking: number; readonly converting: number }> {
  const page = await (await browser.newContext({ viewport: { width: 1400, height: 800 } })).newPage();
  await page.goto(address);
  await page.waitForSelector('body[data-ready]');
  await page.evaluate(async (count) => {
    const { host } = (window as unknown as WorkbenchWindow).workbench;
    await host.addSheet('Bench');
    const rows = Array.from({ length: count }, (_, at) => [20 + at / 100, `=SILT.TANK.GIRTH(SiltUnits,A${at + 1})`]);
    await host.write([{ sheet: 'Bench', row: 0, column: 0, cells: rows }]);
  }, inputCells);
  await page.waitForFunction(async (count) => {
    const range = { row: count - 1, column: 1, rows: 1, columns: 1 };
    const { values } = await (window as unknown as WorkbenchWindow).workbench.host.read({ sheet: 'Bench', range });
    return typeof values[0]?.[0] === 'number' && values[0][0] > 0;
  }, inputCells);
  await page.click('#tab-units');
  await page.getByRole('radio', { name: /^Metric/ }).check();
  const started = Date.now();
  await page.getByRole('button', { name: 'Change units' }).click();
  const convert = page.getByRole('button', { name: /^Change units and convert/ });
  await convert.waitFor();
  const listed = Date.now();
  await convert.click();
  await page.locator('.message', { hasText: 'were converted' }).waitFor();
  const done = Date.now();
  const last = await page.evaluate(
    (count) =>
      window.workbench.host.read({ sheet: 'Bench', range: { row: count - 1, column: 0, rows: 1, columns: 1 } }),
    inputCells,
  );
  const expected = (20 + (inputCells - 1) / 100) * 25.4;
  if (Math.abs(Number(last.values[0]?.[0]) - expected) > 1e-9 * expected)
    throw new Error('the cells were not converted');
  return { looking: listed - started, converting: done - listed };
}
