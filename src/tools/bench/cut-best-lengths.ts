import type { CutSheets } from '../../formulas/cut/cut-plan';
import type { ReferenceSet } from './cut-reference-sets';

/**
 * The shortest length of sheet that any search has found for each set, m: the last sheet's length used and the whole
 * sheets before it, gaps at their ends left out. Searches of up to 64 times the usual effort, by several rules and from
 * several random numbers.
 */
export const bestLengths: Readonly<Record<string, number>> = {
  '60°, 6 cones in 3': 2.94391,
  '60°, 10 small cones in 3': 1.70157,
  '90°, 5 cones in 2': 2.93806,
  '90°, 8 cones in 2, lap': 2.90459,
  '108°, 6 cones in 2': 1.30913,
  '108°, 4 cones in 2': 1.66765,
  '120°, 8 cones in 1': 2.4125,
  '127°, 3 drums in 2, lap': 1.12215,
  '127°, 5 drums in 2': 1.73135,
  '127°, 12 small in 2': 1.4154,
  '140°, 5 cones in 2': 0.95322,
  '180°, 6 cones': 1.81626,
  '216°, 6 cones': 0.54595,
  '254.6°, 4 drums': 1.15423,
  '254.6°, 9 small': 0.77507,
  'three unlike drums in 2, lap': 0.93301,
  'drums in 1, 2 and 3': 1.87522,
  'cones and sleeves': 1.48467,
  sleeves: 2.75124,
  'small in the hollow of large': 1.43335,
  'gap 3 mm, 90° and 127°': 1.80469,
  'gap 10 mm, several sheets': 5.17918,
  'many sheets of 254.6°': 5.50306,
  'sixty mixed pieces': 8.53723,
  '120 of 90° on a roll': 13.90543,
  '120 of 127° on a roll, lap': 10.90003,
  '120 of three kinds on a roll': 11.53206,
  '120 of three kinds on sheets': 17.29304,
  '40 of 254.6° on a roll': 8.78949,
  '60°, 10 drums in 3': 4.41284,
};

/** How much longer a plan is than the best known one, as a share; negative where it is the new best. */
export function overBest({ name, sheetLength, gap }: ReferenceSet, { sheets, lengthUsed }: CutSheets): number {
  const best = bestLengths[name];
  if (best === undefined) throw new RangeError(`no best length is stored for ${name}`);
  return ((sheets - 1) * (sheetLength - 2 * gap) + lengthUsed) / best - 1;
}
