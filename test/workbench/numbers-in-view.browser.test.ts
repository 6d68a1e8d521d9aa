import { beforeAll, expect, test } from 'vitest';
import { chooseSample, type OpenPage, openWorkbench, shown } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

declare global {
  interface Window {
    /** What has been drawn on the grid's canvases. */
    drawn: Set<string>;
  }
}

let open: OpenPage;
/** Records every text that is drawn. */
beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  await open.page.evaluate(() => {
    window.drawn = new Set();
    const { prototype } = CanvasRenderingContext2D;
    const { fillText } = prototype;
    prototype.fillText = function (text, ...place) {
      window.drawn.add(text);
      fillText.call(this, text, ...place);
    };
  });
});

test('a number wider than its column never shows a part of itself', async () => {
  const { page, faults } = open;
  await page.evaluate(() => {
    window.workbench.spreadsheet.open({
      sheets: [
        {
          name: 'Sheet 1',
          columnWidths: { 0: 5, 1: 5, 2: 5, 3: 5, 4: 5, 5: 12 },
          cells: [
            { row: 0, column: 0, value: 1234567 },
            { row: 0, column: 1, value: 5.12345678 },
            { row: 0, column: 2, value: 123456.5, style: { numberFormat: '#,##0.00' } },
            { row: 0, column: 3, value: 0.0000012345 },
            { row: 0, column: 4, value: 46083, style: { numberFormat: 'yyyy-mm-dd' } },
            { row: 0, column: 5, value: 1234567 },
            { row: 1, column: 0, value: 'a text of some words' },
          ],
        },
      ],
    });
  });
  await shown(page);
  const drawn = () => page.evaluate(() => [...window.drawn]);
  await expect.poll(drawn).toContain('1234567');
  const texts = await drawn();
  expect(texts.some((text) => /^#+$/.test(text))).toBe(true);
  expect(texts).toContain('a text of some words');
  expect(texts.find((text) => text.startsWith('5.1'))).toMatch(/^5\.12\d{0,2}$/);
  for (const wide of ['5.12345678', '123,456.50', '0.0000012345', '2026-03-02']) expect(texts).not.toContain(wide);
  // The cell itself holds the whole number, also for what is copied.
  const value = await page.evaluate(async () => {
    const range = { row: 0, column: 0, rows: 1, columns: 1 };
    return (await window.workbench.host.read({ sheet: 'Sheet 1', range })).values[0]![0];
  });
  expect(value).toBe(1234567);
  // A wider column shows it.
  await page.evaluate(() => {
    window.drawn.clear();
    window.workbench.spreadsheet.current().facade.getActiveSheet().setColumnWidth(4, 120);
  });
  await expect.poll(drawn).toContain('2026-03-02');
  expect(faults).toEqual([]);
});

test('every number of some samples has room in its column', async () => {
  const { page } = open;
  await page.setViewportSize({ width: 2600, height: 1600 });
  // text-fits holds the numbers of all of them to the widths of their columns; here some show that the grid agrees.
  const some = ['US/cone-cut-plan.xlsx', 'metric/materials-sheet.xlsx', 'US/stocking-scenarios.xlsx'];
  for (const sample of some) {
    await chooseSample(page, sample);
    await page.evaluate(() => window.workbench.spreadsheet.settled());
    for (const sheet of await page.evaluate(() => window.workbench.host.sheets())) {
      await page.evaluate((name) => {
        const { facade } = window.workbench.spreadsheet.current();
        window.drawn.clear();
        facade.setActiveSheet(facade.getSheetByName(name)!);
      }, sheet);
      await shown(page);
      await expect.poll(() => page.evaluate(() => window.drawn.size)).toBeGreaterThan(10);
      const marks = await page.evaluate(() => [...window.drawn].filter((text) => /^#+$/.test(text)));
      expect([sample, sheet, marks]).toEqual([sample, sheet, []]);
    }
  }
});
