import { stockSpecies } from '../../formulas/stock/stock-species';
import { fishKinds } from '../../formulas/water/water-species';
import { define } from '../define';

export const stockSpeciesRow = define({
  name: 'STOCK.SPECIES',
  summary: 'What a species survives, grows best in and is kept within, with the source of each figure.',
  arguments: {
    species: { choice: fishKinds, optional: true, meaning: 'species or group; all of them where left out' },
  },
  result: {
    rows: {
      species: { text: true },
      survivesFrom: { kind: 'temperature', blank: true },
      survivesTo: { kind: 'temperature', blank: true },
      growsBestFrom: { kind: 'temperature' },
      growsBestTo: { kind: 'temperature' },
      oxygenFloor: { kind: 'concentration' },
      ammonia: { kind: 'concentration', heading: 'ammonia limit as N' },
      unionized: { kind: 'concentration', heading: 'un-ionized ammonia limit as N' },
      nitrite: { kind: 'concentration', heading: 'nitrite limit as N' },
      carbonDioxide: { kind: 'concentration', heading: 'carbon dioxide limit' },
      phFrom: { kind: 'number', heading: 'pH from' },
      phTo: { kind: 'number', heading: 'pH to' },
      source: { text: true },
      known: { text: true, heading: 'how known' },
    },
  },
  compute: ({ species }) => stockSpecies(species),
  notes: [
    'Surviving is not growing: tilapia live at 15 °C, and do not feed below 17 °C. Water near either end of what a species survives kills fish that are not used to it.',
    'For a group, the temperatures are those to keep it within; what a group survives is not published.',
    'Of the oxygen floor: fish are in danger under it. WATER.CHECK asks for more.',
    'Defer to local advice for your fish.',
  ],
  sources: ['FAO Fisheries Technical Paper 589 (2014), table 3.1, section 7.4 and table 7.1', 'Each row names its own'],
  example: { formula: '=SILT.STOCK.SPECIES("metric",,TRUE)', gives: 'a row a species' },
});
