import { describe, expect, it } from 'vitest';
import { readyProfiles } from '../../src/workbooks/sheets/ready-made';
import { withShortSearches } from '../functions/short-searches';
import { isError, opensForEachTest } from './open-ready-made';

withShortSearches();

const opened = opensForEachTest();

describe('names that people change', () => {
  it('do not break a table of the cone cut plan, and a chooser says what it shows', async () => {
    const { type, value, values } = await opened('cone-cut-plan', 'US');
    await type({ 'Drums!A5': 'Yarrow', 'Patterns!B15': 'Fern', 'Stand and ports!B25': 'sedge', 'Marking out!B4': 9 });
    expect(value('Patterns', 'D15')).toBe('No drum Fern is in the list; showing drum 1: Yarrow');
    expect(value('Stand and ports', 'D25')).toBe('drum 3: Sedge');
    expect(value('Marking out', 'F4')).toBe('No drum 9 is in the list; showing drum 1: Yarrow');
    expect(value('Marking out', 'A5')).toBe('drums: 1: Yarrow; 2: Moss; 3: Sedge');
    for (const [sheet, range] of [
      ['Patterns', 'A4:K26'],
      ['Stand and ports', 'A4:E28'],
      ['Marking out', 'A4:G30'],
      ['Cut plan', 'A4:F12'],
    ] as const)
      expect(values(sheet, range).flat().filter(isError)).toEqual([]);
  });

  it('choose the drum with that number, even if its name is a number too', async () => {
    const { type, value } = await opened('cone-cut-plan', 'metric');
    await type({ 'Drums!A6': 'Reed', 'Marking out!B4': 2 });
    expect(value('Marking out', 'F4')).toBe('drum 2: Reed');
    // Two pieces a cone: each spans half the angle of the row, and marks end at it.
    const sector = value('Patterns', 'F6');
    await type({ 'Marking out!B4': 'Reed' });
    expect(value('Marking out', 'E4')).toBe(2);
    expect(typeof sector).toBe('number');
  });

  it('of scenarios do not empty the limits, chosen by number or by name', async () => {
    const { type, value, values } = await opened('stocking-scenarios', 'US');
    const before = values('Limit', 'A6:E17');
    await type({ 'Scenarios!D4': 'four hundred' });
    expect(values('Limit', 'A6:E17')).toEqual(before);
    expect(value('Limit', 'D4')).toBe('scenario 2: four hundred');
    await type({ 'Limit!B4': '350 fish' });
    expect(value('Limit', 'D4')).toBe('No scenario 350 fish is in the list; showing scenario 1: 120 fish');
    expect(values('Limit', 'A6:E17').flat().filter(isError)).toEqual([]);
    await type({ 'Limit!B4': '', 'Scenarios!E4': '120 fish' });
    expect(value('Limit', 'D4')).toBe('No scenario is chosen; showing scenario 1: 120 fish');
    expect(values('Limit', 'A6:E17').flat().filter(isError)).toEqual([]);
  });

  it('of scenarios are named by their fish, also after the count is changed', async () => {
    const { type, value, values } = await opened('stocking-scenarios', 'US');
    const titles = () => values('Scenarios', 'C4:F4').flat();
    expect(titles()).toEqual(['120 fish', '350 fish', '800 fish', '100, gravel beds']);
    await type({ 'Scenarios!C5': 800 });
    // The third farm has 800 fish too.
    expect(titles()).toEqual(['800 fish', '350 fish', '800 fish (2)', '100, gravel beds']);
    expect(values('Compare', 'C4:F4').flat()).toEqual(titles());
    await type({ 'Scenarios!D5': '' });
    expect(titles()[1]).toBe('farm 2');
    expect(value('Limit', 'D4')).toBe('scenario 2: farm 2');
  });

  it('show the last test if the chosen day was cleared', async () => {
    const { type, value, values } = await opened('water-book', 'metric');
    await type({ 'Tests!A11': 46_119 });
    expect(value('Verdict', 'D5')).toBe('No test was taken on that day; this is the last one, of 2026-05-18.');
    expect(values('Verdict', 'A8:F17').flat().filter(isError)).toEqual([]);
  });
});

