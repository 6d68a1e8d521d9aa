/** The last part of the search: what it makes of a sound layout and of those that a search met. */
import { describe, expect, it } from 'vitest';
import { type CloserLimits, movedCloser } from '../../../src/formulas/cut/cut-closer';
import { type Job, prepareJob, roughJob } from '../../../src/formulas/cut/cut-job';
import { isShorter, type Layout, lay, lengthOf } from '../../../src/formulas/cut/cut-layout';
import { laidNear } from '../../../src/formulas/cut/cut-near';
import type { Piece } from '../../../src/formulas/cut/piece';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { farthestOver } from './laid-outlines';
import { box, outlineDistance, outlinesOf, sector, sharedArea } from './laid-shapes';

const gap = 0.005;
const times = (count: number, piece: Piece) => Array.from({ length: count }, () => piece);
const mixed = [...times(4, sector(0.05, 0.3, 100)), ...times(2, sector(0.1, 0.25, 170)), ...times(2, box(0.3, 0.12))];
const jobOf = (pieces: readonly Piece[], length: number) =>
  prepareJob(pieces, { length: length + 2 * gap, width: 0.6 + 2 * gap, gap }, 24);
const endless = () => ({ length: Infinity, budget: { spent: 0 }, mostSteps: Infinity });

/** The layout of the pieces in their order, each as far left as it goes. */
function layInOrder(job: Job, family: 'center' | 'edge' | 'every'): Layout {
  const order = job.pieces.map((_, item) => item);
  const choices = order.map((item) => job.shapeOf(item).families[family]);
  return lay(job, { order, choices, rule: 'weight' }, endless())!;
}

/** The layout on rough rows, as the search meets it. */
function roughly(rough: Job, { spots }: Layout): Layout {
  const targets = spots.map((spot) => ({ ...spot, rows: rough.shapeOf(spot.item).at(spot.rows.turn)!, within: 3 }));
  return laidNear(rough, { targets, first: 0 }, endless(), [])!;
}

const begin = (more: Partial<CloserLimits> = {}): CloserLimits => ({
  ...{ budget: { spent: 0 }, mostSteps: 6e5, enough: 0, random: randomNumbers() },
  ...more,
});

function expectSound(job: Job, { spots, sheets, used }: Layout): void {
  expect(spots.map(({ item }) => item).sort((a, b) => a - b)).toEqual(job.pieces.map((_, item) => item));
  for (let sheet = 0; sheet < sheets; sheet++) {
    const laid = spots
      .filter((spot) => spot.sheet === sheet)
      .map(({ item, rows, x, y }) => ({
        piece: job.pieces[item]!,
        pose: { x: x + rows.originX, y: y + rows.originY, turn: rows.turn },
      }));
    const length = sheet === sheets - 1 ? used : job.length;
    expect(farthestOver(outlinesOf(laid), 1000 * length, 1000 * job.width, 0)).toBeLessThan(1e-6);
    expect(sharedArea(laid)).toBe(0);
    expect(outlineDistance(laid, gap)).toBeGreaterThan(gap - 3e-6);
  }
}

