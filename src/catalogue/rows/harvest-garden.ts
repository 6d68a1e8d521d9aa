import { harvestDose, harvestGarden, type Need } from '../../formulas/harvest/garden';
import { harvestLog, harvestValue, harvestWait } from '../../formulas/harvest/harvest';
import { Unreadable } from '../../units/unreadable';
import type { ReaderArgument } from '../argument';
import { define } from '../define';
import { balance, dry, nutrientColumns, ownTest, rawCare, slurrySolids } from '../harvest-arguments';
import { nutrientArguments, phosphorusOr, potassiumOr } from '../nutrient-arguments';

const { nitrogen, phosphorus, potassium, basis } = nutrientArguments;

const nitrogenNeed = {
  kind: 'application',
  above: 0,
  per: 'season',
  meaning: 'nitrogen that the garden needs',
} as const;
const gardenArguments = {
  nitrogen,
  available: {
    kind: 'share',
    above: 0,
    default: 'available nitrogen',
    meaning: 'share of nitrogen that plants can use this season',
  },
  phosphorus,
  phosphateNeed: {
    kind: 'application',
    above: 0,
    default: 'phosphate need',
    per: 'season',
    meaning: 'P2O5 that the garden needs',
  },
  basis,
} as const;
const gardenSources = [
  'Organic nitrogen in its first year: Cornell CSS412; fish sludge, Brod et al., Ambio 46 (2017)',
  'Garden needs: University of Maryland; Colorado State University, CMG 711',
];

const yesOrNo: ReaderArgument<boolean> = {
  meaning: 'TRUE if the part that is eaten touches the soil',
  accepts: 'TRUE or FALSE, yes or no',
  reader: (value) => {
    if (typeof value === 'boolean') return value;
    const typed = String(value).trim().toLowerCase();
    if (['true', 'yes', '1'].includes(typed)) return true;
    if (['false', 'no', '0'].includes(typed)) return false;
    throw new Unreadable(`"${String(value).slice(0, 40)}" is not allowed; give TRUE or FALSE, yes or no`);
  },
};

interface NeedGiven extends Omit<Need, 'phosphorus'> {
  readonly phosphorus: number | undefined;
}

/** The needs among the arguments, with the default phosphorus if none was given. */
function needOf(given: NeedGiven): Need {
  const { nitrogenNeed, nitrogen, available, phosphateNeed, basis } = given;
  const phosphorus = phosphorusOr(given.phosphorus, basis);
  return { nitrogenNeed, nitrogen, available, phosphorus, phosphateNeed, basis };
}

