/**
 * What a drum measures and holds. Lengths in m, volumes in m3, flow in m3/s, times in s.
 */
import { Refusal } from '../refusal';
import { circleArea, refuseCone, type TankShape, tankConeVolume } from './tank-shape';

/**
 * Inside diameter of a drum from a tape round its outside, m: girth/pi - 2 thickness.
 *
 * Refuses a wall as thick as the drum's radius. Source: geometry of the circle.
 */
export function tankGirth(girth: number, thickness: number): number {
  const outside = girth / Math.PI;
  const inside = outside - 2 * thickness;
  if (inside <= 0) {
    throw new Refusal('thickness', 'give less than half the outside diameter ({outside})', {
      figures: { outside: { value: outside, like: 'thickness' } },
    });
  }
  return inside;
}

/**
 * Water held, m3: a straight wall of some depth above an optional cone, pi/4 D2 depth + pi h (D2 + D d + d2)/12.
 *
 * Cone height 0 is no cone; cone bottom 0 is a cone to a point. Refuses a cone with a bottom wider than the drum, or with a bottom and no
 * height.
 * Source: volume of a cylinder and of a frustum.
 */
export function tankVolume(diameter: number, depth: number, coneBottom: number, coneHeight: number): number {
  const shape: TankShape = { diameter, depth, coneBottom, coneHeight };
  refuseCone(shape);
  return circleArea(diameter) * depth + tankConeVolume(shape);
}

/** Time to pass the whole volume once, s: V/Q, volume in m3 and flow, above 0, in m3/s. Source: definition. */
export function tankTurnover(volume: number, flow: number): number {
  return volume / flow;
}

/**
 * Water that runs back to the sump when the pump stops, m3: n pi/4 D2 drop + pi/4 b2 L.
 *
 * D inside diameter of the drums; drop how far their level falls to the lip they run over; n drums; b and L bore and
 * length of pipe that empties itself, 0 where it holds its water. The sump must have this room above its running level.
 * Source: geometry of the cylinder.
 */
export function tankDrainback(
  diameter: number,
  drop: number,
  count: number,
  pipeBore: number,
  pipeLength: number,
): number {
  return count * circleArea(diameter) * drop + circleArea(pipeBore) * pipeLength;
}
