/**
 * The steady state of a whole farm at a flow: solids first, then what is dissolved.
 *
 * The one place that calculates the balance of a scenario; results, limits, cautions and drawings all use it. Solids
 * leave with the water let out; dissolved wastes with that and with the water in the slurry. Solids that decay in the water
 * release their nitrogen as ammonia and their phosphorus dissolved. Masses in kg/s, flows in m3/s, levels in kg/m3.
 * Source: mass balance, as in waste-balance.ts.
 */
import { slurryWater } from '../harvest/slurry';
import { systemCarbonDioxide } from '../water/carbon-dioxide-air';
import {
  type AmmoniaBalance,
  ammoniaBalance,
  type Level,
  letOut,
  type NitrateBalance,
  nitrateBalance,
} from './dissolved-balance';
import type { FarmModel } from './farm-model';
import { type SolidsBalance, solidsBalance } from './solids-balance';

export interface FarmBalance {
  readonly flow: number;
  readonly solids: SolidsBalance;
  /** Water that carries dissolved wastes away. */
  readonly out: number;
  readonly ammonia: AmmoniaBalance;
  readonly nitrate: NitrateBalance;
  readonly phosphorus: Level;
}

export function farmSolids({ solids, settler, sinks }: FarmModel, flow: number): SolidsBalance {
  return solidsBalance(solids, flow, settler(flow), sinks);
}

/** Water that carries dissolved wastes away, m3/s: let out, and in the slurry. */
export function dissolvedOut({ out, scenario }: FarmModel, { drums }: SolidsBalance): number {
  return out + slurryWater(drums, scenario.slurrySolids);
}

export function farmAmmonia(model: FarmModel, flow: number, solids: SolidsBalance, out: number): AmmoniaBalance {
  const { nitrogenShare, removal } = model.scenario;
  const made = model.ammonia + nitrogenShare * solids.decayed;
  return ammoniaBalance({ made, flow, removal, capacity: model.capacity, out });
}

/** Carbon dioxide in the tank, kg/m3: that of air, and what is made over flow x degassing, the share removed per pass. */
export function farmCarbonDioxide(model: FarmModel, flow: number, nitrified: number, degassing: number): number {
  const made = systemCarbonDioxide(model.oxygen, nitrified, model.scenario.alkali);
  return made === 0 ? model.airCarbonDioxide : model.airCarbonDioxide + made / (flow * degassing);
}

export function farmBalance(model: FarmModel, flow: number): FarmBalance {
  const { scenario } = model;
  const solids = farmSolids(model, flow);
  const out = dissolvedOut(model, solids);
  const ammonia = farmAmmonia(model, flow, solids, out);
  const nitrate = nitrateBalance({
    nitrified: ammonia.nitrified,
    source: scenario.sourceNitrate * out,
    denitrified: model.denitrified,
    plants: model.plants,
    out,
  });
  return { flow, solids, out, ammonia, nitrate, phosphorus: letOut(scenario.phosphorusShare * solids.decayed, out) };
}
