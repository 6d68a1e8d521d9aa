import type { Range } from '../../formulas/numeric/range';
import { bedCoefficients } from './bed';
import type { Coefficient } from './coefficient';
import { filterCoefficients } from './filter';
import { harvestCoefficients } from './harvest';
import { loadCoefficients } from './load';
import { pipeCoefficients } from './pipe';
import { planCoefficients } from './plan';
import { settleCoefficients } from './settle';
import { stockCoefficients } from './stock';
import { tankCoefficients } from './tank';

export { type Coefficient, differs } from './coefficient';

/** Every figure that the add-in uses if none is given. */
export const coefficients: readonly Coefficient[] = [
  ...stockCoefficients,
  ...loadCoefficients,
  ...settleCoefficients,
  ...filterCoefficients,
  ...bedCoefficients,
  ...harvestCoefficients,
  ...tankCoefficients,
  ...pipeCoefficients,
  ...planCoefficients,
];

const byKey: ReadonlyMap<string, Coefficient> = new Map(coefficients.map((one) => [one.key, one]));

/** The coefficient of that key; a key that is not in the table is a mistake in the program. */
export function coefficient(key: string): Coefficient {
  const found = byKey.get(key);
  if (found === undefined) throw new Error(`no coefficient is called "${key}"`);
  return found;
}

/** Its low, typical and high value; if no range is published, all three are the typical one. */
export function coefficientRange(key: string): Range {
  const { low, typical, high } = coefficient(key);
  return { low: low ?? typical, typical, high: high ?? typical };
}
