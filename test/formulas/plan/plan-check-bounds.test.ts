/**
 * Every caution that has a bound, just inside it and just beyond it. The bounds are those of the sources that the tables of
 * species, charts and films name, or follow by hand from the round figures of the farm.
 */
import { describe, expect, it } from 'vitest';
import { STUDIED_FILMS } from '../../../src/formulas/filter/nitrification';
import { planCheck } from '../../../src/formulas/plan/plan-check';
import { planFarm } from '../../../src/formulas/plan/plan-farm';
import { planLimit } from '../../../src/formulas/plan/plan-limit';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { waterAmmonia } from '../../../src/formulas/water/water-ammonia';
import { waterOxygen } from '../../../src/formulas/water/water-oxygen';
import { fishLimits, survivalRange } from '../../../src/formulas/water/water-species';
import { DAY, factors, farm } from './plan-farm';

/** 40 tilapia of 250 g at 2 % a day: 10 kg in 2 m3, 0.2 kg of feed a day. */
const calm: Scenario = {
  ...farm,
  fishCount: 40,
  temperature: 25,
  coldestWater: 22,
  hottestWater: 28,
  airSupply: 0.4 / 3600,
  peakOxygenFactor: 1.1,
};
const trout: Scenario = { ...calm, species: 'rainbow trout', temperature: (55 - 32) / 1.8 };
const has = (scenario: Scenario, words: string): boolean =>
  planCheck(scenario, factors).some(({ text }) => text.includes(words));

function figureOf(scenario: Scenario, words: string, mark: string): number {
  const figure = planCheck(scenario, factors).find(({ text }) => text.includes(words))?.figures?.[mark];
  const value = typeof figure === 'object' ? figure.value : figure;
  if (typeof value !== 'number') throw new Error(`no figure ${mark} with: ${words}`);
  return value;
}

const [low, high] = survivalRange('tilapia');
const {
  growsBest: [coolest, warmest],
  ph: [acid, alkaline],
} = fishLimits('tilapia');
const [coldFilm, warmFilm] = STUDIED_FILMS;
const unionized = waterAmmonia(calm.ammoniaLimit, 7.5, 28, 0);
const saturation = waterOxygen(28, 0, 0);
const oxygenTime = figureOf(calm, 'backup air', 'time');
const air = planLimit(planFarm(calm, factors)).rows.find(({ stage }) => stage === 'air')?.capacity;
const airOverFeed = Number(air) / (0.2 / DAY);
const padDays = figureOf({ ...calm, padHolding: 0.001 }, 'Pads are full after', 'changed') / DAY / 0.001;
const bedDays = figureOf({ ...calm, bedHolding: 0.01 }, 'Gravel is full', 'cleaned') / DAY / 0.01;

