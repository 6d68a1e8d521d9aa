import { afterEach, describe, expect, it } from 'vitest';
import { parseRange } from '../../../src/hosts/address';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import type { CellScalar } from '../../../src/hosts/workbook-model';
import { exampleFunctions } from './example-functions';

type Typed = Readonly<Record<string, CellScalar>>;

let host: Headless | undefined;
afterEach(() => host?.dispose());

async function open(typed: Typed): Promise<Headless> {
  const cells = Object.entries(typed).map(([address, entry]) => {
    const { row, column } = parseRange(address)!;
    return typeof entry === 'string' && entry.startsWith('=')
      ? { row, column, formula: entry }
      : { row, column, value: entry };
  });
  return openHeadless(exampleFunctions, { sheets: [{ name: 'Sheet', cells }] });
}

const valueAt = (opened: Headless, address: string): unknown => {
  const value = opened.read('Sheet', parseRange(address)!)[0]![0]!.value;
  return typeof value === 'object' ? value.error.code : value;
};

/** Types entries one after another, and compares what is asked for with a workbook in which they stood from the start. */
async function afterTyping(before: Typed, typed: Typed, addresses: readonly string[]): Promise<unknown[]> {
  host = await open(before);
  for (const [address, entry] of Object.entries(typed)) {
    const { row, column } = parseRange(address)!;
    host.setCells('Sheet', row, column, [[entry]]);
    await host.recalculate();
  }
  const live = addresses.map((address) => valueAt(host!, address));
  const scratch = await open({ ...before, ...typed });
  expect(live).toEqual(addresses.map((address) => valueAt(scratch, address)));
  scratch.dispose();
  return live;
}

describe('cells that read into a spill', () => {
  const numbers = '=SEQUENCE(A1,1,B1)';

  it('follow it when its inputs change', async () => {
    expect(await afterTyping({ A1: 4, B1: 10, C1: numbers, E1: '=C3*2' }, { B1: 20 }, ['C3', 'E1'])).toEqual([22, 44]);
  });

  it('follow it when it grows over them, and when it shrinks away', async () => {
    const sheet = { A1: 2, B1: 10, C1: numbers, E1: '=SUM(C2:C9)', F1: '=E1+C5' };
    expect(await afterTyping(sheet, { A1: 6 }, ['E1', 'F1'])).toEqual([65, 79]);
    host?.dispose();
    expect(await afterTyping({ ...sheet, A1: 6 }, { A1: 2 }, ['E1', 'F1', 'C5'])).toEqual([11, 11, '']);
  });

  it('follow it when it shrinks to one cell', async () => {
    const sheet = { A1: 3, B1: 10, C1: numbers, E1: '=SUM(C2:C9)' };
    expect(await afterTyping(sheet, { A1: 1 }, ['C1', 'C2', 'E1'])).toEqual([10, '', 0]);
  });

  it('follow it through a chain of spills', async () => {
    const chain: Record<string, CellScalar> = { A1: 3, B1: 1, C1: numbers };
    for (let step = 0; step < 12; step += 1) {
      const [from, to] = [5 * step + 1, 5 * step + 6];
      chain[`C${to}`] = `=C${from + 1}*2+{0;0}`;
    }
    expect(await afterTyping(chain, { B1: 2 }, ['C61', 'C62'])).toEqual([4096 * 3, 4096 * 3]);
  });

  it('are calculated once more if one is read by its first cell and another by a later one', async () => {
    const sheet = { A1: 2, B1: 1, C1: numbers, D1: '=SEQUENCE(A1,1,B1*100)', E1: '=C1+D2' };
    expect(await afterTyping(sheet, { B1: 5 }, ['E1'])).toEqual([506]);
  });

  it('are calculated when something else is typed over its first cell', async () => {
    const sheet = { A1: 3, B1: 1, C1: numbers, E1: '=SUM(C2:C9)' };
    expect(await afterTyping(sheet, { C1: 7 }, ['C1', 'C2', 'E1'])).toEqual([7, '', 0]);
    host?.dispose();
    expect(await afterTyping(sheet, { C1: '=SUM(C2:C3)' }, ['C1', 'C2', 'E1'])).toEqual([0, '', 0]);
  });
});

