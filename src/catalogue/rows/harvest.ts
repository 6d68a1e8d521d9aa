import { harvestGrade, harvestNutrients, nutrientBases } from '../../formulas/harvest/nutrients';
import { harvestSlurry, harvestSolids } from '../../formulas/harvest/slurry';
import { define } from '../define';
import { balance, dry, naylor, nutrientColumns, ownTest, oxides, rawCare, slurrySolids } from '../harvest-arguments';
import { nutrientArguments, phosphorusOr, potassiumOr } from '../nutrient-arguments';

const { nitrogen, phosphorus, potassium, basis } = nutrientArguments;

export const harvestRows = [
  define({
    name: 'HARVEST.SOLIDS',
    summary: 'Dry solids caught a day.',
    arguments: {
      feed: { kind: 'daily', atLeast: 0, meaning: 'feed a day' },
      capture: { kind: 'share', meaning: 'share of the solids that is caught' },
      solidsShare: { kind: 'share', above: 0, default: 'solids share', meaning: 'dry solids per feed' },
    },
    result: { scalar: 'daily' },
    compute: ({ feed, capture, solidsShare }) => harvestSolids(feed, capture, solidsShare),
    formula: 'solids = feed × solids share × capture',
    sources: [balance],
    example: { formula: '=SILT.HARVEST.SOLIDS("metric",4,50%)', gives: '0.5' },
  }),
  define({
    name: 'HARVEST.SLURRY',
    summary: 'Slurry to draw off for an amount of dry solids.',
    arguments: { dry, slurrySolids },
    result: { scalar: 'volume' },
    compute: (given) => harvestSlurry(given.dry, given.slurrySolids),
    formula: 'volume = dry / (share of solids × 1 kg/L)',
    notes: ['Correct within 1 % up to 5 % solids.', rawCare],
    sources: ['Definition of the share of solids'],
    example: { formula: '=SILT.HARVEST.SLURRY("metric",0.5,2%)', gives: '25' },
  }),
  define({
    name: 'HARVEST.NUTRIENTS',
    summary: 'Nitrogen, phosphate and potash in dry solids.',
    arguments: { dry, nitrogen, phosphorus, potassium, basis },
    result: { row: nutrientColumns },
    compute: (given) =>
      harvestNutrients(
        given.dry,
        given.nitrogen,
        phosphorusOr(given.phosphorus, given.basis),
        potassiumOr(given.potassium, given.basis),
        given.basis,
      ),
    formula: 'N = dry × nitrogen; P2O5 = dry × phosphorus × 2.2913; K2O = dry × potassium × 1.2046',
    notes: [ownTest, 'Potassium is low because most of it stays in the water.'],
    sources: [naylor, oxides],
    example: { formula: '=SILT.HARVEST.NUTRIENTS("metric",1,2.83%,2.54%,0.1%)', gives: '28.3, 58.2, 1.2' },
  }),
  define({
    name: 'HARVEST.GRADE',
    summary: 'The grade N-P2O5-K2O in whole per cent, rounded down.',
    units: false,
    arguments: {
      nitrogen: { kind: 'share', meaning: 'nitrogen, of dry solids' },
      phosphorus: { kind: 'share', meaning: 'phosphorus, of dry solids' },
      potassium: { kind: 'share', meaning: 'potassium, of dry solids' },
      basis: { choice: nutrientBases, default: 'element', meaning: 'shares of P and K, or of P2O5 and K2O' },
      moisture: { kind: 'share', default: 0, meaning: 'share of water in the solids as they are' },
    },
    result: { text: true },
    compute: (given) => harvestGrade(given.nitrogen, given.phosphorus, given.potassium, given.basis, given.moisture),
    formula: 'each per cent = 100 × share × (1 - moisture), rounded down',
    notes: ['A working figure, not a guaranteed label: the authority where you sell decides on labels.', ownTest],
    sources: [oxides],
    example: { formula: '=SILT.HARVEST.GRADE(2.83%,2.54%,0.1%)', gives: '2-5-0' },
  }),
];
