import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { chooseSample, type OpenPage, openWorkbench } from './open-workbench';
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