describe('the user’s own parts', () => {
  it.each(readyProfiles)('are counted in the list and in the total (%s)', async (profile) => {
    const { type, value, values } = await opened('materials-sheet', profile);
    const before = value('Materials', 'D4') as number;
    const forOne = value('Build or buy', 'B7') as number;
    await type({
      'Materials!A9': 'shade cloth',
      'Materials!B9': 3,
      'Materials!C9': 'each',
      'Materials!D9': 12.25,
      // Prices has rivets in boxes of 50 at 6.50: 20 more open a second box beside the 36 of the bank.
      'Materials!A10': 'Rivets',
      'Materials!B10': 20,
    });
    expect(value('Materials', 'E10')).toBe('counted, at the price in Prices');
    expect(value('Materials', 'D4')).toBeCloseTo(before + 3 * 12.25 + 6.5, 9);
    expect(value('Build or buy', 'B7')).toBeCloseTo(forOne + (3 * 12.25 + 6.5) / 4, 9);
    const items = values('Materials', 'A18:A51').flat();
    expect(items).toContain('shade cloth');
    expect(items).toContain('total');
  });

  it('say why they cannot be counted, and do not change the others', async () => {
    const { type, value, values } = await opened('materials-sheet', 'US');
    const before = value('Materials', 'D4');
    await type({
      'Materials!A9': 'hose',
      'Materials!B9': '2,5',
      'Materials!A10': 'pipe',
      'Materials!B10': 3,
      'Materials!C10': 'm',
      'Materials!A11': 'clip',
      'Materials!B11': 3,
      'Materials!D11': -1,
      'Materials!D12': 4,
      // A name of nothing but spaces is none, and would leave the list without a total.
      'Materials!A13': '  ',
      'Materials!B13': 2,
      'Materials!D13': 4,
    });
    expect(values('Materials', 'E9:E13').flat()).toEqual([
      'not counted: give the quantity as a number',
      'not counted: Parts lists it in another unit',
      'not counted: the price is less than 0',
      'not counted: give a name',
      'not counted: give a name',
    ]);
    expect(value('Materials', 'D4')).toBe(before);
    await type({ 'Materials!A9': 'hose', 'Materials!B9': 2 });
    expect(value('Materials', 'E4')).toBe('total without 1 item that has no price');
  });
});

describe('one bad drum', () => {
  it('is named beside the cut plan, and the good drums are placed with their own numbers', async () => {
    const { type, value, values } = await opened('cone-cut-plan', 'US');
    const whole = values('Cut plan', 'A8:A12').flat();
    expect(whole).toEqual([1, 2, 2, 3, '']);
    await type({ 'Drums!C6': '22,3' });
    expect(value('Cut plan', 'A6')).toMatch(/^Not placed: Moss\. Sheets for the others: 1\./);
    expect(values('Cut plan', 'A8:A12').flat()).toEqual([1, 3, '', '', '']);
    expect(value('Cut plan', 'A5')).toBe(1);
    expect(value('Base mix', 'A13')).toBe('All drums, 1 left out');
    expect(value('Base mix', 'B13')).toBeCloseTo(
      (value('Base mix', 'B5') as number) + (value('Base mix', 'B7') as number),
      9,
    );
    await type({ 'Drums!C6': 21.75 });
    expect(value('Cut plan', 'A6')).toBe('');
  });
});

