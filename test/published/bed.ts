import type { PublishedRow } from './published-row';

const fao = 'fao-fisheries-technical-paper';
const rakocy = 'rakocy-university-virgin-islands';

export const bedPublished: readonly PublishedRow[] = [
  {
    call: ['BED.AREA', 'US', '200 g/d', 'leafy'],
    expected: 4 / 0.09290304,
    tolerance: 1e-9,
    source: fao,
    place: 'section 8.1: leafy greens 40 to 50 g/m2/d, high end',
    known: 'read',
    disagrees: 'SRAC Publication 454 gives rafts 60 to 100 g/m2/d, so 2 to 3.3 m2 for the same feed.',
  },
  {
    call: ['BED.AREA', 'metric', '200 g/d', '40 g/m2/d'],
    expected: 5,
    tolerance: 1e-9,
    source: fao,
    place: 'section 8.1: leafy greens 40 to 50 g/m2/d, low end',
    known: 'read',
  },
  {
    call: ['BED.AREA', 'metric', '66.7 g/d', 'fruiting'],
    expected: 1,
    tolerance: 0.03,
    source: fao,
    place: 'section 8.1: fruiting crops want about a third more than the 50 of leafy ones',
    known: 'read',
  },
  {
    call: ['BED.AREA', 'US', '99.6 g/d', 'basil'],
    expected: 1 / 0.09290304,
    tolerance: 1e-9,
    source: rakocy,
    place: 'basil, staggered: 99.6 g/m2/d',
    known: 'read',
    disagrees: 'The same trial ran batches at 81.4 g/m2/d, and deficiency was seen.',
  },
  {
    call: ['BED.PLANTS', 'US', '4 m2', 'leafy'],
    expected: 100,
    source: fao,
    place: 'section 8.1: 20 to 25 leafy plants a m2, the closer of the two',
    known: 'read',
  },
  {
    call: ['BED.PLANTS', 'metric', '10 m2', 'lettuce'],
    expected: 250,
    tolerance: 1e-9,
    source: fao,
    place: 'section 8.1: 20 to 25 leafy plants a m2, the closer of the two',
    known: 'read',
    disagrees: 'the same section allows as few as 20 a m2',
  },
  {
    call: ['BED.PLANTS', 'metric', '10 m2', 'fruiting'],
    expected: 60,
    tolerance: 1e-9,
    source: fao,
    place: 'section 8.1: 4 to 8 fruiting plants a m2, the middle',
    known: 'read',
  },
  {
    call: ['BED.PLANTS', 'US', '10 m2', 'tomato'],
    expected: 40,
    tolerance: 1e-9,
    source: 'public-table-crops',
    place: 'tomato: 40 to 60 cm apart, 3 to 5 plants a m2, the middle',
    known: 'read',
    disagrees: 'Resh, Hobby Hydroponics, allows a tomato 3.5 to 4 ft2 of floor, so 27 to 31 plants.',
  },
  {
    call: ['BED.DAYS', 'metric', '20 g/d', '600 L', '0.2 lb/ft3'],
    expected: 96.1107803,
    tolerance: 1e-8,
    source: 'gnu-units-2-22',
    place: "units -t '600 L * 0.2 lb/ft^3 / (20 g/day)' day",
    known: 'computed',
  },
];
