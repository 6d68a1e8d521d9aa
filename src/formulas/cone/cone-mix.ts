import { wholeUp } from '../numeric/whole';

/** Bulk density of Portland cement: the 94 lb sack counts as one cubic foot, kg/m3. */
const cementBulkDensity = (94 * 0.45359237) / 0.3048 ** 3;

export interface BaseMix {
  /** Light aggregate as delivered, loose, m3. */
  readonly aggregate: number;
  /** kg. */
  readonly cement: number;
  /** Whole bags of cement. */
  readonly bags: number;
}

/**
 * What to buy for a volume of light base mix, 1 part cement to `parts` light aggregate by loose volume.
 *
 * Aggregate = V (1 + waste), as cement and water go into the voids between the grains and the mix yields the aggregate's
 * own volume; cement = aggregate/parts x 1506 kg/m3. V in m3, bag in kg.
 * Source: Perlite Institute, perlite concrete mixes (a 94 lb sack yields 4, 5, 6, 8 ft3 at 1:4, 1:5, 1:6, 1:8).
 */
export function coneMix(baseMix: number, parts: number, waste: number, bag: number): BaseMix {
  const aggregate = baseMix * (1 + waste);
  const cement = (aggregate / parts) * cementBulkDensity;
  return { aggregate, cement, bags: wholeUp(cement / bag) };
}
