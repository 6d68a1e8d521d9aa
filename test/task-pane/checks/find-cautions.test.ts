import { describe, expect, test } from 'vitest';
import { coneCheck } from '../../../src/formulas/cone/cone-check';
import { settleCheck } from '../../../src/formulas/settle/settle-check';
import { functionLibrary } from '../../../src/functions/function-library';
import { cellName, contains, parseRange } from '../../../src/hosts/address';
import { sourceFunctions } from '../../../src/hosts/univer/source-functions';
import type { CellScalar } from '../../../src/hosts/workbook-model';
import type { Spot } from '../../../src/task-pane/cell-formula/book';
import { findCautions } from '../../../src/task-pane/checks/find-cautions';
import { safety } from '../../../src/task-pane/checks/safety';
import { calculateWorkbook } from '../../../src/workbooks/calculate';
import type { MemoryHost } from '../memory-host';
import { MemoryHost as Host } from '../memory-host';
import { sampleHost, sampleWorkbook } from '../sample-host';
import { hostOfData } from '../workbook-host';

/** Findings as `caution Patterns!A16: sentence`, with what they spoil behind. */
async function linesFor(host: MemoryHost): Promise<readonly string[]> {
  const [blocks, names] = await Promise.all([host.readUsed(), host.names()]);
  const findings = await findCautions({ blocks, names, functionLibrary }, async () => undefined);
  const placed = (spots: readonly Spot[]) =>
    spots.map(({ sheet, row, column }) => `${sheet}!${cellName(row, column)}`).join(' ');
  return findings.map(({ tone, about, sentence, spots, affected: spoils }) => {
    const lead = tone !== 'wrong' && about !== '' ? `${about}: ` : '';
    return `${tone} ${placed(spots)}: ${lead}${sentence}${spoils.length === 0 ? '' : ` (${placed(spoils)})`}`;
  });
}

const error = (code: string, message = '') => ({ error: { code, message } });

describe('cautions of a workbook', () => {
  test('every sentence of a check is with its own cell', async () => {
    const host = new Host({
      Cone: {
        A1: '=SILT.CONE.CHECK("US",22.5,4,9)',
        A2: 'wall is under 45 degrees',
        A3: 'wet mix lifts the cone.',
        B1: 7,
      },
    });
    host.give('Cone', 'A1', 'blank is larger than the sheet');
    host.spill('Cone', 'A1:A3');
    expect(await linesFor(host)).toEqual([
      'caution Cone!A1: Blank is larger than the sheet.',
      'caution Cone!A2: Wall is under 45 degrees.',
      'caution Cone!A3: Wet mix lifts the cone.',
    ]);
  });

  test('a check inside another function counts, but not one that found nothing', async () => {
    const host = new Host({
      S: {
        A1: '=LET(a,1,SILT.SETTLE.CHECK("US",a,2,3,4))',
        A3: '=SILT.SETTLE.CHECK("US",1,2,3,4)',
        A5: '=SILT.CONE.CHECK("US",4,4,9)',
      },
    });
    host.give('S', 'A1', 'overflow is high');
    // The words of SETTLE.CHECK and CONE.CHECK where nothing is wrong.
    const calm = settleCheck({
      ...{ flow: 1e-4, diameter: 0.5, count: 1, bore: 0.02 },
      ...{ overflowLimit: 0.003, slowestInlet: 0.2, fastestInlet: 0.6 },
    });
    host.give('S', 'A3', calm.map(({ text }) => text).join(' '));
    const sleeve = coneCheck({
      ...{ top: 0.1, bottom: 0.1, height: 0.2, pieces: 1, lap: 0, thickness: 0 },
      ...{ drum: undefined, sheetLength: undefined, sheetWidth: undefined },
    });
    host.give('S', 'A5', sleeve.map(({ text }) => text).join(' '));
    expect(await linesFor(host)).toEqual(['caution S!A1: Overflow is high.']);
  });

  test('the verdicts of a water test become cautions', async () => {
    const values = [
      ['reading', 'value', 'low', 'high', 'verdict', 'note'],
      ['pH', 7.2, 6.5, 8.5, 'within limits', 'A note.'],
      ['nitrite', 3, '', 1, 'too high', 'Stop feeding'],
      ['oxygen', '', 4, '', 'not measured', ''],
    ];
    const cells = Object.fromEntries(
      values.flatMap((line, row) => line.map((value, column) => [cellName(row, column), value])),
    );
    const host = new Host({
      Water: { ...cells, A1: '=SILT.WATER.CHECK("US","tilapia",27,7.2,1,3,"-","-",0,"-","-","N",TRUE)' },
    });
    host.give('Water', 'A1', 'reading');
    host.spill('Water', 'A1:F4');
    expect(await linesFor(host)).toEqual([
      'danger Water!A3: nitrite: too high. Stop feeding.',
      'caution Water!A4: oxygen: not measured.',
    ]);
  });

  test('an item without a price is named', async () => {
    const host = new Host({ Cost: { A1: '=SILT.COST.LINES(G1:H2,J1:L2)', B1: 2, C1: 'no price', D1: '' } });
    host.give('Cost', 'A1', 'valve');
    host.spill('Cost', 'A1:D1');
    expect(await linesFor(host)).toEqual(['caution Cost!A1: valve: no price, so the total leaves it out.']);
  });

  test('errors come first, say why, and are grouped if they say the same', async () => {
    const host = new Host({
      S: {
        A1: '=SILT.CONE.CHECK("US",1,2,3)',
        B1: '=SILT.CONE.ANGLE("US",4,22.5,9)',
        B2: '=SILT.CONE.ANGLE("US",4,22.5,9)',
        C1: '=1/0',
      },
    });
    host.give('S', 'A1', 'a caution');
    host.give('S', 'B1', error('#VALUE!', 'bottom: 22.5 in is not allowed'));
    host.give('S', 'B2', error('#VALUE!', 'bottom: 22.5 in is not allowed'));
    host.give('S', 'C1', error('#DIV/0!'));
    expect(await linesFor(host)).toEqual([
      'wrong S!B1 S!B2: #VALUE! bottom: 22.5 in is not allowed; give a length from 0 up to top (4 in)',
      'caution S!A1: A caution.',
    ]);
  });

  test('if a host keeps only the code of an error, the function itself gives the reason', async () => {
    const host = new Host({ S: { A1: 22.5, B1: '=1+SILT.CONE.ANGLE("US",4,A1,9)' } });
    host.give('S', 'B1', error('#VALUE!'));
    expect(await linesFor(host)).toEqual([
      'wrong S!A1: A1: 22.5 in is not allowed; give a length from 0 up to top (4 in). (S!B1)',
    ]);
  });

  test.each([
    ['#NAME?', /press Re-enter SILT formulas/],
    ['#SPILL!', /clear the cells below and to the right/],
  ])('%s says what to do', async (code, sentence) => {
    const host = new Host({ S: { A1: '=SILT.CONE.ANGLE("US",22.5,4,9)' } });
    host.give('S', 'A1', error(code));
    expect((await linesFor(host))[0]).toMatch(sentence);
  });

  test('a bad row inside a spill is with its own cell', async () => {
    const host = new Host({
      S: { A1: '=SILT.CONE.ANGLE("US",F1:F3,4,9)', A2: error('#VALUE!', 'top: 0 or blank'), A3: 45 },
    });
    host.give('S', 'A1', 45);
    host.spill('S', 'A1:A3');
    expect(await linesFor(host)).toEqual(['wrong S!A2: #VALUE! top: 0 or blank']);
  });

  test.each([
    'US/cone-cut-plan',
    'metric/stocking-scenarios',
    'US/water-book',
    'metric/harvest-book',
    'US/materials-sheet',
  ])('the sample workbook %s shows no errors', async (path) => {
    expect((await linesFor(await sampleHost(path))).filter((one) => one.startsWith('wrong'))).toEqual([]);
  });
});

