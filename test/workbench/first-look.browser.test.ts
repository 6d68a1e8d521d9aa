import { expect, test } from 'vitest';
import { cells, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

test('the first sheet is shown before any script of the page has run, with the numbers that the cells then have', async () => {
  const context = await site.browser.newContext({ javaScriptEnabled: false, viewport: { width: 1280, height: 800 } });
  const still = await context.newPage();
  await still.goto(`${site.address}workbench/`);
  const look = still.getByRole('table', { name: 'Drums' });
  expect(await look.isVisible()).toBe(true);
  const rows = await Promise.all(
    (await look.locator('tr').all()).map(async (line) => ({
      row: Number(await line.getAttribute('data-row')),
      texts: await line.locator('td, th').allTextContents(),
    })),
  );
  // On a phone, the columns at the right come into view by scrolling.
  await still.setViewportSize({ width: 390, height: 700 });
  const rightOfHeight = async () => {
    const box = await look.getByText('Height for 45°').boundingBox();
    return (box?.x ?? Number.POSITIVE_INFINITY) + (box?.width ?? 0);
  };
  expect(await rightOfHeight()).toBeGreaterThan(390);
  await still.mouse.move(200, 400);
  await still.mouse.wheel(2000, 0);
  await expect.poll(rightOfHeight).toBeLessThanOrEqual(390);
  await context.close();

  const { page, faults } = await openWorkbench(site.browser, site.address);
  expect(await page.locator('#first-look').isVisible()).toBe(false);
  // What the page has computed before the grid was there.
  const computed = page.locator('#first-look table[data-computed] tr');
  expect(await computed.locator('td, th').allTextContents()).toEqual(rows.flatMap(({ texts }) => texts));
  const range = { sheet: 'Drums', row: 0, column: 0, rows: 12, columns: 13 };
  const { values } = await cells(page, range);
  let compared = 0;
  for (const { row, texts } of rows) {
    for (const [column, text] of texts.entries()) {
      const value = values[row]?.[column] ?? '';
      const decimals = text.split('.')[1]?.length ?? 0;
      const expected = typeof value === 'number' && text !== '' ? value.toFixed(decimals) : String(value);
      expect(text, `${row} ${column}`).toBe(expected);
      if (typeof value === 'number') compared += 1;
    }
  }
  // The computed diameters and heights of three drums, and what was typed.
  expect(compared).toBeGreaterThan(20);
  expect(faults).toEqual([]);
  await page.context().close();
});

test('the cells of the first sheet are computed from what stands there before the spreadsheet has arrived', async () => {
  const context = await site.browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  let isAsked = false;
  // Never answered, as on a connection that is too slow.
  await page.route('**/workbench/workbench.js', () => {
    isAsked = true;
  });
  await page.route('**/workbench/', async (route) => {
    const response = await route.fetch();
    const sent = await response.text();
    // The second drum's diameter; what is shown as its height is still the old number.
    expect(sent).toContain('[5,2,21.75]');
    await route.fulfill({ response, body: sent.replace('[5,2,21.75]', '[5,2,30]') });
  });
  // The page is loaded only once the script has come, where it was asked for before all else had come.
  await page.goto(`${site.address}workbench/`, { waitUntil: 'commit' });
  await page.waitForSelector('#first-look table[data-computed]');
  const cell = (row: number, column: number) =>
    page.locator(`#first-look [data-row="${row}"] > [data-column="${column}"]`);
  expect(await cell(5, 10).textContent()).toBe('30.00');
  // At 45 degrees a cone is as high as half the difference of its widths: (30 - 4) / 2.
  expect(await cell(5, 11).textContent()).toBe('13.00');
  expect(await cell(4, 11).textContent()).toBe('9.25');
  await expect.poll(() => isAsked).toBe(true);
  await context.close();
});

test('without the functions the page says what is missing', async () => {
  const context = await site.browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.route('**/workbench/functions.js', (route) => route.abort());
  await page.goto(`${site.address}workbench/`);
  const notice = page.getByRole('alert');
  await notice.waitFor();
  expect(await notice.textContent()).toBe('The workbench cannot start: functions.js cannot be loaded');
  await context.close();
});
