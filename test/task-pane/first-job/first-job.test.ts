import { afterEach, describe, expect, test } from 'vitest';
import { functionLibrary } from '../../../src/functions/function-library';
import type { CellResult } from '../../../src/hosts/workbook-model';
import { withMaterials } from '../../../src/task-pane/first-job/add-materials';
import { typedIn, wayInUse } from '../../../src/task-pane/first-job/entries';
import { type FieldId, fields, heightWays, widthWays } from '../../../src/task-pane/first-job/fields';
import { fillField } from '../../../src/task-pane/first-job/fill';
import { findJob, goToStep, type Job } from '../../../src/task-pane/first-job/job';
import { readJobCells } from '../../../src/task-pane/first-job/job-cells';
import { type Around, lookAround, nextDrum, startJob } from '../../../src/task-pane/first-job/start-job';
import { steps } from '../../../src/task-pane/first-job/steps';
import { verdictOf } from '../../../src/task-pane/first-job/stops';
import { stopsOf } from '../../../src/task-pane/first-job/where';
import { watchUnits } from '../../../src/task-pane/units-watch';
import { readProfile } from '../../../src/units/profile';
import type { ReadyProfile } from '../../../src/workbooks/sheets/sheet-draft';
import { withShortSearches } from '../../functions/short-searches';
import { openReadyMade } from '../../workbooks/open-ready-made';
import { sampleWorkbook } from '../sample-host';
import { hostOfData } from '../workbook-host';
import { ComputingHost } from './computing-host';
import { type ScriptedDrum, scriptedDrums } from './scripted-drums';

withShortSearches();

const patient = { step: async () => undefined, finishing: () => undefined };
const blank = { sheets: [{ name: 'Sheet1', cells: [] }] };
const hosts: ComputingHost[] = [];

afterEach(() => {
  for (const host of hosts.splice(0)) host.close();
});

async function opened(workbook: Parameters<typeof ComputingHost.open>[0]): Promise<ComputingHost> {
  const host = await ComputingHost.open(workbook);
  hosts.push(host);
  return host;
}

function aroundOf(host: ComputingHost): Around {
  return { host, functionLibrary, units: watchUnits(host) };
}

async function fillAll(host: ComputingHost, job: Job, typed: ScriptedDrum['typed'], profile: ReadyProfile) {
  for (const [id, text] of Object.entries(typed) as [FieldId, string][]) {
    if (job.sheets[fields[id].sheet] !== undefined) {
      await fillField(host, job, id, { text, profile: readProfile(profile) });
    }
  }
}

async function verdict(host: ComputingHost, job: Job, profile: ReadyProfile) {
  return verdictOf(await readJobCells(host, job.sheets), job, readProfile(profile));
}

/** Follows the guide from its start to its end. */
async function guided(host: ComputingHost, { profile, typed }: ScriptedDrum): Promise<Job> {
  const around = aroundOf(host);
  const job = await startJob(around, profile, patient);
  await fillAll(host, job, typed, profile);
  expect(await verdict(host, job, profile)).toMatchObject({ stops: [], isDone: true });
  const complete = await withMaterials(around, job, '2027-01-01', patient);
  const { drumHeight = '', start = '' } = typed;
  await fillAll(host, complete, { ...typed, drumHeight, start }, profile);
  return complete;
}

/** Sheets and cells that both ways of filling must agree on; the guide's own mark stands below them. */
const compared: readonly (readonly [workbook: string, sheet: string, range: string])[] = [
  ['cone-cut-plan', 'Drums', 'A4:M20'],
  ['cone-cut-plan', 'Patterns', 'A4:M27'],
  ['cone-cut-plan', 'Cut plan', 'A4:F71'],
  ['cone-cut-plan', 'Base mix', 'A4:D23'],
  ['cone-cut-plan', 'Stand and ports', 'A4:F30'],
  ['cone-cut-plan', 'Marking out', 'A5:G40'],
  ['materials-sheet', 'Bank', 'A4:D23'],
  ['materials-sheet', 'Parts', 'A4:D38'],
  ['materials-sheet', 'Materials', 'A4:E51'],
  ['materials-sheet', 'Calendar', 'A4:C17'],
];

