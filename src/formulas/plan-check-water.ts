/**
 * Cautions over the water of a farm on paper: ammonia, oxygen, temperature, pH, stocking.
 */
import type { Caution } from './caution';
import { oxygenTime } from './oxygen-time';
import { figuresLike } from './plan-figures';
import { isFitted, type Scenario, type ScenarioFactors } from './plan-scenario';
import { planStages, unionisedLimit } from './plan-stages';
import type { Train } from './plan-train';
import { waterAmmonia, waterLimit } from './water-ammonia';
import { waterOxygen } from './water-oxygen';
import { fishLimits } from './water-species';

/** Shorter than this, nobody gets out of bed in time. Common practice, no source. */
const SHORT_TIME = 30 * 60;

/** Cautions over water; sources in the limits of each species. */
export function waterCautions(scenario: Scenario, factors: ScenarioFactors, train: Train): readonly Caution[] {
  return [
    ...ammoniaCautions(scenario),
    ...speciesCautions(scenario),
    ...oxygenTimeCautions(scenario, train),
    ...airCautions(scenario, factors, train),
    ...stockingCautions(scenario),
  ];
}

function ammoniaCautions(scenario: Scenario): readonly Caution[] {
  const { highestPh: ph, hottestWater, salinity, ammoniaLimit } = scenario;
  if (ph === undefined) {
    return [{ text: 'pH is not given, so nobody can say how much of the ammonia is un-ionised, which is what harms.' }];
  }
  const limit = unionisedLimit(scenario);
  const unionised = waterAmmonia(ammoniaLimit, ph, hottestWater, salinity);
  if (unionised <= limit) return [];
  const total = waterLimit(limit, ph, hottestWater, salinity);
  return [
    {
      text: 'At the ammonia limit, {total}, at pH {ph} and {hottest}, {unionised} is un-ionised, above the {limit} that harms: hold total ammonia nitrogen under {safe}.',
      figures: {
        ...figuresLike('concentration', { total: ammoniaLimit, unionised, limit, safe: total }),
        ...figuresLike('temperature', { hottest: hottestWater }),
        ...figuresLike('number', { ph }),
      },
    },
  ];
}

function speciesCautions({ species, coldestWater, hottestWater, ph, highestPh }: Scenario): readonly Caution[] {
  if (species === undefined) {
    return [
      {
        text: 'Species is not given: temperature and pH are not judged, and the general limit of un-ionised ammonia is taken.',
      },
    ];
  }
  const { temperature, ph: acidity } = fishLimits(species);
  const [low, high] = temperature;
  const degrees = figuresLike('temperature', { coldest: coldestWater, hottest: hottestWater, low, high });
  const found: Caution[] = [];
  if (coldestWater < low) {
    found.push({
      text: `The coldest water, {coldest}, is under the {low} that ${species} is kept above.`,
      figures: degrees,
    });
  }
  if (hottestWater > high) {
    found.push({
      text: `The hottest water, {hottest}, is over the {high} that ${species} is kept below.`,
      figures: degrees,
    });
  }
  const [least, most] = [ph ?? highestPh, highestPh];
  if (least !== undefined && most !== undefined && (least < acidity[0] || most > acidity[1])) {
    found.push({
      text: `pH from {least} to {most} goes out of the {low} to {high} that ${species} is kept within.`,
      figures: figuresLike('number', { least, most, low: acidity[0], high: acidity[1] }),
    });
  }
  return found;
}

function oxygenTimeCautions(scenario: Scenario, { oxygen }: Train): readonly Caution[] {
  const { tankVolume, oxygenAtStop, oxygenFloor, oxygenPeak } = scenario;
  if (!isFitted(tankVolume)) {
    return [{ text: 'Tank volume is not given, so nobody can say how long the fish have when pump and air stop.' }];
  }
  const levels = figuresLike('concentration', { stop: oxygenAtStop, floor: oxygenFloor });
  if (oxygenAtStop <= oxygenFloor) {
    return [
      {
        text: 'Oxygen at stop, {stop}, is not above the oxygen floor, {floor}: there is no time left.',
        figures: levels,
      },
    ];
  }
  const time = oxygenTime(tankVolume, oxygenAtStop, oxygenFloor, oxygen, oxygenPeak);
  const figures = { ...levels, ...figuresLike('minutes', { time, half: time / 2 }) };
  const short = time < SHORT_TIME ? ' That is too short for anyone to come: it must start by itself.' : '';
  const text = `If pump and air stop, oxygen falls from {stop} to {floor} in {time}: have backup air running within {half}.${short}`;
  return [{ text, figures }];
}

function airCautions(scenario: Scenario, factors: ScenarioFactors, { feed }: Train): readonly Caution[] {
  const { airSupply, hottestWater, elevation, salinity, oxygenAtStop: target, oxygenPeak } = scenario;
  const found: Caution[] = [];
  const saturation = factors.beta * waterOxygen(hottestWater, elevation, salinity);
  if (target >= saturation) {
    found.push({
      text: 'The hottest water, {hottest}, holds no more than {saturation} of oxygen in balance with air, so air alone does not keep {target}.',
      figures: {
        ...figuresLike('temperature', { hottest: hottestWater }),
        ...figuresLike('concentration', { saturation, target }),
      },
    });
  }
  if (!isFitted(airSupply)) {
    const state = airSupply === 'none' ? 'There is no air supply' : 'Air supply is not given';
    return [...found, { text: `${state}: all oxygen would come with the flow, and stops with the pump.` }];
  }
  const capacity = planStages(scenario, factors).find(({ stage }) => stage === 'air')?.capacity;
  if (typeof capacity === 'number' && capacity >= feed && capacity < feed * oxygenPeak) {
    found.push({
      text: 'Air carries the mean of the day but not its worst hour, {peak} times that: spread the feed over the day, or add air.',
      figures: figuresLike('number', { peak: oxygenPeak }),
    });
  }
  return found;
}

function stockingCautions({ fishCount, fishMass, tankVolume, densestStocking }: Scenario): readonly Caution[] {
  if (fishCount === undefined || fishMass === undefined || !isFitted(tankVolume)) return [];
  const stocking = (fishCount * fishMass) / tankVolume;
  if (stocking <= densestStocking) return [];
  return [
    {
      text: 'Fish stand at {stocking}, denser than {densest}: everything goes wrong faster.',
      figures: figuresLike('stocking', { stocking, densest: densestStocking }),
    },
  ];
}
