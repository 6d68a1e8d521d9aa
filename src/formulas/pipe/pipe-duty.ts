/**
 * Duty point of a pump in a pipe, and the power that it draws. Flow in m3/s, heads and lengths in m.
 */

import { GRAVITY } from '../numeric/gravity';
import { rootBetween } from '../numeric/root';
import { Refusal } from '../refusal';
import { circleArea } from '../tank/tank-shape';
import { freshWaterDensity } from '../water/water-density';
import { fittingCoefficient } from './fittings';
import { kinematicViscosity, lossAt, type Pipe, refuseRough } from './pipe-flow';
import { type PumpPoint, pumpCurve, pumpHead } from './pump-curve';

export type { PumpPoint };

export interface Duty extends Pipe {
  readonly curve: readonly PumpPoint[];
  /** Height from water surface to water surface or open end, m. */
  readonly lift: number;
}

/**
 * Flow and head where the pump's curve meets lift + head lost, to 1e-12.
 *
 * The curve is monotone cubic between its points and is not extrapolated. Refuses a pump that does not reach the
 * lift, or that still has head to spare at the last point. Sources: Fritsch and Butland (1984); as for pipeLoss.
 */
export function pipeDuty(duty: Duty): PumpPoint {
  refuseRough(duty);
  const curve = pumpCurve(duty.curve);
  const area = circleArea(duty.bore);
  const viscosity = kinematicViscosity(duty.temperature);
  const fixed = fittingCoefficient(duty.fittings, duty.bore);
  const asked = (flow: number) => duty.lift + lossAt(flow / area, duty, viscosity, fixed);
  const spare = (flow: number) => pumpHead(curve, flow) - asked(flow);
  const { leastFlow: least, mostFlow: most } = curve;
  if (spare(least) < 0) {
    throw new Refusal(
      'lift',
      'at {flow} the pump gives {head:run}, but lift and pipe need {asked:run}: they do not meet',
      {
        figures: { flow: least, head: pumpHead(curve, least), asked: asked(least) },
      },
    );
  }
  if (spare(most) > 0) {
    throw new Refusal(
      'curve',
      'at its last point, {flow}, the pump gives {head:run}, but lift and pipe need only {asked:run}: give more points of the curve',
      { figures: { flow: most, head: pumpHead(curve, most), asked: asked(most) } },
    );
  }
  const flow = rootBetween(spare, least, most, 1e-15 * most);
  return { flow, head: pumpHead(curve, flow) };
}

/**
 * Electrical power of a pump, W: rho g Q H / efficiency.
 *
 * Water at 20 °C; efficiency from wire to water, above 0 up to 1. Source: definition of hydraulic power.
 */
export function pipePower(flow: number, head: number, efficiency: number): number {
  return (freshWaterDensity(20) * GRAVITY * flow * head) / efficiency;
}
