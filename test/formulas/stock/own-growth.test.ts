import { describe, expect, it } from 'vitest';
import { type GrowthWeighing, stockCoefficient, stockConversion } from '../../../src/formulas/stock/own-growth';

/** Three weighings 10 days apart at 10 °C: 100 degree-days each. */
const weighings = (masses: readonly number[], temperature: number | undefined = 10): readonly GrowthWeighing[] =>
  masses.map((mass, i) => ({
    row: i + 1,
    date: 10 * i,
    mass: mass / 1000,
    temperature: i === 0 ? undefined : temperature,
  }));

describe('the coefficient of own fish', () => {
  it('is the slope of the cube root of grams on degree-days, in per cent: 1, 2, 3 over 0, 100, 200', () => {
    expect(() => stockCoefficient(weighings([1, 8, 27]))).toThrow(/grows that fast/);
    const fit = stockCoefficient(weighings([1, 8, 27], 40));
    expect(fit.coefficient).toBeCloseTo(0.25, 12);
    expect(fit.standardError).toBeCloseTo(0, 9);
    expect(fit.weighings).toBe(3);
  });

  it('has the standard error of least squares: roots 1, 2, 2 on 0, 400, 800 leave 1/6 over one degree of freedom', () => {
    const fit = stockCoefficient(weighings([1, 8, 8], 40));
    expect(fit.coefficient).toBeCloseTo(0.125, 12);
    expect(fit.standardError).toBeCloseTo(100 * Math.sqrt(1 / 6 / 320_000), 12);
  });

  it('divides by two degrees of freedom where there are four weighings: roots 1, 2, 2, 3 on 0, 400, 800, 1200', () => {
    const fit = stockCoefficient(weighings([1, 8, 8, 27], 40));
    expect(fit.coefficient).toBeCloseTo(0.15, 12);
    expect(fit.standardError).toBeCloseTo(100 * Math.sqrt(0.1 / 800_000), 12);
  });

  it('may be 0.5 and no more', () => {
    expect(stockCoefficient(weighings([1, 8, 27], 20.001)).coefficient).toBeCloseTo(0.5, 4);
    expect(() => stockCoefficient(weighings([1, 8, 27], 19.999))).toThrow(/grows that fast/);
  });

  it('needs three weighings in order, with their temperatures, and fish that grew', () => {
    expect(() => stockCoefficient(weighings([1, 8]))).toThrow(/^weighings: 2 of them fit any line/);
    expect(() => stockCoefficient(weighings([8, 8, 8]))).toThrow(/did not grow/);
    expect(() => stockCoefficient(weighings([27, 8, 1]))).toThrow(/did not grow/);
    expect(() => stockCoefficient(weighings([1, 8, 27], 0))).toThrow(/no degree-days/);
    const [first, second, third] = weighings([1, 8, 27]) as [GrowthWeighing, GrowthWeighing, GrowthWeighing];
    expect(() => stockCoefficient([first, { ...second, date: 0 }, third])).toThrow(/row 2 is not later/);
    expect(() => stockCoefficient([first, second, { ...third, date: 9 }])).toThrow(/row 3 is not later/);
    expect(() => stockCoefficient([first, second, { ...third, temperature: undefined }])).toThrow(/row 3 has no temp/);
  });
});

describe('feed conversion', () => {
  it('counts the dead fish, which ate too: 12 kg fed for 8 kg gained and 2 kg lost is 1.2', () => {
    expect(stockConversion(12, 8, 2)).toBeCloseTo(1.2, 12);
    expect(stockConversion(12, -1, 3)).toBeCloseTo(6, 12);
  });

  it('is nothing where nothing was gained', () => {
    expect(() => stockConversion(12, -2, 2)).toThrow(/nothing was gained/);
    expect(() => stockConversion(12, -2, 1)).toThrow(/nothing was gained/);
  });
});
