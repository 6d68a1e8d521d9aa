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
  meaning: 'nitrogen that the garden wants',
} as const;
const gardenArguments = {
  nitrogen,
  available: {
    kind: 'share',
    above: 0,
    default: 'available nitrogen',
    meaning: 'share of nitrogen that works this season',
  },
  phosphorus,
  phosphateNeed: {
    kind: 'application',
    above: 0,
    default: 'phosphate need',
    per: 'season',
    meaning: 'P2O5 that the garden wants',
  },
  basis,
} as const;
const gardenSources = [
  'Organic nitrogen in its first year: Cornell CSS412; fish sludge, Brod et al., Ambio 46 (2017)',
  'Garden needs: University of Maryland; Colorado State University, CMG 711',
];

const yesOrNo: ReaderArgument<boolean> = {
  meaning: 'TRUE where the part that is eaten touches the soil',
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

/** The needs among the arguments, with the usual phosphorus where it was left out. */
function needOf(given: NeedGiven): Need {
  const { nitrogenNeed, nitrogen, available, phosphateNeed, basis } = given;
  const phosphorus = phosphorusOr(given.phosphorus, basis);
  return { nitrogenNeed, nitrogen, available, phosphorus, phosphateNeed, basis };
}

/** From the solids to the garden: how much of it they feed, what they are worth, when it may be picked, the log. */
export const harvestGardenRows = [
  define({
    name: 'HARVEST.GARDEN',
    summary: 'Garden area that dry solids feed: by nitrogen, by phosphate, and the larger.',
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
    notes: ['On the larger area neither need is exceeded. Phosphate counts whole.', ownTest, rawCare],
    sources: gardenSources,
    example: {
      formula: '=SILT.HARVEST.GARDEN("metric",10,9.765,2.83%,50%,2.54%,4.88)',
      gives: '14.5, 119.3, 119.3, phosphate',
    },
  }),
  define({
    name: 'HARVEST.DOSE',
    summary: 'Slurry for that much garden, the smaller of the doses by nitrogen and by phosphate.',
    arguments: {
      area: { kind: 'area', atLeast: 0, meaning: 'garden' },
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
    summary: 'Money for nitrogen, phosphate and potash at the prices you would pay for them.',
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
      applied: { kind: 'date', meaning: 'day on which the solids were worked in' },
      touchesSoil: yesOrNo,
    },
    result: { date: true },
    compute: ({ applied, touchesSoil }) => harvestWait(applied, touchesSoil),
    formula: 'applied + 120 days where the part eaten touches soil, else + 90',
    notes: [
      'Not a safety test. The rule is for livestock manure under organic certification; whether it covers fish solids is for the certifier.',
      rawCare,
    ],
    sources: ['7 CFR 205.203(c)(1)'],
    example: { formula: '=SILT.HARVEST.WAIT("2026-05-01",TRUE)', gives: '46263' },
  }),
  define({
    name: 'HARVEST.LOG',
    summary: 'A log of drawn-off slurry by month, with a total: dry solids, a day, N, P2O5, K2O.',
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
    formula: 'dry = volume × 1 kg/L × solids share; a day over first to last day, both counted',
    notes: [
      'How to measure: draw off until the water runs clear, read liters off the pail, stir, dry a weighed cup of it until it loses no more, and write date, liters and dry over wet. A cup a month will do.',
      'Entries may be in any order, several a day.',
      rawCare,
    ],
    sources: [balance],
    example: {
      formula: '=SILT.HARVEST.LOG("metric",{"2026-05-01",20,0.02;"2026-05-02",25,0.02;"2026-06-01",20,0.02})',
      gives: 'a row a month',
    },
  }),
];
