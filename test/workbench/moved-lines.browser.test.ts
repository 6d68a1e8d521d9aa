import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { chooseSample, type OpenPage, openWorkbench, withoutSaving } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();
let open: OpenPage;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
});

/** Rows or columns of a sheet, counted from 0, that come or with a negative count go, as from the menus of the grid. */
interface Lines {
  readonly sheet: string;
  readonly rows?: readonly [at: number, count: number];
  readonly columns?: readonly [at: number, count: number];
}

const change = (page: Page, lines: readonly Lines[]): Promise<void> =>
  page.evaluate(async (all) => {
    const { facade } = window.workbench.spreadsheet.current();
    for (const { sheet: name, rows, columns } of all) {
      const sheet = facade.getSheetByName(name)!;
      facade.setActiveSheet(sheet);
      if (rows !== undefined) rows[1] > 0 ? sheet.insertRows(...rows) : sheet.deleteRows(rows[0], -rows[1]);
      if (columns !== undefined)
        columns[1] > 0 ? sheet.insertColumns(...columns) : sheet.deleteColumns(columns[0], -columns[1]);
    }
    await window.workbench.spreadsheet.settled();
  }, lines);

const save = async (page: Page): Promise<Uint8Array> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  return new Uint8Array(readFileSync(await download.path()));
};

const valueAt = (page: Page, sheet: string, row: number, column: number) =>
  page.evaluate(
    async ([name, down, across]) => {
      await window.workbench.spreadsheet.settled();
      const range = { row: down, column: across, rows: 1, columns: 1 };
      return (await window.workbench.host.read({ sheet: name, range })).values[0]?.[0];
    },
    [sheet, row, column] as const,
  );

const type = (page: Page, sheet: string, row: number, column: number, value: string | number): Promise<void> =>
  page.evaluate(
    ([name, down, across, cell]) =>
      window.workbench.host.write([{ sheet: name, row: down, column: across, cells: [[cell]] }]),
    [sheet, row, column, value] as const,
  );

test('formulas are computed on after rows came into a sheet that they read, or moved the cell of a name', async () => {
  const { page } = open;
  await chooseSample(page, 'US/water-book.xlsx');
  expect(await valueAt(page, 'Tests', 3, 1)).toBe('°F');
  await change(page, [{ sheet: 'Silt units', rows: [60, 1] }]);
  await type(page, 'Silt units', 3, 1, 'metric');
  expect(await valueAt(page, 'Tests', 3, 1)).toBe('°C');
  await change(page, [{ sheet: 'Silt units', rows: [0, 2] }]);
  expect(await valueAt(page, 'Silt units', 8, 0)).toBe('kind');
  await type(page, 'Silt units', 5, 1, 'US');
  expect(await valueAt(page, 'Tests', 3, 1)).toBe('°F');
  expect(open.faults).toEqual([]);
});

