import { screenDays, screenHolding, screenPads } from '../../formulas/filter/screen';
import { define } from '../define';

const balance = 'Mass balance';
const solids = { kind: 'daily', above: 0, meaning: 'dry solids that the pads catch a day' } as const;
const holding = { kind: 'holding', above: 0, meaning: 'dry solids that a unit of pad holds' } as const;

export const screenRows = [
  define({
    name: 'SCREEN.DAYS',
    summary: 'Days between pad changes.',
    arguments: { solids, area: { kind: 'area', atLeast: 0, meaning: 'area of all pads' }, holding },
    result: { scalar: 'days' },
    compute: ({ solids: caught, area, holding: held }) => screenDays(caught, area, held),
    formula: 'days = area × holding / solids',
    sources: [balance],
    example: { formula: '=SILT.SCREEN.DAYS("metric","200 g/d",2,250)', gives: '2.5' },
  }),
  define({
    name: 'SCREEN.PADS',
    summary: 'Whole number of pads that last a number of days.',
    arguments: {
      solids: { ...solids, atLeast: 0 },
      padArea: { kind: 'area', above: 0, meaning: 'area of one pad' },
      holding,
      days: { kind: 'days', above: 0, meaning: 'days between changes' },
    },
    result: { scalar: 'count' },
    compute: ({ solids: caught, padArea, holding: held, days }) => screenPads(caught, padArea, held, days),
    formula: 'pads = solids × days / (pad area × holding), rounded up',
    sources: [balance],
    example: { formula: '=SILT.SCREEN.PADS("metric","200 g/d",0.25,250,2)', gives: '7' },
  }),
  define({
    name: 'SCREEN.HOLDING',
    summary: 'Solids that your own pad holds, from its dry mass clean and loaded.',
    arguments: {
      clean: { kind: 'portion', atLeast: 0, meaning: 'dry mass of the clean pad' },
      loaded: { kind: 'portion', above: 0, meaning: 'dry mass of the loaded pad' },
      area: { kind: 'area', above: 0, meaning: 'area of the pad' },
    },
    result: { scalar: 'holding' },
    compute: ({ clean, loaded, area }) => screenHolding(clean, loaded, area),
    formula: 'holding = (loaded - clean) / area',
    notes: [
      'How to measure: dry a clean pad and weigh it. Run it until water backs up. Lift it out flat, let it drip, dry it in a warm airy place until its mass no longer falls, and weigh it on the same scale.',
      'Wear gloves and a dust mask: dried solids are dusty.',
    ],
    sources: ['Definition of holding'],
    example: { formula: '=SILT.SCREEN.HOLDING("metric",120,245,0.5)', gives: '250' },
  }),
];
