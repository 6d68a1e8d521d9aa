/** Layouts of pieces laid one after another, each place held to a plain search of all rows and turns. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Job, prepareJob } from '../../../src/formulas/cut/cut-job';
import {
  fillSheet,
  isShorter,
  type Layout,
  lay,
  layoutOf,
  lengthOf,
  momentOf,
  type Recipe,
  type Rule,
  type Spot,
} from '../../../src/formulas/cut/cut-layout';
import { laidNear } from '../../../src/formulas/cut/cut-near';
import type { Rows } from '../../../src/formulas/cut/cut-rows';
import type { Sheet } from '../../../src/formulas/cut/cut-sheet';
import type { Piece } from '../../../src/formulas/cut/piece';
import { badSpots, PlainSheet } from './plain-sheet';

const rowCount = 12;
const rules: readonly Rule[] = ['weight', 'right', 'middle', 'left'];
const endless = () => ({ length: Number.POSITIVE_INFINITY, budget: { spent: 0 }, mostSteps: Number.POSITIVE_INFINITY });

const piece = fc.oneof(
  fc.record({
    shape: fc.constant('rectangle' as const),
    length: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    width: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
    lap: fc.constant(0),
  }),
  fc.record({
    shape: fc.constant('sector' as const),
    innerRadius: fc.double({ min: 0, max: 0.2, noNaN: true }),
    outerRadius: fc.double({ min: 0.25, max: 0.4, noNaN: true }),
    angle: fc.double({ min: 0.5, max: 4, noNaN: true }),
    lap: fc.constant(0),
  }),
) as fc.Arbitrary<Piece>;

/** Pieces, some of them alike, on a sheet of a square meter, or half as long again. */
const job = fc
  .record({
    pieces: fc.array(piece, { minLength: 1, maxLength: 4 }),
    again: fc.array(fc.nat(), { maxLength: 3 }),
    gap: fc.constantFrom(0, 0.03),
    length: fc.constantFrom(1, 1.5),
  })
  .map(({ pieces, again, gap, length }): Job => {
    const all = [...pieces, ...again.map((i) => pieces[i % pieces.length]!)];
    return prepareJob(all, { length: length + 2 * gap, width: 1 + 2 * gap, gap }, rowCount);
  })
  .filter((one) => one.shapes.every(({ families }) => families.center.length > 0));
const rule = fc.constantFrom(...rules);

function recipeOf(one: Job, family: 'center' | 'edge', by: Rule): Recipe {
  const choices = one.pieces.map((_, item) => one.shapeOf(item).families[family]);
  return { order: one.pieces.map((_, item) => item), choices, rule: by };
}

const offsets: Readonly<Record<Rule, (rows: Rows) => number>> = {
  weight: ({ middleX }) => middleX,
  right: ({ length }) => length,
  middle: ({ length }) => length / 2,
  left: () => 0,
};

/** How far left the rule's point of a piece can lie on a sheet, over all turns and rows; Infinity where it has no room. */
function leastPoint(on: PlainSheet, turns: readonly Rows[], by: Rule, room: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const rows of turns)
    for (let row = 0; row + rows.count <= rowCount; row++) {
      const x = on.leftmost(rows, row, 0);
      if (x + rows.length <= room + 1e-9) least = Math.min(least, x + offsets[by](rows));
    }
  return least;
}

/** The sums that a layout must have, from its spots alone. */
function expectSums(one: Job, { spots, sheets, used, moment }: Layout): void {
  const last = Math.max(...spots.map(({ sheet }) => sheet));
  expect(sheets).toBe(last + 1);
  const ends = spots.filter(({ sheet }) => sheet === last).map(({ x, rows }) => x + rows.length);
  expect(used).toBeCloseTo(Math.max(...ends), 12);
  const byHand = spots.map(
    ({ item, sheet, x, rows }) => one.shapeOf(item).area * (sheet * one.length + x + rows.middleX),
  );
  expect(moment).toBeCloseTo(
    byHand.reduce((sum, part) => sum + part, 0),
    9,
  );
}

