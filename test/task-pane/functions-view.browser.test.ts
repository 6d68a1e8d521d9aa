import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { CellResult } from '../../src/hosts/workbook-model';
import { closePages, launchBrowser } from '../harness/browser';
import { type OpenedPane, openPane } from './pane-harness';

type Cells = Readonly<Record<string, CellResult>>;

let browser: Browser;
let opened: OpenedPane;
let page: Page;

beforeAll(async () => {
  browser = await launchBrowser();
  opened = await openPane(browser);
  page = opened.page;
});

afterAll(() => closePages(browser));
afterEach(() => expect(opened.complaints).toEqual([]));

const open = async (cells: Cells, units: string | null = 'US') => {
  await page.evaluate(
    ([given, text]) =>
      text === null
        ? window.paneTest.open({ Farm: given })
        : window.paneTest.open(
            { Farm: given, 'Silt units': { B4: text, B5: text } },
            { SiltUnits: "'Silt units'!$B$4", SiltTypedIn: "'Silt units'!$B$5" },
          ),
    [cells, units] as const,
  );
  await page.locator('.banner .profile', { hasText: units ?? 'no units' }).waitFor();
  await page.getByRole('tab', { name: 'Functions' }).click();
  await page.getByRole('searchbox').waitFor();
};
const form = async (name: string) => {
  await page.getByRole('searchbox').fill(name);
  await page.locator(`[data-function="${name}"]`).click();
};
const at = (...addresses: string[]) =>
  page.evaluate((all) => all.map((address) => window.paneTest.host.at('Farm', address)), addresses);
const choose = (address: string) => page.evaluate((cells) => window.paneTest.host.choose('Farm', cells), address);
const field = (name: string) => page.getByRole('textbox', { name: new RegExp(`^${name}\\b`) });
const result = () => page.locator('.result');
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
const messageShown = (text: string | RegExp) => page.locator('.message', { hasText: text }).waitFor();

test('a question in words finds the function and its description', async () => {
  await open({});
  await page.getByRole('searchbox').fill('how many drums');
  const first = page.locator('.function-item').first();
  await expect
    .poll(() => first.locator('span').allTextContents())
    .toEqual(['SETTLE.DRUMS', 'Whole number of drums needed side by side for an overflow rate.']);
});

test('the result appears while the form is filled in, in the units of the workbook, and says what is wrong', async () => {
  await open({});
  await form('CONE.ANGLE');
  await result().getByText('Fill in top, bottom and height').waitFor();
  await field('top').fill('22 1/2');
  await field('bottom').fill('4');
  await field('height').fill('9.25');
  await result().getByText('45 degrees', { exact: true }).waitFor();
  await field('bottom').fill('24');
  await result().getByText('bottom: 24 in is not allowed').waitFor();
});

