import type { PublishedRow } from './published-row';

const leitritz = 'Leitritz and Lewis, Trout and Salmon Culture (1980)';
const srac = 'Rakocy, Tank Culture of Tilapia, SRAC Publication 282';
const aquasearch = 'Aquasearch, farmer’s toolbox: TGC';

/** A cell of the trout chart, asked for by fish to the pound and °F. */
const trout = (fahrenheit: number, toThePound: number, percent: number, inches: string): PublishedRow => ({
  call: ['STOCK.FEEDRATE', 'US', 'rainbow trout', 16 / toThePound, fahrenheit],
  expected: percent / 100,
  tolerance: 1e-9,
  source: leitritz,
  place: `feed chart, ${fahrenheit} °F, ${inches} inches`,
  known: 'read',
});

const tilapia = (ounces: string, percent: number, place: string): PublishedRow => ({
  call: ['STOCK.FEEDRATE', 'US', 'tilapia', ounces, 84],
  expected: percent / 100,
  tolerance: 1e-6,
  source: srac,
  place,
  known: 'memory',
});

export const stockPublished: readonly PublishedRow[] = [
  trout(36, 1, 0.4, 'over 10'),
  trout(40, 100, 2.2, '2-3'),
  trout(45, 25, 1.6, '4-5'),
  trout(50, 10, 1.4, '6-7'),
  trout(55, 3, 1.1, '9-10'),
  trout(60, 3000, 7.5, 'under 1'),
  trout(60, 6, 1.7, '7-8'),
  trout(66, 1000, 7.8, '1-2, the last row that is not misprinted'),
  trout(66, 15, 3.0, '5-6'),
  trout(68, 50, 5.5, '3-4'),
  {
    call: ['STOCK.FEEDRATE', 'metric', 'rainbow trout', '40 g', 10],
    expected: 0.014,
    tolerance: 1e-9,
    source: leitritz,
    place: 'feed chart, 50 °F, 11.3 to the pound',
    known: 'read',
  },
  tilapia('50 g', 4, 'table 1, stage 20 to 50 g ends at 4 %'),
  tilapia('100 g', 3.5, 'table 1, stage 50 to 100 g ends at 3.5 %'),
  tilapia('450 g', 1, 'table 1, stage 250 to 450 g ends at 1 %'),
  {
    call: ['STOCK.GROW', 'US', '10 g', 200, '11 °C', 0.222],
    expected: 350 / 28.349523125,
    tolerance: 0.005,
    source: aquasearch,
    place: 'example: 10 g, 350 g, 11 °C, 200 days, 0.222, which is cut to three figures',
    known: 'read',
  },
  {
    call: ['STOCK.GROW', 'metric', 1, 100, '50 °F', 0.1],
    expected: 8,
    tolerance: 1e-9,
    source: 'Iwama and Tautz, Canadian Journal of Fisheries and Aquatic Sciences 38:649 (1981)',
    place: 'model: cube root of mass gains T/1000 a day, with exponent 1/3',
    known: 'computed',
    disagrees: 'The abstract prints the exponent as 0.33, which gives 8.17 g; the model means a third.',
  },
  {
    call: ['STOCK.SCHEDULE', 'metric', 1000, 10, 350, 11, 0.222, 1, 0, 400],
    cell: [1, 0],
    expected: 200,
    tolerance: 0.005,
    source: aquasearch,
    place: 'example: 10 g, 350 g, 11 °C, 200 days, 0.222',
    known: 'read',
  },
  {
    call: ['STOCK.SCHEDULE', 'US', 1000, '10 g', '350 g', '11 °C', 0.222, 1.4, 0, 400],
    cell: [0, 4],
    expected: (1.4 * 340) / 200 / 0.45359237,
    tolerance: 0.005,
    source: `${aquasearch}; conversion 1.4 of tilapia, usual range`,
    place: 'example: 340 g gained by each of 1000 in 200 days, 1.4 kg feed a kg',
    known: 'computed',
  },
  {
    call: ['STOCK.FEED', 'US', 100, '35 g', '5.5 %'],
    expected: 0.1925 / 0.45359237,
    tolerance: 1e-9,
    source: 'Aquaponics growers’ forum thread 10150 on feed rate and adjustments',
    place: '100 fish of 35 g at 5.5 %: 192.5 g',
    known: 'read',
  },
  {
    call: ['STOCK.FEED', 'metric', 80, '0.55115565 lb', 0.01],
    expected: 0.2,
    tolerance: 1e-6,
    source: 'FAO Fisheries Technical Paper 589 (2014)',
    place: 'section 8.1: 20 kg of fish at 1 % eat the 200 g a day of 4 m2',
    known: 'memory',
  },
  {
    call: [
      'STOCK.SAMPLE',
      'metric',
      [
        ['10000001 g', 0, 1],
        ['10000003 g', 0, 1],
        ['10000002 g', 0, 1],
      ],
    ],
    cell: [0, 1],
    expected: 10000002,
    tolerance: 1e-12,
    source: 'NIST Statistical Reference Datasets, univariate',
    place: 'NumAcc1, certified mean',
    known: 'memory',
  },
  {
    call: [
      'STOCK.SAMPLE',
      'metric',
      [
        ['10000001 g', 0, 1],
        ['10000003 g', 0, 1],
        ['10000002 g', 0, 1],
      ],
    ],
    cell: [0, 2],
    expected: 1 / Math.sqrt(3),
    tolerance: 1e-6,
    source: 'NIST Statistical Reference Datasets, univariate',
    place: 'NumAcc1, certified standard deviation 1 of 3',
    known: 'memory',
  },
];
