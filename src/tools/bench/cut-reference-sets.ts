/**
 * Sets of patterns on which cut plans are measured: the cones, sleeves and sheets that a builder of settling drums meets.
 */
import { conePattern, type PatternRow } from '../../formulas/cone/cone-pattern';

export interface ReferenceSet {
  readonly name: string;
  readonly patterns: readonly PatternRow[];
  /** m */
  readonly sheetLength: number;
  readonly sheetWidth: number;
  readonly gap: number;
  /** Sectors of 100 to 140 degrees alone, which leave the least room above bounding boxes. */
  readonly blunt?: true;
}

const inch = 0.0254;
const degree = Math.PI / 180;
const feet4x8 = { sheetLength: 96 * inch, sheetWidth: 48 * inch, gap: 0 };
const feet4x10 = { sheetLength: 120 * inch, sheetWidth: 48 * inch, gap: 0 };
const metre1x2 = { sheetLength: 2, sheetWidth: 1, gap: 0 };
const metre125x25 = { sheetLength: 2.5, sheetWidth: 1.25, gap: 0 };

/** Some equal cones: diameters in m, wall angle in degrees from the horizontal, pieces a cone, lap in m. */
function cones(count: number, top: number, bottom: number, wall: number, pieces = 1, lap = 0): readonly PatternRow[] {
  const height = ((top - bottom) / 2) * Math.tan(wall * degree);
  const row = conePattern({ top, bottom, height, pieces, lap, thickness: 0, measured: 'middle', clearance: 0 });
  return Array.from({ length: count }, () => row);
}

function sleeves(count: number, diameter: number, height: number, pieces = 1, lap = 0): readonly PatternRow[] {
  const size = { top: diameter, bottom: diameter, height, pieces, lap };
  const row = conePattern({ ...size, thickness: 0, measured: 'middle', clearance: 0 });
  return Array.from({ length: count }, () => row);
}

/** The wall at which one of so many pieces has a sector angle in degrees. */
function wallOf(sector: number, pieces: number): number {
  return Math.acos((sector * pieces) / 360) / degree;
}

/** Sixty pieces of sixty sizes, by a rule that never changes. */
function sixty(): readonly PatternRow[] {
  return Array.from({ length: 30 }, (_, i) => {
    const top = 0.3 + 0.01 * ((i * 7) % 30);
    const wall = 45 + ((i * 11) % 20);
    return cones(1, top, 0.05 + 0.002 * (i % 9), wall, 2, 0.002 * (i % 8));
  }).flat();
}

const drum = 22.5 * inch;
const drain = 4 * inch;

