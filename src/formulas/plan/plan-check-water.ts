/**
 * Cautions over the water of a farm on paper: ammonia, oxygen, temperature, pH, stocking.
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

/** Shorter than this, nobody gets out of bed in time. Common practice, no source. */
const SHORT_TIME = 30 * 60;

/** Cautions over water; sources in the limits of each species. */
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
    return 'pH is not given, so un-ionized ammonia, which is what harms, cannot be judged.';
  }
  const limit = scenario.unionizedAmmoniaLimit;
  const unionized = waterAmmonia(ammoniaLimit, highestPh, hottestWater, salinity);
  if (unionized <= limit) return undefined;
  return {
    text: 'Of the ammonia limit, {ammoniaLimit:concentration}, {unionized:concentration} is un-ionized at pH {highestPh} and {hottestWater:temperature}, above the {limit:concentration} that harms: hold total ammonia nitrogen under {safe:concentration}.',
    figures: { unionized, limit, safe: waterLimit(limit, highestPh, hottestWater, salinity) },
  };
}

function speciesCautions({ species, coldestWater, hottestWater, ph, highestPh }: Scenario): readonly PossibleCaution[] {
  if (species === undefined) {
    return ['Species is not given: temperature and pH are not judged, and un-ionized ammonia by the general limit.'];
  }
  const { ph: acidity, growsBest } = fishLimits(species);
  const [low, high] = survivalRange(species);
  const [coolest, warmest] = growsBest;
  const [least, most] = [ph ?? highestPh, highestPh];
  return [
    coldestWater < low && {
      text: `The coldest water, {coldestWater:temperature}, is under the {low:temperature} for ${species}.`,
      figures: { low },
    },
    hottestWater > high && {
      text: `The hottest water, {hottestWater:temperature}, is over the {high:temperature} for ${species}.`,
      figures: { high },
    },
    ((coldestWater >= low && coldestWater < coolest) || (hottestWater <= high && hottestWater > warmest)) && {
      text: `Water from {coldestWater:temperature} to {hottestWater:temperature} goes out of the {coolest:temperature} to {warmest:temperature} in which ${species} grow best: they survive, but grow poorly.`,
      figures: { coolest, warmest },
    },
    least !== undefined &&
      most !== undefined &&
      (least < acidity[0] || most > acidity[1]) && {
        text: `pH from {least} to {most} goes out of {low} to {high} for ${species}.`,
        figures: { least, most, low: acidity[0], high: acidity[1] },
      },
  ];
}

function oxygenTimeCaution({ scenario, oxygen }: Farm): PossibleCaution {
  const { tankVolume, oxygenFloor, peakOxygenFactor } = scenario;
  const left = oxygenLeft(scenario);
  if (!isFitted(tankVolume)) {
    return 'Tank volume is not given, so the time that fish have when pump and air stop cannot be judged.';
  }
  if (left <= oxygenFloor) {
    return {
      text: 'Oxygen at power failure, {left:concentration}, is not above the oxygen floor, {oxygenFloor:concentration}: no time is left.',
      figures: { left },
    };
  }
  const time = oxygenTime(tankVolume, left, oxygenFloor, oxygen, peakOxygenFactor);
  const short = time < SHORT_TIME ? ' That is too short for anyone to come: it must start by itself.' : '';
  return {
    text: `If pump and air stop, oxygen falls from {left:concentration} to {oxygenFloor:concentration} in {time:minutes}: have backup air running within {half:minutes}.${short}`,
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
    !isFitted(airSupply) && `${state}: all oxygen would come with the flow, and stops with the pump.`,
    typeof capacity === 'number' &&
      capacity >= feed &&
      capacity < feed * peakOxygenFactor &&
      'Air carries the mean of the day but not its worst hour, {peakOxygenFactor} times that: spread the feed over the day, or add air.',
  ];
}

function stockingCaution({ fishCount, fishMass, tankVolume, stockingLimit }: Scenario): PossibleCaution {
  if (fishCount === undefined || fishMass === undefined || !isFitted(tankVolume)) return undefined;
  const stocking = (fishCount * fishMass) / tankVolume;
  return (
    stocking > stockingLimit && {
      text: 'Fish stand at {stocking:stocking}, denser than {stockingLimit:stocking}: everything goes wrong faster.',
      figures: { stocking },
    }
  );
}
