/**
 * What each stage of a farm carries, as feed a day, at the worst water that it meets.
 *
 * A stage's capacity is the feed at which PLAN.COMPARE shows it used to the full: the formula of the stage, or the steady
 * state of the farm, solved for the feed.
 */
import { airTransferIfAny } from '../air/air';
import { farmBalance } from '../balance/farm-balance';
import { bedArea, bedDays } from '../bed/bed';
import type { Caution } from '../caution';
import { filterFeed } from '../filter/filter-size';
import { screenDays } from '../filter/screen';
import { DAY } from '../numeric/time';
import { circleArea } from '../tank/tank-shape';
import { type FeedAtLimit, feedAtLimit } from './plan-circulation';
import { type Farm, planFigures } from './plan-farm';
import { durationOf, type Equipment, type Outcome } from './plan-scenario';

export interface Stage {
  readonly stage: string;
  /** Feed that it carries, kg/s. */
  readonly capacity: Outcome;
  /** What the capacity was calculated from, or what is missing. */
  readonly from: Caution;
}

/** A stage whose sentence has no figures yet; its marks are the names of the scenario's figures. */
export interface Sketch {
  readonly stage: string;
  readonly capacity: Outcome;
  readonly from: string;
}

type Part = readonly [name: string, value: Equipment | Outcome];

/** A stage from its parts; if one is missing, it names that part. */
function stage(name: string, parts: readonly Part[], compute: (...figures: number[]) => number, from: string): Sketch {
  const capacity = durationOf(
    parts.map(([, value]) => value),
    compute,
  );
  if (typeof capacity === 'number') return { stage: name, capacity, from };
  if (capacity === 'never') return { stage: name, capacity, from: 'never: no solids reach it' };
  const lacking = parts.filter(([, value]) => (capacity === 'none' ? value === 'none' : typeof value !== 'number'));
  return { stage: name, capacity, from: `${capacity}: ${lacking.map(([part]) => part).join(', ')}` };
}

/** Every stage in the order of the water, from the fish to the beds; only capacities, which is fast. */
export function stageSketches(farm: Farm): readonly Sketch[] {
  return [
    fishTank(farm),
    air(farm),
    ...circulation(farm),
    drums(farm),
    pads(farm),
    ...nitrification(farm),
    ...beds(farm),
  ];
}

/** The same stages with the figures of their sentences. */
export function planStages(farm: Farm): readonly Stage[] {
  const figures = {
    ...planFigures(farm),
    cropFeed: farm.scenario.crop.feed,
    rising: (100 * farm.balance.solids.rising) / farm.solids,
    leastDays: LEAST_BED_DAYS * DAY,
  };
  return stageSketches(farm).map((sketch) => ({ ...sketch, from: { text: sketch.from, figures } }));
}

function fishTank({ scenario, feed }: Farm): Sketch {
  const { fishCount, fishMass, tankVolume, stockingLimit } = scenario;
  const volume: Part = ['tank volume', tankVolume];
  return stage(
    'fish tank',
    [volume, ['fish count', fishCount], ['fish mass', fishMass]],
    (held, count, mass) => (feed * stockingLimit * held) / (count * mass),
    'tank volume at the stocking limit, {stockingLimit:stocking}',
  );
}

/** Air that cannot keep the oxygen in the hottest water carries no feed. */
function air({ scenario, factors: { alpha, beta }, feed, oxygen }: Farm): Sketch {
  const { airSupply, hottestWater: temperature, oxygenAtPowerFailure: target, elevation, salinity } = scenario;
  const transfer = (rated: number): number =>
    airTransferIfAny({ rated, temperature, target, elevation, alpha, beta, salinity });
  return stage(
    'air',
    [['air supply', airSupply]],
    (rated) => (feed * transfer(rated)) / oxygen,
    'air supply in the hottest water, {hottestWater:temperature}, at {oxygenAtPowerFailure:concentration} of oxygen',
  );
}

