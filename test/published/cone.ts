import type { PublishedRow } from './published-row';

type Check = Omit<PublishedRow, 'source' | 'place' | 'known'>;
type Known = PublishedRow['known'];

function from(
  source: PublishedRow['source'],
  place: string,
  known: Known,
  ...checks: readonly Check[]
): readonly PublishedRow[] {
  return checks.map((check) => ({ source, place, known, ...check }));
}

/** School books take 3.14 or 22/7 for pi, which is up to 0.05 per cent away. */
const schoolPi = 6e-4;
const squareInchesAFoot = 144;
const litersAGallon = 3.785411784;

/** Unrolled cones: radii and angles of sectors, slants, areas. */
export const conePatternRows: readonly PublishedRow[] = [
  ...from(
    'analyzemath-com-how-construct',
    'example r = 10 cm, R = 20 cm, h = 25 cm: H = x = sqrt(725) cm, y = 2 sqrt(725) cm, 133.7 degrees',
    'read',
    { call: ['CONE.PATTERN', 'US', '40 cm', '20 cm', '25 cm'], cell: [0, 4], expected: 133.7, absolute: 0.05 },
    {
      call: ['CONE.PATTERN', 'metric', '40 cm', '20 cm', '25 cm'],
      cell: [0, 1],
      expected: 269.2582404,
      tolerance: 1e-9,
    },
    {
      call: ['CONE.PATTERN', 'metric', '40 cm', '20 cm', '25 cm'],
      cell: [0, 2],
      expected: 269.2582404,
      tolerance: 1e-9,
    },
    {
      call: ['CONE.PATTERN', 'metric', '40 cm', '20 cm', '25 cm'],
      cell: [0, 3],
      expected: 538.5164807,
      tolerance: 1e-9,
    },
  ),
  ...from(
    'ceemrr-com-geometry-2-net',
    'duct piece between 5 and 8 inches across, 4 inches apart: radii 7.12 and 11.39 inches, 126.4 degrees',
    'read',
    { call: ['CONE.PATTERN', 'US', 8, 5, 4], cell: [0, 2], expected: 7.12, absolute: 0.005 },
    { call: ['CONE.PATTERN', 'US', 8, 5, 4], cell: [0, 3], expected: 11.39, absolute: 0.005 },
    { call: ['CONE.PATTERN', 'metric', '8 in', '5 in', '4 in'], cell: [0, 4], expected: 126.4, absolute: 0.05 },
  ),
  ...from(
    'ceemrr-com-geometry-2',
    'example 2, base 10 inches across and altitude 12 inches: 138.5 degrees, 204.2 square inches',
    'read',
    { call: ['CONE.PATTERN', 'metric', '10 in', 0, '12 in'], cell: [0, 4], expected: 138.5, absolute: 0.05 },
    { call: ['CONE.PATTERN', 'US', 10, 0, 12], cell: [0, 7], expected: 204.2 / squareInchesAFoot, tolerance: 3e-4 },
    { call: ['CONE.PATTERN', 'US', 10, 0, 12], cell: [0, 1], expected: 13, tolerance: 1e-12 },
  ),
  ...from(
    'anvilfire-com-21st-century',
    'a cone with a 90 degree point: layout angle .7071 x 360 = 254.6 degrees',
    'read',
    { call: ['CONE.PATTERN', 'metric', 200, 0, 100], cell: [0, 4], expected: 254.6, absolute: 0.05 },
    { call: ['CONE.PATTERN', 'US', 22.5, 4, 9.25], cell: [0, 4], expected: 254.6, absolute: 0.05 },
  ),
  ...from(
    'builder-mechanic-chestofbooks-com',
    'slant height six times the radius of the base: the sector is 60 degrees',
    'read',
    { call: ['CONE.PATTERN', 'US', 2, 0, Math.sqrt(35)], cell: [0, 4], expected: 60, tolerance: 1e-12 },
    {
      call: ['CONE.PATTERN', 'metric', '2 ft', 0, `${Math.sqrt(35)} ft`, 4],
      cell: [0, 4],
      expected: 15,
      tolerance: 1e-9,
    },
  ),
  ...from(
    'shaalaa-com-question-bank-volume',
    'sector of 216 degrees and radius 21 cm: cone of radius 12.6 cm, height 16.8 cm, 2794.18 cm3',
    'read',
    { call: ['CONE.PATTERN', 'US', '25.2 cm', 0, '16.8 cm'], cell: [0, 4], expected: 216, tolerance: 1e-12 },
    { call: ['CONE.PATTERN', 'metric', '25.2 cm', 0, '16.8 cm'], cell: [0, 3], expected: 210, tolerance: 1e-12 },
    { call: ['CONE.VOLUME', 'US', '25.2 cm', 0, '16.8 cm'], expected: 2.79418 / litersAGallon, tolerance: schoolPi },
  ),
  ...from(
    'tutorteddy-com-mensuration-19',
    'sector of 288 degrees and radius 15 cm: cone of radius 12 cm, height 9 cm, 1357 5/7 cm3',
    'read',
    { call: ['CONE.PATTERN', 'US', '24 cm', 0, '9 cm'], cell: [0, 4], expected: 288, tolerance: 1e-12 },
    { call: ['CONE.VOLUME', 'metric', '24 cm', 0, '9 cm'], expected: 1.357714, tolerance: schoolPi },
  ),
  ...from(
    'ncert-mathematics-class-10',
    'question 2: circumferences 18 and 6 cm, slant 4 cm, curved surface 48 cm2',
    'read',
    {
      call: ['CONE.PATTERN', 'metric', 180 / Math.PI, 60 / Math.PI, Math.sqrt(1600 - (60 / Math.PI) ** 2)],
      cell: [0, 7],
      expected: 0.0048,
      tolerance: 1e-12,
    },
  ),
  ...from(
    'pseb-mathematics-class-10',
    'question 3: fez of radii 10 and 4 cm, slant 15 cm, curved surface 660 cm2 with 22/7',
    'read',
    {
      call: ['CONE.PATTERN', 'US', '20 cm', '8 cm', `${Math.sqrt(189)} cm`],
      cell: [0, 7],
      expected: 0.066 / 0.3048 ** 2,
      tolerance: schoolPi,
    },
  ),
  ...from(
    'esaral-com-frustum-cone',
    'ends 28 and 4 cm across: 684 pi cm3 and 240 pi cm2',
    'read',
    {
      call: ['CONE.PATTERN', 'metric', '28 cm', '4 cm', '9 cm'],
      cell: [0, 7],
      expected: 0.024 * Math.PI,
      tolerance: 1e-12,
    },
    {
      call: ['CONE.VOLUME', 'US', '28 cm', '4 cm', '9 cm'],
      expected: (0.684 * Math.PI) / litersAGallon,
      tolerance: 1e-12,
    },
  ),
  ...from(
    'cbse-sample-paper-2019',
    'question 29: bucket of height 24 cm and radii 15 and 5 cm, slant 26 cm, 1634.3 cm2 with 22/7',
    'read',
    { call: ['CONE.PATTERN', 'metric', '30 cm', '10 cm', '24 cm'], cell: [0, 1], expected: 260, tolerance: 1e-12 },
    {
      call: ['CONE.PATTERN', 'metric', '30 cm', '10 cm', '24 cm'],
      cell: [0, 7],
      expected: 0.16343,
      tolerance: schoolPi,
    },
  ),
  ...from(
    'longfield-sheet-metal-drafting',
    'page 82: lateral area of a cone 5 inches across, slant 12 inches, is 15.7080 x 12/2 square inches',
    'read',
    {
      call: ['CONE.PATTERN', 'US', 5, 0, Math.sqrt(144 - 6.25)],
      cell: [0, 7],
      expected: (15.708 * 6) / squareInchesAFoot,
      tolerance: 1e-5,
    },
  ),
];

