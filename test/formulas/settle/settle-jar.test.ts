import { describe, expect, it } from 'vitest';
import { meanOfCapped } from '../../../src/formulas/settle/settle-capture';
import { settleJar } from '../../../src/formulas/settle/settle-jar';
import { jarOracle } from '../../oracles/jar';
import { refusalOf } from '../refusal-of';
import { wholeRefusal } from '../whole-refusal';

const fall = 0.3;

describe('settleJar', () => {
  it('finds the median, spread and settleable share that the reference library settled a jar with', () => {
    for (const { median, spread, settleable, readings } of jarOracle.jars) {
      const fit = settleJar(
        fall,
        readings.map(([time, share]) => ({ time, share })),
      );
      expect(fit.median / median).toBeCloseTo(1, 6);
      expect(fit.spread / spread).toBeCloseTo(1, 6);
      expect(fit.settleable).toBeCloseTo(settleable, 6);
    }
  });

  it('is not thrown far by readings that are off by a hundredth', () => {
    const { median, spread, settleable, readings } = jarOracle.jars[0]!;
    const off = readings.map(([time, share], i) => ({ time, share: share + (i % 2 === 0 ? 0.01 : -0.01) }));
    const fit = settleJar(fall, off);
    expect(Math.abs(fit.median / median - 1)).toBeLessThan(0.1);
    expect(Math.abs(fit.spread / spread - 1)).toBeLessThan(0.2);
    expect(Math.abs(fit.settleable - settleable)).toBeLessThan(0.02);
  });

  it('finds a spread of 1 in a jar of grains that are all alike, whose share rises straight and then stops', () => {
    const velocity = 1e-3;
    const readings = [60, 120, 180, 240, 600].map((time) => ({
      time,
      share: 0.7 * Math.min(1, (velocity * time) / fall),
    }));
    const fit = settleJar(fall, readings);
    // No slope tells a spread of 1 from one a little over it, so it is only found so closely.
    expect(Math.abs(fit.median / velocity - 1)).toBeLessThan(2e-3);
    expect(Math.abs(fit.spread - 1)).toBeLessThan(0.05);
    expect(fit.settleable).toBeCloseTo(0.7, 4);
  });

  it('takes a thousand readings and refuses more, which would hold a sheet up', () => {
    const readings = Array.from({ length: 1001 }, (_, i) => ({ time: 60 + i, share: 1 - Math.exp(-(60 + i) / 200) }));
    expect(settleJar(1, readings.slice(1)).settleable).toBeGreaterThan(0.5);
    expect(() => settleJar(1, readings)).toThrow('at most 1000');
  });

  it.each([
    ['a wide spread read early', 7.8e-4, 4.56, 0.92, 17.3, 1.366, 8],
    ['a median faster than its first reading', 0.0283, 2.61, 0.794, 13.8, 2.289, 6],
    ['grains nearly alike, read at long intervals', 1.34e-3, 1.1016, 0.5998, 10.37, 3.1645, 6],
    ['grains nearly alike, read often', 1.183e-3, 1.0878, 0.4208, 12.7, 1.5284, 9],
  ])('finds %s, not the second-best fit that lies elsewhere', (_, median, spread, settleable, start, ratio, count) => {
    const readings = Array.from({ length: count }, (__, i) => {
      const time = start * ratio ** i;
      return { time, share: settleable * meanOfCapped(Math.log((median * time) / fall), Math.log(spread)) };
    });
    const fit = settleJar(fall, readings);
    expect(fit.median / median).toBeCloseTo(1, 6);
    expect(fit.spread / spread).toBeCloseTo(1, 6);
    expect(fit.settleable).toBeCloseTo(settleable, 6);
  });

  it('takes a first reading at which nothing has settled yet', () => {
    const { median, settleable, readings } = jarOracle.jars[2]!;
    const taken = [{ time: 0.01, share: 0 }, ...readings.map(([time, share]) => ({ time, share }))];
    const fit = settleJar(fall, taken);
    expect(Math.abs(fit.median / median - 1)).toBeLessThan(1e-3);
    expect(fit.settleable).toBeCloseTo(settleable, 3);
  });

  it('takes a jar whose mean pace has fallen to four fifths of its quickest, and none that has slackened less', () => {
    const jar = (last: number) => [
      { time: 0.5, share: 0.5 },
      { time: 0.75, share: 0.7 },
      { time: 1, share: last },
    ];
    expect(settleJar(fall, jar(0.8)).settleable).toBeGreaterThan(0.8);
    expect(refusalOf(() => settleJar(fall, jar(0.801)))).toMatchObject({
      argument: 'readings',
      advice: 'keep reading until the share settled stops rising: these readings show only its start',
    });
  });

  it('takes readings in any order', () => {
    const readings = jarOracle.jars[1]!.readings.map(([time, share]) => ({ time, share }));
    expect(settleJar(fall, [...readings].reverse())).toEqual(settleJar(fall, readings));
  });

  it('cannot fit two readings, solids that never settle, a share that does not rise, or only the start of the rise', () => {
    const jar = (...shares: number[]) => shares.map((share, i) => ({ time: 60 * (i + 1), share }));
    expect(() => settleJar(fall, jar(0.2, 0.4))).toThrow(/at least three/);
    expect(() => settleJar(fall, jar(0, 0, 0, 0))).toThrow(/none of these solids settled/);
    expect(() => settleJar(fall, jar(0.8, 0.8, 0.8))).toThrow(/must rise/);
    expect(() => settleJar(fall, jar(0.001, 0.002, 0.003, 0.004))).toThrow(wholeRefusal);
  });
});
