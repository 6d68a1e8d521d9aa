import { ALKALINITY_PER_NITROGEN, OXYGEN_PER_NITROGEN } from '../../formulas/atomic-mass';
import { mediaTable } from '../../formulas/media';
import { AMMONIA_GAIN, OXYGEN_GAIN } from '../../formulas/nitrification';
import type { Coefficient } from './coefficient';
import { GRAMS_PER_SQUARE_METRE, GRAMS_PER_SQUARE_METRE_DAY } from './scale';

const ebeling = 'Ebeling, Timmons and Bisogni, Aquaculture 257:346 (2006)';
const zhu = 'Zhu and Chen, Aquacultural Engineering 26:221 (2002), at 20 °C';

/** Screens and biofilters: what pads hold and take out, how fast media nitrifies and at what cost to the water. */
export const filterCoefficients: readonly Coefficient[] = [
  {
    key: 'pad holding',
    topic: 'SCREEN',
    kind: 'holding',
    low: 100 * GRAMS_PER_SQUARE_METRE,
    typical: 250 * GRAMS_PER_SQUARE_METRE,
    high: 500 * GRAMS_PER_SQUARE_METRE,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'dry solids on a square metre of pad when it wants changing; weigh your own: SCREEN.HOLDING',
  },
  {
    key: 'pad capture',
    topic: 'SCREEN',
    kind: 'share',
    low: 0.3,
    typical: 0.5,
    high: 0.8,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'share that pads take of the solids which the settler passes on; depends on how fine the pad is',
  },
  {
    key: 'nitrification',
    topic: 'FILTER',
    kind: 'areal rate',
    low: 0.2 * GRAMS_PER_SQUARE_METRE_DAY,
    typical: 0.469 * GRAMS_PER_SQUARE_METRE_DAY,
    high: 1.0 * GRAMS_PER_SQUARE_METRE_DAY,
    source:
      'FAO Fisheries Technical Paper 589 (2014), appendix 4: 0.57 g ammonia = 0.469 g N; range of design practice at 20 to 30 °C',
    known: 'memory',
    meaning:
      'nitrogen nitrified a day on a square metre of media at 20 °C; authorities differ five times. Trickling 0.24 to 0.64, rotating contactor 0.19 to 0.79, bead 0.30 to 0.60 (Crab et al. 2007)',
  },
  {
    key: 'filter reserve',
    topic: 'FILTER',
    kind: 'share',
    low: 0,
    typical: 0.25,
    high: 1,
    source: 'common practice, no source',
    known: 'common practice',
    meaning: 'media added on top of what the ammonia needs, for a hungry week or a film lost to cleaning',
  },
  {
    key: 'nitrification oxygen',
    topic: 'FILTER',
    kind: 'number',
    low: 4.18,
    typical: OXYGEN_PER_NITROGEN,
    high: OXYGEN_PER_NITROGEN,
    source: `NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, IUPAC masses; low end with growth of the bacteria, ${ebeling}`,
    known: 'computed',
    meaning: 'oxygen taken per ammonia nitrogen nitrified',
  },
  {
    key: 'nitrification alkalinity',
    topic: 'FILTER',
    kind: 'number',
    low: 7.05,
    typical: ALKALINITY_PER_NITROGEN,
    high: ALKALINITY_PER_NITROGEN,
    source: `NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, IUPAC masses; low end with growth of the bacteria, ${ebeling}`,
    known: 'computed',
    meaning: 'alkalinity as CaCO3 taken per ammonia nitrogen nitrified; often printed as 7.14',
  },
  {
    key: 'nitrification gain, ammonia',
    topic: 'FILTER',
    kind: 'number',
    typical: AMMONIA_GAIN,
    source: zhu,
    known: 'read',
    meaning:
      'gain of the rate per °C where ammonia limits; moving beds were found at 1.098 times a °C (Salvetti et al. 2006), more than twice that',
  },
  {
    key: 'nitrification gain, oxygen',
    topic: 'FILTER',
    kind: 'number',
    typical: OXYGEN_GAIN,
    source: zhu,
    known: 'read',
    meaning: 'gain of the rate per °C where oxygen limits',
  },
  ...mediaTable.map(
    ({ name, surface, source, known }): Coefficient => ({
      key: `surface of ${name}`,
      topic: 'FILTER',
      kind: 'surface',
      ...surface,
      source,
      known,
      meaning: `specific surface of ${name}, per bulk; ask the maker`,
    }),
  ),
];
