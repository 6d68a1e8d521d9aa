/**
 * The search for a short layout: a few dozen ways that a person might start, then small changes of the best ones; and of
 * few pieces the removal of overlaps on a sheet that is made shorter.
 *
 * It counts steps instead of time, so that the same pieces give the same plan on any machine.
 */
import { layBoxes } from './cut-boxes';
import type { Target } from './cut-changes';
import { layoutAt, movedCloser, posedOf } from './cut-closer';
import { improved, inTurn, shortestOf } from './cut-improve';
import { type Job, roughJob } from './cut-job';
import { isShorter, type Layout, lay, lengthOf, type Recipe } from './cut-layout';
import { laidNear } from './cut-near';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';
import { type SqueezeLimits, squeezed } from './cut-squeeze';
import { randomStart, rankedStarts, recipeFor, sampleOf, starts } from './cut-starts';
import { randomNumbers } from './random-numbers';

/** About a quarter of a second. */
const stepsAnEffort = 26e6;
/** The share of it for boxes. */
const boxesShare = 0.1;
/**
 * Its shares for the starts, those by chance, small changes and the movement together, each including those before, and for
 * all. Few pieces on one sheet start soonest, as the removal of overlaps at last finds more than all that comes before.
 */
const shares = {
  fewOnOne: { starts: 0.1, byChance: 0.1 },
  few: { starts: 0.2, byChance: 0.25 },
  more: { starts: 0.25, byChance: 0.45 },
  rough: { changes: 0.2, closer: 0.25, all: 1.3 },
  exact: { changes: 1, closer: 1.4, all: 1.4 },
};
/** The same for the ranking of starts by a sample, the starts themselves, and small changes of the sample. */
const sharesOfMany = { ranking: 0.2, starts: 0.5, sample: 0.6 };
/** So few pieces on one sheet are searched on rough rows, and on such a row or the next ones they find room. */
export const fewRough = 32;
const roughWithin = 3;
/** More pieces than this are searched by a sample of them. */
const fewPieces = 40;
const sampleSize = 14;
const bestStarts = 8;
/** The most starts by chance. */
const byChance = 100;
/** A start may be this many times as long as the shortest and is still worth changing. */
const longerStart = 1.05;

/**
 * The shortest layout found: fewest sheets, then the least length of the last one. It ends early once it is
 * no longer than `enough`.
 */
export function shortestLayout(job: Job, effort: number, enough = 0): Layout {
  const mostSteps = stepsAnEffort * effort;
  const budget: StepBudget = { spent: 0 };
  const inOrders = ordersOf(job);
  const [order = []] = inOrders;
  const boxes = layBoxes(job, inOrders, budget, mostSteps * boxesShare);
  let shortest = boxes;
  const isFew = order.length <= fewRough;
  const share = () => (!isFew ? shares.more : shortest.sheets === 1 ? shares.fewOnOne : shares.few);
  const random = randomNumbers();
  const seen: Layout[] = [];
  const limits = { budget, effort, enough, random, seen };
  const found: Layout[] = [boxes];
  const tryStart = (recipe: Recipe, most: number) => {
    if (lengthOf(shortest, job) <= enough) return;
    const layout = lay(job, recipe, { length: lengthOf(shortest, job) * longerStart, budget, mostSteps: most });
    if (layout === undefined) return;
    found.push(layout);
    if (isShorter(layout, shortest, job)) shortest = layout;
  };
  if (order.length <= fewPieces) {
    for (const start of starts) {
      for (const one of inOrders) tryStart(recipeFor(job, one, start), mostSteps * share().starts);
    }
    for (let i = 0; i < byChance && budget.spent < mostSteps * share().byChance; i++) {
      for (const one of inOrders) tryStart(recipeFor(job, one, randomStart(random)), mostSteps * share().byChance);
    }
  } else {
    const sample = sampleOf(order, sampleSize);
    const ranked = rankedStarts(job, sample, budget, mostSteps * sharesOfMany.ranking);
    for (const start of ranked.slice(0, bestStarts * Math.ceil(Math.sqrt(effort)))) {
      for (const one of inOrders) tryStart(recipeFor(job, one, start), mostSteps * sharesOfMany.starts);
    }
    const [likeliest] = ranked;
    const part = likeliest && lay(job, recipeFor(job, sample, likeliest), { length: Infinity, budget, mostSteps });
    if (part !== undefined) {
      const small = improved(part, job, mostSteps * sharesOfMany.sample, { ...limits, enough: 0, seen: [] });
      for (const next of repeatedRecipes(job, order, sample, small)) tryStart(next, mostSteps);
    }
  }
  const few = bestUnlike(found, job, searchesOf(order.length));
  const rough = isFew && shortest.sheets === 1 ? onRoughRows(job, few, budget) : undefined;
  const on = rough ?? { job, few };
  const later = rough === undefined ? shares.exact : shares.rough;
  const best = shortestOf(on.few, on.job, mostSteps * later.changes, {
    ...limits,
    // A layout on rough rows may become longer when it is made sound.
    enough: rough === undefined ? enough : 0,
  });
  const sound = rough === undefined ? best : shortest;
  const until = { ...limits, mostSteps: mostSteps * later.closer };
  const closer = movedCloser(sound, [best, ...seen], { sound: job, met: on.job }, until);
  if (rough === undefined || closer.sheets > 1) return closer;
  return squeezedLayout(closer, job, rough.job, { ...limits, mostSteps: mostSteps * later.all });
}

