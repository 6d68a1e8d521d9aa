import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { baseUnits } from '../../src/units/base-units';
import { isUnitless, kindOfUnit, listedUnits, unitOfKind } from '../../src/units/kind-units';
import { kinds } from '../../src/units/kinds';
import { nitrogenShare } from '../../src/units/nitrogen-form';
import { readProfile } from '../../src/units/profile';
import { readQuantity } from '../../src/units/quantity';
import { gnuTemperatures, gnuUnits } from './gnu-units';

const metric = readProfile('metric');
const US = readProfile('US');
const factors = new Map(gnuUnits.map(([unit, , , factor]) => [unit, factor]));

/** GNU units prints 15 digits; atomic weights behind these two differ in the fifth. */
const toleranceOf = (unit: string) => (unit === 'meq/L' || unit === 'dKH' ? 2e-5 : 6e-15);

describe('the factors of units', () => {
  const listed = kinds
    .filter((kind) => kind !== 'temperature')
    .flatMap((kind) => listedUnits(kind).map((unit) => [kind, unit] as const));

  it.each(listed)('%s in %s agrees with GNU units', (kind, unit) => {
    const factor = factors.get(unit);
    expect(factor, `GNU units was not asked for ${unit}`).toBeDefined();
    for (const count of [1, 3.7]) {
      const read = readQuantity(US, kind, `${count} ${unit}`);
      expect(Math.abs(read / (count * factor!) - 1)).toBeLessThan(toleranceOf(unit));
    }
  });

  it.each(kinds.filter((kind) => kind !== 'temperature' && !isUnitless(kind)))(
    '%s as a bare number is in the unit of the profile',
    (kind) => {
      for (const profile of [metric, US]) {
        const { symbol, inverse, scale } = profile.units[kind];
        const bare = kind === 'density' ? 30 : 0.5;
        const factor = factors.get(symbol)!;
        expect(Math.abs(readQuantity(profile, kind, bare) / (bare * factor) - 1)).toBeLessThan(toleranceOf(symbol));
        expect(Math.abs(scale * inverse - 1)).toBeLessThan(4e-16);
      }
    },
  );

  it.each(baseUnits.map(([symbol]) => symbol))('%s, which others are composed of, agrees with GNU units', (symbol) => {
    const text = kindOfUnit(symbol) ? symbol : `a ${symbol}`;
    const measure = unitOfKind(kindOfUnit(text)!, text)!;
    const factor = factors.get(text)!;
    expect(Math.abs(measure.numerator / measure.denominator / factor - 1)).toBeLessThan(6e-15);
  });

  it.each(gnuTemperatures)('%s agrees with GNU units', (text, celsius) => {
    expect(readQuantity(US, 'temperature', text)).toBeCloseTo(celsius, 10);
  });
});

/** Where mathjs 15.2.0 knows the unit too, to the digits that it stores of psi and hp; its mmHg is a rounded one. */
describe('the factors of units beside a second library', () => {
  const math = create(all!);
  const both: readonly (readonly [string, string, string])[] = [
    ['in', 'in', 'm'],
    ['ft', 'ft', 'm'],
    ['yd', 'yd', 'm'],
    ['ha', 'hectare', 'm2'],
    ['gal', 'gallon', 'm3'],
    ['qt', 'quart', 'm3'],
    ['pt', 'pint', 'm3'],
    ['fl oz', 'fluidounce', 'm3'],
    ['lb', 'lbm', 'kg'],
    ['oz', 'oz', 'kg'],
    ['short ton', 'ton', 'kg'],
    ['psi', 'psi', 'Pa'],
    ['atm', 'atm', 'Pa'],
    ['bar', 'bar', 'Pa'],
    ['hp', 'hp', 'W'],
    ['lb/ft3', 'lbm/ft^3', 'kg/m^3'],
    ['gpm', 'gallon/minute', 'm^3/s'],
    ['cfm', 'ft^3/minute', 'm^3/s'],
    ['gpm/ft2', 'gallon/minute/ft^2', 'm/s'],
  ];

  it.each(both)('%s agrees with mathjs', (unit, theirs, si) => {
    const measure = unitOfKind(kindOfUnit(unit)!, unit)!;
    const factor = math.unit(1, theirs).toNumber(si);
    expect(Math.abs(measure.numerator / measure.denominator / factor - 1)).toBeLessThan(1e-6);
  });
});

describe('conventional figures', () => {
  it('takes a milliequivalent of alkalinity for 50 mg/L as CaCO3, as Standard Methods 2320 B does', () => {
    // Standard Methods for the Examination of Water and Wastewater, method 2320 B: factor 50 000 mg CaCO3 an equivalent (from memory).
    expect(readQuantity(metric, 'alkalinity', '1 meq/L')).toBeCloseTo(0.05, 4);
  });

  it('takes a German degree of hardness for 17.85 mg/L as CaCO3', () => {
    // DIN 38409-6: 1 °dH is 0.1783 mmol/L; with CaCO3 at 100.09 g/mol, 17.85 mg/L (from memory).
    expect(readQuantity(metric, 'alkalinity', '1 dKH') * 1000).toBeCloseTo(0.1783 * 100.09, 2);
  });

  it('takes nitrate for 4.43 times and ammonia for 1.216 times its nitrogen', () => {
    // 10 mg/L NO3-N is 44.3 mg/L NO3: US EPA and WHO drinking-water guidance (from memory). NH3/NH3-N 1.2159.
    expect(1 / nitrogenShare.NO3).toBeCloseTo(4.427, 3);
    expect(1 / nitrogenShare.NO2).toBeCloseTo(3.284, 3);
    expect(1 / nitrogenShare.NH3).toBeCloseTo(1.216, 3);
    expect(1 / nitrogenShare.NH4).toBeCloseTo(1.288, 3);
    expect(nitrogenShare.N).toBe(1);
  });
});
