import { describe, expect, it } from 'vitest';
import { asNitrogen, readConcentration } from '../../src/units/concentration';
import { readProfile } from '../../src/units/profile';
import { readQuantity } from '../../src/units/quantity';

const US = readProfile('US');

describe('a concentration that says what it is measured as', () => {
  it.each([
    ['40 mg/L as NO3', 'NO3'],
    ['40 mg/L as NO3-N', 'N'],
    ['40 mg/L as NO₃⁻', 'NO3'],
    ['40 mg/L NO3', 'NO3'],
    ['40 mg/L NO3-N', 'N'],
    ['40 mg/L NO3--N', 'N'],
    ['40 mg/L nitrate', 'NO3'],
    ['40 mg/L nitrate-N', 'N'],
    ['40 mg/L nitrate nitrogen', 'N'],
    ['40 ppm (as NO2)', 'NO2'],
    ['0.04 g/L as NH4+', 'NH4'],
    ['40 mg/L as nh3', 'NH3'],
    ['40 mg/L TAN', 'N'],
    ['40 mg N/L', 'N'],
    ['40 mg NO3/L', 'NO3'],
    ['40 mg NO3-N/L', 'N'],
    ['40 as NO3', 'NO3'],
    ['40', undefined],
    ['40 mg/L', undefined],
    [40, undefined],
  ])('%s is as %s', (text, as) => {
    const read = readConcentration(US, text);
    expect(read.as).toBe(as);
    expect(read.si).toBeCloseTo(0.04, 15);
  });

  it('is nitrogen by the masses of its atoms', () => {
    expect(asNitrogen(44.27, 'NO3')).toBeCloseTo(10, 2);
    expect(asNitrogen(5, 'N')).toBe(5);
    // 0.57 g of NH3 is 0.469 g of nitrogen.
    expect(asNitrogen(0.57, 'NH3')).toBeCloseTo(0.469, 3);
  });

  it('is refused where that is not asked for, and where it is something else', () => {
    expect(() => readQuantity(US, 'concentration', '40 mg/L as NO3')).toThrow(
      /says what it is measured as.*its nitrogen is 22.6 % of it/,
    );
    expect(() => readQuantity(US, 'concentration', '9 mg/L as N')).toThrow(/give the number and its unit$/);
    expect(() => readConcentration(US, '40 mg/L as PO4')).toThrow(/^mg\/L as PO4 is not a unit/);
    expect(() => readConcentration(US, '40 gal as NO3')).toThrow(/is a volume; give a concentration/);
    expect(() => readConcentration(US, 'as NO3')).toThrow(/is not allowed; give a concentration/);
  });
});
