/**
 * Head that water loses in a pipe, and the flow that a head drives. Flow in m3/s, lengths and heads in m, temperature in °C.
 */

import { GRAVITY } from '../numeric/gravity';
import { rootBetween } from '../numeric/root';
import { Refusal } from '../refusal';
import { circleArea } from '../tank/tank-shape';
import { freshWaterDensity } from '../water/water-density';
import { freshWaterViscosity } from '../water/water-viscosity';
import { type FittingLoss, fittingCoefficient } from './fittings';
import { frictionFactor } from './friction';

export interface Pipe {
  readonly bore: number;
  readonly length: number;
  readonly fittings: FittingLoss;
  readonly temperature: number;
  readonly roughness: number;
}

/** Mean velocity in a pipe, m/s: Q / (pi/4 b2). Source: continuity. */
export function pipeVelocity(flow: number, bore: number): number {
  return flow / circleArea(bore);
}

/**
 * Head lost, m: (f L/D + K) v2 / 2g, with f Darcy's friction factor.
 *
 * Laminar below Re 2000, Colebrook above 4000, with a smooth blend between; fresh water at the temperature. Refuses a
 * roughness as large as the bore. Source: Darcy and Weisbach; Colebrook (1939); Crane Technical Paper 410.
 */
export function pipeLoss(flow: number, pipe: Pipe): number {
  refuseRough(pipe);
  const fixed = fittingCoefficient(pipe.fittings, pipe.bore);
  return lossAt(pipeVelocity(flow, pipe.bore), pipe, kinematicViscosity(pipe.temperature), fixed);
}

export interface GravityPipe extends Pipe {
  /** Drop in level from one water surface to the other, m. */
  readonly drop: number;
  /** K of the entrance and the exit; 0 for friction alone. */
  readonly ends: number;
}

/**
 * Flow that a drop in level drives, m3/s; with ends 0 the inverse of pipeLoss, to 1e-12.
 *
 * The pipe runs full. Refuses a pipe without length, fittings and ends, which does not resist flow. Sources as for pipeLoss.
 */
export function pipeGravity(pipe: GravityPipe): number {
  refuseRough(pipe);
  const { bore, length, drop, ends } = pipe;
  const fixed = fittingCoefficient(pipe.fittings, bore) + ends;
  if (length === 0 && fixed === 0) {
    throw new Refusal('length', 'a pipe without length, fittings and ends does not resist flow; give one of them');
  }
  if (drop === 0) return 0;
  const viscosity = kinematicViscosity(pipe.temperature);
  // With the least friction that can be met the water runs faster than it does, and with the most, slower.
  const fastest = Math.sqrt((2 * GRAVITY * drop) / Math.max(fixed + (0.001 * length) / bore, 1e-6));
  const excess = (logarithm: number) => Math.log(lossAt(Math.exp(logarithm), pipe, viscosity, fixed) / drop);
  const low = bracketEnd(Math.log(fastest) - 2, -3, (at) => excess(at) <= 0);
  const high = bracketEnd(Math.log(fastest), 1, (at) => excess(at) >= 0);
  if (low === undefined || high === undefined) {
    throw new Refusal('drop', 'no flow can be found for this drop in this pipe; check the units of both');
  }
  return Math.exp(rootBetween(excess, low, high, 1e-14)) * circleArea(bore);
}

/** More steps than these lead to numbers that a computer does not have. */
const MOST_STEPS = 500;

/** The first place, step by step from the start, at which the end of a bracket may lie; undefined where there is none. */
function bracketEnd(start: number, step: number, isEnd: (at: number) => boolean): number | undefined {
  for (let i = 0, at = start; i < MOST_STEPS && Number.isFinite(at); i++, at += step) if (isEnd(at)) return at;
  return undefined;
}

/** Kinematic viscosity of fresh water, m2/s. */
export function kinematicViscosity(temperature: number): number {
  return freshWaterViscosity(temperature) / freshWaterDensity(temperature);
}

/** Head lost at a velocity, m, with the K of everything besides the pipe's own length. */
export function lossAt(velocity: number, pipe: Pipe, viscosity: number, fixed: number): number {
  if (velocity === 0) return 0;
  const { bore, length, roughness } = pipe;
  const factor = frictionFactor((velocity * bore) / viscosity, roughness / bore);
  const resistance = (factor * length) / bore + fixed;
  return (resistance * velocity * velocity) / (2 * GRAVITY);
}

export function refuseRough({ bore, roughness }: Pipe): void {
  if (roughness >= bore) {
    throw new Refusal('roughness', 'give less than the bore ({bore})', { figures: { bore } });
  }
}
