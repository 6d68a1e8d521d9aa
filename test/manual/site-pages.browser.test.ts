import { readdirSync, readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type RunningServer, serveSite } from '../../src/command-line/serve-site';
import { closePages, inWideLetters, launchBrowser } from '../harness/browser';
import { axeFindings, rulesOfLooks } from '../task-pane/axe';

let browser: Browser;
let server: RunningServer;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveSite({ folder: 'dist', port: 4730, morePorts: 20 })]);
});
afterAll(async () => {
  await closePages(browser);
  await server?.close();
});

const pages = [
  '',
  'guide/',
  'guide/pattern.html',
  'guide/cut.html',
  'guide/teach.html',
  'reference/',
  'reference/cone.pattern.html',
  'daily/',
];

describe('320 pixels wide, in light and in dark', () => {
  let page: Page;
  beforeAll(async () => {
    const context = await browser.newContext({ viewport: { width: 320, height: 700 }, serviceWorkers: 'block' });
    page = await context.newPage();
  });
  afterAll(() => page.context().close());

  test.each(pages)('/%s has nothing that axe finds, and no sideways scrolling', async (path) => {
    await page.emulateMedia({ colorScheme: 'light' });
    await page.goto(server.address + path);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const found = await axeFindings(page, colorScheme === 'light' ? undefined : rulesOfLooks);
      expect(found, colorScheme).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    }
  });
});

/** Width of A4 between margins of 15 mm, in CSS pixels. */
const paperWidth = 680;

/** Puts a page of the site in place of the one that is shown, which takes a fraction of the time of opening it. */
async function putPage(page: Page, path: string): Promise<void> {
  await page.evaluate(
    async ([address, text]) => {
      history.replaceState(null, '', address);
      document.open();
      const loaded = new Promise((resolve) => addEventListener('load', resolve, { once: true }));
      document.write(text!);
      document.close();
      await loaded;
    },
    [server.address + path, readFileSync(`dist/${path}`, 'utf8')] as const,
  );
}

