import { describe, expect, it } from 'vitest';
import { isUnitless } from '../../src/units/kind-units';
import { type Kind, kinds } from '../../src/units/kinds';
import { readProfile } from '../../src/units/profile';
import { readQuantity } from '../../src/units/quantity';
import { Unreadable } from '../../src/units/unreadable';

const metric = readProfile('metric');
const US = readProfile('US');

function advice(profile: typeof metric, kind: Kind, value: unknown, atMost?: number): string {
  try {
    return `read as ${readQuantity(profile, kind, value, atMost)}`;
  } catch (error) {
    if (error instanceof Unreadable) return error.message;
    throw error;
  }
}

describe('a quantity with a unit of another kind', () => {
  it.each([
    ['dimension', '55 gal', '55 gal is a volume; give a dimension (in, mm, cm, m, ft or yd), such as 22 1/2 in'],
    [
      'volume',
      '22 in',
      '22 in is a dimension; give a volume (gal, L, mL, m3, in3, ft3, yd3, qt or imp gal), such as 20 gal',
    ],
    ['dimension', '5 m3/h', '5 m3/h is a flow; give a dimension (in, mm, cm, m, ft or yd), such as 22 1/2 in'],
    ['dimension', '20 °C', '20 °C is a temperature; give a dimension (in, mm, cm, m, ft or yd), such as 22 1/2 in'],
    ['temperature', '45 degrees', '45 degrees is an angle; give a temperature (°F, °C or K), such as 70 °F'],
    ['days', '3 lb', '3 lb is a mass; give a time (days, min, h or months), such as 20 days'],
    ['mass', '3 days', '3 days is a time; give a mass (lb, kg, g, oz, t or short ton), such as 20 lb'],
    ['count', '3 in', '3 in is a dimension; give a count, a number without a unit'],
    ['salinity', '5 mg/L', '5 mg/L is a concentration; give a salinity (g/kg, ppt or psu), such as 20 g/kg'],
    ['share', '5 mg/L', '5 mg/L is a concentration; give a share from 0 to 1, or a percentage such as 32 %'],
    ['number', '32 %', '32 % is a share; give a number, a number without a unit'],
    [
      'concentration',
      '2 meq/L',
      '2 meq/L is an alkalinity; give a concentration (mg/L, ppm, g/L or µg/L), such as 20 mg/L',
    ],
    [
      'alkalinity',
      '2 mg/L as N',
      '2 mg/L as N is a concentration; give an alkalinity (mg/L as CaCO3, meq/L, dKH or ppm), such as 20 mg/L as CaCO3',
    ],
    [
      'density',
      '1.2',
      '1.2 lb/ft3 is lighter than any grain that sinks or mix that sets; write SG 1.2 if it is a specific gravity',
    ],
  ] as const)('as %s, %s is refused and both kinds are named', (kind, text, message) => {
    expect(advice(US, kind, text)).toBe(message);
  });
});

