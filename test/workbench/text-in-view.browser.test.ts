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

test('rows without a height show all their text, and those with one keep it', async () => {
  const { page, faults } = open;
  const words = 'Stop feeding, change water, and look for uneaten feed, dead fish or a filter that has stopped.';
  await page.evaluate((text) => {
    window.workbench.spreadsheet.open({
      sheets: [
        {
          name: 'Sheet 1',
          columnWidths: { 0: 20 },
          rowHeights: { 1: 15 },
          merges: ['A5:C5'],
          cells: [
            { row: 0, column: 0, value: text, style: { wrap: true } },
            { row: 1, column: 0, value: text, style: { wrap: true } },
            { row: 2, column: 0, value: text },
            { row: 3, column: 0, formula: '=IF(B4="","",A1)', value: '', style: { wrap: true } },
            { row: 4, column: 0, value: text, style: { wrap: true } },
          ],
        },
      ],
    });
  }, words);
  const heights = () =>
    page.evaluate(() => {
      const sheet = window.workbench.spreadsheet.current().facade.getActiveSheet();
      return [0, 1, 2, 3, 4].map((row) => sheet.getRowHeight(row));
    });
  // Lines of the letters in use are 16 to 20 pixels high; 20 characters a line give five lines or more, and the merged cell's fewer.
  await expect.poll(async () => (await heights())[0]).toBeGreaterThan(75);
  const [wrapped, set, plain, empty, merged] = await heights();
  expect([set, plain, empty]).toEqual([20, 24, 24]);
  expect(merged).toBeGreaterThan(30);
  expect(merged).toBeLessThan(wrapped!);
  // The text that a formula gives has room as well, as long as it is there.
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Sheet 1', row: 3, column: 1, cells: [['on']] }]));
  await expect.poll(async () => (await heights())[3]).toBe(wrapped);
  await page.click('#undo');
  await expect.poll(async () => (await heights())[3]).toBe(24);
  // The file leaves it to each program, whose letters differ.
  const saved = await page.evaluate(() => window.workbench.spreadsheet.save().sheets[0]!.rowHeights);
  expect(saved).toEqual({ 1: 15 });
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
