import { type NutrientBasis, nutrientBases, phosphateShare, potashShare } from '../formulas/harvest/nutrients';
import { coefficient } from './coefficients/all';

/**
 * The arguments for the contents of dry solids. Defaults are published as the element, so on the oxide basis the default
 * is the same phosphorus, counted as P2O5.
 */
export const nutrientArguments = {
  nitrogen: { kind: 'share', above: 0, default: 'nitrogen share', meaning: 'nitrogen, of dry solids' },
  phosphorus: {
    kind: 'share',
    optional: true,
    defaultReads: '2.54 % P (phosphorus share)',
    meaning: 'phosphorus, of dry solids',
  },
  potassium: {
    kind: 'share',
    optional: true,
    defaultReads: '0.1 % K (potassium share)',
    meaning: 'potassium, of dry solids',
  },
  basis: { choice: nutrientBases, default: 'element', meaning: 'whether shares are of P and K or of P2O5 and K2O' },
} as const;

export function phosphorusOr(given: number | undefined, basis: NutrientBasis): number {
  if (given !== undefined) return given;
  const element = coefficient('phosphorus share').typical;
  return basis === 'oxide' ? phosphateShare(element, 'element') : element;
}

export function potassiumOr(given: number | undefined, basis: NutrientBasis): number {
  if (given !== undefined) return given;
  const element = coefficient('potassium share').typical;
  return basis === 'oxide' ? potashShare(element, 'element') : element;
}
