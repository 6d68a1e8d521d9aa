import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { cellName } from '../../src/hosts/address';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { CellResult, WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { recalculateFile } from '../../src/workbooks/recalculate-file';
import { withShortSearches } from '../functions/short-searches';
import { chooseSample, type OpenPage, openWorkbench } from './open-workbench';
import { servedSite } from './served-site';

/**
 * Edits as fast as somebody who does not wait for results: numbers, text, blanks, cells typed over formulas, undo, redo,
 * rows that come and go. Once it is quiet, the saved file has what its formulas give when all are computed anew.
 */
const samples = ['cone-cut-plan', 'stocking-scenarios', 'water-book', 'harvest-book', 'own-figures', 'materials-sheet'];
const edits = 14;

// As the page searches.
withShortSearches();

const site = servedSite();
let open: OpenPage;
beforeAll(async () => {
  open = await openWorkbench(site.browser, site.address);
});

/** Makes edits that follow from a seed, at moments that follow from it too, and gives them in words. */
function editAtRandom(seed: number): Promise<readonly string[]> {
  return open.page.evaluate(
    async ([start, count]) => {
      let state = (start * 2654435761) % 2 ** 32;
      const random = (): number => {
        state = (state * 1664525 + 1013904223) % 2 ** 32;
        return state / 2 ** 32;
      };
      const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
      const { spreadsheet, host } = window.workbench;
      const { facade } = spreadsheet.current();
      const blocks = await host.readUsed();
      const all = blocks.flatMap(({ sheet, range, values, formulas, spills }) =>
        values.flatMap((line, down) =>
          line.map((value, across) => {
            const [row, column] = [range.row + down, range.column + across];
            const isSpill = spills.some(
              (spill) =>
                row >= spill.row &&
                row < spill.row + spill.rows &&
                column >= spill.column &&
                column < spill.column + spill.columns,
            );
            return { sheet, row, column, value, formula: formulas[down]?.[across], isSpill };
          }),
        ),
      );
      const numbers = all.filter(({ value, formula, isSpill }) => typeof value === 'number' && !formula && !isSpill);
      const formulas = all.filter(({ formula }) => formula);
      const done: string[] = [];
      for (let i = 0; i < count; i += 1) {
        const { sheet, row, column, value } = pick(numbers);
        const rangeOf = (at: { sheet: string; row: number; column: number }) =>
          facade.getSheetByName(at.sheet)!.getRange(at.row, at.column);
        const kind = random();
        if (kind < 0.5) {
          const next = Number(value) * (0.8 + 0.4 * random());
          done.push(`${sheet} ${row},${column} = ${next}`);
          rangeOf({ sheet, row, column }).setValue(next);
        } else if (kind < 0.56) {
          done.push(`${sheet} ${row},${column} = text`);
          rangeOf({ sheet, row, column }).setValue('text');
        } else if (kind < 0.62) {
          done.push(`${sheet} ${row},${column} cleared`);
          rangeOf({ sheet, row, column }).clearContent();
        } else if (kind < 0.7) {
          const over = pick(formulas);
          done.push(`${over.sheet} ${over.row},${over.column} typed over`);
          rangeOf(over).setValue(random() < 0.5 ? 'over' : 5);
        } else if (kind < 0.86) {
          done.push('undo');
          facade.undo();
        } else if (kind < 0.9) {
          done.push('redo');
          facade.redo();
        } else {
          const at = Math.floor(12 * random());
          await host.select({ sheet, range: { row: at, column: 0, rows: 1, columns: 1 } });
          const isMore = random() < 0.6;
          done.push(`${sheet} row ${at} ${isMore ? 'inserted' : 'deleted'}`);
          if (isMore) facade.getSheetByName(sheet)!.insertRowsBefore(at, 1);
          else facade.getSheetByName(sheet)!.deleteRows(at, 1);
        }
        // Some frames of the page later: what is edited must be right at every moment.
        const frames = random() < 0.7 ? Math.floor(15 * random()) : 0;
        for (let frame = 0; frame < frames; frame += 1) await new Promise(requestAnimationFrame);
      }
      return done;
    },
    [seed, edits] as const,
  );
}

function isSame(one: CellResult | undefined, other: CellResult | undefined): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one));
  return JSON.stringify(one) === JSON.stringify(other);
}

/** The cells of a workbook that have another value in the other. */
function different(one: WorkbookData, other: WorkbookData): readonly string[] {
  return one.sheets.flatMap(({ name, cells }, index) => {
    const there = new Map(other.sheets[index]?.cells.map((cell) => [cellName(cell.row, cell.column), cell.value]));
    return cells
      .filter(({ row, column, value }) => !isSame(value, there.get(cellName(row, column))))
      .map(({ row, column, value }) => {
        const place = cellName(row, column);
        return `${name}!${place}: ${JSON.stringify(value)}, computed anew ${JSON.stringify(there.get(place))}`;
      });
  });
}

test.each(samples.map((sample, seed) => ({ sample: `${seed % 2 === 0 ? 'US' : 'metric'}/${sample}.xlsx`, seed })))(
  '$sample',
  async ({ sample, seed }) => {
    await chooseSample(open.page, sample);
    const done = await editAtRandom(seed + 1);
    const [download] = await Promise.all([open.page.waitForEvent('download'), open.page.click('#save')]);
    const bytes = new Uint8Array(readFileSync(await download.path()));
    const anew = await recalculateFile(await sourceFunctions(), bytes);
    expect(anew.kept, done.join('; ')).toEqual([]);
    expect(different(await readWorkbook(bytes), await readWorkbook(anew.bytes)), done.join('; ')).toEqual([]);
    expect(open.faults).toEqual([]);
  },
);
