/**
 * The frustum of a cone by its diameters: wall angle, height, volume. Lengths in m, angles in rad from the horizontal.
 */
import { Refusal } from '../refusal';

/** Refuses a bottom wider than the top. */
export function refuseWideBottom(top: number, bottom: number): void {
  if (bottom > top) throw new Refusal('bottom', 'give a length from 0 up to top ({top})', { figures: { top } });
}

/**
 * Angle of the wall from the horizontal, rad: atan(2 h / (D - d)); a quarter turn for a cylinder.
 *
 * D top, d bottom, 0 up to D; h height, above 0. Source: geometry of the frustum.
 */
export function coneAngle(top: number, bottom: number, height: number): number {
  refuseWideBottom(top, bottom);
  return Math.atan2(2 * height, top - bottom);
}

/**
 * Height that gives the wall an angle from the horizontal, m: tan(a) (D - d) / 2.
 *
 * D top, d bottom, from 0 to less than D; a above 0 and below a quarter turn. Refuses a cylinder, whose wall
 * stands upright at any height. Source: geometry of the frustum.
 */
export function coneHeight(top: number, bottom: number, angle: number): number {
  if (bottom >= top) {
    throw new Refusal('bottom', 'give a diameter from 0 to less than top ({top})', { figures: { top } });
  }
  return (Math.tan(angle) * (top - bottom)) / 2;
}

/**
 * Volume held, m3: pi h (D2 + D d + d2) / 12.
 *
 * D top, d bottom, 0 up to D; h height, above 0. Source: volume of the frustum.
 */
export function coneVolume(top: number, bottom: number, height: number): number {
  refuseWideBottom(top, bottom);
  return frustumVolume(top, bottom, height);
}

/** Volume of a frustum either way up, m3. */
export function frustumVolume(top: number, bottom: number, height: number): number {
  return (Math.PI / 12) * height * (top * top + top * bottom + bottom * bottom);
}
