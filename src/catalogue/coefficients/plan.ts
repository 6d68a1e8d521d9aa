import { range } from '../../formulas/numeric/range';
import { DAY } from '../../formulas/numeric/time';
import { ofTopic, practice } from './coefficient';

/** Mortar in a bag of 50 lb, kg, and a square foot, m2. */
const BAG = 50 * 0.45359237;
const SQUARE_FOOT = 0.3048 ** 2;

const makers = { ...practice, source: `${practice.source}; the maker’s sheet comes first` } as const;

/** Cure times, materials of a settling bank, and purity of alkali as bought. */
export const planCoefficients = ofTopic('PLAN', [
  {
    key: 'base cure',
    kind: 'days',
    ...range(2, 3, 7, DAY),
    ...makers,
    meaning: 'time from pouring the base mix to the next coat; longer in the cold',
  },
  {
    key: 'mortar cure',
    kind: 'days',
    ...range(2, 3, 7, DAY),
    ...makers,
    meaning: 'time from applying mortar to sealant or water; longer in the cold',
  },
  {
    key: 'sealant cure',
    kind: 'days',
    ...range(1, 7, 14, DAY),
    ...makers,
    meaning: 'time from brushing on a fish-safe sealant to water',
  },
  {
    key: 'leach',
    kind: 'days',
    ...range(7, 7, 28, DAY),
    ...makers,
    meaning: 'time to leach fresh cement, with water changes; the pH decides, not the calendar',
  },
  {
    key: 'alkali purity',
    kind: 'share',
    ...range(0.9, 1, 1),
    ...makers,
    meaning: 'share of pure alkali in the product you buy: read the bag',
  },
  {
    key: 'mix parts',
    kind: 'number',
    ...range(4, 6, 8),
    source: 'Perlite Institute',
    known: 'read',
    meaning: 'parts of light aggregate to 1 of cement by loose volume; fewer parts make a heavier and stronger mix',
  },
  {
    key: 'mix waste',
    kind: 'share',
    ...range(0.05, 0.1, 0.2),
    ...practice,
    meaning: 'extra base mix for spilling',
  },
  {
    key: 'rivet spacing',
    kind: 'dimension',
    ...range(0.025, 0.038, 0.05),
    ...practice,
    meaning: 'largest distance between rivets of a sealed seam',
  },
  {
    key: 'container height',
    kind: 'dimension',
    ...range(0.3, 14 * 0.0254, 0.4),
    ...practice,
    meaning: 'height of the pail for drawn-off solids; a 5 US gal pail is about 14 in; measure your own',
  },
  {
    key: 'drain drop',
    kind: 'dimension',
    ...range(0.1, 0.15, 0.25),
    ...practice,
    meaning: 'distance from the stand’s top to the lowest edge of the drain valve',
  },
  {
    key: 'bedding mortar',
    kind: 'holding',
    ...range(BAG / (100 * SQUARE_FOOT), BAG / (70 * SQUARE_FOOT), BAG / (40 * SQUARE_FOOT)),
    source: 'Flooring Clarity, mortar for tile',
    known: 'read',
    meaning:
      'dry mortar per area of cone: a bag of 50 lb covers 40 to 100 ft2, depending on the trowel, and typical is the middle; trowels differ more than twofold',
  },
  {
    key: 'sealant bead',
    kind: 'dimension',
    ...range(0.005, 0.006, 0.01),
    ...practice,
    meaning: 'width and height of a bead along a joint',
  },
]);
