/**
 * The search for a short layout: a few dozen ways that a person might start, then small changes of the best ones.
 *
 * It counts steps instead of time, so that the same pieces give the same plan on any machine.
 */
import { layBoxes } from './cut-boxes';
import { changed } from './cut-changes';
import type { Job } from './cut-job';
import { isShorter, type Layout, lay, lengthOf, type Recipe } from './cut-layout';
import { laidNear } from './cut-near';
import { polished } from './cut-polish';
import type { Rows } from './cut-rows';
import type { Sheet, StepBudget } from './cut-sheet';
import { randomStart, rankedStarts, recipeFor, sampleOf, starts } from './cut-starts';
import { randomNumbers } from './random-numbers';

/** About a quarter of a second. */
const stepsAnEffort = 26e6;
/** The shares of it for boxes, ranking, the starts and the sample, each including those before. */
const shares = { boxes: 0.1, ranking: 0.2, starts: 0.25, byChance: 0.45, many: 0.5, sample: 0.6 };
/** This many changes without a gain end the search of a few pieces. */
const idleAnEffort = 5000;
/** More pieces than this are searched by a sample of them. */
const fewPieces = 40;
const sampleSize = 14;
const bestStarts = 8;
/** The most starts by chance. */
const byChance = 100;
/** A start may be this many times as long as the shortest and is still worth changing. */
const longerStart = 1.05;
/** How much the mean distance of the area from the left counts beside the length. */
const weightOfMean = 0.5;
/** The length by which a change may be worse at first, as a share of the length for each piece. */
const worseAtFirst = 0.02;

/**
 * The shortest layout found: fewest sheets, then the least length of the last one. It ends early once it is
 * no longer than `enough`.
 */
export function shortestLayout(job: Job, effort: number, enough = 0): Layout {
  const mostSteps = stepsAnEffort * effort;
  const budget: StepBudget = { spent: 0 };
  const inOrders = ordersOf(job);
  const [order = []] = inOrders;
  const boxes = layBoxes(job, inOrders, budget, mostSteps * shares.boxes);
  let shortest = boxes;
  const random = randomNumbers();
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
      for (const one of inOrders) tryStart(recipeFor(job, one, start), mostSteps * shares.starts);
    }
    const most = mostSteps * shares.byChance;
    for (let i = 0; i < byChance && budget.spent < most; i++) {
      for (const one of inOrders) tryStart(recipeFor(job, one, randomStart(random)), most);
    }
  } else {
    const sample = sampleOf(order, sampleSize);
    const ranked = rankedStarts(job, sample, budget, mostSteps * shares.ranking);
    for (const start of ranked.slice(0, bestStarts * Math.ceil(Math.sqrt(effort)))) {
      for (const one of inOrders) tryStart(recipeFor(job, one, start), mostSteps * shares.many);
    }
    const [likeliest] = ranked;
    const part = likeliest && lay(job, recipeFor(job, sample, likeliest), { length: Infinity, budget, mostSteps });
    if (part !== undefined) {
      const small = new Search(job, part, budget, 0, random);
      small.improve(effort, mostSteps * shares.sample);
      for (const next of repeatedRecipes(job, order, sample, small.best)) tryStart(next, mostSteps);
    }
  }
  const searches = bestUnlike(found, job, searchesOf(order.length)).map(
    (layout) => new Search(job, layout, budget, enough, random),
  );
  const best = bestOf(searches, job, budget, { effort, mostSteps });
  const finer = polished(job, best, budget);
  return finer !== undefined && isShorter(finer, best, job) ? finer : best;
}

/** How many layouts are changed side by side at first: few pieces are soon laid again, and more depends on their start. */
function searchesOf(pieces: number): number {
  if (pieces <= 12) return 8;
  return pieces <= fewPieces ? 4 : 2;
}

/** The shortest layouts that differ. */
function bestUnlike(found: readonly Layout[], job: Job, count: number): readonly Layout[] {
  const inTurn = sorted(found, (layout) => layout, job);
  return inTurn
    .filter(({ moment }, i) => Math.abs(moment - (inTurn[i - 1]?.moment ?? Infinity)) > 1e-9)
    .slice(0, count);
}

/** Improves each by an equal share of the steps, then the better half of them, until one is left. */
function bestOf(
  searches: readonly Search[],
  job: Job,
  budget: StepBudget,
  { effort, mostSteps }: { readonly effort: number; readonly mostSteps: number },
): Layout {
  let left = searches;
  for (let rounds = Math.ceil(Math.log2(searches.length)) + 1; rounds > 0; rounds--) {
    const share = (mostSteps - budget.spent) / rounds / left.length;
    for (const search of left) search.improve(effort, budget.spent + share);
    left = sorted(left, ({ best }) => best, job).slice(0, Math.ceil(left.length / 2));
  }
  return (left[0] as Search).best;
}

function sorted<T>(list: readonly T[], layoutOf: (one: T) => Layout, job: Job): readonly T[] {
  return [...list].sort((one, other) => (isShorter(layoutOf(one), layoutOf(other), job) ? -1 : 1));
}

/** A layout that is changed, and the best so far. */
class Search {
  best: Layout;
  private current: Layout;
  private readonly sheets: Sheet[] = [];
  private readonly area: number;
  private readonly job: Job;
  private readonly budget: StepBudget;
  private readonly enough: number;
  private readonly random: () => number;

  constructor(job: Job, best: Layout, budget: StepBudget, enough: number, random: () => number) {
    this.job = job;
    this.best = best;
    this.current = best;
    this.budget = budget;
    this.enough = enough;
    this.random = random;
    this.area = best.spots.reduce((sum, { item }) => sum + job.shapeOf(item).area, 0);
  }

  /** Makes small changes and keeps those that are shorter, until the steps are spent or nothing was gained for long. */
  improve(effort: number, mostSteps: number): void {
    const { job, budget, random } = this;
    const begun = budget.spent;
    const cost = (layout: Layout) => lengthOf(layout, job) + (weightOfMean * layout.moment) / this.area;
    for (let idle = 0; idle < idleAnEffort * effort && budget.spent < mostSteps; idle++) {
      if (lengthOf(this.best, job) <= this.enough) break;
      const { current } = this;
      const left = 1 - (budget.spent - begun) / (mostSteps - begun);
      const worse = current.sheets > 1 ? 0 : (worseAtFirst * left * lengthOf(this.best, job)) / current.spots.length;
      budget.spent += job.rowCount;
      const limits = { length: lengthOf(current, job) + worse + 1e-9, budget, mostSteps };
      const found = laidNear(job, changed(current.spots, job, random), limits, this.sheets);
      if (found === undefined || cost(found) > cost(current) + worse) continue;
      this.current = found;
      if (!isShorter(found, this.best, job)) continue;
      this.best = found;
      idle = 0;
    }
    this.current = this.best;
  }
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
