/**
 * How sure a plan is, and which figures decide it.
 */
import { percentile } from '../numeric/percentile';
import { varianceShare } from '../numeric/variance-share';
import type { PlanResults } from './plan-results';
import {
  draws,
  farmWith,
  type ResultName,
  resultsOf,
  type Sample,
  type Uncertain,
  type UncertainFarm,
} from './plan-sample';

/** A figure, or the word shown in its place. */
export type Band = { readonly low: number | string; readonly high: number | string };

/** The shares of draws that lie below the ends of a band. */
const LOW = 0.1;
const HIGH = 0.9;

/**
 * The 10th and the 90th percentile of a result over the draws that were not refused. What never ends ranks above every
 * number; a percentile that falls there is its word. Between whole figures, such as pads to buy, nothing is interpolated:
 * the ends of the band are figures of draws, the next ones outward, so that no fewer draws lie between them.
 */
export function bandOf({ figures, words, refused }: Sample, result: ResultName): Band | undefined {
  // What was refused is not a number, which sorts behind all others.
  const rising = Float64Array.from(figures.get(result) ?? [])
    .sort()
    .subarray(0, draws - refused);
  if (rising.length === 0) return undefined;
  const word = words.get(result) ?? 'never';
  const areWhole = rising.every((figure) => figure % 1 === 0 || figure === Number.POSITIVE_INFINITY);
  const at = (p: number, outward: (place: number) => number): number | string => {
    const figure = areWhole ? (rising[outward(p * (rising.length - 1))] ?? Number.NaN) : percentile(rising, p);
    return Number.isFinite(figure) ? figure : word;
  };
  return { low: at(LOW, Math.floor), high: at(HIGH, Math.ceil) };
}

/** The share of the draws, refused ones left out, in which each stage is the first limit; they add up to 1. */
export function chances({ first, refused }: Sample): ReadonlyMap<string, number> {
  return new Map([...first].map(([stage, count]) => [stage, count / (draws - refused)]));
}

export interface Driver {
  readonly uncertain: Uncertain;
  /** The result with this figure at its ends, all others as planned; undefined where it is refused. */
  readonly atLow: PlanResults[ResultName] | undefined;
  readonly atHigh: PlanResults[ResultName] | undefined;
  /** Of the result's variance, as far as this figure explains it alone. */
  readonly share: number;
}

export interface Drivers {
  readonly ranked: readonly Driver[];
  /** The share that no single figure explains. */
  readonly together: number;
}

/** The uncertain figures by how much of a result's variance each explains, then by how far it moves the result. */
export function driversOf(farm: UncertainFarm, plan: PlanResults, sample: Sample, result: ResultName): Drivers {
  const figures = sample.figures.get(result) ?? new Float64Array();
  const ranked = farm.uncertain.map((uncertain): Driver & { readonly swing: number } => {
    const at = (figure: number) => resultsOf(farmWith(farm, [[uncertain, figure]]))?.[result];
    const [atLow, atHigh] = [at(uncertain.range.low), at(uncertain.range.high)];
    const isIdle = atLow === plan[result] && atHigh === plan[result];
    const strata = sample.strata.get(uncertain.name) ?? new Uint16Array();
    const share = isIdle ? 0 : varianceShare(strata, figures);
    const swing = typeof atLow === 'number' && typeof atHigh === 'number' ? Math.abs(atHigh - atLow) : 0;
    return { uncertain, atLow, atHigh, share, swing };
  });
  ranked.sort((one, other) => other.share - one.share || other.swing - one.swing);
  const explained = ranked.reduce((sum, { share }) => sum + share, 0);
  // Chance in a sample can make the shares add up to a little more than the whole; nothing explains more than that.
  const whole = Math.max(1, explained);
  return {
    ranked: ranked.map((one) => ({ ...one, share: one.share / whole })),
    together: varies(figures) ? 1 - explained / whole : 0,
  };
}

/** Whether any two figures of the draws differ by more than rounding. */
function varies(figures: Float64Array): boolean {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const figure of figures) {
    if (!Number.isFinite(figure)) continue;
    least = Math.min(least, figure);
    most = Math.max(most, figure);
  }
  return most - least > 1e-12 * Math.max(Math.abs(least), Math.abs(most));
}
