import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readyProfiles } from '../../src/workbooks/sheets/ready-made';
import { type OpenReadyMade, openReadyMade } from './open-ready-made';

describe.each(readyProfiles)('the workbook of own figures (%s)', (profile) => {
  let open: OpenReadyMade;
  beforeAll(async () => {
    open = await openReadyMade('own-figures', profile);
  });
  afterAll(() => open.book.dispose());

  const line = (row: number) => open.values('Figures', `A${row}:I${row}`)[0] ?? [];

  it('gives each figure with its error, ready to copy', () => {
    for (const row of [5, 7, 8, 9, 10]) {
      const [, value, error, , half, , , text] = line(row);
      expect(Number(half)).toBeCloseTo(2.449 * Number(error), 12);
      expect(String(text)).toMatch(/^\d+\.\d+ ± \d+\.\d+( (g\/m2\/d|kg\/h|lb\/h))?$/);
      expect(Number.parseFloat(String(text)) / Number(value)).toBeCloseTo(1, 1);
    }
    const scenario = new Map(open.values('Figures', 'G15:H19').map(([name, text]) => [name, text]));
    expect([...scenario.keys()]).toEqual(['conversion', 'solids share', 'removal', 'nitrification', 'air supply']);
    expect(scenario.get('removal')).toBe(line(8)[7]);
  });

  it('shows the same farm in both units, except for rounding of the typed numbers', () => {
    expect(Number(line(5)[1])).toBeCloseTo(0.1, 2);
    expect(Number(line(7)[1])).toBeCloseTo(0.185, 2);
    expect(Number(line(8)[1])).toBeCloseTo(0.349, 3);
  });

  it('weighs one farm: the fish add up, and the filter takes no more ammonia than the feed makes', () => {
    const [[fed], [start], [end], [taken], [died]] = open.values('Fish', 'F10:F14').map((row) => row.map(Number)) as [
      [number],
      [number],
      [number],
      [number],
      [number],
    ];
    const weighed = open.values('Fish', 'A6:B11').map(([day, mass]) => [Number(day), Number(mass)] as const);
    const [[firstDay, young], [lastDay, grown]] = [weighed[0]!, weighed.at(-1)!];
    const ofOne = profile === 'US' ? 1 / 16 : 1 / 1000;
    const [before, after] = [start / (young * ofOne), end / (grown * ofOne)];
    expect(before).toBeGreaterThan(after);
    // Those that are missing are the dead, each of a mass between the first and the last.
    const dead = before - after;
    expect(dead * young * ofOne).toBeLessThan(died + taken);
    expect(dead * grown * ofOne).toBeGreaterThan(died + taken);
    // Ammonia nitrogen per protein 0.092 (Timmons and Ebeling), feed of 32 % protein; samples after feeding take the peak.
    const made = (fed / (lastDay - firstDay)) * 0.32 * 0.092;
    const [removed] = open.values('Filter', 'E6:E6')[0] ?? [];
    expect(Number(removed) / made).toBeGreaterThan(0.5);
    expect(Number(removed) / made).toBeLessThan(1.5);
  });

  it('says that a figure comes from only three weighings, and widens it by t', async () => {
    await open.type({
      'Fish!A9': '',
      'Fish!B9': '',
      'Fish!C9': '',
      'Fish!A10': '',
      'Fish!B10': '',
      'Fish!C10': '',
      'Fish!A11': '',
      'Fish!B11': '',
      'Fish!C11': '',
    });
    const [, , error, readings, half, , , , sure] = line(5);
    expect(readings).toBe(3);
    // t at 0.84 with 1 degree of freedom is tan(0.34 pi).
    expect(Number(half) / Number(error)).toBeCloseTo(2.449 * Math.tan(0.34 * Math.PI), 2);
    expect(sure).toBe('only 3 readings: measure more');
  });

  it('leaves the scenario unchanged if a log is empty', async () => {
    const rows = [6, 7, 8, 9, 10, 11].flatMap((row) => [`Filter!B${row}`, `Filter!C${row}`]);
    await open.type(Object.fromEntries(rows.map((place) => [place, ''])));
    expect(line(8)[7]).toBe('not measured');
    expect(open.values('Figures', 'H17:H18')).toEqual([[''], ['']]);
    expect(line(7)[7]).toMatch(/±/);
  });
});
