/**
 * Plant beds: area that a feed supports, plants that fit, and how long gravel goes before it is full of solids.
 */
import { wholeDown } from '../numeric/whole';

/**
 * Plant area that a feed supports, m2: feed, kg/s, / feed per area, kg/m2/s. Source: FAO 589 (2014), feed rate ratio.
 */
export function bedArea(feed: number, ratio: number): number {
  return feed / ratio;
}

/**
 * Plants to set out, whole: area, m2, x plants to a square meter, cut so that none stands closer. Source: definition.
 */
export function bedPlants(area: number, density: number): number {
  return wholeDown(area * density);
}

/**
 * Time until gravel is full of solids, s: gravel, m3, x what it holds, kg/m3, / dry solids, kg/s. Source: mass
 * balance.
 */
export function bedDays(solids: number, gravel: number, bedHolding: number): number {
  return (gravel * bedHolding) / solids;
}
