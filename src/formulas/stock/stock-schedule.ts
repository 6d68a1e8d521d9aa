/**
 * A growing season: how large, how many and how hungry the fish are, step by step until they reach their target.
 */

import { MONTH } from '../numeric/time';
import { wholeUp } from '../numeric/whole';
import { Refusal } from '../refusal';
import { grown, refuseGiant, refuseOtherForm, refuseTemperature, stockGrowTime } from './stock';

/** A sheet takes no more spilled rows than this. */
const MOST_ROWS = 10_000;

export interface Season {
  readonly count: number;
  /** kg, now and when they are taken out. */
  readonly fishMass: number;
  readonly target: number;
  /** °C, steady. */
  readonly temperature: number;
  /** Thermal-growth coefficient, per cent form. */
  readonly coefficient: number;
  /** kg of feed per kg of growth. */
  readonly conversion: number;
  /** Share of the fish lost in a month. */
  readonly loss: number;
  /** s between rows. */
  readonly step: number;
}

export interface SeasonRow {
  /** s since the start. */
  readonly day: number;
  readonly massOfOne: number;
  readonly count: number;
  readonly biomass: number;
  /** kg/s, the mean over the step that begins on this day; none once the target is reached. */
  readonly feedADay: number;
}

/**
 * Rows from now until the target, the last on the very day that it is reached.
 *
 * Mass by stockGrow. Count N = N0 (1 - loss)^(t / month), not rounded, so that fish are conserved. Feed over a step is
 * conversion x growth of one x mean of the counts at its two ends, spread over the step: without losses feed adds up
 * to conversion x the biomass gained. Refuses a target below the mass, a temperature or coefficient that gives
 * no growth, and over 10,000 rows. Not available where stockGrow is not. Source: growth as in stockGrow; the rest by conservation.
 */
export function stockSchedule(season: Season): readonly SeasonRow[] {
  const { count, fishMass, target, temperature, coefficient, conversion, loss, step } = season;
  refuseOtherForm(coefficient);
  if (target < fishMass) {
    throw new Refusal('target', 'give at least the mass of one fish now ({fishMass})', { figures: { fishMass } });
  }
  if (temperature <= 0 && target > fishMass) {
    throw new Refusal('temperature', 'at that temperature they never reach the target; give more than 0 °C');
  }
  if (coefficient <= 0 && target > fishMass) {
    throw new Refusal('coefficient', 'with no growth they never reach the target; give about 0.13 to 0.20 for trout');
  }
  if (temperature > 0) refuseTemperature(temperature);
  refuseGiant(target, 'target');
  const end = target > fishMass ? stockGrowTime(fishMass, target, temperature, coefficient) : 0;
  const steps = wholeUp(end / step);
  if (steps >= MOST_ROWS) {
    throw new Refusal('step', 'that would be over 10,000 rows; give more than {longer}', {
      figures: { longer: { value: end / (MOST_ROWS - 1), like: 'step' } },
    });
  }
  const alive = (time: number): number => count * (1 - loss) ** (time / MONTH);
  const size = (time: number): number => (time >= end ? target : grown(fishMass, time, temperature, coefficient));
  return Array.from({ length: steps + 1 }, (_, place): SeasonRow => {
    const day = place === steps ? end : place * step;
    const next = place + 1 >= steps ? end : day + step;
    const massOfOne = place === 0 && steps > 0 ? fishMass : size(day);
    const here = alive(day);
    const gain = size(next) - massOfOne;
    const feedADay = place === steps ? 0 : (conversion * gain * (here + alive(next))) / 2 / (next - day);
    return { day, massOfOne, count: here, biomass: massOfOne * here, feedADay };
  });
}
