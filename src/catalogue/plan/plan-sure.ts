import { planFarm } from '../../formulas/plan/plan-farm';
import { planLimit } from '../../formulas/plan/plan-limit';
import { bandOf, chances, driversOf } from '../../formulas/plan/plan-range';
import { type PlanResults, planResults } from '../../formulas/plan/plan-results';
import { type Sample, sampleFarm, type Uncertain, type UncertainFarm } from '../../formulas/plan/plan-sample';
import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import type { MixedCell } from '../argument';
import type { NamedInput } from './named-input';
import { type ReadScenario, scenarioFactors } from './scenario';
import { inputKeys, scenarioInputs } from './scenario-inputs';
import { type ResultKey, resultKeys, resultName, scenarioResults } from './scenario-results';
import { varyingInputs } from './varying-inputs';

interface VaryingFarm extends UncertainFarm {
  readonly uncertain: readonly (Uncertain & { readonly kind: Kind })[];
}

interface Sampled {
  readonly farm: VaryingFarm;
  readonly plan: PlanResults;
  readonly sample: Sample;
}

/** Results that are figures; the others are words. */
export const figureResults: readonly ResultKey[] = resultKeys.filter((key) => scenarioResults[key].kind !== 'choice');

/** The start of the name of each row of chances. */
export const chanceOf = 'chance of first limit: ';

/** A sheet wants the range and several drivers of one scenario, so the last few samples are kept. */
const kept = new Map<string, Sampled>();
const mostKept = 6;

function sampled(read: ReadScenario): Sampled {
  const uncertain = varyingInputs(read)
    .filter(({ low, high }) => high > low)
    .map(({ name, kind, low, plan, high, put }) => ({ name, kind, put, range: { low, typical: plan, high } }));
  const spreads = uncertain.map(({ name, range }) => [name, range]);
  const key = JSON.stringify([Object.entries(read.scenario), spreads]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const farm: VaryingFarm = { scenario: read.scenario, factors: scenarioFactors, uncertain, follows: followers(read) };
  const plan = planResults(farm.scenario, farm.factors);
  const made = { farm, plan, sample: sampleFarm(farm, plan) };
  for (const oldest of [...kept.keys()].slice(0, Math.max(0, kept.size - mostKept + 1))) kept.delete(oldest);
  kept.set(key, made);
  return made;
}

/** Inputs that were not given and use the figure of another input. */
function followers({ left }: ReadScenario): UncertainFarm['follows'] {
  return inputKeys.flatMap((key) => {
    const spec: NamedInput = scenarioInputs[key];
    const followed = 'as' in spec ? inputKeys.find((one) => one === spec.as) : undefined;
    return left.has(key) && followed !== undefined ? [[key, followed] as const] : [];
  });
}

export interface RangeRow {
  readonly result: string;
  readonly unit: string;
  readonly low: MixedCell;
  readonly plan: MixedCell;
  readonly high: MixedCell;
}

function cellOf(key: ResultKey, value: number | string): MixedCell {
  return typeof value === 'number' ? { kind: scenarioResults[key].kind, si: value } : value;
}

/** One row per result, one per stage with its chance of being the first limit, and the refused draws, if any. */
export function planRange(read: ReadScenario, profile: Profile): readonly RangeRow[] {
  const { farm, plan, sample } = sampled(read);
  const results = figureResults.map((key): RangeRow => {
    const { low, high } = bandOf(sample, key) ?? { low: 'not given', high: 'not given' };
    const unit = profile.units[scenarioResults[key].kind].symbol;
    return {
      result: resultName(key),
      unit,
      low: cellOf(key, low),
      plan: cellOf(key, plan[key]),
      high: cellOf(key, high),
    };
  });
  const chance = chances(sample);
  const stages = planLimit(planFarm(farm.scenario, farm.factors)).rows.slice(0, -1);
  const known = [...new Set([...stages.map(({ stage }) => stage), ...chance.keys()])];
  const limits = known.map((stage): RangeRow => {
    const share = { kind: 'share', si: chance.get(stage) ?? 0 } as const;
    return { result: `${chanceOf}${stage}`, unit: '', low: '', plan: share, high: '' };
  });
  const refused =
    sample.refused === 0 ? [] : [{ result: 'draws refused', unit: '', low: '', plan: sample.refused, high: '' }];
  return [...results, ...limits, ...refused];
}

export interface DriverRow {
  readonly input: string;
  readonly unit: string;
  readonly low: MixedCell;
  readonly plan: MixedCell;
  readonly high: MixedCell;
  readonly atLow: MixedCell;
  readonly atHigh: MixedCell;
  readonly share: number;
}

/** The uncertain inputs, ranked; the last row is what no single input explains. */
export function planDrivers(read: ReadScenario, key: ResultKey, profile: Profile): readonly DriverRow[] {
  const { farm, plan, sample } = sampled(read);
  const { ranked, together } = driversOf(farm, plan, sample, key);
  const kinds: ReadonlyMap<string, Kind> = new Map(farm.uncertain.map(({ name, kind }) => [name, kind]));
  const rows = ranked.map(({ uncertain: { name, range }, atLow, atHigh, share }): DriverRow => {
    const kind = kinds.get(name) ?? 'number';
    const figure = (si: number): MixedCell => ({ kind, si });
    return {
      input: name,
      unit: profile.units[kind].symbol,
      low: figure(range.low),
      plan: figure(range.typical),
      high: figure(range.high),
      atLow: cellOf(key, atLow ?? 'refused'),
      atHigh: cellOf(key, atHigh ?? 'refused'),
      share,
    };
  });
  const blank = { unit: '', low: '', plan: '', high: '', atLow: '', atHigh: '' };
  return [...rows, { input: 'together', ...blank, share: together }];
}