test('no page of the site is wider than 320 pixels, as a page of 1280 is at 400 %, or than paper when printed', async () => {
  const context = await browser.newContext({ viewport: { width: 320, height: 700 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(server.address);
  const paths = readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.html') && !/^(task-pane|drawing|workbench)/.test(path));
  expect(paths.length).toBeGreaterThan(100);
  for (const path of paths) {
    await putPage(page, path);
    await inWideLetters(page);
    const [sheets, width, heading] = await page.evaluate(() => [
      document.styleSheets.length,
      document.documentElement.scrollWidth,
      document.querySelector('h1')?.getBoundingClientRect().right ?? 0,
    ]);
    expect(sheets, path).toBeGreaterThan(0);
    expect(width, path).toBeLessThanOrEqual(320);
    expect(heading, path).toBeGreaterThan(0);
  }
  await page.setViewportSize({ width: paperWidth, height: 700 });
  await page.emulateMedia({ media: 'print' });
  for (const path of paths) {
    await putPage(page, path);
    await inWideLetters(page);
    const cutOff = await page.evaluate(() =>
      [document.documentElement, ...document.querySelectorAll('.wide')]
        .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
        .map((element) => element.outerHTML.slice(0, 200)),
    );
    expect(cutOff, path).toEqual([]);
  }
  await context.close();
});

test('the list of functions shows those that have every typed word', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(`${server.address}reference/`);
  await page.fill('#find', 'un-ionized ammonia');
  await page.getByRole('link', { name: 'SILT.WATER.AMMONIA' }).waitFor();
  expect(await page.getByRole('link', { name: 'SILT.CONE.PATTERN' }).isVisible()).toBe(false);
  await context.close();
});

test('the daily page keeps entries over a restart, and says what is wrong at once', async () => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(`${server.address}daily/`);
  await page.selectOption('#species', 'rainbow trout');
  for (const [reading, value] of [
    ['temperature', '25'],
    ['ph', '8.2'],
    ['ammonia', '6.5'],
  ] as const)
    await page.fill(`#${reading}`, value);
  await page.getByRole('button', { name: 'Check and save the test' }).click();
  await page.getByText('ammonia too high. Stop feeding').first().waitFor();
  const again = await context.newPage();
  await page.close();
  await again.goto(`${server.address}daily/`);
  expect(await again.textContent('#entries')).toContain('Ammonia (as N) 6.5');
  expect(await again.inputValue('#species')).toBe('rainbow trout');
  await context.close();
});

/** Two windows of the daily page on one phone. */
async function twoDailyPages() {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const [page, other] = [await context.newPage(), await context.newPage()];
  for (const one of [page, other]) await one.goto(`${server.address}daily/`);
  const pull = async (one: typeof page, volume: string): Promise<void> => {
    await one.fill('#volume', volume);
    await one.getByRole('button', { name: 'Save the pull' }).click();
    await one.getByText('Saved on this device.').waitFor();
  };
  return { context, page, other, pull };
}

test('the daily page open twice loses no entry of either window, and an entry deleted by mistake is put back', async () => {
  const { context, page, other, pull } = await twoDailyPages();
  await pull(page, '11');
  await pull(other, '12');
  await pull(page, '13');
  await page.reload();
  for (const volume of ['11 L', '12 L', '13 L']) expect(await page.textContent('#entries')).toContain(volume);
  const last = other.locator('#entries li', { hasText: '13 L' });
  await last.waitFor();
  await last.getByRole('button').click();
  await last.waitFor({ state: 'detached' });
  await other.getByRole('button', { name: 'Put it back' }).click();
  await last.waitFor();
  await page.locator('#entries li', { hasText: '13 L' }).waitFor();
  await context.close();
});

test('the daily page copies each entry once, unless all are asked for, because a book counts what is pasted twice', async () => {
  const { context, page, pull } = await twoDailyPages();
  const copy = page.getByRole('button', { name: 'Copy pulls for the harvest book' });
  const copied = async () =>
    (await page.evaluate(() => navigator.clipboard.readText())).split('\n').map((row) => row.split('\t')[1]);
  await copy.click();
  await page.getByText('There are no pulls to copy yet.').waitFor();
  await pull(page, '11');
  await pull(page, '12');
  await copy.click();
  await page.getByText('Copied 2 pulls. Select the first free row').waitFor();
  expect(await copied()).toEqual(['11 L', '12 L']);
  await copy.click();
  await page.getByText('All pulls were copied before').waitFor();
  await pull(page, '13');
  await copy.click();
  await page.getByText('Copied 1 pull. The 2 copied before are left out.').waitFor();
  expect(await copied()).toEqual(['13 L']);
  await page.getByRole('button', { name: 'Copy all 3 pulls' }).click();
  await page.getByText('Copied 3 pulls. Select').waitFor();
  expect(await copied()).toEqual(['11 L', '12 L', '13 L']);
  await context.close();
});

test('the daily page left open overnight is at the new day, but keeps a day that was chosen', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.clock.setFixedTime(new Date(2026, 4, 1, 18));
  await page.goto(`${server.address}daily/`);
  await page.fill('#ph', '7.2');
  await page.getByRole('button', { name: 'Check and save the test' }).click();
  await page.getByText('Saved on this device.').waitFor();
  await page.fill('#test-date', '2026-04-28');
  await page.clock.setFixedTime(new Date(2026, 4, 2, 7));
  await page.fill('#volume', '15');
  await page.fill('#solids', '2 %');
  await page.getByRole('button', { name: 'Save the pull' }).click();
  await page.locator('#entries li', { hasText: '2026-05-02: pulled 15 L, solids 2 %' }).waitFor();
  // What was measured the day before is not saved again as of today.
  expect(await page.inputValue('#ph')).toBe('');
  expect(await page.inputValue('#test-date')).toBe('2026-04-28');
  expect([await page.inputValue('#volume'), await page.inputValue('#solids')]).toEqual(['', '']);
  await context.close();
});

test('the daily page takes the intervals of a pasted plan, keeps them, and puts them into the calendar file', async () => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(`${server.address}daily/`);
  await page.getByText('How often, and from your plan').click();
  await page.fill(
    '#plan-rows',
    'result\tunit\tSmall\tLarge\npad change interval\tdays\t12.7\t3.2\nbed cleaning interval\tdays\tnot given\t210',
  );
  await page.getByText('The intervals of Small are used.').waitFor();
  await page.locator('#plans').selectOption('Large');
  await page.getByText('The intervals of Large are used.').waitFor();
  await page.fill('#every-test', '0');
  await page.locator('#every-test').blur();
  await page.getByText('0 is not an interval; give 1 to 730 whole days.').waitFor();
  await page.reload();
  await page.getByText('How often, and from your plan').click();
  expect([await page.inputValue('#every-pads'), await page.inputValue('#every-beds')]).toEqual(['3', '210']);
  await expect.poll(() => page.inputValue('#every-test')).toBe('7');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a calendar file' }).click(),
  ]);
  expect(readFileSync(await download.path(), 'utf8')).toMatch(/INTERVAL=3\r\nSUMMARY:Change the pads/);
  await context.close();
});

test('the daily page says so if the browser keeps nothing, and still gives the file', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block', acceptDownloads: true });
  await context.addInitScript(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const page = await context.newPage();
  await page.goto(`${server.address}daily/`);
  await page.fill('#volume', '15');
  await page.getByRole('button', { name: 'Save the pull' }).click();
  await page.getByText('This browser saves nothing ').waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all to a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('siltstead-daily.json');
  await context.close();
});
