import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { argumentNames } from '../../src/functions/adapter';
import { call, refusal, spill } from './call';
import { CellError } from './cell-error';
import { exampleCall } from './example-call';

/** What a builder can mistype, and what the cell then says. */
const cases: readonly (readonly [title: string, says: string, name: string, ...values: readonly unknown[]])[] = [
  ['a number where the profile belongs', '22.5 is not a profile; put "US", "metric"', 'CONE.VOLUME', 22.5, 4, 9],
  ['a profile that is not one', 'metic', 'CONE.VOLUME', 'metic', 22.5, 4, 9],
  [
    'a blank required argument',
    'height: blank is not allowed; give a length of more than 0 in',
    'CONE.VOLUME',
    'US',
    22.5,
    4,
  ],
  ['zero where it cannot be', 'top: 0 or blank is not allowed', 'CONE.VOLUME', 'US', 0, 4, 9],
  [
    'a negative length',
    'height: -9 in is not allowed; give a length of more than 0 in',
    'CONE.VOLUME',
    'US',
    22.5,
    4,
    -9,
  ],
  ['a huge length', 'type 0 1/2', 'CONE.VOLUME', 'US', 1e300, 4, 9],
  ['a fraction that became a date', 'type 0 1/2', 'CONE.VOLUME', 'US', 46023, 4, 9],
  ['text that is not a number', 'top: ', 'CONE.VOLUME', 'US', 'NaN', 4, 9],
  ['a decimal comma', '22,5 in', 'CONE.VOLUME', 'US', '22,5 in', 4, 9],
  ['a quantity of another kind', 'volume', 'CONE.VOLUME', 'US', '55 gal', 4, 9],
  ['a unit that does not exist', 'furlongs', 'CONE.VOLUME', 'US', '3 furlongs', 4, 9],
  [
    'a bottom wider than the top',
    'bottom: 24 in is not allowed; give a length from 0 up to top (22.5 in)',
    'CONE.PATTERN',
    'US',
    22.5,
    24,
    9,
  ],
  [
    'an angle of 0',
    'angle: 0 or blank is not allowed; give an angle of more than 0 degrees',
    'CONE.HEIGHT',
    'US',
    22,
    4,
    0,
  ],
  ['an angle of 90', 'angle: 90 degrees is not allowed', 'CONE.HEIGHT', 'US', 22, 4, 90],
  ['no pieces', 'pieces: 0 or blank is not allowed; give a whole number', 'CONE.PATTERN', 'US', 22, 4, 9, 0],
  ['half a piece', 'pieces: 2.5 is not allowed; give a whole number', 'CONE.PATTERN', 'US', 22, 4, 9, 2.5],
  ['a lap wider than the piece', 'lap: 40 in is not allowed; give less than', 'CONE.PATTERN', 'US', 22, 4, 9, 6, 40],
  ['a lap that comes round to the other edge', 'lap: 3 in is not allowed', 'CONE.PATTERN', 'US', 22, 4, 1, 1, 3],
  ['a word that is not in the list', 'measured: "insde"', 'CONE.PATTERN', 'US', 22, 4, 9, 1, 0, 0, 'insde'],
  [
    'a share over 1',
    '32 reads as 3200 %, but at most 100 % is allowed; write 32 % or 0.32',
    'LOAD.AMMONIA',
    'US',
    2,
    32,
  ],
  [
    'water that is ice',
    'temperature: -1 °C is not allowed; give a temperature from 0 °C to 40 °C',
    'WATER.DENSITY',
    'metric',
    -1,
  ],
  ['water beyond the correlation', 'temperature: 150 °F is not allowed', 'WATER.DENSITY', 'US', 150],
  ['a pH of 15', 'ph: 15 is not allowed', 'WATER.AMMONIA', 'metric', 1, 15, 20],
  ['a grain density that looks like a specific gravity', 'SG 1.19', 'SETTLE.STOKES', 'metric', 0.1, 1.19, 20],
  ['a growth coefficient of another form', 'per cent form', 'STOCK.GROW', 'metric', 100, 60, 14, 1.6],
  ['half the name of a fish', 'nearest are rainbow trout', 'WATER.CHECK', 'metric', 'trout', 27, 7.2, 1, 0.2, 40, 5.5],
  ['a share beyond all percentages', '1e+308 is not allowed; give a share such as', 'LOAD.AMMONIA', 'US', 2, 1e308],
  ['a species that has no chart', 'nearest', 'WATER.CHECK', 'metric', 'tilapa', 27, 7.2, 1, 0.2, 40, 5.5],
  ['a pump curve of one point', 'curve', 'PIPE.DUTY', 'US', [[10, 5]], 4, 1.59, 30],
  [
    'a pump curve that rises',
    'curve',
    'PIPE.DUTY',
    'US',
    [
      [0, 5],
      [10, 8],
    ],
    4,
    1.59,
    30,
  ],
  ['a fitting nobody knows', 'not a known fitting', 'PIPE.LOSS', 'US', 20, 1.59, 100, '2 elbo'],
  ['a log date in words', 'log: row 1, date', 'HARVEST.LOG', 'metric', [['5th of May', 20, 0.02]]],
  ['an empty log', 'log: no rows were given', 'HARVEST.LOG', 'metric', [['', '', '']]],
  [
    'prices of packs that hold nothing',
    'prices: row 1, pack size: 0',
    'COST.LINES',
    [['rivets', 5]],
    [['rivets', 0, 6]],
  ],
];

