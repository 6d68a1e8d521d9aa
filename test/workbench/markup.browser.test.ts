import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readDxf } from '../drawing/read-dxf';
import { cell, defined, file } from '../workbooks/hostile-table';
import { cells, chooseSample, type OpenPage, openWorkbench, withoutSaving } from './open-workbench';
import { servedSite } from './served-site';

/** Would run, and ask another machine, wherever it was taken for markup. */
const nasty = '<img src=x onerror=hacked()>';
/** Would end a text and begin something else in a drawing file. */
const breaking = `${nasty}"]]><script>hacked()</script>\n0\nLINE\n) /JS (hacked())`;

/** As a file holds it. */
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

const folder = mkdtempSync(join(tmpdir(), 'markup-'));
/** A file whose own name would be markup. */
const nastyFile = join(folder, `${nasty}.xlsx`);

const site = servedSite();
let open: OpenPage;
let page: Page;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  page = open.page;
  const trap = (): void => {
    Object.assign(window, { hacked: () => document.documentElement.setAttribute('data-hacked', '') });
  };
  await page.evaluate(trap);
  // The page is loaded again below.
  await page.addInitScript(trap);
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

async function saved(button: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return readFileSync(await download.path());
}

/** Nothing became an element, ran, or asked any other machine. */
async function nothingGotThrough(): Promise<void> {
  expect(await page.locator('img[src="x"], script:not([src])').count()).toBe(0);
  expect(await page.evaluate(() => document.documentElement.hasAttribute('data-hacked'))).toBe(false);
  expect(open.requests.filter((url) => !url.startsWith(site.address) && !/^(data|blob):/.test(url))).toEqual([]);
  expect(open.faults).toEqual([]);
}

/** The drawing in the pane as a file of each kind has no markup but its own. */
async function expectPlainFiles(): Promise<void> {
  const svg = new DOMParser().parseFromString((await saved('Save SVG')).toString(), 'image/svg+xml');
  expect(['script', 'img', 'image', 'foreignObject'].flatMap((tag) => [...svg.getElementsByTagName(tag)])).toEqual([]);
  const { layers } = readDxf((await saved('Save DXF')).toString());
  expect(layers).toEqual(expect.arrayContaining(['cut']));
  // Outside its texts, whose brackets are escaped (ISO 32000-1, 7.3.4.2), nothing that a reader would run.
  const pdf = (await saved('Save PDF')).toString('latin1').replace(/\((?:\\.|[^\\()])*\)/gs, '()');
  expect(pdf).not.toMatch(/\/(?:JS|JavaScript|Launch|OpenAction)\b/);
  expect(pdf).not.toContain('hacked');
}

test('text of cells is text in the pane, the lines above the grid, and every drawing file', async () => {
  await page.evaluate(
    ([name, size]) =>
      window.workbench.host.write([
        { sheet: 'Drums', row: 4, column: 0, cells: [[name ?? '']] },
        { sheet: 'Drums', row: 5, column: 2, cells: [[size ?? '']] },
      ]),
    [breaking, nasty],
  );
  await page.locator('#caution-line', { hasText: nasty }).waitFor();
  await page.locator('#tab-checks').click();
  await page.locator('.findings li', { hasText: nasty }).first().waitFor();
  await page.locator('#tab-drawings').click();
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Patterns', range: { row: 4, column: 1, rows: 1, columns: 1 } }),
  );
  await page.locator('figcaption', { hasText: nasty }).waitFor();

  await expectPlainFiles();
  await nothingGotThrough();
});

test('names of sheets and files are text', async () => {
  await page.evaluate((name) => window.workbench.host.addSheet(name), nasty);
  await page.evaluate(
    (name) =>
      window.workbench.host.write([
        { sheet: name, row: 0, column: 0, cells: [['=SILT.UNIT.READ("US","dimension","<b>4</b> in")']] },
      ]),
    nasty,
  );
  await page.locator('#tab-checks').click();
  await page
    .getByRole('button', { name: `Go to ${nasty}!A1` })
    .first()
    .waitFor();
  const bytes = [...readFileSync('sample-workbooks/US/water-book.xlsx')];
  await withoutSaving(page, () =>
    page.evaluate(
      ([content, name]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([new Uint8Array(content)], `${name}.xlsx`));
        window.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, cancelable: true }));
      },
      [bytes, nasty] as const,
    ),
  );
  expect(await page.textContent('#title')).toBe(`${nasty}.xlsx`);
  expect(await page.title()).toContain(nasty);
  await nothingGotThrough();
});

async function openFile(content: Uint8Array): Promise<void> {
  writeFileSync(nastyFile, content);
  await withoutSaving(page, () => page.setInputFiles('#open', nastyFile));
}

