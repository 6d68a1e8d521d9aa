import type { PlanResults } from '../../formulas/plan/plan-results';
import type { Kind } from '../../units/kinds';
import { inWords } from '../reading/headings';

/** Results of a scenario down the side, in order, with their kinds; those of kind `choice` are words. */
export const scenarioResults: Readonly<Record<keyof PlanResults, Kind>> = {
  biomass: 'mass',
  stocking: 'stocking',
  feed: 'daily',
  solids: 'daily',
  ammonia: 'daily',
  oxygen: 'daily',
  carbonDioxide: 'daily',
  flowNeeded: 'flow',
  flowAskedForBy: 'choice',
  turnover: 'minutes',
  drumsNeeded: 'count',
  overflowRate: 'loading',
  solidsCaptured: 'daily',
  solidsPassedOn: 'daily',
  padsNeeded: 'count',
  daysBetweenPadChanges: 'days',
  mediaSurface: 'area',
  mediaVolume: 'bulk',
  alkaliADay: 'daily',
  bedArea: 'area',
  plants: 'count',
  daysBetweenBedCleanings: 'days',
  slurryADay: 'volume',
  nitrogenAYear: 'mass',
  phosphateAYear: 'mass',
  potashAYear: 'mass',
  gardenArea: 'area',
  oxygenTime: 'minutes',
  powerCostAMonth: 'money',
  feedCostAMonth: 'money',
  harvestValueAYear: 'money',
  givesOutFirst: 'choice',
};

/** `slurryADay` as a reader would write it: `slurry a day`. */
export function resultName(key: keyof PlanResults): string {
  return inWords(key.replace(/A(?=Day|Month|Year)/, 'A ')).toLowerCase();
}
