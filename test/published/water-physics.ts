import type { PublishedRow } from './published-row';

type Known = PublishedRow['known'];

const density = (
  call: PublishedRow['call'],
  expected: number,
  tolerance: number,
  source: PublishedRow['source'],
  place: string,
  known: Known,
): PublishedRow => ({
  call,
  expected,
  tolerance,
  source,
  place,
  known,
});

const unesco = 'unesco-technical-papers-marine';
const thoughtco = 'thoughtco-density-water';
const gsw = 'teos-10-gsw-3';
const perry = 'perrys-chemical-engineers-handbook';
const mwh = 'mwh-water-treatment';

/** Density and viscosity of water, fresh and salt. */
export const waterPhysicsRows: readonly PublishedRow[] = [
  density(['WATER.DENSITY', 'metric', 5], 999.96675, 1e-6, unesco, 'check value S 0, t 5', 'read'),
  density(['WATER.DENSITY', 'metric', '41 °F', '35 ppt'], 1027.67547, 2e-6, unesco, 'check value S 35, t 5', 'read'),
  density(['WATER.DENSITY', 'metric', '77 °F', 35], 1023.34306, 3e-6, unesco, 'check value S 35, t 25', 'read'),
  density(['WATER.DENSITY', 'metric', 20], 998.2067, 1e-7, 'tanaka-metrologia-38-301', 'equation 1', 'computed'),
  density(['WATER.DENSITY', 'metric', '50 °F'], 999.7026, 1e-6, thoughtco, 'table, 10 °C', 'read'),
  {
    ...density(['WATER.DENSITY', 'metric', '303.15 K'], 995.6502, 2e-6, thoughtco, 'table, 30 °C', 'read'),
    disagrees: 'the table is 0.0014 kg/m3 over ours, which is 995.6488 on the temperature scale of 1990',
  },
  density(['WATER.DENSITY', 'US', 60], 62.37, 1e-4, mwh, 'table C-2, 60 °F, lb/ft3', 'read'),
  density(['WATER.DENSITY', 'US', 100], 61.998, 1e-4, 'dizz-water-weight', 'table, 37.8 °C, lb/ft3', 'read'),
  density(['WATER.DENSITY', 'US, density kg/m3', 32, 35], 1028.1075, 3e-6, gsw, 'rho at S 35, 0 °C', 'computed'),
  density(['WATER.DENSITY', 'US, density kg/m3', 68, 35], 1024.7658, 5e-6, gsw, 'rho at S 35, 20 °C', 'computed'),
  density(['WATER.DENSITY', 'US, density kg/m3', 86, 35], 1021.7263, 5e-6, gsw, 'rho at S 35, 30 °C', 'computed'),
  {
    call: ['WATER.DENSITY', 'metric', 20, 35],
    expected: 1024.641,
    tolerance: 2e-4,
    source: gsw,
    place: 'rho at absolute salinity 35 g/kg, 20 °C',
    known: 'computed',
    disagrees: 'ours reads 35 as practical salinity, which is 35.165 g/kg absolute: 0.12 kg/m3 more',
  },
  {
    call: ['WATER.DENSITY', 'metric', 20],
    expected: 997.94,
    tolerance: 4e-4,
    source: 'kells-equation-with-misprint',
    place: '20 °C',
    known: 'computed',
    disagrees: 'a misprinted constant in circulation gives 997.94; ours is 998.2067, as Kell’s right one does',
  },
  density(
    ['WATER.VISCOSITY', 'metric', '298.15 K'],
    0.889996774,
    1e-9,
    'iapws-sr6-08-2011',
    'table 8, 298.15 K',
    'read',
  ),
  density(
    ['WATER.VISCOSITY', 'metric', '77 °F'],
    0.8897351,
    4e-4,
    'iapws-r12-08',
    'table 4, 298.15 K and 998 kg/m3',
    'read',
  ),
  density(['WATER.VISCOSITY', 'metric', '280 K'], 1.4337, 1e-3, perry, 'table 2-135, 280 K', 'read'),
  density(['WATER.VISCOSITY', 'metric', '290 K'], 1.084, 1.5e-3, perry, 'table 2-135, 290 K', 'read'),
  density(['WATER.VISCOSITY', 'metric', '300 K'], 0.85384, 1e-3, perry, 'table 2-135, 300 K', 'read'),
  density(['WATER.VISCOSITY', 'US', '310 K'], 0.69354, 1e-3, perry, 'table 2-135, 310 K', 'read'),
  density(['WATER.VISCOSITY', 'US', 68], 1.002, 5e-4, mwh, 'table C-1, 20 °C', 'read'),
  density(
    ['WATER.VISCOSITY', 'US', 50, 35],
    1.39677,
    5e-4,
    'sharqawy-desalination-water-treatment',
    '35 g/kg, 10 °C',
    'computed',
  ),
  density(
    ['WATER.VISCOSITY', 'US', 68, 35],
    1.07663,
    5e-4,
    'sharqawy-desalination-water-treatment',
    '35 g/kg, 20 °C',
    'computed',
  ),
  density(
    ['WATER.VISCOSITY', 'US', 77, 35],
    0.95883,
    5e-4,
    'sharqawy-desalination-water-treatment',
    '35 g/kg, 25 °C',
    'computed',
  ),
];
