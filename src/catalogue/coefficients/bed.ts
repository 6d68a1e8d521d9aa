import { cropGroups, crops } from '../../formulas/bed/crops';
import { fao } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { ofTopic, practice, type TopicFigure } from './coefficient';
import { GRAMS_PER_SQUARE_METRE_DAY } from './scale';

/** Plant beds: the feed that crops use, plant spacing, what gravel holds. */
export const bedCoefficients = ofTopic('BED', [
  ...cropGroups.map(
    ({ name, feed, source, known }): TopicFigure => ({
      key: `feed on ${name}`,
      kind: 'areal rate',
      ...feed,
      source,
      known,
      meaning: `feed a day per square meter of ${name} crops, at 32 % protein; sources differ 2.5-fold, from 40 to 100. Typical is a worked example’s figure for leafy crops and the middle of the range for fruiting and raft crops; basil in batches showed deficiency at 81.4, staggered basil showed none at 99.6`,
    }),
  ),
  ...crops.map(
    ({ name, plants, source, known }): TopicFigure => ({
      key: `plants of ${name}`,
      kind: 'number',
      ...plants,
      source,
      known,
      meaning:
        'plants per square meter; leafy as in a worked example, raft as leafy, typical of fruiting is the middle of the range',
    }),
  ),
  {
    key: 'bed capture',
    kind: 'share',
    ...range(0.2, 0.4, 0.8),
    ...practice,
    meaning:
      'share of the solids in the whole flow that gravel beds remove in one pass; a bed that gets half of the flow removes half as much: measure before and after your own',
  },
  {
    key: 'plant uptake',
    kind: 'areal rate',
    ...range(0.15, 0.3, 1, GRAMS_PER_SQUARE_METRE_DAY),
    source: 'worked out from 25 heads of 200 g lettuce on a square meter in 5 weeks, 5 % dry with 4 % nitrogen, 0.29 g',
    known: 'computed',
    meaning:
      'nitrogen that plants take up a day per square meter of bed; fast leafy crops in good light take up three times as much',
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
      'dry solids in a cubic meter of gravel when it needs cleaning: the gaps are two fifths of the bed, and sludge of 5 % solids fills a tenth of them; with worms and roots gravel holds more',
  },
]);
