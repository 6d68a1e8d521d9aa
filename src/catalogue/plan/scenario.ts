import type { Scenario, ScenarioFactors } from '../../formulas/plan/plan-scenario';
import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { wordQuantity } from '../../units/quantity';
import { coefficient } from '../coefficients/all';
import { ArgumentError } from '../reading/argument-error';
import { type InputTable, inputName, inputTable, type OpenCell, whatIsGiven } from '../reading/input-table';
import { namedColumn } from '../reading/named-column';
import { withNamedRefusals } from '../reading/named-refusals';
import type { TypedRange } from '../reading/typed-range';
import { scenarioInputs } from './scenario-inputs';

export interface ReadScenario {
  readonly scenario: Scenario;
  /** Names of the inputs that use their default, then of those whose range is replaced by its middle. */
  readonly defaults: readonly string[];
  /** Keys of the inputs that use their default. */
  readonly left: ReadonlySet<string>;
  /** Typed ranges by key. */
  readonly ranges: ReadonlyMap<string, TypedRange>;
}

const typical = (key: string): number => coefficient(key).typical;

/** Coefficients that no scenario sets. */
export const scenarioFactors: ScenarioFactors = {
  ammoniaFactor: typical('ammonia factor'),
  oxygenRatio: typical('oxygen ratio system'),
  swirlCapture: typical('swirl capture'),
  radialCapture: typical('radial capture'),
  measuredOverflow: typical('overflow limit'),
  alpha: typical('aerator alpha'),
  beta: typical('aerator beta'),
};

/** Reads one scenario; `place` begins every message. */
export function readScenario(table: InputTable, column: number, place: string, profile: Profile): ReadScenario {
  const { values, defaults, left, ranges } = namedColumn(scenarioInputs, table, column, place, profile, true);
  const scenario: Scenario = {
    ...values,
    coldestWater: values.coldestWater ?? values.temperature,
    hottestWater: values.hottestWater ?? values.temperature,
  };
  refuseNoFeed(scenario, table, column, place);
  const { coldestWater, temperature, hottestWater, ph, highestPh } = scenario;
  const usual = `temperature${defaults.includes('temperature') ? ', not given' : ''}`;
  refuseDisorder(place, profile, 'temperature', ['coldest water', coldestWater], [usual, temperature]);
  refuseDisorder(place, profile, 'temperature', [usual, temperature], ['hottest water', hottestWater]);
  const { tankVolume, systemVolume } = scenario;
  if (typeof tankVolume === 'number' && typeof systemVolume === 'number') {
    refuseDisorder(place, profile, 'volume', ['tank volume', tankVolume], ['system volume', systemVolume]);
  }
  if (ph !== undefined && highestPh !== undefined) {
    refuseDisorder(place, profile, 'number', ['pH', ph], ['highest pH', highestPh]);
  }
  const middles = [...ranges].map(([key, { typed }]) => `${inputName(scenarioInputs, key)} (middle of ${typed})`);
  return { scenario, defaults: [...defaults, ...middles], left, ranges };
}

/** Either feed must be given, or fish count, fish mass and feeding rate. */
function refuseNoFeed(
  { feed, fishCount, fishMass, feedingRate }: Scenario,
  table: InputTable,
  column: number,
  place: string,
): void {
  if (feed !== undefined) return;
  const needed = { fishCount, fishMass, feedingRate };
  const lacking = Object.entries(needed).find(([, value]) => value === undefined);
  if (lacking === undefined) return;
  const [key] = lacking;
  throw new ArgumentError(
    `${place}${inputName(scenarioInputs, key)}: ${whatIsGiven(table, key, column)}; give fish count, fish mass and feeding rate, each more than 0, or feed`,
  );
}

function refuseDisorder(
  place: string,
  profile: Profile,
  kind: Kind,
  [low, from]: readonly [string, number],
  [high, to]: readonly [string, number],
): void {
  if (from <= to) return;
  const format = (si: number): string => wordQuantity(profile, kind, si);
  throw new ArgumentError(`${place}${low}: ${format(from)} is not allowed; give up to ${high} (${format(to)})`);
}

/** Titles that the first cell of a heading row may have. */
export const scenarioTitles = ['input', 'scenario'] as const;

/** Computes for the single scenario of a range of two columns. */
export function withOneScenario<V>(
  cells: readonly (readonly OpenCell[])[],
  profile: Profile,
  compute: (read: ReadScenario) => V,
): V {
  const table = inputTable('scenario', scenarioInputs, cells, scenarioTitles);
  const read = readScenario(table, 0, 'scenario: ', profile);
  return withScenario('scenario: ', profile, read.scenario, () => compute(read));
}

/** The name of an argument in a stage's formula, and its name in the scenario. */
const renamed = {
  oxygen: 'oxygenAtPowerFailure',
  floor: 'oxygenFloor',
  nitrogen: 'nitrogenShare',
  spread: 'settlingSpread',
} as const;

/** Computes with a scenario; the refusal of a stage names the input at fault. */
export function withScenario<V>(place: string, profile: Profile, scenario: Scenario, compute: () => V): V {
  return withNamedRefusals({ place, inputs: scenarioInputs, renamed, profile, values: { ...scenario } }, compute);
}
