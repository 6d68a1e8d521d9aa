/** A sheet of rows and the places that it leaves free, held to a plain list of what lies on it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Rows } from '../../../src/formulas/cut/cut-rows';
import { clearSheet, emptySheet, grownBy, leftmost, occupy, type Sheet } from '../../../src/formulas/cut/cut-sheet';
import type { Piece } from '../../../src/formulas/cut/piece';
import { rowsOf } from './laid-shapes';
import { PlainSheet, stretchesOf } from './plain-sheet';

const rowCount = 20;
const rowHeight = 0.05;
const uncounted = () => ({ spent: 0 });

const piece = fc.oneof(
  fc.record({
    shape: fc.constant('rectangle' as const),
    length: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    width: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    lap: fc.constant(0),
  }),
  fc.record({
    shape: fc.constant('sector' as const),
    innerRadius: fc.double({ min: 0, max: 0.2, noNaN: true }),
    outerRadius: fc.double({ min: 0.25, max: 0.45, noNaN: true }),
    angle: fc.double({ min: 0.4, max: 5, noNaN: true }),
    lap: fc.constant(0),
  }),
);
const laid = fc.record({
  piece: piece as fc.Arbitrary<Piece>,
  turn: fc.double({ min: 0, max: 6.28, noNaN: true }),
  bottom: fc.double({ min: 0, max: 1, noNaN: true }),
  from: fc.constantFrom(0, 0, 0, 0.2, 0.7),
});

/** Puts pieces as far left as they go, on the quick sheet and the plain one, and compares the places. */
function layBoth(list: readonly { piece: Piece; turn: number; bottom: number; from: number }[], gap: number): Sheet {
  const quick = emptySheet(rowCount);
  const plain = new PlainSheet(rowHeight, gap);
  for (const one of list) {
    const rows = rowsOf(one.piece, one.turn, rowHeight);
    if (rows.count > rowCount) continue;
    const row = Math.round(one.bottom * (rowCount - rows.count));
    const x = leftmost(quick, rows, row, one.from, 100, uncounted());
    expect(x).toBeCloseTo(plain.leftmost(rows, row, one.from), 9);
    // Over the limit it may end the search anywhere beyond it.
    if (x > one.from) expect(leftmost(quick, rows, row, one.from, x - 1e-6, uncounted())).toBeGreaterThan(x - 1e-6);
    occupy(quick, grownBy(rows, gap, rowHeight, rowCount, uncounted()), x, row, uncounted());
    plain.put(rows, x, row);
  }
  return quick;
}

describe('a sheet', () => {
  it('leaves each piece the place farthest left that is clear of all others', () => {
    fc.assert(
      fc.property(
        fc.array(laid, { minLength: 2, maxLength: 8 }),
        fc.constantFrom(0, 0.01, 0.05, 0.07, 0.16),
        (list, gap) => {
          layBoth(list, gap);
        },
      ),
      { numRuns: 25, seed: 5 },
    );
  });

  it('keeps its rows as stretches from left to right that do not touch, and where the last of them ends', () => {
    fc.assert(
      fc.property(fc.array(laid, { minLength: 2, maxLength: 8 }), fc.constantFrom(0, 0.07), (list, gap) => {
        const { taken, counts, ends } = layBoth(list, gap);
        for (let row = 0; row < rowCount; row++) {
          const own = taken[row]!.slice(0, counts[row]);
          for (let i = 1; i < own.length; i++) expect(own[i]).toBeGreaterThan(own[i - 1]!);
          expect(own.length % 2).toBe(0);
          expect(ends[row]).toBe(own.at(-1) ?? 0);
        }
      }),
      { numRuns: 8, seed: 6 },
    );
  });

  it('is as good as new once it is cleared', () => {
    const rows = rowsOf({ shape: 'rectangle', length: 0.5, width: 0.3, lap: 0 }, 0, rowHeight);
    const sheet = emptySheet(rowCount);
    const grown = grownBy(rows, 0, rowHeight, rowCount, uncounted());
    occupy(sheet, grown, 0, 3, uncounted());
    sheet.bounds.set(rows, {} as never);
    expect(leftmost(sheet, rows, 3, 0, 9, uncounted())).toBeCloseTo(0.5, 6);
    clearSheet(sheet);
    expect(leftmost(sheet, rows, 3, 0, 9, uncounted())).toBe(0);
    expect([...sheet.ends].every((end) => end === 0)).toBe(true);
    expect(sheet.bounds.size).toBe(0);
    // What was there before does not come back beside a new piece.
    occupy(sheet, grown, 2, 3, uncounted());
    expect(leftmost(sheet, rows, 3, 0, 9, uncounted())).toBe(0);
  });

  it('joins stretches that a new one bridges, and parts none that it does not touch', () => {
    const block = (length: number): Rows => rowsOf({ shape: 'rectangle', length, width: 0.05, lap: 0 }, 0, rowHeight);
    const sheet = emptySheet(1);
    const put = (length: number, x: number) =>
      occupy(sheet, grownBy(block(length), 0, rowHeight, 1, uncounted()), x, 0, uncounted());
    const stretches = () => [...sheet.taken[0]!.slice(0, sheet.counts[0])].map((x) => Math.round(x * 100) / 100 + 0);
    put(1, 4);
    put(1, 0);
    put(1, 8);
    expect(stretches()).toEqual([0, 1, 4, 5, 8, 9]);
    put(1, 2);
    expect(stretches()).toEqual([0, 1, 2, 3, 4, 5, 8, 9]);
    put(1, 3);
    expect(stretches()).toEqual([0, 1, 2, 5, 8, 9]);
    put(6, 0.5);
    expect(stretches()).toEqual([0, 6.5, 8, 9]);
    put(0.5, 8.2);
    put(1, 12);
    expect(stretches()).toEqual([0, 6.5, 8, 9, 12, 13]);
    put(20, 0);
    expect(stretches()).toEqual([0, 20]);
    expect(sheet.ends[0]).toBeCloseTo(20, 6);
  });
});

