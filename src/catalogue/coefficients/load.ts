import { CARBON_DIOXIDE_PER_OXYGEN } from '../../formulas/atomic-mass';
import type { Coefficient } from './coefficient';
import { MILLIGRAMS_PER_LITRE } from './scale';

const timmons = 'Timmons and Ebeling, Recirculating Aquaculture';

/** What a kilogram of feed becomes, and the limits that circulation holds it to. */
export const loadCoefficients: readonly Coefficient[] = [
  {
    key: 'solids share',
    topic: 'LOAD',
    kind: 'share',
    low: 0.04,
    typical: 0.25,
    high: 0.7,
    source: `${timmons} (0.25, for design to 0.30); low end measured on trout, Clark, Harman and Forster (1985); high end on catfish, World Aquaculture Society abstract 165932`,
    known: 'memory',
    meaning:
      'dry suspended solids per feed as fed; design convention 0.25 to 0.30, measured 0.04 to 0.09 on trout, 0.3 to 0.4 on salmon, 0.2 to 0.7 on catfish: authorities differ many times over, so weigh your own',
  },
  {
    key: 'ammonia factor',
    topic: 'LOAD',
    kind: 'number',
    low: 0.069,
    typical: 0.092,
    high: 0.0976,
    source: `${timmons}: 0.16 x 0.80 x 0.80 x 0.90 = 0.0922; low end SRAC Publication 452, 2.2 lb a 100 lb of feed, at 32 % protein; high end FAO Fisheries Technical Paper 589 (2014), appendix 4, 0.16 x 0.61`,
    known: 'memory',
    meaning:
      'total ammonia nitrogen per protein fed; authorities differ by two fifths, and trout measured 31 to 37 g ammonia a kg of feed (Clark, Harman and Forster 1985)',
  },
  {
    key: 'oxygen ratio fish',
    topic: 'LOAD',
    kind: 'number',
    low: 0.25,
    typical: 0.4,
    high: 0.5,
    source: `${timmons}; typical is between`,
    known: 'memory',
    meaning: 'oxygen that the fish alone breathe per feed; authorities differ twice over',
  },
  {
    key: 'oxygen ratio system',
    topic: 'LOAD',
    kind: 'number',
    low: 0.38,
    typical: 1.25,
    high: 1.25,
    source:
      'Boyd, 1.25 kg a kg of feed for fish, waste and nitrification; low end fish at 0.25 and nitrification at 0.32 x 0.092 x 4.57, no waste left to rot',
    known: 'read',
    meaning:
      'oxygen that fish, waste and nitrifying bacteria take together per feed; drawing solids off before they rot brings it down to a third at best, and authorities differ as much',
  },
  {
    key: 'carbon dioxide ratio',
    topic: 'LOAD',
    kind: 'number',
    typical: CARBON_DIOXIDE_PER_OXYGEN,
    source: 'molar masses 44 and 32, respiratory quotient of 1',
    known: 'computed',
    meaning: 'carbon dioxide breathed out per oxygen breathed in',
  },
  {
    key: 'protein',
    topic: 'LOAD',
    kind: 'share',
    low: 0.28,
    typical: 0.32,
    high: 0.45,
    source: 'FAO Fisheries Technical Paper 589 (2014), section 8.1: usual feed is 32 % protein; trout feeds 38 to 45 %',
    known: 'read',
    meaning: 'crude protein in the feed; feeds differ by more than half, so read it off the bag',
  },
  {
    key: 'ammonia limit',
    topic: 'LOAD',
    kind: 'concentration',
    low: 1 * MILLIGRAMS_PER_LITRE,
    typical: 1 * MILLIGRAMS_PER_LITRE,
    high: 3 * MILLIGRAMS_PER_LITRE,
    source: 'FAO Fisheries Technical Paper 589 (2014), table 3.1: under 1 cold-water, under 3 warm-water',
    known: 'read',
    meaning:
      'total ammonia nitrogen that the tank may hold; limits differ three times by species, and high pH and warm water make it far less: see WATER.LIMIT',
  },
  {
    key: 'removal',
    topic: 'LOAD',
    kind: 'share',
    low: 0.2,
    typical: 0.35,
    high: 0.6,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'share of ammonia that a biofilter takes out in one pass; measure in and out of your own',
  },
  {
    key: 'solids limit',
    topic: 'LOAD',
    kind: 'concentration',
    low: 10 * MILLIGRAMS_PER_LITRE,
    typical: 20 * MILLIGRAMS_PER_LITRE,
    high: 40 * MILLIGRAMS_PER_LITRE,
    source: `${timmons}: under 10 cold-water, 20 and more warm-water`,
    known: 'memory',
    meaning: 'dry suspended solids that the tank may hold; authorities differ four times',
  },
  {
    key: 'capture',
    topic: 'LOAD',
    kind: 'share',
    low: 0.371,
    typical: 0.5,
    high: 0.779,
    source:
      'between the measured shares of a swirl separator and a radial-flow settler, Davidson and Summerfelt, Aquacultural Engineering 33:47 (2005)',
    known: 'common practice',
    meaning: 'share of suspended solids taken out in one pass; the two measured shares differ twice over',
  },
];