/** From solids to the garden: the area they feed, what they are worth, when to pick, the log. */
export const harvestGardenRows = [
  define({
    name: 'HARVEST.GARDEN',
    summary: 'Garden area that dry solids feed: by nitrogen, by phosphate, and the larger of the two.',
    arguments: { dry, nitrogenNeed, ...gardenArguments },
    result: {
      row: {
        areaByNitrogen: { kind: 'area' },
        areaByPhosphate: { kind: 'area' },
        area: { kind: 'area' },
        governs: { text: true },
      },
    },
    compute: (given) => harvestGarden(given.dry, needOf(given)),
    formula: 'area = dry × nitrogen × available / nitrogen need, or dry × P2O5 / phosphate need',
    notes: ['On the larger area neither need is exceeded. All of the phosphate counts.', ownTest, rawCare],
    sources: gardenSources,
    example: {
      formula: '=SILT.HARVEST.GARDEN("metric",10,9.765,2.83%,50%,2.54%,4.88)',
      gives: '14.5, 119.3, 119.3, phosphate',
    },
  }),
  define({
    name: 'HARVEST.DOSE',
    summary: 'Slurry for a garden area: the smaller of the doses by nitrogen and by phosphate.',
    arguments: {
      area: { kind: 'area', atLeast: 0, meaning: 'garden area' },
      nitrogenNeed,
      slurrySolids,
      ...gardenArguments,
    },
    result: { scalar: 'volume' },
    compute: (given) => harvestDose(given.area, given.slurrySolids, needOf(given)),
    formula: 'the inverse of HARVEST.GARDEN and HARVEST.SLURRY',
    notes: [ownTest, rawCare],
    sources: gardenSources,
    example: { formula: '=SILT.HARVEST.DOSE("metric",20,9.765,2%,2.83%,50%,2.54%,4.88)', gives: '83.8' },
  }),
  define({
    name: 'HARVEST.VALUE',
    summary: 'Worth of nitrogen, phosphate and potash at the prices that you pay for them.',
    arguments: {
      nitrogen: { kind: 'portion', atLeast: 0, meaning: 'nitrogen' },
      phosphate: { kind: 'portion', atLeast: 0, meaning: 'P2O5' },
      potash: { kind: 'portion', atLeast: 0, meaning: 'K2O' },
      priceN: { kind: 'price of mass', atLeast: 0, meaning: 'price of nitrogen' },
      priceP2O5: { kind: 'price of mass', atLeast: 0, meaning: 'price of P2O5' },
      priceK2O: { kind: 'price of mass', atLeast: 0, meaning: 'price of K2O' },
    },
    result: { scalar: 'money' },
    compute: (given) =>
      harvestValue(given.nitrogen, given.phosphate, given.potash, given.priceN, given.priceP2O5, given.priceK2O),
    formula: 'Σ mass × price',
    sources: ['Definition'],
    example: { formula: '=SILT.HARVEST.VALUE("metric",1000,500,100,2,3,1)', gives: '3.6' },
    unpublished: 'A sum of products of what the user gives.',
  }),
  define({
    name: 'HARVEST.WAIT',
    summary: 'Earliest harvest date under the raw-manure rule: 120 or 90 days.',
    units: false,
    arguments: {
      applied: { kind: 'date', meaning: 'day on which the solids were worked into the soil' },
      touchesSoil: yesOrNo,
    },
    result: { date: true },
    compute: ({ applied, touchesSoil }) => harvestWait(applied, touchesSoil),
    formula: 'applied + 120 days if the part eaten touches soil, else + 90 days',
    notes: [
      'This is not a safety test. The rule is for livestock manure under organic certification; ask the certifier whether it covers fish solids.',
      rawCare,
    ],
    sources: ['7 CFR 205.203(c)(1)'],
    example: { formula: '=SILT.HARVEST.WAIT("2026-05-01",TRUE)', gives: '46263' },
  }),
  define({
    name: 'HARVEST.LOG',
    summary: 'A log of slurry drawn off, by month and in total: dry solids, solids a day, N, P2O5, K2O.',
    arguments: {
      log: {
        table: {
          date: { kind: 'date' },
          volume: { kind: 'volume', atLeast: 0, heading: 'slurry volume' },
          solidsShare: { kind: 'share' },
        },
        meaning: 'rows of date, slurry volume, solids share',
      },
      nitrogen,
      phosphorus,
      potassium,
      basis,
    },
    result: {
      rows: {
        month: { text: true },
        dry: { kind: 'mass' },
        aDay: { kind: 'daily', heading: 'a day' },
        ...nutrientColumns,
      },
    },
    compute: (given) =>
      harvestLog(
        given.log,
        given.nitrogen,
        phosphorusOr(given.phosphorus, given.basis),
        potassiumOr(given.potassium, given.basis),
        given.basis,
      ),
    formula: 'dry = volume × 1 kg/L × solids share; a day = dry / days from first to last, both counted',
    notes: [
      'How to measure: draw off until the water runs clear and read the volume on the pail. Stir, weigh a cup of it and dry it until its mass no longer falls. Write down date, volume and dry mass over wet mass. One cup a month is enough.',
      'Entries can be in any order, and several on one day.',
      rawCare,
    ],
    sources: [balance],
    example: {
      formula: '=SILT.HARVEST.LOG("metric",{"2026-05-01",20,0.02;"2026-05-02",25,0.02;"2026-06-01",20,0.02})',
      gives: 'one row per month',
    },
  }),
];
