import type { PublishedRow } from './published-row';

const nist = 'nist-special-publication-811';
const factors = 'appendix B.8';

/** Conversion factors as printed, so the last digit is the tolerance. */
const printed = (from: string, to: string, expected: number, tolerance: number): PublishedRow => ({
  call: ['UNIT.CONVERT', 1, from, to],
  expected,
  tolerance,
  source: nist,
  place: `${factors}, ${from}`,
  known: 'read',
});

export const unitRows: readonly PublishedRow[] = [
  printed('in', 'mm', 25.4, 1e-15),
  printed('gal', 'L', 3.785412, 2e-7),
  printed('ft3', 'm3', 0.02831685, 2e-7),
  printed('lb', 'kg', 0.4535924, 2e-7),
  printed('oz', 'g', 28.34952, 2e-7),
  printed('psi', 'kPa', 6.894757, 2e-7),
  printed('hp', 'W', 745.6999, 2e-7),
  printed('gpm', 'L/s', 0.0630902, 1e-6),
  printed('ha', 'm2', 10000, 1e-15),
  {
    call: ['UNIT.CONVERT', 1, 'acre', 'm2'],
    expected: 4046.873,
    tolerance: 5e-6,
    source: nist,
    place: `${factors}, acre (based on the US survey foot)`,
    known: 'read',
    disagrees:
      'Printed 4046.873 for the survey acre; ours is the international one, 4046.8564224, 4 parts in a million less.',
  },
  {
    call: ['UNIT.CONVERT', 68, '°F', '°C'],
    expected: 20,
    absolute: 1e-12,
    source: nist,
    place: 'appendix B.9, t °C = (t °F - 32) / 1.8',
    known: 'read',
  },
  {
    call: ['UNIT.READ', 'metric', 'dimension', '3 1/4 in'],
    expected: 82.55,
    tolerance: 1e-15,
    source: '16-cfr-500-19',
    place: 'chart of factors: 1 inch is 2.54 cm exactly',
    known: 'read',
  },
  {
    call: ['UNIT.READ', 'US', 'volume', '1 imp gal'],
    expected: 1.20095,
    tolerance: 5e-6,
    source: 'wikipedia-gallon',
    place: 'table beside the text: 1 imperial gallon is 1.200950 US gallons',
    known: 'read',
  },
  {
    call: ['UNIT.READ', 'metric', 'loading', '1000 gpd/ft2'],
    expected: 40.746 / 24,
    tolerance: 1e-5,
    source: 'wyoming-water-quality-rules',
    place: 'primary settling',
    known: 'read',
  },
  {
    call: ['UNIT.READ', 'metric', 'application', '2 lb/1000 ft2'],
    expected: 9.765,
    tolerance: 5e-5,
    source: 'university-maryland-colorado-state',
    place: 'home garden nitrogen',
    known: 'read',
  },
  {
    call: ['REF.VALUE', 'US', 'overflow limit'],
    expected: 4.6,
    tolerance: 1e-2,
    source: 'davidson-summerfelt-aquacultural-engineering',
    place: 'abstract: 4.6 gpm/ft2',
    known: 'read',
  },
  {
    call: ['REF.VALUE', 'metric', 'nitrification oxygen'],
    expected: 4.57,
    tolerance: 2e-3,
    source: 'wastewater-textbook-nitrification',
    place: 'both steps together, 10.17 and after: 4.57 g of oxygen a gram of nitrogen',
    known: 'read',
  },
];
