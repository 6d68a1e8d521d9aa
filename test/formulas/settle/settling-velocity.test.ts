import { describe, expect, it } from 'vitest';
import { dragCoefficient, settlingReynolds, terminalReynolds } from '../../../src/formulas/settle/drag';
import {
  settlingGrain,
  settlingReynoldsNumber,
  settlingStokes,
  settlingVelocity,
} from '../../../src/formulas/settle/settling-velocity';
import { waterDensity } from '../../../src/formulas/water/water-density';
import { waterViscosity } from '../../../src/formulas/water/water-viscosity';
import { dragOracle, terminalOracle } from '../../oracles/settling';
import { refusalOf } from '../refusal-of';

const sizes = [1e-7, 1e-6, 1e-5, 1e-4, 3e-4, 1e-3, 3e-3, 1e-2];
const densities = [900, 1010, 1050, 1190, 2650, 7850];

describe('dragCoefficient', () => {
  it('agrees with the reference library', () => {
    for (const [reynolds, drag] of dragOracle.rows) expect(dragCoefficient(reynolds) / drag).toBeCloseTo(1, 12);
  });
});

describe('terminalReynolds', () => {
  it('gives the reference library’s terminal velocities to 1e-8', () => {
    const viscosity = 1.0016e-3;
    const water = 998.2067;
    for (const [size, density, velocity] of terminalOracle.rows) {
      const archimedes = (9.80665 * size ** 3 * (density - water) * water) / viscosity ** 2;
      expect((terminalReynolds(archimedes) * viscosity) / (water * size * velocity)).toBeCloseTo(1, 8);
    }
  });

  it('solves the drag equation to 1e-10 over fourteen decades', () => {
    for (let power = -4; power <= 10; power += 0.25) {
      const archimedes = 10 ** power;
      const reynolds = terminalReynolds(archimedes);
      expect((dragCoefficient(reynolds) * reynolds ** 2) / ((4 / 3) * archimedes)).toBeCloseTo(1, 10);
    }
  });

  it('joins Stokes’ law without a step', () => {
    expect(terminalReynolds(1.0001e-14) / terminalReynolds(0.9999e-14)).toBeCloseTo(1.0002, 7);
    expect(settlingReynolds(23.999e26) / settlingReynolds(24.001e26)).toBeCloseTo(Math.sqrt(24.001 / 23.999), 6);
  });
});

describe('settlingVelocity', () => {
  it('tends to Stokes’ velocity as the size falls to nothing', () => {
    expect(settlingVelocity(1e-8, 2650, 20, 0) / settlingStokes(1e-8, 2650, 20, 0)).toBeCloseTo(1, 9);
    expect(settlingVelocity(1e-6, 2650, 20, 0) / settlingStokes(1e-6, 2650, 20, 0)).toBeCloseTo(1, 5);
  });

  it('gives the rise of what is lighter than water as negative, and 0 for what floats in it', () => {
    expect(settlingVelocity(1e-3, 950, 20, 0)).toBeLessThan(0);
    expect(settlingStokes(1e-5, 950, 20, 0)).toBeLessThan(0);
    expect(settlingVelocity(1e-3, waterDensity(20, 0), 20, 0)).toBe(0);
  });

  it('grows with size, density and warmth', () => {
    for (const density of densities) {
      const speeds = sizes.map((size) => Math.abs(settlingVelocity(size, density, 20, 0)));
      expect([...speeds].sort((a, b) => a - b)).toEqual(speeds);
    }
    expect(settlingVelocity(1e-4, 1190, 25, 0)).toBeGreaterThan(settlingVelocity(1e-4, 1190, 10, 0));
    expect(settlingVelocity(1e-4, 1190, 25, 0)).toBeGreaterThan(settlingVelocity(1e-4, 1190, 25, 35));
  });

  it('lies within 4 % of the standard drag curve by Schiller and Naumann for 0.1 mm quartz, and 1 % for 1 mm', () => {
    expect(Math.abs(settlingVelocity(1e-3, 2650, 20, 0) / 0.15521 - 1)).toBeLessThan(0.01);
    expect(Math.abs(settlingVelocity(1e-4, 2650, 20, 0) / 0.0079653 - 1)).toBeLessThan(0.04);
  });

  it('has the Reynolds number that the velocity makes, rising or sinking', () => {
    for (const density of densities) {
      for (const size of sizes) {
        const made =
          (waterDensity(20, 5) * Math.abs(settlingVelocity(size, density, 20, 5)) * size) / waterViscosity(20, 5);
        expect(settlingReynoldsNumber(size, density, 20, 5) / made).toBeCloseTo(1, 12);
      }
    }
  });

  it('tends to that in fresh water as the salt runs out', () => {
    expect(settlingVelocity(1e-4, 1190, 20, 1e-9) / settlingVelocity(1e-4, 1190, 20, 0)).toBeCloseTo(1, 9);
  });
});

