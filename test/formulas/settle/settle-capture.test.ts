import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/formulas/numeric/normal';
import { type Capture, meanOfCapped, settleCapture } from '../../../src/formulas/settle/settle-capture';
import { captureOracle, normalOracle } from '../../oracles/capture';

const drum: Capture = { overflow: 3e-3, median: 3e-3, spread: 2.5, mixing: 1, settleable: 1, inLine: 1 };

describe('normalBelow', () => {
  it('agrees with the reference library to 1e-15', () => {
    for (const [x, below] of normalOracle.rows) expect(Math.abs(normalBelow(x) - below)).toBeLessThan(1e-15);
  });
});

describe('settleCapture', () => {
  it('agrees with the integral at high precision to 1e-7, for every mixing, spread and number in line', () => {
    for (const [ratio, spread, mixing, inLine, captured] of captureOracle.rows) {
      const share = settleCapture({ overflow: 1, median: ratio, spread, mixing, settleable: 1, inLine });
      expect(Math.abs(share - captured)).toBeLessThan(1e-7);
    }
  });

  it('is v/(v + v0) for one velocity in a well-mixed drum, min(1, v/v0) in an ideal one', () => {
    for (const ratio of [0.01, 0.5, 1, 3]) {
      const given = { ...drum, median: ratio * drum.overflow, spread: 1 };
      expect(settleCapture(given)).toBeCloseTo(ratio / (1 + ratio), 14);
      expect(settleCapture({ ...given, mixing: 'ideal' })).toBeCloseTo(Math.min(1, ratio), 14);
      expect(settleCapture({ ...given, mixing: 1e6 })).toBeCloseTo(1 - Math.exp(-ratio), 6);
    }
  });

  it('is exact to 1e-11 for one ideal drum, whose integral is closed', () => {
    const single = captureOracle.rows.filter(([, , mixing, inLine]) => mixing === 'ideal' && inLine === 1);
    expect(single.length).toBeGreaterThan(10);
    for (const [ratio, spread, mixing, inLine, captured] of single) {
      const share = settleCapture({ overflow: 1, median: ratio, spread, mixing, settleable: 1, inLine });
      expect(Math.abs(share - captured)).toBeLessThan(1e-11);
    }
  });

  it('is all where only one grain in a milliard settles more slowly than the water rises', () => {
    // 64 = 2^6: the median is just six deviations above the overflow rate, and then beyond them.
    for (const ratio of [64, 65, 1e6]) {
      const share = settleCapture({ ...drum, overflow: 1, median: ratio, spread: 2, mixing: 'ideal', inLine: 2 });
      expect(share).toBeCloseTo(1, 8);
    }
  });

  it('has no step where the spread falls to 1', () => {
    for (const mixing of ['ideal', 1, 4] as const) {
      for (const inLine of [1, 3]) {
        const given = { ...drum, median: 2e-3, mixing, inLine };
        const single = settleCapture({ ...given, spread: 1 });
        expect(settleCapture({ ...given, spread: 1 + 1e-7 })).toBeCloseTo(single, 6);
      }
    }
  });

  it('stays a share, grows with the velocity and shrinks with the flow', () => {
    for (const mixing of ['ideal', 1, 4] as const) {
      for (const spread of [1, 1.5, 4, 100]) {
        let last = 0;
        for (const median of [1e-7, 1e-5, 1e-4, 1e-3, 1e-2, 1, 100]) {
          const share = settleCapture({ ...drum, mixing, spread, median });
          expect(share).toBeGreaterThanOrEqual(last - 1e-12);
          expect(share).toBeLessThanOrEqual(1);
          expect(settleCapture({ ...drum, mixing, spread, median, overflow: 6e-3 })).toBeLessThanOrEqual(share + 1e-12);
          last = share;
        }
      }
    }
  });

  it('compounds drums in line velocity by velocity: less than if each drum met fresh solids', () => {
    const one = settleCapture(drum);
    const two = settleCapture({ ...drum, inLine: 2 });
    expect(two).toBeGreaterThan(one);
    expect(two).toBeLessThan(1 - (1 - one) ** 2);
    expect(settleCapture({ ...drum, spread: 1, inLine: 2 })).toBeCloseTo(0.75, 14);
  });

  it('never keeps the share that does not settle', () => {
    expect(settleCapture({ ...drum, settleable: 0.4 })).toBeCloseTo(0.4 * settleCapture(drum), 14);
    expect(settleCapture({ ...drum, settleable: 0.4, median: 1e3, inLine: 9 })).toBeLessThanOrEqual(0.4);
  });

  it('lies between well mixed and ideal for cells in between', () => {
    const mixed = settleCapture(drum);
    const cells = settleCapture({ ...drum, mixing: 5 });
    const ideal = settleCapture({ ...drum, mixing: 'ideal' });
    expect(cells).toBeGreaterThan(mixed);
    expect(cells).toBeLessThan(ideal);
  });
});

describe('meanOfCapped', () => {
  it('never leaves 0 to 1, however wide the spread', () => {
    for (const mean of [-700, -20, -1, 0, 1, 20, 700]) {
      for (const deviation of [0, 0.01, 1, 7, 30]) {
        const share = meanOfCapped(mean, deviation);
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1 + 1e-12);
      }
    }
  });
});
