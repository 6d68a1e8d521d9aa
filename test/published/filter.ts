import type { PublishedRow } from './published-row';

const fao = 'fao-fisheries-technical-paper';
const zhu = 'zhu-chen-aquacultural-engineering';
const planet = 'water-planet-nitrification';
const mat = 'arowana-club-forum-media';
const tilapia = 'house-of-tilapia';

/** Feed of which 4 % becomes ammonia, as the forum reckons it, by our 0.092 of the protein. */
const FOUR_PERCENT = 0.04 / 0.092;

/** A cell of FILTER.LIST. */
const listed = (
  row: number,
  column: number,
  expected: number,
  tolerance: number,
  source: PublishedRow['source'],
  place: string,
  known: PublishedRow['known'] = 'read',
): PublishedRow => ({
  call: ['FILTER.LIST', 'metric'],
  cell: [row, column],
  expected,
  tolerance,
  source,
  place,
  known,
});

export const filterPublished: readonly PublishedRow[] = [
  {
    call: ['FILTER.NITRIFY', 'US', 1, '21 °C', '20 °C', 'ammonia'],
    expected: 1.04275,
    tolerance: 1e-9,
    source: zhu,
    place: 'abstract: 4.275 % per °C at 20 °C where ammonia limits',
    known: 'read',
    disagrees: 'Salvetti et al. (2006) found 1.098 times a °C in moving beds, more than twice the gain.',
  },
  {
    call: ['FILTER.NITRIFY', 'metric', 1, '69.8 °F', '68 °F', 'oxygen'],
    expected: 1.01108,
    tolerance: 1e-9,
    source: zhu,
    place: 'abstract: 1.108 % per °C at 20 °C where oxygen limits',
    known: 'read',
  },
  {
    call: ['FILTER.AREA', 'US', '110 g/d', FOUR_PERCENT, '0.2 g/m2/d'],
    expected: 22 / 0.09290304,
    tolerance: 1e-6,
    source: mat,
    place: '110 g of feed a day, 4 % of it ammonia: 4.4 g, which 22 m2 convert at 0.2 g/m2/d',
    known: 'read',
  },
  {
    call: ['FILTER.AREA', 'US', '200 g/d', 0.32, '0.469 g/m2/d'],
    expected: 13.15 / 0.09290304,
    tolerance: 0.05,
    source: fao,
    place: 'appendix 4: 7.4957 g ammonia / 0.57 g/m2/d = 13.15 m2',
    known: 'memory',
    disagrees: 'Ours is 4.5 % less, 12.55 m2, because 0.092 of protein becomes ammonia nitrogen and not 0.0976.',
  },
  {
    call: ['FILTER.MEDIA', 'US', '13.15 m2', '300 m2/m3'],
    expected: 43.8 / 28.316846592,
    tolerance: 0.001,
    source: fao,
    place: 'appendix 4: 13.15 m2 on 300 m2/m3 is 43.8 L',
    known: 'memory',
  },
  {
    call: ['FILTER.FEED', 'US', '43.8 L', '300 m2/m3', 0.32, '0.469 g/m2/d'],
    expected: 0.2 / 0.45359237,
    tolerance: 0.05,
    source: fao,
    place: 'appendix 4, backwards: 43.8 L carries 200 g a day',
    known: 'memory',
    disagrees: 'Ours is 4.7 % more, for the reason given at FILTER.AREA.',
  },
  {
    call: ['FILTER.MEDIA', 'US', '22 m2', '275 m2/m3'],
    expected: 80 / 28.316846592,
    tolerance: 1e-9,
    source: mat,
    place: 'a mat of 80 L and 275 m2/m3 has 22 m2',
    known: 'read',
  },
  {
    call: ['FILTER.FEED', 'US', '80 L', '275 m2/m3', FOUR_PERCENT, '0.2 g/m2/d'],
    expected: 0.11 / 0.45359237,
    tolerance: 1e-6,
    source: mat,
    place: 'a mat of 80 L carries 110 g of feed a day, 4 % of it ammonia',
    known: 'read',
  },
  {
    call: ['FILTER.OXYGEN', 'US', 1],
    expected: 4.57,
    tolerance: 5e-4,
    source: 'us-epa-process-design',
    place: '4.57 g of oxygen a g of ammonia nitrogen',
    known: 'read',
    disagrees: 'The Water Planet Company has 4.18, where growth of the bacteria is counted.',
  },
  {
    call: ['FILTER.ALKALINITY', 'US', 1],
    expected: 7.14,
    tolerance: 1e-3,
    source: planet,
    place: '7.14 lb of alkalinity as CaCO3 a lb of ammonia; 7.1 mg a mg of ammonia nitrogen',
    known: 'read',
  },
  listed(3, 1, 500, 1e-9, 'harwanto-oh-jo-fisheries', 'abstract: Kaldnes media has 500 m2/m3'),
  listed(7, 1, 7836, 0.03, 'harwanto-oh-jo-fisheries', 'abstract: the sand has 7,836 m2/m3'),
  listed(3, 2, 0.02 / 0.09290304, 0.08, tilapia, 'filters remove 0.02 to 0.10 g of ammonia a ft2 a day, low end'),
  listed(3, 3, 0.1 / 0.09290304, 0.08, tilapia, 'filters remove 0.02 to 0.10 g of ammonia a ft2 a day, high end'),
  {
    ...listed(5, 3, 1.21, 0.35, 'van-gorder-jug-dujakovic', 'abstract: 1.21 g/m2/d under heavy feeding'),
    disagrees: 'Ours is 0.79, a third less.',
  },
  listed(
    6,
    2,
    1200 / 3936,
    0.02,
    'timmons-holder-ebeling-aquacultural',
    'abstract: microbeads of 3,936 m2/m3 nitrify 1.2 kg of nitrogen a m3 a day in warm water',
    'worked',
  ),
  listed(
    0,
    3,
    (0.05 * 14.007) / 17.031 / 0.09290304,
    0.07,
    'diy-aquaponics-forum-biofilter',
    'pea gravel, when mature: 0.05 g of ammonia a ft2 a day, here as nitrogen',
    'worked',
  ),
  {
    call: ['FILTER.TEST', 'US', '200 gpm', 0.15, 0.075],
    expected: (200 * 3.785411784 * 1440 * 0.075e-6) / 0.45359237,
    tolerance: 1e-9,
    source: 'mass-balance-worked-hand',
    place: '200 gpm that lose 0.075 mg/L of nitrogen',
    known: 'worked',
  },
];
