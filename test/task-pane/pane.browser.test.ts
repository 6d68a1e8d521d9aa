import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { closePages, launchBrowser } from '../harness/browser';
import { axeFindings, rulesOfLooks } from './axe';
import { openPane } from './pane-harness';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => closePages(browser));

async function openFarm(options: BrowserContextOptions): Promise<{ page: Page; complaints: string[] }> {
  const { page, complaints } = await openPane(browser, options);
  await page.evaluate(() =>
    window.paneTest.open(
      {
        Farm: {
          B5: 22.5,
          C5: 4,
          D5: 9.25,
          E5: '=SILT.CONE.PATTERN(SiltUnits,B5,C5,D5)',
          F5: '=B5*2',
          G5: '=SILT.TANK.GIRTH(SiltUnits,PI()*22)',
        },
        'Silt units': { B4: 'US', B5: 'US' },
      },
      { SiltUnits: "'Silt units'!$B$4", SiltTypedIn: "'Silt units'!$B$5" },
    ),
  );
  await page.locator('.banner .profile', { hasText: 'US' }).waitFor();
  return { page, complaints };
}

/** The states that the pane is looked at in: each brings the page there. */
const states: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'the units': (page) => page.getByText('Exceptions by kind').click(),
  'the typed numbers': async (page) => {
    await page.getByRole('radio', { name: /^Metric/ }).check();
    await page.getByRole('button', { name: 'Change units' }).click();
    await page.getByRole('heading', { name: 'Typed numbers' }).waitFor();
  },
  'a caution and a message': async (page) => {
    await page.getByRole('button', { name: 'Change units only' }).click();
    await page.locator('.caution').waitFor();
  },
  'the functions': async (page) => {
    await page.getByRole('tab', { name: 'Functions' }).click();
    await page.getByText('Water and its tests').click();
  },
  'what was found': (page) => page.getByRole('searchbox').fill('how many drums'),
  'a form with a result': async (page) => {
    await page.getByRole('searchbox').fill('CONE.PATTERN');
    await page.locator('[data-function="CONE.PATTERN"]').click();
    await page.getByText('5 optional arguments').click();
    for (const [name, text] of [
      ['top', '22.5 in'],
      ['bottom', '4 in'],
      ['height', '9.25 in'],
    ] as const) {
      await page.getByRole('textbox', { name: new RegExp(`^${name}\\b`) }).fill(text);
    }
    await page.locator('.result-row').waitFor();
  },
  'a form with a fault': async (page) => {
    await page.getByRole('textbox', { name: /^bottom\b/ }).fill('24 in');
    await page.locator('.result-fault').waitFor();
  },
  'a question': async (page) => {
    await page.evaluate(() => window.paneTest.host.choose('Farm', 'B5'));
    await page.getByRole('button', { name: 'Insert at Farm!B5' }).click();
    await page.getByRole('alertdialog').waitFor();
  },
};

/** What the pane is looked at in, all rules in the first and those of looks in the others. */
const looks = [
  { theme: 'light', width: 320, forcedColors: 'none' },
  { theme: 'dark', width: 320, forcedColors: 'none' },
  { theme: 'light', width: 400, forcedColors: 'none' },
  { theme: 'light', width: 350, forcedColors: 'active' },
] as const;

test('in light, dark and forced colors, wide and narrow, axe finds nothing, and nothing sticks out', async () => {
  const { page, complaints } = await openFarm({});
  for (const [state, bring] of Object.entries(states)) {
    await bring(page);
    for (const [index, { theme, width, forcedColors }] of looks.entries()) {
      const where = `${state}, ${theme}, ${width}, forced colors ${forcedColors}`;
      await page.setViewportSize({ width, height: 700 });
      await page.emulateMedia({ forcedColors });
      await page.evaluate((dark) => window.paneTest.host.turn(dark), theme === 'dark');
      expect(await axeFindings(page, index === 0 ? undefined : rulesOfLooks), where).toEqual([]);
      const sticksOut = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sticksOut, where).toBeLessThanOrEqual(0);
    }
  }
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('the pane follows the theme of the host at once, even against the browser’s', async () => {
  const { page } = await openFarm({ colorScheme: 'light' });
  const background = () => page.locator('.pane').evaluate((pane) => getComputedStyle(pane).backgroundColor);
  const light = await background();
  await page.evaluate(() => window.paneTest.host.turn(true));
  expect(await background()).not.toBe(light);
  await page.evaluate(() => window.paneTest.host.turn(false));
  expect(await background()).toBe(light);
  await page.context().close();
});

test('tabs are one stop of the keyboard; arrows, Home and End move between them', async () => {
  const { page } = await openFarm({});
  const tabs = page.getByRole('tab');
  const labels = await tabs.allTextContents();
  expect(labels.slice(0, 2)).toEqual(['Units', 'Functions']);
  await tabs.first().focus();
  const shown = () => page.locator('[role=tabpanel]:not([hidden])').getAttribute('aria-labelledby');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => shown()).toBe('tab-functions');
  await page.keyboard.press('End');
  await expect.poll(() => shown()).toBe(`tab-${labels.at(-1)!.toLowerCase().replaceAll(' ', '-')}`);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => shown()).toBe('tab-units');
  await page.keyboard.press('Tab');
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('role'))).not.toBe('tab');
  await page.context().close();
});

test('Escape closes a question, and the focus returns to its place', async () => {
  const { page } = await openFarm({});
  await page.getByRole('tab', { name: 'Functions' }).click();
  await page.getByRole('searchbox').fill('TANK.GIRTH');
  await page.locator('[data-function="TANK.GIRTH"]').click();
  await page.evaluate(() => window.paneTest.host.choose('Farm', 'B5'));
  await page.getByRole('button', { name: 'Insert at Farm!B5' }).click();
  await page.getByRole('alertdialog').waitFor();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Insert it');
  await page.keyboard.press('Escape');
  await expect.poll(() => page.getByRole('alertdialog').count()).toBe(0);
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Insert at Farm!B5');
  await expect.poll(() => page.evaluate(() => window.paneTest.host.at('Farm', 'B5'))).toBe(22.5);
  await page.context().close();
});
