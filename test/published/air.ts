import { ownFiguresOracle } from '../oracles/own-figures';
import type { PublishedRow } from './published-row';

const clean = 'asce-ewri-2-06';

/** Aerators and air. */
export const airRows: readonly PublishedRow[] = [
  {
    call: ['AIR.TRANSFER', 'US', '1 kg/h', 68, 0, 0, 1, 1],
    expected: 2.2046226,
    tolerance: 1e-7,
    source: clean,
    place: 'the rating itself, at 20 °C in clean water with no oxygen',
    known: 'worked',
  },
  {
    call: ['AIR.TRANSFER', 'metric', '1 kg/h', '86 °F', '4 mg/L', 0, 0.9, 1],
    expected: 0.9 * ((7.54 - 4) / 9.09) * 1.024 ** 10,
    tolerance: 0.01,
    source: 'boyd-water-quality-otr',
    place: 'aeration chapter, formula and saturation table',
    known: 'memory',
  },
  {
    call: ['AIR.TRANSFER', 'US', '2.2046226 lb/h', '50 °F', 6, '1000 ft', 0.85, 0.95],
    expected: 2.2046226 * 0.85 * 1.024 ** -10 * ((0.95 * 10.877 - 6) / 9.092),
    tolerance: 2e-3,
    source: 'metcalf-eddy-wastewater-engineering',
    place: 'Cs at 10 °C and 0.96439 atm 10.877 mg/L',
    known: 'worked',
  },
  {
    call: ['AIR.SUPPLY', 'US', '25.06 lb/d', '100 %'],
    expected: 1,
    tolerance: 3e-3,
    source: 'aeration-handbooks-standard-air',
    place: '0.0174 x 1440 lb a day in 1 cfm',
    known: 'memory',
  },
  {
    call: ['AIR.SUPPLY', 'metric, air flow m3/h', '0.28 kg/h', 0.1],
    expected: 10,
    tolerance: 6e-3,
    source: 'blower-practice-europe-cubic',
    place: 'design rule',
    known: 'memory',
  },
  {
    call: ['AIR.SUPPLY', 'US, air flow m3/h', '0.2990 kg/h', 1, '0 °C'],
    expected: 1,
    tolerance: 1e-3,
    source: 'dry-air-1-2929',
    place: 'CRC Handbook of Chemistry and Physics, density of dry air',
    known: 'memory',
  },
  ...ownFiguresOracle.air.map(
    ({ name, rows, rate }): PublishedRow => ({
      call: ['AIR.TEST', 'US', [...rows], 1000, 68],
      expected: rate,
      tolerance: 1e-6,
      source: 'scipy-regression',
      place: `test/oracles/own-figures.py, ${name}`,
      known: 'computed',
    }),
  ),
];
