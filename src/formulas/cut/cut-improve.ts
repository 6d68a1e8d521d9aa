/**
 * Improves layouts by small changes: several at first, each by an equal share of the steps, then the better half of them,
 * until one is left.
 */
import { changed } from './cut-changes';
import type { Job } from './cut-job';
import { isShorter, type Layout, lengthOf } from './cut-layout';
import { laidNear } from './cut-near';
import type { Sheet, StepBudget } from './cut-sheet';

/** This many changes without a gain end the search of a few pieces. */
const idleAnEffort = 5000;
/** How much the mean distance of the area from the left counts beside the length. */
const weightOfMean = 0.5;
/** What a change takes beside the steps of laying pieces. */
const stepsAChange = 400;
/** The length by which a change may be worse at first, as a share of the length for each piece. */
const worseAtFirst = 0.02;

export interface SearchLimits {
  readonly budget: StepBudget;
  readonly effort: number;
  /** A layout no longer than this ends the search. */
  readonly enough: number;
  readonly random: () => number;
  /** Takes every layout that a change led to. */
  readonly seen: Layout[];
}

/** The shortest layout that small changes of some lead to. */
export function shortestOf(found: readonly Layout[], job: Job, mostSteps: number, limits: SearchLimits): Layout {
  let left = found;
  // Half of them are left after each round.
  let rounds = 1;
  for (let count = found.length; count > 1; count = Math.ceil(count / 2)) rounds++;
  for (; rounds > 0; rounds--) {
    const share = (mostSteps - limits.budget.spent) / rounds / left.length;
    const next = left.map((layout) => improved(layout, job, limits.budget.spent + share, limits));
    left = inTurn(next, job).slice(0, Math.ceil(next.length / 2));
  }
  return left[0] as Layout;
}

/** Layouts, the shortest first. */
export function inTurn(layouts: readonly Layout[], job: Job): readonly Layout[] {
  return [...layouts].sort((one, other) => (isShorter(one, other, job) ? -1 : isShorter(other, one, job) ? 1 : 0));
}

/** Makes small changes and keeps those that are shorter, until the steps are spent or nothing was gained for long. */
export function improved(
  layout: Layout,
  job: Job,
  mostSteps: number,
  { budget, effort, enough, random, seen }: SearchLimits,
): Layout {
  const begun = budget.spent;
  const sheets: Sheet[] = [];
  const area = layout.spots.reduce((sum, { item }) => sum + job.shapeOf(item).area, 0);
  const cost = (one: Layout) => lengthOf(one, job) + (weightOfMean * one.moment) / area;
  let best = layout;
  let current = layout;
  for (let idle = 0; idle < idleAnEffort * effort && budget.spent < mostSteps; idle++) {
    const length = lengthOf(best, job);
    if (length <= enough) break;
    const left = 1 - (budget.spent - begun) / (mostSteps - begun);
    const worse = current.sheets > 1 ? 0 : (worseAtFirst * left * length) / current.spots.length;
    budget.spent += stepsAChange;
    const room = { length: lengthOf(current, job) + worse + 1e-9, budget, mostSteps };
    const next = laidNear(job, changed(current.spots, job, random), room, sheets);
    if (next === undefined || cost(next) > cost(current) + worse) continue;
    current = next;
    seen.push(next);
    if (!isShorter(next, best, job)) continue;
    best = next;
    idle = 0;
  }
  return best;
}
