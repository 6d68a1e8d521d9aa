import { waterDensity } from '../../formulas/water-density';
import { waterViscosity } from '../../formulas/water-viscosity';
import { define } from '../define';
import { salinity, temperature } from '../water-arguments';

export const waterRows = [
  define({
    name: 'WATER.DENSITY',
    summary: 'Density of fresh or salt water at one atmosphere.',
    arguments: { temperature, salinity },
    result: { scalar: 'density' },
    compute: (given) => waterDensity(given.temperature, given.salinity),
    formula: 'Tanaka’s fresh-water density, plus the salt terms of the one-atmosphere equation of state',
    notes: ['From 0 to 40 °C and 0 to 40 g/kg.'],
    sources: ['Tanaka et al., Metrologia 38:301 (2001)', 'UNESCO Technical Paper in Marine Science 44 (1983)'],
    example: { formula: '=SILT.WATER.DENSITY("metric",20)', gives: '998.207' },
  }),
  define({
    name: 'WATER.VISCOSITY',
    summary: 'Dynamic viscosity of fresh or salt water.',
    arguments: { temperature, salinity },
    result: { scalar: 'viscosity' },
    compute: (given) => waterViscosity(given.temperature, given.salinity),
    formula: 'IAPWS liquid-water correlation at 0.1 MPa, times Sharqawy’s factor for salt',
    notes: ['From 0 to 40 °C and 0 to 40 g/kg.'],
    sources: [
      'IAPWS SR6-08(2011), eq. 7, within 0.02 % of IAPWS R12-08',
      'Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16:354 (2010)',
    ],
    example: { formula: '=SILT.WATER.VISCOSITY("metric",20)', gives: '1.0016' },
  }),
];
