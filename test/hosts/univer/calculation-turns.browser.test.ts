import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { RunningServer } from '../../../src/command-line/serve-site';
import { closePages, launchBrowser } from '../../harness/browser';
import { cells, openBlank, openWorkbench, serveWorkbench } from '../../workbench/open-workbench';

const sheet = 'Sheet 1';
let browser: Browser;
let server: RunningServer;
let page: Page;

beforeAll(async () => {
  [browser, server] = await Promise.all([launchBrowser(), serveWorkbench()]);
  ({ page } = await openWorkbench(browser, server.address));
});
afterAll(async () => {
  await closePages(browser);
  await server?.close();
});

/** What a calculation reports, in order: its stages, by the engine's numbers, and its end. */
const moments = [1, 2, 3, 4, 5, 6, 7, 8, 'end'] as const;
/** Those that also come when no formula fills other cells than before. */
const againComing = [1, 2, 3, 4, 8, 'end'] as const;
type Moment = (typeof moments)[number];

/**
 * Changes A1 to 7, and the cells A2, A3, ... each at one moment of the calculations that follow, to 8, 9, ...
 * Resolves with false if one of the moments did not come.
 */
function changeAt(at: readonly Moment[]): Promise<boolean> {
  return page.evaluate(
    async (left) => {
      const { api, current, settled } = window.workbench.spreadsheet;
      const cell = (row: number) => current().facade.getSheets()[0]!.getRange(row, 0);
      // The spreadsheet waits a little before it looks at a change; it now does so at once.
      const later = window.setTimeout;
      const atOnce = (work: () => void): number => {
        work();
        return 0;
      };
      const change = (changed: number): void => {
        window.setTimeout = atOnce as unknown as typeof window.setTimeout;
        cell(changed).setValue(7 + changed);
        window.setTimeout = later;
      };
      let row = 0;
      const watching = api.onBeforeCommandExecute(({ id, params }) => {
        if (!id.endsWith('set-formula-calculation-notification') || left[row] === undefined) return;
        const { stageInfo, functionsExecutedState } = params as {
          stageInfo?: { stage: number };
          functionsExecutedState?: number;
        };
        const moment = stageInfo?.stage ?? (functionsExecutedState === undefined ? undefined : 'end');
        if (moment !== left[row]) return;
        row += 1;
        change(row);
      });
      cell(0).setValue(7);
      await settled();
      watching.dispose();
      return row === left.length;
    },
    [...at],
  );
}

const place = { sheet, row: 0, column: 1, rows: 3, columns: 1 };

/** Writes formulas of which one fills as many cells as A1 says, and waits for what they give while A1 to A3 hold 1. */
async function writeFormulas(): Promise<void> {
  await openBlank(page);
  const formulas = [0, 1, 2].map((row) => [1, `=SUM(A${row + 1},E1:E2)`]);
  await page.evaluate(
    ([name, lines]) =>
      window.workbench.host.write([
        { sheet: name!, row: 0, column: 0, cells: lines as (string | number)[][] },
        { sheet: name!, row: 0, column: 4, cells: [['=SEQUENCE(A1)']] },
      ]),
    [sheet, formulas] as const,
  );
  await cells(page, place, ({ values }) => values[0]![0] === 2);
}

/** Takes the changes of an earlier calculation back, so that the next one fills other cells again. */
async function takeBack(): Promise<void> {
  await page.evaluate(
    (name) => window.workbench.host.write([{ sheet: name, row: 0, column: 0, cells: [[1], [1], [1]] }]),
    sheet,
  );
  await cells(page, place, ({ values }) => values.flat().every((value) => value === 2));
}

test.each(moments)(
  'a change is calculated, and so is the next, if the first comes at moment %s of a calculation',
  async (first) => {
    await writeFormulas();
    for (const second of againComing) {
      expect(await changeAt([first, second]), `moments ${first}, ${second}`).toBe(true);
      const { values } = await page.evaluate(
        ({ sheet: name, ...range }) => window.workbench.host.read({ sheet: name, range }),
        place,
      );
      expect(values, `moments ${first}, ${second}`).toEqual([[10], [11], [12]]);
      await takeBack();
    }
  },
);

