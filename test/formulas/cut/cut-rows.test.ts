/** A turned piece as a stack of rows, held to the points of the piece and to areas and centers known in closed form. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { merged, type Rows } from '../../../src/formulas/cut/cut-rows';
import { type Piece, pieceArea, type SectorPiece } from '../../../src/formulas/cut/piece';
import { turnedBox } from '../../../src/formulas/cut/piece-fit';
import { rowsOf } from './laid-shapes';
import { pieceHolds } from './piece-shape';

const degree = Math.PI / 180;
const sector = (innerRadius: number, outerRadius: number, degrees: number, lap = 0): SectorPiece => ({
  ...{ shape: 'sector', innerRadius, outerRadius, lap },
  angle: degrees * degree,
});
const pieces: readonly (readonly [string, Piece])[] = [
  ['a rectangle', { shape: 'rectangle', length: 0.8, width: 0.3, lap: 0 }],
  ['a narrow sector', sector(0.2, 0.5, 40)],
  ['a half ring', sector(0.1, 0.4, 180)],
  ['most of a ring', sector(0.15, 0.4, 300)],
  ['a sector to its point', sector(0, 0.4, 100)],
  ['a sector with a lap', sector(0.2, 0.5, 90, 0.03)],
  ['a lap that is wider than the inner radius', sector(0.02, 0.5, 120, 0.05)],
];
const turns = [0, 25, 90, 130, 205, 290].map((degrees) => degrees * degree);

/** The stretches of a row as pairs. */
function stretchesOf({ starts, stretches }: Rows, row: number): readonly (readonly [from: number, to: number])[] {
  const ends = [...stretches.slice(starts[row], starts[row + 1])];
  return ends.flatMap((from, i) => (i % 2 === 0 ? [[from, ends[i + 1]!] as const] : []));
}

/** Whether the turned piece holds a point of its box, from the box's lower left corner. */
function holds(piece: Piece, { turn, originX, originY }: Rows, x: number, y: number): boolean {
  const [dx, dy] = [x - originX, y - originY];
  return pieceHolds(piece, dx * Math.cos(turn) + dy * Math.sin(turn), dy * Math.cos(turn) - dx * Math.sin(turn));
}

describe.each(pieces)('%s in rows', (_, piece) => {
  it('is as large as its box at any turn', () => {
    const box = turnedBox(piece);
    for (const turn of turns) {
      const rows = rowsOf(piece, turn, 0.013);
      expect(rows.length).toBeCloseTo(box(turn).length, 12);
      expect(rows.width).toBeCloseTo(box(turn).width, 12);
      expect(rows.count).toBe(Math.ceil(rows.width / 0.013 - 1e-9));
      expect(rows.turn).toBe(turn);
    }
  });

  it('covers every point of the piece, and nothing that is far from one', () => {
    const height = 0.02;
    for (const turn of turns) {
      const rows = rowsOf(piece, turn, height);
      for (let row = 0; row < rows.count; row++) {
        const stretches = stretchesOf(rows, row);
        const levels = Array.from({ length: 5 }, (_, i) => Math.min(rows.width, (row + (i + 0.5) / 5) * height));
        for (let x = 0.0007; x < rows.length; x += 0.02) {
          const isCovered = stretches.some(([from, to]) => x >= from && x <= to);
          if (levels.some((y) => holds(piece, rows, x, y))) expect(isCovered, `${row} ${x}`).toBe(true);
        }
        // Each end of a stretch is near a point of the piece that lies in the row, or within a millimeter of it.
        const near = Array.from({ length: 56 }, (_, i) => row * height + (i / 55) * (height + 2e-3) - 1e-3);
        for (const end of stretches.flat()) {
          const beside = Array.from({ length: 13 }, (_, i) => end + (i - 6) * 5e-4);
          const isPoint = near.some((y) => beside.some((x) => holds(piece, rows, x, y)));
          expect(isPoint, `${row} ${end}`).toBe(true);
        }
      }
    }
  });

  it('has its area and its center on fine rows', () => {
    const [x, y] = centerOf(piece);
    for (const turn of turns) {
      const rows = rowsOf(piece, turn, 5e-4);
      let area = 0;
      for (let row = 0; row < rows.count; row++) {
        const height = Math.min(5e-4, rows.width - row * 5e-4);
        for (const [from, to] of stretchesOf(rows, row)) area += (to - from) * height;
      }
      expect(area / pieceArea(piece)).toBeGreaterThan(1 - 1e-9);
      expect(area / pieceArea(piece)).toBeLessThan(1.012);
      expect(rows.middleX).toBeCloseTo(rows.originX + x * Math.cos(turn) - y * Math.sin(turn), 2);
    }
  });

  it('has its rows from left to right, none empty, and a stride that visits all', () => {
    for (const turn of turns) {
      const rows = rowsOf(piece, turn, 0.017);
      const visited = new Set<number>();
      for (let i = 0; i < rows.count; i++) visited.add((i * rows.stride) % rows.count);
      expect(visited.size).toBe(rows.count);
      if (rows.count > 20) expect(Math.abs(rows.stride / rows.count - 0.42)).toBeLessThan(0.08);
      for (let row = 0; row < rows.count; row++) {
        const ends = stretchesOf(rows, row).flat();
        expect(ends.length).toBeGreaterThan(0);
        expect(ends).toEqual([...ends].sort((a, b) => a - b));
        expect(rows.lefts[row]).toBe(ends[0]);
        expect(ends[0]).toBeGreaterThan(-1e-12);
        expect(ends.at(-1)).toBeLessThanOrEqual(rows.length + 1e-12);
      }
      expect(Math.min(...rows.lefts)).toBeCloseTo(0, 12);
    }
  });
});