describe('laying pieces in an order', () => {
  it('puts each as far left as it goes, on the first sheet with room for it', () => {
    fc.assert(
      fc.property(job, rule, fc.constantFrom('center', 'edge'), (one, by, family) => {
        const recipe = recipeOf(one, family, by);
        const layout = lay(one, recipe, endless())!;
        expect(badSpots(one, layout)).toEqual([]);
        expectSums(one, layout);
        expect(layout.spots.map(({ item }) => item)).toEqual(recipe.order);
        const sheets: PlainSheet[] = [];
        for (const { item, rows, sheet, x, y } of layout.spots) {
          for (let before = 0; before <= sheet; before++) {
            sheets[before] ??= new PlainSheet(one.rowHeight, one.sheet.gap);
            const least = leastPoint(sheets[before]!, recipe.choices[item]!, by, one.length);
            if (before < sheet) expect(least).toBe(Number.POSITIVE_INFINITY);
            else expect(x + offsets[by](rows)).toBeCloseTo(least, 7);
          }
          sheets[sheet]!.put(rows, x, Math.round(y / one.rowHeight));
        }
      }),
      { numRuns: 12, seed: 11 },
    );
  });

  it('gives up where the length or the steps do not suffice', () => {
    fc.assert(
      fc.property(job, rule, (one, by) => {
        const recipe = recipeOf(one, 'center', by);
        const layout = lay(one, recipe, endless())!;
        const enough = lay(one, recipe, { ...endless(), length: lengthOf(layout, one) + 1e-9 });
        expect(enough).toEqual(layout);
        const shorter = lay(one, recipe, { ...endless(), length: lengthOf(layout, one) - 1e-6 });
        if (shorter !== undefined) expect(lengthOf(shorter, one)).toBeLessThan(lengthOf(layout, one));
        expect(lay(one, recipe, { ...endless(), length: 0 })).toBeUndefined();
        expect(lay(one, recipe, { ...endless(), budget: { spent: 2 }, mostSteps: 1 })).toBeUndefined();
        const budget = { spent: 1 };
        expect(lay(one, recipe, { ...endless(), budget, mostSteps: 1 })).toEqual(
          one.pieces.length > 1 ? undefined : layout,
        );
        expect(budget.spent).toBeGreaterThan(1);
      }),
      { numRuns: 12, seed: 12 },
    );
  });

  it('opens a second sheet at its own length, for pieces that fit one to a sheet', () => {
    const square: Piece = { shape: 'rectangle', length: 0.6, width: 0.6, lap: 0 };
    const one = prepareJob([square, square, square], { length: 1, width: 1, gap: 0 }, rowCount);
    const layout = lay(one, recipeOf(one, 'center', 'left'), endless())!;
    expect(layout.spots.map(({ sheet }) => sheet)).toEqual([0, 1, 2]);
    expect([layout.sheets, lengthOf(layout, one)]).toEqual([3, expect.closeTo(2.6, 12)]);
    expect(lay(one, recipeOf(one, 'center', 'left'), { ...endless(), length: 2.6 })).toEqual(layout);
    expect(lay(one, recipeOf(one, 'center', 'left'), { ...endless(), length: 2.59 })).toBeUndefined();
    expect(lay(one, recipeOf(one, 'center', 'left'), { ...endless(), length: 2 })).toBeUndefined();
  });
});

describe('filling one sheet', () => {
  it('puts on it what still fits, each as far left as it goes, and leaves the rest', () => {
    fc.assert(
      fc.property(job, rule, (one, by) => {
        const recipe = recipeOf(one, 'center', by);
        const spots = fillSheet(one, recipe, { spent: 0 });
        expect(badSpots(one, { spots })).toEqual([]);
        const on = new PlainSheet(one.rowHeight, one.sheet.gap);
        const left = [...spots];
        for (const item of recipe.order) {
          const least = leastPoint(on, recipe.choices[item]!, by, one.length);
          if (left[0]?.item !== item) {
            expect(least).toBe(Number.POSITIVE_INFINITY);
            continue;
          }
          const { rows, x, y, sheet } = left.shift()!;
          expect(sheet).toBe(0);
          expect(x + offsets[by](rows)).toBeCloseTo(least, 7);
          on.put(rows, x, Math.round(y / one.rowHeight));
        }
        expect(left).toEqual([]);
      }),
      { numRuns: 12, seed: 13 },
    );
  });
});

