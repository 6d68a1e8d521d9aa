/** The parts of the search: starts, small changes, and what each may and must not do to a layout. */
import { describe, expect, it } from 'vitest';
import type { PatternRow } from '../../../src/formulas/cone/cone-pattern';
import { layBoxes } from '../../../src/formulas/cut/cut-boxes';
import { type Changed, changed } from '../../../src/formulas/cut/cut-changes';
import { improved, inTurn, type SearchLimits, shortestOf } from '../../../src/formulas/cut/cut-improve';
import { type Job, prepareJob } from '../../../src/formulas/cut/cut-job';
import { isShorter, type Layout, lay, lengthOf, type Spot } from '../../../src/formulas/cut/cut-layout';
import { bestLayout } from '../../../src/formulas/cut/cut-repeat';
import { ordersOf, shortestLayout } from '../../../src/formulas/cut/cut-search';
import {
  randomStart,
  rankedStarts,
  recipeFor,
  type Start,
  sampleOf,
  starts,
  startsOfSheets,
} from '../../../src/formulas/cut/cut-starts';
import type { Piece } from '../../../src/formulas/cut/piece';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { farthestOver, laidOutlines, largestOverlap, leastDistance } from './laid-outlines';
import { badSpots } from './plain-sheet';

const degree = Math.PI / 180;
const sector = (innerRadius: number, outerRadius: number, degrees: number): Piece => ({
  ...{ shape: 'sector', innerRadius, outerRadius, lap: 0 },
  angle: degrees * degree,
});
const box = (length: number, width: number): Piece => ({ shape: 'rectangle', length, width, lap: 0 });
const times = (count: number, piece: Piece) => Array.from({ length: count }, () => piece);

const mixed = [...times(4, sector(0.05, 0.3, 100)), ...times(2, sector(0.1, 0.25, 170)), ...times(2, box(0.3, 0.12))];
const jobOf = (pieces: readonly Piece[], gap = 0.01, rowCount = 24): Job =>
  prepareJob(pieces, { length: 1 + 2 * gap, width: 0.6 + 2 * gap, gap }, rowCount);
const endless = () => ({ length: Number.POSITIVE_INFINITY, budget: { spent: 0 }, mostSteps: Number.POSITIVE_INFINITY });
const inOrder = (job: Job) => job.pieces.map((_, item) => item);
const laid = (job: Job, start: Start) => lay(job, recipeFor(job, inOrder(job), start), endless())!;
const itemsOf = ({ spots }: Pick<Layout, 'spots'>) => spots.map(({ item }) => item).sort((a, b) => a - b);

/** That the outlines of a layout keep the gap from each other and from the sheet's edge, by a polygon library. */
function expectApart(job: Job, { spots }: Layout): void {
  const { length, width, gap } = job.sheet;
  const patterns = job.pieces.map((piece) =>
    piece.shape === 'sector'
      ? { ...piece, sectorAngle: piece.angle }
      : { lap: piece.lap, blankLength: piece.length, blankWidth: piece.width },
  ) as unknown as readonly PatternRow[];
  const plan = spots.map(({ item, rows, sheet, x, y }) => {
    const from = job.pieces[item]!.shape === 'sector' ? [rows.originX, rows.originY] : [0, 0];
    const place = { x: gap + x + from[0]!, y: gap + y + from[1]! };
    return { pattern: item + 1, piece: 1, sheet: sheet + 1, ...place, direction: rows.turn };
  });
  const laidOut = laidOutlines(patterns, plan, 1);
  expect(farthestOver(laidOut, length * 1000, width * 1000, gap * 1000)).toBeLessThan(1e-6);
  expect(largestOverlap(laidOut)).toBeLessThan(0.1);
  expect(leastDistance(laidOut, gap * 1000)).toBeGreaterThan(gap * 1000 - 0.05);
}

