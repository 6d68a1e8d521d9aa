/**
 * The search for a short layout: a few dozen ways that a person might start, then small changes of the best one.
 *
 * It ends by steps counted and not by a clock, so that the same pieces give the same plan on any machine.
 */
import { layBoxes } from './cut-boxes';
import { changed } from './cut-changes';
import type { Job } from './cut-job';
import { type Begun, isShorter, type Layout, lay, lengthOf, type Recipe } from './cut-layout';
import { polished } from './cut-polish';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';
import { rankedStarts, recipeFor, sampleOf, starts } from './cut-starts';
import { randomNumbers } from './random-numbers';

/** About a quarter of a second. */
const stepsAnEffort = 26e6;
/** What boxes, ranking, the sample and the starts may take of it, each with those before it. */
const shares = { boxes: 0.1, ranking: 0.35, starts: 0.35, many: 0.8, sample: 0.9, head: 0.15 };
const changesAnEffort = 12000;
/** So many changes without a gain end the search of a few pieces. */
const idleAnEffort = 6000;
/** More pieces than this are searched for by a sample of them. */
const fewPieces = 40;
const sampleSize = 14;
const bestStarts = 8;
/** Of more pieces than this some starts that are longer by up to so much are improved too. */
const fewestForHeads = 12;
const headSlack = 1.05;
const mostHeads = 3;

/** The shortest layout found: fewest sheets, then the least length of the last one. It ends early once `enough` sheets do. */
export function shortestLayout(job: Job, effort: number, enough = 0): Layout {
  const mostSteps = stepsAnEffort * effort;
  const budget: StepBudget = { spent: 0 };
  const inOrders = ordersOf(job);
  const [order = []] = inOrders;
  const boxes = layBoxes(job, inOrders, budget, mostSteps * shares.boxes);
  const search = new Search(job, boxes, budget, enough);
  if (order.length <= fewPieces) {
    for (const start of starts) {
      for (const one of inOrders) search.tryStart(recipeFor(job, one, start), mostSteps * shares.starts);
    }
  } else {
    const sample = sampleOf(order, sampleSize);
    const ranked = rankedStarts(job, sample, budget, mostSteps * shares.ranking);
    for (const start of ranked.slice(0, bestStarts * Math.ceil(Math.sqrt(effort)))) {
      for (const one of inOrders) search.tryStart(recipeFor(job, one, start), mostSteps * shares.many);
    }
    const [likeliest] = ranked;
    const part = likeliest && lay(job, recipeFor(job, sample, likeliest), { length: Infinity, budget, mostSteps });
    if (part !== undefined) {
      const small = new Search(job, part, budget, 0);
      small.improve(effort, mostSteps * shares.sample);
      for (const next of repeatedRecipes(job, order, sample, small.recipe)) search.tryStart(next, mostSteps);
    }
  }
  if (enough === 0 && order.length > fewestForHeads) improveHeads(search, effort, mostSteps);
  search.improve(effort, mostSteps);
  const { best } = search;
  const finer = polished(job, best, budget);
  return finer !== undefined && isShorter(finer, best, job) ? finer : best;
}

/** Improves each of the shortest starts for a while, as the shortest one may have little left to gain. */
function improveHeads(search: Search, effort: number, mostSteps: number): void {
  const { job, budget } = search;
  const left = mostSteps - budget.spent;
  for (const head of search.heads()) {
    const one = new Search(job, head.layout, budget, 0, head.recipe);
    one.improve(effort, budget.spent + left * shares.head);
    search.take(one.best, one.recipe);
  }
}

interface Head {
  readonly layout: Layout;
  readonly recipe: Recipe;
}

/** The best layout so far, with the recipe that gave it and what was laid on the way to it. */
class Search {
  best: Layout;
  recipe: Recipe;
  readonly job: Job;
  readonly budget: StepBudget;
  private begun: Begun[] = [];
  private idle = 0;
  private readonly keepEvery: number;
  private readonly random = randomNumbers();
  private readonly started: Head[] = [];
  private readonly enough: number;

  constructor(job: Job, best: Layout, budget: StepBudget, enough: number, recipe = recipeOf(best, job)) {
    this.job = job;
    this.best = best;
    this.budget = budget;
    this.enough = enough;
    this.recipe = recipe;
    this.keepEvery = Math.max(4, Math.ceil(best.spots.length / 12));
  }