/** Volumes, angles, and what is bought and marked for a cone. */
export const coneShopRows: readonly PublishedRow[] = [
  ...from(
    'ncert-mathematics-class-10',
    'question 4: container of height 16 cm and radii 8 and 20 cm holds 10.44992 liters with 3.14',
    'read',
    { call: ['CONE.VOLUME', 'US', '40 cm', '16 cm', '16 cm'], expected: 10.44992 / litersAGallon, tolerance: schoolPi },
  ),
  ...from(
    'rs-aggarwal-mathematics-class',
    'questions 5, 9, 3: buckets of 8.164, 25.344 and 28.49 liters with 3.14 or 22/7',
    'read',
    { call: ['CONE.VOLUME', 'metric', '30 cm', '10 cm', '24 cm'], expected: 8.164, tolerance: schoolPi },
    { call: ['CONE.VOLUME', 'metric', '64 cm', '16 cm', '18 cm'], expected: 25.344, tolerance: schoolPi },
    { call: ['CONE.VOLUME', 'metric', '56 cm', '42 cm', '15 cm'], expected: 28.49, tolerance: schoolPi },
  ),
  ...from(
    'great-lakes-upper-mississippi',
    'hopper walls at least 1.7 vertical to 1 horizontal, 59.5 degrees',
    'read',
    { call: ['CONE.ANGLE', 'metric', '2 ft', 0, '1.7 ft'], expected: 59.5, absolute: 0.05 },
    { call: ['CONE.HEIGHT', 'US', '2 m', 0, 59.5], expected: 1.7 / 0.0254, tolerance: 2e-3 },
  ),
  ...from(
    'shaalaa-com-question-bank',
    'sector of 120 degrees and radius 15 cm: cone of radius 5 cm and height 14.142 cm, so cos(wall angle) = 1/3',
    'read',
    {
      call: ['CONE.ANGLE', 'US', '10 cm', 0, '14.142 cm'],
      expected: (Math.acos(1 / 3) * 180) / Math.PI,
      tolerance: 1e-5,
    },
  ),
  ...from(
    'goprep-co-surface-areas',
    'question 22: cylinder 8 cm high and of radius 6 cm less a cone of the same height and base: 602.88 cm3 with 3.14',
    'read',
    { call: ['CONE.BACKFILL', 'metric', '12 cm', '12 cm', 0, '8 cm'], expected: 0.60288, tolerance: schoolPi },
    {
      call: ['CONE.BACKFILL', 'US', '12 cm', '12 cm', 0, '8 cm'],
      expected: 0.00060288 / 0.3048 ** 3,
      tolerance: schoolPi,
    },
  ),
  ...from(
    'perlite-concrete-transit-mix',
    'cement for a cubic meter at 1:4, 1:5, 1:6, 1:8: 376, 301, 252, 188 kg',
    'read',
    { call: ['CONE.MIX', 'metric', 1000, 4, '0 %'], cell: [0, 1], expected: 376, tolerance: 5e-3 },
    { call: ['CONE.MIX', 'metric', '1 m3', 5, '0 %'], cell: [0, 1], expected: 301, tolerance: 5e-3 },
    { call: ['CONE.MIX', 'metric', 1000, 6, '0 %'], cell: [0, 1], expected: 252, tolerance: 5e-3 },
    { call: ['CONE.MIX', 'metric', 1000, 8, '0 %'], cell: [0, 1], expected: 188, tolerance: 5e-3 },
  ),
  ...from(
    'perlite-concrete-mix-designs',
    '27 ft3 of perlite and 6.75, 5.40, 4.50, 3.38 bags of 94 lb at 1:4, 1:5, 1:6, 1:8',
    'read',
    { call: ['CONE.MIX', 'US', '1 yd3', 4, '0 %'], cell: [0, 0], expected: 27, tolerance: 1e-12 },
    { call: ['CONE.MIX', 'US', '1 yd3', 4, '0 %'], cell: [0, 1], expected: 6.75 * 94, tolerance: 1e-9 },
    { call: ['CONE.MIX', 'US', '1 yd3', 6, '0 %'], cell: [0, 1], expected: 4.5 * 94, tolerance: 1e-9 },
    { call: ['CONE.MIX', 'US', '1 yd3', 8, '0 %'], cell: [0, 1], expected: 3.38 * 94, tolerance: 2e-3 },
  ),
  ...from(
    'fence-post-problem-timberonline',
    'a run of 30 ft with posts 6 ft apart and one at each end has 6 posts',
    'read',
    { call: ['CONE.RIVETS', 'US', '30 ft', '6 ft', '0 in'], expected: 6 },
    { call: ['CONE.RIVETS', 'metric', '36 ft', '6 ft', '3 ft'], expected: 6 },
  ),
  ...from(
    'ptolemy-almagest-book-i',
    'circle 120 across: the chord of 112 degrees is 99;29,5, of 60 degrees 60, of 120 degrees 103;55,23',
    'read',
    ...(
      [
        [112, 99 + 29 / 60 + 5 / 3600],
        [60, 60],
        [120, 103 + 55 / 60 + 23 / 3600],
      ] as const
    ).map(
      ([degrees, chord]): Check => ({
        // The step is the whole sector, so that the first distance to check comes after its two edges.
        call: ['CONE.MARKS', 'metric', [sectorRow(degrees, 60)], degrees],
        cell: [2, 6],
        expected: chord,
        absolute: 1 / 3600,
      }),
    ),
  ),
];

/** The pattern row, in millimeters, of a full cone that is a sector of so many degrees, less than 180. */
function sectorRow(degrees: number, radius: number): readonly (number | string)[] {
  const wall = (Math.acos(degrees / 360) * 180) / Math.PI;
  const length = 2 * radius * Math.sin((degrees * Math.PI) / 360);
  const area = (Math.PI * radius * radius * degrees) / 360 / 1e6;
  return [wall, radius, 0, radius, degrees, length, radius, area, 1, 0];
}
