/** Boxes on sheets, held to a plain search of all corners where a box could lie. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layBoxes } from '../../../src/formulas/cut/cut-boxes';
import { type Job, prepareJob } from '../../../src/formulas/cut/cut-job';
import { isShorter, type Layout, lengthOf, momentOf, type Spot } from '../../../src/formulas/cut/cut-layout';
import { ordersOf } from '../../../src/formulas/cut/cut-search';
import type { Piece } from '../../../src/formulas/cut/piece';

const uncounted = () => ({ spent: 0 });
const endless = Number.POSITIVE_INFINITY;
const box = (length: number, width: number): Piece => ({ shape: 'rectangle', length, width, lap: 0 });

interface Box {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

const boxOf = ({ x, y, rows: { length, width } }: Spot): Box => ({ x, y, length, width });

/** Whether two boxes keep the gap along or across the sheet. */
function areApart(a: Box, b: Box, gap: number): boolean {
  const apart = Math.max(b.x - a.x - a.length, a.x - b.x - b.length, b.y - a.y - a.width, a.y - b.y - b.width);
  return apart >= gap - 1e-9;
}

/** Whether a box of a size has room beside others: if it has, then in a corner that they and the sheet's edges make. */
function hasRoom(others: readonly Box[], length: number, width: number, { sheet: { gap }, ...job }: Job): boolean {
  const xs = [0, ...others.map((one) => one.x + one.length + gap)];
  const ys = [0, ...others.map((one) => one.y + one.width + gap)];
  return xs.some((x) =>
    ys.some(
      (y) =>
        x + length <= job.length - 1e-9 &&
        y + width <= job.width - 1e-9 &&
        others.every((one) => areApart({ x, y, length, width }, one, gap)),
    ),
  );
}

/** That a layout keeps its gaps and the sheets, and opens no sheet while a box has room on one before. */
function expectGood(job: Job, layout: Layout): void {
  const sheets: Box[][] = [];
  for (const spot of layout.spots) {
    const one = boxOf(spot);
    expect([one.x, one.y].every((at) => at >= 0)).toBe(true);
    expect(one.x + one.length).toBeLessThan(job.length + 1e-9);
    expect(one.y + one.width).toBeLessThan(job.width + 1e-9);
    for (let before = 0; before < spot.sheet; before++)
      for (const { length, width } of job.shapeOf(spot.item).families.usual)
        expect(hasRoom(sheets[before] ?? [], length, width, job)).toBe(false);
    sheets[spot.sheet] ??= [];
    const on = sheets[spot.sheet]!;
    expect(on.every((other) => areApart(one, other, job.sheet.gap))).toBe(true);
    on.push(one);
  }
  expect(layout.spots.map(({ item }) => item).sort((a, b) => a - b)).toEqual([...job.pieces.keys()]);
  expect(layout.sheets).toBe(sheets.length);
  expect(layout.moment).toBeCloseTo(momentOf(layout.spots, job), 12);
}

describe('boxes', () => {
  const side = fc.double({ min: 0.05, max: 0.7, noNaN: true });
  const sector = fc.record({
    shape: fc.constant('sector' as const),
    innerRadius: fc.double({ min: 0, max: 0.1, noNaN: true }),
    outerRadius: fc.double({ min: 0.15, max: 0.4, noNaN: true }),
    angle: fc.double({ min: 0.5, max: 3, noNaN: true }),
    lap: fc.constant(0),
  });
  const pieces = fc.array(
    fc.oneof(
      fc.tuple(side, side).map(([a, b]) => box(a, b)),
      sector,
    ),
    {
      minLength: 1,
      maxLength: 14,
    },
  );

  it('keep their gaps and the sheets, and open no sheet while one before has room', () => {
    fc.assert(
      fc.property(pieces, fc.constantFrom(0, 0.02, 0.1), (all, gap) => {
        const job = prepareJob(all, { length: 1 + 2 * gap, width: 0.8 + 2 * gap, gap }, 6);
        const orders = ordersOf(job);
        const layout = layBoxes(job, orders, uncounted(), endless);
        expectGood(job, layout);
        // The best of all orders is no longer than that of any.
        for (const order of orders)
          expect(isShorter(layBoxes(job, [order], uncounted(), endless), layout, job)).toBe(false);
      }),
      { numRuns: 30, seed: 21 },
    );
  });

  it('fill a sheet to the edge where they just go into it, with their gaps', () => {
    for (const [count, length, width, gap] of [
      [6, 1 / 3, 0.5, 0],
      [4, 0.45, 0.45, 0.1],
      [10, 0.2, 0.5, 0],
      [7, 1 / 7, 1, 0],
    ] as const) {
      const sheet = { length: 1 + 2 * gap, width: 1 + 2 * gap, gap };
      const alike = (many: number, wider = 0) =>
        prepareJob(
          Array.from({ length: many }, () => box(length + wider, width)),
          sheet,
        );
      const sheetsOf = (job: Job) => layBoxes(job, ordersOf(job), uncounted(), endless);
      expect(sheetsOf(alike(count))).toMatchObject({ sheets: 1, used: expect.closeTo(1, 9) });
      expect(sheetsOf(alike(count + 1)).sheets).toBe(2);
      if (width !== length) continue;
      expect(sheetsOf(alike(count, 1e-4)).sheets).toBeGreaterThan(1);
    }
  });

  it('lie farther left than by the closest fit alone where that is shorter', () => {
    // A long thin box and a square: side by side across, not one behind the other.
    const job = prepareJob([box(0.9, 0.2), box(0.5, 0.5)], { length: 2, width: 0.75, gap: 0 });
    expect(lengthOf(layBoxes(job, ordersOf(job), uncounted(), endless), job)).toBeCloseTo(0.9, 9);
  });

  it('are laid even where no steps are left, on the last sheet alone', () => {
    const many = Array.from({ length: 30 }, (_, i) => box(0.2 + (i % 7) * 0.05, 0.2 + (i % 5) * 0.06));
    const job = prepareJob(many, { length: 1, width: 1, gap: 0.01 });
    const orders = ordersOf(job);
    const [all, none] = [{ spent: 0 }, { spent: 1 }];
    const layout = layBoxes(job, orders, all, endless);
    const hasty = layBoxes(job, orders, none, 0);
    expect(hasty.spots).toHaveLength(30);
    expect(isShorter(hasty, layout, job)).toBe(false);
    expect(none.spent).toBeLessThan(all.spent / 3);
    // A sheet that is left is never filled on.
    const sheets = hasty.spots.map(({ sheet }) => sheet);
    expect(sheets).toEqual([...sheets].sort((a, b) => a - b));
    // With steps for the first layout alone the others are not begun.
    const first = { spent: 0 };
    layBoxes(job, orders, first, 1);
    expect(first.spent).toBeLessThan(all.spent / 2);
  });

  it('need an order', () => {
    const job = prepareJob([box(0.1, 0.1)], { length: 1, width: 1, gap: 0 });
    expect(() => layBoxes(job, [], uncounted(), endless)).toThrow('no order');
  });
});
