import type { PublishedRow } from './published-row';

const fao = 'fao-fisheries-technical-paper';
const zhu = 'zhu-chen-aquacultural-engineering';
const ebeling = 'ebeling-timmons-bisogni-aquaculture';
const crab = 'crab-aquaculture-270-1';

/** A cell of FILTER.LIST. */
const listed = (
  row: number,
  column: number,
  expected: number,
  source: PublishedRow['source'],
  place: string,
): PublishedRow => ({
  call: ['FILTER.LIST', 'metric'],
  cell: [row, column],
  expected,
  tolerance: 1e-9,
  source,
  place,
  known: 'memory',
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
    call: ['FILTER.OXYGEN', 'US', 1],
    expected: 4.57,
    tolerance: 5e-4,
    source: 'us-epa-process-design',
    place: '4.57 g of oxygen a g of ammonia nitrogen',
    known: 'read',
    disagrees: `${ebeling}: 4.18 where growth of the bacteria is counted.`,
  },
  {
    call: ['FILTER.ALKALINITY', 'US', 1],
    expected: 7.14,
    tolerance: 1e-3,
    source: ebeling,
    place: '7.14 g CaCO3 a g of nitrogen without growth',
    known: 'memory',
    disagrees: `${ebeling}: 7.05 where growth of the bacteria is counted.`,
  },
  listed(2, 1, 300, fao, 'table 4.1, volcanic tuff'),
  listed(0, 3, 0.469, fao, 'appendix 4: 0.57 g of ammonia as nitrogen'),
  listed(4, 2, 0.24, crab, 'trickling filters 0.24 to 0.64'),
  listed(4, 3, 0.64, crab, 'trickling filters 0.24 to 0.64'),
  listed(5, 3, 0.79, crab, 'rotating contactors 0.19 to 0.79'),
  listed(6, 2, 0.3, crab, 'bead filters 0.30 to 0.60'),
  listed(7, 3, 0.24, crab, 'fluidized sand 0.24'),
  {
    call: ['FILTER.TEST', 'US', '200 gpm', 0.15, 0.075],
    expected: (200 * 3.785411784 * 1440 * 0.075e-6) / 0.45359237,
    tolerance: 1e-9,
    source: 'mass-balance-worked-hand',
    place: '200 gpm that lose 0.075 mg/L of nitrogen',
    known: 'worked',
  },
];