/**
 * Opens a workbook of ten formulas whose stored results are old, and at one moment of its first calculation types over
 * the third. Resolves with what the column shows in the end.
 */
function typeOverAt(at: Moment): Promise<unknown> {
  return page.evaluate(
    async ({ moment, name }) => {
      const { api, current, open, settled } = window.workbench.spreadsheet;
      let isTyped = false;
      const watching = api.onBeforeCommandExecute(({ id, params }) => {
        if (isTyped || !id.endsWith('set-formula-calculation-notification')) return;
        const { stageInfo, functionsExecutedState } = params as {
          stageInfo?: { stage: number };
          functionsExecutedState?: number;
        };
        if ((stageInfo?.stage ?? (functionsExecutedState === undefined ? undefined : 'end')) !== moment) return;
        isTyped = true;
        current().facade.getSheets()[0]!.getRange(2, 0).setValue('typed');
      });
      const rows = Array.from({ length: 10 }, (_, row) => ({ row, column: 0, formula: '=ROW()*10', value: 'old' }));
      open({ sheets: [{ name, cells: rows }] });
      await settled();
      watching.dispose();
      const range = { row: 0, column: 0, rows: 10, columns: 1 };
      const { values } = await window.workbench.host.read({ sheet: name, range });
      return isTyped ? values.flat() : 'the moment did not come';
    },
    { moment: at, name: sheet },
  );
}

// Results are put into cells in the same task as the end is reported, when nobody can type.
test.each(againComing.filter((moment) => moment !== 'end'))(
  'what is typed over a formula at moment %s of the first calculation stays, and all others are calculated',
  async (moment) => {
    expect(await typeOverAt(moment)).toEqual([10, 20, 'typed', 40, 50, 60, 70, 80, 90, 100]);
  },
);

/**
 * With a spill and cells that read it, types over the spill's formula at one moment of a calculation, and over another
 * cell at a moment of the calculation that follows. Resolves with what the readers show in the end.
 */
function typeOverSpillAt(first: Moment, second: Moment): Promise<unknown> {
  return page.evaluate(
    async ({ moments: left, name }) => {
      const { api, current, open, settled } = window.workbench.spreadsheet;
      let at = left.length;
      const watching = api.onBeforeCommandExecute(({ id, params }) => {
        if (left[at] === undefined || !id.endsWith('set-formula-calculation-notification')) return;
        const { stageInfo } = params as { stageInfo?: { stage: number } };
        if (stageInfo?.stage !== left[at]) return;
        current().facade.getSheets()[0]!.getRange(0, at).setValue('typed');
        at += 1;
      });
      const spill = { row: 0, column: 0, formula: '=SEQUENCE(5)', value: 1, spill: 'A1:A5' };
      const readers = [1, 2, 3, 4].map((row) => ({
        row,
        column: 3,
        formula: `=IF(A${row + 1}="","none",A${row + 1})`,
      }));
      const other = { row: 0, column: 5, formula: '=E1*2', value: 0 };
      open({ sheets: [{ name, cells: [spill, ...readers, other] }] });
      await settled();
      at = 0;
      current().facade.getSheets()[0]!.getRange(0, 4).setValue(3);
      await settled();
      watching.dispose();
      const range = { row: 1, column: 3, rows: 4, columns: 1 };
      const { values } = await window.workbench.host.read({ sheet: name, range });
      return at === left.length ? values.flat() : 'a moment did not come';
    },
    { moments: [first, second], name: sheet },
  );
}

test.each([1, 2, 3, 4, 8] as const)(
  'cells that read a spill are calculated again when its formula is typed over at moment %s, and another cell later',
  async (moment) => {
    for (const next of [1, 3, 8] as const)
      expect(await typeOverSpillAt(moment, next), `moments ${moment}, ${next}`).toEqual(Array(4).fill('none'));
  },
);
