import { wholeUp } from '../numeric/whole';
import { Refusal } from '../refusal';

/**
 * Rivets along one seam: 1 + (slant - 2 edge)/spacing, rounded up so that the spacing is not exceeded.
 *
 * All in m, above 0; the outermost rivets stand `edge` away from the seam's ends. Refuses an edge of more than half the seam.
 * Source: division of a length into equal pitches.
 */
export function coneRivets(slant: number, spacing: number, edge: number): number {
  if (edge > slant / 2) {
    throw new Refusal('edge', 'give up to half the slant ({limit})', {
      figures: { limit: { value: slant / 2, like: 'edge' } },
    });
  }
  return 1 + wholeUp((slant - 2 * edge) / spacing);
}
