import type { PlanResults } from '../../formulas/plan/plan-results';
import type { Kind } from '../../units/kinds';
import type { NumberFormat } from '../number-formats';
import { inWords } from '../reading/headings';

/** What a result of a scenario is, how a workbook shows it, and what it means. */
export interface ScenarioResult {
  /** `choice` if it is a word. */
  readonly kind: Kind;
  readonly format: NumberFormat;
  readonly meaning: string;
  /** The key spelled in words if absent. */
  readonly name?: string;
}

export type ResultKey = keyof PlanResults;

/**
 * Every result, in the order of PLAN.COMPARE. To add one, write a figure in `planResults` and a row here: names, units,
 * workbook rows, number formats, charts and the reference page follow from the row.
 */
export const scenarioResults = {
  biomass: { kind: 'mass', format: 'one', meaning: 'fish count × fish mass' },
  stocking: { kind: 'stocking', format: 'three', meaning: 'biomass in the tank volume' },
  feed: { kind: 'daily', format: 'three', meaning: 'feed a day' },
  solids: { kind: 'daily', format: 'three', meaning: 'dry solids made a day' },
  ammonia: { kind: 'daily', format: 'four', meaning: 'total ammonia nitrogen made a day' },
  oxygen: { kind: 'daily', format: 'three', meaning: 'oxygen used a day by fish, waste and bacteria together' },
  carbonDioxide: { kind: 'daily', format: 'three', meaning: 'carbon dioxide made a day' },
  flowNeeded: { kind: 'flow', format: 'one', meaning: 'flow that keeps every waste within its limit' },
  flowSetBy: { kind: 'choice', format: 'general', meaning: 'the waste that needs the most flow' },
  turnover: { kind: 'minutes', format: 'one', meaning: 'time for the flow to pass the tank volume once' },
  solidsInTank: {
    kind: 'concentration',
    format: 'one',
    meaning: 'dry solids in the water of the tank at steady state',
  },
  ammoniaInTank: { kind: 'concentration', format: 'three', meaning: 'total ammonia nitrogen in the tank' },
  unionizedAmmonia: {
    name: 'un-ionized ammonia',
    kind: 'concentration',
    format: 'four',
    meaning: 'un-ionized part of that ammonia, at the highest pH and in the hottest water',
  },
  carbonDioxideInTank: {
    kind: 'concentration',
    format: 'one',
    meaning: 'carbon dioxide in the tank, if degassing is given',
  },
  nitrateInTank: { kind: 'concentration', format: 'one', meaning: 'nitrate as N in the tank at steady state' },
  nitrateRisePerDay: {
    kind: 'concentration',
    format: 'two',
    meaning: 'nitrate as N that one day adds: at first, or always if no water leaves',
  },
  nitrateRiseTime: {
    kind: 'days',
    format: 'whole',
    meaning: 'days until nitrate reaches nine tenths of its final level',
  },
  drumsNeeded: {
    kind: 'count',
    format: 'whole',
    meaning:
      'drums that keep the overflow rate within its limit at the flow that runs: the pump’s, or the flow needed if no pump is given; if the feed needs more flow, it needs more drums, and none are enough if flow needed is never',
  },
  overflowRate: { kind: 'loading', format: 'two', meaning: 'overflow rate in the drums given' },
  solidsCaptured: {
    kind: 'daily',
    format: 'three',
    meaning: 'dry solids that the drums capture a day at steady state',
  },
  solidsToPads: { kind: 'daily', format: 'three', meaning: 'dry solids that the pads capture a day' },
  solidsToBeds: { kind: 'daily', format: 'three', meaning: 'dry solids that the gravel beds capture a day' },
  padsNeeded: { kind: 'count', format: 'whole', meaning: 'pads for one change a day' },
  padChangeInterval: { kind: 'days', format: 'one', meaning: 'days until the pads are full' },
  mediaSurface: { kind: 'area', format: 'whole', meaning: 'media surface needed to nitrify the ammonia' },
  mediaVolume: { kind: 'bulk', format: 'one', meaning: 'volume of media with that surface' },
  alkaliPerDay: { kind: 'daily', format: 'three', meaning: 'alkali to add a day' },
  bedArea: { kind: 'area', format: 'one', meaning: 'area of plant beds that the feed supports' },
  plants: { kind: 'count', format: 'whole', meaning: 'plants on that area' },
  bedCleaningInterval: { kind: 'days', format: 'whole', meaning: 'days until the gravel is full of solids' },
  slurryPerDay: { kind: 'volume', format: 'two', meaning: 'slurry to draw off a day' },
  nitrogenPerYear: { kind: 'mass', format: 'two', meaning: 'nitrogen in the solids harvested a year' },
  phosphatePerYear: { kind: 'mass', format: 'two', meaning: 'P2O5 in the solids harvested a year' },
  potashPerYear: { kind: 'mass', format: 'three', meaning: 'K2O in the solids harvested a year' },
  gardenArea: { kind: 'area', format: 'whole', meaning: 'garden area that a year’s solids feed' },
  oxygenTime: { kind: 'minutes', format: 'one', meaning: 'time until fish are in danger when pump and air stop' },
  powerCostPerMonth: { kind: 'money', format: 'money', meaning: 'cost of power, day and night' },
  feedCostPerMonth: { kind: 'money', format: 'money', meaning: 'cost of feed' },
  harvestValuePerYear: {
    kind: 'money',
    format: 'money',
    meaning: 'worth of the N, P2O5 and K2O harvested, at their prices',
  },
  firstLimit: { kind: 'choice', format: 'general', meaning: 'the stage with the lowest capacity' },
} as const satisfies Readonly<Record<ResultKey, ScenarioResult>>;

/** In the order of PLAN.COMPARE. */
export const resultKeys = Object.keys(scenarioResults) as readonly ResultKey[];

/** `slurryPerDay` in words: `slurry per day`. */
export function resultName(key: ResultKey): string {
  const { name }: ScenarioResult = scenarioResults[key];
  return name ?? inWords(key);
}

/** The last row of PLAN.COMPARE: the names of the inputs that took their default. */
export const defaultsTaken = 'defaults taken';

/** The names in the first column of PLAN.COMPARE, in order. */
export const compareRows: readonly string[] = [...resultKeys.map(resultName), defaultsTaken];
