/** How the whole page looks: to axe, with the colors of cautions, and at 200 %. */
import { afterEach, beforeAll, expect, it } from 'vitest';
import { inWideLetters } from '../harness/browser';
import { axeFindings } from '../task-pane/axe';
import { chooseSample, type OpenPage, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();
let open: OpenPage;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  await chooseSample(open.page, 'US/water-book.xlsx');
});
afterEach(() => expect(open.faults).toEqual([]));

/** What is left, with the reason. */
const known: readonly RegExp[] = [
  // A tab has the color that its workbook gives it, and the grid alone chooses white or black letters for it.
  /^color-contrast: <span class="univer-truncate[^"]*">/,
];

it('is found without fault by axe as a whole, but for what the embedded grid alone decides', async () => {
  const { page } = open;
  await page.evaluate(() => {
    const { facade } = window.workbench.spreadsheet.current();
    const tests = facade.getSheetByName('Tests');
    if (tests !== null) facade.setActiveSheet(tests);
  });
  await page.locator('#charts-toggle').waitFor();
  // The grid names its controls some moments after it has drawn them.
  await expect
    .poll(async () => (await axeFindings(page)).filter((finding) => !known.some((one) => one.test(finding))))
    .toEqual([]);
  for (const name of ['Zoom in', 'Zoom out', 'Add a sheet', 'All sheets'])
    expect(await page.locator('#grid').getByRole('button', { name, exact: true }).count(), name).toBe(1);
});

it('colors the typed cell of a reading that kills, on the screen and not in the cell', async () => {
  const { page } = open;
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
});

it('a window of 1280 by 800 at 200 % shows the sheet or the pane, all of each, and never scrolls sideways', async () => {
  const { page } = open;
  // A browser at 200 % lays the page out as one of half the size.
  await page.setViewportSize({ width: 640, height: 400 });
  await inWideLetters(page);
  const [grid, pane] = [page.locator('#grid'), page.locator('#pane')];
  const isWhole = () =>
    page.evaluate(() => {
      const { scrollWidth, scrollHeight } = document.documentElement;
      return scrollWidth <= innerWidth && scrollHeight <= innerHeight;
    });
  expect(await isWhole()).toBe(true);
  expect(await pane.isVisible()).toBe(false);
  // Before the layout for low pages the grid had 160 pixels.
  expect((await grid.boundingBox())!.height).toBeGreaterThanOrEqual(230);
  // Every control of the bar is on the page.
  for (const control of await page.locator('#bar :is(button, select, label.button)').all()) {
    const box = (await control.boundingBox())!;
    expect(box.x, (await control.textContent()) ?? '').toBeGreaterThanOrEqual(0);
    expect(box.x + box.width, (await control.textContent()) ?? '').toBeLessThanOrEqual(640);
  }
  await page.getByRole('button', { name: 'Show the pane' }).click();
  await expect.poll(() => pane.boundingBox()).toMatchObject({ x: 0, width: 640 });
  await expect.poll(async () => (await pane.boundingBox())!.height).toBeGreaterThanOrEqual(250);
  for (const tab of await pane.getByRole('tab').all()) {
    await tab.click();
    await pane.getByRole('tabpanel').locator('h2, label').first().waitFor();
    const [inside, outside] = await pane.evaluate(({ scrollWidth, clientWidth }) => [scrollWidth, clientWidth]);
    expect(inside, (await tab.textContent()) ?? '').toBeLessThanOrEqual(outside!);
    expect(await isWhole()).toBe(true);
  }
  await page.getByRole('button', { name: 'Show the sheet' }).click();
  await expect.poll(() => pane.isVisible()).toBe(false);
});
