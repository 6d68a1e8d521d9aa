/** Pieces that overlap on the rows of a sheet: rectangles, whose shared areas are sides multiplied. */
import { describe, expect, it } from 'vitest';
import { prepareJob } from '../../../src/formulas/cut/cut-job';
import type { Rows } from '../../../src/formulas/cut/cut-rows';
import { Overlaps } from '../../../src/formulas/cut/cut-squeeze-overlaps';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { TakenRows } from '../../../src/formulas/cut/taken-rows';
import { box } from './laid-shapes';

// A row is 1 cm high.
const job = prepareJob([box(0.4, 0.2), box(0.4, 0.2), box(0.3, 0.1)], { length: 2, width: 1.2, gap: 0 });
const rowsOf = (item: number) => job.shapeOf(item).at(0) as Rows;
const at = (item: number, x: number, row: number) => ({ item, rows: rowsOf(item), x, row });

/** Measured where they lie, the middle one last. */
function begin(budget = { spent: 0 }): Overlaps {
  const overlaps = new Overlaps(job, [at(0, 0, 0), at(1, 0.3, 5), at(2, 1.5, 100)], budget);
  overlaps.moveInto(2);
  return overlaps;
}

describe('overlaps', () => {
  it('are the areas that pairs share, of a piece and of all', () => {
    const overlaps = begin();
    // 0.1 m by 15 rows.
    expect([0, 1, 2].map((i) => overlaps.of(i))).toEqual([0.015, 0.015, 0].map((area) => expect.closeTo(area, 7)));
    expect(overlaps.sum()).toBeCloseTo(0.015, 7);
    expect(overlaps.overlapping()).toEqual([0, 1]);
  });

  it('follow a piece that is placed', () => {
    const overlaps = begin();
    overlaps.place(2, at(2, 0.35, 10));
    // With the first 0.05 m by 10 rows, with the second 0.3 m by 10 rows.
    expect(overlaps.of(2)).toBeCloseTo(0.005 + 0.03, 7);
    expect(overlaps.of(0)).toBeCloseTo(0.015 + 0.005, 7);
    expect(overlaps.sum()).toBeCloseTo(0.05, 7);
    overlaps.place(1, at(1, 1, 50));
    expect(overlaps.overlapping()).toEqual([0, 2]);
    expect(overlaps.poses()[1]).toEqual({ x: 1, y: expect.closeTo(0.5, 12), turn: 0 });
  });

  it('count the steps of measuring, more of a piece on more rows', () => {
    const budget = { spent: 0 };
    const overlaps = begin(budget);
    const spentOn = (i: number) => {
      const before = budget.spent;
      overlaps.place(i, overlaps.placed[i] as (typeof overlaps.placed)[number]);
      return budget.spent - before;
    };
    expect([spentOn(0), spentOn(2)]).toEqual([2 * (20 / 2 + 10), 2 * (10 / 2 + 10)]);
  });

  it('begin with the pieces moved into a shorter sheet, and none to its left', () => {
    const overlaps = begin();
    overlaps.moveInto(1.6);
    expect(overlaps.placed.map(({ x }) => x)).toEqual([0, 0.3, expect.closeTo(1.3, 12)]);
    overlaps.moveInto(0.2);
    expect(overlaps.placed.map(({ x }) => x)).toEqual([0, 0, 0]);
    expect(overlaps.of(1)).toBeCloseTo(0.4 * 0.15, 7);
  });

  it('are taken by their weights, of which the largest overlap gains one at a time', () => {
    const overlaps = begin();
    overlaps.place(2, at(2, 0.35, 10));
    /** The least overlap of the piece at its own place alone, whose rows are those of one other piece or of both. */
    const weighed = (i: number) => {
      const taken = new TakenRows(job.rowCount, 0.4);
      overlaps.takeOthers(i, taken);
      const { rows, row } = overlaps.placed[i] as (typeof overlaps.placed)[number];
      return taken.leastPlace(rows, rows.length, { from: row, to: row, step: 1 }, Infinity)?.overlap ?? 0;
    };
    // 0.1 m by 15 rows of the second, 0.05 m by 10 rows of the third, in steps of 0.4 m / 112.
    expect(weighed(0)).toBeCloseTo(0.1 * 15 + 0.05 * 10, 9);
    expect(overlaps.weighedOf(0) / job.rowHeight).toBeCloseTo(0.1 * 15 + 0.05 * 10, 6);
    overlaps.weigh();
    // The largest, of the second and the third, is 0.03 m2; the others are a half and a sixth of it.
    expect(overlaps.weighedOf(0) / job.rowHeight).toBeCloseTo(0.1 * 15 * 1.5 + 0.05 * 10 * (1 + 1 / 6), 6);
    // Where a place is looked for, weights are counted in 64ths.
    expect(weighed(0)).toBeCloseTo(0.1 * 15 * 1.5 + (0.05 * 10 * 75) / 64, 9);
    const apart = new Overlaps(job, [at(0, 0, 0), at(1, 1, 0)], { spent: 0 });
    apart.moveInto(2);
    apart.weigh();
    apart.place(1, at(1, 0.3, 5));
    const taken = new TakenRows(job.rowCount, 0.4);
    apart.takeOthers(0, taken);
    expect(taken.leastPlace(rowsOf(0), 0.4, { from: 0, to: 0, step: 1 }, Infinity)?.overlap).toBeCloseTo(0.1 * 15, 9);
  });

  it('let a piece be put anywhere on the sheet, its edges included', () => {
    const random = randomNumbers();
    const xs: number[] = [];
    const rows: number[] = [];
    for (let i = 0; i < 2000; i++) {
      const overlaps = new Overlaps(job, [at(0, 0.5, 7)], { spent: 0 });
      overlaps.putAnywhere(random, 1);
      xs.push(overlaps.placed[0]!.x);
      rows.push(overlaps.placed[0]!.row);
    }
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([expect.closeTo(0, 2), expect.closeTo(0.6, 2)]);
    expect([Math.min(...rows), Math.max(...rows)]).toEqual([0, 100]);
    const narrow = new Overlaps(job, [at(0, 0.5, 7)], { spent: 0 });
    narrow.putAnywhere(random, 0.1);
    expect(narrow.placed[0]?.x).toBe(0);
  });
});
