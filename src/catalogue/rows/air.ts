import { airSupply, airTransfer } from '../../formulas/air/air';
import { define } from '../define';
import { elevation, salinity, temperature, usualTemperature } from '../water-arguments';

const backup = 'Have backup air that starts by itself, and test it: WATER.OXYGENTIME says how long the fish have.';

export const airRows = [
  define({
    name: 'AIR.TRANSFER',
    summary: 'Oxygen transfer of an aerator in your water, per hour, from its rated transfer.',
    arguments: {
      rated: { kind: 'transfer', atLeast: 0, meaning: 'transfer rated in clean water at 20 °C without oxygen' },
      temperature,
      target: { kind: 'concentration', atLeast: 0, meaning: 'oxygen to keep in the water' },
      elevation,
      alpha: {
        kind: 'number',
        above: 0,
        atMost: 2,
        default: 'aerator alpha',
        meaning: 'transfer in your water over clean water',
      },
      beta: {
        kind: 'number',
        above: 0,
        atMost: 1,
        default: 'aerator beta',
        meaning: 'saturation in your water over clean water',
      },
      salinity,
    },
    result: { scalar: 'transfer' },
    compute: (given) => airTransfer(given),
    formula: 'rated × alpha × 1.024^(T - 20) × (beta × saturation - target) / 9.09',
    notes: [
      'Multiply by 24 to compare with LOAD.OXYGEN, which is per day.',
      'The factor of 1.024 per degree was measured from 10 to 30 °C; outside that range it is an extrapolation.',
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
    summary: 'Air flow that supplies an oxygen demand.',
    arguments: {
      demand: { kind: 'daily', atLeast: 0, meaning: 'oxygen needed a day' },
      efficiency: { kind: 'share', above: 0, meaning: 'share of the air’s oxygen that dissolves' },
      temperature: usualTemperature,
      elevation,
    },
    result: { scalar: 'air flow' },
    compute: (given) => airSupply(given.demand, given.efficiency, given.temperature, given.elevation),
    formula: 'air flow = demand / (efficiency × oxygen per volume of dry air)',
    notes: [
      'Fine bubbles from a meter deep dissolve about 3 to 6 % of the oxygen in them; common practice, no source.',
      backup,
    ],
    sources: ['Ideal gas; ISO 2533:1975 for pressure and what air is made of'],
    example: { formula: '=SILT.AIR.SUPPLY("metric",5,5%)', gives: '249' },
  }),
];
