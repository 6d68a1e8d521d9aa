/**
 * Feed at which each waste of a farm reaches its limit at a flow, kg/s: the steady state solved for the feed.
 *
 * Every waste grows with the feed, and so does the water in the slurry, so that ammonia is not quite in proportion.
 */
import { ammoniaBalance } from '../balance/dissolved-balance';
import type { FarmBalance } from '../balance/farm-balance';
import type { FarmModel } from '../balance/farm-model';
import { unionizedAsTotal } from '../balance/flow-needed';
import { loadOxygenFlow } from '../load/load';
import { rootBetween } from '../numeric/root';
import { CARBON_DIOXIDE_PER_OXYGEN } from '../water/atomic-mass';
import { systemCarbonDioxide } from '../water/carbon-dioxide-air';

/** Undefined if an input is not given; Infinity if no feed reaches the limit. */
export interface FeedAtLimit {
  readonly ammonia: number;
  /** Whether the media, not the flow, sets that feed. */
  readonly ammoniaByMedia: boolean;
  readonly unionizedAmmonia: number | undefined;
  /** 0 if nothing removes some part of the solids. */
  readonly solids: number;
  /** Share of the solids that nothing removes. */
  readonly rising: number;
  readonly carbonDioxide: number | undefined;
  readonly oxygen: number | undefined;
}

/** At the flow of a balance of the same model. */
export function feedAtLimit(model: FarmModel, balance: FarmBalance): FeedAtLimit {
  const { scenario, feed } = model;
  const { oxygenIn, oxygenOut, degassing } = scenario;
  const { flow, solids, ammonia, out } = balance;
  const slurry = out - model.out;
  const byAmmonia = (limit: number): number => {
    const cleared = Math.min(flow * scenario.removal * limit, model.capacity) + limit * model.out;
    const added = ammonia.made - limit * slurry;
    return added > 0 ? (feed * cleared) / added : Number.POSITIVE_INFINITY;
  };
  return {
    ammonia: byAmmonia(scenario.ammoniaLimit),
    ammoniaByMedia: model.capacity < flow * scenario.removal * scenario.ammoniaLimit,
    unionizedAmmonia: scenario.highestPh === undefined ? undefined : byAmmonia(unionizedAsTotal(model)),
    solids: solids.rising > 0 ? 0 : (feed * scenario.solidsLimit) / solids.level,
    rising: solids.rising / solids.made,
    carbonDioxide: degassing === undefined ? undefined : byCarbonDioxide(model, balance, degassing),
    oxygen:
      oxygenIn === undefined || oxygenOut === undefined
        ? undefined
        : (feed * flow) / loadOxygenFlow(model.oxygen, oxygenIn, oxygenOut),
  };
}

/** Solids, ammonia and slurry grow with the feed, so only the ammonia balance is solved again for each feed. */
function byCarbonDioxide(model: FarmModel, { flow, ammonia, out }: FarmBalance, degassing: number): number {
  const { carbonDioxideLimit: limit, removal, alkali } = model.scenario;
  if (limit <= model.airCarbonDioxide) return 0;
  const slurry = out - model.out;
  const carried = (limit - model.airCarbonDioxide) * flow * degassing;
  const over = (times: number): number => {
    const { nitrified } = ammoniaBalance({
      made: ammonia.made * times,
      flow,
      removal,
      capacity: model.capacity,
      out: model.out + slurry * times,
    });
    return systemCarbonDioxide(model.oxygen * times, nitrified, alkali) - carried;
  };
  // With bicarbonate, carbon dioxide grows with the feed, however much is nitrified.
  const most = carried / (CARBON_DIOXIDE_PER_OXYGEN * model.oxygen);
  if (over(most) >= 0) return model.feed * most;
  let high = 2 * most;
  while (over(high) <= 0) {
    if (high > 1e9) return Number.POSITIVE_INFINITY;
    high *= 2;
  }
  return model.feed * rootBetween(over, most, high, 0);
}
