import { fao } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { ofTopic, practice } from './coefficient';
import { MILLIGRAMS_PER_LITRE } from './scale';

/** Fish: feeding, growth, stocking limit and the lowest oxygen they tolerate. */
export const stockCoefficients = ofTopic('STOCK', [
  {
    key: 'rainbow trout',
    kind: 'share',
    ...range(0.004, 0.015, 0.099),
    source: 'Leitritz and Lewis, Trout and Salmon Culture (1980)',
    known: 'read',
    meaning:
      'feeding rate, share of body mass a day; typical is for fish of 8 to 9 inches at 60 °F, from a chart for 36 to 68 °F: STOCK.FEEDRATE reads the chart by mass and temperature',
  },
  {
    key: 'tilapia',
    kind: 'share',
    ...range(0.01, 0.035, 0.2),
    source: 'Rakocy, SRAC Publication 282, table 1',
    known: 'memory',
    meaning:
      'feeding rate, share of body mass a day in tanks at 82 to 86 °F; typical is at 100 g: STOCK.FEEDRATE reads the chart by mass',
  },
  {
    key: 'channel catfish',
    kind: 'share',
    ...range(0.01, 0.02, 0.1),
    source: 'FAO AFFRIS, channel catfish',
    known: 'read',
    meaning:
      'feeding rate, share of body mass a day; published by life stage only: fry 6 to 10 %, fingerlings 2 to 5 %, brood fish 1 to 2 %, so STOCK.FEEDRATE has no chart',
  },
  {
    key: 'growth coefficient',
    kind: 'number',
    ...range(0.13, 0.165, 0.2),
    source: 'usual range for rainbow trout',
    known: 'read',
    meaning:
      'thermal-growth coefficient, per cent form; typical is the middle, a fast strain had 0.222; weigh your own fish and use STOCK.COEFFICIENT',
  },
  {
    key: 'conversion of rainbow trout',
    kind: 'number',
    ...range(0.6, 1.0, 1.1),
    source: 'FAO, cultured aquatic species, rainbow trout',
    known: 'read',
    meaning: 'feed per growth; sources differ by more than a fifth',
  },
  {
    key: 'conversion of tilapia',
    kind: 'number',
    ...range(1.4, 1.6, 1.8),
    source: 'usual range in tanks; Rakocy et al. (2004)',
    known: 'memory',
    meaning: 'feed per growth; 1.7 and 1.8 in the University of the Virgin Islands system (Rakocy et al. 2004)',
  },
  {
    key: 'conversion of channel catfish',
    kind: 'number',
    ...range(1.5, 1.8, 2.2),
    source: 'usual range in ponds and tanks',
    known: 'memory',
    meaning: 'feed per growth; sources differ by more than a fifth',
  },
  {
    key: 'stocking limit',
    kind: 'stocking',
    ...range(10, 20, 80),
    source: `${fao}; high end Losordo and DeLong (2015)`,
    known: 'memory',
    meaning:
      'mass of fish per volume of water: 20 kg in 1000 L for small units, the high end for commercial tanks with pure oxygen; sources differ eightfold, because dense tanks lose oxygen faster when the power fails',
  },
  {
    key: 'oxygen floor',
    kind: 'concentration',
    ...range(2, 3, 5, MILLIGRAMS_PER_LITRE),
    ...practice,
    meaning: 'oxygen at which fish are in danger; warm-water fish gasp at 2 to 3 mg/L, trout suffer below 5',
  },
  {
    key: 'oxygen at power failure',
    kind: 'concentration',
    ...range(5, 6, 8, MILLIGRAMS_PER_LITRE),
    source: `${fao}, table 3.1`,
    known: 'read',
    meaning:
      'oxygen in the tank when pump and air stop, 4 to 6 mg/L for warm-water fish, 6 to 8 for cold-water fish: measure your own after feeding',
  },
  {
    key: 'peak oxygen factor',
    kind: 'number',
    ...range(1.2, 1.5, 2),
    ...practice,
    meaning:
      'oxygen used in the worst hour, after feeding, over the mean of the day; sources differ by more than a fifth',
  },
]);