test('names of cells in a file, and what they stand for, are text', async () => {
  const rows = cell(`<is><t>${escaped(nasty)}</t></is>`, ' t="inlineStr"').replace(
    '</row>',
    `<c r="B1"><f>SILT.CONE.ANGLE(SiltUnits,22.5,4,9.25)</f></c><c r="C1"><f>Evil&amp;"!"</f></c></row>`,
  );
  const names = defined({
    SiltUnits: "'Silt units'!$A$1",
    SiltTypedIn: "'Silt units'!$A$1",
    Evil: `"${nasty.replaceAll('<', '&lt;')}"`,
    [escaped(nasty)]: "'Silt units'!$A$1",
  }).replace('name="Evil"', `name="Evil" comment="${escaped(nasty)}"`);
  await openFile(file({ rows, names, sheets: '<sheet name="Silt units" sheetId="1" r:id="s"/>' }));
  expect(await page.textContent('#title')).toBe(`${nasty}.xlsx`);
  const meant = { sheet: 'Silt units', row: 0, column: 1, rows: 1, columns: 2 };
  const [[angle, text] = []] = (await cells(page, meant, ({ values }) => values[0]?.[1] === `${nasty}!`)).values;
  expect([angle, text]).toEqual([{ error: expect.objectContaining({ code: '#VALUE!' }) }, `${nasty}!`]);
  // The units of the workbook are what the name stands for, so its text is in the pane's caution.
  await page.locator('.caution', { hasText: nasty }).waitFor();
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Silt units', range: { row: 0, column: 1, rows: 1, columns: 1 } }),
  );
  await page.locator('#cell-text', { hasText: nasty }).waitFor();
  for (const tab of ['units', 'functions', 'sheets', 'checks']) {
    await page.locator(`#tab-${tab}`).click();
    await nothingGotThrough();
  }
  await page.getByRole('button', { name: 'Names of this workbook' }).click();
  await page.getByText('Evil', { exact: true }).first().waitFor();
  await nothingGotThrough();
  await page.keyboard.press('Escape');
});

test('names of scenarios are text in the pane, its list, the charts and every drawing file', async () => {
  await chooseSample(page, 'US/stocking-scenarios.xlsx');
  await page.evaluate(
    ([first, second]) =>
      window.workbench.host.write([{ sheet: 'Scenarios', row: 3, column: 2, cells: [[first ?? '', second ?? '']] }]),
    [breaking, nasty],
  );
  await page.locator('#tab-drawings').click();
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Scenarios', range: { row: 6, column: 2, rows: 1, columns: 1 } }),
  );
  await page.locator('figcaption', { hasText: nasty }).waitFor();
  expect(await page.getByLabel('Scenario').locator('option').allTextContents()).toContain(nasty);
  await expectPlainFiles();
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Compare', range: { row: 0, column: 0, rows: 1, columns: 1 } }),
  );
  await page.locator('#charts-toggle').click();
  await page.locator('#charts-list canvas').first().waitFor();
  await nothingGotThrough();
  await page.locator('#charts-toggle').click();
});

test('the name of a file is text in questions, messages and the offer of unsaved work', async () => {
  await openFile(file({ rows: cell('<v>1</v>') }));
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Sheet', row: 0, column: 0, cells: [[2]] }]));
  await page.waitForFunction(() => document.body.dataset.kept !== undefined);
  await page.locator('#samples').selectOption('US/water-book.xlsx');
  const question = page.getByRole('alertdialog');
  await expect.poll(() => question.textContent()).toContain(`${nasty}.xlsx has changes that are not saved`);
  await nothingGotThrough();
  await question.getByRole('button', { name: 'Stay here' }).click();
  await openFile(new Uint8Array(100));
  await expect.poll(() => page.textContent('#notice')).toContain(`${nasty}.xlsx: `);
  await nothingGotThrough();

  page.once('dialog', (dialog) => void dialog.accept());
  await page.reload();
  await page.waitForSelector('body[data-ready]');
  await page.locator('#draft-text', { hasText: `${nasty}.xlsx` }).waitFor();
  await page.locator('#draft-open').click();
  await page.waitForFunction((name) => document.getElementById('title')?.textContent?.startsWith(name), nasty);
  await nothingGotThrough();
});

test('formulas of a file that would show or fetch something from elsewhere do neither', async () => {
  const elsewhere = 'https://elsewhere.invalid/a.png';
  const formulas = [`IMAGE("${elsewhere}")`, `WEBSERVICE("${elsewhere}")`, `HYPERLINK("javascript:hacked()","press")`];
  const rows = `<row r="1">${formulas.map((formula, at) => `<c r="${'ABC'[at]}1"><f>${escaped(formula)}</f></c>`).join('')}<c r="D1"><f>1+1</f></c></row>`;
  await openFile(file({ rows }));
  const place = { sheet: 'Sheet', row: 0, column: 0, rows: 1, columns: 4 };
  await cells(page, place, ({ values }) => values[0]?.[3] === 2);
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Sheet', range: { row: 0, column: 2, rows: 1, columns: 1 } }),
  );
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await nothingGotThrough();
});
