import type { PublishedRow } from './published-row';

const davis = 'davis-water-wastewater-engineering';
const davidson = 'davidson-summerfelt-aquacultural-engineering';
const coulson = 'coulson-richardson-chemical-engineering';
const fluids = 'fluids-v-terminal';
const hazen = 'hazen-transactions-american-society';
const quadrature = 'scipy-quad';

/** Velocity in mm/s that a drag law of the reference library gives in water of the same temperature. */
function byLaw(
  size: string,
  density: unknown,
  celsius: number,
  expected: number,
  law: string,
  tolerance: number,
): PublishedRow {
  return {
    call: ['SETTLE.VELOCITY', 'US, settling mm/s', size, density, `${celsius} °C`],
    expected,
    tolerance,
    source: fluids,
    place: `drag law of ${law}`,
    known: 'computed',
  };
}

/** Capture of one velocity or of a spread, at an overflow rate of 1 mm/s, so that the median in mm/s is its ratio to it. */
function capture(
  expected: number,
  ratio: number,
  spread: number,
  mixing: unknown,
  inLine: number,
  source: PublishedRow['source'],
  place: string,
): PublishedRow {
  return {
    call: ['SETTLE.CAPTURE', 'US', '0.001 m/s', `${ratio} mm/s`, spread, mixing, 1, inLine],
    expected,
    absolute: 1e-6,
    source,
    place,
    known: source === quadrature ? 'computed' : 'worked',
  };
}

