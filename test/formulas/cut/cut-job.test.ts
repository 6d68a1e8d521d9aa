/** The pieces of a job, prepared in the turns at which they fit the sheet. */
import { describe, expect, it } from 'vitest';
import { prepareJob } from '../../../src/formulas/cut/cut-job';
import { type Piece, pieceArea } from '../../../src/formulas/cut/piece';
import { turnedBox } from '../../../src/formulas/cut/piece-fit';

const degree = Math.PI / 180;
const sector = (innerRadius: number, outerRadius: number, degrees: number): Piece => ({
  ...{ shape: 'sector', innerRadius, outerRadius, lap: 0 },
  angle: degrees * degree,
});
const box = (length: number, width: number): Piece => ({ shape: 'rectangle', length, width, lap: 0 });
const sheet = { length: 2, width: 1, gap: 0 };
const turnsIn = (rows: readonly { readonly turn: number }[]) => rows.map(({ turn }) => Math.round(turn / degree));

describe('a job', () => {
  it('has each unlike shape once, for all pieces that are alike', () => {
    const pieces = [box(0.5, 0.2), sector(0.1, 0.3, 90), box(0.5, 0.2), { ...box(0.5, 0.2), lap: 0.01 }];
    const job = prepareJob(pieces, sheet);
    expect(job.shapes).toHaveLength(3);
    expect(job.shapeOf(2)).toBe(job.shapeOf(0));
    expect(job.shapeOf(3)).not.toBe(job.shapeOf(0));
    for (const [item, piece] of pieces.entries()) {
      expect(job.shapeOf(item).piece).toEqual(piece);
      expect(job.shapeOf(item).area).toBe(pieceArea(piece));
    }
  });

  it('is laid on the sheet less its gap all round, on 120 rows or as many as are asked for', () => {
    const job = prepareJob([box(0.5, 0.2)], { length: 2, width: 1, gap: 0.1 });
    expect([job.length, job.width, job.rowCount]).toEqual([1.8, 0.8, 120]);
    expect(job.rowHeight).toBeCloseTo(0.8 / 120, 15);
    const coarse = prepareJob([box(0.5, 0.2)], sheet, 8);
    expect([coarse.rowCount, coarse.rowHeight]).toEqual([8, 0.125]);
    expect(coarse.shapeOf(0).families.center[0]?.count).toBe(2);
  });

  it('grows each turned piece by the gap once', () => {
    const job = prepareJob([box(0.5, 0.2)], { length: 2, width: 1, gap: 0.1 });
    const [rows] = job.shapeOf(0).families.center;
    const budget = { spent: 0 };
    const grown = job.grown(rows!, budget);
    const { spent } = budget;
    expect(spent).toBeGreaterThan(rows!.count);
    expect(job.grown(rows!, budget)).toBe(grown);
    expect(budget.spent).toBe(spent);
    // 0.1 m of gap on rows of 0.8/120 m.
    expect(grown.below).toBe(15);
  });
});

describe('a job like another', () => {
  const pieces = [sector(0.1, 0.3, 50), sector(0.1, 0.6, 180), box(0.8, 0.3)];
  const many = Array.from({ length: 101 }, (_, i) => sector(0.1, 0.3 + i / 1e4, 50));

  it('has its shapes on the same rows, and their turns on others, as if it had tried them itself', () => {
    const job = prepareJob(pieces, sheet);
    const part = prepareJob(pieces.slice(1), sheet, job.rowCount, job);
    expect(part.shapes).toEqual(job.shapes.slice(1));
    expect(part.shapeOf(0)).toBe(job.shapeOf(1));
    const finer = prepareJob(pieces, sheet, 240, job);
    for (const [item, shape] of finer.shapes.entries()) {
      expect(shape).not.toBe(job.shapeOf(item));
      expect(shape.turns).toEqual(prepareJob(pieces, sheet, 240).shapeOf(item).turns);
      expect(shape.turns).toEqual(shape.families.every.map(({ turn }) => turn));
    }
  });

  it('tries the turns that are left out where there are many shapes', () => {
    const job = prepareJob(many, sheet);
    expect(job.shapeOf(0).turns).toHaveLength(12);
    expect(prepareJob(many.slice(0, 2), sheet, job.rowCount, job).shapeOf(0).turns).toHaveLength(24);
    expect(prepareJob(many, sheet, 240, job).shapeOf(0).turns).toBe(job.shapeOf(0).turns);
  });
});

