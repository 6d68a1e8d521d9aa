/**
 * The search for a short layout: a few dozen ways that a person might start, then small changes of the best one.
 *
 * It ends by steps counted and not by a clock, so that the same pieces give the same plan on any machine.
 */
import { layBoxes } from './cut-boxes';
import { familyNames, type Job } from './cut-job';
import { type Begun, isShorter, type Layout, lay, lengthOf, type Recipe, type Rule } from './cut-layout';
import { polished } from './cut-polish';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';
import { randomNumbers } from './random-numbers';

/** About a quarter of a second. */
const stepsAnEffort = 20e6;
/** What boxes and the starts may take of it. */
const shareOfBoxes = 0.15;
const shareOfStarts = 0.5;
const changesAnEffort = 800;
/** So many changes without a gain end the search of a few pieces. */
const idleAnEffort = 250;

const rules: readonly Rule[] = ['weight', 'right', 'middle', 'left'];

/** The shortest layout found: fewest sheets, then the least length of the last one. It ends early once `enough` sheets do. */
export function shortestLayout(job: Job, effort: number, enough = 0): Layout {
  const mostSteps = stepsAnEffort * effort;
  const budget: StepBudget = { spent: 0 };
  const inOrders = ordersOf(job);
  let best = layBoxes(job, inOrders, budget, mostSteps * shareOfBoxes);
  let recipe = recipeOf(best);
  let begun: Begun[] = [];
  let idle = 0;
  const keepEvery = Math.max(4, Math.ceil(job.pieces.length / 12));
  const tried = (next: Recipe, steps: number, from?: Begun) => {
    const limits = { length: lengthOf(best, job) + 1e-9, budget, mostSteps: steps };
    const found = lay(job, next, limits, from);
    if (found === undefined || !isShorter(found, best, job)) return;
    best = found;
    recipe = { ...next, choices: turnsTaken(found) };
    begun = [];
    idle = 0;
  };
  for (const order of inOrders) {
    for (const family of familyNames) {
      const choices = job.pieces.map((_, item) => job.shapeOf(item).families[family]);
      for (const rule of rules) {
        if (best.sheets > enough) tried({ order, choices, rule }, mostSteps * shareOfStarts);
      }
    }
  }
  const random = randomNumbers();
  idle = 0;
  for (let i = 0; i < changesAnEffort * effort && idle < idleAnEffort * effort; i++, idle++) {
    if (budget.spent > mostSteps || best.sheets <= enough) break;
    if (begun.length === 0) {
      const limits = { length: Infinity, budget, mostSteps };
      lay(job, recipe, limits, undefined, keepEvery, (one) => begun.push(one));
    }
    const { next, first } = changed(recipe, job, random);
    tried(next, mostSteps, begun[Math.min(begun.length - 1, Math.floor(first / keepEvery))]);
  }
  const finer = polished(job, best, budget);
  return finer !== undefined && isShorter(finer, best, job) ? finer : best;
}

/** A recipe that lays pieces much as they lie. */
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

/**
 * A recipe with up to three small changes: two pieces change places in the order, a piece moves in it, a piece takes one
 * other turn or is free to take any. `first` is the first place of the order that is laid otherwise than before.
 */
function changed(recipe: Recipe, job: Job, random: () => number): { readonly next: Recipe; readonly first: number } {
  const order = [...recipe.order];
  const choices = [...recipe.choices];
  const pick = (count: number) => Math.floor(random() * count);
  let first = order.length;
  for (let changes = 1 + pick(3); changes > 0; changes--) {
    const kind = pick(4);
    const at = pick(order.length);
    const item = order[at] as number;
    const to = pick(order.length);
    const { every } = job.shapeOf(item).families;
    first = Math.min(first, at, kind < 2 ? to : at);
    if (kind === 0) [order[at], order[to]] = [order[to] as number, item];
    else if (kind === 1) order.splice(to, 0, ...order.splice(at, 1));
    else choices[item] = kind === 2 ? every.slice(pick(every.length)).slice(0, 1) : every;
  }
  if (random() < 0.8) return { next: { order, choices, rule: recipe.rule }, first };
  return { next: { order, choices, rule: rules[pick(rules.length)] as Rule }, first: 0 };
}
