/**
 * How fast a film of bacteria nitrifies at a temperature, and what that takes out of the water.
 */
import { Refusal } from '../refusal';
import { ALKALINITY_PER_NITROGEN, OXYGEN_PER_NITROGEN } from '../water/atomic-mass';

/** What limits the bacteria: ammonia, oxygen, or the one that gives the lower rate. */
export const nitrificationLimits = ['lower', 'ammonia', 'oxygen'] as const;
export type NitrificationLimit = (typeof nitrificationLimits)[number];

/** Gain of the rate per °C, as a share of the rate at 20 °C. */
export const AMMONIA_GAIN = 0.04275;
export const OXYGEN_GAIN = 0.01108;
const STUDIED = 20;

/** Temperatures, °C, at which the source studied films. */
export const STUDIED_FILMS = [14, 27] as const;

/**
 * Areal nitrification rate, as nitrificationLine, within the temperatures that its source studied, 14 to 27 °C.
 *
 * Not available outside them, for either temperature: a rate carried further is a guess.
 */
export function filterNitrify(rate: number, temperature: number, reference: number, limit: NitrificationLimit): number {
  const [low, high] = STUDIED_FILMS;
  for (const [argument, value] of Object.entries({ temperature, reference })) {
    if (value >= low && value <= high) continue;
    throw new Refusal(
      argument,
      'biofilms were studied from {low:temperature} to {high:temperature} (Zhu and Chen 2002); measure your own filter: see FILTER.TEST',
      {
        figures: { low, high },
        reason: 'unavailable',
      },
    );
  }
  return nitrificationLine(rate, temperature, reference, limit);
}

/**
 * Areal nitrification rate at a temperature, kg N/m2/s, from one known at a reference temperature, °C.
 *
 * r = r0 (1 + g (T - 20)) / (1 + g (T0 - 20)), g 0.04275 per °C where ammonia limits and 0.01108 where oxygen does.
 * The source gives these as the slope at 20 °C of a fixed film and finds that the exponential law of van 't Hoff and
 * Arrhenius overstates the effect, so a straight line is drawn through 20 °C, and none bent. Films studied at 14 to 27
 * °C; a moving bed held at 1 °C kept 18 ± 5.1 % of its rate at 20 °C (Hoang et al. 2014), where the line gives 18.8. Source: Zhu and Chen, Aquacultural Engineering 26:221 (2002).
 */
export function nitrificationLine(
  rate: number,
  temperature: number,
  reference: number,
  limit: NitrificationLimit,
): number {
  if (limit === 'ammonia') return rate * gain(AMMONIA_GAIN, temperature, reference);
  if (limit === 'oxygen') return rate * gain(OXYGEN_GAIN, temperature, reference);
  return rate * Math.min(gain(AMMONIA_GAIN, temperature, reference), gain(OXYGEN_GAIN, temperature, reference));
}

/** Below -3.4 °C, which is ice, the line would fall under 0: no film works there. */
function gain(slope: number, temperature: number, reference: number): number {
  return Math.max(0, 1 + slope * (temperature - STUDIED)) / (1 + slope * (reference - STUDIED));
}

/**
 * Oxygen that nitrifying takes, kg/s, for ammonia nitrogen, kg N/s: 4.57 kg per kg, without growth of the bacteria.
 *
 * With growth 4.18 (Ebeling, Timmons and Bisogni 2006). Source: NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, IUPAC masses.
 */
export function filterOxygen(ammoniaLoad: number): number {
  return ammoniaLoad * OXYGEN_PER_NITROGEN;
}

/**
 * Alkalinity that nitrifying takes, kg CaCO3/s, for ammonia nitrogen, kg N/s: 7.15 kg per kg, without growth of the
 * bacteria.
 *
 * With growth 7.05 (Ebeling, Timmons and Bisogni 2006); 7.14 is the same reaction with rounded masses. Source: as
 * filterOxygen.
 */
export function filterAlkalinity(ammoniaLoad: number): number {
  return ammoniaLoad * ALKALINITY_PER_NITROGEN;
}
