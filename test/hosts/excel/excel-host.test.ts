import { beforeEach, describe, expect, test, vi } from 'vitest';
import { excelHost } from '../../../src/hosts/excel/excel-host';
import { findExcel } from '../../../src/hosts/excel/find-excel';
import { HostError, type SheetHost } from '../../../src/hosts/sheet-host';
import { unitsNames, unitsSheet } from '../../../src/workbooks/sheets/units-sheet';
import { FakeExcel, FakeSheet } from './fake-excel';

let farm: FakeSheet;
let excel: FakeExcel;
let host: SheetHost;

const cell = (row: number, column: number) => ({ sheet: 'Farm', range: { row, column, rows: 1, columns: 1 } });
const refusal = (wish: Promise<unknown>): Promise<HostError> =>
  wish.then(
    () => expect.fail('went through'),
    (error) => error,
  );

beforeEach(() => {
  farm = new FakeSheet('Farm', { B5: 22.5, C5: "'3 1/4 in", D5: '=SILT.X(SiltUnits,B5)', E5: true, B6: '#N/A' });
  excel = new FakeExcel(farm, new FakeSheet('Empty'));
  excel.install();
  host = excelHost();
});

describe('reading', () => {
  test('gives values, formulas, errors and blanks as what they are', async () => {
    const block = await host.read({ sheet: 'farm', range: { row: 4, column: 0, rows: 2, columns: 5 } });
    expect(block.values).toEqual([
      ['', 22.5, '3 1/4 in', 0, true],
      ['', { error: { code: '#N/A', message: '' } }, '', '', ''],
    ]);
    expect(block.formulas[0]).toEqual([undefined, undefined, undefined, '=SILT.X(SiltUnits,B5)', undefined]);
  });

  test('gives the used cells of every sheet that has some', async () => {
    const blocks = await host.readUsed();
    expect(blocks.map(({ sheet, range }) => [sheet, range])).toEqual([
      ['Farm', { row: 4, column: 1, rows: 2, columns: 4 }],
    ]);
  });

  test('tells spilled cells from typed ones, also where a version repeats the formula in all of them', async () => {
    for (const repeats of [false, true]) {
      const sheet = new FakeSheet('Farm', { B2: '=SILT.X(SiltUnits)', B3: 7, C2: 8, C3: 9, E2: 1 });
      sheet.spills.set('1,1', 'B2:C3');
      sheet.repeatsFormulas = repeats;
      new FakeExcel(sheet).install();
      const [block] = await excelHost().readUsed();
      expect(block!.spills).toEqual([{ row: 1, column: 1, rows: 2, columns: 2 }]);
      expect(block!.formulas.flat().filter((formula) => formula !== undefined)).toHaveLength(1);
    }
  });

  test('names the formula that fills a cell, on any place of the sheet', async () => {
    for (const repeats of [false, true]) {
      const sheet = new FakeSheet('Farm', { B2: '=SILT.X(SiltUnits)', B3: 7, C2: 8, C3: 9, E2: 1 });
      sheet.spills.set('1,1', 'B2:C3');
      sheet.repeatsFormulas = repeats;
      new FakeExcel(sheet).install();
      const readOne = (row: number, column: number) =>
        excelHost().read({ sheet: 'Farm', range: { row, column, rows: 1, columns: 1 } });
      const inside = await readOne(2, 2);
      expect(inside.spills).toEqual([{ row: 1, column: 1, rows: 2, columns: 2 }]);
      expect(inside.formulas).toEqual([[undefined]]);
      expect((await readOne(1, 1)).spills).toEqual(inside.spills);
      expect((await readOne(1, 1)).formulas).toEqual([['=SILT.X(SiltUnits)']]);
      expect((await readOne(1, 4)).spills).toEqual([]);
    }
  });

  test('reads no more of a selected column than is in use', async () => {
    excel.select(farm, 'B1:B1048576');
    const { range } = await host.selection();
    expect(range).toEqual({ row: 0, column: 1, rows: 6, columns: 1 });
    expect(excel.cellsRead).toBe(6);
  });

  test('needs few round trips for many cells', async () => {
    for (let row = 0; row < 2000; row++) farm.put(row, 10, `=A${row}`);
    excel.syncs = 0;
    await host.readUsed();
    expect(excel.syncs).toBeLessThan(12);
  });

  test('says what is wrong if cells do not exist', async () => {
    const error = await refusal(host.read({ sheet: 'Gone', range: { row: 0, column: 0, rows: 1, columns: 1 } }));
    expect(error).toBeInstanceOf(HostError);
    expect([error.reason, error.message]).toEqual(['missing', 'There is no sheet called Gone any more.']);
  });

  test('says what to do while a cell is being edited or if the selection has several parts', async () => {
    excel.isEditing = true;
    expect((await refusal(host.selection())).reason).toBe('busy');
    excel.isEditing = false;
    excel.selected = undefined;
    expect((await refusal(host.selection())).message).toContain('select one block of cells');
  });
});