describe('a unit that is not known', () => {
  it.each([
    ['dimension', '5 inchs of water', /^inchs of water is not a unit that is read here; give a dimension \(/],
    ['flow', '5 gpn', /^gpn is not a unit that is read here; give a flow \(gp[mh],/],
    ['dimension', '20 F', /^F is not a unit/],
    ['dimension', '20 C', /^C is not a unit/],
    ['dimension', '20 K', /^K is not a unit/],
    ['mass', '5 ton', /^ton is not a unit .* t or short ton|short ton/],
    ['volume', '5 ML', /^ML is not a unit that is read here; give a volume \(mL,/],
    ['portion', '5 Mg', /^Mg is not a unit that is read here; give a portion \((?:oz|g|mg)/],
    ['pressure', '5 MPa', /^MPa is not a unit that is read here; give a pressure \(kPa,/],
    ['viscosity', '1 MPa·s', /^MPa·s is not a unit/],
  ] as const)('as %s, %s is refused with those that are known, the nearest first', (kind, text, message) => {
    expect(advice(US, kind, text)).toMatch(message);
  });
});

describe('the example of a message', () => {
  it.each(kinds.filter((kind) => !isUnitless(kind)))('for %s is read, in both profiles', (kind) => {
    for (const profile of [metric, US]) {
      for (const entry of ['about 21', '2 1/2 feetz', '1e999']) {
        const [, example] = /, such as (.+)$/.exec(advice(profile, kind, entry)) ?? [];
        expect(advice(profile, kind, example), entry).toMatch(/^read as /);
      }
    }
  });
});

describe('text that has two readings', () => {
  it.each([
    ['22,5 in', '22,5 in could be 22.5 in or 225 in; write the one that you mean'],
    ['22,5', '22,5 could be 22.5 or 225; write the one that you mean'],
    ['0,500 in', '0,500 in could be 0.5 in or 500 in; write the one that you mean'],
    ['-1,25 in', '-1,25 in could be -1.25 in or -125 in; write the one that you mean'],
  ])('%s is refused with both', (text, message) => {
    expect(advice(US, 'dimension', text)).toBe(message);
  });
});

describe('text that is not a quantity', () => {
  it.each([
    'abc',
    '',
    '   ',
    '-',
    'NaN',
    'Infinity',
    '-Infinity',
    '1e999',
    'TRUE',
    '10-20 mm',
    '1/2/2026',
    '6 ft 14 in',
    '2 1/0 in',
    '1.2.3',
    '1.250,5',
    '1,2,3',
    '22 5/4 in',
    '22.5 1/2 in',
    '1/2.5 in',
    '0x10',
    '5--3',
    'in',
    "'",
    '$5',
    '=1+1',
    '6 ft 4',
    '6 ft - 4 ft',
    null,
    undefined,
    true,
    false,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    {},
    [],
    [[1]],
    () => 1,
    Symbol.iterator,
  ])('cannot read %s as a dimension', (value) => {
    expect(advice(metric, 'dimension', value)).toMatch(/; give a dimension \((?:mm|in|ft|m|cm|yd)/);
  });

  it('names a blank and a truth value as such', () => {
    expect(advice(metric, 'dimension', '')).toMatch(/^blank is not allowed/);
    expect(advice(metric, 'dimension', null)).toMatch(/^blank is not allowed/);
    expect(advice(metric, 'dimension', true)).toMatch(/^TRUE is not allowed/);
  });

  it('shortens long text and answers at once', () => {
    for (const piece of ['x', '1', ' ', '1 ', '1/', '1,', "1'", '-', '½', '(', 'm·', '1e', '1,000']) {
      expect(advice(metric, 'dimension', piece.repeat(10000)).length).toBeLessThan(160);
      expect(() => readProfile(piece.repeat(10000))).toThrow(Unreadable);
    }
  });

  it('cannot read a number that leaves the range of numbers', () => {
    expect(advice(metric, 'pressure', 1e307)).toMatch(/^1e\+307 kPa is not allowed/);
    expect(advice(metric, 'pressure', '1e307 bar')).toMatch(/is not allowed/);
  });
});

describe('a fraction that became a date', () => {
  it.each(['dimension', 'run', 'particle'] as const)('is refused as %s with the hint', (kind) => {
    for (const value of [46023, '46023', 36526, 73050]) expect(advice(metric, kind, value)).toMatch(/type 0 1\/2/);
    expect(advice(US, kind, 46023)).toMatch(/type 0 1\/2/);
  });

  it('is suspected of any bare length over 100 m, and of none with its unit', () => {
    expect(advice(metric, 'run', 100.5)).toMatch(/^100.5 m is longer than a bare number may be; .*type 0 1\/2/);
    expect(advice(US, 'dimension', 4000)).toMatch(/^4000 in is 101.6 m, longer/);
    expect(readQuantity(metric, 'run', '100.5 m')).toBe(100.5);
    expect(readQuantity(metric, 'run', 100)).toBe(100);
    expect(readQuantity(metric, 'dimension', 36525)).toBeCloseTo(36.525, 12);
    expect(readQuantity(metric, 'dimension', 46023.5)).toBeCloseTo(46.0235, 12);
    expect(readQuantity(readProfile('metric, particle µm'), 'particle', 46023)).toBeCloseTo(0.046023, 12);
  });

  it('is distinguished from an elevation by the largest value that the argument allows', () => {
    expect(readQuantity(metric, 'run', 1500, 9000)).toBe(1500);
    expect(advice(US, 'run', 46023, 9000)).toMatch(/type 0 1\/2/);
  });
});

describe('a bare share above 1', () => {
  it('is refused with both ways to write it', () => {
    expect(advice(metric, 'share', 32)).toBe('32 reads as 3200 %, but at most 100 % is allowed; write 32 % or 0.32');
    expect(advice(metric, 'share', '32')).toBe('32 reads as 3200 %, but at most 100 % is allowed; write 32 % or 0.32');
  });

  it('is read where the argument allows it', () => {
    expect(readQuantity(metric, 'share', 1.5, 3)).toBe(1.5);
    expect(advice(metric, 'share', 1.5)).toBe('1.5 reads as 150 %, but at most 100 % is allowed; write 1.5 % or 0.015');
    expect(advice(metric, 'share', 20, 3)).toBe('20 reads as 2000 %, but at most 300 % is allowed; write 20 % or 0.2');
  });
});

describe('a bare density that looks like a specific gravity', () => {
  it('is refused with the hint', () => {
    expect(advice(metric, 'density', 1.19)).toMatch(/write SG 1.19 /);
    expect(advice(metric, 'density', 24.9)).toMatch(/write SG/);
    expect(advice(US, 'density', 4.9)).toMatch(/write SG/);
  });

  it('is not suspected if the unit makes it likely, or in a blank cell', () => {
    expect(readQuantity(metric, 'density', 25)).toBe(25);
    expect(readQuantity(US, 'density', 5)).toBeCloseTo(80.092, 3);
    expect(readQuantity(readProfile('metric, density g/cm3'), 'density', 1.19)).toBeCloseTo(1190, 10);
    expect(readQuantity(metric, 'density', 0)).toBe(0);
  });
});

describe('a date', () => {
  it.each([
    '2026-02-30',
    '2025-02-29',
    '2026-13-01',
    '2026-00-10',
    '1899-12-31',
    '5/1/2026',
    '1 May 2026',
    -1,
    0,
    2958466,
    1e9,
  ])('cannot be %s', (value) => {
    expect(advice(metric, 'date', value)).toMatch(/give a date, such as 2026-05-01$/);
  });
});
