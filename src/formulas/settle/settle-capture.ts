/**
 * Share of solids that a settler captures, over a log-normal spread of settling velocities.
 */
import { normalBelow } from '../numeric/normal';

/** `ideal` plug flow, or a number of equal well-mixed cells that share the area; 1 is well mixed. */
export type Mixing = 'ideal' | number;

export interface Capture {
  /** Surface overflow rate of one drum, m/s, above 0. */
  readonly overflow: number;
  /** Median settling velocity, m/s, above 0, of the solids that settle at all. */
  readonly median: number;
  /** Geometric standard deviation, 1 or more. */
  readonly spread: number;
  readonly mixing: Mixing;
  /** Share of the solids that settles at all, 0 to 1. */
  readonly settleable: number;
  /** Drums one after another, each with the whole flow. */
  readonly inLine: number;
}

/** Deviations from the median beyond which 1e-9 of the solids lie. */
const REACH = 6;

/**
 * Share of all solids captured, to 1e-7.
 *
 * For a velocity v and overflow v0 one drum lets pass 1 - min(1, v/v0) where ideal and (1 + v/(n v0))^-n in n mixed cells (which tends
 * to exp(-v/v0) with n); k drums in line let pass the k-th power of that; the share that passes is averaged over the
 * velocities. In line each velocity is compounded by itself, because what passes the first drum settles worse.
 * Source: Hazen (1904); cells in series, Levenspiel, Chemical Reaction Engineering.
 */
export function settleCapture({ overflow, median, spread, mixing, settleable, inLine }: Capture): number {
  const mean = Math.log(median / overflow);
  const deviation = Math.log(spread);
  if (mixing !== 'ideal') return settleable * (1 - mixedPassing(mean, deviation, mixing, mixing * inLine));
  if (inLine === 1) return settleable * meanOfCapped(mean, deviation);
  return settleable * (1 - idealPassing(mean, deviation, inLine));
}

/**
 * Mean of min(1, z) where ln z is normal: exp(m + s2/2) F(-m/s - s) + F(m/s), exact.
 *
 * It is the share settled of a well-mixed jar and the capture of one ideal drum.
 */
export function meanOfCapped(mean: number, deviation: number): number {
  if (deviation === 0) return Math.min(1, Math.exp(mean));
  const settled = normalBelow(mean / deviation);
  const part = normalBelow(-mean / deviation - deviation);
  return part === 0 ? settled : settled + Math.exp(mean + (deviation * deviation) / 2) * part;
}

/**
 * Mean of (1 + z/n)^-N by the trapezoidal rule over the bell.
 *
 * The integrand, continued into the complex plane, stays below 1 within a quarter turn of ln z, so a step h errs by less
 * than 2 exp(-pi2 / (h s)) and, for the bell itself, 2 exp(-2 pi2 / h2): both under 1e-8 with the steps taken here.
 */
function mixedPassing(mean: number, deviation: number, cells: number, power: number): number {
  if (deviation === 0) return Math.exp(-power * Math.log1p(Math.exp(mean) / cells));
  const step = Math.min(0.7, 0.5 / deviation);
  const reach = Math.ceil(REACH / step);
  let sum = 0;
  let weights = 0;
  for (let i = -reach; i <= reach; i++) {
    const x = i * step;
    const weight = Math.exp(-0.5 * x * x);
    weights += weight;
    sum += weight * Math.exp(-power * Math.log1p(Math.exp(mean + deviation * x) / cells));
  }
  return sum / weights;
}

/** Nodes and weights of Gauss and Legendre on -1 to 1, eight points; symmetric, so four are kept. */
const NODES = [
  { node: 0.1834346424956498, weight: 0.362683783378362 },
  { node: 0.525532409916329, weight: 0.3137066458778873 },
  { node: 0.7966664774136267, weight: 0.2223810344533745 },
  { node: 0.9602898564975363, weight: 0.1012285362903763 },
] as const;

/** Mean of (1 - min(1, z))^k: the part below z = 1, in panels narrow beside both the bell and a factor e of velocity. */
function idealPassing(mean: number, deviation: number, inLine: number): number {
  if (deviation === 0) return (1 - Math.min(1, Math.exp(mean))) ** inLine;
  const last = Math.min(REACH, -mean / deviation);
  if (last <= -REACH) return 0;
  const panels = Math.ceil((last + REACH) * Math.max(1, deviation));
  const half = (last + REACH) / panels / 2;
  const passing = (x: number) => Math.exp(-0.5 * x * x) * Math.max(0, -Math.expm1(mean + deviation * x)) ** inLine;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = -REACH + (2 * panel + 1) * half;
    for (const { node, weight } of NODES) {
      const offset = half * node;
      sum += weight * (passing(middle - offset) + passing(middle + offset));
    }
  }
  return (sum * half) / Math.sqrt(2 * Math.PI);
}
