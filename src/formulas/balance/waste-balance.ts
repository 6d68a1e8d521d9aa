/**
 * The steady state of one waste in recirculating water: removal equals production.
 *
 * Well-mixed water of volume V, flow Q in full through stages in series, first-order decay k in V, water E let out at the
 * level of the tank: C = P / (Q R + k V + E), R = 1 - (1 - r1)(1 - r2)… Masses in kg/s, flows in m3/s, V in m3, k in 1/s,
 * levels in kg/m3. Source: mass balance; Losordo and Westers in Timmons and Losordo, Aquaculture Water Reuse Systems (1994).
 */
import { Refusal } from '../refusal';

export interface WasteSinks {
  readonly flow: number;
  readonly volume: number;
  readonly decay: number;
  readonly out: number;
}

/** Level of a waste at steady state. Refuses a waste that nothing removes: it would rise without end. */
export function loadLevel(load: number, removal: number, { flow, volume, decay, out }: WasteSinks): number {
  const cleared = flow * removal + decay * volume + out;
  if (cleared > 0) return load / cleared;
  throw new Refusal(
    '',
    'nothing removes the waste, so it rises without end; give flow and removal, or volume and decay, or out, more than 0',
  );
}

/** A stage and the share that it removes of what reaches it. */
export interface Stage {
  readonly name: string;
  readonly removal: number;
}

export interface ShareRow {
  readonly stage: string;
  /** Of the load. */
  readonly share: number;
  readonly taken: number;
  /** Level in the water after the stage; in the tank for what happens there. */
  readonly level: number;
}

/**
 * What each stage takes at steady state, in order of flow: Q C (1 - r1)…(1 - r(j-1)) rj; decay takes k V C and water let
 * out E C, each a row where it takes anything; the last row is their sum, which is the load.
 */
export function loadShares(load: number, stages: readonly Stage[], sinks: WasteSinks): readonly ShareRow[] {
  const passing = stages.reduce((left, { removal }) => left * (1 - removal), 1);
  // The share does not depend on the load, which may be 0.
  const perLoad = loadLevel(1, 1 - passing, sinks);
  const row = (stage: string, share: number, level: number): ShareRow => ({ stage, share, taken: share * load, level });
  let reaching = perLoad;
  const rows = stages.map(({ name, removal }) => {
    const share = sinks.flow * reaching * removal;
    reaching *= 1 - removal;
    return row(name, share, reaching * load);
  });
  const level = perLoad * load;
  if (sinks.decay * sinks.volume > 0) rows.push(row('decay', sinks.decay * sinks.volume * perLoad, level));
  if (sinks.out > 0) rows.push(row('let out', sinks.out * perLoad, level));
  return [...rows, row('total', 1, level)];
}
