import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../src/formulas/refusal';
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
import { wholeRefusal } from '../whole-refusal';

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
  it('is not carried beyond the Reynolds number of 200,000 that it was fitted to', () => {
    expect(settlingReynoldsNumber(0.06, 2650, 20, 0)).toBeGreaterThan(5e4);
    for (const beyond of [
      () => settlingVelocity(0.2, 7850, 20, 0),
      () => settlingReynoldsNumber(0.2, 7850, 20, 0),
      () => settlingGrain(5, 7850, 20, 0),
    ]) {
      expect(beyond).toThrow('the drag law ends at 200,000');
    }
  });
});

describe('settlingStokes', () => {
  it('refuses results above a Reynolds number of 1, and says which function can', () => {
    try {
      settlingStokes(2e-4, 2650, 22, 0);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(Refusal);
      expect((error as Refusal).reason).toBe('unavailable');
      expect((error as Refusal).advice).toContain('SETTLE.VELOCITY');
      expect((error as Refusal).figures.reynolds).toMatchObject({ like: 'number' });
    }
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

  it('cannot sink what is lighter than water, nor lift what is denser', () => {
    expect(() => settlingGrain(1e-3, 950, 20, 0)).toThrow(wholeRefusal);
    expect(() => settlingGrain(-1e-3, 1190, 20, 0)).toThrow(wholeRefusal);
    expect(() => settlingGrain(1e-3, waterDensity(20, 0), 20, 0)).toThrow(wholeRefusal);
  });
});
