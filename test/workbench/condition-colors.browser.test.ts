import { expect, it } from 'vitest';
import { chooseSample, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

it('colors the typed cell of a reading that kills, on the screen and not in the cell', async () => {
  const { page, faults } = await openWorkbench(site.browser, site.address);
  await chooseSample(page, 'US/water-book.xlsx');
  const fillAt = (place: string) => page.evaluate((key) => window.workbench.conditions.now().get(key)?.bg?.rgb, place);
  await page.evaluate(() => {
    const { facade } = window.workbench.spreadsheet.current();
    facade.setActiveSheet(facade.getSheetByName('Tests') ?? facade.getActiveSheet());
    // Tests!D6: far from the readings that are looked at.
    window.scrollTo(0, 0);
  });
  await expect
    .poll(() => page.evaluate(() => window.workbench.spreadsheet.current().facade.getActiveSheet().getSheetName()))
    .toBe('Tests');
  // Row 6, columns C and D: pH 8.2 and 6.5 mg/L of ammonia N.
  expect(await fillAt('5,3')).toBeUndefined();
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Tests', row: 5, column: 2, cells: [[8.2, 6.5]] }]));
  await expect.poll(() => fillAt('5,3')).toBe('#FDE0E0');
  // The grid draws it: dots of the color stand on the canvas.
  const dots = () =>
    page.$$eval('#grid canvas', (canvases) => {
      let count = 0;
      for (const canvas of canvases) {
        if (!(canvas instanceof HTMLCanvasElement) || canvas.width * canvas.height === 0) continue;
        const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
        for (let at = 0; at < data.length; at += 4)
          if (data[at] === 0xfd && data[at + 1] === 0xe0 && data[at + 2] === 0xe0) count += 1;
      }
      return count;
    });
  await expect.poll(dots).toBeGreaterThan(500);
  // What is saved knows nothing of it.
  const own = await page.evaluate(() => {
    const tests = window.workbench.spreadsheet.save().sheets.find(({ name }) => name === 'Tests');
    return tests?.cells.find(({ row, column }) => row === 5 && column === 3)?.style?.fill;
  });
  expect(own).not.toBe('FDE0E0');
  await page.click('#undo');
  await expect.poll(() => fillAt('5,3')).toBeUndefined();
  expect(faults).toEqual([]);
  await page.context().close();
});
