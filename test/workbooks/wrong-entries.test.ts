import { describe, expect, it } from 'vitest';
import { withShortSearches } from '../functions/short-searches';
import { isError, opensForEachTest } from './open-ready-made';

withShortSearches();

/** Wrong entries that a sheet took for right ones, or that gave a figure without a word. */
const opened = opensForEachTest();

describe('the water book', () => {
  it.each(['goldfish', ''])('gives the fish no time and no verdict if the species is "%s"', async (species) => {
    const { type, value, values } = await opened('water-book', 'metric');
    expect(value('Oxygen and alkali', 'B8')).toBe(3);
    await type({ 'Verdict!B4': species });
    // The floor was 0, which doubled the minutes that the fish have.
    expect(value('Oxygen and alkali', 'B8')).not.toBe(0);
    expect(['B10', 'B11'].map((cell) => isError(value('Oxygen and alkali', cell)))).toEqual([true, true]);
    for (const verdict of values('Tests', 'I6:I17').flat()) expect(verdict).toMatch(/^no limits: choose a species/);
  });

  it('tells of oxygen that no tank holds, and of a date that is text', async () => {
    const { type, value } = await opened('water-book', 'US');
    await type({ 'Tests!G6': 68, 'Tests!A7': '9.3.26' });
    expect(value('Tests', 'I6')).toBe('oxygen too high to be right');
    expect(value('Tests', 'I7')).toBe('the date cannot be read');
    expect(value('Tests', 'I8')).toBe('within limits');
  });

  it('calls a dose unsafe only if it is, not if an entry is wrong', async () => {
    const { type, value } = await opened('water-book', 'metric');
    await type({ 'Oxygen and alkali!B15': 'potassium hydroxide', 'Oxygen and alkali!B20': 300 });
    expect(value('Oxygen and alkali', 'B24')).toBe('not safe at once');
    await type({ 'Oxygen and alkali!B5': -1500 });
    expect(isError(value('Oxygen and alkali', 'B24'))).toBe(true);
  });

  it('gives no dose for an older test if the last reading is text', async () => {
    const { type, value } = await opened('water-book', 'metric');
    await type({ 'Tests!A18': 46_200, 'Tests!B18': 24, 'Tests!C18': 7, 'Tests!H18': 'about 80' });
    // The alkalinity of the week before was taken without a word.
    expect(value('Oxygen and alkali', 'B21')).toBe('the last one is text');
    expect(value('Oxygen and alkali', 'B22')).toBe(7);
    expect(value('Oxygen and alkali', 'B24')).toContain('no dose');
    expect(value('Oxygen and alkali', 'A29')).toContain('is text');
    await type({ 'Tests!H18': 80, 'Tests!H6': 'about 80' });
    expect(value('Oxygen and alkali', 'B21')).toBe(80);
    expect(value('Oxygen and alkali', 'B24')).toBeGreaterThan(0);
  });

  it('gives no highest temperature or pH for a scenario if a test is text', async () => {
    const { type, value } = await opened('water-book', 'US');
    expect(value('For a scenario', 'B7')).toBeGreaterThan(60);
    await type({ 'Tests!B7': '95 F', 'Tests!C8': '9,5' });
    for (const cell of ['B5', 'B6', 'B7', 'B8', 'B9']) expect(value('For a scenario', cell)).toBe('a test is text');
  });
});

