/** The overlap of a sliding piece: held to the sum over all pairs of stretches, each by plain minimum and maximum. */
import { describe, expect, it } from 'vitest';
import type { Rows } from '../../../src/formulas/cut/cut-rows';
import { type Grown, grownBy } from '../../../src/formulas/cut/cut-sheet';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { TakenRows } from '../../../src/formulas/cut/taken-rows';
import { box, pieceByChance, rowsOf } from './laid-shapes';

const height = 0.05;
const rowCount = 20;
const length = 1.6;
/** The length is counted in 112 steps. */
const step = length / 112;
const steps = (x: number) => Math.round(x / step);

interface Taken {
  readonly grown: Grown;
  readonly bottom: number;
  readonly x: number;
  readonly weight: number;
}

const grownOf = (rows: Rows, gap: number) => grownBy(rows, gap, height, rowCount, { spent: 0 }, true);

/** The weighted overlap of a piece so many steps from the left, in m. */
function overlapAt(all: readonly Taken[], rows: Rows, row: number, at: number): number {
  let sum = 0;
  for (const { grown, bottom, x, weight } of all)
    for (let i = 0; i < rows.count; i++) {
      const j = row + i - bottom + grown.below;
      for (let s = rows.starts[i]!; s < rows.starts[i + 1]!; s += 2)
        for (let t = grown.starts[j] ?? 0; t < (grown.starts[j + 1] ?? 0); t += 2) {
          const left = Math.max(at + steps(rows.stretches[s]!), 0, steps(x + grown.stretches[t]!));
          const right = Math.min(at + steps(rows.stretches[s + 1]!), 112, steps(x + grown.stretches[t + 1]!));
          sum += weight * Math.max(0, right - left) * step;
        }
    }
  return sum;
}

const everyRow = { from: 0, to: rowCount, step: 1 };

