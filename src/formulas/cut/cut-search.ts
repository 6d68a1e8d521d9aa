/**
 * The search for a short layout: a few dozen ways that a person might start, then small changes of the best one.
 *
 * It counts steps instead of time, so that the same pieces give the same plan on any machine.
 */
import { layBoxes } from './cut-boxes';
import type { Job } from './cut-job';
import { type Begun, isShorter, type Layout, lay, lengthOf, type Recipe, type Rule } from './cut-layout';
import { polished } from './cut-polish';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';
import { rankedStarts, recipeFor, rules, sampleOf, starts } from './cut-starts';
import { randomNumbers } from './random-numbers';

/** About a quarter of a second. */
const stepsAnEffort = 26e6;
/** The shares of it for boxes, ranking, the sample and the starts, each including those before. */
const shares = { boxes: 0.1, ranking: 0.35, starts: 0.6, many: 0.8, sample: 0.9 };
const changesAnEffort = 1200;
/** This many changes without a gain end the search of a few pieces. */
const idleAnEffort = 600;
/** More pieces than this are searched by a sample of them. */
const fewPieces = 40;
const sampleSize = 14;
const bestStarts = 8;

/**
 * The shortest layout found: fewest sheets, then the least length of the last one. It ends early once `enough` sheets
 * do.
 */
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
  search.improve(effort, mostSteps);
  const { best } = search;
  const finer = polished(job, best, budget);
  return finer !== undefined && isShorter(finer, best, job) ? finer : best;
}

/** The best layout so far, with the recipe that gave it and what was laid on the way to it. */
class Search {
  recipe: Recipe;
  private begun: Begun[] = [];
  private idle = 0;
  private readonly keepEvery: number;
  private readonly random = randomNumbers();

  best: Layout;
  private readonly job: Job;
  private readonly budget: StepBudget;
  private readonly enough: number;

  constructor(job: Job, best: Layout, budget: StepBudget, enough: number) {
    this.job = job;
    this.best = best;
    this.budget = budget;
    this.enough = enough;
    this.recipe = recipeOf(best);
    this.keepEvery = Math.max(4, Math.ceil(best.spots.length / 12));
  }

  tryStart(next: Recipe, mostSteps: number): void {
    if (this.best.sheets > this.enough) this.attempt(next, mostSteps);
  }

  /** Makes small changes and keeps those that are shorter, until the steps are spent or nothing was gained for long. */
  improve(effort: number, mostSteps: number): void {
    const { job, budget, random } = this;
    this.idle = 0;
    for (let i = 0; i < changesAnEffort * effort && this.idle < idleAnEffort * effort; i++, this.idle++) {
      if (budget.spent > mostSteps || this.best.sheets <= this.enough) break;
      if (this.begun.length === 0) {
        const limits = { length: Infinity, budget, mostSteps };
        lay(job, this.recipe, limits, undefined, this.keepEvery, (one) => this.begun.push(one));
      }
      const { next, first } = variedRecipe(this.recipe, job, random);
      this.attempt(next, mostSteps, this.begun[Math.min(this.begun.length - 1, Math.floor(first / this.keepEvery))]);
    }
  }

  private attempt(next: Recipe, mostSteps: number, from?: Begun): void {
    const { job, budget, best } = this;
    const found = lay(job, next, { length: lengthOf(best, job) + 1e-9, budget, mostSteps }, from);
    if (found === undefined || !isShorter(found, best, job)) return;
    this.best = found;
    this.recipe = { ...next, choices: turnsTaken(found) };
    this.begun = [];
    this.idle = 0;
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

/** A recipe that lays pieces nearly as they lie. */
function recipeOf(layout: Layout): Recipe {
  const order = [...layout.spots].sort((a, b) => a.sheet - b.sheet || a.x - b.x || a.y - b.y).map(({ item }) => item);
  return { order, choices: turnsTaken(layout), rule: 'weight' };
}

/** The one turn that each piece took, which is quick to lay again. */
function turnsTaken({ spots }: Layout): readonly (readonly Rows[])[] {
  const choices: (readonly Rows[])[] = [];
  for (const { item, rows } of spots) choices[item] = [rows];
  return choices;
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

/** The largest small change of turn; most are far smaller. */
const widestNudge = Math.PI / 8;

/**
 * A recipe with up to three small changes: two pieces change places in the order, a piece moves in it, a piece takes
 * one
 * other turn, is free to take any, or is turned a little; or all pieces are turned a little. `first` is the first
 * place of the order that is laid differently.
 */
function variedRecipe(
  recipe: Recipe,
  job: Job,
  random: () => number,
): { readonly next: Recipe; readonly first: number } {
  const order = [...recipe.order];
  const choices = [...recipe.choices];
  const pick = (count: number) => Math.floor(random() * count);
  const nudge = () => widestNudge * (2 * random() - 1) ** 3;
  const turned = (item: number, by: number): readonly Rows[] => {
    const [rows] = choices[item] ?? [];
    const next = rows === undefined ? undefined : job.shapeOf(item).at(rows.turn + by);
    return next === undefined ? (choices[item] ?? []) : [next];
  };
  let first = order.length;
  if (random() < 0.1) {
    const by = nudge() / 2;
    // Pieces that face the other way are turned with their pair, or against it.
    const against = random() < 0.5 ? 1 : -1;
    for (const item of order) {
      const faces = Math.cos(choices[item]?.[0]?.turn ?? 0) >= 0;
      choices[item] = turned(item, faces ? by : against * by);
    }
    return { next: { order, choices, rule: recipe.rule }, first: 0 };
  }
  for (let changes = 1 + pick(3); changes > 0; changes--) {
    const kind = pick(6);
    const at = pick(order.length);
    const item = order[at] as number;
    const to = pick(order.length);
    const { every } = job.shapeOf(item).families;
    first = Math.min(first, at, kind < 2 ? to : at);
    if (kind === 0) [order[at], order[to]] = [order[to] as number, item];
    else if (kind === 1) order.splice(to, 0, ...order.splice(at, 1));
    else if (kind === 2) choices[item] = every.slice(pick(every.length)).slice(0, 1);
    else if (kind === 3) choices[item] = every;
    else choices[item] = turned(item, nudge());
  }
  if (random() < 0.85) return { next: { order, choices, rule: recipe.rule }, first };
  return { next: { order, choices, rule: rules[pick(rules.length)] as Rule }, first: 0 };
}
