import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { CellResult } from '../../src/hosts/workbook-model';
import { closePages, launchBrowser } from '../harness/browser';
import { holdWork, type OpenedPane, openPane } from './pane-harness';

type Cells = Readonly<Record<string, CellResult>>;

const farm: Cells = { B5: 22.5, C5: 4, D5: '9 1/4 in', E5: '=SILT.CONE.PATTERN(SiltUnits,B5,C5,D5)' };
const unitsNames = { SiltUnits: "'Silt units'!$B$4", SiltTypedIn: "'Silt units'!$B$5" };

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

const open = async (
  cells: Cells,
  units: Cells | null = { B4: 'US', B5: 'US' },
  names: Readonly<Record<string, string>> = unitsNames,
) => {
  await page.evaluate(([sheets, given]) => window.paneTest.open(sheets as never, given as never), [
    units === null ? { Farm: cells } : { Farm: cells, 'Silt units': units },
    names,
  ] as const);
  await page
    .locator('.banner .profile', {
      hasText: units === null || !('SiltUnits' in names) ? 'no units' : /US|metric/,
    })
    .waitFor();
};
const at = (sheet: string, ...addresses: string[]) =>
  page.evaluate(([name, all]) => all.map((address) => window.paneTest.host.at(name, address)), [
    sheet,
    addresses,
  ] as const);
const steps = () => page.evaluate(() => window.paneTest.host.steps.length);
const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
const messageShown = (text: string | RegExp) => page.locator('.message', { hasText: text }).waitFor();

test('a workbook without units gets them in a visible cell', async () => {
  await open({}, null, {});
  await page.getByRole('radio', { name: /^US/ }).check();
  await press('Add units to this workbook');
  await messageShown('The sheet Silt units was added');
  await expect.poll(() => at('Silt units', 'B4', 'B5', 'A7')).toEqual(['US', 'US', '=SILT.UNIT.LIST(SiltUnits,TRUE)']);
  const names = await page.evaluate(() => window.paneTest.host.names());
  expect(Object.fromEntries(names.map(({ name, refersTo }) => [name, refersTo]))).toEqual(unitsNames);
});

test('a change of units lists the typed numbers, converts them in one step, and is undone in one', async () => {
  await open(farm);
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  const rows = page.locator('.conversions tbody tr');
  await expect
    .poll(() => rows.allInnerTexts())
    .toEqual([
      expect.stringMatching(/B5\s+Farm\s+22\.5 in\s+571\.5 mm/),
      expect.stringMatching(/C5\s+Farm\s+4 in\s+101\.6 mm/),
    ]);
  await press('Change units and convert 2');
  await messageShown('2 cells were converted');
  expect(await at('Farm', 'B5', 'C5', 'D5')).toEqual([571.5, 101.6, '9 1/4 in']);
  expect(await at('Silt units', 'B4', 'B5')).toEqual(['metric', 'metric']);
  expect(await steps()).toBe(1);
  await page.locator('.message').getByRole('button', { name: 'Undo' }).click();
  await messageShown('as they were before');
  await expect.poll(() => at('Farm', 'B5', 'C5')).toEqual([22.5, 4]);
  await expect.poll(() => at('Silt units', 'B4', 'B5')).toEqual(['US', 'US']);
  expect(await steps()).toBe(2);
});

test('only ticked numbers are converted; a cell with two uses is not ticked', async () => {
  await open({ ...farm, F5: '=B5*25.4' });
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await expect.poll(() => page.getByRole('checkbox', { name: 'Convert Farm!B5' }).isChecked()).toBe(false);
  await expect.poll(() => page.getByRole('checkbox', { name: 'Convert Farm!C5' }).isChecked()).toBe(true);
  await page.locator('.why', { hasText: 'also used in Farm!F5' }).waitFor();
  await press('Change units and convert 1');
  await messageShown('one cell was converted');
  expect(await at('Farm', 'B5', 'C5')).toEqual([22.5, 101.6]);
});

test('a number that changed since it was listed stops the whole conversion', async () => {
  await open(farm);
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await page.getByRole('button', { name: /convert 2/ }).waitFor();
  await page.evaluate(() => window.paneTest.host.change('Farm', 'C5', 101.6));
  await press(/convert 2/);
  await messageShown('Farm!C5 has changed since it was listed, so nothing was changed');
  expect(await at('Farm', 'B5', 'C5')).toEqual([22.5, 101.6]);
  expect(await at('Silt units', 'B4')).toEqual(['US']);
});

test('a protected sheet is named, and the workbook stays as it was', async () => {
  await open(farm);
  await page.evaluate(() => window.paneTest.host.protectedSheets.add('Farm'));
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await press(/convert 2/);
  await messageShown('The sheet Farm is protected; remove the protection');
  expect(await at('Farm', 'B5')).toEqual([22.5]);
  expect(await at('Silt units', 'B4', 'B5')).toEqual(['US', 'US']);
});

test('units changed by hand in their cell give a caution, and converting removes it', async () => {
  await open(farm, { B4: 'metric', B5: 'US' });
  await page.locator('.caution', { hasText: 'Numbers were typed in US but are read as metric' }).waitFor();
  await press('Look for typed numbers');
  await press('Convert 2');
  await messageShown('2 cells were converted');
  expect(await at('Farm', 'B5')).toEqual([571.5]);
  expect(await at('Silt units', 'B5')).toEqual(['metric']);
  await expect.poll(() => page.locator('.caution').count()).toBe(0);
});

