/**
 * What each stage of a farm carries, as feed a day, at the worst water that it meets.
 *
 * A stage's capacity is today's feed times what the stage has over what today's feed asks of it, both by the formula of
 * the stage, so that no rule stands here a second time.
 */
import { airTransfer } from '../air/air';
import { bedArea, bedDays } from '../bed/bed';
import type { Caution } from '../caution';
import { filterFeed } from '../filter/filter-size';
import { screenDays } from '../filter/screen';
import { loadFlow, loadOxygenFlow } from '../load/load';
import { DAY } from '../numeric/time';
import { Refusal } from '../refusal';
import { settleOverflow } from '../settle/settle-drums';
import { waterLimit } from '../water/water-ammonia';
import { fishLimits } from '../water/water-species';
import { type Equipment, lasting, type Outcome, type Scenario, type ScenarioFactors } from './plan-scenario';
import { bedsCatchSolids, planFigures, planTrain, type Train } from './plan-train';

export interface Stage {
  readonly stage: string;
  /** Feed that it carries, kg/s. */
  readonly capacity: Outcome;
  /** What the capacity was figured from, or what is missing. */
  readonly from: Caution;
}

/** A stage whose sentence has yet to be given the figures of the scenario, by the names that its marks have there. */
interface Sketch {
  readonly stage: string;
  readonly capacity: Outcome;
  readonly from: string;
}

type Part = readonly [name: string, value: Equipment | Outcome];

/** A stage from its parts; where one is missing, it says which. */
function stage(name: string, parts: readonly Part[], compute: (...figures: number[]) => number, from: string): Sketch {
  const capacity = lasting(
    parts.map(([, value]) => value),
    compute,
  );
  if (typeof capacity === 'number') return { stage: name, capacity, from };
  if (capacity === 'never') return { stage: name, capacity, from: 'never: nothing comes to it' };
  const lacking = parts.filter(([, value]) => (capacity === 'none' ? value === 'none' : typeof value !== 'number'));
  return { stage: name, capacity, from: `${capacity}: ${lacking.map(([part]) => part).join(', ')}` };
}

/** Un-ionized ammonia nitrogen that the fish may meet, kg/m3; the general limit where no species is given. */
export function unionizedLimit({ species }: Scenario): number {
  return fishLimits(species ?? 'warm-water').unionized;
}

/** Every stage in the order of the water, from the fish round to the beds. */
export function planStages(scenario: Scenario, factors: ScenarioFactors): readonly Stage[] {
  const train = planTrain(scenario, factors);
  const sketches = [
    fishTank(scenario, train),
    air(scenario, factors, train),
    ...circulation(scenario, train),
    drums(scenario, train),
    pads(scenario, train),
    ...nitrification(scenario, factors, train),
    ...beds(scenario, train),
  ];
  const figures = {
    ...planFigures(scenario, train),
    cropFeed: scenario.crop.feed,
    unionized: unionizedLimit(scenario),
    leastDays: LEAST_BED_DAYS * DAY,
  };
  return sketches.map((sketch) => ({ ...sketch, from: { text: sketch.from, figures } }));
}

function fishTank({ fishCount, fishMass, tankVolume, stockingLimit }: Scenario, { feed }: Train): Sketch {
  const volume: Part = ['tank volume', tankVolume];
  return stage(
    'fish tank',
    [volume, ['fish count', fishCount], ['fish mass', fishMass]],
    (held, count, mass) => (feed * stockingLimit * held) / (count * mass),
    'tank volume at the stocking limit, {stockingLimit:stocking}',
  );
}

/** Air that cannot hold the oxygen at the hottest water carries nothing. */
function air(scenario: Scenario, { alpha, beta }: ScenarioFactors, { feed, oxygen }: Train): Sketch {
  const { airSupply, hottestWater: temperature, oxygenAtPowerFailure: target, elevation, salinity } = scenario;
  const transfer = (rated: number): number => {
    try {
      return airTransfer({ rated, temperature, target, elevation, alpha, beta, salinity });
    } catch (error) {
      if (error instanceof Refusal) return 0;
      throw error;
    }
  };
  return stage(
    'air',
    [['air supply', airSupply]],
    (rated) => (feed * transfer(rated)) / oxygen,
    'air supply in the hottest water, {hottestWater:temperature}, holding {oxygenAtPowerFailure:concentration}',
  );
}