async function byHand({ profile, typed, byHand: entries }: ScriptedDrum) {
  const [cones, materials] = await Promise.all([
    openReadyMade('cone-cut-plan', profile),
    openReadyMade('materials-sheet', profile),
  ]);
  const rows = ['5', '6', '7'].flatMap((row) => [...'ABCDEFGHIJ'].map((letter) => [`Drums!${letter}${row}`, '']));
  const isOf = (sheet: string) => (one: readonly [string, unknown]) => one[0].startsWith(sheet) === true;
  const own = Object.entries(entries);
  await cones.type({
    ...Object.fromEntries(rows),
    ...Object.fromEntries(own.filter((one) => !isOf('Bank')(one))),
    'Patterns!B15': typed.name ?? '',
    'Stand and ports!B25': typed.name ?? '',
  });
  const at = (sheet: string, address: string) => cones.value(sheet, address) as number | string;
  await materials.type({
    'Bank!B5': 1,
    'Bank!B6': at('Drums', 'K5'),
    'Bank!B8': at('Drums', 'F5'),
    'Bank!B9': at('Drums', 'G5'),
    'Bank!B10': at('Drums', 'H5'),
    'Bank!B11': at('Drums', 'I5'),
    'Bank!B12': at('Drums', 'C15'),
    'Bank!B13': at('Patterns', 'F26'),
    'Bank!B14': at('Drums', 'C18'),
    'Bank!B15': at('Drums', 'C19'),
    'Bank!B16': at('Drums', 'C20'),
    'Bank!B18': at('Base mix', 'B17'),
    'Bank!B23': at('Stand and ports', 'B21'),
    'Materials!A8': '',
    'Materials!B8': '',
    'Materials!C8': '',
    'Materials!D8': '',
    'Calendar!B4': typed.start ?? '',
    ...Object.fromEntries(own.filter(isOf('Bank'))),
  });
  return { 'cone-cut-plan': cones, 'materials-sheet': materials };
}

/** Figures that were calculated in another order may differ in their last digits. */
function tidy(rows: readonly (readonly CellResult[])[]) {
  return rows.map((line) => line.map((value) => (typeof value === 'number' ? Number(value.toPrecision(11)) : value)));
}

/** What keeps a job at the step where the drum's height is typed. */
async function stopsAtBuy(host: ComputingHost, job: Job, profile: ReadyProfile) {
  const cells = await readJobCells(host, job.sheets);
  const read = readProfile(profile);
  return stopsOf('buy', cells, job, { verdict: verdictOf(cells, job, read), profile: read });
}

describe('the height of the drum', () => {
  // The cone's foot is 1 in, the cone 10 in and the water 12 in: a water line 23 in above the floor.
  test('must reach the water line', async () => {
    const [usDrum] = scriptedDrums.filter(({ profile }) => profile === 'US');
    const host = await opened(blank);
    const job = await guided(host, usDrum!);
    expect(await stopsAtBuy(host, job, 'US')).toEqual([]);
    await fillAll(host, job, { height: '10', depth: '12', rise: '1', drumHeight: '22.9' }, 'US');
    expect(await stopsAtBuy(host, job, 'US')).toMatchObject([
      {
        field: 'drumHeight',
        sentence: expect.stringMatching(/^Height of the drum: 22\.9 in\. The water line is 23 in /),
      },
    ]);
    await fillAll(host, job, { drumHeight: '23' }, 'US');
    expect(await stopsAtBuy(host, job, 'US')).toEqual([]);
    await fillAll(host, job, { depth: '31 cm' }, 'US');
    expect(await stopsAtBuy(host, job, 'US')).toHaveLength(1);
  });

  test('is not blamed for a pipe that the sheets do not know', async () => {
    const [usDrum] = scriptedDrums.filter(({ profile }) => profile === 'US');
    const host = await opened(blank);
    const job = await guided(host, usDrum!);
    const fill = (text: string) => fillField(host, job, 'pipeSize', { text, profile: readProfile('US') });
    for (const text of ['as wide as a fist', '0', '-2', '5 kg'])
      await expect(fill(text)).rejects.toThrow(new RegExp(`^Pipe: ${text} `));
    // Somebody types it into the cell itself.
    await host.write([{ sheet: 'Bank', row: 18, column: 1, cells: [['as wide as a fist']] }]);
    expect(await stopsAtBuy(host, job, 'US')).toMatchObject([
      { field: 'pipeSize', sentence: expect.stringMatching(/^Pipe size: as wide as a fist .*\.$/) },
    ]);
  });
});