/** A sample after typing, computed from scratch, as `sheet!address` and what is typed there. */
async function typedInto(path: string, typed: Readonly<Record<string, CellScalar>>): Promise<readonly string[]> {
  const workbook = await sampleWorkbook(path);
  const sheets = workbook.sheets.map((sheet) => {
    const own = Object.entries(typed).filter(([place]) => place.startsWith(`${sheet.name}!`));
    const places = own.map(([place, value]) => ({ ...parseCell(place), value }));
    const spills = sheet.cells.flatMap(({ spill }) => (spill === undefined ? [] : (parseRange(spill) ?? [])));
    const kept = sheet.cells
      .filter((cell) => !places.some((one) => one.row === cell.row && one.column === cell.column))
      // What formulas filled before is filled anew.
      .filter((cell) => cell.formula !== undefined || !spills.some((one) => contains(one, cell.row, cell.column)));
    return { ...sheet, cells: [...kept, ...places.filter(({ value }) => value !== '')] };
  });
  const computed = await calculateWorkbook(await sourceFunctions(), { ...workbook, sheets });
  return linesFor(hostOfData(computed));
}

function parseCell(place: string): { row: number; column: number } {
  const range = parseRange(place.slice(place.indexOf('!') + 1));
  if (range === undefined) throw new Error(`${place} is no cell`);
  return { row: range.row, column: range.column };
}

