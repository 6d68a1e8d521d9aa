import { describe, expect, test } from 'vitest';
import { callResult, formatValue } from '../../../src/manual/guide/formula-result';
import { guidePages } from '../../../src/manual/guide/guide-pages';
import { steps } from '../../../src/manual/guide/steps';

describe('the guide', () => {
  const pages = guidePages();

  test('has a page for each of twelve to fifteen steps, and one that lists them', () => {
    expect(steps.length).toBeGreaterThanOrEqual(12);
    expect(steps.length).toBeLessThanOrEqual(15);
    expect(new Set(pages.map(([path]) => path)).size).toBe(steps.length + 1);
  });

  test('shows no figure that a function does not give', () => {
    for (const { slug, calls } of steps) {
      const [, html = ''] = pages.find(([path]) => path === `guide/${slug}.html`) ?? [];
      expect(calls.length, slug).toBeGreaterThan(0);
      for (const { formula, column, table } of calls) {
        const result = table ? callResult(formula).at(-1)?.[0] : callResult(formula)[0]?.[column ?? 0];
        expect(result, formula).not.toBe('');
        expect(html).toContain(table ? formatValue(result, 4) : `<strong>${formatValue(result)}`);
      }
    }
  });

  test('knows what a cone of 45 degrees is, by geometry', () => {
    expect(callResult('=SILT.CONE.ANGLE("US",22.5,4,9.25)')).toEqual([[45]]);
    expect(callResult('=SILT.CONE.HEIGHT("US",22.5,4,45)')[0]?.[0]).toBeCloseTo(9.25, 10);
    // A tape of 72 in round the outside: 72 / pi less two walls of 1/8 in.
    expect(callResult('=SILT.TANK.GIRTH("US",72,0.125)')[0]?.[0]).toBeCloseTo(72 / Math.PI - 0.25, 10);
  });

  test('shows whole numbers whole and others with three digits', () => {
    expect([formatValue(46263), formatValue(22.668312), formatValue(0.0294402), formatValue('a < b')]).toEqual([
      '46263',
      '22.7',
      '0.0294',
      'a &lt; b',
    ]);
  });
});