/** What changes a calm farm to one just inside the bound, and to one just beyond it. */
const bounds: readonly [words: string, bound: string, inside: Partial<Scenario>, beyond: Partial<Scenario>][] = [
  ['Stocking is', '10 kg in 2 m3', { stockingLimit: 5 }, { stockingLimit: 4.999 }],
  ['is below the limit of', 'coldest that tilapia survive', { coldestWater: low }, { coldestWater: low - 0.01 }],
  ['is above the limit of {high', 'hottest that they survive', { hottestWater: high }, { hottestWater: high + 0.01 }],
  [
    'grow poorly',
    'coolest of best growth',
    { coldestWater: coolest, hottestWater: coolest },
    { coldestWater: coolest - 0.01, hottestWater: coolest },
  ],
  [
    'grow poorly',
    'warmest of best growth',
    { coldestWater: warmest, hottestWater: warmest },
    { coldestWater: warmest, hottestWater: warmest + 0.01 },
  ],
  ['pH from', 'least pH', { ph: acid }, { ph: acid - 0.01 }],
  ['pH from', 'highest pH', { highestPh: alkaline }, { highestPh: alkaline + 0.01 }],
  ['harms fish', 'un-ionized part', { unionizedAmmoniaLimit: unionized }, { unionizedAmmoniaLimit: unionized * 0.999 }],
  [
    'too short for anyone',
    'half an hour',
    { tankVolume: (2 * 1800.1) / oxygenTime },
    { tankVolume: (2 * 1799.9) / oxygenTime },
  ],
  ['the fish have no time', 'oxygen floor', { oxygenFloor: 0.00599 }, { oxygenFloor: 0.006 }],
  ['cannot maintain', 'saturation', { oxygenAtPowerFailure: saturation * 0.999 }, { oxygenAtPowerFailure: saturation }],
  [
    'not the worst hour',
    'upper end of the air band',
    { peakOxygenFactor: airOverFeed * 0.999 },
    { peakOxygenFactor: airOverFeed * 1.001 },
  ],
  [
    '“air” carries',
    'lower end of the air band',
    { airSupply: (0.4 / 3600 / airOverFeed) * 1.001 },
    { airSupply: (0.4 / 3600 / airOverFeed) * 0.999 },
  ],
  ['was measured', 'rise through 1 m2', { pumpFlow: 0.003 }, { pumpFlow: 0.003 * 1.001 }],
  [
    'above the overflow limit',
    'rise through 1 m2',
    { settler: 0.6, pumpFlow: 0.003 },
    { settler: 0.6, pumpFlow: 0.003 * 1.001 },
  ],
  ['Pads are full after', 'a day', { padHolding: 1.001 / padDays }, { padHolding: 0.999 / padDays }],
  ['Gravel is full', '30 days', { bedHolding: 30.01 / bedDays }, { bedHolding: 29.99 / bedDays }],
  ['The feed typed', '2 % below', { feed: 0.1962 / DAY }, { feed: 0.196 / DAY }],
  ['The feed typed', '2 % above', { feed: 0.204 / DAY }, { feed: 0.2042 / DAY }],
  ['is an extrapolation', 'coldest film studied', { coldestWater: coldFilm }, { coldestWater: coldFilm - 0.01 }],
  ['is an extrapolation', 'warmest film studied', { coldestWater: warmFilm }, { coldestWater: warmFilm + 0.01 }],
];

describe('cautions begin just beyond their bounds', () => {
  it.each(bounds)('%s: %s', (words, _bound, inside, beyond) => {
    expect(has({ ...calm, ...inside }, words)).toBe(false);
    expect(has({ ...calm, ...beyond }, words)).toBe(true);
  });

  // SRAC Publication 282 (Rakocy): 20 % of body mass a day at most, and 10 % at most from 5 g on.
  it.each([
    [0.225, 0.1],
    [0.005, 0.1],
    [0.0049, 0.2],
  ])('at the most that fish of %f kg eat, without a chart for them', (fishMass, most) => {
    const fed = { ...calm, fishMass, species: 'barramundi' } as const;
    const words = 'fish of this size eat at most';
    expect(has({ ...fed, feedingRate: most }, words)).toBe(false);
    expect(has({ ...fed, feedingRate: most * 1.001 }, words)).toBe(true);
    expect(figureOf({ ...fed, feedingRate: 0.5 }, words, 'most')).toBeCloseTo(100 * most, 9);
    // Tilapia have a chart only for warm water.
    expect(has({ ...fed, species: 'tilapia', temperature: 25, feedingRate: 0.5 }, words)).toBe(true);
    expect(has({ ...trout, fishMass, feedingRate: 0.5 }, words)).toBe(false);
  });

  it('at one and a half times the 1.0 % of the chart for trout over 10 inches at 55 °F (Leitritz and Lewis 1980)', () => {
    expect(has({ ...trout, feedingRate: 0.015 }, 'published chart')).toBe(false);
    expect(has({ ...trout, feedingRate: 0.01501 }, 'published chart')).toBe(true);
    expect(figureOf({ ...trout, feedingRate: 0.02 }, 'published chart', 'chart')).toBeCloseTo(1, 9);
  });
});
