import { describe, expect, it } from 'vitest';
import { strataOf } from '../../../src/formulas/numeric/latin-hypercube';
import { percentile } from '../../../src/formulas/numeric/percentile';
import { isLogarithmic, middleOf, triangularQuantile } from '../../../src/formulas/numeric/triangle';
import { varianceShare } from '../../../src/formulas/numeric/variance-share';

const count = 1024;
const columnOf = (name: string) => strataOf(name, count);

describe('triangular quantiles', () => {
  // Closed form: F(x) = (x - a)² / ((b - a)(c - a)) up to the mode c, 1 - (b - x)² / ((b - a)(b - c)) above it.
  const below = (x: number, a: number, c: number, b: number): number =>
    x <= c ? (x - a) ** 2 / ((b - a) * (c - a)) : 1 - (b - x) ** 2 / ((b - a) * (b - c));

  it.each([
    [0.2, 0.3, 0.4],
    [2, 2, 6],
    [2, 6, 6],
    [-3, 1, 2],
  ])('of %d, %d, %d agree with the closed form', (low, typical, high) => {
    for (const p of [0.001, 0.1, 0.25, 0.5, 0.9, 0.999])
      expect(below(triangularQuantile(p, { low, typical, high }), low, typical, high)).toBeCloseTo(p, 12);
  });

  it('are those of the logarithm where the ends are more than five times apart', () => {
    const spread = { low: 0.04, typical: 0.25, high: 0.7 };
    expect(isLogarithmic(spread)).toBe(true);
    for (const p of [0.1, 0.5, 0.9]) {
      const x = Math.log(triangularQuantile(p, spread));
      expect(below(x, Math.log(0.04), Math.log(0.25), Math.log(0.7))).toBeCloseTo(p, 12);
    }
    expect(isLogarithmic({ low: 1, high: 5 })).toBe(false);
    expect(middleOf(0.1, 10)).toBeCloseTo(1, 12);
    expect(middleOf(1, 5)).toBe(3);
    expect(triangularQuantile(0.3, { low: 2, typical: 2, high: 2 })).toBe(2);
  });

  it('are met by percentiles of a Latin hypercube to a thousandth of the width', () => {
    const spread = { low: 1, typical: 2, high: 4 };
    const figures = Float64Array.from(columnOf('any'), (k) => triangularQuantile((k + 0.5) / count, spread)).sort();
    // Closed form of a triangle from 1 over 2 to 4: 1 + sqrt(3 p) below a third, 4 - sqrt(6 (1 - p)) above.
    const apart = (p: number, x: number): number => Math.abs(percentile(figures, p) - x);
    expect(apart(0.1, 1 + Math.sqrt(0.3))).toBeLessThan(0.003);
    expect(apart(0.5, 4 - Math.sqrt(3))).toBeLessThan(0.003);
    expect(apart(0.9, 4 - Math.sqrt(0.6))).toBeLessThan(0.003);
  });
});

describe('triangular quantiles at their limits', () => {
  it('reach their ends, and leave them by no rounding', () => {
    for (let low = 0.01; low < 1; low += 0.01) {
      const spread = { low, typical: 3 * low, high: 7 * low };
      const [first, last] = [triangularQuantile(0, spread), triangularQuantile(1, spread)];
      expect(first).toBeGreaterThanOrEqual(low);
      expect(last).toBeLessThanOrEqual(7 * low);
      expect(first / low).toBeCloseTo(1, 14);
      expect(last / (7 * low)).toBeCloseTo(1, 14);
    }
  });

  it('take a mode outside the ends for the end beside it, and ends the wrong way round for the first', () => {
    for (const [low, high] of [
      [2, 6],
      [2, 60],
    ] as const) {
      const at = (typical: number) => triangularQuantile(0.3, { low, typical, high });
      expect([at(1), at(100)]).toEqual([at(low), at(high)]);
      expect(at(low)).toBeLessThan(at(high));
    }
    expect(triangularQuantile(0.3, { low: 3, typical: 2, high: 1 })).toBe(3);
  });

  it('are of the logarithm only above 0 and above five times', () => {
    expect(isLogarithmic({ low: 0, high: 1 })).toBe(false);
    expect(isLogarithmic({ low: -60, high: -2 })).toBe(false);
    expect(isLogarithmic({ low: 1, high: 5.001 })).toBe(true);
  });
});