describe('small changes', () => {
  const job = jobOf(mixed);
  const { spots } = laid(job, starts[0]!);
  const made = new Map<number, readonly Changed[]>();
  /** Many changes, which the first test that needs them makes for all. */
  const tries = () => {
    const random = randomNumbers();
    const all = made.get(2500) ?? Array.from({ length: 2500 }, () => changed(spots, job, random));
    made.set(2500, all);
    return all;
  };
  const unchanged = (item: number) => spots.find((spot) => spot.item === item)!;
  const turnedBy = (spot: Spot) => spot.rows.turn - unchanged(spot.item).rows.turn;
  const countTurned = (targets: readonly Spot[]) => targets.filter((spot) => turnedBy(spot) !== 0).length;

  it('keep every piece, and leave those before the first change as they are', () => {
    for (const { targets, first } of tries()) {
      expect(itemsOf({ spots: targets })).toEqual(inOrder(job));
      for (const [i, target] of targets.slice(0, first).entries()) expect(target).toBe(spots[i]);
    }
    // A change of the last piece alone is among them, and one of the first.
    const firsts = new Set(tries().map(({ first }) => first));
    expect(firsts.has(0)).toBe(true);
    expect(Math.max(...firsts)).toBeGreaterThanOrEqual(spots.length - 1);
  });

  it('lay a piece only at turns at which it fits, and let what was moved move six rows', () => {
    for (const { targets } of tries())
      for (const target of targets) {
        expect(target.rows).toBe(job.shapeOf(target.item).at(target.rows.turn));
        const isMoved = target.y !== unchanged(target.item).y || turnedBy(target) !== 0;
        if (isMoved) expect(target.within).toBe(6);
      }
  });

  it('turn all pieces at once one time in twenty, and else at most three', () => {
    const all = tries().filter(({ targets }) => countTurned(targets) > 3);
    // Rectangles cannot be turned a little; both others can nearly always.
    expect(all.length / tries().length).toBeGreaterThan(0.03);
    expect(all.length / tries().length).toBeLessThan(0.07);
    for (const { targets, first } of all) {
      expect(first).toBe(0);
      expect(targets.map(({ item }) => item)).toEqual(spots.map(({ item }) => item));
      for (const target of targets) {
        const { rows, y } = unchanged(target.item);
        // About its origin, which stays as high as it was.
        expect(target.y + target.rows.originY).toBeCloseTo(y + rows.originY, 12);
      }
    }
    // Those that face one way turn by one step; those that face the other by the same, or by its opposite.
    const steps = all.map(({ targets }) => {
      const by = (facing: boolean) =>
        new Set(
          targets
            .filter((spot) => turnedBy(spot) !== 0 && Math.cos(unchanged(spot.item).rows.turn) >= 0 === facing)
            .map((spot) => Math.round(128 * (spot.rows.turn - Math.round(128 * unchanged(spot.item).rows.turn) / 128))),
        );
      return [by(true), by(false)] as const;
    });
    for (const [one, other] of steps) {
      expect(one.size).toBeLessThanOrEqual(1);
      expect(other.size).toBeLessThanOrEqual(1);
      for (const step of one) expect(Math.abs(step)).toBeLessThanOrEqual(50);
    }
    const compared = steps.filter(([one, other]) => one.size === 1 && other.size === 1);
    const same = compared.filter(([one, other]) => [...one][0] === [...other][0]).length;
    expect(compared.length).toBeGreaterThan(20);
    expect(same / compared.length).toBeGreaterThan(0.3);
    expect(same / compared.length).toBeLessThan(0.7);
  });

  it('are most often small: half of the little turns are under an eighth of the widest', () => {
    const little = tries()
      .filter(({ targets }) => countTurned(targets) === 1)
      .flatMap(({ targets }) => targets.filter((spot) => turnedBy(spot) !== 0))
      .filter((spot) => Number.isInteger(spot.rows.turn * 128) && Math.abs(turnedBy(spot)) < 0.5);
    expect(little.length).toBeGreaterThan(200);
    expect(little.filter((spot) => Math.abs(turnedBy(spot)) < 50 / 128 / 8).length / little.length).toBeGreaterThan(
      0.45,
    );
    expect(little.some((spot) => turnedBy(spot) > 0) && little.some((spot) => turnedBy(spot) < 0)).toBe(true);
    expect(Math.max(...little.map((spot) => Math.abs(turnedBy(spot))))).toBeGreaterThan(30 / 128);
  });

  it('exchange, move and turn pieces, each often', () => {
    const few = tries().filter(({ targets }) => countTurned(targets) <= 3);
    const orders = few.map(({ targets }) => targets.map(({ item }) => item).join());
    const own = spots.map(({ item }) => item).join();
    const share = (is: (targets: readonly Spot[], i: number) => boolean) =>
      few.filter(({ targets }, i) => is(targets, i)).length / few.length;
    expect(share((_, i) => orders[i] !== own)).toBeGreaterThan(0.3);
    expect(share((_, i) => orders[i] === own)).toBeGreaterThan(0.2);
    const isOpposite = (spot: Spot) => Math.abs(Math.abs(turnedBy(spot)) - Math.PI) < 1e-9;
    expect(share((targets) => targets.some(isOpposite))).toBeGreaterThan(0.02);
    const isRight = (spot: Spot) => turnedBy(spot) !== 0 && Math.abs(Math.sin(2 * spot.rows.turn)) < 1e-9;
    expect(share((targets) => targets.some(isRight))).toBeGreaterThan(0.05);
    // A piece moved to any row lies anywhere on the sheet.
    const heights = few.flatMap(({ targets }) =>
      targets.filter((spot) => spots.every(({ y }) => y !== spot.y) && turnedBy(spot) === 0),
    );
    expect(heights.length).toBeGreaterThan(200);
    // Some exchange their height afterwards, and may then stick out until they are laid.
    const shares = heights.map(({ y, rows }) => y / (job.width - rows.width)).filter((height) => height <= 1);
    expect(shares.length / heights.length).toBeGreaterThan(0.9);
    expect(shares.reduce((sum, height) => sum + height, 0) / shares.length).toBeCloseTo(0.5, 1);
    // Exchanged pieces take each other's height.
    const swapped = few.find(({ targets }, i) => {
      const moved = targets.filter((spot, at) => spot.item !== spots[at]!.item);
      return orders[i] !== own && moved.length === 2 && moved.every((spot) => spots.some(({ y }) => y === spot.y));
    });
    expect(swapped).toBeDefined();
  });
});

