import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { type OpenPage, openWorkbench } from './open-workbench';
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
