import { expect, it } from 'vitest';
import { axeFindings } from '../task-pane/axe';
import { chooseSample, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

/** What is left, with the reason. */
const known: readonly RegExp[] = [
  // A tab has the color that its workbook gives it, and the grid alone chooses white or black letters for it.
  /^color-contrast: <span class="univer-truncate[^"]*">/,
];

it('is found without fault by axe as a whole, but for what the embedded grid alone decides', async () => {
  const { page, faults } = await openWorkbench(site.browser, site.address);
  await chooseSample(page, 'US/water-book.xlsx');
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
  expect(faults).toEqual([]);
  await page.context().close();
});
