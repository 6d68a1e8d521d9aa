/** What is saved: the results of the last change, and all that the page does not show. */
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { beforeAll, expect, test } from 'vitest';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { openPackage } from '../workbooks/package-parts';
import { chooseSample, type OpenPage, openWorkbench, withoutSaving } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();
let open: OpenPage;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
});

/** Writes another cone height for the first drum and presses a button in the same moment; gives the saved file. */
async function savedAfter(height: number, button: string): Promise<WorkbookData> {
  const [download] = await Promise.all([
    open.page.waitForEvent('download'),
    open.page.evaluate(
      async ([value, name]) => {
        const all = [...document.querySelectorAll<HTMLButtonElement>('button')];
        const pressed = all.find(({ id, textContent }) => id === name || textContent === name);
        await window.workbench.host.write([{ sheet: 'Drums', row: 4, column: 6, cells: [[value as number]] }]);
        pressed?.click();
      },
      [height, button],
    ),
  ]);
  return readWorkbook(new Uint8Array(readFileSync(await download.path())));
}

/** The slant length of the first drum's pattern, as the grid shows it once everything is calculated. */
const slantInGrid = () =>
  open.page.evaluate(async () => {
    await window.workbench.spreadsheet.settled();
    const range = { row: 4, column: 2, rows: 1, columns: 1 };
    return (await window.workbench.host.read({ sheet: 'Patterns', range })).values[0]?.[0];
  });

const inCell = ({ sheets }: WorkbookData, sheet: string, row: number, column: number) =>
  sheets.find(({ name }) => name === sheet)?.cells.find((cell) => cell.row === row && cell.column === column)?.value;

test.each(['save', 'save-values'])('the button “%s” waits for the results of the last change', async (button) => {
  // The first time it also waits for the script that writes files.
  for (const height of [10.5, 11]) {
    const before = await slantInGrid();
    const file = await savedAfter(height, button);
    const slant = inCell(file, 'Patterns', 4, 2);
    expect(slant).toBe(await slantInGrid());
    expect(slant).not.toBe(before);
  }
});

test('the job packet waits for the results of the last change', async () => {
  const file = await savedAfter(11.5, 'Save job packet as a workbook');
  const slant = await slantInGrid();
  expect(file.sheets.flatMap(({ cells }) => cells).filter(({ value }) => value === slant).length).toBeGreaterThan(0);
});

test('a file holds what is still being typed into a cell, and its results', async () => {
  const { page } = open;
  await page.evaluate(() =>
    window.workbench.host.select({ sheet: 'Drums', range: { row: 4, column: 6, rows: 1, columns: 1 } }),
  );
  await page.locator('#samples').focus();
  await page.keyboard.press('F6');
  await page.waitForFunction(() => document.getElementById('grid')?.contains(document.activeElement));
  await page.keyboard.type('12.5');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save values only' }).click(),
  ]);
  const file = await readWorkbook(new Uint8Array(readFileSync(await download.path())));
  expect(inCell(file, 'Drums', 4, 6)).toBe(12.5);
  expect(inCell(file, 'Patterns', 4, 2)).toBe(await slantInGrid());
});

const sheetPart = /^xl\/worksheets\/sheet\d+\.xml$/;

/** Everything of a sheet's part but its cells: rules, drop-downs, print settings, links to comments and pictures. */
const besidesCells = (bytes: Uint8Array, part: string) =>
  openPackage(bytes)
    .xml(part)!
    .children.filter(({ name }) => name !== 'sheetData');

// Made by openpyxl 3.0.9 and by LibreOffice 7.4; between them a chart, a picture, a pivot table and comments.
test.each(['drum-store.xlsx', 'pull-log.xlsx'])('%s keeps all that the page does not show', async (name) => {
  const { page } = open;
  const before = new Uint8Array(readFileSync(`test/workbooks/files/${name}`));
  await withoutSaving(page, () => page.setInputFiles('#open', `test/workbooks/files/${name}`));
  const sheet = await page.evaluate(async () => {
    const { host, spreadsheet } = window.workbench;
    const [first = ''] = await host.sheets();
    await host.write([{ sheet: first, row: 2, column: 2, cells: [[40]] }]);
    await spreadsheet.settled();
    return first;
  });
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const after = new Uint8Array(readFileSync(await download.path()));

  const [was, is] = [unzipSync(before), unzipSync(after)];
  expect(Object.keys(is).sort()).toEqual(Object.keys(was).sort());
  const changed = Object.keys(was).filter((part) => Buffer.compare(was[part]!, is[part]!) !== 0);
  expect(changed.filter((part) => !sheetPart.test(part))).toEqual([]);
  for (const part of changed) expect(besidesCells(after, part)).toEqual(besidesCells(before, part));
  const saved = (await readWorkbook(after)).sheets.find((one) => one.name === sheet);
  expect(saved?.cells.find(({ row, column }) => row === 2 && column === 2)?.value).toBe(40);
  expect(open.faults).toEqual([]);
});

/** The notes of a sheet of a file, by the text of each. */
const notesIn = async (bytes: Uint8Array, sheet: string) =>
  Object.fromEntries(
    (await readWorkbook(bytes)).sheets
      .filter(({ name }) => name === sheet)
      .flatMap(({ cells }) =>
        cells.flatMap(({ row, column, note }) => (note === undefined ? [] : [[note, [row, column]]])),
      ),
  );

test('notes stay with their cells when rows come and go and the sheet gets another name', async () => {
  const { page } = open;
  const path = 'test/workbooks/files/drum-store.xlsx';
  await withoutSaving(page, () => page.setInputFiles('#open', path));
  const before = new Uint8Array(readFileSync(path));
  const { sheets } = await readWorkbook(before);
  const noted = sheets.find(({ cells }) => cells.some(({ note }) => note !== undefined))!.name;
  const was = await notesIn(before, noted);
  const first = Math.min(...Object.values(was).map(([row]) => row!));
  const save = async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
    return new Uint8Array(readFileSync(await download.path()));
  };
  const moved = (by: number) =>
    Object.fromEntries(Object.entries(was).map(([note, [row, column]]) => [note, [row! + by, column]]));

  await page.evaluate(
    ([name, at]) => {
      const sheet = window.workbench.spreadsheet.current().facade.getSheetByName(name as string)!;
      sheet.setName("Opa's drums");
      sheet.insertRows(at as number, 2);
    },
    [noted, first] as const,
  );
  expect(await notesIn(await save(), "Opa's drums")).toEqual(moved(2));
  // Deleted with its row, a note is there again when that is undone.
  await page.evaluate((row) => {
    window.workbench.spreadsheet.current().facade.getSheetByName("Opa's drums")!.deleteRows(row, 1);
  }, first + 2);
  expect(Object.keys(await notesIn(await save(), "Opa's drums")).length).toBeLessThan(Object.keys(was).length);
  await page.click('#undo');
  expect(await notesIn(await save(), "Opa's drums")).toEqual(moved(2));
  expect(open.faults).toEqual([]);
});

test('a file can be opened again after rows with merged cells were deleted on a sheet that is not in front', async () => {
  const { page } = open;
  await chooseSample(page, 'metric/own-figures.xlsx');
  await page.evaluate(() => {
    window.workbench.spreadsheet.current().facade.getSheetByName('Air')!.deleteRows(1, 1);
  });
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const { sheets } = await readWorkbook(new Uint8Array(readFileSync(await download.path())));
  expect(sheets.find(({ name }) => name === 'Air')?.merges).toEqual(['A1:G1', 'A2:G2']);
});
