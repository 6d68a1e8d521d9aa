/** What a filter removes, from readings before and after it: worked by hand, and each bound. */
import { describe, expect, it } from 'vitest';
import { type FilterPair, filterTest } from '../../../src/formulas/filter/filter-test';
import { nitrificationLine } from '../../../src/formulas/filter/nitrification';

const pair = (inlet: number, outlet: number, row = 1): FilterPair => ({ row, inlet, outlet });
/** Shares of 0.5 and 0.25; 1 and 0.5 g/m3 removed. */
const two = [pair(2e-3, 1e-3), pair(2e-3, 1.5e-3, 2)];

describe('a filter that is tested', () => {
  it('takes the flow times the mean difference: 0.1 m3/s x 0.75 g/m3', () => {
    const { taken, share } = filterTest(0.1, two, undefined, 20);
    expect(taken).toBeCloseTo(7.5e-5, 15);
    expect(share).toBeCloseTo(0.375, 12);
  });

  it('has a standard error of s / sqrt(n): two shares 0.25 apart give 0.125, three evenly so 0.25 / sqrt 3', () => {
    expect(filterTest(0.1, two, undefined, 20).standardError).toBeCloseTo(0.125, 12);
    const three = [...two, pair(4e-3, 1e-3, 3)];
    expect(filterTest(0.1, three, undefined, 20).standardError).toBeCloseTo(0.25 / Math.sqrt(3), 12);
  });

  it('has no standard error from one pair', () => {
    expect(filterTest(0.1, two.slice(0, 1), undefined, 20).standardError).toBeUndefined();
  });

  it('has a rate only where its area is known', () => {
    expect(filterTest(0.1, two, undefined, 20)).toMatchObject({ rate: undefined, rateAt20: undefined });
    expect(filterTest(0.1, two, 5, 20).rate).toBeCloseTo(1.5e-5, 15);
  });

  it('has a rate at 20 °C from which the line of Zhu and Chen gives the rate measured', () => {
    for (const temperature of [14, 17, 20, 27]) {
      const { rate, rateAt20 } = filterTest(0.1, two, 5, temperature);
      expect(nitrificationLine(rateAt20!, temperature, 20, 'lower') / rate!).toBeCloseTo(1, 12);
    }
    // Colder water slows the filter, so at 20 °C it would do more.
    expect(filterTest(0.1, two, 5, 14).rateAt20).toBeGreaterThan(1.5e-5);
  });

  it('has none at 20 °C where it was tested outside 14 to 27 °C', () => {
    for (const temperature of [13.9, 27.1]) {
      const { rate, rateAt20 } = filterTest(0.1, two, 5, temperature);
      expect(rate).toBeCloseTo(1.5e-5, 15);
      expect(rateAt20).toBeUndefined();
    }
  });

  it('needs ammonia at the inlet, and names the row that has none', () => {
    for (const inlet of [0, -1e-4]) {
      expect(() => filterTest(0.1, [...two, pair(inlet, 0, 7)], undefined, 20)).toThrow(
        expect.objectContaining({ argument: 'inlet', advice: expect.stringMatching(/^row 7 has no ammonia/) }),
      );
    }
  });

  it('removes something on average, by mass and by share', () => {
    const none = expect.objectContaining({
      argument: 'outlet',
      advice: 'on average as much ammonia leaves as enters, so the filter removes none; check which end is which',
    });
    expect(() => filterTest(0.1, [pair(1e-3, 1e-3)], undefined, 20)).toThrow(none);
    expect(() => filterTest(0.1, [pair(1e-3, 2e-3)], undefined, 20)).toThrow(none);
    // More leaves than enters by mass, though the mean share is above 0.
    expect(() => filterTest(0.1, [pair(10, 12), pair(1, 0)], undefined, 20)).toThrow(none);
    expect(() => filterTest(0.1, [pair(10, 11), pair(1, 0)], undefined, 20)).toThrow(none);
    // Less leaves than enters by mass, though the mean share is 0 or below.
    expect(() => filterTest(0.1, [pair(10, 8), pair(1, 2)], undefined, 20)).toThrow(none);
    expect(() => filterTest(0.1, [pair(8, 4), pair(2, 3)], undefined, 20)).toThrow(none);
    expect(filterTest(0.1, [pair(10, 9), pair(1, 1)], undefined, 20).share).toBeCloseTo(0.05, 12);
  });
});
