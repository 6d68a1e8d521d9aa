import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/formulas/numeric/normal';

/** Upper tail by its integral, summed by Simpson's rule over twelve deviations. */
function tailByIntegral(x: number): number {
  const width = Math.min(12, 40 / Math.max(1, x));
  const panels = 12_000;
  const h = width / panels;
  let sum = 0;
  for (let i = 0; i <= panels; i++) {
    const t = x + i * h;
    // Without the factor of the end, so that a far tail keeps its digits.
    const height = Math.exp((x * x - t * t) / 2);
    sum += height * (i === 0 || i === panels ? 1 : i % 2 === 1 ? 4 : 2);
  }
  return (Math.exp((-x * x) / 2) * sum * h) / 3 / Math.sqrt(2 * Math.PI);
}

describe('the share of a normal distribution below a number of deviations', () => {
  it.each([0.1, 0.5, 1, 1.6448536269514722, 2.5, 4, 5.5, 7, 7.0710678, 7.0710679, 7.2, 8, 12, 25, 36])(
    'agrees with the integral at -%d, to 1e-14 and to 1e-8 of the share',
    (x) => {
      expect(Math.abs(normalBelow(-x) - tailByIntegral(x))).toBeLessThan(1e-14);
      expect(Math.abs(normalBelow(-x) / tailByIntegral(x) - 1)).toBeLessThan(1e-8);
    },
  );

  it('has the figures of the tables, and the same on both sides', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1.
    expect(normalBelow(1)).toBeCloseTo(0.841344746068543, 14);
    expect(normalBelow(2)).toBeCloseTo(0.977249868051821, 14);
    expect(normalBelow(0)).toBeCloseTo(0.5, 15);
    for (const x of [0.3, 1.7, 3, 6, 9]) expect(normalBelow(x) + normalBelow(-x)).toBeCloseTo(1, 15);
  });

  it('is 0 or 1 where the tail is below the smallest number', () => {
    expect(normalBelow(-37)).toBeGreaterThan(0);
    expect(normalBelow(-37.1)).toBe(0);
    expect(normalBelow(37.1)).toBe(1);
    expect(normalBelow(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalBelow(Number.POSITIVE_INFINITY)).toBe(1);
  });
});
