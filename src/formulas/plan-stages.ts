/**
 * What each stage of a farm carries, as feed a day, at the worst water that it meets.
 *
 * A stage's capacity is today's feed times what the stage has over what today's feed asks of it, both by the formula of
 * the stage, so that no rule stands here a second time.
 */
import { airTransfer } from './air';
import { bedArea, bedDays } from './bed';
import type { Caution } from './caution';
import { filterFeed } from './filter-size';
import { loadFlow, loadOxygenFlow } from './load';
import { figuresLike } from './plan-figures';
import { type Equipment, type Figure, lasting, type Scenario, type ScenarioFactors } from './plan-scenario';
import { bedsCatchSolids, planTrain, type Train } from './plan-train';
import { Refusal } from './refusal';
import { screenDays } from './screen';
import { settleOverflow } from './settle-drums';
import { DAY } from './time';
import { waterLimit } from './water-ammonia';
import { fishLimits } from './water-species';

export interface Stage {
  readonly stage: string;
  /** Feed that it carries, kg/s. */
  readonly capacity: Figure;
  /** What the capacity was figured from, or what is missing. */
  readonly from: Caution;
}

type Part = readonly [name: string, value: Equipment | Figure];

/** A stage from its parts; where one is missing, it says which. */
function stage(name: string, parts: readonly Part[], compute: (...figures: number[]) => number, from: Caution): Stage {
  const values = parts.map(([, value]) => value);
  const capacity = lasting(values, compute);
  if (typeof capacity === 'number') return { stage: name, capacity, from };
  if (capacity === 'never') return { stage: name, capacity, from: { text: 'never: nothing comes to it' } };
  const lacking = parts.filter(([, value]) => (capacity === 'none' ? value === 'none' : typeof value !== 'number'));
  return { stage: name, capacity, from: { text: `${capacity}: ${lacking.map(([part]) => part).join(', ')}` } };
}

/** Un-ionised ammonia nitrogen that the fish may meet, kg/m3; the general limit where no species is given. */
export function unionisedLimit({ species }: Scenario): number {
  return fishLimits(species ?? 'warm-water').unionised;
}

/** Every stage in the order of the water, from the fish round to the beds. */
export function planStages(scenario: Scenario, factors: ScenarioFactors): readonly Stage[] {
  const train = planTrain(scenario, factors);
  return [
    fishTank(scenario, train),
    air(scenario, factors, train),
    ...circulation(scenario, train),
    drums(scenario, train),
    pads(scenario, train),
    ...film(scenario, factors, train),
    ...beds(scenario, train),
  ];
}

function fishTank({ fishCount, fishMass, tankVolume, densestStocking }: Scenario, { feed }: Train): Stage {
  return stage(
    'fish tank',
    [
      ['tank volume', tankVolume],
      ['fish count', fishCount],
      ['fish mass', fishMass],
    ],
    (volume, count, mass) => (feed * densestStocking * volume) / (count * mass),
    {
      text: 'tank volume at the densest stocking, {densest}',
      figures: figuresLike('stocking', { densest: densestStocking }),
    },
  );
}

/** Air that cannot hold the oxygen at the hottest water carries nothing. */
function air(scenario: Scenario, { alpha, beta }: ScenarioFactors, { feed, oxygen }: Train): Stage {
  const { airSupply, hottestWater: temperature, oxygenAtStop: target, elevation, salinity } = scenario;
  const transfer = (rated: number): number => {
    try {
      return airTransfer({ rated, temperature, target, elevation, alpha, beta, salinity });
    } catch (error) {
      if (error instanceof Refusal) return 0;
      throw error;
    }
  };
  return stage('air', [['air supply', airSupply]], (rated) => (feed * transfer(rated)) / oxygen, {
    text: 'air supply in the hottest water, {hottest}, holding {target}',
    figures: { ...figuresLike('temperature', { hottest: temperature }), ...figuresLike('concentration', { target }) },
  });
}