describe('sizes that must be a mistake', () => {
  it('give a caution in the row of the drum', async () => {
    const { type, value } = await opened('cone-cut-plan', 'US');
    expect([5, 6, 7].map((row) => value('Drums', `M${row}`))).toEqual(['', '', '']);
    expect(value('Drums', 'A13')).toBe('');
    await type({
      'Drums!C5': 223,
      'Drums!F6': 0,
      'Drums!C7': 9,
      'Drums!D7': '',
      'Drums!G7': 10,
      'Drums!A8': 'Reed',
      'Drums!C8': '22,3',
    });
    const said = [5, 6, 7, 8].map((row) => String(value('Drums', `M${row}`)).trim());
    expect(said[0]).toBe('No drum has this diameter: check the number and its unit.');
    expect(said[1]).toBe('A drain of 0 lets nothing out.');
    expect(said[2]).toBe('The cone is taller than the drum is wide.');
    expect(said[3]).toMatch(/^The inside diameter cannot be read: give a length such as 22 1\/2 in\./);
    expect(value('Drums', 'A13')).toMatch(/^Check Fern: No drum .*Moss: A drain of 0/);
    await type({ 'Drums!F7': 10, 'Drums!G7': 4 });
    expect(String(value('Drums', 'M7')).trim()).toBe('The drain is as wide as the drum.');
  });

  it('give a caution beside the cell for sheets and for the bank, in the units of the workbook', async () => {
    const cones = await opened('cone-cut-plan', 'metric');
    await cones.type({ 'Drums!C15': '2 in' });
    expect(cones.value('Drums', 'E15')).toBe(
      'CAUTION: 50.8 mm is not likely; the usual range is 0.2 to 10 mm. Check the number and its unit.',
    );
    cones.book.dispose();
    const bank = await opened('materials-sheet', 'US');
    await bank.type({ 'Bank!B6': 223, 'Bank!B8': 0 });
    expect(bank.value('Bank', 'D6')).toBe(
      'CAUTION: 223 in is not likely; the usual range is 5.91 to 59.06 in. Check the number and its unit.',
    );
    expect(bank.value('Bank', 'D8')).toMatch(/^CAUTION: 0 in is not likely/);
    await bank.type({ 'Bank!B6': 9, 'Bank!B8': 10, 'Bank!B9': 8 });
    expect(bank.value('Bank', 'D8')).toBe('CAUTION: the drain is as wide as the drum.');
  });

  it('give a caution that names the scenario', async () => {
    const { type, value, values } = await opened('stocking-scenarios', 'US');
    const row = 1 + values('Scenarios', 'B1:B60').flat().indexOf('drum diameter');
    expect(value('Scenarios', `H${row}`)).toBe('');
    await type({ [`Scenarios!D${row}`]: 225 });
    expect(value('Scenarios', `H${row}`)).toBe(
      'CAUTION: 225 in for 350 fish is not likely; the usual range is 5.91 to 59 in.',
    );
    await type({ [`Scenarios!C${row}`]: '3 in' });
    expect(value('Scenarios', `H${row}`)).toBe(
      'CAUTION: 3 in for 120 fish is not likely; the usual range is 5.91 to 59 in. 225 in for 350 fish is not likely; the usual range is 5.91 to 59 in.',
    );
  });

  // SRAC Publication 282 (Rakocy): 20 % of body mass a day at most, and 10 % at most from 5 g on.
  it.each([
    ['225 g', 0.1, ''],
    ['225 g', 0.101, 'CAUTION: 10.1 % for 120 fish is not likely; the usual range is 0.2 to 10 %.'],
    ['225 g', 0.15, 'CAUTION: 15 % for 120 fish is not likely; the usual range is 0.2 to 10 %.'],
    ['4.9 g', 0.2, ''],
    ['4.9 g', '21 %', 'CAUTION: 21 % for 120 fish is not likely; the usual range is 0.2 to 20 %.'],
    ['225 g', 0.002, ''],
    ['225 g', 0.0019, 'CAUTION: 0.19 % for 120 fish is not likely; the usual range is 0.2 to 10 %.'],
  ])('give a caution for fish of %s that are fed %s a day', async (mass, rate, told) => {
    const { type, value, values } = await opened('stocking-scenarios', 'metric');
    const names = values('Scenarios', 'B1:B60').flat();
    const row = (name: string): number => 1 + names.indexOf(name);
    await type({ [`Scenarios!C${row('fish mass')}`]: mass, [`Scenarios!C${row('feeding rate')}`]: rate });
    expect(value('Scenarios', `H${row('feeding rate')}`)).toBe(told);
  });
});

describe('a slip of the decimal point in the harvest book', () => {
  it.each(readyProfiles)('is in none of the pulls that the book comes with (%s)', async (profile) => {
    const { values } = await opened('harvest-book', profile);
    expect(values('Pulls', 'E6:E400').flat().join('')).toBe('');
  });

  // A fifth and five times the two pulls beside it: common practice, no source. Both sides of each bound.
  it.each([
    [[6, 6, 30], ''],
    [[6, 7, 35], ''],
    [
      [6, 6, 60],
      'CAUTION: a pull of 60 L is not likely; the usual range here is 1.2 to 30 L. Check the number and its unit.',
    ],
    [[6, 7, 35.1], /^CAUTION: a pull of 35\.1 L .* is 1\.2 to 35 L\./],
    [[6, 7, 1.2], ''],
    [[6, 7, 1.19], /^CAUTION: a pull of 1\.19 L .* is 1\.2 to 35 L\./],
    [[6, '6 L', '6 gal'], ''],
    [[6, '6 L', '60 gal'], /^CAUTION: a pull of 227\.\d+ L /],
  ] as const)('is told of in the row of its pull: %j', async (pulls, told) => {
    const { type, value, values } = await opened('harvest-book', 'metric');
    const [before, between, last] = pulls;
    await type({ 'Pulls!B20': before, 'Pulls!B21': between, 'Pulls!B22': last, 'Pulls!B23': 7, 'Pulls!B24': 6 });
    if (typeof told === 'string') expect(value('Pulls', 'E22')).toBe(told);
    else expect(value('Pulls', 'E22')).toMatch(told);
    // Nothing is said of the good pulls after it.
    expect(values('Pulls', 'E23:E24').flat()).toEqual(['', '']);
  });

  it('is told of in the first pull too, by those after it', async () => {
    const { type, value } = await opened('harvest-book', 'US');
    await type({ 'Pulls!B6': 40 });
    expect(value('Pulls', 'E6')).toMatch(/^CAUTION: a pull of 40 gal is not likely; the usual range .* gal\. /);
    expect(value('Pulls', 'E7')).toBe('');
  });

  // Raw sludge has about 2 % of solids and thickened sludge 5 to 22 % (van Rijn 2013).
  it.each([
    [0.05, ''],
    [0.0501, /^CAUTION: a solids share of 5\.01 % is not likely; the usual range is 0\.3 to 5 %\./],
    [0.2, /^CAUTION: a solids share of 20 % /],
    ['20 %', /^CAUTION: a solids share of 20 % /],
    [0.003, ''],
    [0.0029, /^CAUTION: a solids share of 0\.29 % /],
  ])('is told of in a solids share of %s', async (share, told) => {
    const { type, value } = await opened('harvest-book', 'US');
    await type({ 'Pulls!C30': share });
    if (typeof told === 'string') expect(value('Pulls', 'E30')).toBe(told);
    else expect(value('Pulls', 'E30')).toMatch(told);
  });
});

