/**
 * The least flow that keeps each waste of a farm within its limit, m3/s: the steady state solved for the flow.
 */
import { loadOxygenFlow } from '../load/load';
import { rootBetween } from '../numeric/root';
import { waterLimit } from '../water/water-ammonia';
import { dissolvedOut, farmAmmonia, farmCarbonDioxide, farmSolids } from './farm-balance';
import type { FarmModel } from './farm-model';

export type Waste = 'ammonia' | 'un-ionized ammonia' | 'solids' | 'carbon dioxide' | 'oxygen';

export interface FlowNeed {
  readonly waste: Waste;
  /** Infinity if no flow is enough. */
  readonly flow: number;
}

/** No farm pumps more, m3/s. */
const GREATEST = 1e4;

/** A flow is calculated to this share of itself. */
const CLOSE = 1e-9;

/** The least flow at which a level that falls with flow is within its limit. */
function leastFlow(levelAt: (flow: number) => number, limit: number, guess: number): number {
  if (levelAt(0) <= limit) return 0;
  if (levelAt(GREATEST) > limit) return Number.POSITIVE_INFINITY;
  let low = 0;
  let high = Math.min(guess, GREATEST);
  while (levelAt(high) > limit) {
    low = high;
    high = Math.min(high * 2, GREATEST);
  }
  // A level is nearly a constant over the flow, so that its inverse is nearly a straight line.
  const flow = rootBetween((tried) => limit / levelAt(tried) - 1, low, high, 0);
  // Where media reaches its capacity the level jumps; then the flow just beyond the jump is the lowest that is enough.
  return levelAt(flow) > limit * (1 + CLOSE) ? flow * (1 + CLOSE) : flow;
}

/** Total ammonia nitrogen at which the un-ionized part reaches its limit at the highest pH and the hottest water; Infinity without pH. */
export function unionizedAsTotal({ scenario }: FarmModel): number {
  const { unionizedAmmoniaLimit: unionized, highestPh, hottestWater, salinity } = scenario;
  return highestPh === undefined ? Number.POSITIVE_INFINITY : waterLimit(unionized, highestPh, hottestWater, salinity);
}

function ammoniaFlow(model: FarmModel, limit: number): number {
  const levelAt = (flow: number): number => {
    const solids = farmSolids(model, flow);
    return farmAmmonia(model, flow, solids, dissolvedOut(model, solids)).level;
  };
  return leastFlow(levelAt, limit, model.ammonia / (limit * model.scenario.removal));
}

function solidsFlow(model: FarmModel): number {
  const limit = model.scenario.solidsLimit;
  return leastFlow((flow) => farmSolids(model, flow).level, limit, (2 * model.solids) / limit);
}

function carbonDioxideFlow(model: FarmModel, degassing: number): number {
  const limit = model.scenario.carbonDioxideLimit;
  const levelAt = (flow: number): number => {
    const solids = farmSolids(model, flow);
    const { nitrified } = farmAmmonia(model, flow, solids, dissolvedOut(model, solids));
    return farmCarbonDioxide(model, flow, nitrified, degassing);
  };
  return leastFlow(levelAt, limit, (2 * model.oxygen) / (limit * degassing));
}

/**
 * A need for each waste that sets one: ammonia by the stricter of its two limits, un-ionized only where pH is given; carbon
 * dioxide where degassing is, oxygen where its levels in and out are.
 *
 * Refuses oxygen in that is not above oxygen out.
 */
export function flowNeeds(model: FarmModel): readonly FlowNeed[] {
  const { ammoniaLimit, degassing, oxygenIn, oxygenOut } = model.scenario;
  const unionized = unionizedAsTotal(model);
  const needs: FlowNeed[] = [
    unionized < ammoniaLimit
      ? { waste: 'un-ionized ammonia', flow: ammoniaFlow(model, unionized) }
      : { waste: 'ammonia', flow: ammoniaFlow(model, ammoniaLimit) },
    { waste: 'solids', flow: solidsFlow(model) },
  ];
  if (degassing !== undefined) needs.push({ waste: 'carbon dioxide', flow: carbonDioxideFlow(model, degassing) });
  if (oxygenIn !== undefined && oxygenOut !== undefined) {
    needs.push({ waste: 'oxygen', flow: loadOxygenFlow(model.oxygen, oxygenIn, oxygenOut) });
  }
  return needs;
}
