/**
 * Feeding rates out of published charts, as a share of body mass a day.
 */
import { Refusal } from '../refusal';
import type { FishKind } from '../water/water-species';
import { classLengths, classMasses, firstFahrenheit, percentADay } from './trout-chart';

/** Fish with a chart, or whose published figures are too coarse for one, which is said. */
export const chartedSpecies = ['rainbow trout', 'tilapia', 'channel catfish'] as const;

/**
 * Feeding rate from a published chart, share of body mass a day.
 *
 * Rainbow trout: class by mass of one, kg, temperature, °C, interpolated between the rows for each °F from 36 to 68
 * (Leitritz and Lewis 1980). Tilapia: between the rates at which each stage begins and ends, 0.02 to 450 g at 27.8 to
 * 30 °C (Rakocy, SRAC Publication 282). Not available outside a chart, where an entry is misprinted, for channel
 * catfish, whose published rates go by life stage, or for other fish.
 */
export function stockFeedRate(species: FishKind, fishMass: number, temperature: number): number {
  if (species === 'rainbow trout') return troutRate(fishMass, temperature);
  if (species === 'tilapia') return tilapiaRate(fishMass, temperature);
  throw new Refusal(
    'species',
    species !== 'channel catfish'
      ? `no chart of ${species} is published here; give your own feeding rate`
      : 'published rates for channel catfish go by life stage, not by temperature: fry 6 to 10 %, fingerlings 2 to 5 %, brood fish 1 to 2 % of body mass a day (FAO AFFRIS); give your own feeding rate',
    { reason: 'unavailable' },
  );
}

/** Which column a trout is in: the heavier class where it weighs just what divides two. */
export function troutClass(fishMass: number): number {
  let column = 0;
  for (const mass of classMasses) if (fishMass >= mass * (1 - 1e-9)) column++;
  return column;
}

function troutRate(fishMass: number, temperature: number): number {
  const place = temperature * 1.8 + 32 - firstFahrenheit;
  const last = percentADay.length - 1;
  if (place < -1e-9 || place > last + 1e-9) {
    throw new Refusal('temperature', 'the trout chart runs from {coldest:temperature} to {warmest:temperature}', {
      figures: {
        coldest: (firstFahrenheit - 32) / 1.8,
        warmest: (firstFahrenheit + last - 32) / 1.8,
      },
      reason: 'unavailable',
    });
  }
  // Exact rows must give their own figure, although °F to °C and back is a rounding off.
  const near = Math.round(place);
  const at = Math.abs(place - near) < 1e-9 ? near : place;
  const row = Math.min(Math.floor(at), last);
  const column = troutClass(fishMass);
  const low = percentADay[row]?.[column];
  const high = at === row ? low : percentADay[row + 1]?.[column];
  if (low === undefined || high === undefined) {
    throw new Refusal(
      'temperature',
      `the chart looks misprinted there for fish of ${classLengths[column]}; use a colder row or your own rate`,
      {
        reason: 'unavailable',
      },
    );
  }
  return (low + (high - low) * (at - row)) / 100;
}

/** Mass of one, kg, and the rate there: each stage of the table begins at one and ends at the next. */
type TilapiaStage = readonly [mass: number, rate: number];
const firstStage: TilapiaStage = [0.00002, 0.2];
const lastStage: TilapiaStage = [0.45, 0.01];
const laterStages: readonly TilapiaStage[] = [
  [0.001, 0.15],
  [0.005, 0.1],
  [0.02, 0.07],
  [0.05, 0.04],
  [0.1, 0.035],
  [0.25, 0.015],
  lastStage,
];
const TILAPIA_COOLEST = (82 - 32) / 1.8;
const TILAPIA_WARMEST = (86 - 32) / 1.8;

function tilapiaRate(fishMass: number, temperature: number): number {
  if (temperature < TILAPIA_COOLEST - 1e-9 || temperature > TILAPIA_WARMEST + 1e-9) {
    throw new Refusal(
      'temperature',
      'the tilapia table is for best growth, {coolest:temperature} to {warmest:temperature}; give your own feeding rate',
      {
        figures: {
          coolest: TILAPIA_COOLEST,
          warmest: TILAPIA_WARMEST,
        },
        reason: 'unavailable',
      },
    );
  }
  let [from, begins] = firstStage;
  for (const [to, ends] of laterStages) {
    if (fishMass >= from * (1 - 1e-9) && fishMass <= to * (1 + 1e-9)) {
      return begins + ((ends - begins) * (fishMass - from)) / (to - from);
    }
    [from, begins] = [to, ends];
  }
  throw new Refusal('fishMass', 'the tilapia table runs from {smallest:fish} to {largest:fish}', {
    figures: {
      smallest: firstStage[0],
      largest: lastStage[0],
    },
    reason: 'unavailable',
  });
}
