/** Whether a piece fits a sheet, held to a plain search of many turns and to figures worked by hand. */
import { describe, expect, it, vi } from 'vitest';
import { turnsOf } from '../../../src/formulas/cut/cut-turns';
import type { Piece } from '../../../src/formulas/cut/piece';
import { bestTurn, fitsRectangle, mostPieces, piecesThatFit, turnedBox } from '../../../src/formulas/cut/piece-fit';
import { piecePolygon } from './piece-shape';

const degree = Math.PI / 180;
const sector = (innerRadius: number, outerRadius: number, degrees: number, lap = 0): Piece => ({
  ...{ shape: 'sector', innerRadius, outerRadius, lap },
  angle: degrees * degree,
});
const sheet = (length: number, width: number): Piece => ({ shape: 'rectangle', length, width, lap: 0 });
const pieces = [sector(0.2, 0.5, 40), sector(0.1, 0.4, 170, 0.02), sector(0.05, 0.3, 290), sheet(0.6, 0.2)];

/** The share of a rectangle that the piece needs at a turn, by its points. */
function shareAt(piece: Piece, turn: number, length: number, width: number): number {
  const points = piecePolygon(piece, 1e-6);
  const xs = points.map(({ x, y }) => x * Math.cos(turn) - y * Math.sin(turn));
  const ys = points.map(({ x, y }) => x * Math.sin(turn) + y * Math.cos(turn));
  return Math.max((Math.max(...xs) - Math.min(...xs)) / length, (Math.max(...ys) - Math.min(...ys)) / width);
}

describe('the box of a turned piece', () => {
  it.each(pieces)('is that of its points: %o', (piece) => {
    const box = turnedBox(piece);
    for (let d = -400; d < 400; d += 37) {
      const { length, width } = box(d * degree);
      expect(Math.max(length / 0.5, width / 0.4)).toBeCloseTo(shareAt(piece, d * degree, 0.5, 0.4), 4);
    }
  });
});

describe('the best turn', () => {
  it.each(pieces)('needs no more of a sheet than any of ten thousand turns: %o', (piece) => {
    for (const [length, width] of [
      [1, 1],
      [0.7, 0.5],
      [2, 0.35],
      [0.3, 1.5],
    ] as const) {
      const { turn, share } = bestTurn(piece, length, width);
      const box = turnedBox(piece);
      const at = (one: number) => Math.max(box(one).length / length, box(one).width / width);
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i < 10_000; i++) least = Math.min(least, at((i * Math.PI) / 10_000));
      expect(share).toBeLessThan(least + 1e-9);
      expect(share).toBeGreaterThan(least - 3e-4);
      expect(at(turn)).toBeCloseTo(share, 9);
    }
  });

  it('needs no more than any of two thousand turns, whatever the piece and the sheet', () => {
    // The same sizes each time: fractions of multiples of the golden ratio fill a range evenly.
    const spread = (i: number, k: number) => (i * 0.6180339887 * (k + 1) + 0.37 * k) % 1;
    for (let i = 1; i <= 60; i++) {
      const outer = 0.2 + spread(i, 0);
      const piece =
        i % 4 === 0
          ? sheet(0.1 + outer, 0.05 + spread(i, 1))
          : sector(outer * 0.9 * spread(i, 1), outer, 20 + 320 * spread(i, 2), i % 3 === 0 ? 0.02 : 0);
      const [length, width] = [0.3 + 2 * spread(i, 3), 0.2 + 3 * spread(i, 4)];
      const box = turnedBox(piece);
      let least = Infinity;
      for (let k = 0; k < 2000; k++) {
        const taken = box((k * Math.PI) / 2000);
        least = Math.min(least, Math.max(taken.length / length, taken.width / width));
      }
      expect(bestTurn(piece, length, width).share).toBeLessThan(least + 1e-9);
    }
  });

  it('is exactly square to the sheet where that is the best', () => {
    expect(bestTurn(sheet(0.6, 0.2), 1, 1 / 3)).toEqual({ turn: 0, share: expect.closeTo(0.6, 12) });
    expect(bestTurn(sheet(0.2, 0.6), 1, 1 / 3).turn).toBe(Math.PI / 2);
  });
});

