/**
 * What a dose of alkali does to the pH: at once, and when air has taken or given back carbon dioxide.
 */
import { Refusal } from '../refusal';
import { type Alkali, alkaliMole, alkaliStrength, dissolvesSlowly, waterDose } from './alkali';
import { molarMass } from './atomic-mass';
import {
  airedAlkalinity,
  airedPh,
  CALCIUM_CARBONATE_PER_EQUIVALENT,
  type CarbonateConstants,
  carbonateCharge,
  carbonateConstants,
  closedPh,
  waterCarbonDioxide,
  waterCharge,
} from './carbonate';
import { unionizedShare } from './water-ammonia';

/** pH above which a dose is refused: it burns fish and makes most of the ammonia poisonous. Common practice, no source. */
const SAFE_PH = 9;

/** Most alkalinity in all, kg/m3 as CaCO3: beyond it the salts themselves move the constants of fresh water. */
const MOST_ALKALINITY = 2.5;

/** Longest plan, days. */
const MOST_DAYS = 365;

/** The water before a dose: alkalinity in kg/m3 as CaCO3, temperature in °C. */
export interface WaterBefore {
  readonly alkalinity: number;
  readonly ph: number;
  readonly temperature: number;
}

/** The carbonate system before a dose, in mol/L; carbon dioxide is held at this level by air. */
interface Balance {
  readonly constants: CarbonateConstants;
  readonly alkalinity: number;
  readonly carbon: number;
  readonly dioxide: number;
}

function balanceOf({ alkalinity, ph, temperature }: WaterBefore): Balance {
  const constants = carbonateConstants(temperature);
  const dioxide = waterCarbonDioxide(alkalinity, ph, temperature) / molarMass.carbonDioxide;
  const equivalents = alkalinity / CALCIUM_CARBONATE_PER_EQUIVALENT;
  return { constants, dioxide, alkalinity: equivalents, carbon: carbonAt(ph, equivalents, constants) };
}

function carbonAt(ph: number, alkalinity: number, constants: CarbonateConstants): number {
  const hydrogen = 10 ** -ph;
  return (alkalinity - waterCharge(hydrogen, constants)) / carbonateCharge(hydrogen, constants);
}

/** Mol of alkali a liter that brings the water to a pH at once; infinite where no dose of it does. */
function doseToPh(ph: number, { constants, alkalinity, carbon }: Balance, alkali: Alkali): number {
  const { equivalents, carbon: brought } = alkaliMole(alkali);
  const hydrogen = 10 ** -ph;
  const charge = carbonateCharge(hydrogen, constants);
  const gained = equivalents - brought * charge;
  if (gained <= 0) return Number.POSITIVE_INFINITY;
  return (carbon * charge + waterCharge(hydrogen, constants) - alkalinity) / gained;
}

function phAtOnce(balance: Balance, alkali: Alkali, dose: number): number | undefined {
  return dissolvesSlowly(alkali) ? undefined : phDissolved(balance, alkali, dose);
}

function phDissolved(balance: Balance, alkali: Alkali, dose: number): number {
  const { equivalents, carbon } = alkaliMole(alkali);
  return closedPh(
    { alkalinity: balance.alkalinity + dose * equivalents, carbon: balance.carbon + dose * carbon },
    balance.constants,
  );
}

/**
 * Alkali that raises the alkalinity of water of known pH, kg; as waterDose, and refused where it passes pH 9 at once.
 *
 * Carbonates of calcium and magnesium dissolve too slowly for a pH at once. Sources as for waterAfter.
 */
export function safeWaterDose(
  volume: number,
  rise: number,
  alkali: Alkali,
  purity: number,
  before: WaterBefore,
): number {
  const dose = waterDose(volume, rise, alkali, purity);
  if (dissolvesSlowly(alkali)) return dose;
  const balance = balanceOf(before);
  refuseStrong('rise', before.alkalinity, rise);
  const safe = doseToPh(SAFE_PH, balance, alkali);
  const { equivalents, mass } = alkaliMole(alkali);
  const atOnce = phDissolved(balance, alkali, rise / CALCIUM_CARBONATE_PER_EQUIVALENT / equivalents);
  if (rise === 0 || atOnce <= SAFE_PH) return dose;
  if (safe <= 0 || before.ph >= SAFE_PH) {
    throw new Refusal('rise', 'the water already has pH {ph}, so no dose of this alkali is safe; air it first', {
      figures: { ph: before.ph },
    });
  }
  throw new Refusal(
    'rise',
    'this dose would raise the pH to {atOnce} at once; at most {most:portion}, a rise of {step}, stays below pH 9: dose in steps, see WATER.STEPS',
    {
      figures: {
        atOnce: Math.round(atOnce * 10) / 10,
        most: roundedDown((safe * mass * volume) / purity),
        step: { value: roundedDown(safe * equivalents * CALCIUM_CARBONATE_PER_EQUIVALENT), like: 'rise' },
      },
    },
  );
}

/** Three figures, never rounded up, so that what is typed again is still safe. */
function roundedDown(value: number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 2);
  return Math.floor(value / unit) * unit;
}

