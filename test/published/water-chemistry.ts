import type { PublishedRow } from './published-row';

const apha = 'apha-standard-methods-4500';

/** Saturation in mg/L; the table prints three decimals. */
function oxygen(expected: number, place: string, ...args: readonly unknown[]): PublishedRow {
  return { call: ['WATER.OXYGEN', ...args], expected, absolute: 1.5e-3, source: apha, place, known: 'computed' };
}

/** Un-ionized share of a reading, per cent, as a table of freshwater or sea water prints it. */
function share(
  source: PublishedRow['source'],
  place: string,
  tolerance: number,
  known: PublishedRow['known'],
  celsius: number,
  ph: number,
  percent: number,
  salinity = 0,
): PublishedRow {
  return {
    call: ['WATER.AMMONIA', 'US', '100 mg/L', ph, `${celsius} °C`, salinity],
    expected: percent,
    tolerance,
    source,
    place,
    known,
  };
}

const emerson = 'emerson-fisheries-research-board';
const bower = 'bower-bidwell-fisheries-research';
const trussell = 'trussell-fisheries-research-board';
const tucker = 'tucker-1984-factors-carbon';

/** Carbon dioxide of 100 mg/L of alkalinity: a hundred times Tucker's factor. */
function dioxide(celsius: number, ph: number, factor: number, tolerance = 0.02): PublishedRow {
  return {
    call: ['WATER.CARBONDIOXIDE', 'US', '100 mg/L as CaCO3', ph, `${celsius} °C`],
    expected: 100 * factor,
    tolerance,
    source: tucker,
    place: `pH ${ph}, ${celsius} °C: ${factor}`,
    known: 'read',
  };
}

/** Carbon dioxide of 4 degrees of carbonate hardness at pH 7, by a table of pKa printed to a hundredth. */
function byPka(celsius: number, pka: number): PublishedRow {
  return {
    call: ['WATER.CARBONDIOXIDE', 'metric', '4 dKH', 7, celsius],
    expected: 15.7 * 4 * 10 ** (pka - 7),
    // Half a hundredth of pKa is 1.2 %, and tables of it differ by as much.
    tolerance: 0.02,
    source: 'aquatic-plants-list-pka',
    place: `15.7 x KH x 10^(pKa - pH); pKa ${pka} at ${celsius} °C`,
    known: 'read',
  };
}

const phreeqc = 'phreeqc-3-phreeqc-dat';

/** pH at once (column 1) or aired (2) of a cubic meter after a dose, as a general-purpose geochemistry program has it. */
function after(
  ph: number,
  celsius: number,
  rise: number,
  alkali: string,
  column: 1 | 2,
  expected: number,
  alkalinity = ph === 6.8 ? 50 : 100,
): PublishedRow {
  const strength: Readonly<Record<string, number>> = {
    'sodium carbonate': 52.994,
    'sodium hydroxide': 39.997,
    'sodium bicarbonate': 84.007,
    'calcium hydroxide': 37.046,
  };
  const grams = (rise * (strength[alkali] ?? 0)) / 50.043;
  return {
    call: ['WATER.AFTER', 'US', '1 m3', alkalinity, ph, `${celsius} °C`, alkali, `${grams} g`],
    cell: [0, column],
    expected,
    absolute: column === 2 ? 0.02 : 0.1,
    source: phreeqc,
    place: `rise of ${rise} mg/L at pH ${ph}, ${celsius} °C, test/oracles/alkali-dose.py`,
    known: 'computed',
  };
}

/** Weiss’s equation for oxygen, in mL/L of gas at 0 °C, is a fit of its own to other measurements. */
function weiss(celsius: number, salinity: number): PublishedRow {
  const t = (celsius + 273.15) / 100;
  const fresh = -173.4292 + 249.6339 / t + 143.3483 * Math.log(t) - 21.8492 * t;
  const salt = salinity * (-0.033096 + 0.014259 * t - 0.0017 * t * t);
  return {
    call: ['WATER.OXYGEN', 'US', `${celsius} °C`, 0, salinity],
    expected: 1.42903 * Math.exp(fresh + salt),
    tolerance: 5e-3,
    source: 'weiss-deep-sea-research',
    place: `${celsius} °C, salinity ${salinity}`,
    known: 'read',
  };
}

