/** Laid pieces: their box, corners, lines and arcs, held to the points of the piece turned one by one. */
import { describe, expect, it } from 'vitest';
import { contains, isWithin, type LaidArc } from '../../../src/formulas/cut/laid-piece';
import type { Piece } from '../../../src/formulas/cut/piece';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { box, degree, isInPolygon, layAt, polygonAt, pose, sector } from './laid-shapes';
import { pieceHolds } from './piece-shape';

const pieces: readonly (readonly [name: string, piece: Piece, corners: number])[] = [
  ['a rectangle', box(0.8, 0.3), 4],
  ['a sector under a half turn', sector(0.2, 0.5, 70), 4],
  ['a sector over a half turn', sector(0.1, 0.4, 300), 4],
  ['a sector to its point', sector(0, 0.4, 100), 3],
  ['a sector with a lap', sector(0.2, 0.5, 90, 0.05), 4],
  ['a sector over a half turn with a lap', sector(0.2, 0.5, 250, 0.05), 4],
  ['a lap that is wider than the inner radius', sector(0.03, 0.5, 120, 0.08), 5],
  ['a lap on a sector to its point', sector(0, 0.4, 200, 0.06), 4],
];
const poses = [0, 25, 90, 137, 180, 222, 270, 305, -50, 700].map((degrees, i) =>
  pose(0.3 * i - 1, 0.7 - 0.1 * i, degrees),
);

describe.each(pieces)('%s where it lies', (_, piece, corners) => {
  /** Whether the piece holds the point, by its definition in its own frame. */
  const holds = ({ x, y, turn }: (typeof poses)[number], px: number, py: number) => {
    const [dx, dy] = [px - x, py - y];
    return pieceHolds(piece, dx * Math.cos(turn) + dy * Math.sin(turn), dy * Math.cos(turn) - dx * Math.sin(turn));
  };

  it('has the box of its outline', () => {
    for (const at of poses) {
      const { left, right, bottom, top } = layAt(piece, at);
      const points = polygonAt(piece, at);
      const xs = points.map(({ x }) => x);
      const ys = points.map(({ y }) => y);
      const byPoints = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
      expect([left, right, bottom, top]).toEqual(byPoints.map((value) => expect.closeTo(value, 6)));
    }
  });

  it('has its corners where its outline turns sharply, and only there', () => {
    for (const at of poses) {
      const points = polygonAt(piece, at, 1e-6);
      const sharp = points.filter((point, i) => {
        const before = points.at(i - 1)!;
        const after = points[(i + 1) % points.length]!;
        const [ax, ay] = [point.x - before.x, point.y - before.y];
        const [bx, by] = [after.x - point.x, after.y - point.y];
        return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) > 10 * degree;
      });
      const laid = layAt(piece, at);
      expect(laid.corners).toHaveLength(corners);
      expect(sharp).toHaveLength(corners);
      for (const { x, y } of sharp) {
        const nearest = Math.min(...laid.corners.map((corner) => Math.hypot(corner.x - x, corner.y - y)));
        expect(nearest).toBeLessThan(1e-12);
      }
    }
  });

  it('has lines from corner to corner, and arcs too, each with the piece on its inner side', () => {
    const tiny = 1e-6;
    for (const at of poses) {
      const { lines, arcs, corners: all } = layAt(piece, at);
      const isCorner = (x: number, y: number) => all.some((corner) => Math.hypot(corner.x - x, corner.y - y) < 1e-12);
      for (const { x, y, length, outX, outY } of lines) {
        expect(Math.hypot(outX, outY)).toBeCloseTo(1, 12);
        expect(isCorner(x, y)).toBe(true);
        expect(isCorner(x - length * outY, y + length * outX)).toBe(true);
        for (const share of [0.01, 0.5, 0.99]) {
          const [px, py] = [x - share * length * outY, y + share * length * outX];
          expect([
            holds(at, px - tiny * outX, py - tiny * outY),
            holds(at, px + tiny * outX, py + tiny * outY),
          ]).toEqual([true, false]);
        }
      }
      for (const { x, y, radius, middleX, middleY, reach, side } of arcs) {
        expect(Math.hypot(middleX, middleY)).toBeCloseTo(1, 14);
        const sweep = 2 * Math.acos(reach);
        const start = Math.atan2(middleY, middleX) - sweep / 2;
        for (const share of [0, 0.01, 0.5, 0.99, 1]) {
          const [cos, sin] = [Math.cos(start + share * sweep), Math.sin(start + share * sweep)];
          expect(isCorner(x + radius * cos, y + radius * sin)).toBe(share === 0 || share === 1);
          if (share === 0 || share === 1) continue;
          const isHeld = [radius - side * tiny, radius + side * tiny].map((r) => holds(at, x + r * cos, y + r * sin));
          expect(isHeld).toEqual([true, false]);
        }
      }
      expect(lines.length + arcs.length).toBe(corners);
    }
  });

  it('contains the points within its outline', () => {
    const random = randomNumbers();
    for (const at of poses) {
      const laid = layAt(piece, at);
      const points = polygonAt(piece, at, 1e-7);
      let held = 0;
      for (let i = 0; i < 60; i++) {
        const x = laid.left + (laid.right - laid.left) * (1.2 * random() - 0.1);
        const y = laid.bottom + (laid.top - laid.bottom) * (1.2 * random() - 0.1);
        const isInside = isInPolygon(points, x, y);
        if (isInside) held++;
        expect(contains(laid, { x, y }), `${x} ${y}`).toBe(isInside);
      }
      expect(held).toBeGreaterThan(5);
      expect(held).toBeLessThan(55);
    }
  });
});

describe('points on the outline', () => {
  it('are not inside', () => {
    const square = layAt(box(2, 1), pose(0, 0));
    for (const [x, y] of [
      [0, 0.5],
      [2, 0.5],
      [1, 0],
      [1, 1],
    ])
      expect(contains(square, { x: x!, y: y! })).toBe(false);
    const ring = layAt(sector(1, 2, 90), pose(0, 0));
    expect([1, 1.5, 2].map((x) => contains(ring, { x, y: 0 }))).toEqual([false, true, false]);
  });
});

describe('a direction within an arc', () => {
  const arc = (start: number, sweep: number): LaidArc => {
    const middle = (start + sweep / 2) * degree;
    return {
      ...{ x: 0, y: 0, radius: 1, side: 1 },
      ...{ middleX: Math.cos(middle), middleY: Math.sin(middle), reach: Math.cos((sweep / 2) * degree) },
    };
  };
  const among = (start: number, sweep: number, directions: readonly number[], length = 1) =>
    directions.filter((direction) => {
      const [x, y] = [Math.cos(direction * degree), Math.sin(direction * degree)];
      return isWithin(arc(start, sweep), length * x, length * y, length);
    });

  it('is counted from the start counter-clockwise, whole turns aside', () => {
    expect(among(350, 20, [-5, 0, 5, 355, -365, 715, 11, 180, -11, 349])).toEqual([-5, 0, 5, 355, -365, 715]);
    expect(among(-800, 30, [-81, -79, -51, -49, 279, 281])).toEqual([-79, -51, 281]);
    expect(among(10, 300, [9, 11, 309, 311, 331])).toEqual([11, 309]);
    expect(among(10, 300, [9, 11, 309, 311, 331], 0.2)).toEqual([11, 309]);
    expect(among(10, 300, [9, 11, 309, 311, 331], 5)).toEqual([11, 309]);
    expect(isWithin(arc(0, 0), 1, 0)).toBe(true);
    expect(among(90, 360, [0, 90, 270, 271])).toEqual([0, 90, 270, 271]);
  });
});
