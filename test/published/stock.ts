import { ownFiguresOracle } from '../oracles/own-figures';
import type { PublishedRow } from './published-row';

const leitritz = 'leitritz-lewis-trout-salmon';
const aquasearch = 'aquasearch-farmers-toolbox-tgc';

/** A cell of the trout chart, asked for by fish to the pound and °F. */
const trout = (fahrenheit: number, toThePound: number, percent: number, inches: string): PublishedRow => ({
  call: ['STOCK.FEEDRATE', 'US', 'rainbow trout', 16 / toThePound, fahrenheit],
  expected: percent / 100,
  tolerance: 1e-9,
  source: leitritz,
  place: `feed chart, ${fahrenheit} °F, ${inches} inches`,
  known: 'read',
});

/** A rate of tilapia in percent of body mass a day, or the middle of a range and how far it reaches. */
const tilapia = (
  mass: string,
  percent: number,
  reach: number,
  source: PublishedRow['source'],
  place: string,
): PublishedRow => ({
  call: ['STOCK.FEEDRATE', 'US', 'tilapia', mass, 84],
  expected: percent / 100,
  absolute: reach / 100 + 1e-9,
  source,
  place,
  known: 'read',
});

/** A cell of the species table. */
const species = (
  units: string,
  name: string,
  column: number,
  expected: number,
  source: PublishedRow['source'],
  place: string,
  known: PublishedRow['known'] = 'read',
): PublishedRow => ({
  call: ['STOCK.SPECIES', units, name],
  cell: [0, column],
  expected,
  tolerance: 1e-9,
  source,
  place,
  known,
});

const fao589 = 'fao-fisheries-technical-paper';
const catfishModel = 'us-fish-wildlife-service';
const barramundi = 'schipp-bosmans-humphrey-northern';

