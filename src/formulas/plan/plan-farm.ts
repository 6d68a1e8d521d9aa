/**
 * A scenario with the flow that it needs, the flow that runs, and its steady state at that flow.
 */
import { type FarmBalance, farmBalance } from '../balance/farm-balance';
import { type FarmModel, farmModel } from '../balance/farm-model';
import { type FlowNeed, flowNeeds, type Waste } from '../balance/flow-needed';
import type { Outcome, Scenario, ScenarioFactors } from './plan-scenario';

export interface Farm extends FarmModel {
  readonly needs: readonly FlowNeed[];
  /** m3/s, or `never` if no flow keeps every waste within its limit. */
  readonly flowNeeded: Outcome;
  /** The waste that needs the most flow. */
  readonly flowSetBy: Waste;
  /**
   * The pump's flow or, if no pump is given, the flow needed; if no flow is enough, the most that another waste needs, so
   * that drums and times can still be calculated.
   */
  readonly flow: Outcome;
  readonly balance: FarmBalance;
}

/** Refuses a scenario without feed, and a spread of settling velocities above 6 in a computed settler. */
export function planFarm(scenario: Scenario, factors: ScenarioFactors): Farm {
  const model = farmModel(scenario, factors);
  const needs = flowNeeds(model);
  let most: FlowNeed = { waste: 'ammonia', flow: -1 };
  let mostFinite = -1;
  for (const need of needs) {
    if (need.flow > most.flow) most = need;
    if (Number.isFinite(need.flow)) mostFinite = Math.max(mostFinite, need.flow);
  }
  const flow: Outcome = scenario.pumpFlow ?? (mostFinite < 0 ? 'never' : mostFinite);
  return {
    ...model,
    needs,
    flowNeeded: Number.isFinite(most.flow) ? most.flow : 'never',
    flowSetBy: most.waste,
    flow,
    balance: farmBalance(model, typeof flow === 'number' ? flow : 0),
  };
}

/** Whether only gravel beds catch solids, without drums and pads. */
export function bedsCatchAllSolids({ drums, pads, bedArea }: Scenario): boolean {
  return drums === 'none' && typeof pads !== 'number' && typeof bedArea === 'number';
}

/** Every figure of a scenario and its farm by name, for the marks of sentences. */
export function planFigures({ scenario, feed, solids, oxygen, ammonia }: Farm): Readonly<Record<string, number>> {
  const named = Object.entries<unknown>({ ...scenario, feed, solids, oxygen, ammonia });
  return Object.fromEntries(named.filter((entry): entry is [string, number] => typeof entry[1] === 'number'));
}
