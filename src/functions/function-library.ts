import { catalogue } from '../catalogue/all';
import { type Coefficient, coefficient } from '../catalogue/coefficients/all';
import type { CatalogueRow } from '../catalogue/define';
import { scenarioFactors, withOneScenario } from '../catalogue/plan/scenario';
import type { OpenCell } from '../catalogue/reading/input-table';
import { type CutPlan, keptPlans } from '../formulas/cut/cut-plan';
import { type Farm, planFarm } from '../formulas/plan/plan-farm';
import type { Profile } from '../units/profile';
import { type Adapted, adapt, type MakeError, takesHeadings } from './adapter';
import { loadCutSearch } from './load-cut-plans';

/**
 * The functions as one thing that pages beside the spreadsheet use, so that the catalogue and all formulas are loaded
 * once, with the function script, and a page computes with exactly what the cells compute with. In the built script
 * the rows come without what only people read; functions.json has their summaries.
 */
export interface FunctionLibrary {
  readonly catalogue: readonly CatalogueRow[];
  readonly adapt: (row: CatalogueRow, makeError: MakeError) => Adapted;
  readonly coefficient: (key: string) => Coefficient;
  readonly takesHeadings: (row: CatalogueRow) => boolean;
  /** The steady state of the one scenario in a table. */
  readonly farm: (table: readonly (readonly OpenCell[])[], profile: Profile) => Farm;
  /** The cut plans that were found last, by all that they follow from. */
  readonly keptPlans: Map<string, CutPlan>;
  /** Loads the search for cut plans, which calls of rows with `search` need. */
  readonly loadCutSearch: () => Promise<void>;
}

const farm = (table: readonly (readonly OpenCell[])[], profile: Profile): Farm =>
  withOneScenario(table, profile, ({ scenario }) => planFarm(scenario, scenarioFactors));

export const functionLibrary: FunctionLibrary = {
  catalogue,
  adapt,
  coefficient,
  takesHeadings,
  farm,
  keptPlans,
  loadCutSearch,
};

/** Where the function script leaves the library for the page that loaded it. */
export interface FunctionLibraryHolder {
  siltstead?: FunctionLibrary;
}