function circulation(scenario: Scenario, { feed, ammonia, solids, oxygen, capture }: Train): readonly Sketch[] {
  const { pumpFlow, removal, ammoniaLimit, solidsLimit, hottestWater, highestPh, salinity } = scenario;
  const pump: Part = ['pump flow', pumpFlow];
  const carried = (needed: number) => (flow: number) => (feed * flow) / needed;
  const byAmmonia = (limit: number) => carried(loadFlow(ammonia, limit, removal));
  const unionized = unionizedLimit(scenario);
  return [
    stage(
      'circulation, ammonia',
      [pump],
      byAmmonia(ammoniaLimit),
      'pump flow at the ammonia limit, {ammoniaLimit:concentration}',
    ),
    stage(
      'circulation, un-ionized ammonia',
      [pump, ['pH', highestPh]],
      (flow, ph) => byAmmonia(waterLimit(unionized, ph, hottestWater, salinity))(flow),
      'pump flow at {unionized:concentration} un-ionized, in the hottest water, {hottestWater:temperature}, at the highest pH',
    ),
    capture > 0
      ? stage(
          'circulation, solids',
          [pump],
          carried(loadFlow(solids, solidsLimit, capture)),
          'pump flow at the solids limit, {solidsLimit:concentration}, with {capture:share} caught in a pass',
        )
      : { stage: 'circulation, solids', capacity: 'none', from: 'none: nothing takes solids out' },
    stage(
      'circulation, oxygen',
      [pump, ['oxygen in', scenario.oxygenIn], ['oxygen out', scenario.oxygenOut]],
      (flow, rich, poor) => carried(loadOxygenFlow(oxygen, rich, poor))(flow),
      'pump flow, oxygen in less oxygen out',
    ),
  ];
}

function drums({ drums: count, drumDiameter, overflowLimit }: Scenario, { feed, flowNeeded }: Train): Sketch {
  const side: Part = ['drums', count];
  return stage(
    'settling drums',
    [side, ['drum diameter', drumDiameter]],
    (across, diameter) => (feed * overflowLimit) / settleOverflow(flowNeeded, diameter, across),
    'the flow that feed needs, not the pump’s, at the overflow limit, {overflowLimit:loading}',
  );
}

function pads({ pads: count, padArea, padHolding }: Scenario, { feed, onPads }: Train): Sketch {
  const changed: Part = ['pads', count];
  return stage(
    'pads',
    [changed, ['pad area', padArea]],
    (together, area) => (feed * screenDays(onPads, together * area, padHolding)) / DAY,
    'all pads changed once a day',
  );
}

/** The biofilter; where there is none, the gravel of the beds. */
function nitrification(
  scenario: Scenario,
  { ammoniaFactor }: ScenarioFactors,
  { nitrification }: Train,
): readonly Sketch[] {
  const { mediaVolume, media, protein, filterReserve, bedArea: laid, bedDepth } = scenario;
  const carried = (bulk: number) => filterFeed(bulk, media, protein, nitrification, filterReserve, ammoniaFactor);
  const cold = 'in the coldest water, {coldestWater:temperature}, with the reserve kept';
  const biofilter = stage('biofilter', [['media volume', mediaVolume]], carried, `media volume ${cold}`);
  if (mediaVolume !== 'none') return [biofilter];
  const onGravel = (area: number) => carried(area * bedDepth);
  return [biofilter, stage('gravel beds, nitrification', [['bed area', laid]], onGravel, `film on the gravel ${cold}`)];
}

/** Days that gravel should go between cleanings where it catches all solids: common practice, no source. */
export const LEAST_BED_DAYS = 30;

function beds(scenario: Scenario, { feed, onBeds }: Train): readonly Sketch[] {
  const { bedArea: laid, bedDepth, bedHolding, crop } = scenario;
  const area: Part = ['bed area', laid];
  const fed = (given: number) => (feed * given) / bedArea(feed, crop.feed);
  const plants = stage('plant beds', [area], fed, 'bed area at the crop’s feed, {cropFeed:areal rate}');
  if (!bedsCatchSolids(scenario)) return [plants];
  const caught = (given: number) => (feed * bedDays(onBeds, given * bedDepth, bedHolding)) / (LEAST_BED_DAYS * DAY);
  const cleaned = 'gravel cleaned no oftener than every {leastDays:days}';
  return [stage('gravel beds, solids', [area], caught, cleaned), plants];
}
