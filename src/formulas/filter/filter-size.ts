/**
 * Biofilter size for a feed, and the feed that a size carries: exact inverses of each other.
 */
import { loadAmmonia } from '../load/load';

/**
 * Media surface that nitrifies the ammonia of a feed, m2.
 *
 * A = F P a (1 + reserve) / r. F feed, kg/s; P protein share; r areal rate, kg N/m2/s; reserve a share, 0 or more; a
 * ammonia nitrogen per protein, kg/kg. Source: definition of the areal rate; FAO Fisheries Technical Paper 589 (2014),
 * appendix 4.
 */
export function filterArea(feed: number, protein: number, rate: number, reserve: number, factor: number): number {
  return (loadAmmonia(feed, protein, factor) * (1 + reserve)) / rate;
}

/** Bulk media that has the surface, m3: area, m2, over specific surface, m2/m3. Source: definition of the latter. */
export function filterMedia(area: number, surface: number): number {
  return area / surface;
}

/**
 * Feed that a filter carries, kg/s: F = V s r / (P a (1 + reserve)), the inverse of filterMedia of filterArea.
 *
 * V bulk media, m3; s specific surface, m2/m3; other symbols and source as in filterArea.
 */
export function filterFeed(
  media: number,
  surface: number,
  protein: number,
  rate: number,
  reserve: number,
  factor: number,
): number {
  return (media * surface * rate) / (protein * factor * (1 + reserve));
}
