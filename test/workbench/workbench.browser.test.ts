import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { openPackage } from '../workbooks/package-parts';
import {
  cellPoint,
  cells,
  chooseSample,
  clickCell,
  type OpenPage,
  openBlank,
  openWorkbench,
  shown,
  withoutSaving,
} from './open-workbench';
import { servedSite } from './served-site';

const sheet = 'Sheet 1';
const folder = mkdtempSync(join(tmpdir(), 'workbench-'));

const site = servedSite();
let open: OpenPage;
let page: Page;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  page = open.page;
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});
afterEach(() => {
  expect(open.faults).toEqual([]);
  // Nothing but the page's own files: no font, no locale, no script from anywhere else.
  expect(open.requests.filter((url) => !url.startsWith(site.address) && !/^(data|blob):/.test(url))).toEqual([]);
});

/** Begins a cell by a key; the rest comes at once, as by a keyboard that suggests words, since each key is drawn anew. */
async function type(row: number, column: number, text: string): Promise<void> {
  await clickCell(page, row, column);
  await page.keyboard.type(text.slice(0, 1));
  await page.keyboard.insertText(text.slice(1));
  await enter();
}

/** The list of functions closes a moment after the last letter, and until then takes Enter for a choice from it. */
async function enter(): Promise<void> {
  await page.locator('ul[data-u-comp="sheets-formula-editor"]').waitFor({ state: 'detached' });
  await shown(page);
  await page.keyboard.press('Enter');
}

/** The message line, once it says something that matches. */
async function line(pattern: RegExp): Promise<string> {
  await page.waitForFunction(
    (source) => new RegExp(source).test(document.getElementById('cell-line')?.textContent ?? ''),
    pattern.source,
  );
  return (await page.textContent('#cell-line')) ?? '';
}

describe('the page when it opens', () => {
  it('is the cone-cut-plan sample with its functions computed', async () => {
    expect(await page.inputValue('#samples')).toBe('US/cone-cut-plan.xlsx');
    expect(await page.textContent('#title')).toBe('cone-cut-plan.xlsx');
    const used = await page.evaluate(() => window.workbench.host.readUsed());
    const formulas = used.flatMap((block) => block.formulas.flat().filter((formula) => formula?.includes('SILT.')));
    expect(formulas.length).toBeGreaterThan(10);
    await expect
      .poll(async () =>
        (await page.evaluate(() => window.workbench.host.readUsed())).flatMap((block) =>
          block.values.flat().flatMap((value) => (typeof value === 'object' ? [value.error] : [])),
        ),
      )
      .toEqual([]);
  });

  it('draws the pattern row and the cut plan that are selected', async () => {
    const find = async (name: string) => {
      const used = await page.evaluate(() => window.workbench.host.readUsed());
      for (const block of used) {
        for (const [row, formulas] of block.formulas.entries()) {
          const column = formulas.findIndex((formula) => formula?.includes(name));
          if (column >= 0) {
            return { sheet: block.sheet, row: block.range.row + row + 1, column: block.range.column + column };
          }
        }
      }
      throw new Error(`no ${name} in the sample`);
    };
    for (const [name, title] of [
      ['SILT.CONE.PATTERN(', 'cone pattern'],
      ['SILT.CUT.PLAN(', 'Cut plan'],
    ] as const) {
      const { sheet: where, ...cell } = await find(name);
      await page.evaluate((place) => window.workbench.host.select(place), {
        sheet: where,
        range: { ...cell, rows: 1, columns: 1 },
      });
      const figure = page.locator('#pane figure.drawing', {
        has: page.locator('figcaption', { hasText: new RegExp(title, 'i') }),
      });
      // It is drawn again when cells have been computed, so that one look may miss it.
      await expect.poll(async () => (await figure.locator('svg').boundingBox())?.width).toBeGreaterThan(200);
      expect(await figure.locator('svg path').count()).toBeGreaterThan(0);
    }
  });
});

