/** What two pieces share on rows: held to rectangles, and to what a polygon library says of pieces on fine rows. */
import { describe, expect, it } from 'vitest';
import { grownBy } from '../../../src/formulas/cut/cut-sheet';
import { type OnRows, sharedLength } from '../../../src/formulas/cut/overlap-area';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { box, pairByChance, rowsOf, sharedArea } from './laid-shapes';

const shared = (one: OnRows, other: OnRows, height: number, gap = 0) =>
  height * sharedLength(one, other, grownBy(other.rows, gap, height, 10_000, { spent: 0 }, true));

describe('the area that two pieces share', () => {
  it('is that of two rectangles, less with each row and each millimeter apart', () => {
    const rows = rowsOf(box(0.5, 0.4), 0, 0.1, true);
    const at = (row: number, x: number): OnRows => ({ rows, row, x });
    expect(shared(at(2, 0.3), at(2, 0.3), 0.1)).toBeCloseTo(0.2, 8);
    expect(shared(at(2, 0.3), at(3, 0.6), 0.1)).toBeCloseTo(0.2 * 0.3, 8);
    expect(shared(at(3, 0.6), at(2, 0.3), 0.1)).toBeCloseTo(0.2 * 0.3, 8);
    expect(shared(at(2, 0.3), at(6, 0.3), 0.1)).toBe(0);
    expect(shared(at(6, 0.3), at(2, 0.3), 0.1)).toBe(0);
    expect(shared(at(2, 0.3), at(2, 0.8), 0.1)).toBe(0);
    expect(shared(at(2, 0.8), at(2, 0.3), 0.1)).toBe(0);
  });

  it('counts the gap round the other piece', () => {
    const rows = rowsOf(box(0.5, 0.4), 0, 0.1, true);
    const at = (row: number, x: number): OnRows => ({ rows, row, x });
    expect(shared(at(0, 0), at(0, 0.52), 0.1, 0.03)).toBeCloseTo(0.4 * 0.01, 8);
    expect(shared(at(0, 0), at(0, 0.53), 0.1, 0.03)).toBe(0);
    // Across the rows the gap counts as whole ones.
    expect(shared(at(0, 0), at(4, 0), 0.1, 0.03)).toBeCloseTo(0.1 * 0.5, 8);
    expect(shared(at(0, 0), at(5, 0), 0.1, 0.03)).toBe(0);
  });

  it('is on fine rows what the polygon library finds, for pieces of every kind', () => {
    const random = randomNumbers();
    const height = 0.0005;
    let overlapping = 0;
    for (let trial = 0; trial < 40; trial++) {
      const pair = pairByChance(random);
      const [one, other] = pair.map(({ piece, pose }): OnRows => {
        const rows = rowsOf(piece, pose.turn, height, true);
        return { rows, row: Math.round((pose.y - rows.originY) / height), x: pose.x - rows.originX };
      });
      const expected = sharedArea(pair) / 1e6;
      if (expected > 1e-4) overlapping++;
      // Half a row up or down along the border of what they share, which is at most two of such pieces long.
      expect(Math.abs(shared(one!, other!, height) - expected)).toBeLessThan(4 * height);
    }
    expect(overlapping).toBeGreaterThan(10);
  });
});