describe('the materials sheet', () => {
  it.each([
    ['the bank is wrong', { 'Bank!B6': 57 }],
    ['there are no drums', { 'Bank!B5': 0 }],
    ['a price is wrong', { 'Prices!B5': 0 }],
  ])('has no total and no saving if %s', async (_, entry) => {
    const { type, value } = await opened('materials-sheet', 'metric');
    expect(value('Materials', 'E4')).toBe('');
    await type(entry);
    expect(isError(value('Materials', 'D4'))).toBe(true);
    expect(value('Materials', 'E4')).toContain('No total');
    // A bank of which only the float switch was counted seemed to cost next to nothing.
    expect(isError(value('Build or buy', 'B7'))).toBe(true);
    expect(isError(value('Build or buy', 'B9'))).toBe(true);
  });

  it('tells of a pipe of 63 in, and of ten times the materials', async () => {
    const { type, value } = await opened('materials-sheet', 'metric');
    expect(value('Bank', 'D19')).toBe('nominal, as the shop calls it');
    await type({ 'Bank!B19': 63, 'Materials!B4': 10 });
    expect(value('Bank', 'D19')).toContain('CAUTION: 63 is read as inches');
    expect(value('Materials', 'E4')).toContain('CAUTION: 1000% extra');
    await type({ 'Bank!B19': '63 mm', 'Materials!B4': 0.1 });
    expect(value('Bank', 'D19')).toBe('nominal, as the shop calls it');
    expect(value('Materials', 'E4')).toBe('');
  });
});

describe('the cone cut plan', () => {
  it('tells of inches typed for millimeters and centimeters', async () => {
    const { type, value } = await opened('cone-cut-plan', 'metric');
    await type({ 'Drums!F5': 4, 'Drums!G6': 23, 'Stand and ports!B16': 37, 'Stand and ports!B19': 65 });
    expect(value('Drums', 'M5')).toContain('The drain is very narrow');
    expect(value('Drums', 'M6')).toContain('The cone is very flat');
    expect(value('Drums', 'M7')).toBe('');
    expect(value('Stand and ports', 'D16')).toContain('CAUTION: 37 mm is not likely');
    expect(value('Stand and ports', 'D19')).toContain('CAUTION: 65 kg/m3 is not likely');
  });

  it.each([
    ['girth', 'Drums!D5', '2 1/2 feetz', 'girth: feetz is not a unit that is read here; '],
    ['wall', 'Drums!E5', 'thin', 'thickness: thin is not allowed; give a dimension '],
    ['girth of less than nothing', 'Drums!D5', -1, 'girth: -1 in is not allowed; '],
  ])('refuses a drum of which a %s beside its diameter cannot be used', async (what, cell, entry, message) => {
    const { type, value } = await opened('cone-cut-plan', 'US');
    expect([value('Drums', 'K5'), value('Drums', 'M5')]).toEqual([22.5, '']);
    await type({ [cell]: entry });
    // The diameter was used, and the entry passed over in silence.
    for (const [sheet, result] of [
      ['Drums', 'K5'],
      ['Patterns', 'B5'],
    ] as const) {
      expect(value(sheet, result), sheet).toMatchObject({ error: { message: expect.stringContaining(message) } });
    }
    const [word = ''] = what.split(' ');
    expect(value('Drums', 'M5')).toContain(word);
    expect(value('Drums', 'A13')).toContain(`Check Fern: `);
    expect([value('Drums', 'M6'), value('Patterns', 'B6')]).toEqual(['', expect.any(Number)]);
    // A 0 may mean that nothing was measured.
    await type({ [cell]: 0 });
    expect([value('Drums', 'K5'), value('Drums', 'M5')]).toEqual([22.5, '']);
  });

  it('tells of a girth that does not belong to the diameter beside it, and of sizes without a drum', async () => {
    const { type, value } = await opened('cone-cut-plan', 'US');
    // Read as 30 in, which is no girth of a drum of 22 1/2 in.
    await type({ 'Drums!D5': '2 1/2 feets', 'Drums!D6': 69, 'Drums!F8': 4 });
    expect(value('Drums', 'M5')).toBe('The girth gives another diameter: clear the one that is wrong. ');
    expect(value('Drums', 'M6')).toBe('');
    expect(value('Drums', 'M8')).toContain('Give the drum a name. Give the diameter, or the girth.');
  });

  it('tells of parts and shares in the base mix that nobody mixes', async () => {
    const { type, value } = await opened('cone-cut-plan', 'US');
    await type({ 'Base mix!B17': 0.16, 'Base mix!B18': 10 });
    expect(value('Base mix', 'D17')).toContain('CAUTION: 0.16 is not likely');
    expect(value('Base mix', 'D18')).toContain('CAUTION: 10 is not likely');
  });
});