describe('a piece with its gap', () => {
  const square = rowsOf({ shape: 'rectangle', length: 0.2, width: 0.1, lap: 0 }, 0, rowHeight);

  it('is itself without a gap, but for what keeps touching pieces apart', () => {
    const { below, starts, stretches } = grownBy(square, 0, rowHeight, rowCount, uncounted());
    expect(below).toBe(0);
    expect([...starts]).toEqual([0, 2, 4]);
    expect([...stretches]).toEqual([-1e-9, 0.2 + 1e-9, -1e-9, 0.2 + 1e-9].map((x) => expect.closeTo(x, 12)));
  });

  // Two rows high, with a gap of 0.12 over rows of 0.05: three rows below and above, by Pythagoras.
  it('reaches its gap to the sides and less to the corners', () => {
    const { below, starts, stretches } = grownBy(square, 0.12, rowHeight, rowCount, uncounted());
    expect(below).toBe(3);
    expect(starts).toHaveLength(2 + 2 * 3 + 1);
    const aside = [0.1, 0.05, 0, 0, 0, 0, 0.05, 0.1].map((rise) => Math.sqrt(0.12 ** 2 - rise ** 2));
    expect([...stretches]).toEqual(aside.flatMap((side) => [expect.closeTo(-side, 8), expect.closeTo(0.2 + side, 8)]));
  });

  it('needs no rows that are off the sheet wherever it lies', () => {
    const { below, starts } = grownBy(square, 50, rowHeight, rowCount, uncounted());
    expect(below).toBe(rowCount);
    expect(starts).toHaveLength(2 + 2 * rowCount + 1);
  });

  it('keeps what lies in the hollow of a ring apart from its neighbors', () => {
    const ring: Piece = { shape: 'sector', innerRadius: 0.25, outerRadius: 0.4, angle: 5, lap: 0 };
    const rows = rowsOf(ring, 0, rowHeight);
    const grown = grownBy(rows, 0.06, rowHeight, 40, uncounted());
    for (let i = grown.below; i < grown.below + rows.count; i++) {
      const ends = [...grown.stretches.slice(grown.starts[i], grown.starts[i + 1])];
      expect(ends).toEqual([...ends].sort((a, b) => a - b));
      const own = stretchesOf(rows, i - grown.below);
      for (const [from, to] of own)
        expect(ends.some((end, k) => k % 2 === 0 && end <= from - 0.06 && ends[k + 1]! >= to + 0.06)).toBe(true);
    }
  });
});

describe('steps', () => {
  const rows = rowsOf({ shape: 'rectangle', length: 0.2, width: 0.3, lap: 0 }, 0, rowHeight);
  const spentBy = (work: (budget: { spent: number }) => unknown) => {
    const budget = { spent: 0 };
    work(budget);
    return budget.spent;
  };

  it('are counted for each row that is looked at, again after each push, and for each row that is taken', () => {
    const sheet = emptySheet(rowCount);
    const free = spentBy((budget) => leftmost(sheet, rows, 4, 0, 9, budget));
    expect(free).toBeGreaterThan(rows.count);
    const grown = grownBy(rows, 0, rowHeight, rowCount, uncounted());
    expect(spentBy((budget) => occupy(sheet, grown, 0, 4, budget))).toBeGreaterThan(rows.count);
    expect(spentBy((budget) => leftmost(sheet, rows, 4, 0, 9, budget))).toBeGreaterThanOrEqual(free);
    // A stair in the order in which the rows are visited, of which every second row pushes the piece on.
    const stair = emptySheet(rowCount);
    for (let i = 1; i < rows.count; i += 2) {
      const step = rowsOf({ shape: 'rectangle', length: 0.1 * (i + 1), width: 0.05, lap: 0 }, 0, rowHeight);
      occupy(
        stair,
        grownBy(step, 0, rowHeight, rowCount, uncounted()),
        0,
        4 + ((i * rows.stride) % rows.count),
        uncounted(),
      );
    }
    expect(spentBy((budget) => leftmost(stair, rows, 4, 0, 9, budget))).toBeGreaterThan(free);
  });

  it('of growing a piece are counted by its rows and its gap', () => {
    const none = spentBy((budget) => grownBy(rows, 0, rowHeight, rowCount, budget));
    expect(none).toBeGreaterThan(rows.count);
    expect(spentBy((budget) => grownBy(rows, 0.1, rowHeight, rowCount, budget))).toBeGreaterThan(3 * none);
  });
});
