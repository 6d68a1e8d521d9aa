import type { PublishedRow } from './published-row';

const piper = 'piper-fish-hatchery-management';
const clark = 'clark-harman-forster-fish';
/** A part per million in a US gallon a minute, in pounds a day: exact factors of gallon and pound. */
const POUNDS_A_DAY = (3.785411784 * 1440 * 1e-6) / 0.45359237;

/** A raceway of 200 gpm with an ammonia factor of 3.0 ppm gpm for each pound of food a day. */
const raceway = (food: number, ppm: number, tolerance: number, number: number): PublishedRow => ({
  call: ['LOAD.FLOW', 'US', food * 3 * POUNDS_A_DAY, ppm, 1],
  expected: 200,
  tolerance,
  source: piper,
  place: `page 25, raceway ${number}: ${food} lb of food gives ${ppm} ppm in 200 gpm, printed to two figures`,
  known: 'read',
});

/** The same raceway the other way round: the level that its ammonia comes to, all of it gone at the end. */
const level = (food: number, ppm: number, tolerance: number, number: number): PublishedRow => ({
  call: ['LOAD.LEVEL', 'US', food * 3 * POUNDS_A_DAY, 200, 1],
  expected: ppm,
  tolerance,
  source: piper,
  place: `page 25, raceway ${number}: ${food} lb of food gives ${ppm} ppm in 200 gpm, printed to two figures`,
  known: 'read',
});

const forum = 'diy-aquaponics-forum-biofilter';

export const loadPublished: readonly PublishedRow[] = [
  {
    call: ['LOAD.AMMONIA', 'metric', '200 g/d', 0.32, 0.0976],
    expected: 7.4957 / 1.2 / 1000,
    tolerance: 1e-4,
    source: 'fao-fisheries-technical-paper',
    place: 'appendix 4: 200 g x 0.32 x 0.16 x 0.61 = 6.246 g N, x 1.2 = 7.4957 g ammonia a day',
    known: 'memory',
    disagrees: 'With the factor 0.092 the same feed gives 5.888 g N = 7.16 g ammonia, 4.5 % less.',
  },
  {
    call: ['LOAD.TABLE', 'metric', 1, 0.4],
    cell: [0, 1],
    expected: 0.04,
    tolerance: 1e-9,
    source: clark,
    place: '40 to 90 g suspended solids a kg of feed',
    known: 'read',
  },
  {
    call: ['LOAD.TABLE', 'metric', 1, 0.4],
    cell: [0, 3],
    expected: 0.7,
    tolerance: 1e-9,
    source: 'world-aquaculture-society-abstract',
    place: 'catfish 0.2 to 0.7',
    known: 'read',
  },
  {
    call: ['LOAD.CO2', 'US', '32 kg/d'],
    expected: 44 / 0.45359237,
    tolerance: 5e-4,
    source: 'piedrahita-gas-transfer-recirculating',
    place: 'slide 7: a mole of carbon dioxide a mole of oxygen, so 44 g for 32 g',
    known: 'worked',
    disagrees: 'Teachers in aquaculture say a pound of carbon dioxide a pound of oxygen, 27 % less.',
  },
  raceway(10, 0.15, 1e-6, 1),
  raceway(15, 0.23, 0.025, 2),
  raceway(35, 0.53, 0.012, 3),
  level(10, 0.15, 1e-6, 1),
  level(15, 0.23, 0.025, 2),
  level(35, 0.53, 0.012, 3),
  {
    call: ['LOAD.FLOW', 'US', '5 g/d', 0.1, 1],
    expected: 50_000 / 3.785411784 / 1440,
    tolerance: 1e-9,
    source: forum,
    place: '5 g of ammonia a day, at most 0.1 ppm: 50,000 liters a day through the filter',
    known: 'read',
  },
  {
    call: ['LOAD.FLOW', 'metric', '5 g/d', 0.1, 1],
    expected: 37.7,
    tolerance: 0.08,
    source: forum,
    place: '50,000 liters a day, printed as 37.7 liters a minute',
    known: 'read',
    disagrees: 'A slip of the page: 50,000 liters over 1,440 minutes are 34.7.',
  },
  {
    call: ['LOAD.LEVEL', 'metric', '5 g/d', '50000 L/d', 1],
    expected: 0.1,
    tolerance: 1e-9,
    source: forum,
    place: 'the other way round: 5 g a day in 50,000 liters a day come to 0.1 ppm',
    known: 'read',
  },
  {
    call: ['LOAD.FLOW', 'US', 8.34, 1, 1],
    expected: 1e6 / 1440,
    tolerance: 1e-3,
    source: 'waterworks-pounds-formula-lb',
    place: '1 mg/L in 1 million gallons a day',
    known: 'read',
  },
  {
    call: ['LOAD.FLOWS', 'US', 10, (3 * POUNDS_A_DAY) / 0.092, 0.15, 1],
    cell: [0, 2],
    expected: 200,
    tolerance: 1e-6,
    source: piper,
    place: 'page 25, raceway 1: 10 lb of food gives 0.15 ppm in 200 gpm',
    known: 'read',
  },
];
