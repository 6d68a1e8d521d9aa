import { airSupply, airTransfer } from '../../formulas/air/air';
import { define } from '../define';
import { elevation, salinity, temperature, usualTemperature } from '../water-arguments';

const backup = 'Have backup air that starts by itself, and test it: WATER.OXYGENTIME says how long the fish have.';

export const airRows = [
  define({
    name: 'AIR.TRANSFER',
    summary: 'Field oxygen transfer of an aerator from its rated one, an hour.',
    arguments: {
      rated: { kind: 'transfer', atLeast: 0, meaning: 'rated in clean water at 20 °C with no oxygen in it' },
      temperature,
      target: { kind: 'concentration', atLeast: 0, meaning: 'oxygen kept in the water' },
      elevation,
      alpha: {
        kind: 'number',
        above: 0,
        atMost: 2,
        default: 'aerator alpha',
        meaning: 'transfer here over clean water',
      },
      beta: {
        kind: 'number',
        above: 0,
        atMost: 1,
        default: 'aerator beta',
        meaning: 'saturation here over clean water',
      },
      salinity,
    },
    result: { scalar: 'transfer' },
    compute: (given) => airTransfer(given),
    formula: 'rated × alpha × 1.024^(T - 20) × (beta × saturation - target) / 9.09',
    notes: [
      'Times 24 to compare with LOAD.OXYGEN, which is a day.',
      'The 1.024 a degree was found from 10 to 30 °C; outside that it is carried further.',
      backup,
    ],
    sources: [
      'ASCE/EWRI 2-06, Measurement of Oxygen Transfer in Clean Water',
      'Metcalf and Eddy, Wastewater Engineering',
    ],
    example: { formula: '=SILT.AIR.TRANSFER("metric",1,20,5)', gives: '0.387' },
  }),
  define({
    name: 'AIR.SUPPLY',
    summary: 'Air flow that carries an oxygen demand.',
    arguments: {
      demand: { kind: 'daily', atLeast: 0, meaning: 'oxygen wanted a day' },
      efficiency: { kind: 'share', above: 0, meaning: 'share of the air’s oxygen that dissolves' },
      temperature: usualTemperature,
      elevation,
    },
    result: { scalar: 'air flow' },
    compute: (given) => airSupply(given.demand, given.efficiency, given.temperature, given.elevation),
    formula: 'air flow = demand / (efficiency × oxygen in a volume of dry air)',
    notes: ['Fine bubbles a meter deep dissolve about 3 to 6 % of it; common practice, no source.', backup],
    sources: ['Ideal gas; ISO 2533:1975 for pressure and what air is made of'],
    example: { formula: '=SILT.AIR.SUPPLY("metric",5,5%)', gives: '249' },
  }),
];
