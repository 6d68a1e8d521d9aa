/**
 * Feed followed through the train: waste, circulation, settler, pads, beds. Every step is the formula of its own stage.
 */

import { nitrificationLine } from '../filter/nitrification';
import { harvestSolids } from '../harvest/slurry';
import { loadAmmonia, loadOxygen, loadSolids } from '../load/load';
import { type FlowRow, loadFlows } from '../load/load-flows';
import { Refusal } from '../refusal';
import { settleCapture } from '../settle/settle-capture';
import { settleOverflow } from '../settle/settle-drums';
import { stockFeed } from '../stock/stock';
import { isFitted, type Outcome, type Scenario, type ScenarioFactors } from './plan-scenario';

/** Masses in kg/s, flows in m3/s. */
export interface Train {
  readonly feed: number;
  readonly solids: number;
  readonly ammonia: number;
  readonly oxygen: number;
  /** Share of the solids taken out in one pass, by settler, pads or, in a farm without either, gravel beds. */
  readonly capture: number;
  /** The largest flow that a waste asks for, and which. */
  readonly flowNeeded: number;
  readonly flowSetBy: string;
  /** What runs: the pump's, or where no pump is given what is needed. */
  readonly flow: Outcome;
  readonly captured: number;
  readonly passedOn: number;
  readonly onPads: number;
  readonly onBeds: number;
  /** Areal nitrification at the coldest water, kg/m2/s. */
  readonly nitrification: number;
}

/** Temperature at which a scenario's nitrification is stated, °C. */
const STATED_AT = 20;

/** Feed a day as typed, else what the fish eat, kg/s. Cannot be known without either. */
export function scenarioFeed({ feed, fishCount, fishMass, feedingRate }: Scenario): number {
  if (feed !== undefined) return feed;
  if (fishCount === undefined || fishMass === undefined || feedingRate === undefined) {
    throw new Refusal('feed', 'give feed, or fish count, fish mass and feeding rate');
  }
  return stockFeed(fishCount, fishMass, feedingRate);
}

/**
 * Overflow rate at which the settler's capture is computed, m/s: that of the drums given under the pump given, else the
 * overflow limit, which is what drums are counted for.
 */
export function settlingRate({ pumpFlow, drumDiameter, drums, overflowLimit }: Scenario): number {
  if (!isFitted(pumpFlow) || !isFitted(drums) || drumDiameter === undefined) return overflowLimit;
  return settleOverflow(pumpFlow, drumDiameter, drums);
}

/** Share of suspended solids that the settler takes out in one pass; none where there are no drums. */
export function settlerCapture(scenario: Scenario, factors: ScenarioFactors): number {
  const { settler, drums } = scenario;
  if (drums === 'none') return 0;
  if (typeof settler === 'number') return settler;
  if (settler === 'swirl') return factors.swirlCapture;
  if (settler === 'radial') return factors.radialCapture;
  return settleCapture({
    overflow: settlingRate(scenario),
    median: scenario.medianSettling,
    spread: scenario.settlingSpread,
    mixing: settler === 'mixed' ? 1 : 'ideal',
    settleable: scenario.settleableShare,
    inLine: 1,
  });
}

/** Whether gravel beds are all that catches solids: no drums, no pads. */
export function bedsCatchSolids({ drums, pads, bedArea }: Scenario): boolean {
  return drums === 'none' && !isFitted(pads) && isFitted(bedArea);
}

/** Follows the feed of a scenario. Source: mass balance of each stage. */
export function planTrain(scenario: Scenario, factors: ScenarioFactors): Train {
  const feed = scenarioFeed(scenario);
  const { protein, pumpFlow, pads, padCapture, solidsShare } = scenario;
  const solids = loadSolids(feed, solidsShare);
  const bySettler = settlerCapture(scenario, factors);
  const captured = harvestSolids(feed, bySettler, solidsShare);
  const passedOn = solids - captured;
  const byPads = isFitted(pads) ? padCapture : 0;
  const capture = bedsCatchSolids(scenario) ? 1 : 1 - (1 - bySettler) * (1 - byPads);
  const largest = largestFlow(scenario, factors, feed, capture);
  return {
    feed,
    solids,
    ammonia: loadAmmonia(feed, protein, factors.ammoniaFactor),
    oxygen: loadOxygen(feed, factors.oxygenRatio),
    capture,
    flowNeeded: largest.flow,
    flowSetBy: largest.waste,
    flow: pumpFlow ?? largest.flow,
    captured,
    passedOn,
    onPads: passedOn * padCapture,
    onBeds: passedOn * (1 - byPads),
    nitrification: nitrificationLine(scenario.nitrification, scenario.coldestWater, STATED_AT, 'lower'),
  };
}

/** The waste that asks for the most flow. Solids that nothing takes out cannot be held by flow and ask for none. */
function largestFlow(scenario: Scenario, factors: ScenarioFactors, feed: number, capture: number): FlowRow {
  const { ammoniaFactor, oxygenRatio } = factors;
  const held = capture > 0;
  const solidsShare = held ? scenario.solidsShare : 0;
  const needs = { ...scenario, feed, capture: held ? capture : 1, solidsShare, ammoniaFactor, oxygenRatio };
  const rows = loadFlows(needs);
  const { flow } = rows.at(-1)!;
  return rows.find((row) => row.flow === flow)!;
}

/** Every figure of a scenario and its train by name, for the marks of sentences. */
export function planFigures(scenario: Scenario, train: Train): Readonly<Record<string, number>> {
  const named = Object.entries<unknown>({ ...scenario, ...train });
  return Object.fromEntries(named.filter((entry): entry is [string, number] => typeof entry[1] === 'number'));
}
