import { cropGroups, crops } from '../../formulas/bed/crops';
import { fao } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { ofTopic, practice, type TopicFigure } from './coefficient';

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
