/**
 * What a pull of solids is likely to be, to tell of a slip of the decimal point or of the unit.
 */

/** A pull so many times the larger of two beside it, or a smaller part of the lesser one, is unlike them: common practice, no source. */
export const unlikePulls = 5;

/**
 * Solids shares of slurry as it is drawn off. Raw sludge has about 2 %, and thickened sludge begins at 5 % (van Rijn 2013);
 * the least is little more than tank water: common practice, no source.
 */
export const likelySolids = { least: 0.003, most: 0.05 } as const;

/** The volumes that a pull beside two others is likely to have. */
export function likelyVolumes(one: number, other: number): { readonly least: number; readonly most: number } {
  return { least: Math.min(one, other) / unlikePulls, most: Math.max(one, other) * unlikePulls };
}
