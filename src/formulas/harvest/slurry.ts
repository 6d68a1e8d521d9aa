/**
 * Dry solids and the wet slurry that they are drawn off in.
 */
import { loadSolids } from '../load/load';

/**
 * Mass of a volume of slurry, kg/m3. Water and fish solids of 1050 to 1190 kg/m3 come within 1 % of it up to 5 %
 * solids.
 */
export const SLURRY_DENSITY = 1000;

/** Dry solids a day that are caught, kg/s: feed, kg/s, x solids per feed x share caught. Source: mass balance. */
export function harvestSolids(feed: number, capture: number, solidsShare: number): number {
  return loadSolids(feed, solidsShare) * capture;
}

/**
 * Slurry that holds so much dry solids, m3: V = dry / (s x 1000 kg/m3), s the share of solids by mass.
 *
 * Good within 1 % up to 5 % solids. Source: definition of the share.
 */
export function harvestSlurry(dry: number, slurrySolids: number): number {
  return dry / (slurrySolids * SLURRY_DENSITY);
}

/** Dry solids in a volume of slurry, kg: the inverse of harvestSlurry. Source: as for it. */
export function slurryDry(volume: number, slurrySolids: number): number {
  return volume * slurrySolids * SLURRY_DENSITY;
}

/** Water in the slurry that holds so much dry solids, m3: V (1 - s). Source: as for harvestSlurry. */
export function slurryWater(dry: number, slurrySolids: number): number {
  return harvestSlurry(dry, slurrySolids) * (1 - slurrySolids);
}