describe('a mistyped call says what to do', () => {
  it.each(cases.map(([title, says, name, ...values]) => ({ title, says, name, values })))(
    '$title: SILT.$name',
    ({ says, name, values }) => {
      const message = refusal(name, ...values);
      expect(message).toMatch(/^#VALUE! /);
      expect(message).toContain(says);
    },
  );
});

describe('a fault in a table', () => {
  it('is named by the heading that was typed over it', () => {
    const log = [
      ['day', 'pulled (gal)', 'dry'],
      ['2026-05-01', 20, 0.02],
      ['', '', ''],
      ['2026-05-02', -3, 0.02],
    ];
    expect(refusal('HARVEST.LOG', 'US', log)).toContain('log: row 3, pulled (gal): -3 gal is not allowed');
  });
});

describe('a cell with a whole page in it', () => {
  const page = 'a long story '.repeat(1600);
  it.each(catalogue.map((row) => ({ name: row.name, row })))('is cut where SILT.$name names it', ({ name, row }) => {
    const names = argumentNames(row);
    const example = exampleCall(row);
    for (let place = 0; place < names.length; place++) {
      for (const given of [page, [[page, page, page, page, page, page, page, page, page, page]]]) {
        const values: unknown[] = [...example];
        values[place] = given;
        expect(refusal(name, ...values).length, names[place]).toBeLessThan(800);
      }
    }
  });
});

describe('where no published value covers the input', () => {
  it.each([
    ['a pipe size that is not made', 'PIPE.BORE', 'US', 2.7],
    ['a trout in water too warm for the chart', 'STOCK.FEEDRATE', 'metric', 'rainbow trout', 200, 25],
    ['a fish without a feeding chart', 'STOCK.FEEDRATE', 'metric', 'barramundi', 100, 25],
    ['a grain too fast for Stokes’ law', 'SETTLE.STOKES', 'metric', 1, 2650, 20],
  ])('%s is #N/A with the reason', (_, name, ...values) => {
    expect(refusal(name, ...values)).toMatch(/^#N\/A .{20}/);
  });

  it('Stokes’ refusal gives the Reynolds number and the next function', () => {
    expect(refusal('SETTLE.STOKES', 'metric', 1, 2650, 20)).toMatch(/Reynolds number would be \d+.*SETTLE\.VELOCITY/);
  });
});

describe('one bad row among good ones', () => {
  it('carries its own error and leaves the others whole', () => {
    const block = spill('CONE.PATTERN', 'US', [[22.5], [0], [20]], 4, 9);
    expect(block[0]!.every((cell) => typeof cell === 'number')).toBe(true);
    expect(block[1]![0]).toBeInstanceOf(CellError);
    expect(block[2]!.every((cell) => typeof cell === 'number')).toBe(true);
  });

  it('a grain lighter than water rises, at a negative velocity', () => {
    expect(call('SETTLE.VELOCITY', 'metric', 1, 950, 20)).toBeLessThan(0);
  });
});
