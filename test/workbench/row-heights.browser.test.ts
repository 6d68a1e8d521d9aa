import { expect, test } from 'vitest';
import { openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

test('rows without a height show all their text, and those with one keep it', async () => {
  const { page, faults } = await openWorkbench(site.browser, site.address);
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
  await page.context().close();
});