describe('a layout', () => {
  const wide: Piece = { shape: 'rectangle', length: 0.5, width: 0.2, lap: 0 };
  const one = prepareJob([wide, wide], { length: 2, width: 1, gap: 0 }, 10);
  const [rows] = one.shapeOf(0).families.center;
  const spot = (item: number, sheet: number, x: number): Spot => ({ item, rows: rows!, sheet, x, y: 0 });
  const layout = (...spots: readonly Spot[]) => layoutOf(spots, momentOf(spots, one));

  it('has its sums from its spots', () => {
    // 0.1 m2 each, with its middle 0.25 from its left.
    expect(layout(spot(0, 0, 1), spot(1, 0, 0.2))).toMatchObject({
      sheets: 1,
      used: 1.5,
      moment: expect.closeTo(0.17, 12),
    });
    const two = layout(spot(0, 1, 0.3), spot(1, 0, 1.4));
    expect(two).toMatchObject({ sheets: 2, used: 0.8, moment: expect.closeTo(0.1 * (2.55 + 1.65), 12) });
    expect(lengthOf(two, one)).toBeCloseTo(2.8, 12);
    expect(layoutOf([], 0)).toEqual({ spots: [], sheets: 1, used: 0, moment: 0 });
  });

  it('is shorter with fewer sheets, then with less of the last, then where its pieces lie farther left', () => {
    const [least, left, right, two] = [
      layout(spot(0, 0, 0), spot(1, 0, 0.9)),
      layout(spot(0, 0, 0), spot(1, 0, 1)),
      layout(spot(0, 0, 0.1), spot(1, 0, 1)),
      layout(spot(0, 0, 0), spot(1, 1, 0)),
    ];
    const inTurn = [least, left, right, two];
    for (const [i, a] of inTurn.entries())
      for (const [j, b] of inTurn.entries()) expect(isShorter(a!, b!, one), `${i} ${j}`).toBe(i < j);
    // A billionth of a meter is the same length, and then the pieces farther left decide.
    const nudged = { ...left!, used: left!.used + 5e-10, moment: left!.moment - 1e-6 };
    expect([isShorter(nudged, left!, one), isShorter(left!, nudged, one)]).toEqual([true, false]);
    const longer = { ...left!, used: left!.used + 1e-8, moment: left!.moment - 1e-6 };
    expect([isShorter(longer, left!, one), isShorter(left!, longer, one)]).toEqual([false, true]);
  });
});

describe('laying a layout again near its places', () => {
  const within = 2;
  const shifted = fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 8, maxLength: 8 });

  it('keeps those before the first change and puts the others as far left as they go, near their rows', () => {
    const sheets: Sheet[] = [];
    fc.assert(
      fc.property(job, rule, shifted, fc.nat(), (one, by, shifts, some) => {
        const coarse = lay(one, recipeOf(one, 'center', by), endless())!;
        const first = some % (coarse.spots.length + 1);
        const targets = coarse.spots.map((spot, i) =>
          i < first ? spot : { ...spot, y: spot.y + shifts[i]! * one.rowHeight, ...(i % 2 === 0 ? { within } : {}) },
        );
        const layout = laidNear(one, { targets, first }, endless(), sheets)!;
        expect(badSpots(one, layout)).toEqual([]);
        expectSums(one, layout);
        expect(layout.spots.slice(0, first)).toEqual(coarse.spots.slice(0, first));
        const plain: PlainSheet[] = [];
        for (const [i, { rows, sheet, x, y }] of layout.spots.entries()) {
          const row = Math.round(y / one.rowHeight);
          for (let before = 0; before <= sheet && i >= first; before++) {
            plain[before] ??= new PlainSheet(one.rowHeight, one.sheet.gap);
            const last = rowCount - rows.count;
            const middle = Math.max(0, Math.min(last, Math.round(targets[i]!.y / one.rowHeight)));
            const reach = i % 2 === 0 ? within : 1;
            const near = Array.from({ length: 2 * reach + 1 }, (_, k) => middle + (k % 2 === 0 ? -k / 2 : (k + 1) / 2));
            const open = near.filter((at) => at >= 0 && at <= last);
            const places = open.map((at) => ({ at, x: plain[before]!.leftmost(rows, at, 0) }));
            const fitting = places.filter((place) => place.x + rows.length <= one.length + 1e-9);
            const least = Math.min(...fitting.map((place) => place.x));
            if (before < sheet) expect(fitting).toEqual([]);
            else {
              expect(x).toBeCloseTo(least, 7);
              // Of places as far left the first counts: its own row, then one above, one below.
              expect(row).toBe(fitting.find((place) => place.x < least + 5e-10)?.at);
            }
          }
          plain[sheet] ??= new PlainSheet(one.rowHeight, one.sheet.gap);
          plain[sheet]!.put(rows, x, row);
        }
      }),
      { numRuns: 20, seed: 14 },
    );
  });

  it('gives up where the length or the steps do not suffice', () => {
    fc.assert(
      fc.property(job, (one) => {
        const { spots } = lay(one, recipeOf(one, 'center', 'left'), endless())!;
        const changed = { targets: spots, first: 0 };
        const layout = laidNear(one, changed, endless(), [])!;
        const length = lengthOf(layout, one);
        expect(laidNear(one, changed, { ...endless(), length: length + 1e-9 }, [])).toEqual(layout);
        const shorter = laidNear(one, changed, { ...endless(), length: length - 1e-6 }, []);
        if (shorter !== undefined) expect(lengthOf(shorter, one)).toBeLessThan(length);
        expect(laidNear(one, changed, { ...endless(), length: 0 }, [])).toBeUndefined();
        expect(laidNear(one, changed, { ...endless(), budget: { spent: 2 }, mostSteps: 1 }, [])).toBeUndefined();
      }),
      { numRuns: 10, seed: 15 },
    );
  });
});
