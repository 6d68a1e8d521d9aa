import { beforeAll, expect, it } from 'vitest';
import { readPattern } from '../../src/formulas/cone/read-pattern';
import { layPieces } from '../../src/formulas/cut/lay-pieces';
import type { PieceSearchHolder } from '../../src/formulas/cut/lay-pieces-later';
import { cellName } from '../../src/hosts/address';
import type { Block } from '../../src/hosts/sheet-host';
import { openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { CellScalar, WorkbookData } from '../../src/hosts/workbook-model';
import { longSets, referenceSets } from '../../src/tools/bench/cut-reference-sets';
import { readyMade } from '../../src/workbooks/sheets/ready-made';
import { shortShare, withShortSearches } from '../functions/short-searches';
import { sampleAsJson, sampleWorkbook } from '../task-pane/sample-host';
import { cells, type OpenPage, openWorkbench, withoutSaving } from './open-workbench';
import { servedSite } from './served-site';

// As the page searches. That a whole search gives the same here and there is seen by the plan of the first sample, which the
// page takes from the build or searches for (kept-plans).
withShortSearches();

const site = servedSite();
let open: OpenPage;

beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
});

/** Opens the cells of a sample in the page, which calculates them. */
async function openData(path: string): Promise<WorkbookData> {
  await open.page.evaluate((data) => window.workbench.spreadsheet.open(JSON.parse(data)), await sampleAsJson(path));
  return sampleWorkbook(path);
}

const place = { row: 0, column: 0, rows: 90, columns: 20 };

/** Browsers and Node differ in the last digit of sines and powers. */
const digits = (value: unknown): unknown => (typeof value === 'number' ? Number(value.toPrecision(12)) : value);

/** What every cell shows, without words of errors, which differ by where they are read. */
function shown(blocks: readonly { sheet: string; values: Block['values'] }[]): Record<string, unknown> {
  const cells: Record<string, unknown> = {};
  for (const { sheet, values } of blocks)
    values.forEach((line, row) => {
      line.forEach((value, column) => {
        if (value !== '')
          cells[`${sheet}!${cellName(row, column)}`] = typeof value === 'object' ? value.error.code : digits(value);
      });
    });
  return cells;
}

it.each(readyMade.map(({ id }) => id))('the page computes the same as a new workbook: %s', async (id) => {
  const workbook = await openData(`US/${id}`);
  const inputs = workbook.sheets.flatMap(({ name, cells }) =>
    cells
      .filter(
        ({ formula, value, style }) => formula === undefined && typeof value === 'number' && style?.locked === false,
      )
      .map((cell) => ({ ...cell, sheet: name })),
  );
  const some = inputs.filter((_, index) => index % Math.ceil(inputs.length / 2) === 0);
  const scratch = await openHeadless(await sourceFunctions(), workbook);
  for (const { sheet, row, column, value } of some) {
    const entry: CellScalar = (value as number) + 1;
    scratch.setCells(sheet, row, column, [[entry]]);
    await scratch.recalculate('everything');
    await open.page.evaluate((write) => window.workbench.host.write([write]), { sheet, row, column, cells: [[entry]] });
    const wanted = shown(
      workbook.sheets.map(({ name }) => ({
        sheet: name,
        values: scratch.read(name, place).map((line) => line.map((cell) => cell.value)),
      })),
    );
    await expect
      .poll(
        async () => {
          const names = workbook.sheets.map(({ name }) => name);
          // So many cells get out of the page far faster as text, and are read once nothing is left to calculate.
          const blocks = await open.page.evaluate(
            async ([sheets, range]) => {
              await window.workbench.spreadsheet.settled();
              const read = sheets.map((one) => window.workbench.host.read({ sheet: one, range }));
              return JSON.stringify((await Promise.all(read)).map(({ sheet, values }) => ({ sheet, values })));
            },
            [names, place] as const,
          );
          return shown(JSON.parse(blocks) as { sheet: string; values: Block['values'] }[]);
        },
        { interval: 200 },
      )
      .toEqual(wanted);
  }
  scratch.dispose();
  expect(open.faults).toEqual([]);
});

it('the workbook that checks Excel passes all its claims in the page and sums them up in a line', async () => {
  const { page } = open;
  await withoutSaving(page, () => page.setInputFiles('#open', 'sample-workbooks/check-your-excel.xlsx'));
  await expect.poll(() => page.textContent('#title')).toBe('check-your-excel.xlsx');
  const line = async () =>
    (await cells(page, { sheet: 'Check', row: 2, column: 0, rows: 1, columns: 1 })).values[0]?.[0];
  const allPassed = /^Siltstead check: (\d+) of \1 passed$/;
  await expect.poll(line).toMatch(allPassed);
  // The page has computed it, and not only read it from the file.
  await page.evaluate(() => window.workbench.host.write([{ sheet: 'Check', row: 4, column: 7, cells: [[30]] }]));
  await expect.poll(line).toMatch(/^Siltstead check: \d+ of \d+ passed; not 2/);
  await page.click('#undo');
  await expect.poll(line).toMatch(allPassed);
});

it('the search for cut plans lays every piece to the last digit where it lies here', async () => {
  const sets = [...referenceSets, ...longSets].filter((_, i) => i % 3 === 0);
  const jobs = sets.map(({ patterns, sheetLength, sheetWidth, gap }) => {
    const pieces = patterns.flatMap((row, i) =>
      Array.from({ length: row.pieces }, () => readPattern(row, 'patterns', i + 1)),
    );
    const sheet = { length: sheetLength, width: sheetWidth, gap };
    return [pieces, { ...sheet, effort: 0.1 / shortShare, needsAll: true, lacksSome: false }] as const;
  });
  // A browser and Node may end a sine in different digits, and compiled code runs where interpreted code ran first.
  const there = await open.page.evaluate((all) => {
    const lay = (window as PieceSearchHolder).siltsteadLayPieces;
    return all.map((job) => lay?.(...job));
  }, jobs);
  expect(there).toEqual(jobs.map((job) => layPieces(...job)));
});

it('a bank with one drum less costs the sum of its parts, divided by the drums', async () => {
  const workbook = await openData('US/materials-sheet');
  const read = (sheet: string, row: number, column: number) =>
    open.page.evaluate(
      ([name, range]) => window.workbench.host.read({ sheet: name, range }).then(({ values }) => values[0]![0]),
      [sheet, { row, column, rows: 1, columns: 1 }] as const,
    );
  const drums = async () => (await read('Bank', 4, 1)) as number;
  const each = async () => (await read('Build or buy', 6, 1)) as number;
  await expect.poll(each).toBeGreaterThan(0);
  const before = [await drums(), await each()] as const;
  await open.page.evaluate(() => window.workbench.host.write([{ sheet: 'Bank', row: 4, column: 1, cells: [[3]] }]));
  const scratch = await openHeadless(await sourceFunctions(), workbook);
  scratch.setCells('Bank', 4, 1, [[3]]);
  await scratch.recalculate('everything');
  const wanted = scratch.read('Build or buy', { row: 6, column: 1, rows: 1, columns: 1 })[0]![0]!.value as number;
  scratch.dispose();
  expect(before[0]).toBe(4);
  // The old total over the new count is what stood there while spills were not followed.
  expect(Math.abs(wanted - (before[0] * before[1]) / 3)).toBeGreaterThan(1);
  await expect.poll(each).toBeCloseTo(wanted, 9);
});