test('lists, colors, frozen and printed cells follow rows and columns into the file, and back if undone', async () => {
  const { page } = open;
  const path = 'US/water-book.xlsx';
  await chooseSample(page, path);
  const sheetIn = async (bytes: Uint8Array, name: string) =>
    (await readWorkbook(bytes)).sheets.find((sheet) => sheet.name === name)!;
  const parts = async (bytes: Uint8Array) => {
    const [tests, verdict] = [await sheetIn(bytes, 'Tests'), await sheetIn(bytes, 'Verdict')];
    return {
      lists: verdict.validations?.map(({ range, formulas }) => [range, ...formulas]),
      colors: verdict.conditions?.map(({ range, formula }) => [range, formula]),
      entries: tests.validations?.map(({ range }) => range),
      frozen: tests.frozenRows,
      printed: [tests.print?.area, tests.print?.titleRows],
      heights: tests.rowHeights,
      charts: tests.charts?.map(({ place, series }) => [place, series[0]?.values]),
    };
  };
  const sample = await parts(new Uint8Array(readFileSync(`sample-workbooks/${path}`)));
  expect(await parts(await save(page))).toEqual(sample);
  await change(page, [
    { sheet: 'Tests', rows: [1, 2] },
    { sheet: 'Verdict', columns: [1, 1] },
  ]);
  const now = await parts(await save(page));
  // As Excel has them after the same changes: two rows under the title, and a column before B.
  expect(now.lists?.map(([range]) => range)).toEqual(['C4', 'C5']);
  expect(now.lists?.[1]?.[1]).toBe('Tests!$A$8:$A$64');
  expect(now.colors).toEqual([
    ['C5', '=LEFT(E5,3)="No "'],
    ['E5', '=LEFT(E5,3)="No "'],
    ['F9:F18', '=AND(F9<>"",F9<>"within limits",F9<>"not measured")'],
  ]);
  const down = (range: string | undefined): string | undefined =>
    range?.replace(/\d+/g, (row) => String(Number(row) + 2));
  expect(now.entries).toEqual(sample.entries?.map(down));
  expect(now.frozen).toBe(sample.frozen! + 2);
  expect(now.printed).toEqual([sample.printed[0]?.replace('62', '64'), '1:7']);
  expect(now.charts).toEqual(
    sample.charts?.map(([place, values]) => [
      down(place),
      values?.replaceAll(/\$\d+/g, (row) => `$${Number(row.slice(1)) + 2}`),
    ]),
  );
  await page.click('#undo');
  await page.click('#undo');
  expect(await parts(await save(page))).toEqual(sample);
  // Verdict!B4:B5 have lists, and B4 also a color; as if dragged by their border.
  await page.evaluate(async () => {
    const { facade } = window.workbench.spreadsheet.current();
    const sheet = facade.getSheetByName('Verdict')!;
    facade.setActiveSheet(sheet);
    const cell = (row: number, column: number) => sheet.getRange(row, column).getRange();
    const fromRange = cell(3, 1);
    await window.workbench.spreadsheet.api.executeCommand('sheet.command.move-range', {
      fromRange,
      toRange: cell(24, 2),
    });
    await window.workbench.spreadsheet.settled();
  });
  const cut = await parts(await save(page));
  const elsewhere = (list: readonly unknown[][] | undefined) =>
    list?.map(([range, ...rest]) => [range === 'B4' ? 'C25' : range, ...rest]);
  expect(cut.lists).toEqual(elsewhere(sample.lists));
  expect(cut.colors).toEqual(elsewhere(sample.colors));
  await page.click('#undo');
  expect(await parts(await save(page))).toEqual(sample);
  // The last two of the frozen rows, and one below them.
  await change(page, [{ sheet: 'Tests', rows: [sample.frozen! - 2, -3] }]);
  expect((await parts(await save(page))).frozen).toBe(sample.frozen! - 2);
  await page.click('#undo');
  expect((await parts(await save(page))).frozen).toBe(sample.frozen);
  expect(open.faults).toEqual([]);
});

test('the colors of cautions in the grid follow at once, also if a sheet that they read gets another name', async () => {
  const { page } = open;
  await chooseSample(page, 'US/water-book.xlsx');
  await page.evaluate(() => {
    const { facade } = window.workbench.spreadsheet.current();
    facade.setActiveSheet(facade.getSheetByName('Tests')!);
  });
  // Row 6: pH 8.2 and 6.5 mg/L of ammonia N, which kills.
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Tests', row: 5, column: 2, cells: [[8.2, 6.5]] }]));
  const colored = (place: string) =>
    expect.poll(() => page.evaluate((key) => window.workbench.conditions.now().get(key)?.bg?.rgb, place));
  await colored('5,3').toBe('#FDE0E0');
  const fills = await page.evaluate(() => {
    const { facade } = window.workbench.spreadsheet.current();
    const sheet = facade.getActiveSheet();
    sheet.insertRows(1, 2);
    return [...window.workbench.conditions.now()].map(([key]) => key);
  });
  expect(fills).toContain('7,3');
  expect(fills).not.toContain('5,3');
  await page.evaluate(() =>
    window.workbench.spreadsheet.current().facade.getSheetByName('Verdict')!.setName('The verdict'),
  );
  // Less kills no more; this is seen by a rule that looks at its cells where they are now.
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Tests', row: 7, column: 2, cells: [[7, 0.1]] }]));
  await colored('7,3').toBeUndefined();
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Tests', row: 8, column: 2, cells: [[8.2, 6.5]] }]));
  await colored('8,3').toBe('#FDE0E0');
  expect(open.faults).toEqual([]);
});

