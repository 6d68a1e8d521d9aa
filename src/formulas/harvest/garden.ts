/**
 * Garden area that solids feed without exceeding the need of nitrogen or of phosphate.
 */

import { Refusal } from '../refusal';
import { type NutrientBasis, phosphateShare } from './nutrients';
import { harvestSlurry } from './slurry';

export interface Need {
  /** Nitrogen that the garden needs, kg/m2. */
  readonly nitrogenNeed: number;
  /** Nitrogen per dry solids, and the share of it that plants can use this season. */
  readonly nitrogen: number;
  readonly available: number;
  /** Phosphorus per dry solids on the basis; phosphate counts whole. */
  readonly phosphorus: number;
  /** P2O5 that the garden needs, kg/m2. */
  readonly phosphateNeed: number;
  readonly basis: NutrientBasis;
}

export interface Garden {
  /** m2 each. */
  readonly areaByNitrogen: number;
  readonly areaByPhosphate: number;
  readonly area: number;
  readonly governs: 'nitrogen' | 'phosphate';
}

/**
 * Garden area for dry solids, kg: by nitrogen dry N available / need, by phosphate dry P2O5 / need, and the larger, m2.
 *
 * On the larger area neither need is exceeded. Refuses a need of 0. Source: nutrient management planning on the
 * limiting nutrient, USDA NRCS practice 590.
 */
export function harvestGarden(dry: number, need: Need): Garden {
  const { nitrogenNeed, nitrogen, available, phosphorus, phosphateNeed, basis } = need;
  const phosphate = phosphateShare(phosphorus, basis);
  if (nitrogenNeed <= 0) refuseNoNeed('nitrogenNeed');
  if (phosphateNeed <= 0) refuseNoNeed('phosphateNeed');
  const areaByNitrogen = (dry * nitrogen * available) / nitrogenNeed;
  const areaByPhosphate = (dry * phosphate) / phosphateNeed;
  const governs = areaByPhosphate > areaByNitrogen ? 'phosphate' : 'nitrogen';
  return { areaByNitrogen, areaByPhosphate, area: Math.max(areaByNitrogen, areaByPhosphate), governs };
}

/**
 * Slurry for a garden, m3: the smaller of the doses that just meet its nitrogen and its phosphate, the inverse of
 * harvestGarden.
 *
 * Area in m2; slurrySolids the share of solids in the slurry. Refuses solids without either nutrient.
 * Source: as harvestGarden.
 */
export function harvestDose(area: number, slurrySolids: number, need: Need): number {
  const { nitrogenNeed, nitrogen, available, phosphorus, phosphateNeed, basis } = need;
  const phosphate = phosphateShare(phosphorus, basis);
  const byNitrogen = nitrogen * available > 0 ? (area * nitrogenNeed) / (nitrogen * available) : Infinity;
  const byPhosphate = phosphate > 0 ? (area * phosphateNeed) / phosphate : Infinity;
  const dry = Math.min(byNitrogen, byPhosphate);
  if (dry === Infinity) {
    throw new Refusal('nitrogen', 'solids without available nitrogen and phosphorus feed no garden; give their shares');
  }
  return harvestSlurry(dry, slurrySolids);
}

function refuseNoNeed(argument: 'nitrogenNeed' | 'phosphateNeed'): never {
  throw new Refusal(argument, 'any amount exceeds a need of 0; give more than 0');
}
