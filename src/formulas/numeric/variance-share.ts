/**
 * First-order share of a result's variance that one input explains, by the correlation ratio: the variance of the means
 * of equal bins of the input over the whole variance, corrected for what bins of chance would explain, not below 0.
 *
 * `strata` are the places of the input's figures in their order, from 0 to one less than their count; results that are
 * not finite are left out. 1 - (within / (n - bins)) / (whole / (n - 1)), with sums of squares. Source: Kelley,
 * Proceedings of the National Academy of Sciences 21:554 (1935), for the correction; McKay, LANL LA-UR-96-2695 (1997),
 * for the ratio on Latin hypercubes.
 */
export function varianceShare(strata: ArrayLike<number>, results: ArrayLike<number>, bins = 32): number {
  const count = strata.length;
  const sums = new Float64Array(bins);
  const sizes = new Float64Array(bins);
  const mean = finiteMean(results);
  let [whole, n] = [0, 0];
  for (let at = 0; at < count; at += 1) {
    const result = results[at] ?? Number.NaN;
    if (!Number.isFinite(result)) continue;
    const bin = Math.floor(((strata[at] ?? 0) * bins) / count);
    const apart = result - mean;
    sums[bin] = (sums[bin] ?? 0) + apart;
    sizes[bin] = (sizes[bin] ?? 0) + 1;
    whole += apart * apart;
    n += 1;
  }
  let [between, used] = [0, 0];
  for (let bin = 0; bin < bins; bin += 1) {
    const size = sizes[bin] ?? 0;
    if (size === 0) continue;
    between += (sums[bin] ?? 0) ** 2 / size;
    used += 1;
  }
  if (!(whole > 1e-24 * n * mean * mean) || n <= used) return 0;
  const within = Math.max(0, whole - between);
  return Math.max(0, 1 - within / (n - used) / (whole / (n - 1)));
}

/** Not a number where no result is finite. */
function finiteMean(results: ArrayLike<number>): number {
  let [sum, n] = [0, 0];
  for (let at = 0; at < results.length; at += 1) {
    const result = results[at] ?? Number.NaN;
    if (!Number.isFinite(result)) continue;
    sum += result;
    n += 1;
  }
  return sum / n;
}