describe('one cause is one line, at the cell that was typed or left empty', () => {
  test('two missing heights', async () => {
    const lines = await typedInto('US/cone-cut-plan', { 'Drums!G5': '', 'Drums!G6': '' });
    const wrong = lines.filter((one) => one.startsWith('wrong'));
    expect(wrong, wrong.join('\n')).toHaveLength(2);
    expect(wrong[0]).toMatch(
      /^wrong Drums!G5: Cone height, Fern: the cell is empty; give a length of more than 0 in\. \(Patterns!B5 /,
    );
    expect(wrong[1]).toMatch(
      /^wrong Drums!G6: Cone height, Moss: the cell is empty; give a length of more than 0 in\. /,
    );
  });

  test('the only drum without a width lacks its diameter, and nothing that follows from it is a cause of its own', async () => {
    const others = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'I', 'J'].flatMap((column) => [
      [`Drums!${column}6`, ''],
      [`Drums!${column}7`, ''],
    ]);
    const lines = await typedInto('US/cone-cut-plan', { 'Drums!C5': '', ...Object.fromEntries(others) });
    const wrong = lines.filter((one) => one.startsWith('wrong') && !one.includes('#VALUE!'));
    expect(wrong[0]).toMatch(/^wrong Drums!C5 Drums!D5.*: Inside diameter, Fern: the cell is empty; give a length /);
    expect(wrong.filter((one) => !one.startsWith('wrong Drums!C5'))).toEqual([]);
  });

  test('each row has its own fault, at the cell that was typed', async () => {
    const lines = await typedInto('US/cone-cut-plan', { 'Drums!C5': '22,3', 'Drums!A8': 'Rush', 'Drums!C8': 'wide' });
    const wrong = lines.filter((one) => one.startsWith('wrong'));
    // The label of the cell, what was typed, once, and what is allowed; no name of an argument, such as quantity.
    const what = 'wrong Drums!C5: Inside diameter, Fern: “22,3” could be 22.3 or 223; write the one that you mean.';
    expect(wrong[0]?.slice(0, what.length)).toBe(what);
    expect(wrong[1]).toMatch(
      /^wrong Drums!C8: Inside diameter, Rush: “wide” is not allowed; give a dimension \(in, .*\), such as 22 1\/2 in\. \(Drums!K8 /,
    );
    expect(wrong.filter((one) => /Drums!C[58]/.test(one))).toHaveLength(2);
  });

  test('a caution about a drum is at its diameter, or at its girth where that is used', async () => {
    expect((await typedInto('US/cone-cut-plan', { 'Patterns!B15': 'Fern' }))[0]).toMatch(/^caution Drums!C5 /);
    expect((await typedInto('US/cone-cut-plan', { 'Patterns!B15': 'Sedge' }))[0]).toMatch(/^caution Drums!D7 /);
  });

  test('a girth or a wall that cannot be read, though the drum has its diameter', async () => {
    const lines = await typedInto('US/cone-cut-plan', { 'Drums!D5': 'about 72', 'Drums!E6': 'thin' });
    const wrong = lines.filter((one) => one.startsWith('wrong'));
    expect(wrong[0]).toMatch(/^wrong Drums!D5: Girth, Fern: “about 72” is not allowed; give .* \(Drums!K5 /);
    expect(wrong[1]).toMatch(/^wrong Drums!E6: Wall, Moss: “thin” is not allowed; give .* \(Drums!K6 /);
    expect(wrong, wrong.join('\n')).toHaveLength(2);
  });

  test('a part of an entry that is refused is shown in the whole, and other cells have their labels', async () => {
    const lines = await typedInto('US/cone-cut-plan', { 'Drums!C5': '2 1/2 feetz', 'Drums!F6': 24 });
    const wrong = lines.filter((one) => one.startsWith('wrong'));
    expect(wrong[0]).toMatch(
      /^wrong Drums!C5: Inside diameter, Fern: “2 1\/2 feetz” is not allowed: feetz is not a unit that is read here; give .*, such as 20 ft\. /,
    );
    expect(wrong[1]).toMatch(
      /^wrong Drums!F6: Drain bore, Moss: 24 in is not allowed; .* less than “Diameter used” \(21\.75 in\)\. /,
    );
  });

  test('a deadly ammonia reading is the first line, with its day', async () => {
    const [first] = await typedInto('US/water-book', { 'Tests!D12': 6.5, 'Tests!C12': 8.2 });
    expect(first).toMatch(/^danger Tests!D12 Tests!I12: Ammonia N, 2026-04-13: 6\.5\. Too much un-ionized/);
  });

  test('the column of the farm that the caution names', async () => {
    const lines = await typedInto('US/stocking-scenarios', { 'Scenarios!D21': 225 });
    const told = lines.filter((one) => one.includes('is not likely'));
    expect(told, lines.join('\n')).toHaveLength(1);
    expect(told[0]).toMatch(
      /^caution Scenarios!D21 Scenarios!H21: 350 fish, drum diameter: 225\. 225 in for 350 fish is not likely; the usual range is /,
    );
  });

  test('an input of a bank by its name', async () => {
    const lines = await typedInto('metric/materials-sheet', { 'Bank!B6': -5 });
    const wrong = lines.filter((one) => one.startsWith('wrong'));
    expect(wrong, wrong.join('\n')).toHaveLength(1);
    expect(wrong[0]).toMatch(/^wrong Bank!B6: drum diameter: -5 mm is not allowed; give a length of more than 0 mm\. /);
  });
});

test('dangers are listed for every kind of work', () => {
  const said = safety.map(({ task, caution }) => `${task}: ${caution}`);
  for (const word of [
    'food-grade',
    'Silica',
    'pH',
    'Zinc',
    '500 lb',
    'ground-fault',
    'hydrogen sulfide',
    'half the oxygen time',
    'caustics',
  ]) {
    expect(
      said.some((one) => one.includes(word)),
      word,
    ).toBe(true);
  }
  expect(said).toHaveLength(7);
});