describe('the place of the least overlap', () => {
  it.each([0, 0.03, 0.2])('is the least of all places, of equal ones the first, with a gap of %d m', (gap) => {
    const random = randomNumbers();
    for (let trial = 0; trial < 40; trial++) {
      const byChance = () => rowsOf(pieceByChance(random), 2 * Math.PI * random(), height, true);
      const taken = new TakenRows(rowCount, length);
      const all = Array.from({ length: 6 }, (): Taken => {
        const rows = byChance();
        const bottom = Math.floor(random() * (rowCount - rows.count + 1));
        const x = random() * (length - rows.length);
        // Weights are counted in 64ths.
        return { grown: grownOf(rows, gap), bottom, x, weight: 1 + Math.floor(128 * random()) / 64 };
      });
      for (const { grown, bottom, x, weight } of all) taken.take(grown, bottom, x, weight);
      const rows = byChance();
      const within = 1.2 + 0.4 * random();
      let least = { row: -1, x: -1, overlap: Infinity };
      for (let row = 0; row + rows.count <= rowCount; row++)
        for (let at = 0; at <= Math.floor((within - rows.length) / step); at++) {
          const overlap = overlapAt(all, rows, row, at);
          if (overlap < least.overlap - 1e-6) least = { row, x: at * step, overlap };
        }
      const found = taken.leastPlace(rows, within, everyRow, Infinity);
      expect(found!.overlap).toBeCloseTo(least.overlap, 9);
      expect(overlapAt(all, rows, found!.row, Math.round(found!.x / step))).toBeCloseTo(least.overlap, 9);
      expect([found!.row, found!.x]).toEqual([least.row, expect.closeTo(least.x, 9)]);
      // No place below its own overlap, and the same one below a little more.
      expect(taken.leastPlace(rows, within, everyRow, found!.overlap)).toBeUndefined();
      expect(taken.leastPlace(rows, within, everyRow, found!.overlap + step / 64)).toEqual(found);
    }
  });

  const piece = rowsOf(box(0.4, 0.25), 0, height, true);
  const sheet = () => new TakenRows(rowCount, length);

  it('is in the corner of an empty sheet, and nowhere on one that is shorter than the piece', () => {
    expect(sheet().leastPlace(piece, length, everyRow, Infinity)).toEqual({ row: 0, x: 0, overlap: 0 });
    expect(sheet().leastPlace(piece, 0.39, everyRow, Infinity)).toBeUndefined();
    expect(sheet().leastPlace(piece, 0.4, everyRow, Infinity)).toBeDefined();
  });

  it('is on one of the rows tried, which end where the piece would be over the edge', () => {
    const taken = sheet();
    expect(taken.leastPlace(piece, length, { from: 7, to: 9, step: 1 }, Infinity)?.row).toBe(7);
    expect(taken.leastPlace(piece, length, { from: -3, to: 9, step: 1 }, Infinity)?.row).toBe(0);
    expect(taken.leastPlace(piece, length, { from: rowCount - piece.count, to: 99, step: 1 }, 1)?.row).toBe(15);
    expect(taken.leastPlace(piece, length, { from: rowCount - piece.count + 1, to: 99, step: 1 }, 1)).toBeUndefined();
    // All of the sheet but its rows 7 to 11.
    taken.clear();
    taken.take(grownOf(rowsOf(box(length, 7 * height), 0, height, true), 0), 0, 0, 1);
    taken.take(grownOf(rowsOf(box(length, 8 * height), 0, height, true), 0), 12, 0, 1);
    expect(taken.leastPlace(piece, length, { from: 0, to: 19, step: 1 }, Infinity)).toMatchObject({
      row: 7,
      overlap: 0,
    });
    expect(taken.leastPlace(piece, length, { from: 0, to: 19, step: 2 }, Infinity)).toMatchObject({
      row: 6,
      overlap: expect.closeTo(28 * step, 9),
    });
  });

  it('overlaps the lighter of two pieces where there is no room', () => {
    const taken = sheet();
    const all = rowsOf(box(0.8, 1), 0, height, true);
    taken.take(grownOf(all, 0), 0, 0, 3);
    taken.take(grownOf(all, 0), 0, 0.8, 2);
    const found = taken.leastPlace(piece, length, everyRow, Infinity);
    expect(found).toEqual({
      row: 0,
      x: expect.closeTo(0.8, 9),
      overlap: expect.closeTo(2 * 28 * step * piece.count, 9),
    });
    taken.clear();
    expect(taken.leastPlace(piece, length, everyRow, Infinity)).toEqual({ row: 0, x: 0, overlap: 0 });
  });

  it('is free of what is taken off the sheet', () => {
    const column = grownOf(rowsOf(box(0.1, 1), 0, height, true), 0);
    const low = new TakenRows(rowCount, length);
    low.take(column, -10, 0, 1);
    low.take(column, 10, 0.8, 1);
    const half = rowsOf(box(0.8, 0.5), 0, height, true);
    // The lower half is taken on the left, the upper half on the right.
    expect(low.leastPlace(half, length, { from: 0, to: 0, step: 1 }, Infinity)?.x).toBeCloseTo(0.1, 9);
    expect(low.leastPlace(half, length, { from: 10, to: 10, step: 1 }, Infinity)).toMatchObject({ x: 0, overlap: 0 });
  });

  it('is free of what is taken past the end of the sheet', () => {
    const taken = sheet();
    taken.take(grownOf(piece, 0), 0, length + 0.2, 1);
    for (let row = 0; row + piece.count <= rowCount; row++) {
      const tried = { from: row, to: row, step: 1 };
      expect(taken.leastPlace(piece, length, tried, Infinity)).toEqual({ row, x: 0, overlap: 0 });
    }
  });

  it('counts the sums that it looks at', () => {
    // All sums of 20 rows, and of each of the 16 rows on which the piece fits the few that rule out what is no better.
    const [empty, full] = [sheet(), sheet()];
    full.take(grownOf(rowsOf(box(length, 1), 0, height, true), 0), 0, 0, 1);
    for (const taken of [empty, full]) taken.leastPlace(piece, length, everyRow, Infinity);
    const summed = (20 * 114) / 4 + 16 * 10;
    // The first eight places share nothing, and the first one of them overlaps nothing: five rows each, and no more.
    expect(empty.work).toBe(summed + 2 * piece.count);
    // Where all is taken, each eight of the 85 places of a row are ruled out by one row of the piece or more.
    expect(full.work).toBeGreaterThan(summed + 16 * 11 - 1);
  });
});