/** Oxygen, ammonia, carbon dioxide and alkali. */
export const waterChemistryRows: readonly PublishedRow[] = [
  ...[0, 10, 20, 30].flatMap((celsius) => [weiss(celsius, 0), weiss(celsius, 35)]),
  oxygen(14.621, 'fresh, 0 °C', 'US', 32),
  oxygen(11.288, 'fresh, 10 °C', 'US', 50),
  oxygen(9.092, 'fresh, 20 °C', 'US', '293.15 K'),
  oxygen(7.559, 'fresh, 30 °C', 'US', 86),
  oxygen(11.446, 'salinity 35, 0 °C', 'US', 32, 0, '35 psu'),
  oxygen(9.024, 'salinity 35, 10 °C', 'US', 50, 0, 35),
  oxygen(7.396, 'salinity 35, 20 °C', 'US', 68, 0, 35),
  oxygen(6.237, 'salinity 35, 30 °C', 'US', 86, 0, 35),
  oxygen(13.886, 'fresh, 0 °C, 0.95 atm, which is 430.3 m of the standard atmosphere', 'metric', 0, '430.3 m'),
  oxygen(8.627, 'fresh, 20 °C, 0.95 atm', 'US', 68, '430.3 m'),
  oxygen(7.165, 'fresh, 30 °C, 0.95 atm', 'US', 86, '430.3 m'),
  ...(
    [
      [300, 8.8],
      [900, 8.1],
      [1800, 7.2],
      [3000, 6.2],
    ] as const
  ).map(
    ([height, expected]): PublishedRow => ({
      call: ['WATER.OXYGEN', 'US', 68, `${height} m`],
      expected,
      absolute: 0.1,
      source: 'oxygen-meter-altitude-table',
      place: `20 °C, ${height} m`,
      known: 'read',
    }),
  ),
  {
    call: ['WATER.OXYGEN', 'US', 68],
    expected: 9.2,
    tolerance: 0.02,
    source: 'table-manual-portable-photometer',
    place: '20 °C, 760 mm',
    known: 'read',
    disagrees: 'older instrument tables run 0.1 mg/L high at 15 to 20 °C; Benson and Krause give 9.092',
  },
  {
    call: ['WATER.OXYGEN', 'metric', '68 °F', '430.3 m'],
    expected: 8.638,
    tolerance: 2e-3,
    source: 'saturation-multiplied-pressure',
    place: '9.092 x 0.95',
    known: 'common practice',
    disagrees: 'only the dry part of the air counts: 8.627 by the vapor-pressure form',
  },
  share('aquabaz-ammonia-tables', 'example, 18 °C, pH 7.0: 0.0034', 0.015, 'read', 18, 7, 0.34),
  {
    ...share('spotte-quoted-aquatic-plants', 'at 20 °C and pH 8.0', 0.19, 'read', 20, 8, 4.7),
    disagrees: 'tables before Trussell and Emerson have a quarter more: 4.7 against 3.8 %',
  },
  share('uf-ifas-fa16-ammonia', 'figure 4, 28 °C, pH 8.0: 0.0654', 4e-3, 'read', 28, 8, 6.54),
  share('uf-ifas-fa16-ammonia', 'figure 4, 20 °C, pH 7.0: 0.0039', 0.015, 'read', 20, 7, 0.39),
  share(trussell, '10 °C, pH 8.0', 2e-3, 'read', 10, 8, 1.83),
  share(trussell, '15 °C, pH 8.0', 8e-3, 'read', 15, 8, 2.65),
  share(trussell, '20 °C, pH 8.0', 5e-3, 'read', 20, 8, 3.83),
  share(trussell, '15 °C, pH 8.5', 0.01, 'read', 15, 8.5, 7.98),
  {
    ...share(trussell, '25 °C, pH 8.0', 0.025, 'read', 25, 8, 5.28),
    disagrees: 'Trussell is 2 % under Emerson at 25 °C: 5.28 against 5.38',
  },
  {
    ...share(emerson, '20 °C, pH 8.0, with 273.15 K in the formula', 5e-3, 'computed', 20, 8, 3.807),
    disagrees: 'the formula with 273.15 K gives 0.36 % less than the printed tables, which ours follows',
  },
  share(trussell, '10 °C, pH 8.5', 0.01, 'read', 10, 8.5, 5.55),
  share(trussell, '20 °C, pH 8.5', 0.01, 'read', 20, 8.5, 11.18),
  share(trussell, '25 °C, pH 7.5', 0.025, 'read', 25, 7.5, 1.73),
  share(bower, 'salinity 34, 15 °C, pH 8.5', 0.02, 'read', 15, 8.5, 6.28, 34),
  share(bower, 'salinity 34, 20 °C, pH 7.5', 0.02, 'read', 20, 7.5, 0.963, 34),
  share(bower, 'salinity 34, 20 °C, pH 8.5', 0.02, 'read', 20, 8.5, 8.87, 34),
  share(bower, 'salinity 34, 10 °C, pH 7.5', 2e-3, 'read', 10, 7.5, 0.459, 34),
  share(bower, 'salinity 34, 10 °C, pH 8.0', 4e-3, 'read', 10, 8, 1.44, 34),
  share(bower, 'salinity 34, 20 °C, pH 8.0', 0.018, 'read', 20, 8, 2.98, 34),
  share(bower, 'salinity 34, 25 °C, pH 8.0', 5e-3, 'read', 25, 8, 4.28, 34),
  share(bower, 'salinity 34, 25 °C, pH 8.5', 5e-3, 'read', 25, 8.5, 12.4, 34),
  {
    ...share('epa-440-5-88', '25 °C, pH 8.0, salinity 34', 0.06, 'memory', 25, 8, 4.5, 34),
    disagrees: 'EPA’s linear salt term gives 5 % more than Bower and Bidwell, whom ours follows',
  },
  {
    call: ['WATER.LIMIT', 'metric', 0.05, 8, '82.4 °F'],
    expected: 0.7645,
    tolerance: 4e-3,
    source: 'uf-ifas-fa16-0',
    place: 'figure 4; 0.05/0.0654',
    known: 'read',
  },
  {
    call: ['WATER.LIMIT', 'US', '50 µg/L', 8, '25 °C', 34],
    expected: 1.168,
    tolerance: 5e-3,
    source: bower,
    place: '0.05/0.0428',
    known: 'read',
  },
  dioxide(5, 6.0, 2.915),
  dioxide(10, 6.0, 2.539),
  dioxide(15, 6.0, 2.315),
  dioxide(20, 6.0, 2.112),
  dioxide(25, 6.0, 1.97),
  dioxide(30, 6.0, 1.882, 0.025),
  dioxide(35, 6.0, 1.839, 0.025),
  dioxide(5, 7.0, 0.291, 0.025),
  dioxide(10, 7.0, 0.254),
  dioxide(15, 7.0, 0.232),
  dioxide(25, 7.0, 0.197),
  dioxide(30, 7.0, 0.188, 0.025),
  dioxide(10, 6.4, 1.01),
  dioxide(15, 6.8, 0.367),
  dioxide(20, 7.0, 0.211),
  dioxide(25, 6.8, 0.313),
  dioxide(30, 7.2, 0.119),
  byPka(0, 6.58),
  byPka(5, 6.52),
  byPka(10, 6.47),
  byPka(15, 6.42),
  byPka(20, 6.38),
  byPka(25, 6.35),
  byPka(30, 6.33),
  {
    call: ['WATER.CARBONDIOXIDE', 'metric', '4 dKH', 7, 25],
    expected: 12,
    tolerance: 0.19,
    source: 'aquarium-rule-3-x',
    place: '4 dKH, pH 7.0',
    known: 'read',
    disagrees: 'the rule has no temperature and its factor is low: the equilibrium gives 14.1 at 25 °C',
  },
  {
    call: ['WATER.BUFFER', 'US', '1 kg/d', 'calcium carbonate'],
    expected: 7.14 / 0.45359237,
    tolerance: 2e-3,
    source: 'water-planet-nitrification',
    place: '7.14 lb of alkalinity as CaCO3 a lb of ammonia; 7.1 mg a mg of ammonia nitrogen',
    known: 'read',
  },
  {
    call: ['WATER.BUFFER', 'metric', '1 lb/d', 'sodium bicarbonate'],
    expected: 12 * 0.45359237,
    tolerance: 2e-3,
    source: 'recirculation-practice-12-g',
    place: 'alkalinity buffering equations',
    known: 'read',
  },
  {
    call: ['WATER.BUFFER', 'metric', '1 kg/d', 'calcium carbonate'],
    expected: (6.3 + 7.4) / 2,
    absolute: (7.4 - 6.3) / 2,
    source: 'epa-quoted-attached-growth',
    place:
      'page 10: 6.3 to 7.4 mg of alkalinity a mg of ammonia nitrogen in attached growth; the middle, within the range',
    known: 'read',
    disagrees: 'what was measured reaches below the 7.15 of the reaction alone, which doses a little more',
  },
  {
    call: ['WATER.DOSE', 'US', 10000, 10, 'sodium bicarbonate'],
    expected: 1.4 * 16,
    tolerance: 5e-3,
    source: 'fantasy-pools-bicarbonate',
    place: '1.4 lb in 10,000 gal raise the alkalinity by 10 ppm, in oz',
    known: 'read',
    disagrees: 'other pool pages round it up to 1.5 lb',
  },
  {
    call: ['WATER.BUFFER', 'metric', '1 kg/d', 'calcium hydroxide'],
    expected: 7.14 / 1.35,
    tolerance: 2e-3,
    source: 'university-nebraska-liming',
    place:
      'table 4.4: calcium hydroxide neutralizes 135 % of calcium carbonate, for 7.14 of alkalinity a unit of nitrogen',
    known: 'worked',
  },
  {
    call: ['WATER.OXYGENTIME', 'metric', 1000, 7, 3, '96 g/d', 1],
    expected: 60,
    tolerance: 1e-9,
    source: 'mass-balance-worked-hand-4',
    place: 'one hour',
    known: 'worked',
  },
  {
    call: ['WATER.CHECK', 'metric', 'warm-water', '79 °F', 7, 0.5, 0.1, 20, 6],
    cell: [0, 2],
    expected: 22,
    tolerance: 1e-9,
    source: 'fao-fisheries-technical-paper',
    place: 'table 3.1, warm-water fish 22 to 32 °C',
    known: 'read',
  },
  {
    call: ['WATER.CHECK', 'US', 'cold-water', '15 °C', 7, 0.5, 0.02, 20, 6],
    cell: [0, 3],
    expected: 64.4,
    tolerance: 1e-9,
    source: 'fao-fisheries-technical-paper',
    place: 'table 3.1, cold-water fish to 18 °C',
    known: 'read',
  },
  {
    call: ['WATER.CHECK', 'US', 'cold-water', '15 °C', 7, 0.5, 0.02, 20, 5.9],
    cell: [6, 4],
    expected: 'too low',
    source: 'fao-fisheries-technical-paper',
    place: 'table 3.1, cold-water fish 6 mg/L of oxygen or more',
    known: 'read',
  },
  {
    call: ['WATER.CHECK', 'metric', 'warm-water', '28 °C', 8, 0.8, 0.1, 20, 6],
    cell: [2, 3],
    expected: 0.7645,
    tolerance: 4e-3,
    source: 'uf-ifas-fa16-0',
    place: 'figure 4; stricter than the total limit of 3 mg/L',
    known: 'read',
  },
  after(6.8, 25, 50, 'sodium carbonate', 1, 9.1876),
  after(6.8, 25, 50, 'sodium hydroxide', 1, 10.073),
  after(7.4, 25, 100, 'sodium bicarbonate', 1, 7.6711),
  after(7.0, 15, 100, 'sodium carbonate', 1, 10.385, 20),
  after(7.8, 28, 50, 'calcium hydroxide', 2, 7.9167, 150),
  {
    call: ['WATER.AFTER', 'metric', 1, '0 mg/L', 6.9, 25, 'sodium bicarbonate', '0.84007 g'],
    cell: [0, 1],
    expected: 8.3,
    absolute: 0.05,
    source: 'teaching-page-ph-sodium',
    place: '0.010 mol/L at 25 °C: near 8.3',
    known: 'read',
  },
  {
    call: ['WATER.AFTER', 'US', 1, '0 mg/L', 6.9, 77, 'sodium hydroxide', '0.1514164 g'],
    cell: [0, 1],
    expected: 11,
    absolute: 0.02,
    source: 'definition-ph-ion-product',
    place: '0.001 mol/L of strong base: pH 11.0',
    known: 'worked',
  },
  {
    call: ['WATER.DOSE', 'US', 1, 40, 'sodium carbonate', 1, 50, 6.8, '25 °C'],
    expected: (40e-3 * 3.785411784 * (105.988 / 100.086)) / 28.349523125,
    tolerance: 1e-4,
    source: 'equivalent-weights-soda-ash',
    place: 'a rise of 40 mg/L, which stays under pH 9',
    known: 'worked',
  },
  {
    call: ['WATER.STEPS', 'metric', 1000, 50, 100, 6.8, 25, 'sodium bicarbonate', 1],
    cell: [0, 4],
    expected: 7.0947,
    absolute: 0.02,
    source: phreeqc,
    place: 'rise of 50 mg/L with carbon dioxide held, test/oracles/alkali-dose.py',
    known: 'computed',
  },
];