test('units may change without the numbers; then a caution stays until someone decides', async () => {
  await open(farm);
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await press('Change units only');
  await page.locator('.caution').waitFor();
  expect(await at('Farm', 'B5')).toEqual([22.5]);
  await press('They are correct');
  await expect.poll(() => page.locator('.caution').count()).toBe(0);
  expect(await at('Silt units', 'B4', 'B5')).toEqual(['metric', 'metric']);
});

test('exceptions are chosen kind by kind and are text in the cell', async () => {
  await open({ B5: 10, C5: 20, E5: '=SILT.SETTLE.OVERFLOW(SiltUnits,B5,C5)' });
  await page.getByText('Exceptions by kind').click();
  await page.getByLabel('flow', { exact: true }).selectOption('L/min');
  await press('Change units');
  await press(/convert 1/);
  await messageShown('one cell was converted');
  expect(await at('Silt units', 'B4', 'B5')).toEqual(['US, flow L/min', 'US, flow L/min']);
  expect((await at('Farm', 'B5', 'C5')).map(Number)).toEqual([expect.closeTo(37.85411784, 9), 20]);
});

test('a name that the workbook uses for something else is redefined only after asking', async () => {
  await open({ A1: 7 }, null, { SiltUnits: 'Farm!$A$1' });
  await press('Add units to this workbook');
  const question = page.getByRole('alertdialog', { name: /SiltUnits refers to Farm!\$A\$1/ });
  await question.getByRole('button', { name: 'Leave it' }).click();
  await expect.poll(() => page.evaluate(() => window.paneTest.host.sheets())).toEqual(['Farm']);
  await press('Add units to this workbook');
  await question.getByRole('button', { name: 'Use it for the units' }).click();
  await messageShown('The sheet Silt units was added');
  const names = await page.evaluate(() => window.paneTest.host.names());
  expect(names.find(({ name }) => name === 'SiltUnits')?.refersTo).toBe("'Silt units'!$B$4");
});

test('another sheet with that name is not changed', async () => {
  await open({ A1: 7 }, { A1: 'my own list' }, {});
  await press('Add units to this workbook');
  await messageShown('rename it, then set the units again');
  expect(await at('Silt units', 'A1', 'B4')).toEqual(['my own list', '']);
});

test('text from the sheet is never markup', async () => {
  const nasty = '<img src=x onerror=alert(1)>';
  await page.evaluate(
    ([name, names]) =>
      window.paneTest.open(
        { [name]: { B5: 10, E5: '=SILT.TANK.GIRTH(SiltUnits,B5)' }, 'Silt units': { B4: 'US', B5: 'US' } },
        names,
      ),
    [nasty, unitsNames] as const,
  );
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  await page.locator('.sheet-name', { hasText: nasty }).waitFor();
  expect(await page.locator('.pane img').count()).toBe(0);
});

test('a long search shows progress, and stopping it changes nothing', async () => {
  const cells: Record<string, CellResult> = {};
  for (let row = 1; row <= 100; row++) {
    cells[`A${row}`] = row / 1000;
    cells[`B${row}`] = `=SILT.TANK.GIRTH(SiltUnits,A${row})`;
  }
  await open(cells);
  const held = await holdWork(page);
  await page.getByRole('radio', { name: /^Metric/ }).check();
  await press('Change units');
  const progress = page.getByRole('progressbar', { name: 'Looking for typed numbers' });
  await progress.waitFor();
  const share = () => progress.evaluate((bar: HTMLProgressElement) => bar.value);
  expect(await share()).toBe(0);
  await held.goOn();
  await expect.poll(share).toBeGreaterThan(0);
  await press('Stop');
  await held.release();
  await messageShown('stopped, nothing was changed');
  expect(await steps()).toBe(0);
});

test('the whole change works by keyboard alone, with a visible focus at every stop', async () => {
  await open(farm);
  await page.locator('#tab-units').focus();
  const stops: string[] = [];
  const tab = async () => {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(() => {
      const element = document.activeElement!;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const name = element.getAttribute('aria-label') ?? element.textContent ?? '';
      return {
        name: (element as HTMLInputElement).value === 'US' ? 'US' : name.trim(),
        seen: outlineStyle !== 'none' && outlineWidth !== '0px',
      };
    });
    expect(stop.seen, stop.name).toBe(true);
    stops.push(stop.name);
  };
  await tab();
  expect(stops).toEqual(['US']);
  await page.keyboard.press('ArrowUp');
  await tab();
  await tab();
  expect(stops.slice(1)).toEqual(['Exceptions by kind', 'Change units']);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Typed numbers' }).waitFor();
  await tab();
  await tab();
  await page.keyboard.press('Enter');
  await expect
    .poll(() => page.evaluate(() => window.paneTest.host.selection().then(({ range }) => range.column)))
    .toBe(1);
  await tab();
  await page.keyboard.press('Space');
  await tab();
  await tab();
  expect(stops.slice(3)).toEqual([
    'Convert Farm!B5',
    'Show Farm!B5',
    'Convert Farm!C5',
    'Show Farm!C5',
    'Change units and convert 1',
  ]);
  await page.keyboard.press('Enter');
  await messageShown('one cell was converted');
  await expect.poll(() => at('Farm', 'B5', 'C5')).toEqual([571.5, 4]);
});