describe('the drag law', () => {
  it('is not carried beyond the Reynolds number of 200,000 that it was fitted to, and names the number', () => {
    expect(settlingReynoldsNumber(0.06, 2650, 20, 0)).toBeGreaterThan(5e4);
    for (const [argument, beyond] of [
      ['size', () => settlingVelocity(0.2, 7850, 20, 0)],
      ['size', () => settlingReynoldsNumber(0.2, 7850, 20, 0)],
      ['velocity', () => settlingGrain(5, 7850, 20, 0)],
    ] as const) {
      const { figures, ...refusal } = refusalOf(beyond);
      expect(refusal).toMatchObject({
        argument,
        advice: 'the Reynolds number would be {reynolds} and the drag law ends at 200,000; give less',
        reason: 'unavailable',
      });
      expect(figures).toEqual({ reynolds: expect.toSatisfy((value: number) => value > 2e5) });
    }
  });

  it('ends at 200,000 itself: a grain a little smaller is taken, one a little larger is not', () => {
    // At terminal velocity Cd Re2 = 4/3 Ar, so the grain of Re 200,000 follows from the drag there.
    const [water, viscosity] = [waterDensity(20, 0), waterViscosity(20, 0)];
    const archimedes = 0.75 * dragCoefficient(2e5) * 4e10;
    const size = Math.cbrt((archimedes * viscosity ** 2) / (9.80665 * (2650 - water) * water));
    expect(settlingReynoldsNumber(size * (1 - 1e-9), 2650, 20, 0) / 2e5).toBeCloseTo(1, 7);
    expect(refusalOf(() => settlingReynoldsNumber(size * (1 + 1e-9), 2650, 20, 0)).argument).toBe('size');
  });
});

describe('settlingStokes', () => {
  it('refuses results above a Reynolds number of 1, and says which function can', () => {
    const [water, viscosity] = [waterDensity(22, 0), waterViscosity(22, 0)];
    // Re = g d3 rho (rho_s - rho) / (18 mu2), solved for d at a Reynolds number of 1 and of 8.
    const size = Math.cbrt((18 * viscosity ** 2) / (9.80665 * water * (2650 - water)));
    expect(settlingStokes(size * (1 - 1e-9), 2650, 22, 0)).toBeCloseTo(viscosity / (water * size), 9);
    expect(refusalOf(() => settlingStokes(size * (1 + 1e-9), 2650, 22, 0)).reason).toBe('unavailable');
    expect(refusalOf(() => settlingStokes(size * 2, 2650, 22, 0))).toMatchObject({
      argument: 'size',
      advice: 'the Reynolds number would be {reynolds} and Stokes’ law ends at 1; use SETTLE.VELOCITY',
      figures: { reynolds: expect.closeTo(8, 9) },
      reason: 'unavailable',
    });
  });
});

describe('settlingGrain', () => {
  it('is the inverse of settlingVelocity to 1e-9, sinking or rising', () => {
    for (const size of sizes) {
      for (const density of densities) {
        for (const temperature of [0, 20, 40]) {
          const velocity = settlingVelocity(size, density, temperature, 5);
          expect(settlingGrain(velocity, density, temperature, 5) / size).toBeCloseTo(1, 9);
        }
      }
    }
  });

  it('cannot sink what is lighter than water or as dense, and names the water’s density', () => {
    const water = waterDensity(20, 0);
    for (const density of [950, water]) {
      expect(refusalOf(() => settlingGrain(1e-3, density, 20, 0))).toMatchObject({
        argument: 'density',
        advice: 'give more than the water’s {water:density}; lighter grains rise, at a negative velocity',
        figures: { water },
      });
    }
    expect(settlingGrain(1e-3, water + 1e-3, 20, 0)).toBeGreaterThan(0);
  });

  it('cannot lift what is denser than water or as dense, and names the water’s density', () => {
    const water = waterDensity(20, 0);
    for (const density of [1190, water]) {
      expect(refusalOf(() => settlingGrain(-1e-3, density, 20, 0))).toMatchObject({
        argument: 'density',
        advice: 'give less than the water’s {water:density} for a negative velocity (rising)',
        figures: { water },
      });
    }
    expect(settlingGrain(-1e-3, water - 1e-3, 20, 0)).toBeGreaterThan(0);
  });
});
