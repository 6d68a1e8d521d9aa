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
    call: ['AIR.TRANSFER', 'metric', '1 kg/h', '86 °F', '4 mg/L', 0, 0.91, 1],
    expected: 0.44,
    tolerance: 0.03,
    source: 'pond-report-oxygen-transfer',
    place: '44 % of the rating at 30 °C and 4 mg/L; alpha 0.91, since it has 91 % at 20 °C in water without oxygen',
    known: 'read',
  },
  {
    call: ['AIR.TRANSFER', 'US', '1 kg/h', 50, '2 mg/L', 0, 0.91, 1],
    expected: 0.75 * 2.2046226,
    tolerance: 0.03,
    source: 'pond-report-oxygen-transfer',
    place: '75 % of the rating at 10 °C and 2 mg/L; alpha 0.91, since it has 91 % at 20 °C in water without oxygen',
    known: 'read',
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
    source: 'gateway-coalition-ce442',
    place: 'air of 0.075 lb/ft3 with 23.2 % oxygen by weight: x 1440 is 25.06 lb a day in 1 cfm',
    known: 'worked',
  },
  {
    call: ['AIR.SUPPLY', 'metric, air flow m3/h', '2.8191 kg/h', 0.35, '10 °C'],
    expected: 0.4647 * 60,
    tolerance: 3e-3,
    source: 'san-joaquin-aeration-report',
    place: 'page 20: 2.8191 kg/h at 35 % and 10 °C, where air has 0.2889 kg of oxygen a m3: 0.4647 m3 a minute',
    known: 'read',
  },
  {
    call: ['AIR.SUPPLY', 'US, air flow m3/h', '0.2990 kg/h', 1, '0 °C'],
    expected: 1,
    tolerance: 1e-3,
    source: 'engineering-toolbox-composition-air',
    place: '23.14 % of oxygen by mass; liquisearch.com has 1.2922 kg/m3 of air at 0 °C',
    known: 'worked',
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
