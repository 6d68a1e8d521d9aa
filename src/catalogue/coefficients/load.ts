import { davidson, fao, timmons, wasAbstract } from '../../formulas/citations';
import { range } from '../../formulas/numeric/range';
import { CARBON_DIOXIDE_PER_OXYGEN } from '../../formulas/water/atomic-mass';
import { ofTopic, practice } from './coefficient';
import { MILLIGRAMS_PER_LITRE } from './scale';

/** What a kilogram of feed becomes, and the limits that circulation holds it to. */
export const loadCoefficients = ofTopic('LOAD', [
  {
    key: 'solids share',
    kind: 'share',
    ...range(0.04, 0.25, 0.7),
    source: `${timmons}; low end Clark, Harman and Forster (1985); high end ${wasAbstract}`,
    known: 'memory',
    meaning:
      'dry suspended solids per feed as fed; design convention 0.25 to 0.30, measured 0.04 to 0.09 on trout, 0.3 to 0.4 on salmon, 0.2 to 0.7 on catfish: authorities differ many times over, so weigh your own',
  },
  {
    key: 'ammonia factor',
    kind: 'number',
    ...range(0.069, 0.092, 0.0976),
    source: `${timmons}; low end SRAC Publication 452; high end ${fao}, appendix 4`,
    known: 'memory',
    meaning:
      'total ammonia nitrogen per protein fed: 0.16 x 0.80 x 0.80 x 0.90 = 0.0922; low end 2.2 lb a 100 lb of feed at 32 % protein, high end 0.16 x 0.61; authorities differ by two fifths, and trout measured 31 to 37 g ammonia a kg of feed (Clark, Harman and Forster 1985)',
  },
  {
    key: 'oxygen ratio fish',
    kind: 'number',
    ...range(0.25, 0.4, 0.5),
    source: timmons,
    known: 'memory',
    meaning: 'oxygen that the fish alone breathe per feed; authorities differ twice over, and typical is between',
  },
  {
    key: 'oxygen ratio system',
    kind: 'number',
    ...range(0.38, 1.25, 1.25),
    source: 'Boyd; low end computed',
    known: 'read',
    meaning:
      'oxygen that fish, waste and nitrifying bacteria take together per feed; low end fish at 0.25 and nitrification at protein x 0.092 x 4.57, here of 32 % protein, no waste left to rot: drawing solids off before they rot brings it down to a third at best, and authorities differ as much',
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
      'crude protein in the feed, usually 32 %, in trout feeds 38 to 45 %; feeds differ by more than half, so read it off the bag',
  },
  {
    key: 'ammonia limit',
    kind: 'concentration',
    ...range(1, 1, 3, MILLIGRAMS_PER_LITRE),
    source: `${fao}, table 3.1: 1 cold-water, 3 warm-water`,
    known: 'read',
    meaning:
      'total ammonia nitrogen that the tank may hold: under 1 mg/L cold-water, under 3 warm-water; limits differ three times by species, and high pH and warm water make it far less: see WATER.LIMIT',
  },
  {
    key: 'removal',
    kind: 'share',
    ...range(0.2, 0.35, 0.6),
    ...practice,
    meaning: 'share of ammonia that a biofilter takes out in one pass; measure in and out of your own',
  },
  {
    key: 'un-ionized ammonia limit',
    kind: 'concentration',
    ...range(0.02, 0.05, 0.05, MILLIGRAMS_PER_LITRE),
    source: 'UF/IFAS FA16; low end EIFAC Technical Paper 11 (1970), 0.025 mg/L as NH3, from memory',
    known: 'read',
    meaning:
      'un-ionized ammonia nitrogen that the tank may hold: above 0.05 mg/L harms, trout and their kin under half of it; limits differ twice over by species',
  },
  {
    key: 'carbon dioxide limit',
    kind: 'concentration',
    ...range(10, 20, 60, MILLIGRAMS_PER_LITRE),
    ...practice,
    meaning:
      'carbon dioxide that the tank may hold: 20 mg/L for trout, tilapia bear 50 and more; limits differ several times by species',
  },
  {
    key: 'solids decay',
    kind: 'number',
    ...range(0.03, 0.1, 0.3),
    source: 'oxygen demand of settled wastes runs down at 0.1 to 0.3 a day at 20 °C, slow part slower',
    known: 'memory',
    meaning:
      'share of the solids in the water that decays a day; authorities differ ten times, warm water is faster, and no one figure was found for fine solids of fish',
  },
  {
    key: 'passive denitrification',
    kind: 'share',
    ...range(0.02, 0.1, 0.21),
    source: 'van Rijn, Tal and Schreier, Aquacultural Engineering 34:364 (2006), 9 to 21 % of nitrogen unaccounted for',
    known: 'memory',
    meaning:
      'share of the nitrogen fed that is denitrified in sludge and slime without a denitrifying filter; systems differ many times',
  },
  {
    key: 'feed phosphorus',
    kind: 'share',
    ...range(0.008, 0.011, 0.016),
    source: 'usual range of fish feeds',
    known: 'memory',
    meaning: 'phosphorus as P in the feed; feeds differ twice over, so read it off the bag',
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
    meaning: 'phosphorus as P in the gain of fish, of wet mass; bony fish have more, and species differ twice over',
  },
  {
    key: 'solids limit',
    kind: 'concentration',
    ...range(10, 20, 40, MILLIGRAMS_PER_LITRE),
    source: timmons,
    known: 'memory',
    meaning:
      'dry suspended solids that the tank may hold: under 10 mg/L cold-water, 20 and more warm-water; authorities differ four times',
  },
  {
    key: 'capture',
    kind: 'share',
    ...range(0.371, 0.5, 0.779),
    source: `between swirl and radial flow, ${davidson}`,
    known: 'common practice',
    meaning: 'share of suspended solids taken out in one pass; the two measured shares differ twice over',
  },
]);
