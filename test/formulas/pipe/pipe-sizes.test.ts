import { describe, expect, it } from 'vitest';
import { nominalName, pipeBore, pipeSize, pipeSizes } from '../../../src/formulas/pipe/pipe-sizes';
import type { Refusal } from '../../../src/formulas/refusal';
import { circleArea } from '../../../src/formulas/tank/tank-shape';
import { wholeRefusal } from '../whole-refusal';

/** ASTM D1785: outside diameter, least wall and its tolerance, in, schedules 40 and 80. */
const standard = [
  [0.5, 0.84, 0.109, 0.02, 0.147, 0.02],
  [0.75, 1.05, 0.113, 0.02, 0.154, 0.02],
  [1, 1.315, 0.133, 0.02, 0.179, 0.021],
  [1.25, 1.66, 0.14, 0.02, 0.191, 0.023],
  [1.5, 1.9, 0.145, 0.02, 0.2, 0.024],
  [2, 2.375, 0.154, 0.02, 0.218, 0.026],
  [2.5, 2.875, 0.203, 0.024, 0.276, 0.033],
  [3, 3.5, 0.216, 0.026, 0.3, 0.036],
  [4, 4.5, 0.237, 0.028, 0.337, 0.04],
  [5, 5.563, 0.258, 0.031, 0.375, 0.045],
  [6, 6.625, 0.28, 0.034, 0.432, 0.052],
  [8, 8.625, 0.322, 0.039, 0.5, 0.06],
] as const;

describe('pipeBore', () => {
  it('is the outside diameter less two walls of ASTM D1785, each half its tolerance thick over the least', () => {
    for (const [size, outside, wall40, more40, wall80, more80] of standard) {
      const inch = { series: 'inch', size } as const;
      expect(Math.abs(pipeBore(inch, 40) / 0.0254 - (outside - 2 * wall40 - more40))).toBeLessThan(1.1e-3);
      expect(Math.abs(pipeBore(inch, 80) / 0.0254 - (outside - 2 * wall80 - more80))).toBeLessThan(1.1e-3);
    }
  });

  it('has metric walls of the ratio that the pressure class asks for, SDR 21 and 13.6 to 90 mm, 26 and 17 above', () => {
    for (const [schedule, small, large] of [
      [10, 21, 26],
      [16, 13.6, 17],
    ] as const) {
      for (const { size, bore } of pipeSizes('metric', schedule)) {
        const wall = (size - bore * 1e3) / 2;
        expect(Math.abs(wall - size / (size <= 90 ? small : large))).toBeLessThan(0.17);
      }
    }
  });

  it('grows with the size and shrinks with the class', () => {
    for (const [series, thin, thick] of [
      ['inch', 40, 80],
      ['metric', 10, 16],
    ] as const) {
      const bores = pipeSizes(series, thin).map(({ bore }) => bore);
      expect([...bores].sort((a, b) => a - b)).toEqual(bores);
      for (const { size, bore } of pipeSizes(series, thin)) {
        expect(pipeBore({ series, size }, thick)).toBeLessThan(bore);
      }
    }
  });

  it('refuses a size or class that is not published, and lists those that are', () => {
    expect(() => pipeBore({ series: 'inch', size: 2.2 }, 40)).toThrow(/2-1\/2 in/);
    expect(() => pipeBore({ series: 'inch', size: 2 }, 60)).toThrow(/40 or 80/);
    expect(() => pipeBore({ series: 'metric', size: 63 }, 40)).toThrow(/pressure class/);
    try {
      pipeBore({ series: 'inch', size: 7 }, 40);
      expect.unreachable();
    } catch (error) {
      expect((error as Refusal).reason).toBe('unavailable');
    }
  });
});

describe('pipeSize', () => {
  it('names the smallest pipe in which the flow is not too fast', () => {
    for (const [series, schedule] of [
      ['inch', 40],
      ['inch', 80],
      ['metric', 10],
      ['metric', 16],
    ] as const) {
      const sizes = pipeSizes(series, schedule);
      sizes.forEach(({ size, bore }, i) => {
        const most = 1.5 * circleArea(bore);
        expect(pipeSize(most, 1.5, schedule)).toBe(nominalName({ series, size }));
        if (i + 1 < sizes.length) {
          expect(pipeSize(most * 1.001, 1.5, schedule)).toBe(nominalName({ series, size: sizes[i + 1]!.size }));
        }
      });
    }
  });

  it('refuses where even the widest is too narrow, or for no schedule', () => {
    expect(() => pipeSize(10, 1, 40)).toThrow(wholeRefusal);
    expect(() => pipeSize(1e-3, 1, 41)).toThrow(wholeRefusal);
  });
});

describe('nominalName', () => {
  it('reads as a pipe is asked for', () => {
    expect([0.5, 0.75, 1, 1.25, 2.5, 12].map((size) => nominalName({ series: 'inch', size }))).toEqual([
      '1/2 in',
      '3/4 in',
      '1 in',
      '1-1/4 in',
      '2-1/2 in',
      '12 in',
    ]);
    expect(nominalName({ series: 'metric', size: 63 })).toBe('63 mm');
  });
});
