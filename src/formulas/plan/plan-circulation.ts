/**
 * Feed at which each waste of a farm reaches its limit at a flow, kg/s: the steady state solved for the feed.
 *
 * Every waste grows with the feed, and so does the water in the slurry, so that ammonia is not quite in proportion.
 */
import { dissolvedOut, farmAmmonia, farmBalance, farmCarbonDioxide, farmSolids } from '../balance/farm-balance';
import type { FarmModel } from '../balance/farm-model';
import { unionizedAsTotal } from '../balance/flow-needed';
import { loadOxygenFlow } from '../load/load';
import { rootBetween } from '../numeric/root';

/** Undefined where what it rests on is not given; Infinity where no feed reaches the limit. */
export interface FeedAtLimit {
  readonly ammonia: number;
  /** Whether the media gives out at that feed before the flow does. */
  readonly ammoniaByMedia: boolean;
  readonly unionizedAmmonia: number | undefined;
  /** 0 where nothing takes some part of the solids. */
  readonly solids: number;
  /** Share of the solids that nothing takes. */
  readonly rising: number;
  readonly carbonDioxide: number | undefined;
  readonly oxygen: number | undefined;
}

export function feedAtLimit(model: FarmModel, flow: number): FeedAtLimit {
  const { scenario, feed } = model;
  const { oxygenIn, oxygenOut, degassing } = scenario;
  const { solids, ammonia, out } = farmBalance(model, flow);
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
    carbonDioxide: degassing === undefined ? undefined : byCarbonDioxide(model, flow, degassing),
    oxygen:
      oxygenIn === undefined || oxygenOut === undefined
        ? undefined
        : (feed * flow) / loadOxygenFlow(model.oxygen, oxygenIn, oxygenOut),
  };
}

/** The farm at a multiple of its feed. */
export function fedTimes(model: FarmModel, times: number): FarmModel {
  return {
    ...model,
    feed: times * model.feed,
    solids: times * model.solids,
    ammonia: times * model.ammonia,
    oxygen: times * model.oxygen,
    nitrogenFed: times * model.nitrogenFed,
    phosphorusFed: times * model.phosphorusFed,
    denitrified: times * model.denitrified,
  };
}

function byCarbonDioxide(model: FarmModel, flow: number, degassing: number): number {
  const { carbonDioxideLimit: limit } = model.scenario;
  if (limit <= model.airCarbonDioxide) return 0;
  const over = (times: number): number => {
    const fed = fedTimes(model, times);
    const solids = farmSolids(fed, flow);
    const { nitrified } = farmAmmonia(fed, flow, solids, dissolvedOut(fed, solids));
    return farmCarbonDioxide(fed, flow, nitrified, degassing) - limit;
  };
  let high = 1;
  while (over(high) <= 0) {
    if (high > 1e9) return Number.POSITIVE_INFINITY;
    high *= 4;
  }
  return model.feed * rootBetween(over, 0, high, 0);
}