describe('writing', () => {
  test('writes numbers, formulas and blanks, and leaves undefined cells as they are', async () => {
    await host.write([{ sheet: 'Farm', row: 4, column: 1, cells: [[571.5, undefined, '=SILT.Y()', '']] }]);
    expect(['B5', 'C5', 'D5', 'E5'].map((address) => farm.at(address))).toEqual([571.5, '3 1/4 in', '=SILT.Y()', '']);
  });

  test('keeps text that looks like a number as text', async () => {
    await host.write([{ sheet: 'Farm', row: 0, column: 0, cells: [['22', '1/2', 'US', '-']] }]);
    expect((await host.read({ sheet: 'Farm', range: { row: 0, column: 0, rows: 1, columns: 4 } })).values[0]).toEqual([
      '22',
      '1/2',
      'US',
      '-',
    ]);
  });

  test('changes no sheet if one of them is protected', async () => {
    const locked = new FakeSheet('Locked', { A1: 1 });
    locked.isProtected = true;
    excel.sheets.push(locked);
    const error = await refusal(
      host.write([
        { sheet: 'Farm', row: 4, column: 1, cells: [[1, 2]] },
        { sheet: 'Locked', row: 0, column: 0, cells: [[2]] },
      ]),
    );
    expect(error.reason).toBe('protected');
    expect(error.message).toContain('remove the protection');
    expect([farm.at('B5'), farm.at('C5'), locked.at('A1')]).toEqual([22.5, '3 1/4 in', 1]);
  });

  test('writes nothing if a sheet does not exist any more', async () => {
    const error = await refusal(
      host.write([
        { sheet: 'Farm', row: 4, column: 1, cells: [[1]] },
        { sheet: 'Gone', row: 0, column: 0, cells: [[2]] },
      ]),
    );
    expect(error.reason).toBe('missing');
    expect(farm.at('B5')).toBe(22.5);
  });
});

describe('names and sheets', () => {
  test('sets a name, sets it again, and removes it', async () => {
    await host.setName({ name: 'SiltUnits', refersTo: "'Farm'!$B$5" });
    await host.setName({ name: 'siltunits', refersTo: "'Farm'!$B$6" });
    expect(await host.names()).toEqual([{ name: 'SiltUnits', refersTo: "'Farm'!$B$6" }]);
    await host.removeName('SiltUnits');
    expect(await host.names()).toEqual([]);
  });

  test('adds and removes sheets, and refuses a name in use', async () => {
    await host.addSheet('Second');
    expect((await refusal(host.addSheet('second'))).reason).toBe('taken');
    await host.removeSheet('Second');
    expect(await host.sheets()).toEqual(['Farm', 'Empty']);
  });

  test('inserts a whole sheet with its names', async () => {
    await host.insert({ sheets: [unitsSheet('US')], names: unitsNames });
    const sheet = excel.sheets.find(({ name }) => name === 'Silt units')!;
    expect([sheet.at('B4'), sheet.at('B5'), sheet.at('A7')]).toEqual(['US', 'US', '=SILT.UNIT.LIST(SiltUnits,TRUE)']);
    expect(excel.names.map(({ name, formula }) => [name, formula])).toEqual([
      ['SiltUnits', "='Silt units'!$B$4"],
      ['SiltTypedIn', "='Silt units'!$B$5"],
    ]);
    expect(sheet.done.some((what) => what.startsWith('validation.rule'))).toBe(true);
  });

  test('removes half-inserted sheets and names again', async () => {
    const failing = { ...unitsSheet('US'), merges: ['not a range'] };
    const error = await refusal(host.insert({ sheets: [{ name: 'First', cells: [] }, failing], names: unitsNames }));
    expect(error).toBeInstanceOf(HostError);
    expect(await host.sheets()).toEqual(['Farm', 'Empty']);
    expect(await host.names()).toEqual([]);
  });

  test('inserts nothing if one of the sheets already exists', async () => {
    const error = await refusal(
      host.insert({
        sheets: [
          { name: 'New', cells: [] },
          { name: 'EMPTY', cells: [] },
        ],
      }),
    );
    expect(error.reason).toBe('taken');
    expect(await host.sheets()).toEqual(['Farm', 'Empty']);
  });

  test('selects cells', async () => {
    await host.select(cell(4, 1));
    expect(excel.selected).toMatchObject({ row: 4, column: 1 });
    expect((await refusal(host.select({ ...cell(0, 0), sheet: 'Gone' }))).reason).toBe('missing');
  });
});

