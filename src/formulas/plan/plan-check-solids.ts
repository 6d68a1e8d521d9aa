/**
 * Cautions about solids: settling, what the plan assumes of it, how often pads and beds need work, raw solids on food.
 */

import { settlingRate } from '../balance/farm-model';
import { bedDays } from '../bed/bed';
import { screenDays } from '../filter/screen';
import { WAIT_CLEAR, WAIT_TOUCHING } from '../harvest/harvest';
import { DAY } from '../numeric/time';
import { settleDrums, settleOverflow } from '../settle/settle-drums';
import { bedsCatchAllSolids, type Farm } from './plan-farm';
import { isFitted } from './plan-scenario';
import { LEAST_BED_DAYS } from './plan-stages';
import type { PossibleCaution } from './possible-caution';

/** Cautions about solids, drums, pads and beds. */
export function solidsCautions(farm: Farm): readonly PossibleCaution[] {
  return [
    overflowCaution(farm),
    drumsCaution(farm),
    ...captureCautions(farm),
    ...changeCautions(farm),
    ...rawCautions(farm),
  ];
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
      text: `${rises}, faster than the {measured:loading} at which a ${settler} settler was measured: it will capture less than the plan assumes.`,
      figures,
    };
  }
  if (overflow <= overflowLimit * (1 + 1e-9)) return undefined;
  return {
    text: `${rises}, above the overflow limit of {overflowLimit:loading}: use more drums, or less flow.`,
    figures,
  };
}

/** The result drums needed is for the flow that runs, which may be less than what the feed needs. */
function drumsCaution({ scenario, flow, flowNeeded: wanted }: Farm): PossibleCaution {
  const { drums, drumDiameter, overflowLimit } = scenario;
  if (drums === 'none' || drumDiameter === undefined || typeof flow !== 'number' || typeof wanted !== 'number')
    return undefined;
  const count = settleDrums(wanted, drumDiameter, overflowLimit);
  return (
    count > settleDrums(flow, drumDiameter, overflowLimit) && {
      text: 'Drums needed is for the flow that runs, {flow:flow}. The feed needs {wanted:flow}, which takes {count} drums.',
      figures: { flow, wanted, count },
    }
  );
}

function captureCautions({ scenario, settler: partsAt, balance }: Farm): readonly PossibleCaution[] {
  const { settler, drums, pads } = scenario;
  if (drums === 'none') {
    if (isFitted(pads)) return ['There are no drums: pads catch what drums would, and need changing more often.'];
    return bedsCatchAllSolids(scenario)
      ? ['Gravel beds catch all the solids: keep few fish, let worms in, and clean a bed before it smells.']
      : ['Nothing removes solids: there are no drums, pads or beds. Solids rot in the tank.'];
  }
  const { shares, taken } = partsAt(balance.flow);
  const pass = shares.reduce((sum, part, i) => sum + part * (taken[i] ?? 0), 0);
  const figures = { share: pass, rate: settlingRate(scenario, balance.flow) };
  const share = 'The share captured in one pass, {share:share},';
  const found: PossibleCaution[] = [
    drums === undefined && {
      text: 'Drums are not given. The plan still assumes that drums capture a share of {share:share} in one pass.',
      figures,
    },
  ];
  if (settler === 'mixed' || settler === 'ideal') {
    const text = `${share} is calculated at {rate:loading}. Settling differs many-fold from farm to farm: time your own (SETTLE.JAR).`;
    return [...found, { text, figures }];
  }
  if (typeof settler === 'number') return found;
  const text = `${share} comes from one trial of a ${settler} settler: measure your own.`;
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
      text: 'Pads are full after {changed:hours} and back up overnight. Use more pads, or put coarser ones before them.',
      figures: { changed },
    },
    cleaned < LEAST_BED_DAYS * DAY && {
      text: 'Gravel is full of solids after {cleaned:days}: remove more solids before the beds, or use more gravel.',
      figures: { cleaned },
    },
  ];
}

function rawCautions({ scenario: { bedArea }, balance }: Farm): readonly PossibleCaution[] {
  return [
    balance.solids.drums > 0 && {
      text: 'Solids drawn off are raw. On food crops, wait {touching:days} before harvest if the part that is eaten touches soil, else {clear:days} (the rule for raw manure; ask the certifier whether it covers fish solids). Wash what you eat and wear gloves. Wet solids stored in a closed space give off hydrogen sulfide.',
      figures: { touching: WAIT_TOUCHING * DAY, clear: WAIT_CLEAR * DAY },
    },
    isFitted(bedArea) && 'Keep tank water and raw solids off leaves that are eaten, and wash the whole harvest.',
  ];
}
