/**
 * Cautions over solids: what settles them, what is assumed of it, how often pads and beds want hands, and raw solids on food.
 */

import { bedDays } from './bed';
import type { Caution } from './caution';
import { WAIT_CLEAR, WAIT_TOUCHING } from './harvest';
import { figuresLike } from './plan-figures';
import { isFitted, type Scenario, type ScenarioFactors } from './plan-scenario';
import { LEAST_BED_DAYS } from './plan-stages';
import { bedsCatchSolids, settlerCapture, settlingRate, type Train } from './plan-train';
import { screenDays } from './screen';
import { settleOverflow } from './settle-drums';
import { DAY } from './time';

/** Cautions over solids, drums, pads and beds. */
export function solidsCautions(scenario: Scenario, factors: ScenarioFactors, train: Train): readonly Caution[] {
  return [
    ...overflowCautions(scenario, factors, train),
    ...captureCautions(scenario, factors),
    ...changeCautions(scenario, train),
    ...rawCautions(scenario, train),
  ];
}

function overflowCautions(scenario: Scenario, factors: ScenarioFactors, { flow }: Train): readonly Caution[] {
  const { settler, drums, drumDiameter, overflowLimit } = scenario;
  if (!isFitted(drums) || drumDiameter === undefined || typeof flow !== 'number') return [];
  const overflow = settleOverflow(flow, drumDiameter, drums);
  const measured = factors.measuredOverflow;
  const figures = figuresLike('loading', { overflow, measured, limit: overflowLimit });
  if ((settler === 'swirl' || settler === 'radial') && overflow > measured * (1 + 1e-9)) {
    return [
      {
        text: `Water rises in the drums at {overflow}, faster than the {measured} at which the share of a ${settler} settler was measured: it will take out less than is counted on here.`,
        figures,
      },
    ];
  }
  if (overflow <= overflowLimit * (1 + 1e-9)) return [];
  return [
    {
      text: 'Water rises in the drums at {overflow}, over the overflow limit, {limit}: more drums, or less flow.',
      figures,
    },
  ];
}

function captureCautions(scenario: Scenario, factors: ScenarioFactors): readonly Caution[] {
  const { settler, drums, pads } = scenario;
  if (drums === 'none') {
    if (isFitted(pads))
      return [{ text: 'There are no drums: pads take all the load of solids and want changing the oftener for it.' }];
    if (bedsCatchSolids(scenario)) {
      return [
        {
          text: 'Gravel beds catch all the solids: keep to few fish and little feed, let worms in, and clean a bed before it goes sour.',
        },
      ];
    }
    return [
      {
        text: 'Nothing takes solids out: no drums, no pads, no beds. They rot in the tank, and no flow holds them down.',
      },
    ];
  }
  const figures = {
    ...figuresLike('share', { capture: settlerCapture(scenario, factors) }),
    ...figuresLike('loading', { rate: settlingRate(scenario) }),
  };
  const found: Caution[] = [];
  if (drums === undefined) {
    found.push({ text: 'Drums are not given: a share of {capture} captured is counted on all the same.', figures });
  }
  if (settler === 'mixed' || settler === 'ideal') {
    found.push({
      text: 'A share of {capture} captured is computed at {rate} from settling velocities that differ many times from farm to farm: time your own (SETTLE.JAR).',
      figures,
    });
  } else if (typeof settler !== 'number') {
    found.push({
      text: `A share of {capture} captured is what a ${settler} settler took out in one trial: measure solids in and out of your own.`,
      figures,
    });
  }
  return found;
}

function changeCautions(scenario: Scenario, { onPads, onBeds }: Train): readonly Caution[] {
  const { pads, padArea, padHolding, bedArea, bedDepth, bedHolding } = scenario;
  const found: Caution[] = [];
  if (isFitted(pads) && padArea !== undefined) {
    const days = screenDays(onPads, pads * padArea, padHolding);
    if (days < DAY) {
      const figures = figuresLike('hours', { hours: days });
      found.push({
        text: 'Pads are full after {hours}: they back up overnight. More pads, or coarser ones first.',
        figures,
      });
    }
  }
  if (isFitted(bedArea)) {
    const days = bedDays(onBeds, bedArea * bedDepth, bedHolding);
    if (days < LEAST_BED_DAYS * DAY) {
      const figures = figuresLike('days', { days });
      found.push({
        text: 'Gravel is full of solids after {days}: take out more before the beds, or lay more gravel.',
        figures,
      });
    }
  }
  return found;
}

function rawCautions({ bedArea }: Scenario, { captured }: Train): readonly Caution[] {
  const found: Caution[] = [];
  if (captured > 0) {
    found.push({
      text: 'Solids drawn off are raw: on food crops wait {touching} before harvest where what is eaten touches soil, else {clear} (the rule for raw manure; whether it covers fish solids is for the certifier), wash what is eaten, wear gloves; stored wet they give off hydrogen sulphide in a closed space.',
      figures: figuresLike('days', { touching: WAIT_TOUCHING * DAY, clear: WAIT_CLEAR * DAY }),
    });
  }
  if (isFitted(bedArea)) {
    found.push({ text: 'Keep tank water and raw solids off leaves that are eaten, and wash all of it.' });
  }
  return found;
}