describe('a piece fits', () => {
  it('to a billionth, square or aslant', () => {
    expect(fitsRectangle(sheet(1, 0.5), 1, 0.5)).toBe(true);
    expect(fitsRectangle(sheet(1, 0.5), 1, 0.5 * (1 - 1e-10))).toBe(true);
    expect(fitsRectangle(sheet(1, 0.5), 1, 0.499)).toBe(false);
    expect(fitsRectangle(sheet(1, 0.5), 0.5, 1)).toBe(true);
    // A stick of 1.4 on the diagonal of a square of 1, which is 1.4142; 0.01 of width costs as much.
    expect(fitsRectangle(sheet(1.4, 0.01), 1, 1)).toBe(true);
    expect(fitsRectangle(sheet(1.41, 0.01), 1, 1)).toBe(false);
    expect(fitsRectangle(sheet(2, 3), 2, 3)).toBe(true);
    expect(fitsRectangle(sheet(0.1, 0.1), 0, 1)).toBe(false);
    expect(fitsRectangle(sheet(0.1, 0.1), 1, 0)).toBe(false);
  });

  it('does not try turns of a piece that is too large to compute with', () => {
    const cosine = vi.spyOn(Math, 'cos');
    expect(piecesThatFit((count) => sector(Infinity, Infinity, 300 / count), 1, 1)).toBeUndefined();
    expect(cosine.mock.calls.length).toBeLessThan(1000);
    cosine.mockRestore();
    expect(fitsRectangle(sheet(0.1, 0.1), -1, -1)).toBe(false);
  });

  it('a half disc on twice its radius by its radius, and not on less', () => {
    expect(fitsRectangle(sector(0, 0.5, 180), 1, 0.5)).toBe(true);
    expect(fitsRectangle(sector(0, 0.5, 180), 0.5, 1)).toBe(true);
    expect(fitsRectangle(sector(0, 0.5, 180), 0.99, 0.5)).toBe(false);
  });
});

describe('the least number of pieces that fit', () => {
  const inPieces = (length: number) => (count: number) => sheet(length / count, 0.3);

  it('is the first that does, up to sixty', () => {
    expect(piecesThatFit(inPieces(1), 1, 0.3)).toBe(1);
    expect(piecesThatFit(inPieces(2.5), 1, 0.3)).toBe(3);
    expect(piecesThatFit(inPieces(60), 1, 0.3)).toBe(mostPieces);
    expect(piecesThatFit(inPieces(61), 1, 0.3)).toBeUndefined();
  });

  it('is none whose lap the piece cannot take', () => {
    // In three, each third of the girth is narrower than its lap.
    const lapped = (count: number): Piece => ({ ...sheet(0.9 / count, 0.3), lap: 0.4 });
    expect(piecesThatFit(lapped, 0.5, 0.5)).toBeUndefined();
  });
});

describe('the usual turns', () => {
  it('lay a sector’s middle or an edge along or across the sheet, or at thirty degrees from turn to turn between', () => {
    const { center, edge, between } = turnsOf(sector(0.1, 0.4, 50));
    const right = (turn: number) => Math.abs(Math.sin(2 * turn)) < 1e-12;
    expect(center).toEqual([0, 1, 2, 3].map((quarter) => (quarter * Math.PI) / 2));
    expect(edge).toHaveLength(8);
    expect(edge.every((turn) => right(turn + 25 * degree) || right(turn - 25 * degree))).toBe(true);
    expect(new Set(edge.map((turn) => Math.round(turn / degree))).size).toBe(8);
    expect(between.map((turn) => Math.round(turn / degree))).toEqual(Array.from({ length: 12 }, (_, i) => 15 + 30 * i));
  });

  it('lay a rectangle along or across', () => {
    expect(turnsOf(sheet(1, 2))).toEqual({ center: [0, Math.PI / 2], edge: [], between: [] });
  });
});
