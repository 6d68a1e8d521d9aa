/**
 * What your own filter removes, from ammonia before and after it.
 */
import { mean } from '../numeric/line';
import { Refusal } from '../refusal';
import { nitrificationLine, STUDIED_FILMS } from './nitrification';

/** Ammonia before and after the filter at one time, kg N/m3, and the row of the readings. */
export interface FilterPair {
  readonly row: number;
  readonly inlet: number;
  readonly outlet: number;
}

export interface FilterFit {
  /** kg N/s. */
  readonly taken: number;
  readonly share: number;
  /** kg N/m2/s; not known without the area. */
  readonly rate: number | undefined;
  /** Not known either outside the temperatures at which films were studied. */
  readonly rateAt20: number | undefined;
  /** Of the share; not known from one pair. */
  readonly standardError: number | undefined;
}

/**
 * Ammonia taken, share a pass and areal rate of a filter, from pairs of readings.
 *
 * Taken = flow x mean of (inlet - outlet); share = mean of (inlet - outlet) / inlet, with s / sqrt(n) as its standard error. The rate at
 * 20 °C is the one from which FILTER.NITRIFY gives the rate measured. Refuses an inlet
 * without ammonia, and a filter that removes none on average. Source: mass balance.
 */
export function filterTest(
  flow: number,
  readings: readonly FilterPair[],
  area: number | undefined,
  temperature: number,
): FilterFit {
  const pairs = readings.map(({ row, inlet, outlet }) => {
    if (inlet <= 0)
      throw new Refusal('inlet', `row ${row} has no ammonia, so the filter has nothing to remove; test after feeding`);
    return { taken: inlet - outlet, share: (inlet - outlet) / inlet };
  });
  const share = mean(pairs.map((pair) => pair.share));
  const taken = flow * mean(pairs.map((pair) => pair.taken));
  if (taken <= 0 || share <= 0) {
    throw new Refusal(
      'outlet',
      'on average as much ammonia leaves as enters, so the filter removes none; check which end is which',
    );
  }
  const squares = pairs.reduce((sum, pair) => sum + (pair.share - share) ** 2, 0);
  const standardError = pairs.length < 2 ? undefined : Math.sqrt(squares / (pairs.length - 1) / pairs.length);
  const rate = area === undefined ? undefined : taken / area;
  const [low, high] = STUDIED_FILMS;
  const studied = temperature >= low && temperature <= high;
  const rateAt20 = rate === undefined || !studied ? undefined : rate / nitrificationLine(1, temperature, 20, 'lower');
  return { taken, share, rate, rateAt20, standardError };
}
