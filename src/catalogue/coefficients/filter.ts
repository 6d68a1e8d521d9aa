import { fao } from '../../formulas/citations';
import { mediaTable } from '../../formulas/filter/media';
import { AMMONIA_GAIN, OXYGEN_GAIN } from '../../formulas/filter/nitrification';
import { range } from '../../formulas/numeric/range';
import { ALKALINITY_PER_NITROGEN, OXYGEN_PER_NITROGEN } from '../../formulas/water/atomic-mass';
import { ofTopic, practice, type TopicFigure } from './coefficient';
import { GRAMS_PER_SQUARE_METRE, GRAMS_PER_SQUARE_METRE_DAY } from './scale';

const reaction = 'NH4+ + 2 O2 -> NO3- + 2 H+ + H2O; low end Ebeling, Timmons and Bisogni, Aquaculture 257:346 (2006)';
const zhu = 'Zhu and Chen, Aquacultural Engineering 26:221 (2002), at 20 °C';

/** Screens and biofilters: what pads hold and remove, how fast media nitrifies, and what that takes from the water. */
export const filterCoefficients = [
  ...ofTopic('SCREEN', [
    {
      key: 'pad holding',
      kind: 'holding',
      ...range(100, 250, 500, GRAMS_PER_SQUARE_METRE),
      ...practice,
      meaning: 'dry solids on a square meter of pad when it needs changing; weigh your own: SCREEN.HOLDING',
    },
    {
      key: 'pad capture',
      kind: 'share',
      ...range(0.3, 0.5, 0.8),
      ...practice,
      meaning: 'share of the solids reaching the pads that they remove in one pass; finer pads remove more',
    },
  ]),
  ...ofTopic('FILTER', [
    {
      key: 'nitrification',
      kind: 'areal rate',
      ...range(0.2, 0.469, 1.0, GRAMS_PER_SQUARE_METRE_DAY),
      source: `${fao}, appendix 4; range of design practice`,
      known: 'memory',
      meaning:
        'nitrogen nitrified a day per square meter of media at 20 °C; typical is 0.57 g ammonia, the range is that of design at 20 to 30 °C: sources differ fivefold. Trickling 0.24 to 0.64, rotating contactor 0.19 to 0.79, bead 0.30 to 0.60 (Crab et al. 2007)',
    },
    {
      key: 'filter reserve',
      kind: 'share',
      ...range(0, 0.25, 1),
      ...practice,
      meaning: 'extra media beyond what the ammonia needs, for a week of heavy feeding or bacteria lost in cleaning',
    },
    {
      key: 'nitrification oxygen',
      kind: 'number',
      ...range(4.18, OXYGEN_PER_NITROGEN, OXYGEN_PER_NITROGEN),
      source: reaction,
      known: 'computed',
      meaning: 'oxygen used per ammonia nitrogen nitrified, from IUPAC masses; low end with growth of the bacteria',
    },
    {
      key: 'nitrification alkalinity',
      kind: 'number',
      ...range(7.05, ALKALINITY_PER_NITROGEN, ALKALINITY_PER_NITROGEN),
      source: reaction,
      known: 'computed',
      meaning:
        'alkalinity as CaCO3 used per ammonia nitrogen nitrified, from IUPAC masses; low end with growth of the bacteria; often printed as 7.14',
    },
    {
      key: 'nitrification gain, ammonia',
      kind: 'number',
      typical: AMMONIA_GAIN,
      source: zhu,
      known: 'read',
      meaning:
        'gain of the rate per °C if ammonia limits; in moving beds the rate grew 1.098-fold per °C (Salvetti et al. 2006), more than twice that',
    },
    {
      key: 'nitrification gain, oxygen',
      kind: 'number',
      typical: OXYGEN_GAIN,
      source: zhu,
      known: 'read',
      meaning: 'gain of the rate per °C if oxygen limits',
    },
    ...mediaTable.map(
      ({ name, surface, source, known }): TopicFigure => ({
        key: `surface of ${name}`,
        kind: 'surface',
        ...surface,
        source,
        known,
        meaning: `specific surface of ${name}, per bulk; ask the maker`,
      }),
    ),
  ]),
];