describe('starts', () => {
  const job = jobOf(mixed);

  it('offer each shape turns at which it fits, by each rule', () => {
    expect(new Set(starts)).toEqual(new Set(startsOfSheets));
    expect(starts).not.toEqual(startsOfSheets);
    for (const rule of ['weight', 'right', 'middle', 'left']) {
      const own = starts.filter((start) => start.rule === rule);
      // Four families, and head to tail in twenty-four directions of a half turn.
      expect(own).toHaveLength(28);
      const directions = own.map(({ turns }) => turns(job.shapes[0]!)).filter((rows) => rows.length === 2);
      expect(new Set(directions.map(([rows]) => Math.round(rows!.turn / degree / 7.5))).size).toBe(24);
    }
    for (const { turns } of starts)
      for (const shape of job.shapes) for (const rows of turns(shape)) expect(shape.at(rows.turn)).toBe(rows);
    // The few straight turns come first for all pieces, any turn for a sheet.
    expect(starts[0]!.turns(job.shapes[0]!)).toBe(job.shapes[0]!.families.center);
    expect(startsOfSheets[0]!.turns(job.shapes[0]!)).toBe(job.shapes[0]!.families.every);
  });

  it('by chance are pairs in two directions, and of every rule', () => {
    const random = randomNumbers();
    const some = Array.from({ length: 60 }, () => randomStart(random));
    expect(new Set(some.map(({ rule }) => rule)).size).toBe(4);
    const turns = some.map((start) => start.turns(job.shapes[0]!).map(({ turn }) => turn));
    for (const [a, b, c, d] of turns as readonly (readonly number[])[])
      for (const [one, other] of [
        [a, b],
        [c, d],
      ])
        expect(Math.cos(other! - one!)).toBeCloseTo(-1, 9);
    expect(new Set(turns.flat().map((turn) => turn.toFixed(6))).size).toBeGreaterThan(12);
  });

  it('make a recipe with the turns of each piece', () => {
    const start = starts[3]!;
    const { order, choices, rule } = recipeFor(job, [2, 0], start);
    expect([order, rule]).toEqual([[2, 0], start.rule]);
    expect(choices).toHaveLength(job.pieces.length);
    for (const [item, rows] of choices.entries()) expect(rows).toEqual(start.turns(job.shapeOf(item)));
    expect(choices[0]).toBe(choices[1]);
  });

  it('are tried on a sample that is spread over the order', () => {
    const order = Array.from({ length: 45 }, (_, i) => 100 + i);
    expect(sampleOf(order, 14)).toEqual([100, 104, 108, 112, 116, 120, 124, 128, 132, 136, 140, 144]);
    expect(sampleOf(order, 45)).toEqual(order);
    expect(sampleOf(order, 100)).toEqual(order);
  });

  it('are ranked by how far left they lay it', () => {
    const ranked = rankedStarts(job, inOrder(job), { spent: 0 }, Number.POSITIVE_INFINITY);
    const moments = ranked.map((start) => laid(job, start).moment);
    // A limit on the length may lay a long one a little otherwise.
    for (const [i, moment] of moments.entries()) if (i > 0) expect(moment).toBeGreaterThan(moments[i - 1]! - 0.01);
    expect(moments[0]).toBe(Math.min(...moments));
    // Only those that end much farther right than one before them are left out.
    const least = Math.min(...starts.map((start) => lengthOf(laid(job, start), job)));
    expect(ranked.length).toBeGreaterThan(20);
    for (const start of starts)
      if (!ranked.includes(start)) expect(lengthOf(laid(job, start), job)).toBeGreaterThan(least * 1.2);
    const hasty = rankedStarts(job, inOrder(job), { spent: 1 }, 0);
    expect(hasty).toEqual([starts[0]]);
  });
});

