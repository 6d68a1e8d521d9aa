import type { Columns } from './argument';

/** The ten columns of a pattern row, which CONE.PATTERN gives and CUT, CONE.MARKS and the drawings read. */
export const patternColumns = {
  wallAngle: { kind: 'angle' },
  slant: { kind: 'dimension' },
  innerRadius: { kind: 'dimension', blank: true },
  outerRadius: { kind: 'dimension', blank: true },
  sectorAngle: { kind: 'angle', blank: true },
  blankLength: { kind: 'dimension' },
  blankWidth: { kind: 'dimension' },
  area: { kind: 'area' },
  pieces: { kind: 'count', atLeast: 1, whole: true },
  lap: { kind: 'dimension', atLeast: 0 },
} as const satisfies Columns;

/** The six columns of a plan row, which CUT.PLAN gives and its drawing reads. */
export const planColumns = {
  pattern: { kind: 'count', atLeast: 1, whole: true, heading: 'pattern row' },
  piece: { kind: 'count', atLeast: 1, whole: true },
  sheet: { kind: 'count', atLeast: 1, whole: true },
  x: { kind: 'dimension' },
  y: { kind: 'dimension' },
  direction: { kind: 'angle' },
} as const satisfies Columns;
