import { describe, expect, it } from 'vitest';
import { nominalName, pipeBore, pipeSize, pipeSizes } from '../../../src/formulas/pipe/pipe-sizes';
import { circleArea } from '../../../src/formulas/tank/tank-shape';

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
    for (const [schedule, small, large, sizes] of [
      [10, 21, 26, 11],
      [16, 13.6, 17, 13],
    ] as const) {
      expect(pipeSizes('metric', schedule)).toHaveLength(sizes);
      for (const { size, bore } of pipeSizes('metric', schedule)) {
        const wall = (size - bore * 1e3) / 2;
        expect(Math.abs(wall - size / (size <= 90 ? small : large))).toBeLessThan(0.17);
      }
    }
  });

  it('of metric pipe is the outside less two walls: 63 - 2 x 3.0, 63 - 2 x 4.7 and 110 - 2 x 6.6 mm (EN ISO 1452-2, from memory)', () => {
    expect(pipeBore({ series: 'metric', size: 110 }, 16)).toBeCloseTo(0.0968, 12);
    expect(pipeBore({ series: 'metric', size: 63 }, 10)).toBeCloseTo(0.057, 12);
    expect(pipeBore({ series: 'metric', size: 63 }, 16)).toBeCloseTo(0.0536, 12);
  });

  it('is not published for PN 10 under 32 mm, nor for a class that is not made', () => {
    expect(pipeSizes('metric', 10).map(({ size }) => size)).toEqual([
      ...[32, 40, 50, 63, 75, 90, 110, 125, 140, 160, 200],
    ]);
    expect(pipeSizes('metric', 16).map(({ size }) => size)).toEqual([
      ...[20, 25, 32, 40, 50, 63, 75, 90, 110, 125, 140, 160, 200],
    ]);
    expect(() => pipeBore({ series: 'metric', size: 20 }, 10)).toThrow(
      expect.objectContaining({
        argument: 'nominal',
        reason: 'unavailable',
        advice: expect.stringMatching(/^sizes with a published bore are 32 mm, .*, 200 mm$/),
      }),
    );
    expect(pipeSizes('metric', 40)).toEqual([]);
    expect(pipeSizes('inch', 10)).toEqual([]);
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
    expect(() => pipeBore({ series: 'inch', size: 7 }, 40)).toThrow(
      expect.objectContaining({ argument: 'nominal', reason: 'unavailable' }),
    );
    for (const [series, schedule, advice] of [
      ['inch', 60, 'give 40 or 80 for a size in inches'],
      ['metric', 40, 'give a pressure class, 10 or 16, for a size in millimeters'],
    ] as const) {
      expect(() => pipeBore({ series, size: 2 }, schedule)).toThrow(
        expect.objectContaining({ argument: 'schedule', advice, reason: 'unavailable' }),
      );
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
    for (const [schedule, name, bore] of [
      [40, '12 in', 11.889 * 0.0254],
      [80, '12 in', 11.294 * 0.0254],
      [10, '200 mm', 0.1846],
      [16, '200 mm', 0.1762],
    ] as const) {
      expect(() => pipeSize(10, 2, schedule)).toThrow(
        expect.objectContaining({
          argument: 'flow',
          reason: 'unavailable',
          advice: `the widest pipe known here, ${name}, carries {most}; use several side by side`,
          figures: { most: { value: expect.closeTo(2 * circleArea(bore), 12), like: 'flow' } },
        }),
      );
    }
    expect(() => pipeSize(1e-3, 1, 41)).toThrow(
      expect.objectContaining({
        argument: 'schedule',
        reason: 'unavailable',
        advice: 'give 40 or 80, or the metric pressure classes 10 or 16',
      }),
    );
  });

  it('forgives a flow that is a rounding too fast, up to 1e-9', () => {
    const most = 1.5 * circleArea(pipeBore({ series: 'inch', size: 2 }, 40));
    expect(pipeSize(most * (1 + 1e-9), 1.5, 40)).toBe('2 in');
    expect(pipeSize(most * (1 + 3e-9), 1.5, 40)).toBe('2-1/2 in');
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