describe('improving a layout', () => {
  const job = jobOf(mixed);
  /** What a search by so many steps comes to, for a job that is new. */
  const lengthsAfter = (steps: number) => {
    const fresh = jobOf(mixed);
    const { used, moment } = improved(laid(fresh, starts[0]!), fresh, steps, begin());
    return [used, moment];
  };
  const begin = (): SearchLimits => ({
    ...{ budget: { spent: 0 }, effort: 1, enough: 0, random: randomNumbers() },
    seen: [],
  });

  it('gives a shorter one, without an overlap, by as many steps as it may spend', () => {
    const coarse = laid(job, starts[0]!);
    const limits = begin();
    const better = improved(coarse, job, 3e5, limits);
    expect(isShorter(better, coarse, job)).toBe(true);
    expect(badSpots(job, better)).toEqual([]);
    expect(itemsOf(better)).toEqual(inOrder(job));
    expect(limits.budget.spent).toBeGreaterThan(3e5);
    expect(limits.budget.spent).toBeLessThan(3.1e5);
    // Every layout on the way is kept for what comes after the search, the shortest one among them.
    expect(limits.seen).toContain(better);
    for (const seen of limits.seen) expect(itemsOf(seen)).toEqual(inOrder(job));
    // A job remembers what it has made, so that the same again takes fewer steps.
    expect(lengthsAfter(3e5)).toEqual(lengthsAfter(3e5));
  });

  it('ends where it is short enough, where nothing is gained for long, and where no steps are left', () => {
    const coarse = laid(job, starts[0]!);
    const short = begin();
    expect(improved(coarse, job, 1e9, { ...short, enough: lengthOf(coarse, job) })).toBe(coarse);
    expect(short.budget.spent).toBe(0);
    expect(improved(coarse, job, 0, begin())).toBe(coarse);
    expect(improved(coarse, job, 1e9, { ...begin(), effort: 0 })).toBe(coarse);
    // One box alone lies as far left as it can: the search ends by its count of idle changes.
    const alone = jobOf([box(0.3, 0.12)]);
    const best = laid(alone, starts[0]!);
    const idle = begin();
    expect(improved(best, alone, 1e9, { ...idle, effort: 0.02 })).toBe(best);
    expect(idle.budget.spent).toBeGreaterThan(100 * alone.rowCount);
    expect(idle.budget.spent).toBeLessThan(1e6);
    const stopped = begin();
    const target = lengthOf(coarse, job) * 0.99;
    const enough = improved(coarse, job, 1e9, { ...stopped, enough: target });
    expect(lengthOf(enough, job)).toBeLessThanOrEqual(target);
    expect(stopped.budget.spent).toBeLessThan(1e7);
  });

  it('keeps the best of several, which share the steps', () => {
    const several = starts.slice(0, 12).map((start) => laid(job, start));
    const sorted = inTurn(several, job);
    expect(new Set(sorted)).toEqual(new Set(several));
    for (const [i, one] of sorted.entries()) if (i > 0) expect(isShorter(one, sorted[i - 1]!, job)).toBe(false);
    const limits = begin();
    const best = shortestOf(several, job, 6e5, limits);
    for (const one of several) expect(isShorter(one, best, job)).toBe(false);
    expect(isShorter(best, sorted[0]!, job)).toBe(true);
    expect(badSpots(job, best)).toEqual([]);
    expect(limits.budget.spent).toBeGreaterThan(5.5e5);
    expect(limits.budget.spent).toBeLessThan(6.2e5);
    expect(shortestOf(several, job, 1e9, { ...begin(), enough: 99 })).toEqual(sorted[0]);
    expect(shortestOf([several[3]!], job, 0, begin())).toBe(several[3]);
  });
});

