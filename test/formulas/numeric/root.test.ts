import { describe, expect, it } from 'vitest';
import { rootBetween } from '../../../src/formulas/numeric/root';

/** The root, and where the function was asked for on the way. */
function search(of: (x: number) => number, low: number, high: number, tolerance = 0) {
  const asked: number[] = [];
  const root = rootBetween(
    (x) => {
      asked.push(x);
      return of(x);
    },
    low,
    high,
    tolerance,
  );
  return { root, asked };
}

/** Functions whose root is known in closed form, each with a bracket. */
const known: readonly (readonly [name: string, of: (x: number) => number, low: number, high: number, root: number])[] =
  [
    // The real root of Wallis's cubic by Cardano's formula.
    [
      'x³ - 2x - 5',
      (x) => x ** 3 - 2 * x - 5,
      2,
      3,
      Math.cbrt(2.5 + Math.sqrt(6.25 - 8 / 27)) + Math.cbrt(2.5 - Math.sqrt(6.25 - 8 / 27)),
    ],
    ['eˣ - 10', (x) => Math.exp(x) - 10, -5, 20, Math.LN10],
    ['1/x - 3', (x) => 1 / x - 3, 1e-3, 50, 1 / 3],
    ['sin x', Math.sin, 2, 5, Math.PI],
    ['a step at 0.7', (x) => (x < 0.7 ? -1 : 1), 0, 1, 0.7],
    // Toward the ends it comes back to 0, so that a parabola through three points can turn away from the root.
    ['a hump to each side', (x) => (x - 1) / (1 + 13.654 * (x - 1) ** 2), -1.314203, 5.651395, 1],
    ['a bend, steep then flat', (x) => (x < 1e-3 ? 1e6 * (x - 1e-3) : x - 1e-3), -1, 1000, 1e-3],
  ];

describe('a root between two ends', () => {
  it.each(known)('of %s is found from either side, never outside the ends', (_, of, low, high, root) => {
    for (const [from, to] of [
      [low, high],
      [high, low],
    ] as const) {
      const found = search(of, from, to);
      expect(Math.abs(found.root / root - 1)).toBeLessThan(1e-14);
      expect(Math.min(...found.asked)).toBe(low);
      expect(Math.max(...found.asked)).toBe(high);
      expect(found.asked.length).toBeLessThan(75);
    }
  });

  it('is an end where the function is 0 there', () => {
    expect(search((x) => x - 2, 2, 5)).toEqual({ root: 2, asked: [2, 5] });
    expect(search((x) => x - 5, 2, 5)).toEqual({ root: 5, asked: [2, 5] });
  });

  it('of a straight line takes one step, because the secant is exact', () => {
    const { root, asked } = search((x) => 4 * x - 3, 0, 8);
    expect(root).toBe(0.75);
    expect(asked).toHaveLength(3);
    expect(search((x) => 4 * x - 3, -4, 4).asked[2]).toBeCloseTo(0.75, 12);
  });

  it('takes no step after the third different point where x is a quadratic of y, because the interpolation is exact', () => {
    // √x - 1 = y gives x = (y + 1)², which three points determine.
    const { root, asked } = search((x) => Math.sqrt(x) - 1, 0.25, 3, 1e-9);
    expect(root).toBeCloseTo(1, 14);
    expect(asked).toHaveLength(5);
  });

  it.each([
    [1e-2, 8],
    [1e-6, 10],
    [1e-12, 12],
  ])('ends within the tolerance %d, in at most %d steps', (tolerance, steps) => {
    const { root, asked } = search((x) => Math.exp(x) - 10, 0, 5, tolerance);
    expect(Math.abs(root - Math.LN10)).toBeLessThanOrEqual(tolerance);
    expect(asked.length).toBeLessThanOrEqual(steps);
  });

  it('at a step is found by halving, to the tolerance', () => {
    for (let at = 0.05; at < 1; at += 0.05)
      expect(Math.abs(search((x) => (x < at ? -1 : 1), 0, 1, 0.01).root - at)).toBeLessThanOrEqual(0.01);
  });

  it('that is three in one is found to nine digits in a hundred steps', () => {
    const { root, asked } = search((x) => (x - 1) ** 3, -2, 5);
    expect(Math.abs(root - 1)).toBeLessThan(1e-9);
    expect(asked.length).toBeLessThanOrEqual(102);
  });
});
