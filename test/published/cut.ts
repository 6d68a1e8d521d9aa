import type { PublishedRow } from './published-row';

/** The pattern row, in millimeters, of a sleeve whose blank is so long and so wide. */
function rectangleRow(length: number, width: number): readonly (number | string)[] {
  return [90, width, '', '', '', length, width, (length * width) / 1e6, 1, 0];
}

/** The pattern row, in inches, of the half disc that a full cone at 60 degrees unrolls to. */
function halfDiscRow(radius: number): readonly (number | string)[] {
  return [60, radius, 0, radius, 180, 2 * radius, radius, (Math.PI * radius * radius) / 2 / 144, 1, 0];
}

const hackmath = {
  source: 'hackmath-net-problem-6960',
  place: 'four squares of 300 mm from a plate of 0.7 m: 26.53 per cent is waste',
  known: 'read',
} as const;

const fourSquares = [rectangleRow(300, 300), rectangleRow(300, 300), rectangleRow(300, 300), rectangleRow(300, 300)];

/** Cut plans: what little of laying pieces out has a published answer. */
export const cutRows: readonly PublishedRow[] = [
  {
    ...hackmath,
    call: ['CUT.SHEETS', 'metric', fourSquares, 700, '0.7 m'],
    cell: [0, 3],
    expected: 1 - 0.265306,
    tolerance: 1e-6,
  },
  { ...hackmath, call: ['CUT.SHEETS', 'metric', fourSquares, 700, '0.7 m'], cell: [0, 0], expected: 1 },
  {
    ...hackmath,
    call: ['CUT.SHEETS', 'metric', fourSquares, 700, 700],
    cell: [0, 1],
    expected: 0.36,
    tolerance: 1e-12,
  },
  {
    call: ['CUT.SHEETS', 'US', [halfDiscRow(10)], 96, 48],
    cell: [0, 2],
    expected: 32,
    tolerance: 1e-12,
    source: 'trade-practice-4-8',
    place: 'sheet sizes',
    known: 'common practice',
  },
  {
    call: ['CUT.SHEETS', 'metric', [rectangleRow(1, 1)].slice(0, 1), 100, 50, 1],
    cell: [0, 4],
    expected: 2,
    tolerance: 1e-9,
    source: 'blank-1-mm-square',
    place: 'ends 2 mm from the edge',
    known: 'worked',
  },
  {
    call: ['CUT.PLAN', 'US', [halfDiscRow(24)], 48, 24],
    cell: [0, 3],
    expected: 24,
    tolerance: 1e-9,
    source: 'half-disc-smallest-rectangle',
    place: 'its center is in the middle of the long side, as every other place is off the sheet',
    known: 'worked',
  },
];
