import { describe, expect, it } from 'vitest';
import {
  filterAlkalinity,
  filterNitrify,
  filterOxygen,
  nitrificationLimits,
  nitrificationLine,
} from '../../../src/formulas/filter/nitrification';

describe('nitrification at a temperature', () => {
  it('gains 4.275 % a degree where ammonia limits and 1.108 % where oxygen does (Zhu and Chen 2002)', () => {
    expect(filterNitrify(1, 21, 20, 'ammonia')).toBeCloseTo(1.04275, 12);
    expect(filterNitrify(1, 21, 20, 'oxygen')).toBeCloseTo(1.01108, 12);
  });

  it('takes the lower: ammonia in colder water than the reference, oxygen in warmer', () => {
    for (const temperature of [14, 19, 20, 21, 27]) {
      const both = [filterNitrify(1, temperature, 20, 'ammonia'), filterNitrify(1, temperature, 20, 'oxygen')];
      expect(filterNitrify(1, temperature, 20, 'lower')).toBe(Math.min(...both));
    }
  });

  it('comes back to the rate it started from', () => {
    for (const limit of ['ammonia', 'oxygen'] as const) {
      expect(filterNitrify(filterNitrify(0.469, 14, 25, limit), 25, 14, limit)).toBeCloseTo(0.469, 12);
      expect(filterNitrify(0.469, 25, 25, limit)).toBeCloseTo(0.469, 15);
    }
  });

  it('falls near 1 °C to the 18 ± 5.1 % that Hoang et al., Water Research 49:215 (2014), measured', () => {
    expect(Math.abs(nitrificationLine(1, 1, 20, 'lower') - 0.18)).toBeLessThan(0.051);
  });

  it('grows with warmth, whatever holds it back', () => {
    for (const limit of nitrificationLimits) {
      for (let t = 0; t < 40; t++) {
        expect(nitrificationLine(1, t + 1, 20, limit)).toBeGreaterThan(nitrificationLine(1, t, 20, limit));
      }
    }
  });

  it('never falls under nothing', () => {
    expect(nitrificationLine(1, -20, 20, 'lower')).toBe(0);
  });

  it('is available at the ends of the temperatures that were studied, 14 and 27 °C', () => {
    for (const [temperature, reference] of [
      [14, 27],
      [27, 14],
    ] as const) {
      expect(filterNitrify(1, temperature, reference, 'oxygen')).toBe(
        nitrificationLine(1, temperature, reference, 'oxygen'),
      );
    }
  });

  it.each([
    ['temperature', 4, 20],
    ['temperature', 13.9, 20],
    ['temperature', 27.1, 20],
    ['reference', 20, 10],
    ['reference', 20, 30],
  ])('is not available for a %s outside them: %s from %s °C', (argument, temperature, reference) => {
    expect(() => filterNitrify(1, temperature, reference, 'lower')).toThrow(
      expect.objectContaining({
        argument,
        reason: 'unavailable',
        advice:
          'biofilms were studied from {low:temperature} to {high:temperature} (Zhu and Chen 2002); measure your own filter: see FILTER.TEST',
        figures: { low: 14, high: 27 },
      }),
    );
  });
});

describe('what nitrifying takes', () => {
  it('is 4.57 g oxygen a gram of nitrogen (US EPA 1975) and 7.14 g alkalinity (from memory)', () => {
    expect(filterOxygen(1)).toBeCloseTo(4.57, 2);
    expect(Math.abs(filterAlkalinity(1) - 7.14)).toBeLessThan(0.01);
  });
});
