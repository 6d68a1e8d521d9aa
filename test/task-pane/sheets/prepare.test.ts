import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { HostError } from '../../../src/hosts/sheet-host';
import { insertSheets } from '../../../src/task-pane/sheets/insert-sheets';
import { prepare } from '../../../src/task-pane/sheets/prepare';
import { readWorkbookUnits } from '../../../src/task-pane/workbook-units';
import { type ReadyProfile, readyMade } from '../../../src/workbooks/sheets/ready-made';
import type { MemoryHost } from '../memory-host';
import { MemoryHost as Host } from '../memory-host';

const coneCutPlan = readyMade.find(({ id }) => id === 'cone-cut-plan')!;
const patient = { step: async () => undefined };

async function prepared(host: MemoryHost, chosen: ReadyProfile = 'metric', ready = coneCutPlan) {
  const [sheets, names, units] = await Promise.all([host.sheets(), host.names(), readWorkbookUnits(host)]);
  return prepare(ready, chosen, { sheets, names, units }, functionLibrary);
}

function withUnits(units: string, typedIn = units): MemoryHost {
  return new Host(
    { Sheet1: { A1: 'mine' }, 'My units': { A1: units, A2: typedIn } },
    { SiltUnits: "'My units'!$A$1", SiltTypedIn: "'My units'!$A$2" },
  );
}

function cell(workbook: Awaited<ReturnType<typeof prepared>>['workbook'], sheet: string, row: number, column: number) {
  return workbook.sheets
    .find(({ name }) => name === sheet)!
    .cells.find((one) => one.row === row && one.column === column);
}

describe('a ready-made workbook made to fit', () => {
  test('brings its own units if the workbook has none', async () => {
    const { workbook, clashes } = await prepared(new Host(), 'US');
    expect(clashes.size).toBe(0);
    expect(workbook).toEqual(coneCutPlan.build('US'));
  });

  test('follows the units of the workbook', async () => {
    const { workbook } = await prepared(withUnits('US'), 'metric');
    const built = coneCutPlan.build('US');
    expect(workbook.names).toEqual([]);
    expect(workbook.sheets.map(({ name }) => name)).toEqual(
      built.sheets.map(({ name }) => name).filter((name) => name !== 'Silt units'),
    );
    expect(workbook.sheets[1]).toEqual(built.sheets[1]);
  });

  // The inch is 25.4 mm, so 2.54 cm (international yard and pound agreement of 1959).
  test('has its numbers converted to the units of exceptions, but not text with a unit', async () => {
    const { workbook, byHand } = await prepared(withUnits('US, dimension cm'));
    expect(byHand).toEqual([]);
    const before = coneCutPlan.build('US');
    const height = (from: typeof workbook) => cell(from, 'Drums', 4, 6)!.value as number;
    expect(height(workbook)).toBeCloseTo(height(before) * 2.54, 9);
    expect(cell(workbook, 'Drums', 4, 2)!.value).toBe(cell(before, 'Drums', 4, 2)!.value);
    expect(cell(workbook, 'Drums', 4, 7)!.value).toBe(1);
  });

  test.each(readyMade)('$title leaves nothing to convert by hand', async (ready) => {
    const exceptions = 'metric, dimension cm, run ft, volume gal, mass lb, flow gpm, temperature F';
    const { byHand, workbook } = await prepared(withUnits(exceptions), 'metric', ready);
    expect(byHand).toEqual([]);
    expect(workbook.sheets.length).toBeGreaterThan(1);
  });

  test('gets new names for sheets that exist already, and uses them', async () => {
    const host = new Host({ drums: { A1: 'mine' }, Start: {} });
    const { workbook, clashes } = await prepared(host, 'US');
    expect([...clashes]).toEqual([
      ['Start', 'Start 2'],
      ['Drums', 'Drums 2'],
    ]);
    const formulas = workbook.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
    expect(formulas.some((formula) => formula.includes("'Drums 2'!"))).toBe(true);
    expect(formulas.filter((formula) => /(?<![\w'])Drums!/.test(formula))).toEqual([]);
    expect(workbook.activeSheet).toBe('Drums 2');
  });

  test('can be inserted twice and a third time', async () => {
    const host = new Host({ Sheet1: { A1: 'mine' } });
    const counts: number[] = [];
    for (let time = 0; time < 3; time++) {
      await insertSheets(host, (await prepared(host, 'US')).workbook, patient);
      counts.push((await host.sheets()).length);
    }
    const sheets = coneCutPlan.build('US').sheets.length;
    expect(counts).toEqual([1 + sheets, 2 * sheets, 3 * sheets - 1]);
    expect(await host.sheets()).toContain('Drums 3');
    expect((await host.names()).map(({ name }) => name)).toEqual(['SiltUnits', 'SiltTypedIn']);
  });

  test.each([
    ['furlongs', 'US', /furlongs is not a profile/],
    ['US', 'metric', /^Numbers were typed in metric but are read as US; convert them in Units/],
  ])('is refused while SiltUnits says %s and SiltTypedIn %s', async (units, typedIn, sentence) => {
    await expect(prepared(withUnits(units, typedIn))).rejects.toThrow(sentence);
  });
});

describe('inserting', () => {
  async function contents(host: MemoryHost) {
    return { sheets: await host.sheets(), used: await host.readUsed(), names: await host.names() };
  }

  test('leaves the workbook unchanged if it is stopped halfway', async () => {
    const host = new Host({ Sheet1: { A1: 'mine' } });
    const before = await contents(host);
    let steps = 0;
    const stop = async (share: number) => {
      steps += 1;
      if (share > 0.4) throw new Error('stopped');
    };
    await expect(insertSheets(host, coneCutPlan.build('US'), { step: stop })).rejects.toThrow('stopped');
    expect(steps).toBeGreaterThan(2);
    expect(await contents(host)).toEqual(before);
  });

  test('stopping counts as a stop even if the host reports every failure in its own words', async () => {
    const host = new Host({ Sheet1: { A1: 'mine' } });
    const plain = host.insert;
    host.insert = (workbook, step) =>
      plain(workbook, step).catch((error: unknown) => Promise.reject(new HostError('failed', String(error))));
    const stop = async (share: number) => {
      if (share > 0.4) throw new RangeError('stopped');
    };
    await expect(insertSheets(host, coneCutPlan.build('US'), { step: stop })).rejects.toThrow(RangeError);
  });

  test('removes what a host left behind when it failed', async () => {
    const host = new Host({ Sheet1: { A1: 'mine' } });
    const before = await contents(host);
    host.insert = async ({ sheets, names }) => {
      await host.addSheet(sheets[0]!.name);
      await host.addSheet(sheets[1]!.name);
      await host.setName(names![0]!);
      throw new HostError('failed', 'The workbook is full; save it under another name.');
    };
    await expect(insertSheets(host, coneCutPlan.build('US'), patient)).rejects.toThrow('is full');
    expect(await contents(host)).toEqual(before);
  });

  test('never removes a sheet that existed before', async () => {
    const host = new Host({ Start: { A1: 'mine' } });
    await expect(insertSheets(host, coneCutPlan.build('US'), patient)).rejects.toThrow('Start already exists');
    expect(host.at('Start', 'A1')).toBe('mine');
  });
});
