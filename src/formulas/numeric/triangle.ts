import type { Range } from './range';

/** Ends further apart than this, both above 0, are spread in the logarithm. */
const WIDE = 5;

/** Whether a range is spread in the logarithm: ends above 0 and more than five times apart. */
export function isLogarithmic({ low, high }: Pick<Range, 'low' | 'high'>): boolean {
  return low > 0 && high / low > WIDE;
}

/** The middle of two ends: their mean, or their geometric mean where they are spread in the logarithm. */
export function middleOf(low: number, high: number): number {
  return isLogarithmic({ low, high }) ? Math.sqrt(low * high) : low + (high - low) / 2;
}

/**
 * The figure below which the share p of a triangular distribution lies, with its ends and its mode, which may be an end;
 * the same of the logarithm where the ends are far apart. Ends that are equal are that figure.
 *
 * low + sqrt(p (high - low)(mode - low)) below the mode, high - sqrt((1 - p)(high - low)(high - mode)) above it. Source:
 * definition.
 */
export function triangularQuantile(p: number, { low, typical, high }: Range): number {
  if (high <= low) return low;
  if (!isLogarithmic({ low, high })) return quantile(p, low, Math.min(Math.max(typical, low), high), high);
  const mode = Math.log(Math.min(Math.max(typical, low), high));
  const figure = Math.exp(quantile(p, Math.log(low), mode, Math.log(high)));
  return Math.min(Math.max(figure, low), high);
}

function quantile(p: number, low: number, mode: number, high: number): number {
  const width = high - low;
  const below = (mode - low) / width;
  return p <= below ? low + Math.sqrt(p * width * (mode - low)) : high - Math.sqrt((1 - p) * width * (high - mode));
}
