import { cropGroups, crops } from '../../formulas/bed/crops';
import { fao } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { ofTopic, practice, type TopicFigure } from './coefficient';
import { GRAMS_PER_SQUARE_METRE_DAY } from './scale';

/** Plant beds: feed that crops take, how close they stand, what gravel holds. */
export const bedCoefficients = ofTopic('BED', [
  ...cropGroups.map(
    ({ name, feed, source, known }): TopicFigure => ({
      key: `feed on ${name}`,
      kind: 'areal rate',
      ...feed,
      source,
      known,
      meaning: `feed a day on a square meter of ${name} crops, 32 % protein; authorities differ 2.5 times between 40 and 100. Typical of leafy is what a worked example takes, of fruiting and raft the middle; basil in batches showed deficiency at 81.4, staggered at 99.6 none`,
    }),
  ),
  ...crops.map(
    ({ name, plants, source, known }): TopicFigure => ({
      key: `plants of ${name}`,
      kind: 'number',
      ...plants,
      source,
      known,
      meaning: 'plants to a square meter; leafy as in a worked example, raft as leafy, typical of fruiting the middle',
    }),
  ),
  {
    key: 'bed capture',
    kind: 'share',
    ...range(0.2, 0.4, 0.8),
    ...practice,
    meaning:
      'share of the solids in the whole flow that gravel beds take in one pass; a bed that only half of the flow goes through takes half as much: measure before and after your own',
  },
  {
    key: 'plant uptake',
    kind: 'areal rate',
    ...range(0.15, 0.3, 1, GRAMS_PER_SQUARE_METRE_DAY),
    source: 'worked out from 25 heads of 200 g lettuce on a square meter in 5 weeks, 5 % dry with 4 % nitrogen, 0.29 g',
    known: 'computed',
    meaning:
      'nitrogen that plants take a day from a square meter of bed; fast leafy crops and good light give three times as much',
  },
  {
    key: 'bed depth',
    kind: 'dimension',
    ...range(0.25, 0.3, 0.35),
    source: `${fao}, section 4.3`,
    known: 'memory',
    meaning: 'depth of gravel in a bed, 30 cm in media beds',
  },
  {
    key: 'bed holding',
    kind: 'bed holding',
    ...range(1, 2, 5),
    ...practice,
    meaning:
      'dry solids in a cubic meter of gravel when it wants cleaning out, which is a tenth of the gaps, two fifths of the bed, filled with sludge of 5 % solids; worms and roots make it more',
  },
]);
