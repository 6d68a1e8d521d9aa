/**
 * Cautions about the water of a planned farm: ammonia, oxygen, temperature, pH, stocking.
 */
import { oxygenTime } from '../water/oxygen-time';
import { waterAmmonia, waterLimit } from '../water/water-ammonia';
import { waterOxygen } from '../water/water-oxygen';
import { fishLimits, survivalRange } from '../water/water-species';
import type { Farm } from './plan-farm';
import { oxygenLeft } from './plan-results';
import { isFitted, type Scenario } from './plan-scenario';
import { stageSketches } from './plan-stages';
import type { PossibleCaution } from './possible-caution';

/** In a shorter time nobody gets there. Common practice, no source. */
const SHORT_TIME = 30 * 60;

/** Cautions about water; the limits of each species name their sources. */
export function waterCautions(farm: Farm): readonly PossibleCaution[] {
  const { scenario } = farm;
  return [
    ammoniaCaution(scenario),
    ...speciesCautions(scenario),
    oxygenTimeCaution(farm),
    ...airCautions(farm),
    stockingCaution(scenario),
  ];
}

function ammoniaCaution(scenario: Scenario): PossibleCaution {
  const { highestPh, hottestWater, salinity, ammoniaLimit } = scenario;
  if (highestPh === undefined) {
    return 'pH is not given, so un-ionized ammonia, the harmful part, cannot be judged.';
  }
  const limit = scenario.unionizedAmmoniaLimit;
  const unionized = waterAmmonia(ammoniaLimit, highestPh, hottestWater, salinity);
  if (unionized <= limit) return undefined;
  return {
    text: 'At the ammonia limit of {ammoniaLimit:concentration}, {unionized:concentration} is un-ionized at pH {highestPh} and {hottestWater:temperature}; more than {limit:concentration} harms fish. Keep total ammonia nitrogen below {safe:concentration}.',
    figures: { unionized, limit, safe: waterLimit(limit, highestPh, hottestWater, salinity) },
  };
}

function speciesCautions({ species, coldestWater, hottestWater, ph, highestPh }: Scenario): readonly PossibleCaution[] {
  if (species === undefined) {
    return [
      'Species is not given: temperature and pH are not judged, and un-ionized ammonia is judged by the general limit.',
    ];
  }
  const { ph: acidity, growsBest } = fishLimits(species);
  const [low, high] = survivalRange(species);
  const [coolest, warmest] = growsBest;
  const [least, most] = [ph ?? highestPh, highestPh];
  return [
    coldestWater < low && {
      text: `The coldest water, {coldestWater:temperature}, is below the limit of {low:temperature} for ${species}.`,
      figures: { low },
    },
    hottestWater > high && {
      text: `The hottest water, {hottestWater:temperature}, is above the limit of {high:temperature} for ${species}.`,
      figures: { high },
    },
    ((coldestWater >= low && coldestWater < coolest) || (hottestWater <= high && hottestWater > warmest)) && {
      text: `Water from {coldestWater:temperature} to {hottestWater:temperature} goes outside the range of {coolest:temperature} to {warmest:temperature} in which ${species} grow best: they survive, but grow poorly.`,
      figures: { coolest, warmest },
    },
    least !== undefined &&
      most !== undefined &&
      (least < acidity[0] || most > acidity[1]) && {
        text: `pH from {least} to {most} goes outside the range of {low} to {high} for ${species}.`,
        figures: { least, most, low: acidity[0], high: acidity[1] },
      },
  ];
}

function oxygenTimeCaution({ scenario, oxygen }: Farm): PossibleCaution {
  const { tankVolume, oxygenFloor, peakOxygenFactor } = scenario;
  const left = oxygenLeft(scenario);
  if (!isFitted(tankVolume)) {
    return 'Tank volume is not given, so the time that the fish have after pump and air stop cannot be calculated.';
  }
  if (left <= oxygenFloor) {
    return {
      text: 'Oxygen at power failure, {left:concentration}, is not above the oxygen floor of {oxygenFloor:concentration}: the fish have no time.',
      figures: { left },
    };
  }
  const time = oxygenTime(tankVolume, left, oxygenFloor, oxygen, peakOxygenFactor);
  const short = time < SHORT_TIME ? ' That is too short for anyone to get there: backup air must start by itself.' : '';
  return {
    text: `If pump and air stop, oxygen falls from {left:concentration} to {oxygenFloor:concentration} in {time:minutes}: backup air must run within {half:minutes}.${short}`,
    figures: { left, time, half: time / 2 },
  };
}

function airCautions(farm: Farm): readonly PossibleCaution[] {
  const { scenario, factors, feed } = farm;
  const { airSupply, hottestWater, elevation, salinity, oxygenAtPowerFailure, peakOxygenFactor } = scenario;
  const saturation = factors.beta * waterOxygen(hottestWater, elevation, salinity);
  const capacity = stageSketches(farm).find(({ stage }) => stage === 'air')?.capacity;
  const state = airSupply === 'none' ? 'There is no air supply' : 'Air supply is not given';
  return [
    oxygenAtPowerFailure >= saturation && {
      text: 'The hottest water, {hottestWater:temperature}, holds {saturation:concentration} of oxygen in balance with air, so air alone cannot maintain {oxygenAtPowerFailure:concentration}.',
      figures: { saturation },
    },
    !isFitted(airSupply) && `${state}: all oxygen would come with the flow and stop with the pump.`,
    typeof capacity === 'number' &&
      capacity >= feed &&
      capacity < feed * peakOxygenFactor &&
      'Air covers the mean demand of the day but not the worst hour, {peakOxygenFactor} times the mean: spread the feed over the day, or add air.',
  ];
}

function stockingCaution({ fishCount, fishMass, tankVolume, stockingLimit }: Scenario): PossibleCaution {
  if (fishCount === undefined || fishMass === undefined || !isFitted(tankVolume)) return undefined;
  const stocking = (fishCount * fishMass) / tankVolume;
  return (
    stocking > stockingLimit && {
      text: 'Stocking is {stocking:stocking}, above the limit of {stockingLimit:stocking}: keep fewer fish, or use a larger tank.',
      figures: { stocking },
    }
  );
}
