import { afterEach, describe, expect, it } from 'vitest';
import { parseRange } from '../../../src/hosts/address';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import type { CellData, WorkbookData } from '../../../src/hosts/workbook-model';
import { exampleFunctions } from './example-functions';

let host: Headless | undefined;
afterEach(() => host?.dispose());

/** A sheet written as addresses and what is typed into them. */
function sheet(typed: Readonly<Record<string, string | number | boolean>>): CellData[] {
  return Object.entries(typed).map(([address, entry]) => {
    const { row, column } = parseRange(address)!;
    return typeof entry === 'string' && entry.startsWith('=')
      ? { row, column, formula: entry }
      : { row, column, value: entry };
  });
}

async function open(typed: Readonly<Record<string, string | number | boolean>>, more: Partial<WorkbookData> = {}) {
  host = await openHeadless(exampleFunctions, { sheets: [{ name: 'Sheet', cells: sheet(typed) }], ...more });
  return host;
}

function values(opened: Headless, range: string): unknown[][] {
  return opened.read('Sheet', parseRange(range)!).map((row) => row.map((cell) => cell.value));
}

describe('a workbook in the engine', () => {
  it('calculates formulas that depend on each other and on names', async () => {
    const opened = await open(
      { A1: 5, B1: '=A1*2', C1: '=B1+Extra', D1: "='Other sheet'!A1" },
      {
        sheets: [
          { name: 'Sheet', cells: sheet({ A1: 5, B1: '=A1*2', C1: '=B1+Extra', D1: "='Other sheet'!A1" }) },
          { name: 'Other sheet', cells: sheet({ A1: 'text' }) },
        ],
        names: [{ name: 'Extra', refersTo: "'Sheet'!$A$1" }],
      },
    );
    expect(values(opened, 'A1:D1')).toEqual([[5, 10, 15, 'text']]);
    expect(opened.sheets()).toEqual(['Sheet', 'Other sheet']);
  });

  it('spills rows, and says which cells a formula fills', async () => {
    const opened = await open({ B2: '=SILT.TEST.GRID("US",1)' });
    const cells = opened.read('Sheet', parseRange('B2:D3')!);
    expect(cells.map((row) => row.map((cell) => cell.value))).toEqual([
      [1, 'two', true],
      ['[[1]]', '', 0.1 + 0.2],
    ]);
    expect(cells[0]![0]).toMatchObject({ spill: 'B2:D3', formula: '=SILT.TEST.GRID("US",1)' });
    expect(cells[1]![1]!.formula).toBeUndefined();
  });

  it('passes spills through several levels', async () => {
    const opened = await open({
      A1: 1,
      A2: 2,
      C1: '=SILT.TEST.TWICE("US",A1:A2)',
      E1: '=SILT.TEST.TWICE("US",C1:C2)',
      G1: '=SILT.TEST.TWICE("US",E1:E2)',
      I1: '=SILT.TEST.TWICE("US",G1:G2)',
      K1: '=SUM(I1:I2)',
    });
    expect(values(opened, 'C1:K2')).toEqual([
      [2, '', 4, '', 8, '', 16, '', 48],
      [4, '', 8, '', 16, '', 32, '', ''],
    ]);
    opened.setCells('Sheet', 0, 0, [[10]]);
    await opened.recalculate();
    expect(values(opened, 'I1:K2')).toEqual([
      [160, '', 192],
      [32, '', ''],
    ]);
  });

  it('does not let the last results of a spill block the spill itself', async () => {
    host = await openHeadless(exampleFunctions, {
      sheets: [
        {
          name: 'Sheet',
          cells: [
            { row: 0, column: 0, formula: '=SILT.TEST.TWICE("US",{1;2})', value: 99, spill: 'A1:A2' },
            { row: 1, column: 0, value: 98, style: { numberFormat: '0.00' } },
          ],
        },
      ],
    });
    expect(values(host, 'A1:A2')).toEqual([[2], [4]]);
  });

  it('says why a spill does not fit', async () => {
    const opened = await open({ A1: '=SILT.TEST.TWICE("US",{1;2})', A2: 'in the way' });
    expect(values(opened, 'A1')[0]![0]).toEqual({
      error: { code: '#SPILL!', message: expect.stringContaining('clear the cells') },
    });
  });

  it('keeps the reason with a cell in error, in a spill too, and drops it when the error is gone', async () => {
    const opened = await open({ A1: '=SILT.TEST.REFUSE("US",7)', C1: '=SILT.TEST.MIXED("US")', A2: '=IF(TRUE,A1)' });
    expect(values(opened, 'A1')[0]![0]).toEqual({ error: { code: '#VALUE!', message: 'value: [[7]] is not allowed' } });
    expect(values(opened, 'C2')[0]![0]).toEqual({ error: { code: '#VALUE!', message: 'row 2: bad' } });
    opened.setCells('Sheet', 0, 0, [['="a"*1']]);
    await opened.recalculate();
    expect(values(opened, 'A1')[0]![0]).toMatchObject({
      error: { code: '#VALUE!', message: expect.not.stringContaining('not allowed') },
    });
    opened.setCells('Sheet', 0, 0, [[3]]);
    await opened.recalculate();
    expect(values(opened, 'A1:A2')).toEqual([[3], [3]]);
  });

  it('gives text that looks like a date or a number as text', async () => {
    const opened = await open({ A1: '3/4', A2: '22.50', B1: '=SILT.TEST.SEEN("US",A1:A3)' });
    expect(values(opened, 'B1')).toEqual([['["US",[["3/4"],["22.50"],[null]],null]']]);
  });

  it('keeps 0 different from blank and a number from its digits, after many comparisons', async () => {
    const opened = await open({
      A1: 0,
      A2: 1,
      A4: '1',
      B1: '=A1=""',
      C1: '=A1=""',
      D1: '=IF(A1="","blank","0")',
      E1: '=A2="1"',
      F1: '=A2="1"',
      G1: '=A4=1',
      H1: '=A3=""',
      I1: '=A3=0',
      J1: '=SUM((A1:A4="")*1)',
    });
    expect(values(opened, 'B1:J1')).toEqual([[false, false, '0', false, false, false, true, true, 1]]);
  });

  it('finds the reason of an error that came through references', async () => {
    const opened = await open({
      A1: '=SILT.TEST.REFUSE("US",7)',
      B1: '=A1*2',
      C1: '=SUM(B1:B3)',
      E1: '=SILT.TEST.MIXED("US")',
      G1: '=Sheet!E2&"A1"',
    });
    const cells = values(opened, 'A1:G1')[0]!;
    const because = (message: string) => ({ error: { code: '#VALUE!', message } });
    expect(cells[1]).toEqual(because('A1: value: [[7]] is not allowed'));
    expect(cells[2]).toEqual(because('A1: value: [[7]] is not allowed'));
    expect(cells[6]).toEqual(because('Sheet E2: row 2: bad'));
  });

  it('shows long spills', async () => {
    const opened = await open({ A1: '=SEQUENCE(2000)' });
    expect(values(opened, 'A2000')).toEqual([[2000]]);
  });
});
