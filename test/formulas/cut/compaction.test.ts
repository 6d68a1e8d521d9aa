/** Compaction of layouts: lengths known by geometry, and what it must not do, held to polygons. */
import { describe, expect, it } from 'vitest';
import { type CompactionLimits, compacted, type PosedPiece } from '../../../src/formulas/cut/compaction';
import { prepareJob } from '../../../src/formulas/cut/cut-job';
import { lay } from '../../../src/formulas/cut/cut-layout';
import type { Pose } from '../../../src/formulas/cut/laid-piece';
import type { Piece } from '../../../src/formulas/cut/piece';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { farthestOver } from './laid-outlines';
import {
  box,
  degree,
  layAt,
  outlineDistance,
  outlinesOf,
  pieceByChance,
  pose,
  sector,
  sharedArea,
} from './laid-shapes';

const posed = (piece: Piece, at: Pose): PosedPiece => ({ piece, outline: pieceOutline(piece), pose: at });
const limits = (width: number, more: Partial<CompactionLimits> = {}): CompactionLimits => ({
  ...{ width, gap: 0, rounds: 25, budget: { spent: 0 } },
  ...more,
});
const lengthOf = (pieces: readonly PosedPiece[]) =>
  Math.max(...pieces.map(({ piece, pose: at }) => layAt(piece, at).right));
const at = (pieces: readonly PosedPiece[], poses: readonly Pose[]) =>
  pieces.map((one, i): PosedPiece => ({ ...one, pose: poses[i]! }));

/** That pieces keep their gap and lie on a strip of the sheet, by their outlines as polygons. */
function expectSound(pieces: readonly PosedPiece[], { width, gap }: CompactionLimits, length: number): void {
  // The polygons lie within the exact outlines, or outside by a hundredth of a millimeter in a hollow.
  expect(farthestOver(outlinesOf(pieces), 1000 * length, 1000 * width, 0)).toBeLessThan(1e-6);
  expect(sharedArea(pieces)).toBeLessThan(1e-3);
  if (gap > 0) expect(outlineDistance(pieces, gap)).toBeGreaterThan(gap - 3e-6);
}

describe('a length known by geometry', () => {
  // What is kept apart at last is at most a few hundredths of a millimeter.
  const expectLength = (pieces: readonly PosedPiece[], how: CompactionLimits, length: number) => {
    const found = compacted(pieces, how)!;
    expectSound(at(pieces, found.poses), how, found.length);
    expect(found.length).toBeCloseTo(lengthOf(at(pieces, found.poses)), 4);
    expect(found.length).toBeGreaterThan(length - 1e-9);
    expect(found.length).toBeLessThan(length + 1e-4);
    return found;
  };

  it('is that of the longer one of two boxes that lie one above the other', () => {
    const pieces = [posed(box(0.3, 0.4), pose(0.1, 0.02)), posed(box(0.25, 0.4), pose(0.12, 0.5))];
    const { poses } = expectLength(pieces, limits(1), 0.3);
    expect(poses.map(({ turn }) => turn)).toEqual([0, 0]);
  });

  it('is the sum of two boxes and their gap on a narrow sheet', () => {
    const pieces = [posed(box(0.3, 0.4), pose(0.02, 0.1)), posed(box(0.25, 0.4), pose(0.4, 0.1))];
    expectLength(pieces, limits(0.6), 0.55);
    expectLength(pieces, limits(0.6, { gap: 0.01 }), 0.56);
  });

  it('is 0.9 of two discs of 0.25 on a sheet of 0.8: a triangle of 3, 4 and 5', () => {
    const disc = sector(0, 0.25, 359.9);
    const pieces = [posed(disc, pose(0.27, 0.28)), posed(disc, pose(0.78, 0.48))];
    expectLength(pieces, limits(0.8), 0.9);
    // A gap moves their centers 0.51 apart.
    expectLength(pieces, limits(0.8, { gap: 0.01 }), 0.5 + Math.sqrt(0.51 ** 2 - 0.3 ** 2));
  });

  it('is the radius of a half disc once its flat side lies along the edge', () => {
    expectLength([posed(sector(0, 0.3, 180), pose(0.06, 0.4, 8))], limits(0.8), 0.3);
  });

  it('is that of pieces that must first move apart a little', () => {
    const pieces = [posed(box(0.3, 0.4), pose(0, 0)), posed(sector(0, 0.25, 180), pose(0.2995, 0.26))];
    expect(sharedArea(pieces)).toBeGreaterThan(100);
    expectLength(pieces, limits(0.52), 0.55);
  });

  it('is had by two sectors that turn head to tail', () => {
    // Two of 60 degrees on a strip as high as they: one's slanted side lies along the other's, and 0.25 of it is shared.
    const wedge = sector(0, 0.5, 60);
    const across = 0.5 * Math.sin(60 * degree) + 1e-3;
    const pieces = [posed(wedge, pose(0.3, 2e-4, 30.05)), posed(wedge, pose(0.53, across - 2e-4, 210.05))];
    const found = compacted(pieces, limits(across))!;
    expectSound(at(pieces, found.poses), limits(across), found.length);
    expect(found.length).toBeGreaterThan(0.745);
    expect(found.length).toBeLessThan(0.7501);
  });
});

