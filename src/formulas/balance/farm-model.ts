/**
 * What a scenario makes per second and what removes it, before any flow is known.
 *
 * Masses in kg/s, flows in m3/s.
 */
import { nitrificationLine } from '../filter/nitrification';
import { loadAmmonia, loadOxygen, loadSolids } from '../load/load';
import { DAY } from '../numeric/time';
import { isFitted, type Scenario, type ScenarioFactors } from '../plan/plan-scenario';
import { Refusal } from '../refusal';
import { settleOverflow } from '../settle/settle-drums';
import { stockFeed } from '../stock/stock';
import { NITROGEN_IN_PROTEIN } from '../water/atomic-mass';
import { airCarbonDioxide } from '../water/carbon-dioxide-air';
import { idealParts, measuredParts, mixedParts, type SolidsParts, unsettled } from './settling-parts';
import type { SolidsSinks } from './solids-balance';

export interface FarmModel {
  readonly scenario: Scenario;
  readonly factors: ScenarioFactors;
  readonly feed: number;
  readonly solids: number;
  /** Total ammonia nitrogen from the feed. */
  readonly ammonia: number;
  readonly oxygen: number;
  readonly nitrogenFed: number;
  readonly phosphorusFed: number;
  /** What the drums take in one pass of each part of the solids, at a flow. */
  readonly settler: (flow: number) => SolidsParts;
  readonly sinks: SolidsSinks;
  /** Areal nitrification at the coldest water, kg/m2/s, and what the media given nitrifies with it. */
  readonly nitrification: number;
  readonly capacity: number;
  /** Water let out, without that in the slurry. */
  readonly out: number;
  /** Carbon dioxide of water in balance with air, where degassing is given; else 0. */
  readonly airCarbonDioxide: number;
  /** The most that is denitrified, and that plants take as nitrate. */
  readonly denitrified: number;
  readonly plants: number;
}

/** Temperature at which a scenario's nitrification is stated, °C. */
const STATED_AT = 20;

/** Feed a day as typed, else what the fish eat, kg/s. Refuses a scenario with neither. */
export function scenarioFeed({ feed, fishCount, fishMass, feedingRate }: Scenario): number {
  if (feed !== undefined) return feed;
  if (fishCount === undefined || fishMass === undefined || feedingRate === undefined) {
    throw new Refusal('feed', 'give feed, or fish count, fish mass and feeding rate');
  }
  return stockFeed(fishCount, fishMass, feedingRate);
}

/** Overflow rate of the drums given at a flow, m/s; if none are given, the overflow limit. */
export function settlingRate({ drumDiameter, drums, overflowLimit }: Scenario, flow: number): number {
  if (!isFitted(drums) || drumDiameter === undefined || flow === 0) return overflowLimit;
  return settleOverflow(flow, drumDiameter, drums);
}

function settlerOf(scenario: Scenario, factors: ScenarioFactors): (flow: number) => SolidsParts {
  const { settler, drums, settleableShare: settleable, medianSettling: median, settlingSpread: spread } = scenario;
  if (drums === 'none') return () => unsettled;
  if (settler === 'mixed' || settler === 'ideal') {
    const parts = settler === 'mixed' ? mixedParts : idealParts;
    const atRate = parts({ median, spread, settleable });
    return (flow) => atRate(settlingRate(scenario, flow));
  }
  const share = settler === 'swirl' ? factors.swirlCapture : settler === 'radial' ? factors.radialCapture : settler;
  const parts = measuredParts(share, settleable);
  return () => parts;
}

/** Media surface given, m2: of the biofilter or, without one, of the gravel; Infinity if it is not known. */
function mediaGiven({ mediaVolume, media, bedArea, bedDepth }: Scenario): number {
  if (isFitted(mediaVolume)) return mediaVolume * media;
  if (mediaVolume === undefined || bedArea === undefined) return Number.POSITIVE_INFINITY;
  return isFitted(bedArea) ? bedArea * bedDepth * media : 0;
}

export function farmModel(scenario: Scenario, factors: ScenarioFactors): FarmModel {
  const feed = scenarioFeed(scenario);
  const { protein, pads, bedArea, waterOut } = scenario;
  const nitrogenFed = feed * protein * NITROGEN_IN_PROTEIN;
  const nitrification = nitrificationLine(scenario.nitrification, scenario.coldestWater, STATED_AT, 'lower');
  const out = waterOut / DAY;
  const volume = isFitted(scenario.systemVolume) ? scenario.systemVolume : 0;
  const bed = isFitted(bedArea) ? bedArea : 0;
  return {
    scenario,
    factors,
    feed,
    solids: loadSolids(feed, scenario.solidsShare),
    ammonia: loadAmmonia(feed, protein, factors.ammoniaFactor),
    oxygen: loadOxygen(feed, factors.oxygenRatio),
    nitrogenFed,
    phosphorusFed: feed * scenario.feedPhosphorus,
    settler: settlerOf(scenario, factors),
    sinks: {
      pads: isFitted(pads) ? scenario.padCapture : 0,
      beds: isFitted(bedArea) ? scenario.bedCapture : 0,
      decay: (scenario.solidsDecay / DAY) * volume,
      out,
    },
    nitrification,
    capacity: mediaGiven(scenario) * nitrification,
    out,
    airCarbonDioxide: scenario.degassing === undefined ? 0 : airCarbonDioxide(scenario.temperature, scenario.elevation),
    denitrified: scenario.passiveDenitrification * nitrogenFed,
    plants: bed * scenario.plantUptake,
  };
}
