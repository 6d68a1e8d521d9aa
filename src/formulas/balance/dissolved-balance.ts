/**
 * Where dissolved wastes go at steady state: ammonia, nitrate, phosphorus and carbon dioxide.
 *
 * Masses in kg/s (nitrogen as N, phosphorus as P), flows in m3/s, levels in kg/m3. Source: mass balance.
 */

/** Level of what is let out with so much water, and what builds up where no water is. */
export interface Level {
  /** Infinity where it rises without end. */
  readonly level: number;
  readonly out: number;
  readonly rising: number;
}

/** What is left over of a waste leaves with the water let out, or builds up where none is. */
export function letOut(left: number, out: number): Level {
  if (out > 0) return { level: left / out, out: left, rising: 0 };
  return { level: left > 0 ? Number.POSITIVE_INFINITY : 0, out: 0, rising: left };
}

/** Media that is used to the full is not used beyond it by the rounding of a sum. */
const ROUNDING = 1e-12;

export interface AmmoniaNeeds {
  readonly made: number;
  readonly flow: number;
  /** Share taken in one pass of the biofilter. */
  readonly removal: number;
  /** What the bacteria on the media nitrify at most; Infinity where the media is not known. */
  readonly capacity: number;
  readonly out: number;
}

export interface AmmoniaBalance extends Level {
  readonly made: number;
  readonly nitrified: number;
}

/**
 * Ammonia: nitrified is the smaller of Q C removal and the capacity of the media; where that binds, only the water let out
 * keeps the level from rising.
 */
export function ammoniaBalance({ made, flow, removal, capacity, out }: AmmoniaNeeds): AmmoniaBalance {
  const cleared = flow * removal + out;
  const byFlow = cleared > 0 ? (made * flow * removal) / cleared : 0;
  if (cleared > 0 && byFlow <= capacity * (1 + ROUNDING)) {
    const level = made / cleared;
    return { made, nitrified: byFlow, level, out: out * level, rising: 0 };
  }
  const nitrified = Math.min(made, byFlow, capacity);
  return { made, nitrified, ...letOut(made - nitrified, out) };
}

export interface NitrateNeeds {
  readonly nitrified: number;
  /** In the water that replaces what is let out. */
  readonly source: number;
  /** The most that is denitrified, and that plants take. */
  readonly denitrified: number;
  readonly plants: number;
  readonly out: number;
}

export interface NitrateBalance extends Level {
  readonly source: number;
  readonly denitrified: number;
  readonly plants: number;
}

/** Nitrate: denitrification first, then plants; neither takes more than is there. */
export function nitrateBalance({ nitrified, source, denitrified, plants, out }: NitrateNeeds): NitrateBalance {
  const there = nitrified + source;
  const gone = Math.min(denitrified, there);
  const eaten = Math.min(plants, there - gone);
  return { source, denitrified: gone, plants: eaten, ...letOut(there - gone - eaten, out) };
}
