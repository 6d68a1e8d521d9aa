import { describe, expect, it } from 'vitest';
import { type TankDrain, tankDrain } from '../../../src/formulas/tank/tank-drain';
import { tankVolume } from '../../../src/formulas/tank/tank-volume';

const drum: TankDrain = {
  diameter: 0.57,
  depth: 0.8,
  coneBottom: 0.1,
  coneHeight: 0.235,
  drain: 0.05,
  coefficient: 0.6,
  volume: undefined,
};

/** Torricelli's law stepped through in small slices of equal head root, outside the closed form. */
function stepped({ diameter, depth, coneBottom, coneHeight, drain, coefficient }: TankDrain, last: number): number {
  const slices = 20000;
  const top = Math.sqrt(depth + coneHeight);
  const bottom = Math.sqrt(last);
  let sum = 0;
  for (let i = 0; i < slices; i++) {
    const root = bottom + ((i + 0.5) / slices) * (top - bottom);
    const level = root * root;
    const across = level < coneHeight ? coneBottom + ((diameter - coneBottom) * level) / coneHeight : diameter;
    sum += 2 * across * across * ((top - bottom) / slices);
  }
  return sum / (coefficient * drain * drain * Math.sqrt(2 * 9.80665));
}

describe('tankDrain', () => {
  it('empties a straight drum in A/(C a) sqrt(2 h/g), the textbook result', () => {
    const straight = { ...drum, coneHeight: 0, coneBottom: 0, depth: 1 };
    expect(tankDrain(straight)).toBeCloseTo(((0.57 / 0.05) ** 2 / 0.6) * Math.sqrt(2 / 9.80665), 9);
  });

  it('agrees with the falling level stepped through, with a cone', () => {
    expect(tankDrain(drum) / stepped(drum, 0)).toBeCloseTo(1, 6);
    expect(tankDrain({ ...drum, depth: 0 }) / stepped({ ...drum, depth: 0 }, 0)).toBeCloseTo(1, 6);
  });

  it('runs off part of the water sooner than all of it, and all of it in the same time', () => {
    const held = tankVolume(0.57, 0.8, 0.1, 0.235);
    const all = tankDrain(drum);
    expect(tankDrain({ ...drum, volume: held })).toBeCloseTo(all, 9);
    expect(tankDrain({ ...drum, volume: 0.01 })).toBeLessThan(all / 10);
    expect(tankDrain({ ...drum, volume: tankVolume(0.57, 0.8, 0, 0) }) / stepped(drum, 0.235)).toBeCloseTo(1, 6);
  });

  it('takes longer the more runs off, the deeper the water and the narrower the drain', () => {
    const held = tankVolume(0.57, 0.8, 0.1, 0.235);
    let last = 0;
    for (let tenth = 1; tenth <= 10; tenth++) {
      const time = tankDrain({ ...drum, volume: (held * tenth) / 10 });
      expect(time).toBeGreaterThan(last);
      last = time;
    }
    expect(tankDrain({ ...drum, depth: 0.9 })).toBeGreaterThan(last);
    expect(tankDrain({ ...drum, drain: 0.025 }) / tankDrain(drum)).toBeCloseTo(4, 12);
  });

  it('tends to the straight drum as the cone flattens out', () => {
    const flat = tankDrain({ ...drum, coneHeight: 0, coneBottom: 0 });
    // What a cone of height h changes goes with the root of h.
    expect(tankDrain({ ...drum, coneHeight: 1e-12 }) / flat).toBeCloseTo(1, 5);
  });

  it('cannot run off more than the drum holds, and says how much that is', () => {
    const held = tankVolume(0.57, 0.8, 0.1, 0.235);
    expect(() => tankDrain({ ...drum, volume: held * (1 + 1e-9) })).toThrow(
      expect.objectContaining({
        argument: 'volume',
        advice: 'give no more than the drum holds ({held:volume})',
        figures: { held: expect.closeTo(held, 12) },
      }),
    );
    expect(tankDrain({ ...drum, volume: held * (1 + 1e-12) })).toBeCloseTo(tankDrain(drum), 6);
    expect(tankDrain({ ...drum, volume: 0 })).toBe(0);
  });

  it('may have a drain as wide as the end of the cone, and a flat floor has no cone to be narrower', () => {
    expect(tankDrain({ ...drum, drain: 0.1 })).toBeGreaterThan(0);
    expect(() => tankDrain({ ...drum, drain: 0.1001 })).toThrow(
      expect.objectContaining({
        argument: 'coneBottom',
        advice: 'give the diameter at the cone’s end, at least the drain’s bore ({drain})',
        figures: { drain: 0.1001 },
      }),
    );
    expect(tankDrain({ ...drum, coneHeight: 0, coneBottom: 0 })).toBeGreaterThan(0);
  });

  it('cannot have a cone wider below than the drum', () => {
    expect(() => tankDrain({ ...drum, coneBottom: 0.571 })).toThrow(
      expect.objectContaining({ argument: 'coneBottom', figures: { diameter: 0.57 } }),
    );
    expect(tankDrain({ ...drum, coneBottom: 0.57 })).toBeGreaterThan(0);
  });

  it('cannot have a drain wider than the floor it is in', () => {
    expect(() => tankDrain({ ...drum, drain: 0.11 })).toThrow(/coneBottom/);
    for (const drain of [0.6, 0.57, 0.29]) {
      expect(() => tankDrain({ ...drum, coneHeight: 0, coneBottom: 0, drain })).toThrow(/half the drum/);
    }
    expect(() => tankDrain({ ...drum, coneHeight: 0, coneBottom: 0, drain: 0.29 })).toThrow(
      expect.objectContaining({
        argument: 'drain',
        figures: { widest: { value: expect.closeTo(0.285, 12), like: 'drain' } },
      }),
    );
    expect(tankDrain({ ...drum, coneHeight: 0, coneBottom: 0, drain: 0.285 })).toBeGreaterThan(0);
  });

  it('does not take a cone whose height was forgotten for a flat floor', () => {
    expect(() => tankDrain({ ...drum, coneHeight: 0 })).toThrow(/^coneHeight: give the cone’s height/);
  });
});