describe('events, theme and pages', () => {
  test('reports changes until it is stopped', async () => {
    let heard = 0;
    const stop = await host.onCellsChanged(() => {
      heard += 1;
    });
    await excel.happen('changed');
    stop();
    await excel.happen('changed');
    expect(heard).toBe(1);
    await vi.waitFor(() => expect(excel.listeners('changed')).toBe(0));
    await vi.waitFor(() => expect(excel.listeners('calculated')).toBe(0));
  });

  test('works without events that this Excel does not have', async () => {
    excel.version = 1.8;
    const stop = await host.onCellsChanged(() => expect.fail('heard'));
    await excel.happen('changed');
    stop();
  });

  test('follows Excel’s theme and opens pages in the browser', () => {
    expect(host.theme()).toEqual({ dark: true });
    host.openPage('https://localhost:3000/reference/index.html');
    expect(excel.opened).toEqual(['https://localhost:3000/reference/index.html']);
  });

  test('is found only if office.js says that the page is in Excel', async () => {
    expect((await findExcel())?.name).toBe('Excel');
    const { Office } = globalThis as unknown as { Office: { onReady: () => Promise<unknown> } };
    Office.onReady = async () => ({ host: null, platform: null });
    expect(await findExcel()).toBeUndefined();
    Office.onReady = () => Promise.reject(new Error('no host'));
    expect(await findExcel()).toBeUndefined();
    delete (globalThis as { Office?: unknown }).Office;
    expect(await findExcel()).toBeUndefined();
  });
});

describe('the file of the workbook', () => {
  test('is put together from its slices, and Excel’s copy of it is closed', async () => {
    excel.file = [[80, 75, 3], [4, 0], []];
    expect(await host.file?.()).toEqual(new Uint8Array([80, 75, 3, 4, 0]));
    expect(excel.openFiles).toBe(0);
  });

  test('that Excel does not give is said in a sentence', async () => {
    excel.file = 'Permission denied';
    expect((await refusal(host.file?.() ?? Promise.resolve())).message).toBe(
      'Excel did not give the file: Permission denied',
    );
  });

  test('can be opened as a new workbook, however long it is', async () => {
    const file = new Uint8Array(100_000).map((_, i) => i % 251);
    await host.openFile?.(file);
    expect(excel.created).toEqual([file]);
    excel.version = 1.7;
    expect(excelHost().openFile).toBeUndefined();
  });
});

describe('calculation and start', () => {
  test('reports that Excel is calculating, and calls back when it is done', async () => {
    excel.calculationState = 'Calculating';
    expect(await host.isCalculating?.()).toBe(true);
    let calls = 0;
    await host.onCellsChanged(() => {
      calls += 1;
    });
    excel.calculationState = 'Done';
    await excel.happen('calculated');
    expect([calls, await host.isCalculating?.()]).toEqual([1, false]);
  });

  test('does not use these interfaces in an Excel without them', async () => {
    excel.version = 1.7;
    expect(await host.isCalculating?.()).toBe(false);
    await host.onCellsChanged(() => expect.fail('heard'));
    expect([excel.listeners('changed'), excel.listeners('calculated')]).toEqual([0, 0]);
  });

  test('makes Excel start the add-in with a workbook that has our name, and with no other', async () => {
    await host.setName({ name: 'Other', refersTo: 'Farm!$A$1' });
    expect(excel.startup).toBeUndefined();
    await host.setName({ name: 'SiltUnits', refersTo: 'Farm!$A$1' });
    expect(excel.startup).toBe('Load');
  });

  test('makes Excel start the add-in with an older workbook', async () => {
    excel.names = [{ name: 'SiltUnits', formula: '=Farm!$A$1', comment: '' }];
    await findExcel();
    await vi.waitFor(() => expect(excel.startup).toBe('Load'));
  });
});