describe('eight pieces on one sheet', () => {
  const job = jobOf(mixed, 2);
  const rough = roughJob(job);
  const jobs = { sound: job, met: rough };
  const poor = layInOrder(job, 'center');
  const good = layInOrder(job, 'every');

  it('come closer than on their rows, without an overlap, and the same each time', () => {
    const limits = begin();
    const closer = movedCloser(good, [roughly(rough, good)], jobs, limits);
    expectSound(job, closer);
    expect(lengthOf(closer, job)).toBeLessThan(0.99 * lengthOf(good, job));
    expect(limits.budget.spent).toBeGreaterThan(6e5);
    expect(limits.budget.spent).toBeLessThan(8e5);
    expect(movedCloser(good, [roughly(rough, good)], jobs, begin())).toEqual(closer);
  });

  it('are no longer than the sound layout, whatever was met, and that one is kept without steps', () => {
    for (const sound of [poor, good]) {
      for (const met of [[], [roughly(rough, poor)], [roughly(rough, good), roughly(rough, poor)]]) {
        const closer = movedCloser(sound, met, jobs, begin({ mostSteps: 1 }));
        expect(isShorter(sound, closer, job)).toBe(false);
        expectSound(job, closer);
      }
    }
  });

  it('follow a layout that was met where that becomes shorter than the sound one', () => {
    expect(lengthOf(good, job)).toBeLessThan(lengthOf(poor, job));
    const alone = movedCloser(poor, [], jobs, begin());
    const followed = movedCloser(poor, [roughly(rough, poor), roughly(rough, good)], jobs, begin({ mostSteps: 1e5 }));
    expect(lengthOf(followed, job)).toBeLessThan(lengthOf(alone, job));
    expect(lengthOf(followed, job)).toBeLessThan(lengthOf(good, job));
    expectSound(job, followed);
  });

  it('become shorter by changes after those met', () => {
    const met = [roughly(rough, good)];
    // Half of the steps for those met are too few for a change.
    const little = movedCloser(good, met, jobs, begin({ mostSteps: 1 }));
    const much = movedCloser(good, met, jobs, begin({ mostSteps: 4e6 }));
    expect(lengthOf(much, job)).toBeLessThan(lengthOf(little, job) - 1e-3);
    expectSound(job, much);
  });

  it('are left once they are short enough', () => {
    const limits = begin({ enough: 9, mostSteps: 1e8 });
    const closer = movedCloser(good, [roughly(rough, good)], jobs, limits);
    expect(isShorter(good, closer, job)).toBe(false);
    expect(limits.budget.spent).toBeLessThan(1e5);
  });

  it.each([
    [6e5, 1.2126372664693958, 667928.5],
    [3e6, 1.2122150598375496, 3026164],
  ])('end at the length where they ended in %d steps, and with the steps then spent', (mostSteps, wanted, steps) => {
    const limits = begin({ mostSteps });
    const closer = movedCloser(good, [roughly(rough, good), roughly(rough, poor)], jobs, limits);
    // No published value: a change of the search that is worth it brings new ones.
    expect([lengthOf(closer, job), limits.budget.spent]).toEqual([expect.closeTo(wanted, 9), expect.closeTo(steps, 3)]);
  });

  it('turn no rectangle, and give its rows at its turn', () => {
    const closer = movedCloser(good, [roughly(rough, good)], jobs, begin());
    for (const { item, rows } of closer.spots) {
      const { piece, at } = job.shapeOf(item);
      if (piece.shape === 'rectangle') expect([0, Math.PI / 2]).toContain(rows.turn);
      expect(rows).toBe(at(rows.turn));
    }
  });
});

describe('pieces on several sheets', () => {
  const job = jobOf([...mixed, ...mixed], 0.9);
  const jobs = { sound: job, met: job };
  const sound = layInOrder(job, 'edge');

  it('end at the length where they ended when layouts are met', () => {
    const limits = begin({ mostSteps: 2e6 });
    const closer = movedCloser(sound, [sound, layInOrder(job, 'every'), layInOrder(job, 'center')], jobs, limits);
    expect([lengthOf(closer, job), limits.budget.spent]).toEqual([
      expect.closeTo(3.06114473853237, 9),
      expect.closeTo(2008150.4, 3),
    ]);
    expectSound(job, closer);
  });

  it('move on the last one alone', () => {
    expect(sound.sheets).toBeGreaterThan(1);
    const closer = movedCloser(sound, [], jobs, begin());
    expect(closer.sheets).toBe(sound.sheets);
    expect(closer.used).toBeLessThan(sound.used - 1e-3);
    for (const [i, spot] of closer.spots.entries()) {
      expect([spot.item, spot.sheet]).toEqual([sound.spots[i]!.item, sound.spots[i]!.sheet]);
      if (spot.sheet < sound.sheets - 1) expect(spot).toBe(sound.spots[i]);
    }
    expectSound(job, closer);
  });
});