describe('a first job that was guided gives the cells of sheets that were filled by hand', () => {
  test.each(scriptedDrums)(
    '$title',
    async (drum) => {
      const isSample = drum.profile === 'US';
      const host = await opened(isSample ? await sampleWorkbook('US/cone-cut-plan') : blank);
      await guided(host, drum);
      const hand = await byHand(drum);
      for (const [workbook, sheet, range] of compared) {
        const expected = hand[workbook as keyof typeof hand].values(sheet, range);
        expect(tidy(await host.values(sheet, range)), sheet).toEqual(tidy(expected));
      }
      // Nothing is left without a figure.
      const all = await Promise.all(compared.map(([, sheet, range]) => host.values(sheet, range)));
      expect(all.flat(2).filter((value) => typeof value === 'object')).toEqual([]);
      for (const { book } of Object.values(hand)) book.dispose();
    },
    120_000,
  );
});

describe('a reading that cannot be', () => {
  const [usDrum] = scriptedDrums;
  const impossible: readonly (readonly [FieldId, string, RegExp])[] = [
    [
      'drain',
      '24',
      /^Drain bore: 24 in\. Give a diameter from 0 to less than the inside diameter \(22\.5 in\)\. Measure the hole again/,
    ],
    ['drain', '0', /^Drain bore: 0 in\. A drain of 0 lets nothing out\./],
    ['diameter', '2250', /^Inside diameter: 2250 in\. No drum has this diameter/],
    ['girth', '7 in', /^Girth: 7 in\. No drum has this diameter/],
    [
      'height',
      '40',
      /^Height of the cone: 40 in\. The cone is taller than the drum is wide\. A wall at 45 degrees is 9\.25 in/,
    ],
    ['slant', '8 1/2', /^Slant of the cone: 8\.5 in\. From the drain to the drum it is 9\.25 in on the level already/],
    ['angle', '95', /^Wall of the cone from level: 95 °?.*90/],
    ['depth', '200', /^Water above the cone: 200 in\. No drum holds water this deep/],
    ['pieces', '1.5', /^Pieces: 1\.5\. The pieces must be a whole number/],
    ['lap', '9', /^Lap of a seam: 9 in\. The lap is too wide/],
    ['sheetWidth', '12', /^Pieces: 1\. A piece has a blank of .* cut \d+ pieces instead of 1|no number of pieces/],
  ];

  test('that is missing is asked for, and not to be measured again', async () => {
    const host = await opened(blank);
    const job = await startJob(aroundOf(host), 'US', patient);
    const { stops } = await verdict(host, job, 'US');
    // The height follows from the angle once the width is known.
    expect(stops.map(({ sentence }) => sentence)).toEqual([
      'Inside diameter is empty. Give the diameter, or the girth.',
      'Drain bore is empty. A drain of 0 lets nothing out.',
    ]);
    // Typed on the sheet; the function's own name for it is not said.
    await host.write([{ sheet: 'Drums', row: 4, column: 2, cells: [['2 1/2 feetz']] }]);
    const [unread] = (await verdict(host, job, 'US')).stops;
    expect(unread?.sentence).toMatch(
      /^Inside diameter: 2 1\/2 feetz\. Feetz is not a unit .*, such as 20 ft\. Measure it/,
    );
  });

  test('stops at its check and names its measurement, with the way out', async () => {
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    const job = await startJob(aroundOf(host), 'US', patient);
    const { drumHeight: _, start: __, ...drum } = usDrum?.typed ?? {};
    for (const [id, text, sentence] of impossible) {
      await fillAll(host, job, drum, 'US');
      await fillAll(host, job, { sheetWidth: '48', pieces: '1', lap: '0.75', [id]: text }, 'US');
      const { stops, isDone } = await verdict(host, job, 'US');
      expect(stops[0]?.sentence ?? `no stop for ${id} ${text}`).toMatch(sentence);
      expect(isDone, id).toBe(false);
      if (id !== 'sheetWidth') expect(stops[0]?.field).toBe(id);
    }
    await fillAll(host, job, { ...drum, sheetWidth: '48' }, 'US');
    expect(await verdict(host, job, 'US')).toMatchObject({ stops: [], isDone: true });
  }, 120_000);

  test('on its own is not written, and the field, what was given and what is allowed are said', async () => {
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    const job = await startJob(aroundOf(host), 'US', patient);
    const fill = (id: FieldId, text: string) => fillField(host, job, id, { text, profile: readProfile('US') });
    const refused: readonly (readonly [FieldId, string, string])[] = [
      ['depth', '-1', 'Water above the cone: -1 in is not allowed; give a length of more than 0 in'],
      ['depth', '0', 'Water above the cone: 0 or blank is not allowed; give a length of more than 0 in'],
      [
        'diameter',
        '1e400',
        'Inside diameter: 1e400 in is not allowed; give a dimension (in, mm, cm, m, ft or yd), such as 22 1/2 in',
      ],
      ['wall', '-1/8', 'Wall of the drum: -0.125 in is not allowed; give a length of at least 0 in'],
      ['sheetLength', '0', 'Length of a sheet: 0 or blank is not allowed; give a length of more than 0 in'],
      ['lap', '-1', 'Lap of a seam: -1 in is not allowed; give a length of at least 0 in'],
      ['angle', '-45', 'Wall of the cone from level: -45 degrees is not allowed; give an angle of more than 0 degrees'],
      ['drain', '5 kg', 'Drain bore: 5 kg is a mass; give a dimension (in, mm, cm, m, ft or yd), such as 22 1/2 in'],
    ];
    for (const [id, text, message] of refused) await expect(fill(id, text)).rejects.toThrow(message);
    expect(await host.values('Drums', 'C5:F5')).toEqual([['', '', '', '']]);
  });

  test('that cannot be read is not written, and what to type is said', async () => {
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    const job = await startJob(aroundOf(host), 'US', patient);
    const fill = (text: string) => fillField(host, job, 'drain', { text, profile: readProfile('US') });
    await fill('4');
    await expect(fill('22,5 in')).rejects.toThrow('22,5 in could be 22.5 in or 225 in; write the one that you mean');
    await expect(fill('wide')).rejects.toThrow('wide');
    expect(await host.values('Drums', 'F5')).toEqual([[4]]);
    // A third has no end as a number; the cell keeps what was typed, and the sheet reads it.
    await fillField(host, job, 'diameter', { text: '22 1/3', profile: readProfile('US') });
    expect(await host.values('Drums', 'C5')).toEqual([['22 1/3']]);
    expect(await host.values('Drums', 'K5')).toEqual([[expect.closeTo(22 + 1 / 3, 12)]]);
    // Text is never a formula of the person's workbook.
    await fillField(host, job, 'name', { text: '=1+1', profile: readProfile('US') });
    expect(await host.values('Drums', 'A5')).toEqual([['1+1']]);
  });
});