  /** The shortest layouts that starts have given; none where there is only one. */
  heads(): readonly Head[] {
    const { job, started } = this;
    const unlike = started.filter(
      ({ layout }, i) => !started.slice(0, i).some((other) => Math.abs(other.layout.moment - layout.moment) < 1e-9),
    );
    const sorted = unlike.sort((one, other) => (isShorter(one.layout, other.layout, job) ? -1 : 1));
    return sorted.length > 1 ? sorted.slice(0, mostHeads) : [];
  }

  take(layout: Layout, recipe: Recipe): void {
    if (!isShorter(layout, this.best, this.job)) return;
    this.best = layout;
    this.recipe = recipe;
    this.begun = [];
    this.idle = 0;
  }

  tryStart(next: Recipe, mostSteps: number): void {
    const { job, budget, best } = this;
    if (best.sheets <= this.enough) return;
    const slack = job.pieces.length > fewestForHeads ? headSlack : 1;
    const layout = lay(job, next, { length: lengthOf(best, job) * slack + 1e-9, budget, mostSteps });
    if (layout === undefined) return;
    const recipe = asLaid(layout, next, job);
    this.started.push({ layout, recipe });
    this.take(layout, recipe);
  }

  /** Small changes, kept where they are shorter, until the steps are spent or nothing has been gained for long. */
  improve(effort: number, mostSteps: number): void {
    const { job, budget, random } = this;
    this.idle = 0;
    for (let i = 0; i < changesAnEffort * effort && this.idle < idleAnEffort * effort; i++, this.idle++) {
      if (budget.spent > mostSteps || this.best.sheets <= this.enough) break;
      if (this.begun.length === 0) {
        const limits = { length: Infinity, budget, mostSteps };
        lay(job, this.recipe, limits, undefined, this.keepEvery, (one) => this.begun.push(one));
      }
      const { next, first } = changed(this.recipe, job, random);
      const from = this.begun[Math.min(this.begun.length - 1, Math.floor(first / this.keepEvery))];
      const found = lay(job, next, { length: lengthOf(this.best, job) + 1e-9, budget, mostSteps }, from);
      if (found !== undefined) this.take(found, asLaid(found, next, job));
    }
  }
}

/**
 * The recipe of a sample for all pieces: again and again, or each of its pieces with those that it stands for. A piece takes
 * the turn that the sample's piece took.
 */
function repeatedRecipes(
  job: Job,
  order: readonly number[],
  sample: readonly number[],
  recipe: Recipe,
): readonly Recipe[] {
  const step = Math.ceil(order.length / sample.length);
  const places = new Map(sample.map((item, i) => [item, i * step]));
  const choices: (readonly Rows[])[] = [];
  const groups = recipe.order.map((sampled) => {
    const place = places.get(sampled) ?? 0;
    const turn = recipe.choices[sampled]?.[0]?.turn ?? 0;
    return order.slice(place, place + step).map((item) => {
      const shape = job.shapeOf(item);
      const rows = shape.at(turn);
      choices[item] = rows === undefined ? shape.families.every : [rows];
      return item;
    });
  });
  const again = Array.from({ length: step }, (_, i) => groups.flatMap((group) => group.slice(i, i + 1))).flat();
  return [again, groups.flat()].map((one) => ({ order: one, choices, rule: recipe.rule }));
}

/** A recipe that lays pieces much as they lie. */
function recipeOf(layout: Layout, job: Job): Recipe {
  const order = [...layout.spots].sort((a, b) => a.sheet - b.sheet || a.x - b.x || a.y - b.y).map(({ item }) => item);
  return asLaid(layout, { order, choices: [], rule: 'weight' }, job);
}

/** The recipe with the turn and the row that each piece took, which is quick to lay again. */
function asLaid({ spots }: Layout, { order, rule }: Recipe, job: Job): Recipe {
  const choices: (readonly Rows[])[] = [];
  const near: number[] = [];
  for (const { item, rows, y } of spots) {
    choices[item] = [rows];
    near[item] = Math.round(y / job.rowHeight);
  }
  return { order, rule, choices, near };
}

/** Large pieces first, by area and by how long they are; what is equal keeps its order. */
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