function circulation(farm: Farm): readonly Sketch[] {
  const { pumpFlow, highestPh, oxygenIn, oxygenOut, degassing } = farm.scenario;
  const pump: Part = ['pump flow', pumpFlow];
  const at = typeof pumpFlow === 'number' ? feedAtLimit(farm, farm.balance) : undefined;
  const carried = (waste: Exclude<keyof FeedAtLimit, 'ammoniaByMedia'>) => (): number => at?.[waste] ?? 0;
  const everywhere = [
    stage(
      'circulation, ammonia',
      [pump],
      carried('ammonia'),
      at?.ammoniaByMedia
        ? 'media without reserve in the coldest water, {coldestWater:temperature}: more flow does not help'
        : 'pump flow at the ammonia limit, {ammoniaLimit:concentration}',
    ),
    stage(
      'circulation, un-ionized ammonia',
      [pump, ['pH', highestPh]],
      carried('unionizedAmmonia'),
      'pump flow at {unionizedAmmoniaLimit:concentration} un-ionized, in the hottest water, {hottestWater:temperature}, at the highest pH',
    ),
    stage(
      'circulation, solids',
      [pump],
      carried('solids'),
      at !== undefined && at.rising > 0
        ? 'nothing removes {rising} % of the solids: add pads or gravel beds, or let water out'
        : 'pump flow at the solids limit, {solidsLimit:concentration}, with what each stage removes at steady state',
    ),
    stage(
      'circulation, oxygen',
      [pump, ['oxygen in', oxygenIn], ['oxygen out', oxygenOut]],
      carried('oxygen'),
      'pump flow × (oxygen in - oxygen out)',
    ),
  ];
  if (degassing === undefined) return everywhere;
  const dioxide = stage(
    'circulation, carbon dioxide',
    [pump],
    carried('carbonDioxide'),
    'pump flow at the carbon dioxide limit, {carbonDioxideLimit:concentration}, with a share of {degassing:share} removed per pass',
  );
  return [...everywhere, dioxide];
}

/** Whether some flow keeps the solids of today's feed within their limit. */
function solidsAreHeld({ needs }: Farm): boolean {
  return needs.every(({ waste, flow }) => waste !== 'solids' || Number.isFinite(flow));
}

/** The feed whose flow needed is the most that the drums pass, leaving out solids and media that no flow can help. */
function drums(farm: Farm): Sketch {
  const { drums: count, drumDiameter, overflowLimit } = farm.scenario;
  const side: Part = ['drums', count];
  return stage(
    'settling drums',
    [side, ['drum diameter', drumDiameter]],
    (across, diameter) => {
      const nitrified = { ...farm, capacity: Number.POSITIVE_INFINITY };
      const at = feedAtLimit(nitrified, farmBalance(nitrified, overflowLimit * across * circleArea(diameter)));
      const solids = solidsAreHeld(farm) ? at.solids : Number.POSITIVE_INFINITY;
      const others = [at.unionizedAmmonia, at.carbonDioxide, at.oxygen].filter((one) => one !== undefined);
      return Math.min(at.ammonia, solids, ...others);
    },
    'flow that the feed needs, at the overflow limit, {overflowLimit:loading}; drums needed is for the flow that runs',
  );
}

function pads({ scenario, feed, balance }: Farm): Sketch {
  const { pads: count, padArea, padHolding } = scenario;
  const changed: Part = ['pads', count];
  return stage(
    'pads',
    [changed, ['pad area', padArea]],
    (together, area) => (feed * screenDays(balance.solids.pads, together * area, padHolding)) / DAY,
    'all pads changed once a day',
  );
}

/** The biofilter; without one, the gravel of the beds. */
function nitrification({ scenario, factors, nitrification }: Farm): readonly Sketch[] {
  const { mediaVolume, media, protein, filterReserve, bedArea: laid, bedDepth } = scenario;
  const carried = (bulk: number) =>
    filterFeed(bulk, media, protein, nitrification, filterReserve, factors.ammoniaFactor);
  const cold = 'in the coldest water, {coldestWater:temperature}, with the reserve kept';
  const biofilter = stage('biofilter', [['media volume', mediaVolume]], carried, `media volume ${cold}`);
  if (mediaVolume !== 'none') return [biofilter];
  const onGravel = (area: number) => carried(area * bedDepth);
  return [
    biofilter,
    stage('gravel beds, nitrification', [['bed area', laid]], onGravel, `bacteria on the gravel ${cold}`),
  ];
}

/** Days that gravel should last between cleanings: common practice, no source. */
export const LEAST_BED_DAYS = 30;

function beds({ scenario, feed, balance }: Farm): readonly Sketch[] {
  const { bedArea: laid, bedDepth, bedHolding, crop } = scenario;
  const area: Part = ['bed area', laid];
  const fed = (given: number) => (feed * given) / bedArea(feed, crop.feed);
  const plants = stage('plant beds', [area], fed, 'bed area at the crop’s feed, {cropFeed:areal rate}');
  if (typeof laid !== 'number') return [plants];
  const caught = (given: number) =>
    (feed * bedDays(balance.solids.beds, given * bedDepth, bedHolding)) / (LEAST_BED_DAYS * DAY);
  const cleaned = 'gravel cleaned at most every {leastDays:days}';
  return [stage('gravel beds, solids', [area], caught, cleaned), plants];
}
