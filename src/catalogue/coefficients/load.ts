import { davidson, fao, timmons, wasAbstract } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { CARBON_DIOXIDE_PER_OXYGEN } from '../../formulas/water/atomic-mass';
import { ofTopic, practice } from './coefficient';
import { MILLIGRAMS_PER_LITRE } from './scale';

/** What a kilogram of feed becomes, and the limits of each waste in the water. */
export const loadCoefficients = ofTopic('LOAD', [
  {
    key: 'solids share',
    kind: 'share',
    ...range(0.04, 0.25, 0.7),
    source: `${timmons}; low end Clark, Harman and Forster (1985); high end ${wasAbstract}`,
    known: 'memory',
    meaning:
      'dry suspended solids per feed as fed; design convention 0.25 to 0.30, measured 0.04 to 0.09 for trout, 0.3 to 0.4 for salmon, 0.2 to 0.7 for catfish: sources differ many-fold, so weigh your own',
  },
  {
    key: 'ammonia factor',
    kind: 'number',
    ...range(0.069, 0.092, 0.0976),
    source: `${timmons}; low end SRAC Publication 452; high end ${fao}, appendix 4`,
    known: 'memory',
    meaning:
      'total ammonia nitrogen per protein fed: 0.16 x 0.80 x 0.80 x 0.90 = 0.0922; low end 2.2 lb per 100 lb of feed at 32 % protein, high end 0.16 x 0.61; sources differ by two fifths, and measurements on trout gave 31 to 37 g ammonia per kg of feed (Clark, Harman and Forster 1985)',
  },
  {
    key: 'oxygen ratio fish',
    kind: 'number',
    ...range(0.25, 0.4, 0.5),
    source: timmons,
    known: 'memory',
    meaning: 'oxygen that the fish alone use per feed; sources differ twofold, and typical is between them',
  },
  {
    key: 'oxygen ratio system',
    kind: 'number',
    ...range(0.38, 1.25, 1.25),
    source: 'Boyd; low end computed',
    known: 'read',
    meaning:
      'oxygen that fish, waste and nitrifying bacteria use together per feed; low end is fish at 0.25 plus nitrification at protein x 0.092 x 4.57, for 32 % protein and no waste left to rot: drawing solids off before they rot lowers it to a third at best, and sources differ as much',
  },
  {
    key: 'carbon dioxide ratio',
    kind: 'number',
    typical: CARBON_DIOXIDE_PER_OXYGEN,
    source: 'molar masses 44 and 32, respiratory quotient of 1',
    known: 'computed',
    meaning: 'carbon dioxide breathed out per oxygen breathed in',
  },
  {
    key: 'protein',
    kind: 'share',
    ...range(0.28, 0.32, 0.45),
    source: `${fao}, section 8.1`,
    known: 'read',
    meaning:
      'crude protein in the feed, usually 32 %, in trout feeds 38 to 45 %; feeds differ by more than half, so read the bag',
  },
  {
    key: 'ammonia limit',
    kind: 'concentration',
    ...range(1, 1, 3, MILLIGRAMS_PER_LITRE),
    source: `${fao}, table 3.1: 1 cold-water, 3 warm-water`,
    known: 'read',
    meaning:
      'highest total ammonia nitrogen allowed in the tank: under 1 mg/L for cold-water fish, under 3 for warm-water fish; limits differ threefold by species, and high pH and warm water make the limit far lower: see WATER.LIMIT',
  },
  {
    key: 'removal',
    kind: 'share',
    ...range(0.2, 0.35, 0.6),
    ...practice,
    meaning: 'share of ammonia that a biofilter removes in one pass; measure before and after your own',
  },
  {
    key: 'un-ionized ammonia limit',
    kind: 'concentration',
    ...range(0.02, 0.05, 0.05, MILLIGRAMS_PER_LITRE),
    source: 'UF/IFAS FA16; low end EIFAC Technical Paper 11 (1970), 0.025 mg/L as NH3, from memory',
    known: 'read',
    meaning:
      'highest un-ionized ammonia nitrogen allowed in the tank: above 0.05 mg/L it harms fish, and trout and salmon tolerate less than half of that; limits differ twofold by species',
  },
  {
    key: 'carbon dioxide limit',
    kind: 'concentration',
    ...range(10, 20, 60, MILLIGRAMS_PER_LITRE),
    ...practice,
    meaning:
      'highest carbon dioxide allowed in the tank: 20 mg/L for trout, while tilapia tolerate 50 and more; limits differ several-fold by species',
  },
  {
    key: 'solids decay',
    kind: 'number',
    ...range(0.03, 0.1, 0.3),
    source: 'oxygen demand of settled wastes runs down at 0.1 to 0.3 a day at 20 °C, slow part slower',
    known: 'memory',
    meaning:
      'share of the solids in the water that decays a day; sources differ tenfold, warm water is faster, and no single figure was found for fine fish solids',
  },
  {
    key: 'passive denitrification',
    kind: 'share',
    ...range(0.02, 0.1, 0.21),
    source: 'van Rijn, Tal and Schreier, Aquacultural Engineering 34:364 (2006), 9 to 21 % of nitrogen unaccounted for',
    known: 'memory',
    meaning:
      'share of the nitrogen fed that denitrifies in sludge and slime without a denitrifying filter; systems differ many-fold',
  },
  {
    key: 'feed phosphorus',
    kind: 'share',
    ...range(0.008, 0.011, 0.016),
    source: 'usual range of fish feeds',
    known: 'memory',
    meaning: 'phosphorus as P in the feed; feeds differ twofold, so read the bag',
  },
  {
    key: 'fish nitrogen',
    kind: 'share',
    ...range(0.024, 0.027, 0.03),
    source: 'body protein of 15 to 19 % of wet mass, 0.16 of it nitrogen',
    known: 'memory',
    meaning: 'nitrogen in the gain of fish, of wet mass; species and sizes differ by a fifth',
  },
  {
    key: 'fish phosphorus',
    kind: 'share',
    ...range(0.003, 0.0045, 0.006),
    source: 'usual range of whole fish',
    known: 'memory',
    meaning: 'phosphorus as P in the gain of fish, of wet mass; bony fish have more, and species differ twofold',
  },
  {
    key: 'solids limit',
    kind: 'concentration',
    ...range(10, 20, 40, MILLIGRAMS_PER_LITRE),
    source: timmons,
    known: 'memory',
    meaning:
      'highest dry suspended solids allowed in the tank: under 10 mg/L for cold-water fish, 20 and more for warm-water fish; sources differ fourfold',
  },
  {
    key: 'capture',
    kind: 'share',
    ...range(0.371, 0.5, 0.779),
    source: `between swirl and radial flow, ${davidson}`,
    known: 'common practice',
    meaning: 'share of suspended solids removed in one pass; the two measured shares differ twofold',
  },
]);