describe('orders of pieces', () => {
  it('are by area and by length, the largest first, and equal ones as they came', () => {
    const job = jobOf([box(0.2, 0.1), box(0.1, 0.3), box(0.2, 0.1), box(0.5, 0.02)]);
    expect(ordersOf(job)).toEqual([
      [1, 0, 2, 3],
      [3, 1, 0, 2],
    ]);
    expect(ordersOf(jobOf([box(0.2, 0.1), box(0.3, 0.2)]))).toEqual([[1, 0]]);
  });
});

describe.each<[string, readonly Piece[], number]>([
  ['a few', mixed, 0.01],
  ['forty', times(40, sector(0.02, 0.11, 120)), 0.008],
  ['more than forty', [...times(30, sector(0.02, 0.09, 120)), ...times(20, box(0.1, 0.07))], 0.01],
])('the search for %s', (_, pieces, effort) => {
  it('lays each piece once, without an overlap, no longer than boxes, and the same each time', () => {
    const job = jobOf(pieces);
    const layout = shortestLayout(job, effort);
    expect(itemsOf(layout)).toEqual(inOrder(job));
    expectApart(job, layout);
    const boxes = layBoxes(job, ordersOf(job), { spent: 0 }, Number.POSITIVE_INFINITY);
    expect(isShorter(boxes, layout, job)).toBe(false);
    expect(shortestLayout(jobOf(pieces), effort)).toEqual(layout);
  });

  it('ends at once where boxes are short enough', () => {
    const job = jobOf(pieces);
    const boxes = layBoxes(job, ordersOf(job), { spent: 0 }, Number.POSITIVE_INFINITY);
    expect(lengthOf(shortestLayout(job, effort, 99), job)).toBeLessThanOrEqual(lengthOf(boxes, job) + 1e-9);
  });
});

describe('many sheets', () => {
  it.each<[string, readonly Piece[], number, number]>([
    ['nine squares, four to a sheet', times(9, box(0.45, 0.28)), 3, 0.28],
    ['as many as fill two sheets', times(8, box(0.45, 0.28)), 2, 0.91],
    ['one more than a sheet', times(5, box(0.45, 0.28)), 2, 0.28],
    ['two sorts', [...times(5, box(0.9, 0.55)), ...times(3, box(0.45, 0.55))], 7, 0.45],
  ])('take no more than they must: %s', (_, pieces, sheets, used) => {
    const job = jobOf(pieces, 0.01, 12);
    const layout = bestLayout(job, 0.01);
    expect(itemsOf(layout)).toEqual(inOrder(job));
    expect(layout.sheets).toBe(sheets);
    expect(layout.used).toBeCloseTo(used, 2);
    for (let sheet = 0; sheet < sheets; sheet++) expect(layout.spots.some((spot) => spot.sheet === sheet)).toBe(true);
  });

  it('of unlike sectors keep their gaps and lay each once', () => {
    const pieces = [...times(9, sector(0.05, 0.23, 110)), ...times(5, sector(0.03, 0.18, 200))];
    const job = jobOf(pieces, 0.01, 24);
    const layout = bestLayout(job, 0.002);
    expect(itemsOf(layout)).toEqual(inOrder(job));
    expectApart(job, layout);
    expect(isShorter(shortestLayout(job, 0.002 * 0.25), layout, job)).toBe(false);
    expect(bestLayout(jobOf(pieces, 0.01, 24), 0.002)).toEqual(layout);
  });
});