function circulation(scenario: Scenario, { feed, ammonia, solids, oxygen, capture }: Train): readonly Stage[] {
  const { pumpFlow, removal, ammoniaLimit, solidsLimit, hottestWater, highestPh, salinity, oxygenIn, oxygenOut } =
    scenario;
  const pump: Part = ['pump flow', pumpFlow];
  const carried = (needed: number) => (flow: number) => (feed * flow) / needed;
  const byAmmonia = (limit: number) => carried(loadFlow(ammonia, limit, removal));
  const unionised = unionisedLimit(scenario);
  return [
    stage('circulation, ammonia', [pump], byAmmonia(ammoniaLimit), {
      text: 'pump flow at the ammonia limit, {limit}',
      figures: figuresLike('concentration', { limit: ammoniaLimit }),
    }),
    stage(
      'circulation, un-ionised ammonia',
      [pump, ['pH', highestPh]],
      (flow, ph) => byAmmonia(waterLimit(unionised, ph, hottestWater, salinity))(flow),
      {
        text: 'pump flow at {unionised} un-ionised, in the hottest water, {hottest}, at the highest pH',
        figures: {
          ...figuresLike('concentration', { unionised }),
          ...figuresLike('temperature', { hottest: hottestWater }),
        },
      },
    ),
    capture > 0
      ? stage('circulation, solids', [pump], carried(loadFlow(solids, solidsLimit, capture)), {
          text: 'pump flow at the solids limit, {limit}, with {capture} caught in a pass',
          figures: { ...figuresLike('concentration', { limit: solidsLimit }), ...figuresLike('share', { capture }) },
        })
      : { stage: 'circulation, solids', capacity: 'none', from: { text: 'none: nothing takes solids out' } },
    stage(
      'circulation, oxygen',
      [pump, ['oxygen in', oxygenIn], ['oxygen out', oxygenOut]],
      (flow, rich, poor) => carried(loadOxygenFlow(oxygen, rich, poor))(flow),
      { text: 'pump flow, oxygen in less oxygen out' },
    ),
  ];
}

function drums({ drums: count, drumDiameter, overflowLimit }: Scenario, { feed, flowNeeded }: Train): Stage {
  return stage(
    'settling drums',
    [
      ['drums', count],
      ['drum diameter', drumDiameter],
    ],
    (side, diameter) => (feed * overflowLimit) / settleOverflow(flowNeeded, diameter, side),
    {
      text: 'the flow needed at the overflow limit, {limit}',
      figures: figuresLike('loading', { limit: overflowLimit }),
    },
  );
}

function pads({ pads: count, padArea, padHolding }: Scenario, { feed, onPads }: Train): Stage {
  return stage(
    'pads',
    [
      ['pads', count],
      ['pad area', padArea],
    ],
    (changed, area) => (feed * screenDays(onPads, changed * area, padHolding)) / DAY,
    { text: 'all pads changed once a day' },
  );
}

/** The biofilter; where there is none, the gravel of the beds. */
function film(scenario: Scenario, { ammoniaFactor }: ScenarioFactors, { nitrification }: Train): readonly Stage[] {
  const { mediaVolume, media, protein, filterReserve, coldestWater, bedArea: laid, bedDepth } = scenario;
  const carried = (bulk: number) => filterFeed(bulk, media, protein, nitrification, filterReserve, ammoniaFactor);
  const cold = figuresLike('temperature', { coldest: coldestWater });
  const text = 'in the coldest water, {coldest}, with the reserve kept';
  const biofilter = stage('biofilter', [['media volume', mediaVolume]], carried, {
    text: `media volume ${text}`,
    figures: cold,
  });
  if (mediaVolume !== 'none') return [biofilter];
  const gravel = stage('gravel beds, nitrification', [['bed area', laid]], (area) => carried(area * bedDepth), {
    text: `film on the gravel ${text}`,
    figures: cold,
  });
  return [biofilter, gravel];
}

/** Days that gravel should go between cleanings where it catches all solids: common practice, no source. */
export const LEAST_BED_DAYS = 30;

function beds(scenario: Scenario, { feed, onBeds }: Train): readonly Stage[] {
  const { bedArea: laid, bedDepth, bedHolding, crop } = scenario;
  const area: Part = ['bed area', laid];
  const plants = stage('plant beds', [area], (given) => (feed * given) / bedArea(feed, crop.feed), {
    text: 'bed area at the crop’s feed, {ratio}',
    figures: figuresLike('areal rate', { ratio: crop.feed }),
  });
  if (!bedsCatchSolids(scenario)) return [plants];
  const days = (given: number) => bedDays(onBeds, given * bedDepth, bedHolding);
  const gravel = stage('gravel beds, solids', [area], (given) => (feed * days(given)) / (LEAST_BED_DAYS * DAY), {
    text: 'gravel cleaned no oftener than every {days}',
    figures: figuresLike('days', { days: LEAST_BED_DAYS * DAY }),
  });
  return [gravel, plants];
}
