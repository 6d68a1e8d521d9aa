/**
 * Cautions over a whole farm on paper, in sentences with the figures that they rest on.
 */
import type { Caution } from './caution';
import { solidsCautions } from './plan-check-solids';
import { waterCautions } from './plan-check-water';
import { figuresLike } from './plan-figures';
import { planLimit } from './plan-limit';
import { isFitted, type Scenario, type ScenarioFactors } from './plan-scenario';
import { planTrain, type Train } from './plan-train';
import { Refusal } from './refusal';
import { stockFeed } from './stock';
import { chartedSpecies, stockFeedRate } from './stock-feed-rate';

/** Feed typed and feed at the feeding rate are one feed up to this. */
const SAME_FEED = 0.02;

/** A feeding rate this many times that of the chart is a slip or wasted feed. */
const OVER_CHART = 1.5;

/**
 * Everything to think of before fish are bought: stages that do not carry today's feed, then water, solids, feed, and the
 * care that electricity, weight and raw solids ask for.
 *
 * Reports what the results would refuse. Limits of fish by species; see each stage for its own source.
 */
export function planCheck(scenario: Scenario, factors: ScenarioFactors): readonly Caution[] {
  const train = planTrain(scenario, factors);
  return [
    ...stageCautions(scenario, factors, train),
    ...waterCautions(scenario, factors, train),
    ...solidsCautions(scenario, factors, train),
    ...feedCautions(scenario),
    ...handlingCautions(scenario),
  ];
}

function stageCautions(scenario: Scenario, factors: ScenarioFactors, { feed }: Train): readonly Caution[] {
  const { rows, first, next } = planLimit(scenario, factors);
  const over = rows.slice(0, -1).flatMap(({ stage, capacity }): Caution[] => {
    if (typeof capacity !== 'number' || capacity >= feed * (1 - 1e-9)) return [];
    return [
      {
        text: `${stage}: carries {capacity} of feed, and {feed} is fed.`,
        figures: figuresLike('daily', { capacity, feed }),
      },
    ];
  });
  if (first === undefined || over.length > 0) return over;
  const then = next === undefined ? '' : `, then ${next.stage}`;
  const figures = figuresLike('daily', { capacity: first.capacity as number, feed });
  return [{ text: `${first.stage} gives out first, at {capacity} of feed against {feed} today${then}.`, figures }];
}

function feedCautions(scenario: Scenario): readonly Caution[] {
  const { feed, fishCount, fishMass, feedingRate, species, temperature } = scenario;
  const found: Caution[] = [];
  if (feed !== undefined && fishCount !== undefined && fishMass !== undefined && feedingRate !== undefined) {
    const eaten = stockFeed(fishCount, fishMass, feedingRate);
    if (Math.abs(eaten - feed) > SAME_FEED * feed) {
      found.push({
        text: 'The feed typed, {feed}, is not what the fish eat at the feeding rate, {eaten}; everything is figured from the feed typed.',
        figures: figuresLike('daily', { feed, eaten }),
      });
    }
  }
  const charted = chartedSpecies.find((name) => name === species);
  if (charted === undefined || fishMass === undefined || feedingRate === undefined) return found;
  const chart = rateOf(() => stockFeedRate(charted, fishMass, temperature));
  if (chart !== undefined && feedingRate > OVER_CHART * chart) {
    const figures = figuresLike('number', { rate: 100 * feedingRate, chart: 100 * chart });
    found.push({
      text: `The feeding rate, {rate} % of body mass a day, is well above the {chart} % of the published chart for ${charted} of this mass at this temperature.`,
      figures,
    });
  }
  return found;
}

/** A published rate, where one covers the fish and the water. */
function rateOf(read: () => number): number | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

function handlingCautions({ pumpFlow, airSupply, power, drums, alkali }: Scenario): readonly Caution[] {
  const found: Caution[] = [];
  if (isFitted(pumpFlow) || isFitted(airSupply) || power !== undefined) {
    found.push({
      text: 'Electricity beside water: ground-fault protection, drip loops, and everything off before hands go in; wiring is for who is licensed for it.',
    });
  }
  if (isFitted(drums)) {
    found.push({
      text: 'A full drum of about 210 L is a quarter of a tonne: floor and stand carry it, nobody is under it while it fills, and it is shored before it is moved.',
    });
  }
  found.push({
    text: `Alkali (${alkali}) is dissolved first and added slowly, a little at a time, with eyes and hands covered; hydroxides burn and can kill fish in a gulp.`,
  });
  return found;
}