/** The layout of one sheet made shorter on rough rows, if it can be. */
function squeezedLayout(layout: Layout, job: Job, rough: Job, limits: SqueezeLimits): Layout {
  const found = squeezed(
    rough,
    layout.spots.map(({ item }) => item),
    posedOf(layout, job),
    layout.used,
    limits,
  );
  const next = found && layoutAt(job, { layout, poses: found.poses });
  return next !== undefined && isShorter(next, layout, job) ? next : layout;
}

/** The layouts on rough rows, each piece near its place; undefined if it finds no room there in any of them. */
function onRoughRows(job: Job, layouts: readonly Layout[], budget: StepBudget) {
  const rough = roughJob(job);
  const few = layouts.flatMap((layout) => {
    const targets = layout.spots.flatMap((spot): readonly Target[] => {
      const rows = rough.shapeOf(spot.item).at(spot.rows.turn);
      return rows === undefined ? [] : [{ ...spot, rows, within: roughWithin }];
    });
    if (targets.length < layout.spots.length) return [];
    const limits = { length: job.length, budget, mostSteps: Infinity };
    return laidNear(rough, { targets, first: 0 }, limits, []) ?? [];
  });
  return few.length > 0 ? { job: rough, few } : undefined;
}

/** How many layouts are changed side by side at first: few pieces are soon laid again, and more depends on their start. */
function searchesOf(pieces: number): number {
  if (pieces <= 12) return 8;
  return pieces <= fewPieces ? 4 : 2;
}

/** The shortest layouts that differ. */
function bestUnlike(found: readonly Layout[], job: Job, count: number): readonly Layout[] {
  const all = inTurn(found, job);
  return all.filter(({ moment }, i) => Math.abs(moment - (all[i - 1]?.moment ?? Infinity)) > 1e-9).slice(0, count);
}

/**
 * The recipe of a sample for all pieces: repeated, or each of its pieces with those that it represents. A piece takes
 * the turn that the sample's piece took.
 */
function repeatedRecipes(
  job: Job,
  order: readonly number[],
  sample: readonly number[],
  { spots }: Layout,
): readonly Recipe[] {
  const step = Math.ceil(order.length / sample.length);
  const places = new Map(sample.map((item, i) => [item, i * step]));
  const choices: (readonly Rows[])[] = [];
  const groups = spots.map(({ item: sampled, rows: { turn } }) => {
    const place = places.get(sampled) ?? 0;
    return order.slice(place, place + step).map((item) => {
      const shape = job.shapeOf(item);
      const rows = shape.at(turn);
      choices[item] = rows === undefined ? shape.families.every : [rows];
      return item;
    });
  });
  const again = Array.from({ length: step }, (_, i) => groups.flatMap((group) => group.slice(i, i + 1))).flat();
  return [again, groups.flat()].map((one) => ({ order: one, choices, rule: 'weight' }));
}

/** Large pieces first, by area and by length; equal ones keep their order. */
export function ordersOf(job: Job): readonly (readonly number[])[] {
  const by = (size: (shape: Job['shapes'][number]) => number) => {
    const sizes = new Map(job.shapes.map((shape) => [shape, size(shape)]));
    const sizeOf = (item: number) => sizes.get(job.shapeOf(item)) ?? 0;
    return job.pieces.map((_, item) => item).sort((a, b) => sizeOf(b) - sizeOf(a) || a - b);
  };
  const byArea = by(({ area }) => area);
  const byLength = by(({ families }) => Math.max(...families.every.map(({ length }) => length)));
  return byArea.every((item, i) => item === byLength[i]) ? [byArea] : [byArea, byLength];
}
