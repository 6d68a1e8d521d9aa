import { describe, expect, it } from 'vitest';
import { pipeVelocity } from '../../../src/formulas/pipe/pipe-flow';
import { type SettlingBank, settleCheck } from '../../../src/formulas/settle/settle-check';
import { fasterThan, settleDrums, settleOverflow } from '../../../src/formulas/settle/settle-drums';
import { refusalOf } from '../refusal-of';

const GPM = (231 * 0.0254 ** 3) / 60;
const bank: SettlingBank = {
  flow: 20 * GPM,
  diameter: 22.5 * 0.0254,
  count: 2,
  bore: 0.05,
  overflowLimit: 0.0031,
  slowestInlet: 0.3,
  fastestInlet: 1,
};

describe('settleOverflow', () => {
  it('is 4.6 gpm/ft2 = 0.0031 m3/s a square meter (Davidson and Summerfelt 2005)', () => {
    const footRound = 0.3048 * Math.sqrt(4 / Math.PI);
    expect(settleOverflow(4.6 * GPM, footRound, 1)).toBeCloseTo(0.0031, 4);
  });

  it('is shared by drums side by side', () => {
    expect(settleOverflow(1e-3, 0.57, 4)).toBeCloseTo(settleOverflow(1e-3, 0.57, 1) / 4, 15);
  });
});

describe('the measured rate', () => {
  const cautionsAt = (flow: number) =>
    settleCheck({ ...bank, flow, diameter: 0.3048 * Math.sqrt(4 / Math.PI), count: 1, bore: 0.02 }).map(
      ({ text }) => text,
    );

  it('is not faster than itself, however it is printed, and a faster one is', () => {
    for (const gpm of [4.56, 4.6]) expect(cautionsAt(gpm * GPM).join(' ')).not.toContain('faster than');
    expect(cautionsAt(4.7 * GPM).join(' ')).toContain('faster than');
  });

  it('may be passed by the 0.8 % between its two printed figures, and by no more', () => {
    expect(fasterThan(1.008, 1)).toBe(false);
    expect(fasterThan(1.0081, 1)).toBe(true);
  });

  it('does not take an inlet as wide as the drum, and names the diameter that it must stay below', () => {
    expect(refusalOf(() => settleCheck({ ...bank, bore: bank.diameter }))).toMatchObject({
      argument: 'bore',
      advice: 'give less than the drum’s diameter ({diameter})',
      figures: { diameter: bank.diameter },
    });
    expect(() => settleCheck({ ...bank, bore: bank.diameter * (1 - 1e-9) })).not.toThrow();
  });
});

describe('settleDrums', () => {
  it('buys the least whole number that keeps to the limit', () => {
    for (let gpm = 1; gpm < 200; gpm += 7) {
      const drums = settleDrums(gpm * GPM, bank.diameter, 0.0031);
      expect(settleOverflow(gpm * GPM, bank.diameter, drums)).toBeLessThanOrEqual(0.0031 * (1 + 1e-8));
      if (drums > 1) expect(settleOverflow(gpm * GPM, bank.diameter, drums - 1)).toBeGreaterThan(0.0031);
    }
  });

  it('is the inverse of settleOverflow, so that rounding does not buy a drum too many', () => {
    expect(settleDrums(1e-3, 0.57, settleOverflow(1e-3, 0.57, 3))).toBe(3);
  });
});

describe('pipeVelocity', () => {
  it('is the flow over the bore', () => {
    expect(pipeVelocity(Math.PI / 4, 1)).toBeCloseTo(1, 15);
  });
});

describe('settleCheck', () => {
  it('finds nothing in a bank within its limits, and says so in one line', () => {
    const lines = settleCheck(bank);
    expect(lines).toHaveLength(1);
    expect(lines[0]!.text).toContain('Nothing found');
  });

  it('warns of water that rises too fast, and says how many drums it takes', () => {
    const [line] = settleCheck({ ...bank, count: 1, flow: 60 * GPM, bore: 0.1 });
    expect(line!.text).toContain('rises');
    expect(line!.figures?.drums).toBe(5);
  });

  it('warns of an inlet that breaks solids and of one where they settle in the pipe', () => {
    expect(settleCheck({ ...bank, bore: 0.02 })[0]!.text).toContain('breaks solids');
    expect(settleCheck({ ...bank, bore: 0.15 })[0]!.text).toContain('settle in the pipe');
  });

  it('turns at each limit: overflow rate, fastest and slowest inlet', () => {
    const texts = (changed: Partial<SettlingBank>) =>
      settleCheck({ ...bank, ...changed })
        .map(({ text }) => text)
        .join();
    const overflow = settleOverflow(bank.flow, bank.diameter, bank.count);
    // Up to 0.8 % more is how one measured rate is printed in two units.
    expect(texts({ overflowLimit: overflow / 1.00799 })).not.toContain('rises at {overflow:loading}, faster');
    expect(texts({ overflowLimit: overflow / 1.00801 })).toContain('rises at {overflow:loading}, faster');
    const inlet = pipeVelocity(bank.flow / bank.count, bank.bore);
    expect(texts({ fastestInlet: inlet })).not.toContain('breaks solids');
    expect(texts({ fastestInlet: inlet * (1 - 1e-9) })).toContain('breaks solids');
    expect(texts({ slowestInlet: inlet, fastestInlet: 9 })).not.toContain('settle in the pipe');
    expect(texts({ slowestInlet: inlet * (1 + 1e-9), fastestInlet: 9 })).toContain('settle in the pipe');
    expect(texts({ flow: 0 })).toContain('Nothing found');
  });

  it('gives the figures that it names: rates, velocities and the drums that it takes', () => {
    // A square meter of drum and 10 cm2 of pipe for 6 L/s: the water rises at 6 mm/s and enters at 6 m/s.
    const round = (area: number) => Math.sqrt((4 / Math.PI) * area);
    const given = { ...bank, flow: 6e-3, count: 1, diameter: round(1), bore: round(1e-3), overflowLimit: 2.5e-3 };
    const cautions = settleCheck(given);
    expect(cautions.map(({ text }) => text.slice(0, 30))).toEqual([
      'Water rises at {overflow:loadi',
      'Water enters at {inlet:velocit',
    ]);
    for (const { figures } of cautions) {
      expect(figures).toEqual({
        ...given,
        overflow: expect.closeTo(6e-3, 12),
        inlet: expect.closeTo(6, 9),
        drums: 3,
      });
    }
  });

  it('gives each mark in a sentence its figure', () => {
    for (const bore of [0.02, 0.05, 0.15]) {
      for (const { text, figures } of settleCheck({ ...bank, bore, count: 1 })) {
        for (const [, name] of text.matchAll(/\{(\w+)\}/g)) expect(figures).toHaveProperty(name!);
      }
    }
  });
});