describe('the pane beside the grid', () => {
  it.each(['Units', 'Functions', 'Sheets', 'Checks', 'Drawings'])('opens %s by its tab', async (name) => {
    const tab = page.locator('#pane').getByRole('tab', { name, exact: true });
    await tab.click();
    await expect.poll(() => tab.getAttribute('aria-selected')).toBe('true');
    const panel = page.locator(`#pane [role=tabpanel][id="${await tab.getAttribute('aria-controls')}"]`);
    // A view's script loads when it is first looked at.
    await expect.poll(async () => (await panel.textContent())?.length).toBeGreaterThan(40);
    expect(await page.locator('#pane [role=tabpanel]:visible').count()).toBe(1);
  });

  it('knows the units of each workbook that is opened', async () => {
    const profile = page.locator('#pane .profile');
    for (const [sample, units] of [
      ['metric/cone-cut-plan.xlsx', 'metric'],
      ['US/cone-cut-plan.xlsx', 'US'],
    ] as const) {
      await chooseSample(page, sample);
      await page.waitForFunction(
        ([where, wanted]) => document.querySelector(where!)?.textContent === wanted,
        ['#pane .profile', units],
      );
      expect(await profile.textContent()).toBe(units);
    }
  });
});

describe('typing', () => {
  beforeAll(() => openBlank(page));

  it('offers functions with their descriptions, then says what each argument means', async () => {
    await clickCell(page, 0, 0);
    await page.keyboard.type('=SILT.UNIT.RE');
    await page.getByText('SILT.UNIT.READ', { exact: false }).first().waitFor();
    const metadata = JSON.parse(readFileSync('dist/functions.json', 'utf8'));
    const read = metadata.functions.find((fn: { name: string }) => fn.name === 'UNIT.READ');
    await page.getByText(read.description, { exact: false }).first().waitFor();
    await page.keyboard.type('AD("metric",');
    expect(await line(/kind \(2 of 3\)/)).toContain(read.parameters[1].description);
    await page.keyboard.type('"dimension","3 1/4 in")');
    await enter();
    const place = { sheet, row: 0, column: 0, rows: 1, columns: 1 };
    // 3 1/4 in of 25.4 mm exactly (international inch, 1959).
    const block = await cells(page, place, ({ values }) => values[0]![0] !== '');
    expect(block.values).toEqual([[82.55]]);
  });

  it('shows why a cell is in error when it is selected and when it is pointed at', async () => {
    await type(2, 0, '=SILT.UNIT.READ("US","dimension","3 gal")');
    await clickCell(page, 2, 0);
    const reason = /#VALUE! quantity: 3 gal is a volume/;
    expect(await line(reason)).toContain('A3');
    await clickCell(page, 14, 6);
    await line(/^G15\s*$/);
    const { x, y } = await cellPoint(page, 2, 0);
    await page.mouse.move(x + 200, y + 200, { steps: 4 });
    await page.mouse.move(x, y, { steps: 8 });
    await page.getByText('3 gal is a volume', { exact: false }).first().waitFor();
  });

  it('spills rows, recomputes them when a cell that they read changes, and says what is in the way', async () => {
    await type(6, 0, 'dimension');
    await type(6, 1, '=SILT.UNIT.CONVERT({1;2;3},"in","mm")');
    const spill = { sheet, row: 6, column: 1, rows: 3, columns: 1 };
    const filled = await cells(page, spill, ({ values }) => values[2]![0] !== '');
    expect(filled.values).toEqual([[25.4], [50.8], [76.2]].map(([mm]) => [expect.closeTo(mm!, 10)]));
    expect(filled.spills).toEqual([{ row: 6, column: 1, rows: 3, columns: 1 }]);
    await type(7, 1, 'x');
    const blocked = await cells(page, spill, ({ values }) => typeof values[0]![0] === 'object');
    expect(blocked.values[0]![0]).toMatchObject({ error: { code: '#SPILL!' } });
    await page.click('#undo');
    await cells(page, spill, ({ values }) => values[2]![0] !== '');
  });

  it('never reads text as markup', async () => {
    await type(10, 0, '<img src=x onerror=alert(1)>');
    await type(11, 0, '=SILT.UNIT.READ("US","dimension","<b>5</b> in")');
    await clickCell(page, 11, 0);
    expect(await line(/#VALUE!/)).toContain('<b>');
    expect(await page.locator('#cell-line b, #pane b, img[src="x"]').count()).toBe(0);
  });
});

describe('files', () => {
  const workbook: WorkbookData = {
    sheets: [
      {
        name: 'Mine',
        columnWidths: { 0: 20 },
        frozenRows: 1,
        cells: [
          { row: 0, column: 0, value: 'length', style: { bold: true } },
          { row: 1, column: 0, value: '3/4 in' },
          { row: 1, column: 1, formula: '=SILT.UNIT.READ(Profile,"dimension",A2)', value: 0 },
          { row: 4, column: 0, value: 'metric' },
        ],
        validations: [{ range: 'A5', type: 'list', formulas: ['"metric,US"'], allowBlank: true, errorStyle: 'stop' }],
      },
    ],
    names: [{ name: 'Profile', refersTo: 'Mine!$A$5' }],
  };
  const file = join(folder, 'mine.xlsx');
  beforeAll(async () => writeFileSync(file, await writeWorkbook(workbook)));

  it('of the user are opened and recomputed', async () => {
    await withoutSaving(page, () => page.setInputFiles('#open', file));
    await page.waitForFunction(() => document.getElementById('title')?.textContent === 'mine.xlsx');
    const block = await cells(
      page,
      { sheet: 'Mine', row: 1, column: 0, rows: 1, columns: 2 },
      ({ values }) => values[0]![1] !== 0,
    );
    expect(block.values[0]).toEqual(['3/4 in', 19.05]);
    expect(await page.evaluate(() => window.workbench.host.names())).toEqual(workbook.names);
  });

  it('are computed the same when they are opened again, names and LET included', async () => {
    const openWith = (bore: string) =>
      page.evaluate((refersTo) => {
        const values = [5, 50].map((value, row) => ({ row, column: 0, value }));
        const formulas = ['=LET(a,A1,b,a*2,a+b)', '=Bore*2'].map((formula, row) => ({ row, column: 1, formula }));
        window.workbench.spreadsheet.open({
          sheets: [{ name: 'Again', cells: [...values, ...formulas] }],
          names: [{ name: 'Bore', refersTo }],
        });
      }, bore);
    const place = { sheet: 'Again', row: 0, column: 1, rows: 2, columns: 1 };
    const shown = async (): Promise<unknown> =>
      (await cells(page, place, ({ values }) => values.flat().every((value) => value !== ''))).values;
    await openWith('Again!$A$1');
    expect(await shown()).toEqual([[15], [10]]);
    await openWith('Again!$A$2');
    expect(await shown()).toEqual([[15], [100]]);
    expect(await page.evaluate(() => window.workbench.spreadsheet.evaluate('Again', '=LET(a,A1,b,a*2,a+b)'))).toBe(15);
  });

  it('can be dropped on the page', async () => {
    const bytes = [...readFileSync(file)];
    await withoutSaving(page, () =>
      page.evaluate((content) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([new Uint8Array(content)], 'dropped.xlsx'));
        window.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, cancelable: true }));
      }, bytes),
    );
    await page.waitForFunction(() => document.getElementById('title')?.textContent === 'dropped.xlsx');
  });

  it('are saved as values only, for those without the add-in', async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save-values')]);
    expect(download.suggestedFilename()).toBe('dropped values only.xlsx');
    const path = join(folder, 'values.xlsx');
    await download.saveAs(path);
    const cells = (await readWorkbook(readFileSync(path))).sheets.flatMap((sheet) => sheet.cells);
    expect(cells.some(({ formula }) => formula !== undefined)).toBe(false);
    expect(cells.some(({ value }) => typeof value === 'number')).toBe(true);
  });

  it('are saved with what was typed', async () => {
    await page.evaluate(() =>
      window.workbench.host.write([{ sheet: 'Mine', row: 2, column: 0, cells: [['2 in', '=B2*2', true, -1.5]] }]),
    );
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
    expect(download.suggestedFilename()).toBe('dropped.xlsx');
    const path = join(folder, 'saved.xlsx');
    await download.saveAs(path);
    const saved = await readWorkbook(readFileSync(path));
    const [mine] = saved.sheets;
    expect(saved.names).toEqual(workbook.names);
    expect(mine).toMatchObject({ name: 'Mine', frozenRows: 1, validations: workbook.sheets[0]!.validations });
    expect(mine!.columnWidths).toMatchObject({ 0: 20 });
    const at = (row: number, column: number) => mine!.cells.find((cell) => cell.row === row && cell.column === column);
    expect(at(0, 0)).toMatchObject({ value: 'length', style: { bold: true } });
    expect(at(1, 1)).toMatchObject({ formula: '=SILT.UNIT.READ(Profile,"dimension",A2)', value: 19.05 });
    expect([at(2, 0), at(2, 1), at(2, 2), at(2, 3)]).toMatchObject([
      { value: '2 in' },
      { formula: '=B2*2', value: 38.1 },
      { value: true },
      { value: -1.5 },
    ]);
  });

  it('that cannot be read are refused in a sentence, and the workbook stays', async () => {
    const damaged = join(folder, 'damaged.xlsx');
    writeFileSync(damaged, 'not a workbook');
    await withoutSaving(page, () => page.setInputFiles('#open', damaged));
    await page.getByRole('alert').getByText('not a readable .xlsx workbook').waitFor();
    expect(await page.evaluate(() => window.workbench.host.sheets())).toEqual(['Mine']);
  });
});

