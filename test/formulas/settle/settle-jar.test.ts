import { describe, expect, it } from 'vitest';
import { settleJar } from '../../../src/formulas/settle/settle-jar';
import { jarOracle } from '../../oracles/jar';
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
