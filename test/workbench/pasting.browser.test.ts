import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { withMovedParts } from '../../src/hosts/moved-parts';
import type { CellData } from '../../src/hosts/workbook-model';

import { cells, clickCell, type OpenPage, openWorkbench, shown } from './open-workbench';
import { servedSite } from './served-site';

const site = servedSite();
let open: OpenPage;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  await open.page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
});

/** The page's policy lets nothing apply the styles of a page that is pasted from, and says so. */
const faults = (): readonly string[] => open.faults.filter((text) => !text.startsWith('Applying inline style'));

const input = { fill: 'FFF8D6', numberFormat: '0.00' } as const;

/** Opens a workbook of one sheet with these cells. */
async function openCells(page: Page, filled: readonly CellData[]): Promise<void> {
  await page.evaluate(
    (given) => window.workbench.spreadsheet.open({ sheets: [{ name: 'Sheet 1', cells: given }] }),
    filled,
  );
  await shown(page);
}

test.each([
  ['lines of text', '12.5\n13.5', undefined],
  [
    'a formatted table',
    '12.5\n13.5',
    '<table><tr><td style="background:#f00;color:#fff">12.5</td></tr><tr><td>13.5</td></tr></table>',
  ],
])('input cells keep their fill and number format when %s are pasted into them', async (_, text, html) => {
  const { page } = open;
  const filled = [0, 1].map((row) => ({ row, column: 0, value: row, style: input }));
  await openCells(page, filled);
  await page.evaluate(
    ([plain, rich]) => {
      const blob = (content: string, type: string) => ({ [type]: new Blob([content], { type }) });
      const item = { ...blob(plain!, 'text/plain'), ...(rich === undefined ? {} : blob(rich, 'text/html')) };
      return navigator.clipboard.write([new ClipboardItem(item)]);
    },
    [text, html] as const,
  );
  await clickCell(page, 0, 0);
  await page.keyboard.press('Control+V');
  const place = { sheet: 'Sheet 1', row: 0, column: 0, rows: 2, columns: 1 };
  await cells(page, place, ({ values }) => values[0]?.[0] === 12.5 && values[1]?.[0] === 13.5);
  const styles = () =>
    page.evaluate(() => window.workbench.spreadsheet.save().sheets[0]!.cells.map(({ style }) => style));
  expect(await styles()).toEqual([input, input]);
  await page.click('#undo');
  await cells(page, place, ({ values }) => values[0]?.[0] === 0 && values[1]?.[0] === 1);
  expect(await styles()).toEqual([input, input]);
  expect(faults()).toEqual([]);
});

test('a pasted date is shown as a date where the cell has no number format, and a formula is computed', async () => {
  const { page } = open;
  await openCells(page, [{ row: 0, column: 0, value: '', style: { fill: 'FFF8D6' } }]);
  await page.evaluate(() => navigator.clipboard.writeText('2026-05-01\t=1+1\n2\t'));
  await clickCell(page, 0, 0);
  await page.keyboard.press('Control+V');
  const place = { sheet: 'Sheet 1', row: 0, column: 0, rows: 2, columns: 2 };
  // 2026-05-01 as a spreadsheet counts days.
  await cells(page, place, ({ values }) => values[0]?.[0] === 46143 && values[0]?.[1] === 2);
  const saved = await page.evaluate(() => window.workbench.spreadsheet.save().sheets[0]!.cells[0]!);
  expect(saved.style).toMatchObject({ fill: 'FFF8D6', numberFormat: 'yyyy-mm-dd' });
  expect(faults()).toEqual([]);
});

test('a note goes where its cell is cut and pasted, over the one that was there, and both are back if undone', async () => {
  const { page } = open;
  await openCells(page, [
    { row: 1, column: 0, value: 1, note: 'moves' },
    { row: 3, column: 2, value: 2, note: 'written over' },
    { row: 5, column: 2, value: 3, note: 'stays' },
  ]);
  const notes = () =>
    page.evaluate(() =>
      window.workbench.spreadsheet
        .save()
        .sheets[0]!.cells.flatMap(({ row, column, note }) => (note === undefined ? [] : [`${row},${column} ${note}`])),
    );
  const before = await notes();
  await clickCell(page, 1, 0);
  await page.keyboard.press('Control+X');
  // The spreadsheet fills the clipboard some moments later, and would paste what it held before.
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe('1');
  await clickCell(page, 3, 2);
  await page.keyboard.press('Control+V');
  await expect.poll(notes).toEqual(['3,2 moves', '5,2 stays']);
  await page.click('#undo');
  await expect.poll(notes).toEqual(before);
  expect(faults()).toEqual([]);
});

