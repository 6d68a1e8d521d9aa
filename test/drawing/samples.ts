import { conePattern, type PatternRow } from '../../src/formulas/cone/cone-pattern';
import { readProfile } from '../../src/units/profile';

export const inch = 0.0254;
export const us = readProfile('US');
export const metric = readProfile('metric');

/** A pattern of the mid-plane itself, lengths in m. */
export function patternOf(top: number, bottom: number, height: number, pieces = 1, lap = 0): PatternRow {
  return conePattern({ top, bottom, height, pieces, lap, thickness: 0, measured: 'middle', clearance: 0 });
}

/** 22.5 in wide, 4 in below, walls at 45 degrees. */
export const drumCone = (pieces = 1, lap = 0) => patternOf(22.5 * inch, 4 * inch, 9.25 * inch, pieces, lap);