describe('a sample that cannot be opened', () => {
  it('leaves list and workbook unchanged, and says what to do', async () => {
    await chooseSample(page, 'US/cone-cut-plan.xlsx');
    await page.waitForFunction(() => document.getElementById('title')?.textContent?.includes('cone-cut-plan.xlsx'));
    const before = await page.evaluate(() => window.workbench.host.sheets());
    // Neither the built data nor the file that stands in for it answers.
    await page.route('**/US/water-book.*', (route) => route.abort());
    await chooseSample(page, 'US/water-book.xlsx');
    await page.getByRole('alert').getByText('the site does not answer').waitFor();
    await expect.poll(() => page.inputValue('#samples')).toBe('US/cone-cut-plan.xlsx');
    expect(await page.evaluate(() => window.workbench.host.sheets())).toEqual(before);
    expect(await page.textContent('#title')).toContain('cone-cut-plan.xlsx');
    // The browser itself reports the two requests that failed.
    const faults = open.faults as string[];
    expect(faults.splice(0)).toEqual(Array(2).fill(expect.stringContaining('net::ERR_FAILED')));
    await page.unroute('**/US/water-book.*');
  });
});

describe('the look', () => {
  it('follows the dark theme of the system', async () => {
    const shade = (selector: string) =>
      page.$eval(selector, (element) => {
        const [r = 0, g = 0, b = 0] = getComputedStyle(element).backgroundColor.match(/\d+/g)!.map(Number);
        return r + g + b;
      });
    expect(await shade('body')).toBeGreaterThan(500);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await shade('body')).toBeLessThan(200);
    expect(await shade('#bar')).toBeLessThan(200);
    await page.emulateMedia({ colorScheme: 'light' });
  });
});

describe('samples', () => {
  it('are saved as values only with their drawings as pictures', async () => {
    await withoutSaving(page, () => page.selectOption('#samples', 'US/stocking-scenarios.xlsx'));
    await page.waitForFunction(() => document.getElementById('title')?.textContent === 'stocking-scenarios.xlsx');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save-values')]);
    const pictures = openPackage(new Uint8Array(readFileSync(await download.path()))).names.filter((name) =>
      name.endsWith('.png'),
    );
    expect(pictures).toHaveLength(6);
  });
});
