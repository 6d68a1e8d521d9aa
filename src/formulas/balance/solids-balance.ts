/**
 * Where suspended solids go at steady state: drums, pads, beds, decay in the water, water let out.
 *
 * Each part of the solids has a balance of its own, that of waste-balance.ts with the stages drums, pads and beds; the
 * level of the tank is the sum of the parts. Solids lying in drums, pads and beds do not decay.
 */
import type { SolidsParts } from './settling-parts';

/** Shares a pass of pads and beds; decay and water let out as flows, k V and E, m3/s. */
export interface SolidsSinks {
  readonly pads: number;
  readonly beds: number;
  readonly decay: number;
  readonly out: number;
}

/** Masses in kg/s, the level in kg/m3. */
export interface SolidsBalance {
  readonly made: number;
  /** Of the tank; Infinity where some part has nothing that takes it. */
  readonly level: number;
  readonly drums: number;
  readonly pads: number;
  readonly beds: number;
  readonly decayed: number;
  readonly out: number;
  /** Parts that nothing takes, which build up without end. */
  readonly rising: number;
}

/** Solids made, kg/s, followed through flow, m3/s. Source: mass balance. */
export function solidsBalance(
  made: number,
  flow: number,
  { shares, taken }: SolidsParts,
  { pads, beds, decay, out }: SolidsSinks,
): SolidsBalance {
  let level = 0;
  let byDrums = 0;
  let afterDrums = 0;
  let rising = 0;
  for (let i = 0; i < shares.length; i++) {
    const share = shares[i] ?? 0;
    const settled = taken[i] ?? 0;
    if (share === 0) continue;
    const cleared = flow * (1 - (1 - settled) * (1 - pads) * (1 - beds)) + decay + out;
    if (cleared === 0) {
      rising += made * share;
      continue;
    }
    const part = (made * share) / cleared;
    level += part;
    byDrums += part * settled;
    afterDrums += part * (1 - settled);
  }
  return {
    made,
    level: rising > 0 ? Number.POSITIVE_INFINITY : level,
    drums: flow * byDrums,
    pads: flow * afterDrums * pads,
    beds: flow * afterDrums * (1 - pads) * beds,
    decayed: decay * level,
    out: out * level,
    rising,
  };
}