/** Settling of grains, drums and jars. */
export const settleRows: readonly PublishedRow[] = [
  {
    call: ['SETTLE.STOKES', 'US, settling mm/s', '100 µm', 'SG 2.65', 68],
    expected: 8.9849,
    tolerance: 1e-4,
    source: 'stokes-law-water-998',
    place: 'quartz of 0.1 mm at 20 °C',
    known: 'computed',
  },
  {
    call: ['SETTLE.STOKES', 'US, settling mm/s', '0.1 mm', 'SG 1.19', 77],
    expected: 1.1811,
    tolerance: 1e-4,
    source: 'stokes-law-water-997',
    place: 'faecal solid of 0.1 mm at 25 °C',
    known: 'computed',
  },
  {
    call: ['SETTLE.STOKES', 'metric', '37.6 µm', 7500, 20],
    expected: 5,
    tolerance: 5e-3,
    source: coulson,
    place: 'galena of 37.6 µm rises no faster than 5 mm/s',
    known: 'read',
  },
  {
    call: ['SETTLE.STOKES', 'US, settling mm/s', '73.5 µm', 'SG 2.7', '20 °C'],
    expected: 5,
    tolerance: 5e-3,
    source: coulson,
    place: 'limestone of 73.5 µm rises no faster than 5 mm/s',
    known: 'read',
  },
  {
    call: ['SETTLE.VELOCITY', 'US, settling mm/s', '0.2 mm', 'SG 2.65', '22 °C'],
    expected: 25.54,
    tolerance: 0.015,
    source: davis,
    place: 'grit, iterated with the drag law of Schiller and Naumann',
    known: 'computed',
  },
  {
    call: ['SETTLE.VELOCITY', 'metric', 0.2, 2650, 22],
    expected: 27.3,
    tolerance: 0.08,
    source: davis,
    place: 'grit, iterated with 24/Re + 3/sqrt(Re) + 0.34',
    known: 'computed',
    disagrees: 'that older law is 7 % faster; Cheng, Clift, and Schiller and Naumann agree within 2 %',
  },
  {
    call: ['SETTLE.VELOCITY', 'metric', 0.2, 2650, 22],
    expected: 37.7,
    tolerance: 0.35,
    source: davis,
    place: 'grit by Stokes’ law, before the Reynolds number says that it does not hold',
    known: 'read',
    disagrees:
      'Stokes’ law is half as fast again as the grain, whose Reynolds number is 5; SETTLE.STOKES gives #N/A here',
  },
  byLaw('70 µm', 'SG 2.6', 20, 4.14098, 'Barati (2014)', 5e-3),
  byLaw('70 µm', 'SG 2.6', 20, 4.08395, 'Clift, Grace and Weber (1978)', 0.015),
  byLaw('1 mm', 'SG 2.65', 20, 157.774, 'Clift, Grace and Weber (1978)', 0.015),
  byLaw('1 mm', 'SG 2.65', 20, 155.21, 'Schiller and Naumann (1933)', 0.01),
  byLaw('0.1 mm', 'SG 2.65', 20, 7.9653, 'Schiller and Naumann (1933)', 0.04),
  byLaw('0.1 mm', 'SG 2.65', 20, 8.2392, 'Cheng (2009)', 2e-4),
  byLaw('0.5 mm', 'SG 1.19', 25, 16.922, 'Clift, Grace and Weber (1978)', 2e-3),
  {
    ...byLaw('0.1 mm', 'SG 1.19', 25, 1.1396, 'Schiller and Naumann (1933)', 0.04),
    disagrees: 'the laws differ by 4 % near Re 0.1, where Cheng’s lies close to Stokes’',
  },
  {
    call: ['SETTLE.VELOCITY', 'metric', 1, 2650, 20],
    expected: 126.25,
    tolerance: 0.25,
    source: 'ferguson-church-sedimentary-research',
    place: 'equation 4, C1 18, C2 1.0: natural sand of 1 mm in water of 1e-6 m2/s',
    known: 'computed',
    disagrees: 'natural sand is no sphere and falls a sixth slower; ours is for spheres',
  },
  {
    call: ['SETTLE.GRAIN', 'US', '5 mm/s', 'SG 7.5', 68],
    expected: 0.0376,
    tolerance: 0.03,
    source: coulson,
    place: 'galena at 5 mm/s, by Stokes’ law; ours by the drag law is 1 to 2 % larger',
    known: 'read',
  },
  {
    call: ['SETTLE.GRAIN', 'metric', '157.774 mm/s', 'SG 2.65', '68 °F'],
    expected: 1,
    tolerance: 0.02,
    source: fluids,
    place: 'drag law of Clift, Grace and Weber (1978), quartz of 1 mm',
    known: 'computed',
  },
  {
    call: ['SETTLE.REYNOLDS', 'US', '1 mm', 'SG 2.65', 68],
    expected: 157.24,
    tolerance: 0.015,
    source: fluids,
    place: 'drag law of Clift, Grace and Weber (1978): 0.157774 m/s x 1 mm / 1.00340e-6 m2/s',
    known: 'computed',
  },
  {
    call: ['SETTLE.OVERFLOW', 'metric', '18.4 gpm', '27.0812 in'],
    expected: 11.2,
    tolerance: 5e-3,
    source: davidson,
    place: '4.6 gpm/ft2 = 0.0031 m3/s per m2, here 18.4 gpm on 4 ft2',
    known: 'read',
  },
  {
    call: ['SETTLE.OVERFLOW', 'US, loading m/d', '1000 gal/d', '13.5406 in'],
    expected: 40.746,
    tolerance: 1e-4,
    source: 'wyoming-water-quality-rules-chapter',
    place: 'primary settling, on 1 ft2',
    known: 'read',
  },
  {
    call: ['SETTLE.DRUMS', 'metric', '54 gpm', '27.0812 in', '11.2 m/h'],
    expected: 3,
    absolute: 1e-9,
    source: davidson,
    place: '4.6 gpm/ft2: 54 gpm asks for 11.8 ft2, drums of 4 ft2 each',
    known: 'read',
  },
  {
    call: ['SETTLE.INLET', 'US', 20, '2.067 in'],
    expected: 1.91,
    tolerance: 2e-3,
    source: 'ludwig-applied-process-design',
    place: 'table 2-10: 20 gpm in 2 in schedule 40 steel',
    known: 'read',
  },
  capture(0.5, 1, 1, 'mixed', 1, 'veerapen-lowry-couturier-aquacultural', 'vs/(vs + v0), vs = v0'),
  capture(0.75, 3, 1, 'mixed', 1, 'veerapen-lowry-couturier-aquacultural', 'vs/(vs + v0), vs = 3 v0'),
  capture(0.3, 0.3, 1, 'ideal', 1, hazen, 'ideal basin: v/v0 where slower than v0'),
  capture(1 - (3 / 4) ** 3, 1, 1, 3, 1, hazen, 'three basins in series, v = v0'),
  capture(0.75, 1, 1, 'mixed', 2, hazen, 'two mixed basins, each with the whole flow, v = v0'),
  capture(0.6558314923, 2.7, 6, 'mixed', 1, quadrature, 'ratio 2.7, spread 6, mixed'),
  capture(0.7735273129, 1, 2.5, 'ideal', 1, quadrature, 'ratio 1, spread 2.5, ideal'),
  capture(0.9366065334, 1, 2.5, 50, 5, quadrature, 'ratio 1, spread 2.5, 50 cells, 5 in line'),
  {
    call: [
      'SETTLE.JAR',
      'metric',
      300,
      [
        [0.25, 0.1717619504112161],
        [0.5, 0.3065866508202378],
        [1.0, 0.49151566767434424],
        [2.0, 0.6905160428264477],
        [4.0, 0.8512375244819811],
        [8.0, 0.9457688478206389],
        [16.0, 0.9854583242237241],
        [32.0, 0.9971950452323223],
      ],
    ],
    expected: 2,
    tolerance: 1e-6,
    source: quadrature,
    place: 'jar settled with median 2 mm/s, spread 3, all settleable',
    known: 'computed',
  },
];
