import { cropGroups, crops } from '../../formulas/crops';
import type { Coefficient } from './coefficient';

/** Plant beds: feed that crops take, how close they stand, what gravel holds. */
export const bedCoefficients: readonly Coefficient[] = [
  ...cropGroups.map(
    ({ name, feed, source, known }): Coefficient => ({
      key: `feed on ${name}`,
      topic: 'BED',
      kind: 'areal rate',
      ...feed,
      source,
      known,
      meaning: `feed a day on a square metre of ${name} crops, 32 % protein; authorities differ 2.5 times between 40 and 100`,
    }),
  ),
  ...crops.map(
    ({ name, plants, source, known }): Coefficient => ({
      key: `plants of ${name}`,
      topic: 'BED',
      kind: 'number',
      ...plants,
      source,
      known,
      meaning: 'plants to a square metre',
    }),
  ),
  {
    key: 'bed depth',
    topic: 'BED',
    kind: 'dimension',
    low: 0.25,
    typical: 0.3,
    high: 0.35,
    source: 'FAO Fisheries Technical Paper 589 (2014), section 4.3, media beds 30 cm deep',
    known: 'memory',
    meaning: 'depth of gravel in a bed',
  },
  {
    key: 'bed holding',
    topic: 'BED',
    kind: 'bed holding',
    low: 1,
    typical: 2,
    high: 5,
    source:
      'common practice, no source: a tenth of the gaps, which are two fifths of the bed, filled with sludge of 5 % solids',
    known: 'common practice',
    meaning: 'dry solids in a cubic metre of gravel when it wants cleaning out; worms and roots make it more',
  },
];