describe('the turns of a piece', () => {
  it('are those at which it fits the sheet, from the few to the many', () => {
    const { families } = prepareJob([sector(0.1, 0.3, 50)], sheet).shapeOf(0);
    expect(turnsIn(families.center)).toEqual([0, 90, 180, 270]);
    expect(families.edge).toHaveLength(8);
    expect(families.usual).toEqual([...families.center, ...families.edge]);
    expect(families.every).toHaveLength(24);
    // 1.2 m across at most, on a sheet 1 m wide.
    const half = sector(0.1, 0.6, 180);
    const of = prepareJob([half], sheet).shapeOf(0);
    const fitting = (turn: number) => turnedBox(half)(turn).width <= 1 + 1e-9 && turnedBox(half)(turn).length <= 2;
    expect(turnsIn(of.families.center)).toEqual([90, 270]);
    for (const { turn, width } of of.families.every) {
      expect(fitting(turn)).toBe(true);
      expect(width).toBeLessThan(1 + 1e-9);
    }
    expect(of.at(0)).toBeUndefined();
    expect(of.at(Math.PI / 2)).toBe(of.families.center[0]);
    expect(of.at(1.5)?.turn).toBe(1.5);
    expect(of.at(1.5)).toBe(of.at(1.5));
  });

  it('of a rectangle are along and across, at no turn between', () => {
    const { families, at } = prepareJob([box(0.8, 0.3)], sheet).shapeOf(0);
    expect(families.every.map(({ turn }) => turn)).toEqual([0, Math.PI / 2]);
    expect([0, Math.PI, -Math.PI, 4 * Math.PI].map((turn) => at(turn)?.turn)).toEqual([0, 0, 0, 0]);
    expect([-Math.PI / 2, (3 * Math.PI) / 2].map((turn) => at(turn)?.turn)).toEqual([Math.PI / 2, Math.PI / 2]);
    for (const turn of [0.1, Math.PI / 2 + 1e-6, Math.PI - 0.3]) expect(at(turn)).toBeUndefined();
    expect(at(Math.PI / 2 + 1e-10)?.turn).toBe(Math.PI / 2);
    const across = prepareJob([box(1.5, 0.3)], sheet).shapeOf(0);
    expect(across.families.every.map(({ turn }) => turn)).toEqual([0]);
  });

  it('are the best one where a piece fits at none of the usual', () => {
    // A stick nearly as long as the diagonal, which rises by half.
    const thin = sector(1e-3, 1.33, 0.2);
    const job = prepareJob([thin], { length: 1.2, width: 0.6, gap: 0 });
    const { families } = job.shapeOf(0);
    expect(families.every).toHaveLength(1);
    expect(Math.abs(Math.tan(families.every[0]!.turn))).toBeCloseTo(0.5, 1);
    expect([families.center, families.edge, families.usual]).toEqual([families.every, families.every, families.every]);
  });

  it('are none for a piece that never fits, by a trillionth or by much', () => {
    for (const large of [box(2.1, 0.5), box(1.9, 1 + 1e-8), sector(0.1, 3, 90)]) {
      const { families, at, pair } = prepareJob([large], sheet).shapeOf(0);
      expect(Object.values(families).flat()).toEqual([]);
      expect(at(0)).toBeUndefined();
      expect(pair(0)).toEqual([]);
    }
    expect(prepareJob([box(2, 1)], sheet).shapeOf(0).families.every).toHaveLength(1);
  });

  it('are two head to tail, or one of them, or the usual ones', () => {
    const job = prepareJob([sector(0.1, 0.3, 50)], sheet);
    const { pair, at } = job.shapeOf(0);
    expect(pair(0.3)).toEqual([at(0.3), at(0.3 + Math.PI)]);
    expect(pair(0.3)).toBe(pair(0.3));
    const { pair: square, families } = prepareJob([box(0.5, 0.2)], sheet).shapeOf(0);
    expect(square(0.3)).toBe(families.center);
  });

  it('are fewer for many unlike pieces', () => {
    const unlike = (count: number) =>
      prepareJob(
        Array.from({ length: count }, (_, i) => sector(0.1, 0.3 + i * 1e-4, 50)),
        sheet,
        6,
      ).shapeOf(0).families;
    expect([100, 101, 300, 301].map((count) => unlike(count).every.length)).toEqual([24, 12, 12, 4]);
    expect([300, 301].map((count) => unlike(count).edge.length)).toEqual([8, 4]);
  });
});
