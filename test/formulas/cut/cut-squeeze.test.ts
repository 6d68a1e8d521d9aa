/** The search by overlaps: what it returns is shorter and sound, and where the least length is known it comes near it. */
import { describe, expect, it } from 'vitest';
import type { PosedPiece } from '../../../src/formulas/cut/compaction';
import { prepareJob, roughJob } from '../../../src/formulas/cut/cut-job';
import { type Squeezed, type SqueezeLimits, squeezed } from '../../../src/formulas/cut/cut-squeeze';
import type { Piece } from '../../../src/formulas/cut/piece';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { farthestOver } from './laid-outlines';
import { box, layAt, outlineDistance, outlinesOf, pieceByChance, sector, sharedArea } from './laid-shapes';

const width = 0.6;
const jobOf = (pieces: readonly Piece[], gap: number) =>
  roughJob(prepareJob(pieces, { length: 10 + 2 * gap, width: width + 2 * gap, gap }));

/** The pieces one after another along the sheet. */
function inALine(pieces: readonly Piece[], gap: number): readonly PosedPiece[] {
  let end = -gap;
  return pieces.map((piece) => {
    const { left, right, bottom } = layAt(piece, { x: 0, y: 0, turn: 0 });
    const pose = { x: end + gap - left, y: -bottom, turn: 0 };
    end += gap + right - left;
    return { piece, outline: pieceOutline(piece), pose };
  });
}

const lengthOf = (posed: readonly Pick<PosedPiece, 'piece' | 'pose'>[]) =>
  Math.max(...posed.map(({ piece, pose }) => layAt(piece, pose).right));

const begin = (more: Partial<SqueezeLimits> = {}): SqueezeLimits => ({
  ...{ budget: { spent: 0 }, mostSteps: 4e6, enough: 0, random: randomNumbers() },
  ...more,
});

function search(pieces: readonly Piece[], gap: number, limits = begin()) {
  const line = inALine(pieces, gap);
  const items = pieces.map((_, item) => item);
  const found = squeezed(jobOf(pieces, gap), items, line, lengthOf(line), limits);
  return { found, before: lengthOf(line) };
}

function expectSound(pieces: readonly Piece[], { poses, length }: Squeezed, gap: number): void {
  const laid = pieces.map((piece, i) => ({ piece, pose: poses[i]! }));
  // The sheet may be longer by what keeps pieces off its edges.
  expect(length - lengthOf(laid)).toBeLessThan(1e-5);
  expect(lengthOf(laid)).toBeLessThanOrEqual(length);
  expect(farthestOver(outlinesOf(laid), 1000 * length, 1000 * width, 0)).toBeLessThan(1e-6);
  // Square millimeters, by a library that counts in tenths of a micrometer.
  expect(sharedArea(laid)).toBeLessThan(1e-6);
  if (gap > 0) expect(outlineDistance(laid, gap)).toBeGreaterThan(gap - 3e-6);
}

const times = (count: number, piece: Piece) => Array.from({ length: count }, () => piece);

describe('the search by overlaps', () => {
  it.each([0, 0.004])('makes pieces by chance shorter and keeps them apart, with a gap of %d m', (gap) => {
    const random = randomNumbers();
    for (let trial = 0; trial < 8; trial++) {
      const pieces = Array.from({ length: 5 }, () => pieceByChance(random));
      const { found, before } = search(pieces, gap);
      expect(found!.length).toBeLessThan(0.8 * before);
      expectSound(pieces, found!, gap);
    }
  });

  it('puts two half disks together to a disk', () => {
    const pieces = times(2, sector(0, 0.3, 180));
    const [one, other] = inALine(pieces, 0);
    const apart = [one!, { ...other!, pose: { ...other!.pose, x: other!.pose.x + 0.2 } }];
    const found = squeezed(jobOf(pieces, 0), [0, 1], apart, 0.8, begin());
    expectSound(pieces, found!, 0);
    expect(found!.length).toBeLessThan(0.6001);
  });

  it('leaves rectangles along the sheet or across it', () => {
    const pieces = times(6, box(0.3, 0.2));
    const { found } = search(pieces, 0, begin({ mostSteps: 8e6 }));
    expectSound(pieces, found!, 0);
    // Two columns of two and a row of two.
    expect(found!.length).toBeLessThan(0.8001);
    for (const { turn } of found!.poses) expect([0, Math.PI / 2]).toContainEqual(expect.closeTo(turn, 12));
  });

  it('finds the same again', () => {
    const pieces = [...times(3, sector(0.05, 0.25, 110)), box(0.2, 0.1)];
    expect(search(pieces, 0.002)).toEqual(search(pieces, 0.002));
  });

  it('ends with its steps, and once the length is enough', () => {
    const pieces = times(5, sector(0.05, 0.25, 110));
    const limits = begin();
    const { found } = search(pieces, 0, limits);
    // The last compaction may still end.
    expect(limits.budget.spent).toBeLessThan(1.1 * limits.mostSteps);
    const early = begin({ enough: 1.1 * found!.length });
    const enough = search(pieces, 0, early);
    expect(enough.found!.length).toBeLessThanOrEqual(1.1 * found!.length);
    expect(early.budget.spent).toBeLessThan(limits.budget.spent / 2);
    const none = begin({ mostSteps: 0 });
    expect(search(pieces, 0, none).found).toBeUndefined();
  });

  it('leaves one piece, a layout that cannot be shorter, and a gap longer than the layout as they are', () => {
    expect(search([sector(0.1, 0.3, 90)], 0).found).toBeUndefined();
    expect(search(times(2, box(0.5, width)), 0).found).toBeUndefined();
    const specks = times(2, box(0.01, 0.01));
    const limits = begin();
    expect(squeezed(jobOf(specks, 5), [0, 1], inALine(specks, 0), 0.02, limits)).toBeUndefined();
    expect(limits.budget.spent).toBe(0);
  });
});
