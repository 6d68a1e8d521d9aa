/**
 * How fast a grain settles in still water. Size in m, density in kg/m3, temperature in °C, practical salinity, velocity in m/s.
 *
 * Particles lighter than the water rise, which is a negative velocity.
 */

import { GRAVITY } from '../numeric/gravity';
import { Refusal } from '../refusal';
import { waterDensity } from '../water/water-density';
import { waterViscosity } from '../water/water-viscosity';
import { settlingReynolds, terminalReynolds } from './drag';

/** Reynolds number up to which the drag law was fitted. Source: Cheng, Powder Technology 189:395 (2009). */
const FASTEST = 2e5;

/**
 * Stokes settling velocity, m/s: g d2 (rho_s - rho) / (18 mu).
 *
 * A sphere alone in still water at Re up to 1, where it is about a tenth too fast; not available above that. Source: Stokes (1851).
 */
export function settlingStokes(size: number, density: number, temperature: number, salinity: number): number {
  const water = waterDensity(temperature, salinity);
  const viscosity = waterViscosity(temperature, salinity);
  const velocity = (GRAVITY * size * size * (density - water)) / (18 * viscosity);
  const reynolds = (water * Math.abs(velocity) * size) / viscosity;
  if (reynolds > 1) {
    throw new Refusal(
      'size',
      'the Reynolds number would be {reynolds} and Stokes’ law ends at 1; use SETTLE.VELOCITY',
      {
        figures: { reynolds },
        reason: 'unavailable',
      },
    );
  }
  return velocity;
}

/**
 * Reynolds number rho |v| d / mu at terminal velocity by Cheng's drag law, to 1e-12; 0 for a particle as dense as the water.
 *
 * Not available above Re 2e5. Source: Cheng, Powder Technology 189:395 (2009).
 */
export function settlingReynoldsNumber(size: number, density: number, temperature: number, salinity: number): number {
  const water = waterDensity(temperature, salinity);
  const viscosity = waterViscosity(temperature, salinity);
  return upToFastest(terminalReynolds(archimedes(size, Math.abs(density - water), water, viscosity)), 'size');
}

/**
 * Terminal velocity of a sphere, m/s, negative where it rises: Cd Re2 = 4/3 Ar solved for Re, v = Re mu / (rho d).
 *
 * To 1e-12 relative; tends to Stokes' velocity as the size falls to 0. Flakes and strings fall slower than the sphere of
 * their size. Not available above Re 2e5. Source: Cheng, Powder Technology 189:395 (2009).
 */
export function settlingVelocity(size: number, density: number, temperature: number, salinity: number): number {
  const water = waterDensity(temperature, salinity);
  const viscosity = waterViscosity(temperature, salinity);
  const excess = density - water;
  const reynolds = upToFastest(terminalReynolds(archimedes(size, Math.abs(excess), water, viscosity)), 'size');
  return (Math.sign(excess) * reynolds * viscosity) / (water * size);
}

/**
 * Size of the sphere that settles at a velocity, m; the inverse of settlingVelocity.
 *
 * Refuses a lighter grain with a positive velocity, a denser one with a negative velocity, the water's own density and an
 * Re above 2e5. Source: as settlingVelocity.
 */
export function settlingGrain(velocity: number, density: number, temperature: number, salinity: number): number {
  const water = waterDensity(temperature, salinity);
  const excess = density - water;
  const wrongWay = velocity > 0 ? excess <= 0 : excess >= 0;
  if (wrongWay) {
    const advice =
      velocity > 0
        ? 'give more than the water’s {water:density}; lighter grains rise, at a negative velocity'
        : 'give less than the water’s {water:density} for a negative velocity (rising)';
    throw new Refusal('density', advice, { figures: { water } });
  }
  const viscosity = waterViscosity(temperature, salinity);
  const speed = Math.abs(velocity);
  const ratio = ((4 / 3) * GRAVITY * Math.abs(excess) * viscosity) / (water * water * speed * speed * speed);
  return (upToFastest(settlingReynolds(ratio), 'velocity') * viscosity) / (water * speed);
}

function upToFastest(reynolds: number, argument: 'size' | 'velocity'): number {
  if (reynolds <= FASTEST) return reynolds;
  throw new Refusal(argument, 'the Reynolds number would be {reynolds} and the drag law ends at 200,000; give less', {
    figures: { reynolds },
    reason: 'unavailable',
  });
}

function archimedes(size: number, excess: number, water: number, viscosity: number): number {
  return (GRAVITY * size * size * size * excess * water) / (viscosity * viscosity);
}
