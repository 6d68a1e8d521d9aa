import { describe, expect, it } from 'vitest';
import { noFittings } from '../../../src/formulas/pipe/fittings';
import { type Duty, pipeDuty, pipePower } from '../../../src/formulas/pipe/pipe-duty';
import { pipeLoss } from '../../../src/formulas/pipe/pipe-flow';
import { pumpCurve, pumpHead } from '../../../src/formulas/pipe/pump-curve';
import { Refusal } from '../../../src/formulas/refusal';
import { pumpOracle } from '../../oracles/pipe';

const duty: Duty = {
  curve: [
    { flow: 0, head: 4 },
    { flow: 5e-4, head: 3.6 },
    { flow: 1e-3, head: 2.9 },
    { flow: 1.5e-3, head: 1.8 },
    { flow: 2e-3, head: 0 },
  ],
  lift: 1,
  bore: 0.05,
  length: 10,
  fittings: noFittings,
  temperature: 20,
  roughness: 1.5e-6,
};

describe('pumpCurve', () => {
  it('is the monotone cubic of the reference library', () => {
    for (const { flows, heads, between } of pumpOracle.curves) {
      const curve = pumpCurve(flows.map((flow, i) => ({ flow, head: heads[i]! })));
      for (const [flow, head] of between) expect(pumpHead(curve, flow)).toBeCloseTo(head, 12);
    }
  });

  it('is a straight line through two points', () => {
    const curve = pumpCurve([
      { flow: 0, head: 4 },
      { flow: 2, head: 0 },
    ]);
    expect(pumpHead(curve, 0.5)).toBeCloseTo(3, 14);
  });

  it('cannot take one point, two heads at one flow or a rising head', () => {
    expect(() => pumpCurve([{ flow: 0, head: 4 }])).toThrow(/two points/);
    const rising = [
      { flow: 0, head: 4 },
      { flow: 1, head: 4.1 },
    ];
    expect(() => pumpCurve(rising)).toThrow(/rises/);
    expect(() => pumpCurve([...duty.curve, { flow: 0, head: 4 }])).toThrow(/two heads/);
  });
});

describe('pipeDuty', () => {
  it('lies on the pump’s curve and on the pipe’s', () => {
    for (const lift of [0, 0.5, 1, 2, 3.9, 4]) {
      for (const length of [0.1, 10, 300]) {
        const at = pipeDuty({ ...duty, lift, length });
        expect(at.head).toBeCloseTo(lift + pipeLoss(at.flow, { ...duty, length }), 10);
        expect(at.head).toBeCloseTo(pumpHead(pumpCurve(duty.curve), at.flow), 10);
      }
    }
  });

  it('meets a straight curve and a pure K where the quadratic says', () => {
    const curve = [
      { flow: 0, head: 4 },
      { flow: 4e-3, head: 0 },
    ];
    const k = 2 * 9.80665 * (Math.PI / 4) ** 2 * 0.05 ** 4 * 1e6;
    const { flow } = pipeDuty({ ...duty, curve, lift: 0, length: 0, fittings: { coefficient: k, bores: 0 } });
    // 4 - 1000 Q = 1e6 Q2
    expect(flow).toBeCloseTo((-1000 + Math.sqrt(1000 ** 2 + 16e6)) / 2e6, 12);
  });

  it('gives less flow for more lift, whatever the order of the points', () => {
    expect(pipeDuty({ ...duty, lift: 2 }).flow).toBeLessThan(pipeDuty(duty).flow);
    expect(pipeDuty({ ...duty, curve: [...duty.curve].reverse() })).toEqual(pipeDuty(duty));
  });

  it('cannot meet a lift that the pump does not reach, nor go beyond its last point', () => {
    for (const [changed, argument] of [
      [{ lift: 4.5 }, 'lift'],
      [{ curve: duty.curve.slice(0, 3), lift: 0 }, 'curve'],
    ] as const) {
      try {
        pipeDuty({ ...duty, ...changed });
        expect.unreachable();
      } catch (error) {
        expect(error).toBeInstanceOf(Refusal);
        expect((error as Refusal).argument).toBe(argument);
      }
    }
  });
});

describe('pipePower', () => {
  it('is 1 W for 0.102 L/s lifted a meter without loss', () => {
    expect(pipePower(1 / 998.2067 / 9.80665, 1, 1)).toBeCloseTo(1, 6);
    expect(pipePower(1e-3, 2, 0.5)).toBeCloseTo(2 * pipePower(1e-3, 2, 1), 12);
  });
});