describe('layouts by chance', () => {
  const layouts = Array.from({ length: 5 }, (_, i) => {
    const random = randomNumbers();
    for (let skip = 0; skip < 37 * i; skip++) random();
    const gap = i % 2 === 0 ? 0 : 0.012;
    const pieces = Array.from({ length: 7 }, () => pieceByChance(random));
    // A little wider than is kept, so that no rounding makes the start unsound.
    const wider = gap + 1e-6;
    const job = prepareJob(pieces, { length: 4 + 2 * wider, width: 0.8 + 2 * wider, gap: wider }, 24);
    const recipe = {
      order: pieces.map((__, item) => item),
      choices: pieces.map((__, item) => job.shapeOf(item).families.edge),
      rule: 'weight' as const,
    };
    const { spots } = lay(job, recipe, { length: Infinity, budget: { spent: 0 }, mostSteps: Infinity })!;
    const off = 1e-7;
    const laid = spots.map(({ item, rows, x, y }) =>
      posed(pieces[item]!, { x: x + off + rows.originX, y: y + off + rows.originY, turn: rows.turn }),
    );
    return { laid, how: limits(job.width + 2 * off, { gap, rounds: 12 }) };
  });

  it('become shorter, keep their gaps and the sheet, and turn no rectangle', () => {
    let gained = 0;
    for (const { laid, how } of layouts) {
      const found = compacted(laid, how)!;
      const moved = at(laid, found.poses);
      expectSound(moved, how, found.length);
      expect(found.length).toBeGreaterThan(0);
      expect(found.length).toBeLessThanOrEqual(lengthOf(laid) + 1e-12);
      expect(lengthOf(moved)).toBeLessThanOrEqual(found.length + 1e-9);
      for (const [i, { piece, pose: before }] of laid.entries()) {
        if (piece.shape === 'rectangle') expect(found.poses[i]!.turn).toBe(before.turn);
      }
      gained += 1 - found.length / lengthOf(laid);
    }
    expect(gained / layouts.length).toBeGreaterThan(0.02);
  });

  it('are the same each time, by steps that are counted', () => {
    for (const { laid, how } of layouts.slice(0, 2)) {
      const [one, other] = [{ spent: 0 }, { spent: 0 }];
      expect(compacted(laid, { ...how, budget: one })).toEqual(compacted(laid, { ...how, budget: other }));
      expect(one.spent).toBe(other.spent);
      expect(one.spent).toBeGreaterThan(12 * 200 * laid.length);
    }
  });

  it('move the first few left and leave the others, where only those may move', () => {
    for (const { laid, how } of layouts) {
      const right = lengthOf(laid);
      const found = compacted(laid, { ...how, movable: 3 })!;
      expect(found.poses.slice(3)).toEqual(laid.slice(3).map(({ pose: before }) => before));
      const moved = at(laid, found.poses);
      expectSound(moved, how, right);
      const mean = (pieces: readonly PosedPiece[]) =>
        pieces.slice(0, 3).reduce((sum, { piece, pose: where }) => {
          const { left, right: end } = layAt(piece, where);
          return sum + left + end;
        }, 0);
      expect(mean(moved)).toBeLessThan(mean(laid) + 1e-3);
      expect(found.length).toBe(right);
    }
  });

  it('are left as they are in no rounds, and given up where they will hardly become short enough', () => {
    for (const { laid, how } of layouts.slice(0, 3)) {
      const none = compacted(laid, { ...how, rounds: 0 })!;
      expect(none.poses).toEqual(laid.map(({ pose: before }) => before));
      expect(none.length).toBe(lengthOf(laid));
      const found = compacted(laid, how)!;
      const [whole, part] = [{ spent: 0 }, { spent: 0 }];
      expect(compacted(laid, { ...how, budget: whole, enough: lengthOf(laid) })).toEqual(found);
      expect(compacted(laid, { ...how, budget: part, enough: 0.9 * found.length })).toBeUndefined();
      expect(part.spent).toBeLessThan(0.7 * whole.spent);
    }
  });
});

