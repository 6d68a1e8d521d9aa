/**
 * The figure at a share p of figures in rising order, interpolated between the two that stand beside p (n - 1). Infinity,
 * which ranks above every number, is not interpolated with: where either neighbor is infinite and counts, so is the
 * result. Source: definition (method 7 of Hyndman and Fan, American Statistician 50:361, 1996).
 */
export function percentile(rising: ArrayLike<number>, p: number): number {
  const place = p * (rising.length - 1);
  const below = Math.floor(place);
  const low = rising[below] ?? Number.NaN;
  const share = place - below;
  if (share < 1e-12) return low;
  const high = rising[below + 1] ?? low;
  return Number.isFinite(high) ? low + (high - low) * share : high;
}