test('the copy of a sheet has its lists, colors, notes and charts, which read the copy', async () => {
  const { page } = open;
  await chooseSample(page, 'US/stocking-scenarios.xlsx');
  await change(page, [{ sheet: 'Compare', rows: [1, 1] }]);
  const copy = await page.evaluate(async () => {
    const { facade } = window.workbench.spreadsheet.current();
    const name = facade.duplicateSheet(facade.getSheetByName('Compare')!)!.getSheetName();
    await window.workbench.spreadsheet.settled();
    return name;
  });
  await change(page, [{ sheet: copy, rows: [1, 1] }]);
  const { sheets } = await readWorkbook(await save(page));
  const [own, copied] = ['Compare', copy].map((name) => sheets.find((sheet) => sheet.name === name)!);
  const notes = (sheet: typeof own) =>
    sheet!.cells.flatMap(({ row, column, note }) => (note ? [[row, column, note]] : []));
  const down = (text: string): string => text.replace(/(?<=[A-Z]\$?)\d+/g, (row) => String(Number(row) + 1));
  expect(copied!.charts?.map(({ series }) => series[0]!.values)).toEqual(
    own!.charts?.map(({ series }) => down(series[0]!.values).replace('Compare!', `'${copy}'!`)),
  );
  expect(copied!.charts?.map(({ place }) => place)).toEqual(own!.charts?.map(({ place }) => down(place)));
  expect(copied!.validations?.map(({ range }) => range)).toEqual(own!.validations?.map(({ range }) => down(range)));
  expect(copied!.conditions?.map(({ range }) => range)).toEqual(own!.conditions?.map(({ range }) => down(range)));
  expect(notes(copied)).toEqual(notes(own).map(([row, ...rest]) => [Number(row) + 1, ...rest]));
  expect(open.faults).toEqual([]);
});

test('a sheet in view that others and its own formulas read can be deleted, and is whole again if that is undone', async () => {
  const { page } = open;
  await chooseSample(page, 'US/water-book.xlsx');
  const content = () =>
    page.evaluate(async () => {
      await window.workbench.spreadsheet.settled();
      const { sheets, names } = window.workbench.spreadsheet.save();
      const cells = ({ cells: all }: (typeof sheets)[number]) =>
        all.map(({ row, column, formula, value }) => [row, column, formula, value]);
      return { names, sheets: sheets.map((sheet) => [sheet.name, cells(sheet), sheet.validations, sheet.conditions]) };
    });
  const before = await content();
  const now = await page.evaluate(() => {
    const { facade } = window.workbench.spreadsheet.current();
    const tests = facade.getSheetByName('Tests')!;
    facade.setActiveSheet(tests);
    return [facade.deleteSheet(tests), facade.getSheetByName('Tests')];
  });
  expect(now).toEqual([true, null]);
  const range = { row: 4, column: 2, rows: 1, columns: 1 };
  const broken = await page.evaluate((place) => window.workbench.host.read({ sheet: 'Verdict', range: place }), range);
  expect(broken.formulas[0]![0]).toContain('#REF!');
  await page.click('#undo');
  expect(await content()).toEqual(before);
  expect(open.faults).toEqual([]);
});

test('deleted rows and columns have their own heights and widths again if that is undone', async () => {
  const { page } = open;
  const [columnWidths, rowHeights] = [
    { 1: 20, 4: 30, 6: 12 },
    { 2: 40, 3: 24, 7: 33 },
  ];
  await page.evaluate(
    (sizes) =>
      window.workbench.spreadsheet.open({
        sheets: [{ name: 'Sheet 1', cells: [{ row: 9, column: 9, value: 1 }], ...sizes }],
      }),
    { columnWidths, rowHeights },
  );
  const sizes = () =>
    page.evaluate(() => {
      const [sheet] = window.workbench.spreadsheet.save().sheets;
      return [sheet!.columnWidths, sheet!.rowHeights];
    });
  const before = await sizes();
  await change(page, [{ sheet: 'Sheet 1', rows: [1, -3], columns: [3, -2] }]);
  expect(await sizes()).not.toEqual(before);
  await page.click('#undo');
  await page.click('#undo');
  expect(await sizes()).toEqual(before);
  await page.click('#redo');
  await page.click('#undo');
  expect(await sizes()).toEqual(before);
  expect(open.faults).toEqual([]);
});

