/**
 * What is in the water between the stages of a farm at steady state: the level of the tank less what was taken so far,
 * over the flow. Levels in kg/m3; Infinity where it rises without end.
 */
import type { FarmBalance } from './farm-balance';

export type Place = 'tank' | 'drums' | 'pads' | 'biofilter' | 'beds';

export interface WaterAfter {
  readonly solids: number;
  readonly ammonia: number;
  readonly nitrate: number;
}

/** By the place that the water has just left; undefined where no water runs. Source: mass balance. */
export function waterOnItsWay({
  flow,
  solids,
  ammonia,
  nitrate,
}: FarmBalance): Readonly<Record<Place, WaterAfter>> | undefined {
  if (flow === 0) return undefined;
  const tank = { solids: solids.level, ammonia: ammonia.level, nitrate: nitrate.level };
  const less = (before: WaterAfter, taken: number): WaterAfter => ({
    ...before,
    solids: Math.max(0, before.solids - taken / flow),
  });
  const drums = less(tank, solids.drums);
  const pads = less(drums, solids.pads);
  const biofilter = {
    ...pads,
    ammonia: Math.max(0, pads.ammonia - ammonia.nitrified / flow),
    nitrate: pads.nitrate + ammonia.nitrified / flow,
  };
  const beds = less(biofilter, solids.beds);
  return {
    tank,
    drums,
    pads,
    biofilter,
    beds: { ...beds, nitrate: Math.max(0, beds.nitrate - nitrate.plants / flow) },
  };
}
