import { Refusal } from '../refusal';
import { frustumVolume } from './cone';
import { coneMidPlane, type Measured } from './cone-mid-plane';

export interface BackfillRequest {
  readonly drum: number;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  readonly thickness: number;
  readonly measured: Measured;
  readonly rise: number;
}

/**
 * Base mix between drum wall, drum floor and the outside of the cone, m3: pi/4 B2 (rise + h) - pi h (E2 + E e + e2)/12.
 *
 * B drum's inside diameter, E and e the cone's outside diameters at top and bottom (mid-plane + t sin a), h height, rise
 * the cone's lowest edge above the drum floor; the mix comes up to the cone's top edge. What stands below the drain's bore
 * counts as mix: a drain pipe there takes up pi/4 bore2 rise, which is less than you spill. All in m. Refuses a
 * cone wider than the drum. Source: volume of the cylinder and of the frustum.
 */
export function coneBackfill(request: BackfillRequest): number {
  const { drum, bottom, height, thickness, measured, rise } = request;
  const middle = coneMidPlane({ top: request.top, bottom, height, thickness, measured, clearance: 0 });
  const offset = thickness * Math.sin(middle.wallAngle);
  const top = middle.top + offset;
  if (drum < top * (1 - 1e-12)) {
    throw new Refusal('drum', 'give at least the cone’s outside diameter at its top ({outside})', {
      figures: { outside: { value: top, like: 'drum' } },
    });
  }
  return Math.max(
    0,
    (Math.PI / 4) * drum * drum * (rise + height) - frustumVolume(top, middle.bottom + offset, height),
  );
}
