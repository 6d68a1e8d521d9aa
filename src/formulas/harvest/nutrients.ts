/**
 * Nitrogen, phosphate and potash in dry solids, in the form fertilizer is sold by.
 */

import { wholeDown } from '../numeric/whole';
import { Refusal } from '../refusal';
import { PHOSPHATE_PER_PHOSPHORUS, POTASH_PER_POTASSIUM } from '../water/atomic-mass';

/** Whether shares of phosphorus and potassium are of the element (P, K) or of the oxide (P2O5, K2O). */
export type NutrientBasis = 'element' | 'oxide';
export const nutrientBases = ['element', 'oxide'] as const satisfies readonly NutrientBasis[];

export interface Nutrients {
  readonly nitrogen: number;
  readonly phosphate: number;
  readonly potash: number;
}

/** Share of P2O5 for a share of phosphorus on either basis. */
export function phosphateShare(phosphorus: number, basis: NutrientBasis): number {
  return basis === 'oxide' ? phosphorus : phosphorus * PHOSPHATE_PER_PHOSPHORUS;
}

/** Share of K2O for a share of potassium on either basis. */
export function potashShare(potassium: number, basis: NutrientBasis): number {
  return basis === 'oxide' ? potassium : potassium * POTASH_PER_POTASSIUM;
}

/**
 * Nitrogen, P2O5 and K2O in a mass of dry solids, kg (or kg/s for a daily mass).
 *
 * Shares are of dry solids, 0 to 1; P2O5 = 2.2913 P and K2O = 1.2046 K. Refuses shares that sum to more than the solids.
 * Source: atomic masses, IUPAC (2021).
 */
export function harvestNutrients(
  dry: number,
  nitrogen: number,
  phosphorus: number,
  potassium: number,
  basis: NutrientBasis,
): Nutrients {
  const [phosphate, potash] = oxideShares(nitrogen, phosphorus, potassium, basis);
  return { nitrogen: dry * nitrogen, phosphate: dry * phosphate, potash: dry * potash };
}

/**
 * Grade as text `N-P2O5-K2O` in whole per cent of the solids as they are, cut and never rounded up.
 *
 * Each is 100 x share x (1 - moisture), cut with an allowance of 1e-9. A working figure, not a label guarantee. Source:
 * AAPFCO Uniform State Fertilizer Bill: grade in whole numbers, N, available P2O5 and soluble K2O.
 */
export function harvestGrade(
  nitrogen: number,
  phosphorus: number,
  potassium: number,
  basis: NutrientBasis,
  moisture: number,
): string {
  const oxides = oxideShares(nitrogen, phosphorus, potassium, basis);
  return [nitrogen, ...oxides].map((share) => wholeDown(100 * share * (1 - moisture))).join('-');
}

/** Shares of P2O5 and K2O, which with nitrogen come to no more than all of the solids. */
function oxideShares(
  nitrogen: number,
  phosphorus: number,
  potassium: number,
  basis: NutrientBasis,
): readonly [phosphate: number, potash: number] {
  const phosphate = phosphateShare(phosphorus, basis);
  const potash = potashShare(potassium, basis);
  const total = nitrogen + phosphate + potash;
  if (total > 1 + 1e-9) {
    throw new Refusal(
      'nitrogen',
      'nitrogen, P2O5 and K2O together come to {total} of the solids; give shares of dry solids',
      {
        figures: { total: { value: total, like: 'nitrogen' } },
      },
    );
  }
  return [phosphate, potash];
}