/** The center of a piece's area: of a grid of its points. */
function centerOf(piece: Piece): readonly [x: number, y: number] {
  let [count, sumX, sumY] = [0, 0, 0];
  for (let x = -0.8995; x < 0.9; x += 0.004)
    for (let y = -0.8995; y < 0.9; y += 0.004)
      if (pieceHolds(piece, x, y)) {
        count++;
        sumX += x;
        sumY += y;
      }
  return [sumX / count, sumY / count];
}

describe('rows worked by hand', () => {
  it('of a rectangle are its length in each, the last one less high', () => {
    const rows = rowsOf({ shape: 'rectangle', length: 2, width: 0.35, lap: 0 }, 0, 0.1);
    expect(rows.count).toBe(4);
    expect([...rows.starts]).toEqual([0, 2, 4, 6, 8]);
    expect([...rows.stretches]).toEqual([0, 2, 0, 2, 0, 2, 0, 2]);
    expect([rows.originX, rows.originY, rows.middleX]).toEqual([-0, -0, 1].map((x) => expect.closeTo(x, 12)));
    const exact = rowsOf({ shape: 'rectangle', length: 2, width: 0.3, lap: 0 }, 0, 0.1);
    expect(exact.count).toBe(3);
    const thin = rowsOf({ shape: 'rectangle', length: 2, width: 1e-6, lap: 0 }, 0, 0.1);
    expect(thin.count).toBe(1);
  });

  it('of a half disc on its flat side narrow upwards as a circle does', () => {
    const rows = rowsOf(sector(0, 1, 180), Math.PI / 2, 0.25);
    expect(rows.count).toBe(4);
    for (const [row, height] of [0, 0.25, 0.5, 0.75].entries()) {
      const half = Math.sqrt(1 - height ** 2);
      expect(stretchesOf(rows, row)).toEqual([[expect.closeTo(1 - half, 12), expect.closeTo(1 + half, 12)]]);
    }
    expect([rows.originX, rows.originY]).toEqual([expect.closeTo(1, 12), expect.closeTo(0, 12)]);
  });

  it('of a ring open to the left leave its hollow and its mouth free', () => {
    const rows = rowsOf(sector(0.5, 1, 300), 0, 0.02);
    const from = (x: number) => expect.closeTo(rows.originX + x, 9);
    // From 0 to 0.02 above the center only the right side is there, from 0.5 at most inwards to 1.
    expect(stretchesOf(rows, 50)).toEqual([[from(Math.sqrt(0.25 - 0.02 ** 2)), from(1)]]);
    // From 0.4 to 0.42 the left side begins at its edge, 30 degrees up from the left.
    const inner = Math.sqrt(0.25 - 0.42 ** 2);
    expect(stretchesOf(rows, 70)).toEqual([
      [from(-0.42 * Math.sqrt(3)), from(-inner)],
      [from(inner), from(Math.sqrt(1 - 0.16))],
    ]);
  });
});

describe('stretches', () => {
  it('are merged where they touch or overlap, from left to right', () => {
    const stretch = fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 8 }));
    fc.assert(
      fc.property(fc.array(stretch, { maxLength: 12 }), (list) => {
        const pairs = list.flatMap(([from, more]) => [from, from + more]);
        // What stands behind the numbers that count is left over from another row.
        const mixed = [...pairs, -1e9, 1e9];
        const ends = mixed.slice(0, merged(mixed, pairs.length));
        const covers = (all: readonly number[], x: number) =>
          all.some((from, i) => i % 2 === 0 && x >= from && x <= all[i + 1]!);
        for (let x = -0.5; x < 70; x += 0.5) expect(covers(ends, x), `${x}`).toBe(covers(pairs, x));
        for (let i = 2; i < ends.length; i += 2) expect(ends[i]).toBeGreaterThan(ends[i - 1]!);
      }),
    );
    expect(merged([], 0)).toBe(0);
  });
});
