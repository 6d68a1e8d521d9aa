import type { Page } from 'playwright-core';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { cellName } from '../../src/hosts/address';
import { cellPoint, cells, chooseSample, type OpenPage, openBlank, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

// Tab, Enter and the two with Shift as Microsoft's page "Keyboard shortcuts in Excel" has them: one cell to the right,
// down, left and up; "Fill data automatically in worksheet cells" for Enter under the cell where a row was begun by Tab.

const site = servedSite();
let open: OpenPage;
let page: Page;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
  page = open.page;
});
afterEach(() => expect(open.faults).toEqual([]));

async function selected(): Promise<string> {
  const { sheet, range } = await page.evaluate(() => window.workbench.host.selection());
  return `${sheet}!${cellName(range.row, range.column)}`;
}

/** The page itself takes the keys, and the box of names shows the selected cell and no name. */
async function isInGrid(): Promise<void> {
  const [focused, shown] = await page.evaluate(() => [
    document.getElementById('grid')?.contains(document.activeElement),
    document.querySelector<HTMLInputElement>('input[aria-label^="Selected cells"]')?.value,
  ]);
  expect(focused).toBe(true);
  expect((await selected()).endsWith(`!${shown}`)).toBe(true);
}

/** Presses keys as somebody does who does not look at the screen; everything that is no key is typed. */
async function press(...keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    if (/^(?:Shift\+)?(?:Tab|Enter|Escape|ArrowDown)$/.test(key)) await page.keyboard.press(key);
    else await page.keyboard.type(key);
  }
}

/** Selects a cell as the pane does; the keys go to it if the grid has the focus. */
async function show(sheet: string, row: number, column: number): Promise<void> {
  await page.evaluate((place) => window.workbench.host.select(place), {
    sheet,
    range: { row, column, rows: 1, columns: 1 },
  });
}

async function click(row: number, column: number): Promise<void> {
  const { x, y } = await cellPoint(page, row, column);
  await page.mouse.click(x, y);
}

test('Enter goes under the cell where a row of drums was begun, and to no other name or sheet', async () => {
  await click(3, 2);
  // From the diameter in the middle of the first drum's row, over girth and wall, to its height.
  await show('Drums', 4, 2);
  await press('23', 'Tab', 'Tab', 'Tab', '3', 'Tab', '9', 'Enter');
  await expect.poll(selected).toBe('Drums!C6');
  await isInGrid();
  const row = await cells(page, { sheet: 'Drums', row: 4, column: 2, rows: 1, columns: 5 });
  expect(row.values).toEqual([[23, '', '', 3, 9]]);
  await press('Enter');
  await expect.poll(selected).toBe('Drums!C7');
  // From a name to the next name: the rows of drums are entered one after the other.
  await show('Drums', 7, 0);
  await press('Reed', 'Tab', 'honey', 'Tab', '20', 'Enter');
  await expect.poll(selected).toBe('Drums!A9');
  await press('Rush', 'Tab', 'syrup', 'Tab', '21', 'Enter');
  await expect.poll(selected).toBe('Drums!A10');
  await isInGrid();
  const added = await cells(page, { sheet: 'Drums', row: 7, column: 0, rows: 2, columns: 3 });
  expect(added.values).toEqual([
    ['Reed', 'honey', 20],
    ['Rush', 'syrup', 21],
  ]);
  expect(await page.textContent('#title')).toBe('cone-cut-plan.xlsx, not saved');
});

test('Enter goes down by one after another cell was clicked, shown or opened, wherever Tab was pressed before', async () => {
  await openBlank(page);
  await click(2, 1);
  await press('1', 'Tab', '2', 'Tab');
  await expect.poll(selected).toBe('Sheet 1!D3');
  await click(8, 5);
  await press('3', 'Enter');
  await expect.poll(selected).toBe('Sheet 1!F10');
  await press('Tab', 'Tab');
  await show('Sheet 1', 12, 6);
  await press('4', 'Enter');
  await expect.poll(selected).toBe('Sheet 1!G14');
  await press('5', 'Tab', '6', 'ArrowDown', '7', 'Enter');
  await expect.poll(selected).toBe('Sheet 1!H16');
  await press('Tab');
  await openBlank(page);
  await click(4, 4);
  await press('8', 'Enter');
  await expect.poll(selected).toBe('Sheet 1!E6');
});

test('Shift with Tab or Enter goes back by one cell, whether or not something is being typed', async () => {
  await openBlank(page);
  await click(4, 4);
  await press('Shift+Tab');
  await expect.poll(selected).toBe('Sheet 1!D5');
  await press('Shift+Enter');
  await expect.poll(selected).toBe('Sheet 1!D4');
  await press('Shift+Tab', 'Enter');
  await expect.poll(selected).toBe('Sheet 1!C5');
  await show('Sheet 1', 3, 3);
  await press('1', 'Tab', '2', 'Shift+Tab', '3', 'Tab', '4', 'Tab', '5', 'Enter');
  // The row goes on from where it was begun.
  await expect.poll(selected).toBe('Sheet 1!D5');
  await press('6', 'Shift+Enter', 'Shift+Enter');
  await expect.poll(selected).toBe('Sheet 1!D3');
  await press('=1+1', 'Shift+Tab', '=2+2', 'Shift+Enter', '7', 'Enter');
  await expect.poll(selected).toBe('Sheet 1!C3');
  await isInGrid();
  const typed = await cells(page, { sheet: 'Sheet 1', row: 1, column: 2, rows: 4, columns: 4 }, ({ values }) => {
    const [, formulas] = values;
    return formulas?.[0] === 4 && formulas[1] === 2;
  });
  expect(typed.values).toEqual([
    [7, '', '', ''],
    [4, 2, '', ''],
    ['', 3, 4, 5],
    ['', 6, '', ''],
  ]);
});

test('Tab and Shift+Tab stay inside several selected cells', async () => {
  await openBlank(page);
  const range = { row: 1, column: 1, rows: 2, columns: 2 };
  await click(1, 1);
  await page.evaluate((block) => window.workbench.host.select({ sheet: 'Sheet 1', range: block }), range);
  await press('1', 'Tab', '2', 'Tab', '3', 'Tab', '4', 'Tab', 'Shift+Tab', '5', 'Enter');
  const block = await cells(page, { sheet: 'Sheet 1', ...range }, ({ values }) => values[1]?.[1] === 5);
  expect(block.values).toEqual([
    [1, 2],
    [3, 5],
  ]);
  await chooseSample(page, 'US/cone-cut-plan.xlsx');
});
