import { describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import { sourceFunctions } from '../../../src/hosts/univer/source-functions';
import { drawingsOf } from '../../../src/task-pane/drawings/drawings-of';
import type { Recognized } from '../../../src/task-pane/drawings/recognition';
import { recognize, whatToSelect } from '../../../src/task-pane/drawings/recognize';
import { calculateWorkbook } from '../../../src/workbooks/calculate';
import { readyMade } from '../../../src/workbooks/sheets/ready-made';
import { withShortSearches } from '../../functions/short-searches';
import { MemoryHost } from '../memory-host';
import { sampleHost } from '../sample-host';
import { hostOfData } from '../workbook-host';

withShortSearches();

async function look(host: MemoryHost, sheet: string, address: string, units: string | undefined = 'US') {
  host.choose(sheet, address);
  return recognize(await host.selection(), { host, functionLibrary, names: await host.names(), units });
}

async function recognized(...asked: Parameters<typeof look>): Promise<Recognized> {
  const recognition = await look(...asked);
  if (!('recognized' in recognition)) throw new Error(JSON.stringify(recognition));
  return recognition.recognized;
}

async function sentenceFor(...asked: Parameters<typeof look>): Promise<string> {
  const recognition = await look(...asked);
  if (!('sentence' in recognition)) throw new Error(JSON.stringify(recognition));
  return recognition.sentence;
}

describe('pattern rows of the cone-cut-plan workbook', async () => {
  const host = await sampleHost('US/cone-cut-plan');

  test.each(['B5:K5', 'A5', 'A5:K5', 'D5', 'K5', 'A5:Z5'])('the first row is meant by %s', async (address) => {
    const { request, from } = await recognized(host, 'Patterns', address);
    expect(from).toBe('Patterns!B5:K5');
    expect(request).toMatchObject({ what: 'patterns', names: ['Fern'], units: 'US' });
  });

  test('several rows with their heading row and blank rows below are drawn one by one', async () => {
    const { request, from } = await recognized(host, 'Patterns', 'A4:K12');
    expect(from).toBe('Patterns!B5:K7');
    expect(request).toMatchObject({ names: ['Fern', 'Moss', 'Sedge'] });
    expect(drawingsOf(request).map(({ title }) => title)).toEqual([
      'Fern: cone pattern, cut 1',
      'Moss: cone pattern, cut 2 alike',
      'Sedge: cone pattern, cut 1',
    ]);
  });

  test('a row made under other units is refused in a sentence', async () => {
    expect(await sentenceFor(new MemoryHost({ P: row(22.5) }), 'P', 'A1:J1', 'metric')).toBe(
      'P!A1:J1 was not made with metric, or was changed since: its area does not go with its lengths; make the row again with SILT.CONE.PATTERN and select it again.',
    );
  });

  test('a row with a number changed is named while the others are drawn', async () => {
    const cells = { ...row(22.5, 1), ...row(20, 2), D2: 99 };
    const { note, request } = await recognized(new MemoryHost({ P: cells }), 'P', 'A1:J2');
    expect(request).toMatchObject({ rows: [Object.values(row(22.5))] });
    expect(note).toMatch(/^Row 2 was not made with US, or was changed since: .*; it is not drawn\.$/);
  });

  test('a workbook without units is read in the profile in which the numbers agree', async () => {
    const host = new MemoryHost({ P: row(22.5) });
    host.choose('P', 'A1');
    const recognition = await recognize(await host.selection(), { host, functionLibrary, names: [], units: undefined });
    expect(recognition).toMatchObject({ recognized: { request: { units: 'US' } } });
  });

  test.each(['A14', 'A1', 'M40'])('%s is not a pattern', async (address) => {
    expect(await sentenceFor(host, 'Patterns', address)).toBe(whatToSelect);
  });
});

/** A pattern row in inches, as a cell formula gives it, in the columns A to J. */
function row(top: number, at = 1): Record<string, number> {
  const pattern = functionLibrary.catalogue.find(({ name }) => name === 'CONE.PATTERN')!;
  const [values] = functionLibrary.adapt(pattern, (_, message) => new Error(message))('US', top, 4, 9.25) as [number[]];
  return Object.fromEntries(values.map((value, i) => [`${'ABCDEFGHIJ'[i]}${at}`, value]));
}

describe('a cut plan', async () => {
  const host = await sampleHost('US/cone-cut-plan');

  test('is found from any of its cells, with its patterns and sheet size from its own formula', async () => {
    const { request } = await recognized(host, 'Cut plan', 'C9');
    expect(request).toMatchObject({ what: 'cut plan', units: 'US', sheetLength: 96, sheetWidth: 48 });
    if (request.what !== 'cut plan') throw new Error(request.what);
    expect(request.patterns).toHaveLength(3);
    expect(drawingsOf(request)[0]!.notes[0]).toMatch(/^4 pieces of 3 patterns on 1 sheet\./);
  });

  test('with an error says which', async () => {
    const broken = await sampleHost('US/cone-cut-plan');
    broken.give('Cut plan', 'A7', { error: { code: '#VALUE!', message: 'gap: give less' } });
    expect(await sentenceFor(broken, 'Cut plan', 'A7')).toBe(
      'This cannot be drawn, because its formula gives #VALUE!: gap: give less.',
    );
  });

  test('whose patterns cannot be followed says so', async () => {
    const cells = { A1: '=SILT.CUT.PLAN("US",OFFSET(C1,0,0,1,10),96,48)' };
    const host = new MemoryHost({ Plan: cells });
    host.spill('Plan', 'A1:F1');
    expect(await sentenceFor(host, 'Plan', 'B1')).toBe('This cannot be drawn, because its formula uses OFFSET.');
  });
});

test('a row of numbers of another function is not taken for a pattern', async () => {
  expect(await sentenceFor(await sampleHost('US/water-book'), 'Verdict', 'H9')).toBe(whatToSelect);
});

describe('drums', async () => {
  const host = await sampleHost('US/cone-cut-plan');

  test('a row of the drums sheet fills the form by its headings', async () => {
    expect(await look(host, 'Drums', 'B5')).toEqual({
      drum: {
        ...{ drumDiameter: 22.5, depth: 20, coneHeight: 9.25, coneBottom: 4 },
        // What the sheets Base mix and Stand and ports have for every drum.
        ...{ rise: 1, stand: 22.5, container: 14.5, drainDrop: 6 },
      },
      units: 'US',
      from: 'Drums, row 5',
    });
  });

  test('a row of drums with a number for what it held is a drum, not a pattern', async () => {
    const host = await sampleHost('US/cone-cut-plan');
    for (const [address, value] of Object.entries({ B5: 50, C5: 22.5 })) host.change('Drums', address, value);
    for (const address of ['A5', 'B5', 'C5']) {
      const recognition = await look(host, 'Drums', address);
      expect(recognition).toMatchObject({ drum: { drumDiameter: 22.5 }, from: 'Drums, row 5' });
    }
  });

  test('the ports of a drum are drawn where the sheet Stand and ports has them', async () => {
    const recognition = await look(host, 'Drums', 'B5');
    if (!('drum' in recognition)) throw new Error('this is no drum');
    const [drawing] = drawingsOf({ what: 'drum', units: 'US', figures: recognition.drum });
    const words = JSON.stringify(drawing!.entities);
    const { values } = await host.read({
      sheet: 'Stand and ports',
      range: { row: 26, column: 0, rows: 2, columns: 4 },
    });
    for (const [, , aboveFloor, aboveGround] of values) {
      expect(words).toContain(`${Number(Number(aboveFloor).toFixed(2))} in (`);
      expect(words).toContain(`${Number(Number(aboveGround).toFixed(2))} in (`);
    }
  });

  test('a figure that cannot be read is not left out of the drawing in silence', async () => {
    const host = await sampleHost('US/cone-cut-plan');
    host.change('Drums', 'G5', 'about 9');
    expect(await look(host, 'Drums', 'B5')).toMatchObject({ drum: { coneHeight: 'about 9' } });
    // The diameter that was typed is not drawn where the sheet does not use it.
    host.give('Drums', 'K5', { error: { code: '#VALUE!', message: 'girth: thin is not allowed; give a length' } });
    expect(await look(host, 'Drums', 'B5')).toEqual({
      sentence: 'This drum cannot be drawn: thin is not allowed; give a length.',
    });
  });

  test('nor is one of the other sheets, which is named', async () => {
    const host = await sampleHost('US/cone-cut-plan');
    host.give('Stand and ports', 'B22', { error: { code: '#VALUE!', message: 'pail height: tall is not allowed' } });
    expect(await look(host, 'Drums', 'B5')).toEqual({
      sentence: 'This drum cannot be drawn: Height of the stand: tall is not allowed.',
    });
    host.give('Stand and ports', 'B22', 22.5);
    host.change('Base mix', 'B16', { error: { code: '#DIV/0!', message: '' } });
    expect(await look(host, 'Drums', 'B5')).toEqual({
      sentence: 'This drum cannot be drawn: Cone’s foot above the drum floor: #DIV/0!.',
    });
  });

  test('a row of drums without those sheets has its own figures only', async () => {
    const cells = { A1: 'Drum', B1: 'Inside diameter', C1: 'Water above', A2: 'Fern', B2: 22, C2: 20 };
    expect(await look(new MemoryHost({ Drums: cells }), 'Drums', 'A2')).toMatchObject({
      drum: { drumDiameter: 22, depth: 20 },
    });
  });

  test('ports fill it with the arguments of their formula', async () => {
    const recognition = await look(host, 'Stand and ports', 'B27');
    expect(recognition).toMatchObject({ drum: { depth: 20, coneHeight: 10.25, stand: 22.5 }, units: 'US' });
  });
});

describe('scenarios', async () => {
  const host = await sampleHost('US/stocking-scenarios');

  test('a column of results is the scenario of that column', async () => {
    const { request, others } = await recognized(host, 'Compare', 'D8');
    expect(others!.chosen).toBe(1);
    expect(request).toMatchObject({ what: 'train', title: `${others!.titles[1]}: train` });
    expect(others!.recognizeOther(0).request).toMatchObject({ title: `${others!.titles[0]}: train` });
  });

  test('a cell among the inputs is the scenario of its column', async () => {
    const { others } = await recognized(host, 'Scenarios', 'D8');
    expect(others!.titles).toEqual((await recognized(host, 'Compare', 'D8')).others!.titles);
  });

  test('the list of inputs is not a scenario, although it has their names', async () => {
    expect(await sentenceFor(host, 'Inputs', 'C12')).toBe(whatToSelect);
  });

  test('a scenario that does not compute says why', async () => {
    const cells = { A1: 'fish count', B1: 'many', A2: 'fish mass', B2: 8, A3: 'feeding rate', B3: 0.01 };
    expect(await sentenceFor(new MemoryHost({ S: cells }), 'S', 'B2')).toMatch(
      /^The scenario in S!A1:B3 cannot be drawn: .*fish count: many is not allowed/,
    );
  });
});

describe('a cut plan with a bad drum', () => {
  test('is drawn with the pieces of the good ones', async () => {
    const made = readyMade.find(({ id }) => id === 'cone-cut-plan')?.build('US');
    if (made === undefined) throw new Error('there is no such workbook');
    const sheets = made.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => (cell.value === 21.75 ? { ...cell, value: '22,3' } : cell)),
    }));
    const host = hostOfData(await calculateWorkbook(await sourceFunctions(), { ...made, sheets }));
    const { request } = await recognized(host, 'Cut plan', 'C9');
    expect(drawingsOf(request)[0]?.notes[0]).toMatch(/^2 pieces of 2 patterns on 1 sheet\./);
  });

  test('is drawn even if a piece is too large for the sheet', async () => {
    const made = readyMade.find(({ id }) => id === 'cone-cut-plan')?.build('US');
    if (made === undefined) throw new Error('there is no such workbook');
    const sheets = made.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => {
        if (sheet.name !== 'Drums' || cell.row !== 5) return cell;
        const value = { 2: 45, 6: 22, 7: 1 }[cell.column];
        return value === undefined ? cell : { ...cell, value };
      }),
    }));
    const calculated = await calculateWorkbook(await sourceFunctions(), { ...made, sheets });
    const plan = calculated.sheets.find(({ name }) => name === 'Cut plan')?.cells ?? [];
    expect(plan.find(({ row, column }) => row === 5 && column === 0)?.value).toMatch(/^Not placed: Moss\./);
    const { request } = await recognized(hostOfData(calculated), 'Cut plan', 'C9');
    expect(drawingsOf(request)[0]?.notes[0]).toMatch(/^2 pieces of 2 patterns on 1 sheet\./);
  });
});

describe('how sure a plan is', () => {
  test('is drawn from any cell of the range or of its drivers', async () => {
    const made = readyMade.find(({ id }) => id === 'stocking-scenarios')?.build('US');
    if (made === undefined) throw new Error('there is no such workbook');
    const host = hostOfData(await calculateWorkbook(await sourceFunctions(), made));
    const range = await recognized(host, 'How sure', 'C12');
    expect(range.from).toMatch(/^How sure!A9:E\d+$/);
    expect(drawingsOf(range.request)[0]?.title).toBe('How sure the plan is');
    const drivers = await recognized(host, 'How sure', 'G11');
    expect(drawingsOf(drivers.request)[0]?.title).toBe('What to measure first');
  });
});
