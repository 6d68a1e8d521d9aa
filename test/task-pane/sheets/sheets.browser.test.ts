import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { readWorkbook } from '../../../src/workbooks/read-xlsx';
import { closePages, launchBrowser } from '../../harness/browser';
import { openPackage } from '../../workbooks/package-parts';
import { axeFindings } from '../axe';
import { openPane } from '../pane-harness';
import { sampleAsJson } from '../sample-host';

let browser: Browser;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  browser = await launchBrowser();
  ({ page, complaints } = await openPane(browser, { viewport: { width: 320, height: 900 } }));
});
afterAll(() => closePages(browser));

// Each opens a new pane in the page.
beforeEach(async () => {
  await open({ Mine: { A1: 'mine' } });
});
afterEach(() => {
  expect(complaints).toEqual([]);
});

async function open(sheets: Readonly<Record<string, Readonly<Record<string, string>>>>, names = {}): Promise<void> {
  await page.evaluate(
    ([cells, defined]) => {
      window.paneTest.open(cells, defined);
      window.paneTest.pane.show('sheets');
    },
    [sheets, names] as const,
  );
  await page.getByText('Cone cut plan').waitFor();
}

/** Opens a sample whose host gives its file, as Excel does. */
async function openSample(downloads: boolean): Promise<void> {
  const path = 'US/cone-cut-plan';
  await page.evaluate(
    ([workbook, bytes, canDownload]) => {
      window.paneTest.openWorkbook(workbook);
      const { host } = window.paneTest;
      host.downloads = canDownload;
      host.file = async () => Uint8Array.from(bytes, (byte) => byte.charCodeAt(0));
      host.openFile = async (file) =>
        void Object.assign(window, { openedFile: Array.from(file, (byte) => String.fromCharCode(byte)).join('') });
      window.paneTest.pane.show('sheets');
    },
    [await sampleAsJson(path), readFileSync(`sample-workbooks/${path}.xlsx`, 'latin1'), downloads] as const,
  );
}

/** A copy has results only, and its three patterns and the cut plan as pictures. */
async function expectCopy(bytes: Uint8Array): Promise<void> {
  const copy = await readWorkbook(bytes);
  expect(copy.sheets.map(({ name }) => name).slice(-2)).toEqual(['Silt units', 'Drawings']);
  expect(copy.sheets.flatMap(({ cells }) => cells).some(({ formula }) => formula !== undefined)).toBe(false);
  expect(openPackage(bytes).names.filter((name) => name.endsWith('.png'))).toHaveLength(4);
}

const sheets = () => page.evaluate(() => window.paneTest.host.sheets());
const insert = async (title: string): Promise<void> => {
  await page.getByLabel(title).check();
  await page.getByRole('button', { name: 'Insert' }).click();
};

describe('a values-only copy', () => {
  test('is saved from the pane', async () => {
    await openSample(true);
    const button = page.getByRole('button', { name: 'Save values only' });
    const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
    expect(download.suggestedFilename()).toBe('values only.xlsx');
    await expectCopy(new Uint8Array(readFileSync(await download.path())));
    await page.getByText('Saved as values only.xlsx.').waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });

  test('opens as a new workbook where a pane cannot save a file', async () => {
    await openSample(false);
    await page.getByRole('button', { name: 'Save values only' }).click();
    await page.getByText('The copy is open as a new workbook; save it there.').waitFor();
    const opened = await page.evaluate(() => (window as unknown as { openedFile: string }).openedFile);
    await expectCopy(new Uint8Array(Buffer.from(opened, 'latin1')));
  });

  test('is refused while the spreadsheet calculates', async () => {
    await openSample(true);
    await page.evaluate(() => {
      window.paneTest.host.holdsOldResults = true;
    });
    await page.getByRole('button', { name: 'Save values only' }).click();
    await page.getByText('the test is still calculating; save again when it is done.').waitFor();
  });

  test('is not offered where the spreadsheet does not give its file', async () => {
    expect(await page.getByRole('button', { name: 'Save values only' }).count()).toBe(0);
  });
});

describe('ready-made sheets', () => {
  test('are chosen and inserted by the keyboard, after the existing sheets', async () => {
    await page.getByLabel('Cone cut plan').focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    await page.keyboard.press('u');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByText('Cone cut plan: 8 sheets inserted.').waitFor();
    const now = await sheets();
    expect(now[0]).toBe('Mine');
    expect(now).toContain('Drums');
    expect(await page.evaluate(() => window.paneTest.host.at('Silt units', 'B4'))).toBe('US');
    expect(await page.evaluate(async () => (await window.paneTest.host.selection()).sheet)).toBe('Drums');
  });

  test('follow the units of the workbook without asking', async () => {
    await open({ U: { A1: 'US', A2: 'US' } }, { SiltUnits: 'U!$A$1', SiltTypedIn: 'U!$A$2' });
    await page.waitForFunction(() => document.querySelector('.profile')?.textContent === 'US');
    expect(await page.getByLabel('Units', { exact: true }).isVisible()).toBe(false);
    await insert('Water book');
    await page.getByText(/Water book: \d sheets inserted\./).waitFor();
    expect(await sheets()).not.toContain('Silt units');
  });

  test('get new names if theirs exist already, or are not inserted', async () => {
    await open({ Drums: { A1: 'mine' } });
    await insert('Cone cut plan');
    await page.getByText('A sheet called Drums exists already.').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByText('Nothing was inserted.').waitFor();
    expect(await sheets()).toEqual(['Drums']);
    await page.getByRole('button', { name: 'Insert' }).click();
    await page.getByRole('button', { name: 'Keep both; name the new Drums 2' }).click();
    await page.getByText('Cone cut plan: 8 sheets inserted.').waitFor();
    expect(await page.evaluate(() => window.paneTest.host.at('Drums', 'A1'))).toBe('mine');
    expect(await sheets()).toContain('Drums 2');
  });

  test('are refused while typed numbers are in other units, in a sentence', async () => {
    await open({ U: { A1: 'US', A2: 'metric' } }, { SiltUnits: 'U!$A$1', SiltTypedIn: 'U!$A$2' });
    await insert('Cone cut plan');
    await page.locator('.message', { hasText: 'Numbers were typed in metric but are read as US' }).waitFor();
    expect(await sheets()).toEqual(['U']);
  });

  test('leave the workbook unchanged when they are stopped halfway', async () => {
    await page.evaluate(() => {
      const { host } = window.paneTest;
      const plain = host.insert;
      // The third sheet waits until the test lets it go on.
      host.insert = (workbook, step) =>
        plain(workbook, async (share) => {
          if (share > 0.25) await new Promise<void>((resolve) => Object.assign(window, { goOn: resolve }));
          await step?.(share);
        });
    });
    await insert('Cone cut plan');
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.evaluate(() => (window as unknown as { goOn: () => void }).goOn());
    await page.getByText('Inserting Cone cut plan: stopped, nothing was changed.').waitFor();
    expect(await sheets()).toEqual(['Mine']);
    expect(await page.evaluate(() => window.paneTest.host.names())).toEqual([]);
  });

  test.each(['light', 'dark'])('axe finds nothing and nothing sticks out at 320 pixels: %s', async (theme) => {
    await page.evaluate((dark) => window.paneTest.host.turn(dark), theme === 'dark');
    await page.getByLabel('Harvest book').check();
    expect(await axeFindings(page)).toEqual([]);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
