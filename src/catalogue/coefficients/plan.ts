import type { Coefficient } from './coefficient';
import { DAYS } from './scale';

const practice = {
  source: 'common practice, no source; the maker’s sheet comes first',
  known: 'common practice',
} as const;

/** Times of the build, and strength of alkali as bought. */
export const planCoefficients: readonly Coefficient[] = [
  {
    key: 'base cure',
    topic: 'PLAN',
    kind: 'days',
    low: 2 * DAYS,
    typical: 3 * DAYS,
    high: 7 * DAYS,
    ...practice,
    meaning: 'base mix, from pouring to the next coat; longer in the cold',
  },
  {
    key: 'mortar cure',
    topic: 'PLAN',
    kind: 'days',
    low: 2 * DAYS,
    typical: 3 * DAYS,
    high: 7 * DAYS,
    ...practice,
    meaning: 'mortar, from laying to sealant or water; longer in the cold',
  },
  {
    key: 'sealant cure',
    topic: 'PLAN',
    kind: 'days',
    low: 1 * DAYS,
    typical: 7 * DAYS,
    high: 14 * DAYS,
    ...practice,
    meaning: 'sealant that is safe for fish, from brush to water',
  },
  {
    key: 'leach',
    topic: 'PLAN',
    kind: 'days',
    low: 7 * DAYS,
    typical: 7 * DAYS,
    high: 28 * DAYS,
    ...practice,
    meaning: 'leaching fresh cement under changes of water; go by pH, not by the calendar',
  },
  {
    key: 'alkali purity',
    topic: 'PLAN',
    kind: 'share',
    low: 0.9,
    typical: 1,
    high: 1,
    ...practice,
    meaning: 'share of the alkali in what is bought: read it off the bag',
  },
];