describe('a Latin hypercube', () => {
  it('takes every stratum once, in an order that the name alone decides', () => {
    expect([...columnOf('solids share')].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, at) => at));
    expect(columnOf('solids share')).toEqual(columnOf('solids share'));
    expect(columnOf('solids share')).not.toEqual(columnOf('removal'));
    // A change of the shuffle would change every plan that anyone has printed.
    expect([...strataOf('solids share', 8)]).toEqual([6, 3, 0, 4, 1, 5, 2, 7]);
  });

  it('has columns that do not follow each other', () => {
    const names = ['solids share', 'removal', 'nitrification', 'pad capture', 'a', 'b'];
    for (const one of names)
      for (const other of names) {
        if (one === other) continue;
        const [x, y] = [columnOf(one), columnOf(other)];
        const middle = (count - 1) / 2;
        let together = 0;
        for (let at = 0; at < count; at += 1) together += ((x[at] ?? 0) - middle) * ((y[at] ?? 0) - middle);
        expect(Math.abs(together / ((count * (count * count - 1)) / 12))).toBeLessThan(0.12);
      }
  });
});

describe('shares of the variance', () => {
  // Ishigami and Homma (1990), a = 7, b = 0.1: first-order indices 0.3139, 0.4424 and 0 (Saltelli et al. 2008).
  it('of Ishigami’s function are those published, to 0.05', () => {
    const [x, y, z] = ['x', 'y', 'z'].map(columnOf) as [Uint16Array, Uint16Array, Uint16Array];
    const angle = (k = 0): number => -Math.PI + (2 * Math.PI * (k + 0.5)) / count;
    const results = Float64Array.from(x, (_, at) => {
      const [a, b, c] = [angle(x[at]), angle(y[at]), angle(z[at])];
      return Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a);
    });
    expect(Math.abs(varianceShare(x, results) - 0.3139)).toBeLessThan(0.05);
    expect(Math.abs(varianceShare(y, results) - 0.4424)).toBeLessThan(0.05);
    expect(varianceShare(z, results)).toBeLessThan(0.05);
  });

  it('are 1 of the only input, and 0 of one that changes nothing', () => {
    const [x, y] = [columnOf('one'), columnOf('other')];
    const results = Float64Array.from(x, (k) => 3 + 2 * k);
    expect(varianceShare(x, results)).toBeGreaterThan(0.99);
    expect(varianceShare(y, results)).toBeLessThan(0.05);
    expect(varianceShare(x, new Float64Array(count).fill(0.1))).toBe(0);
  });

  it('leave out results that are no number', () => {
    const x = columnOf('one');
    const results = Float64Array.from(x, (k) => (k > 900 ? Number.POSITIVE_INFINITY : k));
    expect(varianceShare(x, results)).toBeGreaterThan(0.99);
  });
});

describe('shares of the variance by hand', () => {
  const none = Number.POSITIVE_INFINITY;
  it.each([
    // Means 1.5 and 4.5 about 3: 9 of 14 between; 1 - (5 / 2) / (14 / 3).
    ['two bins', [0, 1, 2, 3], [1, 2, 3, 6], 2, 13 / 28],
    ['the order of the strata, not of the results', [2, 0, 3, 1], [3, 1, 6, 2], 2, 13 / 28],
    ['bins that are not filled alike', [0, 1, 2, 3], [1, 2, 3, 6], 3, 25 / 28],
    ['a bin without results', [0, 1, 2, 3, 4, 5], [1, 2, 3, 6, none, none], 3, 13 / 28],
    ['as many bins as results', [0, 1, 2, 3], [1, 2, 3, 6], 4, 0],
    ['bins that explain less than chance', [0, 1, 2, 3], [1, 2, 1, 2], 2, 0],
    ['bins that explain everything', [0, 1, 2, 3], [1, 1, 1.0000000001, 1.0000000001], 2, 1],
    ['differences of rounding', [0, 1, 2, 3], [1e6, 1e6, 1e6 + 1e-10, 1e6 + 1e-10], 2, 0],
    ['nothing but zeros', [0, 1, 2, 3], [0, 0, 0, 0], 2, 0],
    ['no result at all', [0, 1], [none, none], 1, 0],
  ])('%s', (_, strata, results, bins, share) => {
    expect(varianceShare(strata, results, bins)).toBeCloseTo(share, 9);
  });
});

describe('percentiles', () => {
  it('interpolate at p (n - 1), and rank what never ends above every number', () => {
    expect(percentile([1, 2, 3, 4, 5], 0.1)).toBeCloseTo(1.4, 12);
    expect(percentile([1, 2, 3, 4, 5], 0.5)).toBe(3);
    expect(percentile([1, 2, Number.POSITIVE_INFINITY], 0.9)).toBe(Number.POSITIVE_INFINITY);
    expect(percentile([1, 2, Number.POSITIVE_INFINITY], 0.5)).toBe(2);
    // Rounding of the place counts for nothing, a millionth does.
    expect(percentile([1, 2, Number.POSITIVE_INFINITY], 0.5 + 1e-14)).toBe(2);
    expect(percentile([1, 2, Number.POSITIVE_INFINITY], 0.5 + 1e-6)).toBe(Number.POSITIVE_INFINITY);
    expect(percentile([1, 2, 3], 1)).toBe(3);
    expect(percentile([7], 0.3)).toBe(7);
    expect(percentile([], 0.5)).toBeNaN();
  });
});