describe('a spill without room', () => {
  const sheet = { A1: 3, C1: '=SEQUENCE(A1)', E1: '=SUM(C2:C9)' };

  it('removes its values when something is typed in its way, and fills again', async () => {
    expect(await afterTyping(sheet, { C3: 50 }, ['C1', 'C2', 'C3', 'E1'])).toEqual(['#SPILL!', '', 50, 50]);
    host!.setCells('Sheet', 2, 2, [['']]);
    await host!.recalculate();
    expect(['C1', 'C2', 'C3', 'E1'].map((address) => valueAt(host!, address))).toEqual([1, 2, 3, 5]);
  });

  it('fills formatted cells once there is room, and leaves them blank before', async () => {
    const style = { fill: 'FFF8D6' };
    const cells = [
      { row: 0, column: 2, formula: '=SEQUENCE(3)' },
      { row: 1, column: 2, style },
      { row: 2, column: 2, value: 50 },
      { row: 0, column: 4, formula: '=COUNTA(C2)' },
    ];
    host = await openHeadless(exampleFunctions, { sheets: [{ name: 'Sheet', cells }] });
    await host.recalculate();
    expect(['C1', 'C2', 'E1'].map((address) => valueAt(host!, address))).toEqual(['#SPILL!', '', 0]);
    host.setCells('Sheet', 2, 2, [['']]);
    await host.recalculate();
    expect(['C1', 'C2', 'C3', 'E1'].map((address) => valueAt(host!, address))).toEqual([1, 2, 3, 1]);
  });

  it('gives way to a spill that begins further up, in any order of entry', async () => {
    const meeting = { ...sheet, A1: 2, A3: 2, B3: '=SEQUENCE(1,A3,70)' };
    expect(await afterTyping(meeting, {}, ['C1', 'B3', 'C3'])).toEqual([1, 70, 71]);
    host?.dispose();
    expect(await afterTyping(meeting, { A1: 5 }, ['C1', 'B3', 'C3', 'C5', 'E1'])).toEqual([1, '#SPILL!', 3, 5, 14]);
    host!.setCells('Sheet', 0, 0, [[2]]);
    await host!.recalculate();
    expect(['C1', 'B3', 'C3', 'E1'].map((address) => valueAt(host!, address))).toEqual([1, 70, 71, 73]);
  });
});

describe('formulas in a circle', () => {
  it('are errors that say so, as are formulas that read them', async () => {
    host = await open({ A1: '=B1+1', B1: '=A1+1', C1: '=A1*2', D1: '=D1', E1: 5 });
    expect(['A1', 'B1', 'C1', 'D1'].map((address) => valueAt(host!, address))).toEqual(Array(4).fill('#CYCLE!'));
    const reason = (address: string) => host!.read('Sheet', parseRange(address)!)[0]![0]!.value;
    expect(reason('A1')).toHaveProperty('error.message', 'the formulas refer to each other in a circle: A1, B1');
    expect(reason('D1')).toHaveProperty('error.message', 'the formula refers to its own cell');
    host.setCells('Sheet', 0, 0, [['=E1+1']]);
    await host.recalculate();
    expect(['A1', 'B1', 'C1'].map((address) => valueAt(host!, address))).toEqual([6, 7, 12]);
  });

  it('are not formulas that only use the place of a cell', async () => {
    host = await open({ A1: '=ROW(A1)+ROWS(A1:A3)', B2: '=COLUMN(B2)' });
    expect(['A1', 'B2'].map((address) => valueAt(host!, address))).toEqual([4, 2]);
  });

  it('are found if a formula spills over its own inputs', async () => {
    host = await open({ A1: 3, B1: '=SEQUENCE(A1)+C2', C1: '=SEQUENCE(A1)+B2' });
    expect(['B1', 'C1'].map((address) => valueAt(host!, address))).toEqual(['#CYCLE!', '#CYCLE!']);
  });
});
