import { describe, expect, it } from 'vitest';
import { firstOf, monthLabel, monthOf } from '../../../src/formulas/numeric/calendar';
import { fitLine, mean } from '../../../src/formulas/numeric/line';
import { range } from '../../../src/formulas/numeric/range';
import { DAY, HOUR, MONTH, YEAR } from '../../../src/formulas/numeric/time';

describe('a line of least squares', () => {
  it('meets a calculation by hand', () => {
    // Means 2.5 and 5.75; sums 5 and 9.5 about them; left over 0.1, 0.2, -0.7, 0.4.
    const line = fitLine([1, 2, 3, 4], [3, 5, 6, 9]);
    expect(line.slope).toBeCloseTo(1.9, 12);
    expect(line.intercept).toBeCloseTo(1, 12);
    expect(line.residual).toBeCloseTo(0.7, 12);
    expect(line.spread).toBe(5);
  });

  it('keeps its digits far from 0', () => {
    // Deviations from the means stay small where the figures themselves are large.
    const [x, y] = [
      [0, 1, 3],
      [0, 2, 5],
    ].map((each) => each.map((figure) => 1e9 + figure)) as [number[], number[]];
    // Sums 14/3 and 23/3 about the means.
    expect(fitLine(x, y).slope).toBeCloseTo(23 / 14, 10);
  });

  it('has no slope where all x are one, and no figure where a y is missing', () => {
    const upright = fitLine([3, 3], [1, 2]);
    expect(upright.slope).toBeNaN();
    expect(upright.spread).toBe(0);
    expect(fitLine([1, 2, 3], [1, 2]).residual).toBeNaN();
    expect(fitLine([1, 2, 3], [1, 2]).slope).toBeNaN();
    expect(mean([1, 2, 6])).toBe(3);
  });
});

describe('months of spreadsheet dates', () => {
  // 1 May 2026 is 46143, as every spreadsheet with the 1900 date system has it.
  it('begin on the first, at midnight', () => {
    expect(monthOf(46143)).toBe(2026 * 12 + 4);
    expect(monthOf(46142.999)).toBe(2026 * 12 + 3);
    expect(monthOf(46143.999)).toBe(monthOf(46143));
    expect(firstOf(2026 * 12 + 4)).toBe(46143);
  });

  it('go on across a new year', () => {
    // 31 December 2026 is 46387.
    expect([46387, 46388].map(monthOf)).toEqual([2026 * 12 + 11, 2027 * 12]);
    expect(firstOf(2027 * 12)).toBe(46388);
    expect([2026 * 12 + 11, 2027 * 12].map(monthLabel)).toEqual(['2026-12', '2027-01']);
  });
});

describe('lengths of time', () => {
  it('are seconds, with a year of 365 days and its twelfth for a month', () => {
    expect([HOUR, DAY, MONTH, YEAR]).toEqual([3600, 86_400, 2_628_000, 31_536_000]);
  });
});

describe('a range in a unit', () => {
  it('is multiplied by what the unit is worth', () => {
    expect(range(1, 2, 4, 0.5)).toEqual({ low: 0.5, typical: 1, high: 2 });
    expect(range(1, 2, 4)).toEqual({ low: 1, typical: 2, high: 4 });
  });
});