function refuseStrong(argument: string, alkalinity: number, rise: number): void {
  if (alkalinity + rise <= MOST_ALKALINITY) return;
  throw new Refusal(
    argument,
    'it raises alkalinity above {most:alkalinity}, where fresh-water chemistry is no longer valid',
    {
      figures: { most: MOST_ALKALINITY },
    },
  );
}

export interface WaterAfter {
  /** kg/m3 as CaCO3. */
  readonly alkalinity: number;
  /** Undefined for carbonates of calcium and magnesium, which dissolve over days. */
  readonly atOnce: number | undefined;
  readonly aired: number;
  /** Un-ionized ammonia nitrogen at the higher pH, kg/m3. */
  readonly unionized: number | undefined;
}

/**
 * Alkalinity and pH of fresh water after a dose: at once with the carbon that the alkali brings, and aired with carbon dioxide back
 * at the level before it.
 *
 * Volume m3, amount kg, ammonia kg N/m3 or undefined; nothing precipitates. Range and sources as for closedPh.
 */
export function waterAfter(
  volume: number,
  before: WaterBefore,
  alkali: Alkali,
  amount: number,
  purity: number,
  ammonia: number | undefined,
): WaterAfter {
  const balance = balanceOf(before);
  const { mass, equivalents } = alkaliMole(alkali);
  const dose = (amount * purity) / mass / volume;
  const rise = dose * equivalents * CALCIUM_CARBONATE_PER_EQUIVALENT;
  refuseStrong('amount', before.alkalinity, rise);
  const atOnce = phAtOnce(balance, alkali, dose);
  const aired = airedPh(balance.alkalinity + dose * equivalents, balance.dioxide, balance.constants);
  const highest = Math.max(atOnce ?? aired, aired);
  return {
    alkalinity: before.alkalinity + rise,
    atOnce,
    aired,
    unionized: ammonia === undefined ? undefined : ammonia * unionizedShare(highest, before.temperature, 0),
  };
}

export interface DoseStep {
  readonly day: number;
  /** kg. */
  readonly amount: number;
  readonly alkalinity: number;
  readonly atOnce: number | undefined;
  readonly aired: number;
}

/**
 * A dose a day until the target, none raising the pH by more than `most`, at once or aired, over that at the start of its day.
 *
 * Each day starts at the aired pH of the day before. What nitrification uses meanwhile is not counted. Refuses a
 * target at or below the alkalinity now, and one whose aired pH exceeds 9. Range and sources as for closedPh.
 */
export function waterSteps(
  volume: number,
  before: WaterBefore,
  target: number,
  alkali: Alkali,
  most: number,
  purity: number,
): readonly DoseStep[] {
  const start = balanceOf(before);
  const { constants, dioxide } = start;
  const { equivalents } = alkaliMole(alkali);
  const wanted = target / CALCIUM_CARBONATE_PER_EQUIVALENT;
  refuseTarget(before, target, start);
  const steps: DoseStep[] = [];
  let { alkalinity } = start;
  let { ph } = before;
  while (alkalinity < wanted) {
    const balance = { constants, dioxide, alkalinity, carbon: carbonAt(ph, alkalinity, constants) };
    const byAir = (airedAlkalinity(ph + most, dioxide, constants) - alkalinity) / equivalents;
    const byDose = dissolvesSlowly(alkali) ? byAir : doseToPh(ph + most, balance, alkali);
    const left = (wanted - alkalinity) / equivalents;
    const dose = Math.min(left, byAir, byDose);
    if (steps.length === MOST_DAYS) {
      throw new Refusal('most', 'at this rate it takes over a year; allow a larger step, or use a bicarbonate');
    }
    const atOnce = phAtOnce(balance, alkali, dose);
    alkalinity = dose === left ? wanted : alkalinity + dose * equivalents;
    ph = airedPh(alkalinity, dioxide, constants);
    steps.push({
      day: steps.length + 1,
      amount: (dose * equivalents * CALCIUM_CARBONATE_PER_EQUIVALENT * volume) / (alkaliStrength(alkali) * purity),
      alkalinity: alkalinity * CALCIUM_CARBONATE_PER_EQUIVALENT,
      atOnce,
      aired: ph,
    });
  }
  return steps;
}

function refuseTarget({ alkalinity }: WaterBefore, target: number, { constants, dioxide }: Balance): void {
  if (target <= alkalinity) {
    throw new Refusal('target', 'the water already has {alkalinity}, so it needs no alkali; change water to lower it', {
      figures: { alkalinity },
    });
  }
  refuseStrong('target', 0, target);
  if (airedPh(target / CALCIUM_CARBONATE_PER_EQUIVALENT, dioxide, constants) <= SAFE_PH) return;
  const highest = airedAlkalinity(SAFE_PH, dioxide, constants) * CALCIUM_CARBONATE_PER_EQUIVALENT;
  throw new Refusal(
    'target',
    'with so little carbon dioxide the pH would exceed 9; give at most {highest:alkalinity}',
    {
      figures: { highest: roundedDown(highest) },
    },
  );
}
