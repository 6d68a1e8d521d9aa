/**
 * The results of a farm for a sample of its uncertain figures.
 */
import { strataOf } from '../numeric/latin-hypercube';
import type { Range } from '../numeric/range';
import { triangularQuantile } from '../numeric/triangle';
import { Refusal } from '../refusal';
import { type PlanResults, planResults } from './plan-results';
import type { Scenario, ScenarioFactors } from './plan-scenario';

/** A farm whose figures are being put in. */
export interface DrawnFarm {
  readonly scenario: { -readonly [K in keyof Scenario]: Scenario[K] };
  readonly factors: { -readonly [K in keyof ScenarioFactors]: ScenarioFactors[K] };
}

/** A figure that is not known for sure: its name, which fixes its shuffle, its spread, and where it goes. */
export interface Uncertain {
  readonly name: string;
  readonly range: Range;
  readonly put: (farm: DrawnFarm, figure: number) => void;
}

export interface UncertainFarm {
  readonly scenario: Scenario;
  readonly factors: ScenarioFactors;
  readonly uncertain: readonly Uncertain[];
  /** Inputs that follow another one where they were not given: coldest water the temperature, for one. */
  readonly follows: readonly (readonly [follower: keyof Scenario, followed: keyof Scenario])[];
}

/** The points of a Latin hypercube. */
export const draws = 1024;

export type ResultName = keyof PlanResults;

export interface Sample {
  /** By result, a figure a draw: infinite where the draw has a word in place of a figure, not a number where it was refused. */
  readonly figures: ReadonlyMap<ResultName, Float64Array>;
  /** By result, the word of draws that have no figure. */
  readonly words: ReadonlyMap<ResultName, string>;
  /** How often each stage is the first limit. */
  readonly first: ReadonlyMap<string, number>;
  /** By uncertain figure, the stratum of each draw. */
  readonly strata: ReadonlyMap<string, Uint16Array>;
  readonly refused: number;
}

/** Puts a farm together from figures, the followers with them. */
export function farmWith(
  { scenario, factors, follows }: UncertainFarm,
  figures: Iterable<readonly [Uncertain, number]>,
): DrawnFarm {
  const farm: DrawnFarm = { scenario: { ...scenario }, factors: { ...factors } };
  for (const [one, figure] of figures) one.put(farm, figure);
  // A follower copies the value of the other input, so their types agree.
  const put: Record<string, unknown> = farm.scenario;
  for (const [follower, followed] of follows) put[follower] = put[followed];
  return farm;
}

/**
 * Works out the farm for every draw. Independent triangles between the ends of each figure with its typical value as
 * mode, in the logarithm where the ends are more than five times apart. A draw that the formulas refuse is counted.
 */
export function sampleFarm(farm: UncertainFarm, plan: PlanResults): Sample {
  const names = Object.keys(plan) as ResultName[];
  const columns = names.map((name) => ({ name, figures: new Float64Array(draws).fill(Number.NaN) }));
  const words = new Map<ResultName, string>();
  const first = new Map<string, number>();
  const strata = new Map(farm.uncertain.map(({ name }) => [name, knownStrata(name)]));
  const drawn = farm.uncertain.map((one) => {
    const places = strata.get(one.name) ?? new Uint16Array(draws);
    return { one, figures: Float64Array.from(places, (k) => triangularQuantile((k + 0.5) / draws, one.range)) };
  });
  let refused = 0;
  for (let at = 0; at < draws; at += 1) {
    const put = drawn.map(({ one, figures: of }) => [one, of[at] ?? one.range.typical] as const);
    const results = resultsOf(farmWith(farm, put));
    if (results === undefined) {
      refused += 1;
      continue;
    }
    for (const { name, figures } of columns) {
      const value = results[name];
      if (typeof value !== 'number') words.set(name, value);
      figures[at] = typeof value === 'number' ? value : Number.POSITIVE_INFINITY;
    }
    first.set(results.firstLimit, (first.get(results.firstLimit) ?? 0) + 1);
  }
  return { figures: new Map(columns.map(({ name, figures }) => [name, figures])), words, first, strata, refused };
}

/** The shuffle of a name never changes, and there are only a few dozen names. */
const shuffled = new Map<string, Uint16Array>();

function knownStrata(name: string): Uint16Array {
  const strata = shuffled.get(name) ?? strataOf(name, draws);
  shuffled.set(name, strata);
  return strata;
}

/** The results of a draw, or undefined where the formulas refuse it. */
export function resultsOf(farm: DrawnFarm): PlanResults | undefined {
  try {
    return planResults(farm.scenario, farm.factors);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
