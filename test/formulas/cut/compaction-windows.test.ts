/** Compaction of many pieces, a few at a time, held to their outlines as polygons. */
import { describe, expect, it } from 'vitest';
import type { PosedPiece } from '../../../src/formulas/cut/compaction';
import { compactedInWindows } from '../../../src/formulas/cut/compaction-windows';
import { prepareJob } from '../../../src/formulas/cut/cut-job';
import { lay } from '../../../src/formulas/cut/cut-layout';
import type { Piece } from '../../../src/formulas/cut/piece';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';
import { farthestOver } from './laid-outlines';
import { box, layAt, outlineDistance, outlinesOf, sector, sharedArea } from './laid-shapes';

const gap = 0.004;
const pieces: readonly Piece[] = Array.from({ length: 45 }, (_, i) => {
  if (i % 5 === 4) return box(0.12, 0.07);
  return i % 5 < 3 ? sector(0.03, 0.1, 110) : sector(0.02, 0.08, 170, 0.01);
});

/** A layout on rows, a little wider apart than is kept, so that no rounding makes it unsound. */
function start(): { readonly laid: readonly PosedPiece[]; readonly width: number } {
  const wider = gap + 1e-6;
  const job = prepareJob(pieces, { length: 4, width: 0.5 + 2 * wider, gap: wider }, 24);
  const recipe = {
    order: pieces.map((_, item) => item),
    choices: pieces.map((_, item) => job.shapeOf(item).families.edge),
    rule: 'weight' as const,
  };
  const { spots } = lay(job, recipe, { length: Infinity, budget: { spent: 0 }, mostSteps: Infinity })!;
  const laid = spots.map(({ item, rows, x, y }) => {
    const piece = pieces[item]!;
    const pose = { x: x + 1e-7 + rows.originX, y: y + 1e-7 + rows.originY, turn: rows.turn };
    return { piece, outline: pieceOutline(piece), pose };
  });
  return { laid, width: job.width + 2e-7 };
}

const lengthOf = (laid: readonly PosedPiece[]) => Math.max(...laid.map(({ piece, pose }) => layAt(piece, pose).right));

describe('forty-five pieces', () => {
  const { laid, width } = start();
  const compact = (mostSteps: number, on = width) => {
    const budget = { spent: 0 };
    const { poses, length } = compactedInWindows(laid, { width: on, gap, rounds: 12, budget }, mostSteps);
    return { length, moved: laid.map((one, i): PosedPiece => ({ ...one, pose: poses[i]! })), spent: budget.spent };
  };

  it('become shorter, keep their gap and the sheet, and turn no rectangle', () => {
    const { length, moved, spent } = compact(4e6);
    expect(length).toBeLessThan(0.985 * lengthOf(laid));
    expect(lengthOf(moved)).toBeCloseTo(length, 12);
    expect(farthestOver(outlinesOf(moved), 1000 * length, 1000 * width, 0)).toBeLessThan(1e-6);
    expect(sharedArea(moved)).toBe(0);
    expect(outlineDistance(moved, gap)).toBeGreaterThan(gap - 3e-6);
    for (const [i, { piece, pose }] of moved.entries()) {
      if (piece.shape === 'rectangle') expect(pose.turn).toBe(laid[i]!.pose.turn);
    }
    expect(spent).toBeGreaterThan(1e5);
  });

  it('end where they ended, once a pass gains too little, with the steps that it took', () => {
    const { length, spent } = compact(1e8);
    // No published value: a change of the search that is worth it brings new ones.
    expect([length, spent]).toEqual([expect.closeTo(1.133670388757931, 9), expect.closeTo(3457026.5, 3)]);
  });

  it('stay where they are without steps, and move less in fewer steps', () => {
    const none = compact(0);
    expect(none.moved).toEqual(laid);
    expect([none.length, none.spent]).toEqual([lengthOf(laid), 0]);
    const [one, more] = [compact(1), compact(4e6)];
    expect(one.length).toBeLessThan(none.length);
    expect(more.length).toBeLessThan(one.length);
    expect(more.spent).toBeGreaterThan(1.9 * one.spent);
  });

  it('take hardly more steps on a sheet as wide as a field, where few pieces are in the way of any other', () => {
    const [narrow, wide] = [compact(1), compact(1, 200 * width)];
    expect(wide.spent).toBeLessThan(4 * narrow.spent);
    expect(wide.length).toBeLessThan(lengthOf(laid));
  });
});
