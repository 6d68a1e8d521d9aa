/**
 * The search for a short layout: a few dozen ways that a person might start, then small changes of the best one.
 *
 * It ends by steps counted and not by a clock, so that the same pieces give the same plan on any machine.
 */
import { layBoxes } from './cut-boxes';
import type { Job } from './cut-job';
import { type Layout, lay, lengthOf, type Recipe, type Rule } from './cut-layout';
import { polished } from './cut-polish';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';

/** About a quarter of a second. */
const mostSteps = 20e6;
/** What the starts may take of it. */
const startSteps = 10e6;
const mostChanges = 800;

const rules: readonly Rule[] = ['weight', 'right', 'middle', 'left'];
const everyTurn = 3;

/** The shortest layout found: fewest sheets, then the least length of the last one. */
export function shortestLayout(job: Job): Layout {
  const effort: StepBudget = { spent: 0 };
  const inOrders = orders(job);
  let best = layBoxes(job, inOrders).reduce((one, other) => (shorter(other, one, job) ? other : one));
  let recipe = recipeOf(best);
  const tried = (next: Recipe, most: number) => {
    const found = lay(job, next, lengthOf(best, job) + 1e-9, effort, most);
    if (found === undefined || !shorter(found, best, job)) return;
    best = found;
    recipe = next;
  };
  for (const order of inOrders) {
    for (const family of [everyTurn, 2, 1, 0]) {
      for (const rule of rules) tried({ order, choices: order.map(() => family), rule }, startSteps);
    }
  }
  const random = randomNumbers();
  for (let i = 0; i < mostChanges && effort.spent < mostSteps; i++) {
    tried(changed(recipe, best, job, random), mostSteps);
  }
  const finer = polished(job, best, effort);
  return finer !== undefined && shorter(finer, best, job) ? finer : best;
}

/** A recipe that lays pieces much as they lie. */
function recipeOf({ spots }: Layout): Recipe {
  const order = [...spots].sort((a, b) => a.sheet - b.sheet || a.x - b.x || a.y - b.y).map(({ item }) => item);
  const choices: Rows[] = [];
  for (const { item, rows } of spots) choices[item] = rows;
  return { order, choices, rule: 'weight' };
}

function shorter(one: Layout, other: Layout, job: Job): boolean {
  if (one.sheets !== other.sheets) return one.sheets < other.sheets;
  const difference = lengthOf(one, job) - lengthOf(other, job);
  return difference < -1e-9 || (difference < 1e-9 && one.moment < other.moment);
}

/** Large pieces first, by area and by how long they are; what is equal keeps its order. */
function orders(job: Job): readonly (readonly number[])[] {
  const by = (size: (shape: Job['shapes'][number]) => number) => {
    const sizes = job.shapes.map(size);
    const sizeOf = (item: number) => sizes[job.items[item]!]!;
    return job.items.map((_, i) => i).sort((a, b) => sizeOf(b) - sizeOf(a) || a - b);
  };
  const byArea = by(({ area }) => area);
  const byLength = by(({ families }) => Math.max(...families[everyTurn]!.map(({ length }) => length)));
  return byArea.every((item, i) => item === byLength[i]) ? [byArea] : [byArea, byLength];
}

/**
 * A recipe with up to three small changes: two pieces change places in the order, a piece moves in it, a piece takes one
 * other turn or is free to take any. The other pieces keep the turn that they took, which is quick to lay.
 */
function changed(recipe: Recipe, layout: Layout, job: Job, random: () => number): Recipe {
  const order = [...recipe.order];
  const choices = [...recipe.choices];
  for (const { item, rows } of layout.spots) choices[item] = rows;
  const pick = (count: number) => Math.floor(random() * count);
  for (let changes = 1 + pick(3); changes > 0; changes--) {
    const kind = pick(4);
    const at = pick(order.length);
    const item = order[at]!;
    const to = pick(order.length);
    const turns = job.shapes[job.items[item]!]!.families[everyTurn]!;
    if (kind === 0) [order[at], order[to]] = [order[to]!, item];
    else if (kind === 1) order.splice(to, 0, ...order.splice(at, 1));
    else choices[item] = kind === 2 ? turns[pick(turns.length)]! : everyTurn;
  }
  return { order, choices, rule: random() < 0.8 ? recipe.rule : rules[pick(rules.length)]! };
}

/** The same numbers from 0 to 1 each time, by a linear congruential rule (Numerical Recipes' constants). */
function randomNumbers(): () => number {
  let state = 12345;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
