import { describe, expect, it } from 'vitest';
import { readyProfiles } from '../../src/workbooks/sheets/ready-made';
import { opensForEachTest } from './open-ready-made';

const opened = opensForEachTest();
const message = (value: unknown): string =>
  typeof value === 'object' ? (value as { error: { message: string } }).error.message : `no error: ${value}`;

const [growth, conversion, solids, removal, nitrification, air] = [5, 6, 7, 8, 9, 10];

describe('a wrong entry among own figures', () => {
  // The entry, the cell that says what is wrong and how, and the lines of Figures that have no figure because of it.
  it.each<[string, number | string, string, RegExp, readonly (number | undefined)[]]>([
    ['Fish!A8', '', 'Fish!E5', /^weighings: row 3, date: blank is not allowed/, [growth]],
    ['Fish!B8', -5, 'Fish!E5', /^weighings: row 3, mass: -5 g is not allowed/, [growth]],
    ['Fish!B8', '105 L', 'Fish!E5', /^weighings: row 3, mass: 105 L is a volume/, [growth]],
    ['Fish!A8', 46_083, 'Fish!E5', /^weighings: row 3 is not later than the row before it/, [growth]],
    ['Fish!F12', 'many', 'Fish!F15', /many is not allowed; give a mass/, [conversion]],
    ['Fish!F12', '5 L', 'Fish!F15', /5 L is a volume; give a mass/, [conversion]],
    ['Fish!F12', '', 'Fish!F15', /blank is not allowed/, [conversion]],
    ['Fish!F13', '5 L', 'Fish!F15', /5 L is a volume; give a mass/, [conversion]],
    ['Solids!B8', '101 kg', 'Solids!F8', /101 kg is a mass; give a volume/, [solids]],
    ['Solids!I6', '', 'Solids!F8', /^captured: 0 or blank is not allowed/, [solids]],
    ['Filter!C8', '', 'Filter!E5', /^outlet: row 3 is blank but the other end is not/, [removal, nitrification]],
    ['Filter!F12', '', 'Filter!E5', /^temperature: 0 or blank is not allowed/, [removal, nitrification]],
    ['Air!B8', '', 'Air!D5', /^log: row 3, oxygen: blank is not allowed/, [air]],
    ['Air!A8', '', 'Air!D5', /^log: row 3, minutes: blank is not allowed/, [air]],
  ])('in %s, %j, is told of, and Figures leads there', async (place, entry, told, words, lines) => {
    const { type, value, values } = await opened('own-figures', 'metric');
    await type({ [place]: entry });
    const [sheet = '', cell = ''] = told.split('!');
    expect(message(value(sheet, cell))).toMatch(words);
    const shown = [growth, conversion, solids, removal, nitrification, air].map(
      (row) => values('Figures', `B${row}:H${row}`)[0],
    );
    for (const [at, line] of shown.entries()) {
      const isLost = lines.includes(5 + at);
      expect([5 + at, line?.[0] === '', line?.[6] === `look at ${sheet}`]).toEqual([5 + at, isLost, isLost]);
    }
  });

  it('leaves a week out whose row is not complete, and says so in the row', async () => {
    const { type, value } = await opened('own-figures', 'US');
    await type({ 'Solids!D8': '' });
    expect([value('Solids', 'F8'), value('Solids', 'I8'), value('Solids', 'F12')]).toEqual(['incomplete', 5, '']);
  });

  it.each(readyProfiles)('counts readings with a unit as it reads them (%s)', async (profile) => {
    const { type, values } = await opened('own-figures', profile);
    const before = values('Figures', 'B8:I10');
    await type({ 'Filter!B8': '0.9 mg/L', 'Filter!C8': '0.55 mg/L', 'Air!B8': '2.75 mg/L', 'Air!A8': '6 min' });
    const digits = (lines: typeof before) =>
      lines.map((line) => line.map((one) => (typeof one === 'number' ? Number(one.toPrecision(9)) : one)));
    expect(digits(values('Figures', 'B8:I10'))).toEqual(digits(before));
  });

  it('reads a biomass with its unit', async () => {
    const { type, value } = await opened('own-figures', 'metric');
    const before = value('Fish', 'F15') as number;
    await type({ 'Fish!F12': '42600 g', 'Fish!F11': '13.3 kg', 'Fish!F13': '' });
    expect(value('Fish', 'F15')).toBeCloseTo(before, 9);
  });

  // Three times beyond the published 1.4 to 1.8 of tilapia: common practice, no source. Feed less gain by hand.
  it.each([
    [5.39, 'one season: error unknown'],
    [5.41, 'CAUTION: 5.41 is not likely; the published range is 1.40 to 1.80.'],
    [0.468, 'one season: error unknown'],
    [0.465, 'CAUTION: 0.47 is not likely; the published range is 1.40 to 1.80.'],
  ])('says that a conversion of %f is not likely', async (of, told) => {
    const { type, value } = await opened('own-figures', 'metric');
    await type({ 'Fish!F10': of * (42.6 - 13.3 + 0.6) });
    expect(value('Figures', 'I6')).toBe(told);
  });
});

describe('a wrong entry in the harvest book', () => {
  it('without its date, a pull is told of and not left out', async () => {
    const { type, value } = await opened('harvest-book', 'US');
    await type({ 'Pulls!A8': '' });
    expect(message(value('Months', 'A4'))).toMatch(/^log: row 3, date: blank is not allowed/);
  });

  it('without what the drums capture, there is no solids share', async () => {
    const { type, value } = await opened('harvest-book', 'metric');
    await type({ 'Solids share!B7': '' });
    expect(message(value('Solids share', 'B8'))).toMatch(/^captured: 0 or blank is not allowed/);
  });
});
