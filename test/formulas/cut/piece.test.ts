/**
 * A piece's area, reach, corners and outline, held to its definition: a sector with a strip of lap, point by point.
 */
import { describe, expect, it } from 'vitest';
import {
  halfChord,
  lapTurn,
  type Piece,
  pieceArea,
  pieceCorners,
  pieceReach,
  pointBeside,
  type SectorPiece,
} from '../../../src/formulas/cut/piece';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';
import { pieceHolds, piecePolygon } from './piece-shape';

const degree = Math.PI / 180;
const sector = (innerRadius: number, outerRadius: number, degrees: number, lap = 0): SectorPiece => ({
  ...{ shape: 'sector', innerRadius, outerRadius, lap },
  angle: degrees * degree,
});
const sheet: Piece = { shape: 'rectangle', length: 0.8, width: 0.3, lap: 0.02 };
const pieces: readonly (readonly [string, Piece])[] = [
  ['a rectangle', sheet],
  ['a narrow sector', sector(0.2, 0.5, 40)],
  ['a half ring', sector(0.1, 0.4, 180)],
  ['most of a ring', sector(0.1, 0.4, 300)],
  ['a sector to its point', sector(0, 0.4, 100)],
  ['a sector with a lap', sector(0.2, 0.5, 90, 0.03)],
  ['a lap that is wider than the inner radius', sector(0.02, 0.5, 120, 0.05)],
  ['a lap on a sector to its point', sector(0, 0.4, 200, 0.03)],
];

/** Twice the area of a polygon, by the sum of its cross products (Gauss's area formula). */
function polygonArea(points: readonly { readonly x: number; readonly y: number }[]): number {
  return (
    points.reduce((sum, { x, y }, i) => {
      const next = points[(i + 1) % points.length]!;
      return sum + x * next.y - y * next.x;
    }, 0) / 2
  );
}

