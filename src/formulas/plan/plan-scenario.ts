/**
 * A planned farm: the inputs of a scenario in SI, and what a result says if an input is not given.
 */
import type { Alkali } from '../water/alkali';
import type { FishKind } from '../water/water-species';

/** Something built or bought: how much of it, `none` if the stage is absent, undefined if it is not given. */
export type Equipment = number | 'none' | undefined;

/** How solids are settled: shares that were measured, a computed capture, or a share of your own. */
export type Settler = 'swirl' | 'radial' | 'mixed' | 'ideal' | number;

export interface ScenarioCrop {
  /** Feed per bed area, kg/m2/s. */
  readonly feed: number;
  /** Plants to a square meter, where the crop was named. */
  readonly plants: number | undefined;
}

/** Figures are SI, rates a second, shares 0 to 1; undefined is not given. */
export interface Scenario {
  readonly fishCount: number | undefined;
  readonly fishMass: number | undefined;
  readonly feedingRate: number | undefined;
  /** As typed; else what the fish eat at the feeding rate. */
  readonly feed: number | undefined;
  readonly species: FishKind | undefined;
  readonly protein: number;
  readonly temperature: number;
  readonly coldestWater: number;
  readonly hottestWater: number;
  readonly ph: number | undefined;
  readonly highestPh: number | undefined;
  readonly salinity: number;
  readonly elevation: number;
  readonly alkali: Alkali;
  readonly alkaliPurity: number;
  readonly tankVolume: Equipment;
  /** All the water that circulates, with the tank's. */
  readonly systemVolume: Equipment;
  /** Let out at the level of the tank, m3 a day. */
  readonly waterOut: number;
  /** Nitrate nitrogen of the water that replaces it. */
  readonly sourceNitrate: number;
  readonly stockingLimit: number;
  readonly solidsShare: number;
  readonly settleableShare: number;
  /** Share of the solids in the water that decays a day; may exceed 1. */
  readonly solidsDecay: number;
  readonly feedPhosphorus: number;
  /** Feed per gain in mass. */
  readonly conversion: number | undefined;
  /** Of the gain, as wet mass. */
  readonly fishNitrogen: number;
  readonly fishPhosphorus: number;
  readonly ammoniaLimit: number;
  readonly unionizedAmmoniaLimit: number;
  readonly carbonDioxideLimit: number;
  readonly solidsLimit: number;
  readonly oxygenIn: number | undefined;
  readonly oxygenOut: number | undefined;
  readonly oxygenAtPowerFailure: number;
  readonly oxygenFloor: number;
  readonly peakOxygenFactor: number;
  readonly removal: number;
  /** Share of the carbon dioxide above that of water in balance with air, removed in one pass. */
  readonly degassing: number | undefined;
  /** Share of the fed nitrogen that denitrifies without a filter for it. */
  readonly passiveDenitrification: number;
  readonly pumpFlow: Equipment;
  /** Oxygen transfer as rated, kg/s. */
  readonly airSupply: Equipment;
  readonly settler: Settler;
  readonly drumDiameter: number | undefined;
  readonly drums: Equipment;
  readonly overflowLimit: number;
  readonly medianSettling: number;
  readonly settlingSpread: number;
  readonly pads: Equipment;
  readonly padArea: number | undefined;
  readonly padHolding: number;
  readonly padCapture: number;
  /** Specific surface of the media, 1/m: of the biofilter or, without one, of the beds. */
  readonly media: number;
  readonly mediaVolume: Equipment;
  /** At 20 °C. */
  readonly nitrification: number;
  readonly filterReserve: number;
  readonly bedArea: Equipment;
  /** Share of the solids in the whole flow that gravel beds take in one pass. */
  readonly bedCapture: number;
  /** Nitrogen that plants take from a bed, kg/m2/s. */
  readonly plantUptake: number;
  readonly crop: ScenarioCrop;
  readonly bedDepth: number;
  readonly bedHolding: number;
  readonly nitrogenShare: number;
  readonly phosphorusShare: number;
  readonly potassiumShare: number;
  readonly availableNitrogen: number;
  readonly slurrySolids: number;
  readonly gardenNeed: number;
  readonly phosphateNeed: number;
  readonly power: number | undefined;
  readonly powerPrice: number | undefined;
  readonly feedPrice: number | undefined;
  readonly nitrogenPrice: number | undefined;
  readonly phosphatePrice: number | undefined;
  readonly potashPrice: number | undefined;
}

/** Coefficients that no scenario sets; each has its own source in the table of coefficients. */
export interface ScenarioFactors {
  readonly ammoniaFactor: number;
  /** kg oxygen per kg feed, whole system. */
  readonly oxygenRatio: number;
  readonly swirlCapture: number;
  readonly radialCapture: number;
  /** Overflow rate at which those two were measured, m/s. */
  readonly measuredOverflow: number;
  /** Aeration in this water over that in clean water. */
  readonly alpha: number;
  readonly beta: number;
}

/** A result, or why there is none. */
export type Outcome = number | 'not given' | 'none' | 'never' | 'rises';

/** A result of several parts: `none` if any part is absent, `not given` if any is missing. */
export function figure(parts: readonly (Equipment | Outcome)[], compute: (...figures: number[]) => number): Outcome {
  const numbers: number[] = [];
  let lacking: Outcome | undefined;
  for (const part of parts) {
    if (part === 'none') return 'none';
    if (typeof part === 'number') numbers.push(part);
    else lacking = part ?? 'not given';
  }
  return lacking ?? compute(...numbers);
}

/** The same for a time, which is `never` if it has no end. */
export function durationOf(
  parts: readonly (Equipment | Outcome)[],
  compute: (...figures: number[]) => number,
): Outcome {
  const time = figure(parts, compute);
  return time === Number.POSITIVE_INFINITY ? 'never' : time;
}

/** A level that has no bound `rises`. */
export function levelOutcome(level: number): Outcome {
  return level === Number.POSITIVE_INFINITY ? 'rises' : level;
}

/** Whether the stage is there with a size. */
export function isFitted(part: Equipment): part is number {
  return typeof part === 'number';
}
