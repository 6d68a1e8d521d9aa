/**
 * Circulation that a feed needs, waste by waste, and every waste with its range.
 */

import type { Range } from '../numeric/range';
import { OXYGEN_PER_NITROGEN } from '../water/atomic-mass';
import { loadAmmonia, loadCarbonDioxide, loadFlow, loadOxygen, loadOxygenFlow, loadSolids } from './load';

export interface FlowNeeds {
  /** kg/s. */
  readonly feed: number;
  readonly protein: number;
  /** kg/m3 in the tank, and the share of ammonia taken out in one pass. */
  readonly ammoniaLimit: number;
  readonly removal: number;
  /** kg/m3 in the tank, and the share of solids taken out in one pass. */
  readonly solidsLimit: number;
  readonly capture: number;
  /** kg/m3 as water enters and leaves the tank: oxygen asks for flow only when both are known. */
  readonly oxygenIn: number | undefined;
  readonly oxygenOut: number | undefined;
  readonly ammoniaFactor: number;
  readonly solidsShare: number;
  readonly oxygenRatio: number;
}

export interface FlowRow {
  readonly waste: string;
  /** kg/m3: what the tank may hold, for oxygen what it may fall to. */
  readonly limit: number;
  /** m3/s. */
  readonly flow: number;
}

/**
 * A row for ammonia, for solids and, where oxygen in and out are both known, for oxygen; the last repeats the largest
 * flow and names the waste that sets it.
 *
 * Flow as in loadFlow and loadOxygenFlow. Refuses oxygen in that is not above oxygen out. Source: mass
 * balance.
 */
export function loadFlows(needs: FlowNeeds): readonly FlowRow[] {
  const { feed, protein, ammoniaLimit, removal, solidsLimit, capture, oxygenIn, oxygenOut } = needs;
  const ammonia = loadFlow(loadAmmonia(feed, protein, needs.ammoniaFactor), ammoniaLimit, removal);
  const solids = loadFlow(loadSolids(feed, needs.solidsShare), solidsLimit, capture);
  const rows: FlowRow[] = [
    { waste: 'ammonia', limit: ammoniaLimit, flow: ammonia },
    { waste: 'solids', limit: solidsLimit, flow: solids },
  ];
  if (oxygenIn !== undefined && oxygenOut !== undefined) {
    const flow = loadOxygenFlow(loadOxygen(feed, needs.oxygenRatio), oxygenIn, oxygenOut);
    rows.push({ waste: 'oxygen', limit: oxygenOut, flow });
  }
  const most = rows.reduce((largest, row) => (row.flow > largest.flow ? row : largest));
  return [...rows, { waste: `largest: ${most.waste}`, limit: most.limit, flow: most.flow }];
}

/** A daily mass, kg/s, that says its own kind, for a column of several. */
export interface Daily {
  readonly kind: 'daily';
  readonly si: number;
}

export interface WasteRow {
  readonly waste: string;
  readonly low: Daily;
  readonly typical: Daily;
  readonly high: Daily;
}

export interface WasteFactors {
  readonly solidsShare: Range;
  readonly ammoniaFactor: Range;
  /** kg oxygen per kg feed: fish alone, and the system with its bacteria, whose low end is worked out from the protein. */
  readonly oxygenFish: Range;
  readonly oxygenSystem: Range;
}

/**
 * Every waste of a feed, kg/s, at the low, typical and high value of its coefficient. Source: each coefficient names
 * its own.
 */
export function loadTable(feed: number, protein: number, factors: WasteFactors): readonly WasteRow[] {
  const row = (waste: string, range: Range, load: (coefficient: number) => number): WasteRow => ({
    waste,
    low: { kind: 'daily', si: load(range.low) },
    typical: { kind: 'daily', si: load(range.typical) },
    high: { kind: 'daily', si: load(range.high) },
  });
  return [
    row('solids, dry', factors.solidsShare, (share) => loadSolids(feed, share)),
    row('ammonia, as N', factors.ammoniaFactor, (factor) => loadAmmonia(feed, protein, factor)),
    row('oxygen taken by the fish', factors.oxygenFish, (ratio) => loadOxygen(feed, ratio)),
    row('oxygen taken by the system', { ...factors.oxygenSystem, low: leastOfSystem(protein, factors) }, (ratio) =>
      loadOxygen(feed, ratio),
    ),
    row('carbon dioxide of the fish', factors.oxygenFish, (ratio) => loadCarbonDioxide(loadOxygen(feed, ratio))),
  ];
}

/** The fish at their lowest and the nitrifying of their ammonia, with no waste left to rot; never over the typical figure. */
function leastOfSystem(protein: number, { oxygenFish, oxygenSystem, ammoniaFactor }: WasteFactors): number {
  return Math.min(oxygenSystem.typical, oxygenFish.low + protein * ammoniaFactor.typical * OXYGEN_PER_NITROGEN);
}
