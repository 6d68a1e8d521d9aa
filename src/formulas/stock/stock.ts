/**
 * Fish: the feed of a group, the growth of one, and their mass from weighings.
 */

import { DAY } from '../numeric/time';
import { Refusal } from '../refusal';
import { type FishKind, growthRange } from '../water/water-species';

/**
 * Feed a day, kg/s: count x mass of one, kg, x feeding rate, a share of body mass a day. Source: definition of the
 * rate.
 */
export function stockFeed(count: number, fishMass: number, feedingRate: number): number {
  return (count * fishMass * feedingRate) / DAY;
}

/**
 * Mass of one fish after a time at a steady temperature, kg.
 *
 * W2 = (W1^(1/3) + c T t / 100)^3, W in g, T in °C, t in days; c the thermal-growth coefficient in its per cent form,
 * about 0.13 to 0.20 for trout. Growth is linear in temperature only below the optimum of the species. Arguments in
 * kg, s, °C. Refuses the x 1000 form (above 0.5) and the plain form (under 0.01). Not available in water in which the species,
 * or none, grows well, nor for fish larger than any on record. Source: Iwama and Tautz, Canadian
 * Journal of Fisheries and Aquatic Sciences 38:649 (1981); limits in Jobling, Aquaculture Research 34:581 (2003).
 */
export function stockGrow(
  fishMass: number,
  days: number,
  temperature: number,
  coefficient: number,
  species?: FishKind,
): number {
  refuseOtherForm(coefficient);
  refuseTemperature(temperature, species);
  const mass = grown(fishMass, days, temperature, coefficient);
  refuseGiant(fishMass, 'fishMass', species);
  refuseGiant(mass, 'days', species);
  return mass;
}

/**
 * Time for one fish to grow from one mass to another, s: the inverse of stockGrow, for the same arguments above 0. Source:
 * as stockGrow.
 */
export function stockGrowTime(fishMass: number, target: number, temperature: number, coefficient: number): number {
  return ((Math.cbrt(target * 1000) - Math.cbrt(fishMass * 1000)) * 100 * DAY) / (coefficient * temperature);
}

export function grown(fishMass: number, days: number, temperature: number, coefficient: number): number {
  const root = Math.cbrt(fishMass * 1000) + (coefficient * temperature * days) / (100 * DAY);
  return root ** 3 / 1000;
}

export function refuseOtherForm(coefficient: number): void {
  if (coefficient > 0.5) {
    throw new Refusal(
      'coefficient',
      'give the per cent form, 100 (cube root of g gained) / (days x °C), about 0.13 to 0.20 for trout; the x 1000 form is ten times that, so divide it by 10',
    );
  }
  if (coefficient > 0 && coefficient < 0.01) {
    throw new Refusal(
      'coefficient',
      'give the per cent form, 100 (cube root of g gained) / (days x °C), about 0.13 to 0.20 for trout; the plain form is a hundredth of that, so multiply it by 100',
    );
  }
}

/** Growth follows temperature only up to where the fish grow best, and below what they survive there is none. */
export function refuseTemperature(temperature: number, species?: FishKind): void {
  const { coolest, warmest } = growthRange(species);
  if (temperature >= coolest && temperature <= warmest) return;
  throw new Refusal(
    'temperature',
    `growth of ${species ?? 'farmed fish'} is known only from {coolest:temperature} to {warmest:temperature}`,
    {
      figures: { coolest, warmest },
      reason: 'unavailable',
    },
  );
}

/** Refuses a mass of one fish over the largest on record, by the argument that brings it there. */
export function refuseGiant(mass: number, argument: string, species?: FishKind): void {
  const { largest } = growthRange(species);
  if (mass <= largest) return;
  throw new Refusal(
    argument,
    `one fish would weigh {mass:fish}, and the largest ${species ?? 'of any kind here'} on record is {largest:fish}; the formula holds for growing fish only, up to there`,
    {
      figures: { mass, largest },
      reason: 'unavailable',
    },
  );
}

export interface Weighing {
  /** Container, water and fish, kg. */
  readonly gross: number;
  /** Container and water, kg. */
  readonly tare: number;
  readonly count: number;
}

export interface Sample {
  readonly fishCounted: number;
  /** Mean mass of one, kg. */
  readonly meanMass: number;
  /** Standard error of that mean, kg; not known from a single weighing. */
  readonly standardError: number | undefined;
}

/**
 * Mean mass of one fish from weighings of several together, with its standard error.
 *
 * m = sum of (gross - tare) / sum of counts; standard error = sqrt(k / (k - 1) x sum of (net - m n)^2) / sum of n over
 * k weighings (ratio of totals; for fish weighed one by one it is the common s / sqrt(k)). Masses in kg. Refuses a
 * weighing whose tare is not below its gross. Source: Cochran, Sampling Techniques, 3rd ed. (1977), section 6.4.
 *
 * How to measure: weigh a bucket of tank water. Crowd the fish, net some, let the net drip, put them in the bucket, weigh
 * again and count the fish back into the tank. Do this five times or more, in different places, before feeding.
 */
export function stockSample(weighings: readonly Weighing[]): Sample {
  if (weighings.length === 0)
    throw new Refusal('weighings', 'give at least one row of gross mass, tare mass and count');
  let mass = 0;
  let fish = 0;
  weighings.forEach(({ gross, tare, count }, place) => {
    if (gross <= tare) {
      throw new Refusal(
        'weighings',
        `weighing ${place + 1} has a tare that is not below its gross mass; the difference is the mass of the fish`,
      );
    }
    mass += gross - tare;
    fish += count;
  });
  const meanMass = mass / fish;
  const dips = weighings.length;
  if (dips === 1) return { fishCounted: fish, meanMass, standardError: undefined };
  let squares = 0;
  for (const { gross, tare, count } of weighings) squares += (gross - tare - meanMass * count) ** 2;
  return { fishCounted: fish, meanMass, standardError: Math.sqrt((dips / (dips - 1)) * squares) / fish };
}