test('a wrong entry is tied to the message about it, and both go with it', async () => {
  await open({});
  await form('CONE.ANGLE');
  await field('top').fill('22.5');
  await field('height').fill('9.25');
  const wrong: readonly (readonly [entry: string, message: RegExp])[] = [
    ['1e400', /^#VALUE! bottom: 1e400 in is not allowed; give a dimension/],
    ['5 kg', /^#VALUE! bottom: 5 kg is a mass; give a dimension/],
    ['22,5', /^#VALUE! bottom: 22,5 could be 22\.5 or 225/],
    ['1/0', /^#VALUE! bottom: 1\/0 is not allowed/],
    ['<img src=x>', /^#VALUE! bottom: <img src=x> is not allowed/],
    ['=1+1', /^bottom: =1\+1 is not a range of cells/],
    ['=A1:XFD1048576', /^bottom: =A1:XFD1048576 has too many cells/],
  ];
  for (const [entry, message] of wrong) {
    await field('bottom').fill(entry);
    await expect.poll(() => result().textContent()).toMatch(message);
    const tied = () =>
      field('bottom').evaluate((input) => {
        const ids = input.getAttribute('aria-describedby')?.split(' ') ?? [];
        const told = ids.map((id) => document.getElementById(id)?.textContent ?? '');
        return [input.getAttribute('aria-invalid'), told.at(-1)];
      });
    await expect.poll(tied).toEqual(['true', expect.stringMatching(message)]);
    expect(await field('top').getAttribute('aria-invalid')).toBeNull();
  }
  await press('Insert at Farm!A1');
  await messageShown('bottom: =A1:XFD1048576 has too many cells');
  await field('bottom').fill('4');
  await result().getByText('45 degrees', { exact: true }).waitFor();
  expect(await field('bottom').getAttribute('aria-invalid')).toBeNull();
});

test('what was typed into a form is there again after another one was looked at', async () => {
  await open({});
  await form('CONE.ANGLE');
  await field('top').fill('22.5');
  await field('bottom').fill('wide');
  await press('‹ All functions');
  await form('TANK.GIRTH');
  await field('girth').fill('70');
  await press('‹ All functions');
  await form('CONE.ANGLE');
  expect([await field('top').inputValue(), await field('bottom').inputValue()]).toEqual(['22.5', 'wide']);
  await field('bottom').fill('4');
  await field('height').fill('9.25');
  await result().getByText('45 degrees', { exact: true }).waitFor();
});

test('in a workbook without units, the form asks for them', async () => {
  await open({}, null);
  await form('WATER.DENSITY');
  await field('temperature').fill('68');
  await result().getByText('68 °C is not allowed').waitFor();
  await page.getByLabel('units', { exact: true }).selectOption('US');
  await result().getByText('62.3').waitFor();
  await press('Insert at Farm!A1');
  await messageShown('Inserted');
  expect(await at('A1')).toEqual(['=SILT.WATER.DENSITY("US",68)']);
});

test('cells come from the selection, are read live, and are in the formula that is inserted', async () => {
  await open({ B5: 22.5, B6: 21.75, C5: 4, D5: 9.25 });
  await form('CONE.PATTERN');
  await choose('B5:B6');
  await press('Use the selected cells for top');
  expect(await field('top').inputValue()).toBe('=Farm!B5:B6');
  await choose('C5');
  await press('Use the selected cells for bottom');
  await field('height').fill('=D5');
  await result().getByRole('cell', { name: '45', exact: true }).waitFor();
  await page.evaluate(() => window.paneTest.host.change('Farm', 'B5', 20));
  await expect.poll(() => result().getByRole('cell', { name: '45', exact: true }).count()).toBe(0);
  await choose('F5');
  await page.getByLabel('heading row on top').check();
  await press('Insert at Farm!F5');
  await messageShown('Inserted in Farm!F5:O7');
  await expect.poll(() => at('F5')).toEqual(['=SILT.CONE.PATTERN(SiltUnits,B5:B6,C5,D5,,,,,,TRUE)']);
});

test('asks before it overwrites cells, and a formula never reads its own cell', async () => {
  await open({ A1: 'note', G8: 1, B5: 22.5 });
  await form('CONE.PATTERN');
  await field('top').fill('=B5');
  await field('bottom').fill('4');
  await field('height').fill('9.25');
  await result().getByText('slant').waitFor();
  await press('Insert at Farm!A1');
  await page
    .getByRole('alertdialog', { name: /A1 is not empty: overwrite it/ })
    .getByRole('button', { name: 'Leave the cells' })
    .click();
  expect(await at('A1')).toEqual(['note']);
  await choose('A8');
  await press('Insert at Farm!A8');
  await page
    .getByRole('alertdialog', { name: /The result needs A8:J8, and some of these cells are not empty/ })
    .getByRole('button', { name: 'Insert it' })
    .click();
  await messageShown('Inserted');
  expect(await at('A8', 'G8')).toEqual(['=SILT.CONE.PATTERN(SiltUnits,B5,4,9.25)', 1]);
  await choose('B5');
  await press('Insert at Farm!B5');
  await messageShown('B5 is one of the cells that the formula reads');
  expect(await at('B5')).toEqual([22.5]);
});

test('accepts words, tables and choices, and puts text into the formula in quotes', async () => {
  await open({ A1: 46143, B1: 5, C1: 0.02, A2: 46150, B2: 6, C2: 0.03 });
  await form('HARVEST.LOG');
  await field('log').fill('=A1:C2');
  await result().getByRole('cell', { name: 'total' }).waitFor();
  await press('‹ All functions');
  await form('WATER.CHECK');
  await page.getByRole('combobox', { name: /^species/ }).selectOption('tilapia');
  await field('temperature').fill('80 °F');
  await field('ph').fill('7');
  await field('nitrate').fill('40 mg/L as NO3');
  await result().getByText('not measured').first().waitFor();
  await choose('E1');
  await press('Insert at Farm!E1');
  await messageShown('Inserted');
  expect(await at('E1')).toEqual(['=SILT.WATER.CHECK(SiltUnits,"tilapia","80 °F",7,,,"40 mg/L as NO3")']);
});

test('formulas that show #NAME? are entered again, and no other', async () => {
  await open({ A1: '=_xldudf_SILT_TANK_GIRTH(SiltUnits,70)', A2: '=SILT.TANK.GIRTH(SiltUnits,71)', A3: '=NOSUCH(1)' });
  await page.evaluate(() => {
    for (const cell of ['A1', 'A3'])
      window.paneTest.host.give('Farm', cell, { error: { code: '#NAME?', message: '' } });
  });
  await page.getByText('Cells show #NAME?').click();
  await press('Re-enter SILT formulas');
  await messageShown('1 cell formula was entered again');
  await expect
    .poll(() => at('A1', 'A2', 'A3'))
    .toEqual(['=SILT.TANK.GIRTH(SiltUnits,70)', '=SILT.TANK.GIRTH(SiltUnits,71)', '=NOSUCH(1)']);
  expect(await page.evaluate(() => window.paneTest.host.steps.length)).toBe(1);
});

test('the reference page opens beside the spreadsheet', async () => {
  await open({});
  await form('TANK.GIRTH');
  await page.getByRole('link', { name: 'Formula, range and sources' }).click();
  await expect
    .poll(() => page.evaluate(() => window.paneTest.host.pages))
    .toEqual(['https://pane.test/reference/tank.girth.html']);
});

test('every function has a form that opens', async () => {
  await open({});
  const names = await page.evaluate(() => window.paneTest.functionNames);
  expect(names.length).toBeGreaterThan(90);
  // In the page, as it takes a minute to find and click each by itself from outside.
  const without = await page.evaluate(async (all) => {
    const button = (selector: string) => document.querySelector<HTMLElement>(selector);
    const isThere = async (test: () => unknown): Promise<void> => {
      while (!test()) await new Promise(requestAnimationFrame);
    };
    const none: string[] = [];
    for (const name of all) {
      await isThere(() => button(`[data-function="${name}"]`));
      button(`[data-function="${name}"]`)?.click();
      await isThere(() => button('.back'));
      const heading = [...document.querySelectorAll('h2, h3')].find((one) => one.textContent === `SILT.${name}`);
      if (heading === undefined) none.push(name);
      button('.back')?.click();
    }
    return none;
  }, names);
  expect(without).toEqual([]);
});

test('without a spreadsheet the page finds functions and computes', async () => {
  await page.evaluate(() => window.paneTest.openAlone());
  await page.getByText('This page has no spreadsheet beside it').waitFor();
  await page.getByRole('tab', { name: 'Units' }).click();
  await page.getByRole('radio', { name: /^US/ }).check();
  await page.getByText('As text: US').waitFor();
  await page.getByRole('tab', { name: 'Functions' }).click();
  await form('WATER.DENSITY');
  await page.getByLabel('units', { exact: true }).selectOption('metric');
  await field('temperature').fill('20');
  await result().getByText('998.2').waitFor();
  expect(await page.getByRole('button', { name: /Insert|Take/ }).count()).toBe(0);
});

test('a function is found, filled in and inserted by keyboard alone', async () => {
  await open({});
  await page.getByRole('tab', { name: 'Functions' }).focus();
  await page.keyboard.press('Tab');
  await page.keyboard.type('girth');
  await page.keyboard.press('Tab');
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-function')))
    .toBe('TANK.GIRTH');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('SILT.TANK.GIRTH');
  await page.keyboard.press('Tab');
  await page.keyboard.type('70');
  await result().getByText('22.2817 in').or(result().getByText('22.28169203 in')).waitFor();
  for (let stops = 0; stops < 4; stops++) {
    if (/^Insert at/.test((await page.evaluate(() => document.activeElement?.textContent)) ?? '')) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  await messageShown('Inserted');
  await expect.poll(() => at('A1')).toEqual(['=SILT.TANK.GIRTH(SiltUnits,70)']);
});
