/**
 * Orders of many sheets: one well-filled sheet is repeated, and only the rest is searched.
 */
import { type Job, prepareJob, type Shape } from './cut-job';
import { fillSheet, isShorter, type Layout, layoutOf, momentOf, type Spot } from './cut-layout';
import { fewRough, ordersOf, shortestLayout } from './cut-search';
import type { StepBudget } from './cut-sheet';
import { recipeFor, type Start, startsOfSheets } from './cut-starts';

/** Steps of an effort for filling one sheet, and for all of them; then the search for good sheets stops. */
const stepsAnEffort = { sheet: 2e6, all: 12e6 };
/**
 * The shares of the effort for the rest after the full sheets, for the search of all pieces, and for one more on a sheet; of
 * few pieces in all, more, and once more if one more would nearly fit. The rest of many pieces gets a small share, as the
 * last sheet is a small part of their whole length.
 */
const shares = {
  few: { rest: 0.7, search: 0.1, more: 0.6 },
  many: { rest: 0.2, search: 0.05, more: 0.35 },
  again: 0.7,
};
const fewPieces = 40;
/**
 * Pieces that are searched on rough rows are searched for so many times as long, as no plan of more pieces is so far from
 * the best; very few are soon searched through.
 */
const longerOnRough = { veryFew: 1.6, few: 2.5 };
const veryFewPieces = 8;
/** A larger order is searched for longer by the number of its pieces, at most twice as long. */
const largeOrder = { pieces: 60, longer: 2 };
const nearly = 1.015;
const bestStarts = 8;
/** Whether more pieces lie on one sheet is searched on a sheet this many times as long. */
const longerSheet = 1.5;

/** The shorter of two layouts: that of the search, and good sheets repeated. */
export function bestLayout(job: Job, asked: number): Layout {
  const effort = asked * Math.min(largeOrder.longer, Math.max(1, job.pieces.length / largeOrder.pieces));
  if (areaOf(job, [...job.pieces.keys()]) <= job.length * job.width) {
    return shortestLayout(job, effort * timesAsLong(job));
  }
  const repeated = repeatedLayout(job, effort);
  if (repeated === undefined) return shortestLayout(job, effort);
  const searched = shortestLayout(job, effort * sharesOf(job).search);
  return isShorter(searched, repeated, job) ? searched : repeated;
}

function timesAsLong({ pieces }: Job): number {
  if (pieces.length > fewRough) return 1;
  return pieces.length <= veryFewPieces ? longerOnRough.veryFew : longerOnRough.few;
}

function isFew({ pieces }: Job): boolean {
  return pieces.length <= fewPieces;
}

function sharesOf(job: Job) {
  return isFew(job) ? shares.few : shares.many;
}

function areaOf(job: Job, items: readonly number[]): number {
  return items.reduce((sum, item) => sum + job.shapeOf(item).area, 0);
}

function repeatedLayout(job: Job, effort: number): Layout | undefined {
  const budget: StepBudget = { spent: 0 };
  let inTurn: readonly Start[] = startsOfSheets;
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
    if (budget.spent > stepsAnEffort.all * effort) return undefined;
    const filled = filledSheets(job, left, inTurn, effort, budget);
    inTurn = filled.map(({ start }) => start).slice(0, bestStarts);
    const full = withMorePieces(job, left.length, filled[0]?.spots ?? [], effort);
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
    for (const spot of shortestLayout(subJob(job, left), effort * sharesOf(job).rest).spots) {
      spots.push({ ...spot, item: left[spot.item] ?? spot.item, sheet: sheets + spot.sheet });
    }
  }
  return layoutOf(spots, momentOf(spots, job));
}

interface FilledSheet {
  readonly start: Start;
  readonly spots: readonly Spot[];
  readonly area: number;
}

/** One sheet filled with waiting pieces by each start, the fullest first. */
function filledSheets(
  job: Job,
  items: readonly number[],
  inTurn: readonly Start[],
  effort: number,
  budget: StepBudget,
): readonly FilledSheet[] {
  const waits = new Set(items);
  const filled: FilledSheet[] = [];
  const mostSteps = budget.spent + stepsAnEffort.sheet * effort;
  for (const start of inTurn) {
    for (const whole of ordersOf(job)) {
      if (filled.length > 0 && budget.spent > mostSteps) break;
      const order = whole.filter((item) => waits.has(item));
      const spots = fillSheet(job, recipeFor(job, order, start), budget);
      const taken = spots.map(({ item }) => item);
      filled.push({ start, spots, area: areaOf(job, taken) });
    }
  }
  return filled.sort((one, other) => other.area - one.area);
}

/** Tries to put more equal pieces on one sheet than filling did, by a search. */
function withMorePieces(job: Job, waiting: number, filled: readonly Spot[], effort: number): readonly Spot[] {
  const [shape] = job.shapes;
  if (shape === undefined || job.shapes.length > 1) return filled;
  let found = filled;
  for (let more = filled.length + 1; more <= waiting; more++) {
    if (more * shape.area > job.length * job.width) break;
    // On a longer sheet the search comes nearer step by step, while whether all lie on this one is yes or no.
    const longer = { ...job.sheet, length: longerSheet * job.sheet.length };
    const jobOfMore = prepareJob(job.pieces.slice(0, more), longer);
    const search = (share: number) => shortestLayout(jobOfMore, effort * share, job.length);
    let layout = search(sharesOf(job).more);
    const isNear = layout.used > job.length && layout.used < nearly * job.length;
    // Rectangles fit or do not, but other pieces come nearer step by step.
    if (isFew(job) && layout.sheets === 1 && isNear && shape.piece.shape === 'sector') layout = search(shares.again);
    if (layout.sheets > 1 || layout.used > job.length) break;
    found = layout.spots;
  }
  return found;
}

function subJob(job: Job, items: readonly number[]): Job {
  const pieces = items.flatMap((item) => job.pieces[item] ?? []);
  return prepareJob(pieces, job.sheet, job.rowCount, job);
}
