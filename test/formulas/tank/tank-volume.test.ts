import { describe, expect, it } from 'vitest';
import { tankLevel } from '../../../src/formulas/tank/tank-shape';
import { tankDrainback, tankGirth, tankTurnover, tankVolume } from '../../../src/formulas/tank/tank-volume';
import { wholeRefusal } from '../whole-refusal';

const INCH = 0.0254;
const GALLON = 231 * INCH ** 3;

describe('tankGirth', () => {
  it('gives the diameter inside the wall', () => {
    expect(tankGirth(Math.PI, 0)).toBeCloseTo(1, 14);
    expect(tankGirth(Math.PI, 0.01)).toBeCloseTo(0.98, 14);
  });

  it('gives back the drum that the tape went round', () => {
    for (const inside of [0.3, 0.5715, 1.2]) {
      for (const wall of [0, 0.002, 0.01]) {
        expect(tankGirth(Math.PI * (inside + 2 * wall), wall)).toBeCloseTo(inside, 14);
      }
    }
  });

  it('cannot have a wall thicker than the radius', () => {
    expect(() => tankGirth(1, 0.2)).toThrow(wholeRefusal);
    expect(() => tankGirth(2, 1 / Math.PI)).toThrow(
      expect.objectContaining({
        argument: 'thickness',
        advice: 'give less than half the outside diameter ({outside})',
        figures: { outside: { value: expect.closeTo(2 / Math.PI, 12), like: 'thickness' } },
      }),
    );
    expect(tankGirth(2, 0.318)).toBeCloseTo(2 / Math.PI - 0.636, 12);
  });
});

describe('tankVolume', () => {
  it('fills an open-head 55 gallon drum of 22.5 by 32.8 in to its stated brim of 56.46 gal (trade page)', () => {
    expect(tankVolume(22.5 * INCH, 32.8 * INCH, 0, 0) / GALLON).toBeCloseTo(56.46, 2);
  });

  it('adds the frustum of 10, 4 and 4, whose volume is 163.3628', () => {
    expect(tankVolume(10, 0, 4, 4)).toBeCloseTo(163.3628, 4);
    expect(tankVolume(10, 1, 4, 4)).toBeCloseTo(163.3628 + 25 * Math.PI, 4);
  });

  it('is the same drum whether the cone is a cylinder or the wall is longer', () => {
    expect(tankVolume(0.5, 0.6, 0.5, 0.2)).toBeCloseTo(tankVolume(0.5, 0.8, 0, 0), 14);
  });

  it('cannot have a cone wider below than the drum', () => {
    expect(() => tankVolume(0.5, 0.6, 0.501, 0.2)).toThrow(
      expect.objectContaining({
        argument: 'coneBottom',
        advice: 'give a diameter up to the drum’s own ({diameter})',
        figures: { diameter: 0.5 },
      }),
    );
  });

  it('does not take a cone whose height was forgotten for a flat floor', () => {
    expect(() => tankVolume(0.5, 0.6, 0.1, 0)).toThrow(
      expect.objectContaining({
        argument: 'coneHeight',
        advice: 'give the cone’s height, or leave the cone bottom blank for a flat floor',
      }),
    );
  });
});

describe('tankLevel', () => {
  it('finds the level that a volume fills to, in the cone and above it', () => {
    for (const bottom of [0, 0.1, 0.49999999, 0.5]) {
      for (const level of [0.001, 0.1, 0.2, 0.5]) {
        const inCone = Math.min(level, 0.25);
        const across = bottom + ((0.5 - bottom) / 0.25) * inCone;
        const held = tankVolume(across, 0, bottom, inCone) + tankVolume(0.5, Math.max(0, level - 0.25), 0, 0);
        const shape = { diameter: 0.5, depth: 1, coneBottom: bottom, coneHeight: 0.25 };
        expect(tankLevel(shape, held)).toBeCloseTo(level, 12);
      }
    }
  });

  it('is 0 in an empty drum, whether the cone ends in a point, in a hole or is not there', () => {
    for (const coneBottom of [0, 0.1]) {
      for (const coneHeight of [0, 0.25]) {
        const shape = { diameter: 0.5, depth: 1, coneBottom, coneHeight };
        expect(tankLevel(shape, 0)).toBe(0);
        if (coneHeight > 0) expect(tankLevel(shape, -1e-18)).toBe(0);
      }
    }
  });
});

describe('tankTurnover and tankDrainback', () => {
  it('divides volume by flow', () => {
    expect(tankTurnover(1, 0.001)).toBe(1000);
  });

  it('adds what the drums and the pipes let go', () => {
    const one = tankDrainback(0.5, 0.1, 1, 0, 0);
    expect(one).toBeCloseTo(tankVolume(0.5, 0.1, 0, 0), 15);
    expect(tankDrainback(0.5, 0.1, 3, 0, 5)).toBeCloseTo(3 * one, 15);
    expect(tankDrainback(0.5, 0, 3, 0.05, 5)).toBeCloseTo(tankVolume(0.05, 5, 0, 0), 15);
  });
});
