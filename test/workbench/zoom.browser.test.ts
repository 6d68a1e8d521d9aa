import { expect, test } from 'vitest';
import { inWideLetters } from '../harness/browser';
import { openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();

test('a window of 1280 by 800 at 200 % shows the sheet or the pane, all of each, and never scrolls sideways', async () => {
  const { page, faults } = await openWorkbench(site.browser, site.address);
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
  expect(faults).toEqual([]);
  await page.context().close();
});
