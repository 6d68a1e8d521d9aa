import { describe, expect, it } from 'vitest';
import { readFittings } from '../../../src/catalogue/reading/read-fittings';
import { noFittings } from '../../../src/formulas/pipe/fittings';
import { type Pipe, pipeGravity, pipeLoss, pipeVelocity } from '../../../src/formulas/pipe/pipe-flow';
import { wholeRefusal } from '../whole-refusal';

const FOOT = 0.3048;
const GPM = (231 * 0.0254 ** 3) / 60;
const pipe: Pipe = { bore: 0.05, length: 10, fittings: noFittings, temperature: 20, roughness: 1.5e-6 };

describe('pipeLoss', () => {
  it('loses what the reference library’s friction factors give for schedule 40 plastic pipe, ft per 100 ft', () => {
    for (const [bore, gpm, lost] of [
      [0.804, 8, 13.898],
      [1.59, 20, 2.711],
      [2.047, 40, 2.78],
      [3.998, 100, 0.578],
    ] as const) {
      const run: Pipe = { ...pipe, bore: bore * 0.0254, length: 100 * FOOT };
      expect(Math.abs(pipeLoss(gpm * GPM, run) / FOOT / lost - 1)).toBeLessThan(1e-3);
    }
  });

  it('follows Hagen and Poiseuille where it is laminar: twice the flow, twice the loss', () => {
    const fine = { ...pipe, bore: 0.01 };
    expect(pipeLoss(1e-5, fine) / pipeLoss(5e-6, fine)).toBeCloseTo(2, 12);
    const poiseuille = (128 * 1.0016e-3 * 10 * 1e-5) / (Math.PI * 998.2067 * 9.80665 * 0.01 ** 4);
    expect(pipeLoss(1e-5, fine) / poiseuille).toBeCloseTo(1, 4);
  });

  it('never falls as the flow grows, not even where the regime changes', () => {
    for (const roughness of [0, 1.5e-6, 1e-3]) {
      let last = 0;
      for (let power = -7; power < -1.5; power += 0.01) {
        const lost = pipeLoss(10 ** power, { ...pipe, roughness });
        expect(lost).toBeGreaterThan(last);
        last = lost;
      }
    }
    expect(pipeLoss(0, pipe)).toBe(0);
  });

  it('adds K v2/2g for fittings', () => {
    const velocity = pipeVelocity(1e-3, 0.05);
    const added = pipeLoss(1e-3, { ...pipe, fittings: { coefficient: 3, bores: 0 } }) - pipeLoss(1e-3, pipe);
    expect(added).toBeCloseTo((3 * velocity * velocity) / 2 / 9.80665, 14);
    expect(pipeLoss(1e-3, { ...pipe, length: 0 })).toBe(0);
  });

  it('cannot have a wall rougher than the bore is wide', () => {
    for (const roughness of [0.05, 0.06]) {
      expect(() => pipeLoss(1e-3, { ...pipe, roughness })).toThrow(
        expect.objectContaining({
          argument: 'roughness',
          advice: 'give less than the bore ({bore})',
          figures: { bore: 0.05 },
        }),
      );
    }
    expect(pipeLoss(1e-3, { ...pipe, roughness: 0.0499 })).toBeGreaterThan(0);
  });
});

describe('pipeGravity', () => {
  it('is the inverse of pipeLoss to 1e-10 where the ends are left out, laminar, between and turbulent', () => {
    for (const bore of [0.01, 0.05, 0.3]) {
      for (const length of [0.1, 5, 500]) {
        for (const drop of [1e-6, 1e-4, 0.01, 1, 20]) {
          for (const roughness of [0, 1.5e-6, 3e-4]) {
            for (const fittings of [noFittings, readFittings('2 elbow')]) {
              const run: Pipe = { bore, length, fittings, temperature: 15, roughness };
              const flow = pipeGravity({ ...run, drop, ends: 0 });
              expect(pipeLoss(flow, run) / drop).toBeCloseTo(1, 10);
            }
          }
        }
      }
    }
  });

  it('grows with the drop and the bore, and falls with length and roughness', () => {
    const usual = { ...pipe, drop: 0.1, ends: 1.5 };
    const flow = pipeGravity(usual);
    expect(pipeGravity({ ...usual, drop: 0.2 })).toBeGreaterThan(flow);
    expect(pipeGravity({ ...usual, bore: 0.06 })).toBeGreaterThan(flow);
    expect(pipeGravity({ ...usual, length: 20 })).toBeLessThan(flow);
    expect(pipeGravity({ ...usual, roughness: 3e-4 })).toBeLessThan(flow);
  });

  it('is Torricelli’s flow where only the ends hold it back', () => {
    const flow = pipeGravity({ ...pipe, length: 0, drop: 1, ends: 1 });
    expect(pipeVelocity(flow, 0.05)).toBeCloseTo(Math.sqrt(2 * 9.80665), 10);
  });

  it('carries less with ends than without, and nothing without a drop', () => {
    expect(pipeGravity({ ...pipe, drop: 0.1, ends: 1.5 })).toBeLessThan(pipeGravity({ ...pipe, drop: 0.1, ends: 0 }));
    expect(pipeGravity({ ...pipe, drop: 0, ends: 1.5 })).toBe(0);
  });

  it('cannot have a pipe that holds nothing back', () => {
    for (const drop of [0, 1]) {
      expect(() => pipeGravity({ ...pipe, length: 0, drop, ends: 0 })).toThrow(
        expect.objectContaining({
          argument: 'length',
          advice: 'a pipe without length, fittings and ends does not resist flow; give one of them',
        }),
      );
    }
  });

  it('is the inverse of pipeLoss in a ring so short that it hardly holds anything back', () => {
    for (const length of [1e-9, 1e-6, 1e-3]) {
      const ring = { ...pipe, bore: 0.3, length };
      const flow = pipeGravity({ ...ring, drop: 1e-4, ends: 0 });
      expect(pipeLoss(flow, ring) / 1e-4).toBeCloseTo(1, 10);
    }
  });

  it('ends in a refusal, not in an endless search, where a drop is too small for a computer', () => {
    const tiny = {
      ...pipe,
      bore: 0.179,
      length: 5.03,
      roughness: 1.3e-4,
      fittings: { coefficient: 200, bores: 0 },
      ends: 0.04,
    };
    expect(() => pipeGravity({ ...tiny, drop: Number.MIN_VALUE })).toThrow(wholeRefusal);
    expect(pipeGravity({ ...tiny, drop: 1e-250 })).toBeGreaterThan(0);
  });
});