test('work that was left and opened again is saved as it would have been at once', async () => {
  const { page } = open;
  page.on('dialog', (dialog) => void dialog.accept());
  await chooseSample(page, 'US/stocking-scenarios.xlsx');
  const begin = async () => {
    await change(page, [{ sheet: 'Compare', rows: [1, 2] }]);
    return page.evaluate(async () => {
      const { facade } = window.workbench.spreadsheet.current();
      const before = Number(document.body.dataset.kept ?? 0);
      facade.getSheetByName('Compare')!.setName('Side by side');
      facade.duplicateSheet(facade.getSheetByName('Side by side')!)!.setName('Again');
      await window.workbench.spreadsheet.settled();
      return before;
    });
  };
  const goOn = () =>
    change(page, [
      { sheet: 'Side by side', columns: [1, 1] },
      { sheet: 'Again', rows: [1, -1] },
    ]);
  const parts = async () =>
    (await readWorkbook(await save(page))).sheets.map(({ cells, ...sheet }) => ({
      ...sheet,
      cells: cells.map(({ row, column, formula, note }) => [row, column, formula, note]),
    }));
  await begin();
  await goOn();
  const atOnce = await parts();

  await chooseSample(page, 'US/water-book.xlsx');
  await chooseSample(page, 'US/stocking-scenarios.xlsx');
  const kept = await begin();
  await page.waitForFunction((before) => Number(document.body.dataset.kept ?? 0) > before, kept);
  await page.reload();
  await page.waitForSelector('body[data-ready]');
  await page.locator('#draft-open').click();
  await expect.poll(() => page.evaluate(() => window.workbench.host.sheets())).toContain('Again');
  await page.evaluate(() => window.workbench.spreadsheet.settled());
  await goOn();
  expect(await parts()).toEqual(atOnce);
  expect(open.faults).toEqual([]);
});

test('rows and columns that are hidden in the grid are hidden in the file, and in the grid when it is opened', async () => {
  const { page } = open;
  await chooseSample(page, 'US/water-book.xlsx');
  await page.evaluate(() => {
    const sheet = window.workbench.spreadsheet.current().facade.getSheetByName('Tests')!;
    sheet.hideRows(7, 2);
    sheet.hideColumns(4);
  });
  await change(page, [{ sheet: 'Tests', rows: [1, 1] }]);
  const bytes = await save(page);
  const tests = (await readWorkbook(bytes)).sheets.find(({ name }) => name === 'Tests')!;
  expect([tests.hiddenRows, tests.hiddenColumns]).toEqual([[8, 9], [4]]);
  const file = { name: 'hidden.xlsx', mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) };
  await withoutSaving(page, () => page.setInputFiles('#open', file));
  const visible = await page.evaluate(() => {
    const sheet = window.workbench.spreadsheet.current().facade.getSheetByName('Tests')!.getSheet();
    return [
      [7, 8, 9, 10].map((row) => sheet.getRowVisible(row)),
      [3, 4, 5].map((column) => sheet.getColVisible(column)),
    ];
  });
  expect(visible).toEqual([
    [true, false, false, true],
    [true, false, true],
  ]);
  expect(open.faults).toEqual([]);
});

test.each([
  ['a row into it, above its last row', 'rows', [1, 1, 7], 'B2:B8'],
  ['rows from both sides of its end, above it', 'rows', [7, 2, 2], 'B5:B9'],
  ['its last row above its first', 'rows', [7, 1, 2], 'B3:B8'],
  ['its last row out of it, below the next', 'rows', [7, 1, 9], 'B3:B7'],
  ['columns from both sides of its start into it', 'columns', [0, 2, 3], 'A3:D8'],
] as const)(
  'the range of a formula and of a name after moving %s, and if that is undone',
  async (_, lines, move, wanted) => {
    const { page } = open;
    const range = lines === 'rows' ? 'B3:B8' : 'B3:D8';
    const refersTo = (text: string) => `'Sheet 1'!${text.replaceAll(/([A-Z])(\d)/g, '$$$1$$$2')}`;
    const now = await page.evaluate(
      async ([text, name, across, [first, count, to]]) => {
        const { spreadsheet } = window.workbench;
        const cells = [
          ...Array.from({ length: 12 }, (__, row) => ({ row, column: 1, value: 2 ** row })),
          { row: 40, column: 20, formula: `=SUM(${text})` },
        ];
        spreadsheet.open({ sheets: [{ name: 'Sheet 1', cells }], names: [{ name: 'Summed', refersTo: name }] });
        const { facade } = spreadsheet.current();
        const sheet = facade.getActiveSheet();
        const read = async () => {
          await spreadsheet.settled();
          return [sheet.getRange(40, 20).getFormula(), spreadsheet.save().names?.[0]?.refersTo];
        };
        if (across === 'rows') sheet.moveRows(sheet.getRange(first, 0, count, 1), to);
        else sheet.moveColumns(sheet.getRange(0, first, 1, count), to);
        const after = await read();
        facade.undo();
        return [after, await read()];
      },
      [range, refersTo(range), lines, move] as const,
    );
    expect(now).toEqual([
      [`=SUM(${wanted})`, refersTo(wanted)],
      [`=SUM(${range})`, refersTo(range)],
    ]);
    expect(open.faults).toEqual([]);
  },
);