describe.each(pieces)('%s', (_, piece) => {
  const polygon = () => piecePolygon(piece, 1e-7);

  it('has the area of its outline, which runs counter-clockwise', () => {
    expect(polygonArea(polygon())).toBeCloseTo(pieceArea(piece), 5);
  });

  it('has the area of the points that it holds', () => {
    const steps = 300;
    let held = 0;
    for (let i = 0; i < steps; i++)
      for (let j = 0; j < steps; j++)
        if (pieceHolds(piece, -1 + (2 * (i + 0.5)) / steps, -1 + (2 * (j + 0.5)) / steps)) held++;
    expect((held * 4) / steps ** 2).toBeCloseTo(pieceArea(piece), 2);
  });

  it('reaches as far in each direction as its farthest point', () => {
    const points = polygon();
    for (let d = -180; d <= 540; d += 7) {
      const direction = d * degree;
      const farthest = Math.max(...points.map(({ x, y }) => x * Math.cos(direction) + y * Math.sin(direction)));
      expect(pieceReach(piece, direction), `${d}`).toBeCloseTo(farthest, 6);
    }
  });

  it('has an outline of which each part begins where the one before it ends', () => {
    const ends = pieceOutline(piece).map((part) => {
      if ('line' in part) return part.line;
      const { radius, start, sweep } = part.arc;
      const at = (angle: number) => ({ x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
      return [at(start), at(start + sweep)] as const;
    });
    for (const [i, [from]] of ends.entries()) {
      const [, to] = ends.at(i - 1)!;
      expect(from.x).toBeCloseTo(to.x, 12);
      expect(from.y).toBeCloseTo(to.y, 12);
    }
  });

  it('has its corners on its outline, each once, counter-clockwise', () => {
    const corners = pieceCorners(piece);
    const points = polygon();
    const order = corners.map((corner) =>
      points.findIndex(({ x, y }) => Math.hypot(x - corner.x, y - corner.y) < 1e-12),
    );
    const distinct = new Set(order);
    expect(distinct.has(-1)).toBe(false);
    expect([...distinct]).toEqual([...distinct].sort((a, b) => a - b));
  });
});

describe('a piece worked by hand', () => {
  it('has the area of a ring’s share, with a lap as a strip between two arcs', () => {
    // A quarter of the ring from 3 to 5: 4 pi.
    expect(pieceArea(sector(3, 5, 90))).toBeCloseTo(4 * Math.PI, 12);
    // A strip of 3 on a sector of radius 5 to its point: under the arc from 0 to 3, (3 x 4 + 25 asin 0.6) / 2.
    const strip = (3 * 4 + 25 * Math.asin(0.6)) / 2;
    expect(pieceArea(sector(0, 5, 90, 3))).toBeCloseTo((Math.PI / 4) * 25 + strip, 12);
    // The same without what lies under the inner arc of 2, which a wider lap covers as a quarter disc.
    const ring = (Math.PI / 4) * (25 - 4);
    expect(pieceArea(sector(2, 5, 90, 3))).toBeCloseTo(ring + strip - (Math.PI / 4) * 4, 12);
    expect(pieceArea(sector(4, 5, 90, 3))).toBeCloseTo(
      (Math.PI / 4) * 9 + strip - (3 * Math.sqrt(7) + 16 * Math.asin(0.75)) / 2,
      12,
    );
  });

  it('has a strip that ends where a line beside the edge meets the arcs: 3, 4, 5', () => {
    expect(halfChord(5, 3)).toBe(4);
    expect(halfChord(2, 3)).toBe(0);
    expect(lapTurn(sector(2, 5, 90, 3), 5)).toBeCloseTo(Math.asin(0.6), 12);
    expect(lapTurn(sector(2, 5, 90, 3), 2)).toBe(Math.PI / 2);
    expect(lapTurn(sector(0, 5, 90), 0)).toBe(0);
    const point = pointBeside(Math.PI / 2, 4, 3);
    expect([point.x, point.y]).toEqual([expect.closeTo(-3, 12), expect.closeTo(4, 12)]);
  });

  it('has five corners with a narrow lap and six parts with a wide one, and no inner arc at a point', () => {
    expect(pieceCorners(sector(2, 5, 90))).toHaveLength(4);
    expect(pieceCorners(sector(2, 5, 90, 1))).toHaveLength(4);
    expect(pieceCorners(sector(2, 5, 90, 3))).toHaveLength(5);
    const sorts = (piece: Piece) => pieceOutline(piece).map((part) => ('line' in part ? 'line' : 'arc'));
    expect(sorts(sector(2, 5, 90, 1))).toEqual(['line', 'arc', 'line', 'arc']);
    expect(sorts(sector(2, 5, 90, 3))).toEqual(['line', 'arc', 'line', 'line', 'arc']);
    expect(sorts(sector(0, 5, 90))).toEqual(['line', 'arc', 'line']);
    expect(sorts(sheet)).toEqual(['line', 'line', 'line', 'line']);
  });

  it('reaches its radius only where its arc, with the lap’s turn, faces', () => {
    const quarter = sector(3, 5, 90, 3);
    expect(pieceReach(quarter, 45 * degree)).toBe(5);
    expect(pieceReach(quarter, 45 * degree + Math.asin(0.6) - 1e-9)).toBe(5);
    expect(pieceReach(quarter, 45 * degree + Math.asin(0.6) + 0.01)).toBeLessThan(5);
    expect(pieceReach(quarter, -45.01 * degree)).toBeLessThan(5);
    // Straight back, the foot of the clockwise edge: 3 cos 45 degrees, behind the origin; the wide lap lies nearer.
    expect(pieceReach(sector(3, 5, 90), Math.PI)).toBeCloseTo(-3 * Math.SQRT1_2, 12);
    expect(pieceReach(sheet, 0)).toBe(0.8);
    expect(pieceReach(sheet, Math.PI / 2)).toBeCloseTo(0.3, 12);
    expect(pieceReach(sheet, Math.PI)).toBeCloseTo(0, 12);
    expect(pieceReach(sheet, Math.atan2(0.3, 0.8))).toBeCloseTo(Math.hypot(0.8, 0.3), 12);
  });
});
