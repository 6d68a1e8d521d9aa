/**
 * Which stage of a farm is the first limit, and which is next.
 */
import type { Caution } from '../caution';
import { wholeDown } from '../numeric/whole';
import { stockFeed } from '../stock/stock';
import type { Outcome, Scenario, ScenarioFactors } from './plan-scenario';
import { planStages, type Stage } from './plan-stages';
import { scenarioFeed } from './plan-train';

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
  /** The stages with the least and the second least capacity, where so many have one. */
  readonly first: Stage | undefined;
  readonly next: Stage | undefined;
}

/**
 * A row a stage: capacity as feed and as fish, share in use, what it was figured from; the last is the stage that gives
 * out first, with the next.
 *
 * Each stage at its worst water: nitrification at the coldest, oxygen at the hottest, un-ionized ammonia at the hottest and
 * the highest pH. Capacities are in kg/s of feed. Source: the formula of each stage.
 */
export function planLimit(scenario: Scenario, factors: ScenarioFactors): Limit {
  const stages = planStages(scenario, factors);
  const feed = scenarioFeed(scenario);
  const perFish = feedOfOne(scenario, feed);
  const rows = stages.map((one) => limitRow(one, feed, perFish));
  let first: Known | undefined;
  let next: Known | undefined;
  for (const one of stages) {
    if (!isKnown(one)) continue;
    if (first === undefined || one.capacity < first.capacity) [first, next] = [one, first];
    else if (next === undefined || one.capacity < next.capacity) next = one;
  }
  if (first === undefined) {
    const from = { text: 'not given: no stage has what its capacity is figured from' };
    const row = { stage: 'first limit: not given', from } as const;
    return {
      rows: [...rows, { ...row, capacity: 'not given', fish: 'not given', shareInUse: 'not given' }],
      first,
      next,
    };
  }
  const last = { ...limitRow(first, feed, perFish), stage: `first limit: ${first.stage}`, from: afterwards(next) };
  return { rows: [...rows, last], first, next };
}

type Known = Stage & { readonly capacity: number };

function isKnown(one: Stage): one is Known {
  return typeof one.capacity === 'number';
}

function limitRow({ stage, capacity, from }: Stage, feed: number, perFish: number | undefined): LimitRow {
  if (typeof capacity !== 'number') return { stage, capacity, fish: capacity, shareInUse: capacity, from };
  const fish = perFish === undefined ? 'not given' : wholeDown(capacity / perFish);
  return { stage, capacity, fish, shareInUse: capacity > 0 ? feed / capacity : 'over', from };
}

function afterwards(next: Known | undefined): Caution {
  if (next === undefined) return { text: 'next limit: not given' };
  return { text: `next limit: ${next.stage}, at {capacity:daily}`, figures: { capacity: next.capacity } };
}

/** Feed of one fish, kg/s: today's over the count, else its mass at the feeding rate. */
function feedOfOne({ fishCount, fishMass, feedingRate }: Scenario, feed: number): number | undefined {
  if (fishCount !== undefined) return feed / fishCount;
  if (fishMass !== undefined && feedingRate !== undefined) return stockFeed(1, fishMass, feedingRate);
  return undefined;
}
