/**
 * What feed becomes in the water, each as mass a second (feed in kg/s in, waste in kg/s out).
 */

import { Refusal } from '../refusal';
import { CARBON_DIOXIDE_PER_OXYGEN } from '../water/atomic-mass';

/**
 * Dry suspended solids made from feed.
 *
 * S = F s. F feed, kg/s; s dry solids per feed as fed, 0 to 1. Source: mass balance; s is a coefficient with its own
 * source.
 */
export function loadSolids(feed: number, solidsShare: number): number {
  return feed * solidsShare;
}

/**
 * Total ammonia nitrogen made from feed, kg N/s.
 *
 * A = F P a. F feed, kg/s; P protein share, 0 to 1; a kg of ammonia nitrogen per kg of protein, about 0.092 = 0.16
 * (nitrogen in protein) x 0.80 (assimilated) x 0.80 (excreted) x 0.90 (of that, as ammonia). Protein is 0.16 nitrogen,
 * so a above 0.16 would make nitrogen. Source: Timmons and Ebeling, Recirculating Aquaculture.
 */
export function loadAmmonia(feed: number, protein: number, factor: number): number {
  return feed * protein * factor;
}

/**
 * Oxygen taken up, kg/s: F r, with r kg of oxygen per kg of feed, for the fish or for the whole system as r says.
 * Source: definition of r, which is a coefficient with its own source.
 */
export function loadOxygen(feed: number, ratio: number): number {
  return feed * ratio;
}

/**
 * Carbon dioxide breathed out for oxygen breathed in, kg/s, at a respiratory quotient of 1 (44/32 by mass). Source: as
 * many molecules out as in, IUPAC masses.
 */
export function loadCarbonDioxide(oxygen: number): number {
  return oxygen * CARBON_DIOXIDE_PER_OXYGEN;
}

/**
 * Circulation that holds one dissolved or suspended waste at its limit, m3/s.
 *
 * Q = L / (c e). L load, kg/s; c limit in the tank, kg/m3; e share taken out in one pass, above 0 up to 1. Steady
 * state, tank well mixed, no waste in make-up water. Source: mass balance; Losordo and Westers in Timmons and Losordo
 * (1994).
 */
export function loadFlow(load: number, limit: number, removal: number): number {
  return load / (limit * removal);
}

/**
 * Flow that brings in the oxygen taken up, m3/s: L / (in - out), concentrations in kg/m3.
 *
 * Refuses oxygen in that is not above oxygen out. Source: mass balance.
 */
export function loadOxygenFlow(load: number, oxygenIn: number, oxygenOut: number): number {
  if (oxygenIn <= oxygenOut) {
    throw new Refusal('oxygenIn', 'give more than oxygen out ({oxygenOut}), or leave both out', {
      figures: { oxygenOut },
    });
  }
  return load / (oxygenIn - oxygenOut);
}
