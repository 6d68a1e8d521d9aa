import type { PlanResults } from '../formulas/plan-results';
import type { Kind } from '../units/kinds';

interface ResultSpec {
  readonly kind: Kind;
  /** The key in words where absent. */
  readonly name?: string;
}

/** Results of a scenario down the side, in order; those of kind `choice` are words. */
export const scenarioResults: Readonly<Record<keyof PlanResults, ResultSpec>> = {
  biomass: { kind: 'mass' },
  stocking: { kind: 'stocking' },
  feed: { kind: 'daily' },
  solids: { kind: 'daily' },
  ammonia: { kind: 'daily' },
  oxygen: { kind: 'daily' },
  carbonDioxide: { kind: 'daily' },
  flowNeeded: { kind: 'flow' },
  flowAskedForBy: { kind: 'choice' },
  turnover: { kind: 'minutes' },
  drumsNeeded: { kind: 'count' },
  overflowRate: { kind: 'loading' },
  solidsCaptured: { kind: 'daily' },
  solidsPassedOn: { kind: 'daily' },
  padsNeeded: { kind: 'count' },
  daysBetweenPadChanges: { kind: 'days' },
  mediaSurface: { kind: 'area' },
  mediaVolume: { kind: 'bulk' },
  alkaliADay: { kind: 'daily', name: 'alkali a day' },
  bedArea: { kind: 'area' },
  plants: { kind: 'count' },
  daysBetweenBedCleanings: { kind: 'days' },
  slurryADay: { kind: 'volume', name: 'slurry a day' },
  nitrogenAYear: { kind: 'mass', name: 'nitrogen a year' },
  phosphateAYear: { kind: 'mass', name: 'phosphate a year' },
  potashAYear: { kind: 'mass', name: 'potash a year' },
  gardenArea: { kind: 'area' },
  oxygenTime: { kind: 'minutes' },
  powerCostAMonth: { kind: 'money', name: 'power cost a month' },
  feedCostAMonth: { kind: 'money', name: 'feed cost a month' },
  harvestValueAYear: { kind: 'money', name: 'harvest value a year' },
  givesOutFirst: { kind: 'choice' },
};