describe('a water test that endangers fish', () => {
  it('gets a verdict in its own row and colors the typed cell', async () => {
    const { type, value, values } = await opened('water-book', 'US');
    await type({
      'Tests!D6': 6.5,
      'Tests!C6': 8.2,
      'Tests!G7': 2,
      'Tests!E8': 4,
      'Tests!B9': 50,
      'Tests!F10': '40 mg/L as NO3',
      'Tests!D18': 1,
      'Tests!D19': 'none',
    });
    expect(values('Tests', 'I6:I10').flat()).toEqual([
      'too much un-ionized, ammonia too high',
      'oxygen too low',
      'nitrite too high',
      'temperature too low',
      'text is judged in Verdict',
    ]);
    expect(values('Tests', 'I13:I18').flat()).toEqual([
      'within limits',
      'within limits',
      'within limits',
      'within limits',
      'within limits',
      'ammonia not judged',
    ]);
    // Trout stand less: 23 °C is survived, 26 °C is not (FishBase, Oncorhynchus mykiss: to 25 °C).
    await type({ 'Verdict!B4': 'rainbow trout' });
    expect(value('Tests', 'I17')).toMatch(/temperature too high/);
    expect(value('Tests', 'I13')).not.toMatch(/temperature too high/);
  });
});

describe('how sure a plan is', () => {
  it.each(readyProfiles)('is shown for the chosen scenario, with what to measure first (%s)', async (profile) => {
    const { type, value, values } = await opened('stocking-scenarios', profile);
    expect(value('How sure', 'D4')).toBe('scenario 2: 350 fish');
    expect(value('How sure', 'A7')).toMatch(/^Measure this first: solids share\. It alone explains \d+% /);
    const rows = values('How sure', 'A10:E70');
    const chances = rows.filter(([name]) => String(name).startsWith('chance of first limit: '));
    expect(chances.reduce((sum, [, , , chance]) => sum + (chance as number), 0)).toBeCloseTo(1, 9);
    await type({ 'How sure!B6': 'flow needed' });
    expect(value('How sure', 'A7')).toMatch(/^Measure this first: removal\./);
    await type({ 'How sure!B6': 'no such thing' });
    expect(value('How sure', 'A7')).toMatch(/^Type the name of a result/);
  });
});

describe('a list that is refused', () => {
  const message = (value: unknown): string => (value as { error?: { message?: string } }).error?.message ?? '';

  it('leaves no total of 0 where a price is missing, but says which', async () => {
    const { type, value } = await opened('materials-sheet', 'US');
    await type({ 'Prices!C7': '' });
    const why = message(value('Materials', 'A17'));
    expect(why).toContain('prices: row 3, pack price');
    expect(message(value('Materials', 'D4'))).toContain(why);
    expect(message(value('Build or buy', 'B7'))).toContain(why);
  });

  it('gives its reason to what is made of its totals', async () => {
    const { type, value } = await opened('harvest-book', 'US');
    await type({ 'Pulls!B6': '' });
    const why = message(value('Months', 'A4'));
    expect(why).toContain('row 1, volume');
    for (const place of ['Garden!A16', 'Garden!B28', 'Solids share!B5', 'Solids share!B8'])
      expect(message(value(...(place.split('!') as [string, string]))), place).toContain(why);
  });
});
