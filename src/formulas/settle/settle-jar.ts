/**
 * Settling velocities of your own solids, from a jar and a watch.
 */
import { leastSquares, type Point, squares } from '../numeric/least-squares';
import { Refusal } from '../refusal';
import { meanOfCapped } from './settle-capture';

export interface JarReading {
  /** Time since the jar was stirred, s. */
  readonly time: number;
  /** Dry mass on the bottom by then over all solids in the jar, 0 to 1. */
  readonly share: number;
}

export interface JarFit {
  /** Median settling velocity of what settles, m/s. */
  readonly median: number;
  /** Its geometric standard deviation, 1 or more. */
  readonly spread: number;
  /** Share of all solids that settles at all. */
  readonly settleable: number;
}

/** Widest spread that is looked for. */
const WIDEST = Math.log(100);

/** Each fit reads the data some hundreds of times, so more than this would slow a sheet down. */
const MOST_READINGS = 1000;

/** Mean pace of settling by the last reading, over the quickest so far, above which the rise has hardly slackened. */
const SLACKENED = 0.8;

/**
 * Log-normal settling velocities that fit a jar, well mixed at the start, by least squares of the share settled.
 *
 * The share on the bottom after t is settleable x mean of min(1, v t/fall). `fall` is the depth of water, m. Refuses fewer than
 * three readings at different times, solids of which none settles, readings that do not rise, nor ones that stop long before
 * the rise does. Source: batch settling column, Hazen (1904), with a log-normal distribution of velocities.
 */
export function settleJar(fall: number, readings: readonly JarReading[]): JarFit {
  const sorted = [...readings].sort((a, b) => a.time - b.time);
  const { first, last } = endsOf(sorted);
  const residuals = ([logMedian, deviation]: Point): readonly number[] => {
    const settled = sorted.map(({ time }) =>
      meanOfCapped(logMedian + Math.log(time / fall), boundedDeviation(deviation)),
    );
    const share = settleableShare(sorted, settled);
    return sorted.map((reading, i) => share * (settled[i] ?? 0) - reading.share);
  };
  const fits = starts([Math.log(fall / last.time) - 2, Math.log(fall / first.time) + 2], residuals).map((start) =>
    leastSquares(residuals, start),
  );
  const [logMedian, raw] = fits.reduce((best, next) =>
    squares(residuals(next)) < squares(residuals(best)) ? next : best,
  );
  const deviation = boundedDeviation(raw);
  const settled = sorted.map(({ time }) => meanOfCapped(logMedian + Math.log(time / fall), deviation));
  return { median: Math.exp(logMedian), spread: Math.exp(deviation), settleable: settleableShare(sorted, settled) };
}

/** A deviation is the same to either side of 0, and no wider than is looked for. */
function boundedDeviation(deviation: number): number {
  return Math.min(Math.abs(deviation), WIDEST);
}

/** The share that fits best for a given shape, in closed form; no more than all. */
function settleableShare(readings: readonly JarReading[], settled: readonly number[]): number {
  let above = 0;
  let below = 0;
  readings.forEach(({ share }, i) => {
    const figured = settled[i] ?? 0;
    above += share * figured;
    below += figured * figured;
  });
  return below === 0 ? 1 : Math.min(1, above / below);
}

/** The three best of a coarse net over median and spread. */
function starts(
  [slowest, fastest]: readonly [number, number],
  residuals: (at: Point) => readonly number[],
): readonly Point[] {
  const points: Point[] = [];
  for (let i = 0; i <= 16; i++) {
    for (const deviation of [0.05, 0.2, 0.5, 0.9, 1.4, 2, 3]) {
      points.push([slowest + ((fastest - slowest) * i) / 16, deviation]);
    }
  }
  const ranked = points.map((at) => ({ at, sum: squares(residuals(at)) })).sort((a, b) => a.sum - b.sum);
  return ranked.slice(0, 3).map(({ at }) => at);
}

/** The first and the last reading of a jar that can be fitted. */
function endsOf(readings: readonly JarReading[]): { readonly first: JarReading; readonly last: JarReading } {
  const [first] = readings;
  const last = readings.at(-1);
  if (first === undefined || last === undefined || new Set(readings.map(({ time }) => time)).size < 3) {
    throw new Refusal('readings', 'give at least three, at different times');
  }
  if (readings.length > MOST_READINGS) {
    throw new Refusal('readings', `give at most ${MOST_READINGS}; a dozen spread over the time are enough`);
  }
  const most = Math.max(...readings.map(({ share }) => share));
  if (most <= 0) {
    throw new Refusal('readings', 'none of these solids settled, so no settler will capture them; screen them instead');
  }
  if (last.share <= first.share) {
    throw new Refusal(
      'readings',
      'the share settled must rise; if all had settled by the first reading, stir again and read sooner',
    );
  }
  const pace = readings.map(({ time, share }) => share / time);
  if (last.share / last.time > SLACKENED * Math.max(...pace)) {
    throw new Refusal(
      'readings',
      'keep reading until the share settled stops rising: these readings show only its start',
    );
  }
  return { first, last };
}
