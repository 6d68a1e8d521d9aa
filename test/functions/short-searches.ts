import { afterAll, beforeAll, type MockInstance, vi } from 'vitest';
import { keptPlans } from '../../src/formulas/cut/cut-plan';
import * as search from '../../src/formulas/cut/lay-pieces';

/** The share of the usual steps: enough for a plan of every sort, though not for the shortest. */
export const shortShare = 0.05;

/**
 * Shortens every search for a cut plan in the file that calls it, which needs the plan to be the same at each place and
 * not to be the shortest. No plan that was found in fewer steps is left to other files.
 */
export function withShortSearches(): void {
  let shortened: MockInstance<typeof search.layPieces>;
  beforeAll(() => {
    keptPlans.clear();
    const { layPieces } = search;
    shortened = vi
      .spyOn(search, 'layPieces')
      .mockImplementation((pieces, options) => layPieces(pieces, { ...options, effort: shortShare * options.effort }));
  });
  afterAll(() => {
    shortened.mockRestore();
    keptPlans.clear();
  });
}
