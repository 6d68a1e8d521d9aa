/**
 * Time for a drum to empty through a drain in its floor, with a falling level.
 */
import { GRAVITY } from '../numeric/gravity';
import { Refusal } from '../refusal';
import { circleArea, refuseCone, type TankShape, tankConeVolume, tankLevel } from './tank-shape';

/** Widest drain as a share of the drum: there the water in the drum itself moves at a sixteenth of the speed squared, 3 % in time. */
const WIDEST_DRAIN = 0.5;

export interface TankDrain extends TankShape {
  /** Bore of the drain, m. */
  readonly drain: number;
  /** Discharge coefficient of the drain, above 0 up to 1. */
  readonly coefficient: number;
  /** Water to drain, m3; all of it if undefined. */
  readonly volume: number | undefined;
}

/**
 * Time to empty through the drain, s, or to run off `volume`.
 *
 * t = integral of A(z) dz / (C a sqrt(2 g z)) from the last level to the first, in closed form; A plan area at level z above
 * the drain, a drain area, C discharge coefficient. Lengths in m. Holds for a drain much smaller than the drum, free
 * at its outlet; a long pipe after it is slower (see pipe gravity). Refuses a drain over half as wide as the drum, and
 * a volume larger than the drum holds. Source: Torricelli's law with a discharge coefficient.
 */
export function tankDrain(given: TankDrain): number {
  const { diameter, depth, coneBottom, coneHeight, drain, coefficient, volume } = given;
  refuseCone(given);
  if (coneHeight > 0 && coneBottom < drain) {
    throw new Refusal('coneBottom', 'give the diameter at the cone’s end, at least the drain’s bore ({drain})', {
      figures: { drain },
    });
  }
  const widest = diameter * WIDEST_DRAIN;
  if (drain > widest) {
    throw new Refusal(
      'drain',
      'give a bore up to half the drum’s diameter ({widest}); through a wider one the water falls out at once',
      {
        figures: { widest: { value: widest, like: 'drain' } },
      },
    );
  }
  const held = circleArea(diameter) * depth + tankConeVolume(given);
  let last = 0;
  if (volume !== undefined) {
    if (volume > held * (1 + 1e-12)) {
      throw new Refusal('volume', 'give no more than the drum holds ({held:volume})', {
        figures: { held },
      });
    }
    last = tankLevel(given, held - volume);
  }
  const seconds = slowness(given, coneHeight + depth) - slowness(given, last);
  return seconds / (coefficient * circleArea(drain) * Math.sqrt(2 * GRAVITY));
}

/** The integral of A(z)/sqrt(z) from the drain up to a level, m^2.5. */
function slowness({ diameter, coneBottom, coneHeight }: TankShape, level: number): number {
  const inCone = Math.min(level, coneHeight);
  let sum = 0;
  if (inCone > 0) {
    const widening = ((diameter - coneBottom) / coneHeight) * inCone;
    const mean = coneBottom * coneBottom + (2 / 3) * coneBottom * widening + widening * widening * 0.2;
    sum = (Math.PI / 4) * 2 * Math.sqrt(inCone) * mean;
  }
  if (level > coneHeight) sum += circleArea(diameter) * 2 * (Math.sqrt(level) - Math.sqrt(coneHeight));
  return sum;
}
