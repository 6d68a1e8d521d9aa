import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/convert';

describe('converting between units', () => {
  it.each<[unknown, string, string, number]>([
    [1, 'in', 'mm', 25.4],
    [82.55, 'mm', 'in', 3.25],
    [1, 'gal', 'L', 3.785411784],
    [1, 'imp gal', 'L', 4.54609],
    [100, '°C', '°F', 212],
    [100, 'C', 'F', 212],
    [-40, 'F', 'c', -40],
    [32, '°F', 'K', 273.15],
    [0, 'K', 'C', -273.15],
    ['1,000', 'mg', 'g', 1],
    ['2 1/2', 'ft', 'in', 30],
    [1, 'km', 'yd', 1093.613298337708],
    [1, 'gpm/ft2', 'm/h', 2.44475],
    [1000, 'kg/m3', 'SG', 1],
    [1, 'SG', 'g/cm3', 1],
    [35, 'ppt', 'psu', 35],
    [1, 'ppm', 'mg/L', 1],
    [32, '%', '', 0.32],
    [180, 'degrees', 'rad', Math.PI],
    [36, 'h', 'days', 1.5],
    [4.2, 'a lb', 'a kg', 4.2 / 0.45359237],
    [1, 'kg/m3', 'mg/L', 1000],
  ])('%s %s in %s is %s', (value, from, to, expected) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, 10);
  });

  it('gives exact decimals where the result has few', () => {
    expect(convert(3.25, 'in', 'mm')).toBe(82.55);
    expect(convert(82.55, 'mm', 'in')).toBe(3.25);
    expect(convert(0.1, 'm', 'mm')).toBe(100);
    expect(convert(68, 'F', 'C')).toBe(20);
  });

  it('converts nitrogen to the whole ion and back', () => {
    // 10 mg/L of nitrate nitrogen, the drinking-water limit of the US EPA (40 CFR 141.62), is 44.3 mg/L of nitrate.
    expect(convert(10, 'mg/L as N', 'mg/L as NO3')).toBeCloseTo(44.27, 2);
    expect(convert(44.27, 'mg/L as NO3', 'mg/L NO3-N')).toBeCloseTo(10, 2);
  });

  it.each<[unknown, string, string, string]>([
    [1, 'gal', 'ft', 'gal is a volume and ft is a dimension; give two units of one kind'],
    [1, 'F', 'ft', 'F is a temperature and ft is a dimension; give two units of one kind'],
    [
      1,
      'mg/L as NO3',
      'mg/L',
      'mg/L as NO3 says what it is measured as and mg/L does not; write it for both or neither',
    ],
    [1, '', 'm', 'blank is not a unit and m is a dimension; give two units of one kind'],
    ['5 in', 'in', 'mm', '5 in is not a number; give the number alone and its unit as the next argument'],
    [null, 'in', 'mm', 'blank is not a number; give the number alone and its unit as the next argument'],
    [Number.NaN, 'in', 'mm', 'NaN is not a number; give the number alone and its unit as the next argument'],
    ['2,5', 'in', 'mm', '2,5 could be 2.5 or 25; write the one that you mean'],
  ])('%s %s in %s is refused', (value, from, to, message) => {
    expect(() => convert(value, from, to)).toThrow(message);
  });

  it('gives the same again, also once more units were asked for than it remembers', () => {
    const asked = () => [convert(10, 'mg/L as N', 'mg/L as NO3'), convert(3.25, 'in', 'mm'), convert(100, '°C', '°F')];
    const first = asked();
    for (let i = 0; i < 450; i++) {
      expect(() => convert(1, `unit ${i}`, 'mm')).toThrow(`unit ${i} is not a unit`);
      if (i % 50 === 0) expect(asked()).toEqual(first);
    }
    expect(asked()).toEqual(first);
  });

  it('names the nearest units for one that is not known', () => {
    expect(() => convert(1, 'galons/h', 'L/h')).toThrow(/^galons\/h is not a unit that is read \(nearest: /);
  });
});
