/**
 * Filter pads: how long they last, how many are needed, and what your own pad holds. Solids are dry.
 */

import { wholeUp } from '../numeric/whole';
import { Refusal } from '../refusal';

/** Time until pads are full, s: area, m2, x holding, kg/m2, / solids caught, kg/s. Source: mass balance. */
export function screenDays(solids: number, area: number, holding: number): number {
  return (area * holding) / solids;
}

/**
 * Pads that last a time, whole: solids, kg/s, x time, s, / (area of one, m2, x holding, kg/m2), rounded up. Source:
 * mass balance.
 */
export function screenPads(solids: number, padArea: number, holding: number, days: number): number {
  return wholeUp((solids * days) / (padArea * holding));
}

/**
 * What your own pad holds, kg/m2: (loaded - clean) / area, masses of the dry pad in kg.
 *
 * Refuses a loaded pad that is not heavier than a clean one. Source: definition.
 *
 * How it is measured: dry a clean pad and weigh it; run it until the water backs up; lift it out flat, let it drip,
 * dry it in the sun or a warm, aired place until it loses no more weight, and weigh it on the same scale. Wear gloves
 * and a dust mask: dried solids are dusty.
 */
export function screenHolding(clean: number, loaded: number, area: number): number {
  if (loaded <= clean) {
    throw new Refusal('loaded', 'give more than the dry mass of the clean pad ({clean})', { figures: { clean } });
  }
  return (loaded - clean) / area;
}