describe('a job that was left', () => {
  test('goes on at its step after a reload, with every figure in its field', async () => {
    const [, , girthOnly] = scriptedDrums;
    if (girthOnly === undefined) throw new Error('no such drum');
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    expect(await findJob(host)).toBeUndefined();
    let job = await guided(host, girthOnly);
    for (const { id } of steps) {
      job = await goToStep(host, job, id);
      expect(await findJob(hostOfData(host.saved()))).toEqual({ ...job, step: id });
    }
    const cells = await readJobCells(hostOfData(host.saved()), job.sheets);
    const shown = (['girth', 'wall', 'drain', 'slant', 'angle', 'height', 'diameter', 'start'] as const).map((id) =>
      typedIn(cells, id, job.row),
    );
    expect(shown).toEqual(['72', '0.125', '3 in', '15', '', '', '', '2027-03-20']);
    expect([wayInUse(cells, widthWays, job.row), wayInUse(cells, heightWays, job.row)]).toEqual([1, 2]);
  }, 120_000);

  test('is not mistaken for another once its rows were moved', async () => {
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    await startJob(aroundOf(host), 'US', patient);
    await host.write([{ sheet: 'Drums', row: 14, column: 0, cells: [['something else']] }]);
    await expect(findJob(host)).rejects.toThrow();
  });
});

