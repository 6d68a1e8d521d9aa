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
  await context.close();

  const { page, faults } = await openWorkbench(site.browser, site.address);
  expect(await page.locator('#first-look').isVisible()).toBe(false);
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