export const referenceSets: readonly ReferenceSet[] = [
  { name: '60°, 6 cones in 3', patterns: cones(6, drum, drain, 60, 3), ...feet4x8 },
  { name: '60°, 10 small cones in 3', patterns: cones(10, 0.3, 0.05, 60, 3, 0.015), ...metre1x2 },
  { name: '90°, 5 cones in 2', patterns: cones(5, drum, drain, 60, 2), ...feet4x8 },
  { name: '90°, 8 cones in 2, lap', patterns: cones(8, 0.45, 0.075, 60, 2, 0.02), ...metre125x25 },
  { name: '108°, 6 cones in 2', patterns: cones(6, 0.4, 0.16, wallOf(108, 2), 2), ...metre1x2, blunt: true },
  { name: '108°, 4 cones in 2', patterns: cones(4, drum, drain, wallOf(108, 2), 2), ...feet4x8, blunt: true },
  { name: '120°, 8 cones in 1', patterns: cones(8, 0.3, 0.05, wallOf(120, 1)), ...metre1x2, blunt: true },
  { name: '127°, 3 drums in 2, lap', patterns: cones(3, drum, drain, 45, 2, 1 * inch), ...feet4x8, blunt: true },
  { name: '127°, 5 drums in 2', patterns: cones(5, drum, drain, 45, 2), ...feet4x10, blunt: true },
  { name: '127°, 12 small in 2', patterns: cones(12, 0.3, 0.04, 45, 2, 0.012), ...metre1x2, blunt: true },
  { name: '140°, 5 cones in 2', patterns: cones(5, 0.4, 0.05, wallOf(140, 2), 2), ...metre1x2, blunt: true },
  { name: '180°, 6 cones', patterns: cones(6, 0.4, 0.05, 60), ...metre1x2 },
  { name: '216°, 6 cones', patterns: cones(6, 0.25, 0.1, wallOf(216, 1)), ...metre1x2 },
  { name: '254.6°, 4 drums', patterns: cones(4, 0.5, 0.1, 45, 1, 0.02), ...metre125x25 },
  { name: '254.6°, 9 small', patterns: cones(9, 0.25, 0.05, 45), ...metre1x2 },
  {
    name: 'three unlike drums in 2, lap',
    patterns: [
      ...cones(1, drum, drain, 45, 2, 1 * inch),
      ...cones(1, 20.0625 * inch, 3 * inch, 47, 2, 1 * inch),
      ...cones(1, 18.25 * inch, 3 * inch, 50, 2, 1 * inch),
    ],
    ...feet4x8,
  },
  {
    name: 'drums in 1, 2 and 3',
    patterns: [...cones(2, drum, drain, 45), ...cones(2, drum, drain, 50, 2), ...cones(2, 0.4, 0.05, 60, 3)],
    ...feet4x10,
  },
  {
    name: 'cones and sleeves',
    patterns: [...cones(3, 0.5, 0.1, 45, 2, 0.02), ...sleeves(3, 0.1, 0.15, 1, 0.02), ...sleeves(2, 0.5, 0.2, 2, 0.02)],
    ...metre125x25,
  },
  { name: 'sleeves', patterns: sleeves(9, 0.3, 0.25, 2, 0.03), ...metre1x2 },
  {
    name: 'small in the hollow of large',
    patterns: [...cones(4, 0.45, 0.15, 45), ...cones(6, 0.2, 0.03, 60, 2)],
    ...metre1x2,
  },
  {
    name: 'gap 3 mm, 90° and 127°',
    patterns: [...cones(3, 0.5, 0.1, 60, 2), ...cones(3, 0.5, 0.1, 45, 2)],
    ...metre125x25,
    gap: 0.003,
  },
  { name: 'gap 10 mm, several sheets', patterns: cones(12, 0.5, 0.08, 50, 2, 0.02), ...metre1x2, gap: 0.01 },
  { name: 'many sheets of 254.6°', patterns: cones(14, 0.5, 0.1, 45), ...metre1x2 },
  { name: 'sixty mixed pieces', patterns: sixty(), ...metre125x25 },
];

/** Long orders, which a search of few steps finds hardest: rolls of 15 m, and more pieces than are searched one by one. */
export const longSets: readonly ReferenceSet[] = [
  { name: '120 of 90° on a roll', patterns: cones(60, 0.4, 0.08, 60, 2), sheetLength: 15, sheetWidth: 1.2, gap: 0 },
  {
    name: '120 of 127° on a roll, lap',
    patterns: cones(60, 0.45, 0.1, 45, 2, 0.02),
    ...{ sheetLength: 15, sheetWidth: 1.5, gap: 0.003 },
  },
  { name: '120 of three kinds on a roll', patterns: threeKinds(), sheetLength: 15, sheetWidth: 1.5, gap: 0 },
  { name: '120 of three kinds on sheets', patterns: threeKinds(), sheetLength: 2.44, sheetWidth: 1.22, gap: 0.005 },
  { name: '40 of 254.6° on a roll', patterns: cones(40, 0.4, 0.08, 45), sheetLength: 15, sheetWidth: 1, gap: 0 },
  { name: '60°, 10 drums in 3', patterns: cones(10, 0.55, 0.1, 60, 3), sheetLength: 2.5, sheetWidth: 1.25, gap: 0.004 },
];

function threeKinds(): readonly PatternRow[] {
  return [...cones(20, 0.5, 0.1, 45, 2), ...cones(20, 0.4, 0.08, 50, 2), ...cones(40, 0.3, 0.05, 60, 1)];
}
