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

const K = (name: string, value: number) => Number((globalThis as any).process?.env?.[name] ?? value);
/** About a quarter of a second. */
const stepsAnEffort = K('STEPS', 26e6);
/** The shares of it for boxes, ranking, the sample and the starts, each including those before. */
const shares = { boxes: 0.1, ranking: K('RANK', 0.2), starts: K('STARTS', 0.25), many: K('MANY', 0.5), sample: K('SAMPLE', 0.6) };
/** This many changes without a gain end the search of a few pieces. */
const idleAnEffort = K('IDLE', 5000);
/** More pieces than this are searched by a sample of them. */
const fewPieces = 40;
const sampleSize = 14;
const bestStarts = 8;
const lambda = K('LAMBDA', 0.5);
const heat = K('HEAT', 0.02);
const reach = K('REACH', 1);

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
    const layout = lay(job, recipe, { length: lengthOf(shortest, job) * K('SLACK', 1.05), budget, mostSteps: most });
    if (layout === undefined) return;
    found.push(layout);
    if (isShorter(layout, shortest, job)) shortest = layout;
  };
  if (order.length <= fewPieces) {
    for (const start of starts) {
      for (const one of inOrders) tryStart(recipeFor(job, one, start), mostSteps * shares.starts);
    }
    for (let i = 0; i < K('RANDOM', 100) && budget.spent < mostSteps * K('RSTARTS', 0.45); i++) {
      for (const one of inOrders) tryStart(recipeFor(job, one, randomStart(random)), mostSteps * K('RSTARTS', 0.45));
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
  const unlike = found
    .sort((one, other) => (isShorter(one, other, job) ? -1 : 1))
    .filter(({ moment }, i) => i === 0 || Math.abs(moment - (found[i - 1] as Layout).moment) > 1e-9);
  const count = K('HEADS', order.length <= 12 ? 8 : order.length <= 40 ? 4 : 2);
  let heads = Array.from({ length: count }, (_, i) => new Search(job, unlike[i % unlike.length] as Layout, budget, enough, random));
  for (let rounds = Math.log2(count) + 1; rounds > 0; rounds--) {
    const share = (mostSteps - budget.spent) / rounds / heads.length;
    for (const head of heads) head.improve(effort, budget.spent + share);
    heads.sort((one, other) => (isShorter(one.best, other.best, job) ? -1 : 1));
    heads = heads.slice(0, Math.ceil(heads.length / 2));
  }
  const best = (heads[0] as Search).best;
  const finer = polished(job, best, budget);
  return finer !== undefined && isShorter(finer, best, job) ? finer : best;
}

/** A layout that is changed, and the best so far. */
class Search {
  best: Layout;
  evals = 0;
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
    const cost = (layout: Layout) => lengthOf(layout, job) + (lambda * layout.moment) / this.area;
    for (let idle = 0; idle < idleAnEffort * effort && budget.spent < mostSteps; idle++) {
      if (lengthOf(this.best, job) <= this.enough) break;
      const { current } = this;
      const slack = current.sheets > K('HOT', 1) ? 0 : (heat * lengthOf(this.best, job) / current.spots.length) * (1 - (budget.spent - begun) / (mostSteps - begun));
      const { targets, first } = changed(current.spots, job, random);
      budget.spent += job.rowCount;
      (globalThis as any).__evals = ((globalThis as any).__evals ?? 0) + 1;
      const found = laidNear(job, targets, first, reach, { length: lengthOf(current, job) + slack + 1e-9, budget, mostSteps }, this.sheets);
      if (found === undefined || cost(found) > cost(current) + slack) continue;
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

