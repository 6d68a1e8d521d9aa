/**
 * Orders of many sheets: one sheet filled as well as can be is cut again and again, and only the rest is searched for.
 */
import { familyNames, type Job, prepareJob, type Shape } from './cut-job';
import { fillSheet, isShorter, type Layout, layoutOf, momentOf, type Rule, type Spot } from './cut-layout';
import { ordersOf, shortestLayout } from './cut-search';
import type { StepBudget } from './cut-sheet';

const rules: readonly Rule[] = ['weight', 'right'];
/** What filling sheets may take of an effort; good sheets of unlike pieces are given up once it is spent. */
const stepsAnEffort = 10e6;

/** The shorter of the layout that the search finds and of good sheets repeated. */
export function bestLayout(job: Job, effort: number): Layout {
  if (areaOf(job, [...job.pieces.keys()]) <= job.length * job.width) return shortestLayout(job, effort);
  const repeated = repeatedLayout(job, effort);
  if (repeated === undefined) return shortestLayout(job, effort);
  // Of equal pieces a good sheet repeated leaves the search little to find.
  const searched = shortestLayout(job, job.shapes.length === 1 ? effort / 4 : effort);
  return isShorter(searched, repeated, job) ? searched : repeated;
}

function areaOf(job: Job, items: readonly number[]): number {
  return items.reduce((sum, item) => sum + job.shapeOf(item).area, 0);
}

function repeatedLayout(job: Job, effort: number): Layout | undefined {
  const budget: StepBudget = { spent: 0 };
  const waiting = new Map<Shape, number[]>();
  for (const item of job.pieces.keys()) {
    const alike = waiting.get(job.shapeOf(item)) ?? [];
    alike.push(item);
    waiting.set(job.shapeOf(item), alike);
  }
  const spots: Spot[] = [];
  let sheets = 0;
  let left = [...waiting.values()].flat();
  while (areaOf(job, left) > job.length * job.width) {
    if (budget.spent > stepsAnEffort * effort) return undefined;
    const full = fullSheet(job, left, effort, budget);
    const needs = new Map<Shape, number>();
    for (const { item } of full) needs.set(job.shapeOf(item), (needs.get(job.shapeOf(item)) ?? 0) + 1);
    const times = Math.min(
      ...Array.from(needs, ([shape, need]) => Math.floor((waiting.get(shape)?.length ?? 0) / need)),
    );
    for (let i = 0; i < times; i++, sheets++) {
      for (const spot of full) {
        const item = waiting.get(job.shapeOf(spot.item))?.shift();
        if (item !== undefined) spots.push({ ...spot, item, sheet: sheets });
      }
    }
    left = [...waiting.values()].flat();
  }
  if (left.length > 0) {
    for (const spot of shortestLayout(subJob(job, left), effort).spots) {
      spots.push({ ...spot, item: left[spot.item] ?? spot.item, sheet: sheets + spot.sheet });
    }
  }
  return layoutOf(spots, momentOf(spots, job));
}

/** One sheet as full as can be of the pieces that wait. */
function fullSheet(job: Job, items: readonly number[], effort: number, budget: StepBudget): readonly Spot[] {
  const waits = new Set(items);
  let best: readonly Spot[] = [];
  let most = 0;
  for (const whole of ordersOf(job)) {
    const order = whole.filter((item) => waits.has(item));
    for (const family of familyNames) {
      const choices = job.pieces.map((_, item) => job.shapeOf(item).families[family]);
      for (const rule of rules) {
        if (best.length > 0 && budget.spent > stepsAnEffort * effort) return best;
        const spots = fillSheet(job, { order, choices, rule }, budget);
        const area = areaOf(
          job,
          spots.map(({ item }) => item),
        );
        if (area <= most) continue;
        most = area;
        best = spots;
      }
    }
  }
  return job.shapes.length === 1 ? (withMore(job, items.length, best.length, effort) ?? best) : best;
}

/** More equal pieces on one sheet than so many, where the search finds room for them. */
function withMore(job: Job, waiting: number, count: number, effort: number): readonly Spot[] | undefined {
  const area = job.shapes[0]?.area ?? Infinity;
  let found: readonly Spot[] | undefined;
  for (let more = count + 1; more <= waiting; more++) {
    if (more * area > job.length * job.width) break;
    const layout = shortestLayout(subJob(job, [...job.pieces.keys()].slice(0, more)), effort, 1);
    if (layout.sheets > 1) break;
    found = layout.spots;
  }
  return found;
}

function subJob(job: Job, items: readonly number[]): Job {
  return prepareJob(
    items.flatMap((item) => job.pieces[item] ?? []),
    job.sheet,
  );
}
