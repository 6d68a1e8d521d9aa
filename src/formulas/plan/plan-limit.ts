/**
 * Which stage of a farm is the first limit, and which is next.
 */
import type { Caution } from '../caution';
import { wholeDown } from '../numeric/whole';
import { stockFeed } from '../stock/stock';
import type { Farm } from './plan-farm';
import type { Outcome, Scenario } from './plan-scenario';
import { planStages, type Sketch, type Stage, stageSketches } from './plan-stages';

export interface LimitRow {
  readonly stage: string;
  /** Feed that the stage carries, kg/s, and the fish that eat it, whole. */
  readonly capacity: Outcome;
  readonly fish: Outcome;
  /** Today's feed over the capacity. */
  readonly shareInUse: Outcome | 'over';
  readonly from: Caution;
}

export interface Limit {
  readonly rows: readonly LimitRow[];
  /** The stages with the lowest and the second lowest capacity, if so many have one. */
  readonly first: Known<Stage> | undefined;
  readonly next: Known<Stage> | undefined;
}

/**
 * One row per stage: capacity as feed and as fish, share in use, what it was calculated from; the last row is the first
 * limit, with the next.
 *
 * Each stage at its worst water: nitrification at the coldest, oxygen at the hottest, un-ionized ammonia at the hottest and
 * the highest pH. Capacities are in kg/s of feed. Source: the formula of each stage.
 */
export function planLimit(farm: Farm): Limit {
  const stages = planStages(farm);
  const { feed } = farm;
  const perFish = feedOfOne(farm.scenario, feed);
  const rows = stages.map((one) => limitRow(one, feed, perFish));
  const [first, next] = leastTwo(stages);
  if (first === undefined) {
    const from = { text: 'not given: no stage has the inputs for its capacity' };
    const row = { stage: 'first limit: not given', from } as const;
    return {
      rows: [...rows, { ...row, capacity: 'not given', fish: 'not given', shareInUse: 'not given' }],
      first,
      next,
    };
  }
  const last = { ...limitRow(first, feed, perFish), stage: `first limit: ${first.stage}`, from: nextLimitText(next) };
  return { rows: [...rows, last], first, next };
}

/** The stage with the lowest capacity, the only part of PLAN.LIMIT that PLAN.COMPARE needs. */
export function firstLimit(farm: Farm): string | undefined {
  return leastTwo(stageSketches(farm))[0]?.stage;
}

type Known<S> = S & { readonly capacity: number };

function isKnown<S extends Pick<Sketch, 'capacity'>>(one: S): one is Known<S> {
  return typeof one.capacity === 'number';
}

/** The two with the least capacity; of equals the earlier comes first. */
function leastTwo<S extends Pick<Sketch, 'capacity'>>(
  stages: readonly S[],
): readonly [first: Known<S> | undefined, next: Known<S> | undefined] {
  let first: Known<S> | undefined;
  let next: Known<S> | undefined;
  for (const one of stages) {
    if (!isKnown(one)) continue;
    if (first === undefined || one.capacity < first.capacity) [first, next] = [one, first];
    else if (next === undefined || one.capacity < next.capacity) next = one;
  }
  return [first, next];
}

function limitRow({ stage, capacity, from }: Stage, feed: number, perFish: number | undefined): LimitRow {
  if (typeof capacity !== 'number') return { stage, capacity, fish: capacity, shareInUse: capacity, from };
  const fish = perFish === undefined ? 'not given' : wholeDown(capacity / perFish);
  return { stage, capacity, fish, shareInUse: capacity > 0 ? feed / capacity : 'over', from };
}

function nextLimitText(next: Known<Stage> | undefined): Caution {
  if (next === undefined) return { text: 'next limit: not given' };
  return { text: `next limit: ${next.stage}, at {capacity:daily}`, figures: { capacity: next.capacity } };
}

/** Feed of one fish, kg/s: today's over the count, else its mass at the feeding rate. */
function feedOfOne({ fishCount, fishMass, feedingRate }: Scenario, feed: number): number | undefined {
  if (fishCount !== undefined) return feed / fishCount;
  if (fishMass !== undefined && feedingRate !== undefined) return stockFeed(1, fishMass, feedingRate);
  return undefined;
}
