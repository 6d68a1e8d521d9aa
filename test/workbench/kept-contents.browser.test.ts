import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { beforeAll, expect, test } from 'vitest';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { openPackage } from '../workbooks/package-parts';
import { chooseSample, type OpenPage, openWorkbench, withoutSaving } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();
let open: OpenPage;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
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
