/**
 * The space that a drum holds: a straight wall of some depth above a cone that narrows to the drain.
 *
 * Lengths in m. `coneHeight` 0 is a flat floor; `coneBottom` 0 is a cone that ends in a point.
 */
import { frustumVolume } from '../cone/cone';
import { Refusal } from '../refusal';

export interface TankShape {
  readonly diameter: number;
  readonly depth: number;
  readonly coneBottom: number;
  readonly coneHeight: number;
}

/** Area of a circle, m2, of a diameter in m. */
export function circleArea(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}

/** Refuses a cone with a bottom wider than the drum, and a cone's bottom without its height, which was forgotten. */
export function refuseCone({ diameter, coneBottom, coneHeight }: TankShape): void {
  if (coneBottom > diameter) {
    throw new Refusal('coneBottom', 'give a diameter up to the drum’s own ({diameter})', { figures: { diameter } });
  }
  if (coneBottom > 0 && coneHeight === 0) {
    throw new Refusal('coneHeight', 'give the cone’s height, or leave the cone bottom blank for a flat floor');
  }
}

/** Volume held in the cone alone, m3. */
export function tankConeVolume({ diameter, coneBottom, coneHeight }: TankShape): number {
  return frustumVolume(diameter, coneBottom, coneHeight);
}

/**
 * Water level above the drain, m, at which the shape holds a volume, m3; the exact inverse of filling it.
 *
 * In the cone, with wall k = (D - d)/h, the diameter there is c = cbrt(d3 + 12 k V/pi) and z = 12 V / (pi (c2 + c d + d2)),
 * a form that holds for a cone as good as straight. Above it, z = h + (V - Vcone)/A.
 */
export function tankLevel(shape: TankShape, held: number): number {
  const { diameter, coneBottom, coneHeight } = shape;
  const cone = tankConeVolume(shape);
  if (held >= cone) return coneHeight + (held - cone) / circleArea(diameter);
  if (held <= 0) return 0;
  const twelfth = (12 * held) / Math.PI;
  const across = Math.cbrt(coneBottom ** 3 + ((diameter - coneBottom) / coneHeight) * twelfth);
  return twelfth / (across * across + across * coneBottom + coneBottom * coneBottom);
}
