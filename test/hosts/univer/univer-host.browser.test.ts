import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { RunningServer } from '../../../src/command-line/serve-site';
import type { SheetHost } from '../../../src/hosts/sheet-host';
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
beforeEach(() => openBlank(page));

/** Calls the host as the pane does; a refusal is returned as its reason and sentence. */
function callHost<K extends keyof SheetHost>(name: K, ...args: readonly unknown[]): Promise<unknown> {
  return page.evaluate(
    async ([method, given]) => {
      try {
        const host = window.workbench.host as unknown as Record<string, (...parts: unknown[]) => Promise<unknown>>;
        return await host[method]!(...given);
      } catch (thrown) {
        const { reason, message } = thrown as { reason?: string; message: string };
        return { reason, message };
      }
    },
    [name, args] as const,
  );
}

const range = (row: number, column: number, rows = 1, columns = 1) => ({ row, column, rows, columns });

describe('the workbench as the task pane sees it', () => {
  it('writes values, text and formulas as what they are, and reads them back', async () => {
    await callHost('write', [{ sheet, row: 0, column: 0, cells: [[1.5, '3/4', true, '=A1*2', '1e3', '']] }]);
    const block = await cells(page, { sheet, ...range(0, 0, 1, 6) }, ({ values }) => values[0]![3] !== '');
    expect(block.values).toEqual([[1.5, '3/4', true, 3, '1e3', '']]);
    expect(block.formulas[0]![3]).toBe('=A1*2');
  });

  it('does not change cells that a write skips', async () => {
    await callHost('write', [{ sheet, row: 0, column: 0, cells: [['a', 'b', 'c']] }]);
    await page.evaluate(() =>
      window.workbench.host.write([{ sheet: 'Sheet 1', row: 0, column: 0, cells: [['x', undefined, '']] }]),
    );
    expect(await cells(page, { sheet, ...range(0, 0, 1, 3) })).toMatchObject({ values: [['x', 'b', '']] });
  });

  it('undoes several blocks with formats in one step', async () => {
    await callHost('write', [{ sheet, row: 0, column: 0, cells: [['before']] }]);
    await callHost('write', [
      { sheet, row: 0, column: 0, cells: [['after', 2]], numberFormat: '0.00', bold: true, widths: [30] },
      { sheet, row: 4, column: 0, cells: [['more']] },
    ]);
    expect(await cells(page, { sheet, ...range(0, 0, 5, 1) })).toMatchObject({
      values: [['after'], [''], [''], [''], ['more']],
    });
    await page.click('#undo');
    const block = await cells(page, { sheet, ...range(0, 0, 5, 2) }, ({ values }) => values[0]![0] === 'before');
    expect(block.values[4]).toEqual(['', '']);
    expect(block.values[0]).toEqual(['before', '']);
  });

  it('brings what it selects into view, on another sheet too', async () => {
    await callHost('addSheet', 'Far');
    for (const [name, row] of [
      ['Far', 400],
      [sheet, 300],
      [sheet, 0],
    ] as const) {
      await callHost('select', { sheet: name, range: range(row, 15) });
      await expect
        .poll(() =>
          page.evaluate(
            ([down, across]) => {
              const visible = window.workbench.spreadsheet.current().facade.getActiveSheet().getVisibleRange();
              if (visible === null) return false;
              const { startRow, endRow, startColumn, endColumn } = visible;
              return startRow <= down! && down! <= endRow && startColumn <= across! && across! <= endColumn;
            },
            [row, 15],
          ),
        )
        .toBe(true);
    }
    expect(await page.evaluate(() => window.workbench.host.selection())).toMatchObject({ sheet, range: range(0, 15) });
  });

  it('refuses to change part of a spill, and then writes nothing', async () => {
    await callHost('write', [{ sheet, row: 0, column: 0, cells: [['={1;2;3}']] }]);
    await cells(page, { sheet, ...range(0, 0, 3) }, ({ values }) => values[2]![0] === 3);
    const refusal = await callHost('write', [
      { sheet, row: 0, column: 5, cells: [['not this']] },
      { sheet, row: 1, column: 0, cells: [['nor this']] },
    ]);
    expect(refusal).toMatchObject({ reason: 'occupied', message: expect.stringContaining('A2') });
    expect(await cells(page, { sheet, ...range(0, 0, 3, 6) })).toMatchObject({
      values: [
        [1, '', '', '', '', ''],
        [2, '', '', '', '', ''],
        [3, '', '', '', '', ''],
      ],
    });
  });

  it('reads the used cells of every sheet, spills included', async () => {
    await callHost('write', [{ sheet, row: 2, column: 1, cells: [['={1,2;3,4}']] }]);
    await cells(page, { sheet, ...range(2, 1, 2, 2) }, ({ values }) => values[1]![1] === 4);
    await callHost('addSheet', 'Empty');
    expect(await callHost('readUsed')).toMatchObject([
      {
        sheet,
        range: range(2, 1, 2, 2),
        values: [
          [1, 2],
          [3, 4],
        ],
        spills: [range(2, 1, 2, 2)],
      },
    ]);
  });

  it('adds and removes sheets, and says if a name is in use or missing', async () => {
    await callHost('addSheet', 'Plan');
    expect(await callHost('sheets')).toEqual([sheet, 'Plan']);
    expect(await callHost('addSheet', 'Plan')).toMatchObject({ reason: 'taken' });
    await callHost('removeSheet', 'Plan');
    expect(await callHost('sheets')).toEqual([sheet]);
    expect(await callHost('removeSheet', 'Plan')).toMatchObject({ reason: 'missing' });
    expect(await callHost('read', { sheet: 'Plan', range: range(0, 0) })).toMatchObject({ reason: 'missing' });
  });

  it('sets, changes and removes names that formulas use', async () => {
    await callHost('write', [{ sheet, row: 0, column: 0, cells: [['US', 'metric', '=SiltUnits']] }]);
    await callHost('setName', { name: 'SiltUnits', refersTo: "'Sheet 1'!$A$1" });
    await cells(page, { sheet, ...range(0, 2) }, ({ values }) => values[0]![0] === 'US');
    await callHost('setName', { name: 'SiltUnits', refersTo: "'Sheet 1'!$B$1" });
    expect(await callHost('names')).toEqual([{ name: 'SiltUnits', refersTo: "'Sheet 1'!$B$1" }]);
    await cells(page, { sheet, ...range(0, 2) }, ({ values }) => values[0]![0] === 'metric');
    await callHost('removeName', 'SiltUnits');
    expect(await callHost('names')).toEqual([]);
    expect(await callHost('removeName', 'SiltUnits')).toMatchObject({ reason: 'missing' });
  });

  it('calculates what changed in the last moment of a calculation, when it can no longer be stopped', async () => {
    await callHost('write', [{ sheet, row: 4, column: 0, cells: [[1, '=A5*2']] }]);
    await cells(page, { sheet, ...range(4, 1) }, ({ values }) => values[0]![0] === 2);
    await page.evaluate(() => {
      const { api, current } = window.workbench.spreadsheet;
      const cell = current().facade.getSheets()[0]!.getRange('A5');
      const atEnd = api.onBeforeCommandExecute(({ id, params }) => {
        const isEnd = (params as { functionsExecutedState?: number } | undefined)?.functionsExecutedState === 3;
        if (!id.endsWith('set-formula-calculation-notification') || !isEnd) return;
        atEnd.dispose();
        // The spreadsheet waits a little before it looks at a change; it now does so at once.
        const later = window.setTimeout;
        const atOnce = (work: () => void): number => {
          work();
          return 0;
        };
        window.setTimeout = atOnce as unknown as typeof window.setTimeout;
        cell.setValue(21);
        window.setTimeout = later;
      });
      cell.setValue(7);
    });
    await cells(page, { sheet, ...range(4, 1) }, ({ values }) => values[0]![0] === 42);
  });

  it('inserts whole sheets with their styles, names and notes', async () => {
    const workbook = {
      sheets: [
        {
          name: 'Ready made',
          columnWidths: { 0: 30 },
          cells: [
            { row: 0, column: 0, value: 'height', style: { bold: true }, note: 'of the cone' },
            { row: 0, column: 1, formula: '=Height*2' },
            { row: 1, column: 0, value: 9.25, style: { numberFormat: '0.0' } },
          ],
        },
      ],
      names: [{ name: 'Height', refersTo: "'Ready made'!$A$2" }],
    };
    await callHost('insert', workbook);
    await cells(page, { sheet: 'Ready made', ...range(0, 1) }, ({ values }) => values[0]![0] === 18.5);
    const saved = await page.evaluate(() => window.workbench.spreadsheet.save());
    expect(saved.sheets[1]).toMatchObject({
      name: 'Ready made',
      columnWidths: { 0: 30 },
      cells: [
        { value: 'height', style: { bold: true }, note: 'of the cone' },
        { formula: '=Height*2', value: 18.5 },
        { value: 9.25, style: { numberFormat: '0.0' } },
      ],
    });
    expect(await callHost('insert', workbook)).toMatchObject({ reason: 'taken' });
    expect(await callHost('sheets')).toEqual([sheet, 'Ready made']);
  });

  it('reports selections and changed cells until it is stopped', async () => {
    const told = await page.evaluate(async () => {
      const { host } = window.workbench;
      const count = { selections: 0, changes: 0 };
      const stopSelections = await host.onSelectionChanged(() => {
        count.selections += 1;
      });
      const stopChanges = await host.onCellsChanged(() => {
        count.changes += 1;
      });
      /** Does something and waits until a listener of its own has heard both of the selection and of the cells. */
      const heard = async (act: () => Promise<unknown>): Promise<void> => {
        const stops: (() => void)[] = [];
        const both = ['onSelectionChanged', 'onCellsChanged'] as const;
        const all = Promise.all(
          both.map(
            (event) => new Promise<void>((resolve) => void host[event](resolve).then((stop) => stops.push(stop))),
          ),
        );
        await act();
        await all;
        for (const stop of stops) stop();
      };
      const place = { sheet: 'Sheet 1', range: { row: 5, column: 2, rows: 2, columns: 1 } };
      await heard(async () => {
        await host.select(place);
        await host.write([{ sheet: 'Sheet 1', row: 0, column: 0, cells: [[1]] }]);
      });
      const during = { ...count };
      stopSelections();
      stopChanges();
      await heard(async () => {
        await host.select({ ...place, range: { ...place.range, row: 9 } });
        await host.write([{ sheet: 'Sheet 1', row: 0, column: 0, cells: [[2]] }]);
      });
      return { during, after: count, selected: (await host.selection()).range };
    });
    expect(told.during.selections).toBeGreaterThan(0);
    expect(told.during.changes).toBeGreaterThan(0);
    expect(told.after).toEqual(told.during);
    expect(told.selected).toEqual({ row: 9, column: 2, rows: 2, columns: 1 });
  });
});