describe('movable pieces', () => {
  it('go left to what lies there, and do not turn or push it', () => {
    const still = posed(box(0.2, 0.3), pose(0.1, 0.1));
    const pieces = [posed(box(0.2, 0.3), pose(0.34, 0.1)), posed(box(0.3, 0.3), pose(0.04, 0.5)), still];
    const { poses, length } = compacted(pieces, limits(0.9, { movable: 2 }))!;
    expect(poses.map(({ x }) => x)).toEqual([0.3, 0, 0.1].map((x) => expect.closeTo(x, 4)));
    expect(poses[0]!.x).toBeGreaterThan(0.3);
    expect(poses[1]!.x).toBeGreaterThanOrEqual(0);
    // The right end stays where it was.
    expect(length).toBe(0.54);
  });

  it('may be far from everything', () => {
    const alone = posed(box(0.2, 0.2), pose(1, 0.4));
    const { poses } = compacted([alone, posed(box(0.1, 0.1), pose(3, 0.4))], limits(1, { movable: 1, rounds: 4 }))!;
    expect(poses[0]!.x).toBeLessThan(1);
    expect(poses[1]).toEqual(pose(3, 0.4));
  });
});

describe('pieces that cannot be laid', () => {
  it('are given up where they do not fit the sheet, or lie on each other', () => {
    expect(compacted([posed(box(0.3, 0.5), pose(0, 0))], limits(0.4))).toBeUndefined();
    const crossed = [posed(box(1, 0.1), pose(0, 0.4)), posed(box(0.1, 0.8), pose(0.4, 0.01))];
    expect(compacted(crossed, limits(0.9, { rounds: 5 }))).toBeUndefined();
    const inside = [posed(box(0.8, 0.8), pose(0, 0)), posed(box(0.1, 0.1), pose(0.35, 0.35))];
    expect(compacted(inside, limits(0.9, { rounds: 2 }))).toBeUndefined();
  });

  it('are given up soon where they lie deep in each other, or hardly come apart', () => {
    /** In times of looking for near places once. */
    const roundsOf = (pieces: readonly PosedPiece[], width: number) => {
      const [one, all] = [{ spent: 0 }, { spent: 0 }];
      compacted(pieces, limits(width, { rounds: 0, budget: one }));
      expect(compacted(pieces, limits(width, { budget: all }))).toBeUndefined();
      return all.spent / one.spent;
    };
    const crossed = [posed(box(1, 0.1), pose(0, 0.4)), posed(box(0.1, 0.8), pose(0.4, 0.01))];
    expect(roundsOf(crossed, 0.9)).toBeGreaterThan(1.5);
    expect(roundsOf(crossed, 0.9)).toBeLessThan(3);
    // Wider than the sheet by ten movements.
    const wide = [posed(box(0.3, 0.5), pose(0, 0))];
    expect(roundsOf(wide, 0.42)).toBeGreaterThan(2.5);
    expect(roundsOf(wide, 0.42)).toBeLessThan(5);
    // An overlap that the first rounds remove is no reason.
    const lapped = [posed(box(0.5, 0.3), pose(0.01, 0)), posed(box(0.5, 0.29), pose(0.02, 0.29))];
    expect(compacted(lapped, limits(0.6))!.length).toBeCloseTo(0.5, 4);
  });
});
