import { harvestGrade, harvestNutrients, nutrientBases } from '../../formulas/nutrients';
import { define } from '../define';
import { nutrientArguments, phosphorusOr, potassiumOr } from '../nutrient-arguments';

const naylor = 'Naylor, Moccia and Durant, North American Journal of Aquaculture 61:21 (1999)';
const oxides = 'NMSU Guide H-120: P2O5 is 2.29 times P, K2O 1.2 times K; atomic masses, IUPAC';
const ownTest = 'What fish solids hold differs several times from farm to farm: have your own tested.';

export const harvestRows = [
  define({
    name: 'HARVEST.NUTRIENTS',
    summary: 'Nitrogen, phosphate and potash in dry solids.',
    arguments: {
      dry: { kind: 'mass', atLeast: 0, meaning: 'dry solids, over whatever time you mean' },
      ...nutrientArguments,
    },
    result: {
      row: {
        nitrogen: { kind: 'portion', heading: 'N' },
        phosphate: { kind: 'portion', heading: 'P2O5' },
        potash: { kind: 'portion', heading: 'K2O' },
      },
    },
    compute: ({ dry, nitrogen, phosphorus, potassium, basis }) =>
      harvestNutrients(dry, nitrogen, phosphorusOr(phosphorus, basis), potassiumOr(potassium, basis), basis),
    formula: 'N = dry × nitrogen; P2O5 = dry × phosphorus × 2.2913; K2O = dry × potassium × 1.2046',
    notes: [ownTest, 'Potassium is low because it stays in the water.'],
    sources: [naylor, oxides],
    example: { formula: '=SILT.HARVEST.NUTRIENTS("metric",1,2.83%,2.54%,0.1%)', gives: '28.3, 58.2, 1.2' },
  }),
  define({
    name: 'HARVEST.GRADE',
    summary: 'The grade N-P2O5-K2O in whole per cent, cut and never rounded up.',
    units: false,
    arguments: {
      nitrogen: { kind: 'share', meaning: 'nitrogen, of dry solids' },
      phosphorus: { kind: 'share', meaning: 'phosphorus, of dry solids' },
      potassium: { kind: 'share', meaning: 'potassium, of dry solids' },
      basis: { choice: nutrientBases, default: 'element', meaning: 'whether shares are of P and K or of P2O5 and K2O' },
      moisture: { kind: 'share', default: 0, meaning: 'water in the solids as they are' },
    },
    result: { text: true },
    compute: ({ nitrogen, phosphorus, potassium, basis, moisture }) =>
      harvestGrade(nitrogen, phosphorus, potassium, basis, moisture),
    formula: 'each per cent = 100 × share × (1 - moisture), cut to a whole number',
    notes: ['A working figure, not a label guarantee: labels are for the authority where you sell.', ownTest],
    sources: [oxides],
    example: { formula: '=SILT.HARVEST.GRADE(2.83%,2.54%,0.1%)', gives: '2-5-0' },
  }),
];
