import { describe, expect, it } from 'vitest';
import { noFittings } from '../../../src/formulas/pipe/fittings';
import { type Duty, pipeDuty, pipePower } from '../../../src/formulas/pipe/pipe-duty';
import { pipeLoss } from '../../../src/formulas/pipe/pipe-flow';
import { pumpCurve, pumpHead } from '../../../src/formulas/pipe/pump-curve';
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

  it('runs on in its last span where rounding leads past the last point', () => {
    const curve = pumpCurve(duty.curve);
    expect(pumpHead(curve, 2e-3 * (1 + 1e-12))).toBeCloseTo(0, 9);
    expect(pumpHead(curve, 2e-3)).toBeCloseTo(0, 15);
  });

  it('has no slope where the head stays the same from point to point, at an end or between', () => {
    const flat = pumpCurve([0, 1, 2, 3, 4].map((flow) => ({ flow, head: flow < 1 ? 5 : flow < 3 ? 4 : 4 - flow / 4 })));
    for (const flow of [1, 1.3, 1.7, 2]) expect(pumpHead(flat, flow)).toBeCloseTo(4, 14);
    const level = pumpCurve([0, 1, 2].map((flow) => ({ flow, head: flow < 2 ? 4 : 3 })));
    for (const flow of [0, 0.3, 0.7, 1]) expect(pumpHead(level, flow)).toBeCloseTo(4, 14);
  });

  it('never rises between its points, however uneven they are', () => {
    for (const heads of [
      [5, 4.99, 1, 0.99, 0],
      [5, 1, 0.99, 0.98, 0],
      [5, 5, 1, 1, 0],
      [5, 4.9, 4.7, 0.1, 0],
    ]) {
      const curve = pumpCurve(heads.map((head, i) => ({ flow: i * i, head })));
      let last = Infinity;
      for (let flow = 0; flow <= 16; flow += 0.01) {
        const head = pumpHead(curve, flow);
        expect(head).toBeLessThanOrEqual(last + 1e-12);
        last = head;
      }
    }
  });

  it.each([
    ['no point', [], 'give at least two points of flow and head', {}],
    ['one point', [{ flow: 0, head: 4 }], 'give at least two points of flow and head', {}],
    [
      'a rising head',
      [
        { flow: 0, head: 4 },
        { flow: 1, head: 4.1 },
      ],
      'the head rises toward {at:flow}; a pump’s head falls as its flow grows',
      { at: 1 },
    ],
    [
      'two heads at one flow',
      [...duty.curve, { flow: 5e-4, head: 3 }],
      'two heads are given at {at:flow}; give one',
      { at: 5e-4 },
    ],
  ])('cannot take %s', (_, points, advice, figures) => {
    expect(() => pumpCurve(points)).toThrow(expect.objectContaining({ argument: 'curve', advice, figures }));
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

  it('may be the first or the last point of the curve', () => {
    expect(pipeDuty({ ...duty, lift: 4 }).flow).toBe(0);
    expect(pipeDuty({ ...duty, lift: 0, length: 0 }).flow).toBeCloseTo(2e-3, 12);
  });

  it('cannot meet a lift that the pump does not reach', () => {
    expect(() => pipeDuty({ ...duty, curve: duty.curve.slice(1), lift: 3.7 })).toThrow(
      expect.objectContaining({
        argument: 'lift',
        advice: 'at {flow} the pump gives {head:run}, but lift and pipe need {asked:run}: they do not meet',
        figures: {
          flow: 5e-4,
          head: expect.closeTo(3.6, 12),
          asked: expect.closeTo(3.7 + pipeLoss(5e-4, duty), 12),
        },
      }),
    );
  });

  it('cannot go beyond the last point of the curve', () => {
    expect(() => pipeDuty({ ...duty, curve: duty.curve.slice(0, 3), lift: 0 })).toThrow(
      expect.objectContaining({
        argument: 'curve',
        advice:
          'at its last point, {flow}, the pump gives {head:run}, but lift and pipe need only {asked:run}: give more points of the curve',
        figures: {
          flow: 1e-3,
          head: expect.closeTo(2.9, 12),
          asked: expect.closeTo(pipeLoss(1e-3, duty), 12),
        },
      }),
    );
  });

  it('refuses a wall rougher than the bore is wide', () => {
    expect(() => pipeDuty({ ...duty, roughness: 0.05 })).toThrow(expect.objectContaining({ argument: 'roughness' }));
  });
});

describe('pipePower', () => {
  it('is 1 W for 0.102 L/s lifted a meter without loss', () => {
    expect(pipePower(1 / 998.2067 / 9.80665, 1, 1)).toBeCloseTo(1, 6);
    expect(pipePower(1e-3, 2, 0.5)).toBeCloseTo(2 * pipePower(1e-3, 2, 1), 12);
    expect(pipePower(1e-3, 6, 1)).toBeCloseTo(3 * pipePower(1e-3, 2, 1), 12);
  });
});