describe('what a person has typed already', () => {
  test('stays: another drum goes into the next free row, and its own units hold', async () => {
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    await host.write([{ sheet: 'Drums', row: 5, column: 2, cells: [['21 3/4 in']] }]);
    const before = await host.values('Drums', 'A5:J7');
    expect(await lookAround(aroundOf(host))).toMatchObject({ free: 8, choosesUnits: false });
    const job = await startJob(aroundOf(host), 'metric', patient);
    expect(job.row).toBe(8);
    expect(await host.values('Drums', 'A5:J7')).toEqual(before);
    expect(await host.values('Silt units', 'B4')).toEqual([['US']]);
    await fillAll(host, job, { diameter: '20', drain: '4', depth: '18' }, 'US');
    expect(await verdict(host, job, 'US')).toMatchObject({ stops: [], isDone: true });
    const next = await nextDrum(aroundOf(host), job);
    expect(next).toMatchObject({ row: 9, step: 'measure' });
    expect(await host.values('Drums', 'A8:C9')).toEqual([
      ['My drum', '', 20],
      ['My drum', '', ''],
    ]);
    expect(await findJob(host)).toEqual(next);
  }, 120_000);

  test('stays where a sheet of the same name is there: new sheets get names of their own', async () => {
    const host = await opened({ sheets: [{ name: 'Drums', cells: [{ row: 0, column: 0, value: 'mine' }] }] });
    const job = await startJob(aroundOf(host), 'metric', patient);
    expect(job.sheets.drums).toBe('Drums 2');
    await fillAll(host, job, { diameter: '570', drain: '100', depth: '500' }, 'metric');
    expect(await verdict(host, job, 'metric')).toMatchObject({ stops: [], isDone: true });
    expect(await host.values('Drums', 'A1')).toEqual([['mine']]);
    const complete = await withMaterials(aroundOf(host), job, '2027-01-01', patient);
    await fillAll(host, complete, { drumHeight: '850' }, 'metric');
    expect(await host.values('Bank', 'B6')).toEqual([[570]]);
  }, 120_000);

  test('is turned with the units where nobody has typed anything yet', async () => {
    const host = await opened(await sampleWorkbook('US/cone-cut-plan'));
    expect(await lookAround(aroundOf(host))).toMatchObject({ asBuilt: 'US', choosesUnits: true });
    await startJob(aroundOf(host), 'metric', patient);
    const built = await openReadyMade('cone-cut-plan', 'metric');
    for (const [sheet, range] of [
      ['Drums', 'A15:E20'],
      ['Base mix', 'A16:D19'],
      ['Stand and ports', 'A16:D22'],
      ['Silt units', 'A4:C60'],
    ] as const) {
      expect(await host.values(sheet, range), sheet).toEqual(built.values(sheet, range));
    }
    built.book.dispose();
  }, 120_000);
});
