import { stockSpecies } from '../../formulas/stock/stock-species';
import { fishKinds } from '../../formulas/water/water-species';
import { define } from '../define';

export const stockSpeciesRow = define({
  name: 'STOCK.SPECIES',
  summary: 'Limits of a species: where it survives, where it grows best and within what to keep it, with sources.',
  arguments: {
    species: { choice: fishKinds, optional: true, meaning: 'species or group; all of them if left out' },
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
    'Fish can survive without growing: tilapia live at 15 °C but do not feed below 17 °C. Water near either end of the survival range kills fish that are not used to it.',
    'For a group, the temperatures are those to keep it within; no survival range of a group is published.',
    'Below the oxygen floor fish are in danger. WATER.CHECK wants more oxygen than that.',
    'Local advice for your fish comes first.',
  ],
  sources: ['FAO Fisheries Technical Paper 589 (2014), table 3.1, section 7.4 and table 7.1', 'Each row names its own'],
  example: { formula: '=SILT.STOCK.SPECIES("metric",,TRUE)', gives: 'one row per species' },
});
