import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeFindings } from '../task-pane/axe';
import { cells, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

const heading = (page: Page, words: string) => page.getByRole('heading', { name: words, exact: true }).waitFor();

/** Goes on by Tab until a control is in focus, as a person without a mouse does. */
async function tabTo(page: Page, name: string): Promise<void> {
  const found: string[] = [];
  for (let i = 0; i < 60; i++) {
    const at = await page.evaluate(() => {
      const { activeElement } = document;
      // A box of several controls may have the focus too, with the words of all of them.
      if (!activeElement?.matches('button, input, select, [role=tab]')) return '';
      const labels = activeElement instanceof HTMLInputElement ? [...(activeElement.labels ?? [])] : [];
      return (labels[0] ?? activeElement)?.textContent?.trim() ?? '';
    });
    if (at.includes(name)) return;
    found.push(at);
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not come to ${name}: ${found.join(', ')}`);
}

async function typeInto(page: Page, label: string, text: string): Promise<void> {
  await tabTo(page, label);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

async function pressNext(page: Page, step: string): Promise<void> {
  await tabTo(page, `Next: ${step.replace(/^\d\. /, '')}`);
  await page.keyboard.press('Enter');
  await heading(page, step);
}

/** What axe finds in the pane. */
async function paneFindings(page: Page): Promise<readonly string[]> {
  await page.locator('#grid').evaluate((grid) => grid.setAttribute('aria-hidden', 'true'));
  const found = await axeFindings(page);
  await page.locator('#grid').evaluate((grid) => grid.removeAttribute('aria-hidden'));
  // The grid has its own test, and is hidden from this one only.
  return found.filter((one) => !/univer|id="grid"/.test(one));
}

test('a first job goes from the tape to the leak test by the keyboard, stops at what cannot be, and is resumed', async () => {
  const { page, faults } = await openWorkbench(site.browser, site.address, { dark: true });
  page.on('dialog', (dialog) => void dialog.accept());
  await page.locator('#first-job').focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Start', exact: true }).waitFor();
  // The button itself leads into the pane, past the grid.
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('tab-first-job');
  await tabTo(page, 'Start');
  await page.keyboard.press('Enter');
  await heading(page, '1. Measure');
  await typeInto(page, 'A name for the drum', 'Alder');
  await typeInto(page, 'What it held', 'cooking oil');
  await typeInto(page, 'Inside diameter', '22 1/2');
  await typeInto(page, 'Drain bore', '24');
  await typeInto(page, 'Water above', '18 1/2 in');
  await page.keyboard.press('Enter');

  // A drain of 24 in in a drum of 22 1/2 in.
  await heading(page, '2. Check');
  await page.getByText('It stops here. Drain bore: 24 in.').waitFor();
  expect(await paneFindings(page)).toEqual([]);
  // Tab leads from the last control before the grid into the grid; it is no trap.
  await page.locator('#caution-line button').last().focus();
  await page.keyboard.press('Tab');
  await expect.poll(() => page.evaluate(() => document.activeElement?.closest('#grid') !== null)).toBe(true);
  await page.getByRole('tab', { name: 'First job' }).focus();
  await pressStopped(page);
  await tabTo(page, 'Change drain bore');
  await page.keyboard.press('Enter');
  await heading(page, '1. Measure');
  await expect.poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('24');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('22,5');
  await page.keyboard.press('Enter');
  await page.getByText('could be 22.5 or 225').waitFor();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('4');
  await page.keyboard.press('Enter');
  await heading(page, '2. Check');
  await pressNext(page, '3. Pattern');

  // The figure that the guide shows is the cell's: (22.5 - 4) / 2 at 45 degrees, less the gap at the rim.
  const [[slant] = []] = (await cells(page, { sheet: 'Patterns', row: 4, column: 2, rows: 1, columns: 1 })).values;
  const shown = page.locator('.job-table tr', { hasText: 'slant' }).locator('td');
  await expect.poll(() => shown.textContent()).toBe(`${Number((slant as number).toFixed(2))} in`);
  expect(slant).toBeCloseTo(Math.hypot(9.25, 9.25), 0);

  // Left and opened again in the middle.
  await cells(
    page,
    { sheet: 'Drums', row: 21, column: 3, rows: 1, columns: 1 },
    ({ values }) => values[0]?.[0] === 'pattern',
  );
  const kept = (await page.evaluate(() => document.body.dataset.kept)) ?? '0';
  await page.evaluate(() =>
    window.workbench.host.write([{ sheet: 'Drums', row: 22, column: 0, cells: [['kept before the reload']] }]),
  );
  await page.waitForFunction((before) => Number(document.body.dataset.kept ?? 0) > Number(before), kept);
  await page.reload();
  await page.waitForSelector('body[data-ready]');
  await page.locator('#draft-open').click();
  await page.getByRole('tab', { name: 'First job', selected: true }).focus();
  await heading(page, '3. Pattern');
  await pressNext(page, '4. Cut');
  await pressNext(page, '5. Buy');
  const total = page.locator('.job-table tr', { hasText: 'total, at the prices' }).locator('td');
  // Without the height of the drum there is no list, and no total of 0.
  await total.filter({ hasText: 'no figure yet' }).waitFor();
  // What was refused is no longer told of once the field is empty again.
  await typeInto(page, 'Height of the drum', 'tall');
  await page.keyboard.press('Enter');
  await page.getByText('Height of the drum: tall is not allowed').waitFor();
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.press('Shift+Tab');
  await page.getByText('Height of the drum: tall is not allowed').waitFor({ state: 'detached' });
  await typeInto(page, 'Height of the drum', '33');
  // Enter shows what the figure gives; the next one goes on.
  await page.keyboard.press('Enter');
  await total.filter({ hasText: /^\d+\.\d\d$/ }).waitFor();
  await heading(page, '5. Buy');
  await page.keyboard.press('Enter');
  await heading(page, '6. Pour and cure');
  await typeInto(page, 'Day of the first leak test', '2027-03-20');
  await pressNext(page, '7. Leak test');
  await page.getByRole('row', { name: 'first fill 2027-04-11' }).waitFor();
  expect(await paneFindings(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  await page.locator('#first-job').click();
  const widths = await page.locator('#pane').evaluate((pane) => [pane.scrollWidth, pane.clientWidth]);
  expect(widths[0]).toBe(widths[1]);
  expect(faults).toEqual([]);
  await page.context().close();
});

/** Next leads to what stops the job, not on. */
async function pressStopped(page: Page): Promise<void> {
  await tabTo(page, 'Next: Pattern');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.classList.contains('stops'));
}
