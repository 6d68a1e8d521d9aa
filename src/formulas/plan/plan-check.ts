/**
 * Cautions about a whole planned farm, in sentences with their figures.
 */
import type { Caution } from '../caution';
import { Refusal } from '../refusal';
import { stockFeed } from '../stock/stock';
import { chartedSpecies, stockFeedRate } from '../stock/stock-feed-rate';
import { fullDrum } from './plan-bank';
import { balanceCautions } from './plan-check-balance';
import { solidsCautions } from './plan-check-solids';
import { waterCautions } from './plan-check-water';
import { type Farm, planFarm, planFigures } from './plan-farm';
import { planLimit } from './plan-limit';
import { isFitted, type Scenario, type ScenarioFactors } from './plan-scenario';
import type { PossibleCaution } from './possible-caution';

/** The typed feed and the feed at the feeding rate may differ by this share. */
const SAME_FEED = 0.02;

/** A feeding rate this many times the chart's is a typing error or wasted feed. */
const OVER_CHART = 1.5;

/** The most that fish of a mass, kg, are fed a day, as a share of it: SRAC Publication 282 (Rakocy), from the smallest fry on. */
const mostFed = (fishMass: number): number => (fishMass < 0.005 ? 0.2 : 0.1);

/**
 * Everything to check before buying fish: stages that cannot carry today's feed, then water, solids, feed, and the dangers
 * of electricity, weight and raw solids.
 *
 * Reports what the results would refuse. Limits of fish by species; see each stage for its own source.
 */
export function planCheck(scenario: Scenario, factors: ScenarioFactors): readonly Caution[] {
  const farm = planFarm(scenario, factors);
  const shared = planFigures(farm);
  const found = [
    ...stageCautions(farm),
    ...balanceCautions(farm),
    ...waterCautions(farm),
    ...solidsCautions(farm),
    ...feedCautions(scenario),
    ...handlingCautions(scenario),
  ];
  return found.flatMap((one): Caution[] => {
    if (one === undefined || one === false) return [];
    if (typeof one === 'string') return [{ text: one, figures: shared }];
    return [{ text: one.text, figures: { ...shared, ...one.figures } }];
  });
}

function stageCautions(farm: Farm): readonly PossibleCaution[] {
  const { feed } = farm;
  const { rows, first, next } = planLimit(farm);
  const over = rows.slice(0, -1).flatMap(({ stage, capacity }): Caution[] => {
    // Solids that nothing removes have their own caution.
    if (capacity === 0 && stage === 'circulation, solids') return [];
    if (typeof capacity !== 'number' || capacity >= feed * (1 - 1e-9)) return [];
    return [
      {
        text: `The stage “${stage}” carries {capacity:daily} of feed, but you feed {feed:daily}.`,
        figures: { capacity },
      },
    ];
  });
  if (first === undefined || first.capacity === 0 || over.length > 0) return over;
  const then = next === undefined ? '' : `. The next limit is “${next.stage}”`;
  const text = `The first limit is “${first.stage}”, at {capacity:daily} of feed; today’s feed is {feed:daily}${then}.`;
  return [{ text, figures: { capacity: first.capacity } }];
}

function feedCautions(scenario: Scenario): readonly PossibleCaution[] {
  const { feed, fishCount, fishMass, feedingRate, species, temperature } = scenario;
  if (fishMass === undefined || feedingRate === undefined) return [];
  const eaten = fishCount === undefined ? feed : stockFeed(fishCount, fishMass, feedingRate);
  const charted = chartedSpecies.find((name) => name === species);
  const chart = charted && rateOf(() => stockFeedRate(charted, fishMass, temperature));
  return [
    feed !== undefined &&
      eaten !== undefined &&
      Math.abs(eaten - feed) > SAME_FEED * feed && {
        text: 'The feed typed, {feed:daily}, differs from the {eaten:daily} that the fish eat at the feeding rate. The plan uses the feed typed.',
        figures: { eaten },
      },
    chart !== undefined &&
      feedingRate > OVER_CHART * chart && {
        text: `The feeding rate, {rate} % of body mass a day, is well above the {chart} % of the published chart for ${charted}.`,
        figures: { rate: 100 * feedingRate, chart: 100 * chart },
      },
    chart === undefined &&
      feedingRate > mostFed(fishMass) && {
        text: 'The feeding rate, {rate} % of body mass a day, is not likely: fish of this size eat at most {most} %. Check the number.',
        figures: { rate: 100 * feedingRate, most: 100 * mostFed(fishMass) },
      },
  ];
}

/** A published rate, if one covers the fish and the water. */
function rateOf(read: () => number): number | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

function handlingCautions({ pumpFlow, airSupply, power, drums, alkali }: Scenario): readonly PossibleCaution[] {
  return [
    (isFitted(pumpFlow) || isFitted(airSupply) || power !== undefined) &&
      'Electricity near water needs ground-fault protection, drip loops and licensed wiring. Switch it off before you put hands in the water.',
    isFitted(drums) && {
      text: 'A full drum weighs about {fullDrum}: floor and stand must carry it. Keep everyone out from under it while it fills, and brace it before you move it.',
      figures: { fullDrum },
    },
    `Alkali (${alkali}) must be dissolved first and added slowly: wear goggles and gloves. Hydroxides burn and can kill fish at once.`,
  ];
}
