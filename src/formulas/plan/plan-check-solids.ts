/**
 * Cautions over solids: what settles them, what is assumed of it, how often pads and beds need work, and raw solids on food.
 */

import { settlingRate } from '../balance/farm-model';
import { bedDays } from '../bed/bed';
import { screenDays } from '../filter/screen';
import { WAIT_CLEAR, WAIT_TOUCHING } from '../harvest/harvest';
import { DAY } from '../numeric/time';
import { settleOverflow } from '../settle/settle-drums';
import { bedsCatchAllSolids, type Farm } from './plan-farm';
import { isFitted } from './plan-scenario';
import { LEAST_BED_DAYS } from './plan-stages';
import type { PossibleCaution } from './possible-caution';

/** Cautions over solids, drums, pads and beds. */
export function solidsCautions(farm: Farm): readonly PossibleCaution[] {
  return [overflowCaution(farm), ...captureCautions(farm), ...changeCautions(farm), ...rawCautions(farm)];
}

function overflowCaution({ scenario, factors, flow }: Farm): PossibleCaution {
  const { settler, drums, drumDiameter, overflowLimit } = scenario;
  if (!isFitted(drums) || drumDiameter === undefined || typeof flow !== 'number') return undefined;
  const overflow = settleOverflow(flow, drumDiameter, drums);
  const measured = factors.measuredOverflow;
  const figures = { overflow, measured };
  const rises = 'Water rises in the drums at {overflow:loading}';
  if ((settler === 'swirl' || settler === 'radial') && overflow > measured * (1 + 1e-9)) {
    return {
      text: `${rises}, faster than the {measured:loading} at which a ${settler} settler was measured: it will take out less than is counted on.`,
      figures,
    };
  }
  if (overflow <= overflowLimit * (1 + 1e-9)) return undefined;
  return { text: `${rises}, over the overflow limit, {overflowLimit:loading}: more drums, or less flow.`, figures };
}

function captureCautions({ scenario, settler: partsAt, balance }: Farm): readonly PossibleCaution[] {
  const { settler, drums, pads } = scenario;
  if (drums === 'none') {
    if (isFitted(pads)) return ['There are no drums: pads take what drums would, and need changing more often.'];
    return bedsCatchAllSolids(scenario)
      ? ['Gravel beds catch all the solids: keep few fish, let worms in, and clean a bed before it goes sour.']
      : ['Nothing takes solids out: no drums, no pads, no beds. They rot in the tank.'];
  }
  const { shares, taken } = partsAt(balance.flow);
  const pass = shares.reduce((sum, part, i) => sum + part * (taken[i] ?? 0), 0);
  const figures = { share: pass, rate: settlingRate(scenario, balance.flow) };
  const share = 'A share of {share:share} captured in one pass';
  const found: PossibleCaution[] = [
    drums === undefined && { text: `Drums are not given. ${share} is counted on all the same.`, figures },
  ];
  if (settler === 'mixed' || settler === 'ideal') {
    const text = `${share} is computed at {rate:loading}; settling differs many times from farm to farm, so time your own (SETTLE.JAR).`;
    return [...found, { text, figures }];
  }
  if (typeof settler === 'number') return found;
  const text = `${share} is what a ${settler} settler took out in one trial: measure your own.`;
  return [...found, { text, figures }];
}

function changeCautions({ scenario, balance }: Farm): readonly PossibleCaution[] {
  const { pads, padArea, padHolding, bedArea, bedDepth, bedHolding } = scenario;
  const changed =
    isFitted(pads) && padArea !== undefined ? screenDays(balance.solids.pads, pads * padArea, padHolding) : DAY;
  const cleaned = isFitted(bedArea)
    ? bedDays(balance.solids.beds, bedArea * bedDepth, bedHolding)
    : LEAST_BED_DAYS * DAY;
  return [
    changed < DAY && {
      text: 'Pads are full after {changed:hours}: they back up overnight. More pads, or coarser ones first.',
      figures: { changed },
    },
    cleaned < LEAST_BED_DAYS * DAY && {
      text: 'Gravel is full of solids after {cleaned:days}: take out more before the beds, or lay more gravel.',
      figures: { cleaned },
    },
  ];
}

function rawCautions({ scenario: { bedArea }, balance }: Farm): readonly PossibleCaution[] {
  return [
    balance.solids.drums > 0 && {
      text: 'Solids drawn off are raw: on food crops wait {touching:days} before harvest where what is eaten touches soil, else {clear:days} (the rule for raw manure; whether it covers fish solids is for the certifier), wash what is eaten, wear gloves; stored wet they give off hydrogen sulfide in a closed space.',
      figures: { touching: WAIT_TOUCHING * DAY, clear: WAIT_CLEAR * DAY },
    },
    isFitted(bedArea) && 'Keep tank water and raw solids off leaves that are eaten, and wash all of it.',
  ];
}
