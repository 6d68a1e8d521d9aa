import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { RunningServer } from '../../src/command-line/serve-site';
import { launchBrowser } from '../harness/browser';
import { axeFindings } from '../task-pane/axe';
import { chooseSample, openWorkbench, serveWorkbench } from './open-workbench';

let browser: Browser;
let server: RunningServer;
beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveWorkbench()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** What is left, with the reason. */
const known: readonly RegExp[] = [
  // A tab has the color that its workbook gives it, and the grid alone chooses white or black letters for it.
  /^color-contrast: <span class="univer-truncate[^"]*">/,
];

it('is found without fault by axe as a whole, but for what the embedded grid alone decides', async () => {
  const { page, faults } = await openWorkbench(browser, server.address);
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