export const stockPublished: readonly PublishedRow[] = [
  species('metric', 'tilapia', 1, 14, fao589, 'section 7.4: tilapias briefly tolerate 14 and 36 °C'),
  species('US', 'tilapia', 2, 96.8, fao589, 'section 7.4: tilapias briefly tolerate 14 and 36 °C'),
  species('US', 'tilapia', 3, 80.6, fao589, 'section 7.4: the ideal range is 27 to 30 °C'),
  species('metric', 'tilapia', 4, 30, fao589, 'section 7.4: the ideal range is 27 to 30 °C'),
  species(
    'metric',
    'tilapia',
    9,
    50,
    'aquaculture-education-council-tilapia',
    'optimum carbon dioxide under 50 mg/L, lethal about 75',
  ),
  species('US', 'common carp', 1, 37.4, 'national-bureau-fish-genetic', 'tolerates 3 to 35 °C'),
  species('metric', 'common carp', 2, 35, 'national-bureau-fish-genetic', 'tolerates 3 to 35 °C'),
  species('metric', 'common carp', 3, 23, 'fao-cultured-aquatic-species', 'best growth from 23 to 30 °C'),
  species(
    'metric',
    'channel catfish',
    2,
    33.5,
    catfishModel,
    'upper lethal temperature of fish used to 25 °C (Carlander 1969)',
  ),
  species('US', 'channel catfish', 3, 78.8, catfishModel, 'optimal range for growth of adults 26 to 29 °C'),
  species('metric', 'channel catfish', 5, 3, catfishModel, 'oxygen under 3 mg/L slows growth (Simco and Cross 1966)'),
  species(
    'metric',
    'rainbow trout',
    2,
    25,
    'fishbase-oncorhynchus-mykiss-quoted',
    'not stocked in water that reaches over 25 °C in summer',
  ),
  species(
    'metric',
    'rainbow trout',
    4,
    19,
    'nevada-division-environmental-protection',
    'table 1, laboratory optimum 13.1 to 19.0 °C',
  ),
  species('US', 'barramundi', 1, 60.8, barramundi, 'fingerlings survive 16 to 35 °C'),
  species('metric', 'barramundi', 4, 33, 'katersky-carter-2007', 'growth and protein synthesis best from 27 to 33 °C'),
  species('US', 'tilapia', 4, 86, 'el-sayed-tilapia-culture', 'section 4.2: optimum of about 25 to 30 °C'),
  {
    ...species('metric', 'tilapia', 9, 40, 'extension-org-question-162665', 'carbon dioxide should be under 40 mg/L'),
    tolerance: 0.25,
    disagrees: 'the tilapia manual puts the limit at 50 mg/L, which ours follows',
  },
  {
    ...species('metric', 'rainbow trout', 9, (12.9 + 25.8) / 2, 'fao-ac183e-carbon-dioxide', ''),
    absolute: (25.8 - 12.9) / 2,
    place:
      'salmonids cannot tolerate more than 5 to 10 mm Hg, which dissolve 12.9 to 25.8 mg/L at 15 °C (1.97 g/L at 1 atm); the middle, within the range',
  },
  species('metric', 'warm-water', 3, 22, fao589, 'table 3.1, warm-water fish 22 to 32 °C'),
  species('metric', 'cold-water', 11, 8.5, fao589, 'table 3.1, pH 6 to 8.5'),
  {
    ...species(
      'metric',
      'rainbow trout',
      2,
      27,
      'fao-cultured-aquatic-species',
      'withstands 0 to 27 °C, best under 21 °C',
    ),
    tolerance: 0.08,
    disagrees: 'fish that are used to cold water die from about 25 °C; ours is the more careful one',
  },
  {
    ...species('metric', 'tilapia', 10, 5, 'kenya-extension-service-environmental', 'survives pH 5 to 10, best 6 to 9'),
    absolute: 1,
    disagrees: 'what fish survive is not what a filter works in: FAO 589 asks for 6 to 8.5',
  },
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
  tilapia('0.02 g', 20, 0, 'house-of-tilapia', 'fry start at up to 20 % in good water of 86 °F'),
  tilapia('50 g', 4, 0, 'fishing-and-fish-tilapia', 'about 4 % a day; 228 fish of 50 g'),
  tilapia('100 g', 4, 1, 'icsoro-forum-tilapia', 'under 150 g: 3 to 5 %, the middle'),
  {
    ...tilapia('300 g', 1.5, 0.5, 'icsoro-forum-tilapia', 'about 300 g: 1 to 2 %, the middle'),
    disagrees: 'The first page gives adults 2 to 3 %.',
  },
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
    source: 'iwama-tautz-canadian-fisheries',
    place: 'model: cube root of mass gains T/1000 a day, with exponent 1/3',
    known: 'worked',
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
    source: 'aquasearch-farmers-toolbox-tgc-conversion',
    place: 'example: 340 g gained by each of 1000 in 200 days, 1.4 kg feed a kg',
    known: 'worked',
  },
  {
    call: ['STOCK.FEED', 'US', 100, '35 g', '5.5 %'],
    expected: 0.1925 / 0.45359237,
    tolerance: 1e-9,
    source: 'aquaponics-growers-forum-thread',
    place: '100 fish of 35 g at 5.5 %: 192.5 g',
    known: 'read',
  },
  {
    call: ['STOCK.FEED', 'metric', 5000, '200 g', '2 %'],
    expected: 20,
    tolerance: 1e-9,
    source: 'thermal-farm-curriculum',
    place: 'page 46: 5000 fish of 200 g are 1000 kg, which at 0.02 eat 20 kg a day',
    known: 'read',
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
    source: 'nist-statistical-reference-datasets',
    place: 'NumAcc1, certified mean',
    known: 'read',
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
    source: 'nist-statistical-reference-datasets',
    place: 'NumAcc1, certified standard deviation 1 of 3',
    known: 'read',
  },
  {
    call: ['STOCK.COEFFICIENT', 'metric', [...ownFiguresOracle.growth[1].rows]],
    expected: ownFiguresOracle.growth[1].coefficient,
    tolerance: 1e-8,
    source: 'scipy-regression',
    place: 'test/oracles/own-figures.py, uneven weeks',
    known: 'computed',
  },
  {
    call: [
      'STOCK.COEFFICIENT',
      'US',
      [
        [46000, '10 g', '11 °C'],
        [46100, '100.7 g', '11 °C'],
        [46200, '350 g', '11 °C'],
      ],
    ],
    expected: 0.222,
    tolerance: 0.005,
    source: aquasearch,
    place: 'example: 10 g, 350 g, 11 °C, 200 days, 0.222; the middle on its curve',
    known: 'read',
  },
  {
    call: ['STOCK.CONVERSION', 'US', '55 lb', '50 lb'],
    expected: 1.1,
    tolerance: 1e-9,
    source: 'fao-fisheries-technical-paper',
    place: 'section 7.3: total feed over total growth, in one unit',
    known: 'read',
  },
];
