/**
 * How much longer the plans are, with a twentieth of the usual steps, than the shortest that any of our long searches has
 * found (no published source). It is not wrong to find other plans, but every change of the search is noticed here: one
 * that is worth it by `npm run bench -- cut` brings its new shares.
 */
import { describe, expect, it } from 'vitest';
import { cutSheets } from '../../../src/formulas/cut/cut-plan';
import { overBest } from '../../../src/tools/bench/cut-best-lengths';
import { longSets, referenceSets } from '../../../src/tools/bench/cut-reference-sets';

const effort = 0.05;

/** Sets that take few steps, of each kind of search: one sheet or many, few pieces or many, alike or not, with a gap. */
const longerPerCent: Readonly<Record<string, number>> = {
  '90°, 5 cones in 2': 1.7128,
  '90°, 8 cones in 2, lap': 3.131,
  '108°, 6 cones in 2': 10.6146,
  '127°, 3 drums in 2, lap': 4.3835,
  '140°, 5 cones in 2': 5.337,
  '216°, 6 cones': 10.0884,
  'drums in 1, 2 and 3': 6.6924,
  'cones and sleeves': 3.1188,
  'small in the hollow of large': 6.3669,
  'gap 3 mm, 90° and 127°': 6.5646,
  'many sheets of 254.6°': 0.8353,
  'gap 10 mm, several sheets': 0.769,
  'sixty mixed pieces': 25.225,
  '60°, 10 drums in 3': 23.5349,
  '120 of 90° on a roll': 4.3489,
  '120 of 127° on a roll, lap': 23.472,
  '120 of three kinds on sheets': 8.8115,
};

/** With half of the steps: those of many sheets then fill one by more than one start, and others begin by chance too. */
const longerByHalf: Readonly<Record<string, number>> = {
  'sixty mixed pieces': 1.5095,
  '120 of three kinds on sheets': 1.8292,
  'small in the hollow of large': 4.8214,
  'cones and sleeves': 0.5141,
  '40 of 254.6° on a roll': 0.1231,
};

describe('a short search', () => {
  const sets = [...referenceSets, ...longSets].filter(({ name }) => name in longerPerCent);
  it.each(sets.map((set) => [set.name, set] as const))('finds the plan that it found: %s', (name, set) => {
    const found = 100 * overBest(set, cutSheets(set.patterns, set, { effort }));
    expect(found).toBeCloseTo(longerPerCent[name] ?? 0, 3);
  });

  it.each(Object.entries(longerByHalf))('of half the steps finds the plan that it found: %s', (name, longer) => {
    const [set] = [...referenceSets, ...longSets].filter((one) => one.name === name);
    const found = 100 * overBest(set!, cutSheets(set!.patterns, set!, { effort: 0.5 }));
    expect(found).toBeCloseTo(longer, 3);
  });
});