test('the list and the color of a cell go where it is cut and pasted, in the grid and in what is saved, and back if undone', async () => {
  const { page } = open;
  await page.evaluate(() =>
    window.workbench.spreadsheet.open({
      sheets: [
        {
          name: 'Sheet 1',
          cells: [{ row: 4, column: 1, value: 7 }],
          validations: [
            { range: 'B5', type: 'list', formulas: ['"7,8"'] },
            { range: 'D9', type: 'list', formulas: ['"over"'] },
          ],
          conditions: [{ range: 'B5:B6', formula: '=B5=7', style: { fill: 'FDE0E0' } }],
        },
      ],
    }),
  );
  await shown(page);
  const saved = async () => {
    const [sheet] = withMovedParts(await page.evaluate(() => window.workbench.spreadsheet.save())).sheets;
    return [
      sheet?.validations?.map(({ range, formulas }) => [range, ...formulas]),
      sheet?.conditions?.map(({ range, formula }) => [range, formula]),
    ];
  };
  const colors = () => page.evaluate(() => [...window.workbench.conditions.now().keys()]);
  await page.evaluate(() => window.workbench.conditions.update());
  expect(await colors()).toEqual(['4,1']);
  const before = await saved();
  await clickCell(page, 4, 1);
  await page.keyboard.press('Control+X');
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe('7');
  await clickCell(page, 8, 3);
  await page.keyboard.press('Control+V');
  await expect.poll(colors).toEqual(['8,3']);
  const after = [[['D9', '"7,8"']], [['B6 D9', '=B6=7']]];
  expect(await saved()).toEqual(after);
  await page.click('#undo');
  await expect.poll(colors).toEqual(['4,1']);
  expect(await saved()).toEqual(before);
  await page.click('#redo');
  await expect.poll(colors).toEqual(['8,3']);
  expect(await saved()).toEqual(after);
  expect(faults()).toEqual([]);
});

test('a copied input cell can still be typed into when the sheet is protected, in the grid and in the saved file', async () => {
  const { page } = open;
  await openCells(page, [
    { row: 0, column: 0, value: 7, style: { fill: 'FFF9DB', locked: false } },
    { row: 1, column: 0, value: 8, style: { fill: 'FFF9DB' } },
  ]);
  await clickCell(page, 0, 0);
  await page.keyboard.press('Control+C');
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe('7');
  await clickCell(page, 3, 2);
  await page.keyboard.press('Control+V');
  await cells(page, { sheet: 'Sheet 1', row: 3, column: 2, rows: 1, columns: 1 }, ({ values }) => values[0]?.[0] === 7);
  const styles = await page.evaluate(() =>
    window.workbench.spreadsheet.save().sheets[0]!.cells.map(({ style }) => style),
  );
  const unlocked = { fill: 'FFF9DB', locked: false };
  expect(styles).toEqual([unlocked, { fill: 'FFF9DB' }, unlocked]);
  // A cell that is not one takes its place whole, until that is undone.
  const first = () => page.evaluate(() => window.workbench.spreadsheet.save().sheets[0]!.cells[0]);
  await clickCell(page, 1, 0);
  await page.keyboard.press('Control+C');
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe('8');
  await clickCell(page, 0, 0);
  await page.keyboard.press('Control+V');
  await expect.poll(first).toMatchObject({ value: 8 });
  expect((await first())?.style).toEqual({ fill: 'FFF9DB' });
  await page.click('#undo');
  await expect.poll(first).toMatchObject({ value: 7 });
  expect((await first())?.style).toEqual(unlocked);
  expect(faults()).toEqual([]);
});

test('lines of text that are pasted into cells without a format get none, so that a saved file has no font for them', async () => {
  const { page } = open;
  await openCells(page, [{ row: 9, column: 0, value: 1 }]);
  await page.evaluate(() => navigator.clipboard.writeText('12.5\n13.5\nmoss'));
  await clickCell(page, 0, 0);
  await page.keyboard.press('Control+V');
  const place = { sheet: 'Sheet 1', row: 0, column: 0, rows: 3, columns: 1 };
  await cells(page, place, ({ values }) => values[0]?.[0] === 12.5 && values[2]?.[0] === 'moss');
  const styles = await page.evaluate(() =>
    window.workbench.spreadsheet.save().sheets[0]!.cells.map(({ style }) => style ?? null),
  );
  expect(styles).toEqual([null, null, null, null]);
  expect(faults()).toEqual([]);
});
