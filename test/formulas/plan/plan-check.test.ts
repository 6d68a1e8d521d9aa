import { describe, expect, it } from 'vitest';
import { planCheck } from '../../../src/formulas/plan/plan-check';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { DAY, factors, farm, smallFarm } from './plan-farm';

const calm: Scenario = {
  ...farm,
  fishCount: 40,
  species: 'tilapia',
  temperature: 25,
  coldestWater: 22,
  hottestWater: 28,
  airSupply: 0.4 / 3600,
  peakOxygenFactor: 1.1,
};
const says = (scenario: Scenario) => planCheck(scenario, factors).map(({ text }) => text);
const has = (scenario: Scenario, words: string) => says(scenario).some((text) => text.includes(words));
const figureOf = (scenario: Scenario, words: string, mark: string) => {
  const figure = planCheck(scenario, factors).find(({ text }) => text.includes(words))?.figures?.[mark];
  return typeof figure === 'object' ? figure.value : figure;
};

describe('cautions about a farm that is well within its means', () => {
  it('name the first limit and keep to care that is always due', () => {
    const lines = says(calm);
    expect(lines[0]).toMatch(/^The first limit is.*The next limit is/);
    expect(lines.some((text) => text.includes('is fed'))).toBe(false);
    expect(lines.filter((text) => /denser|un-ionized at|for tilapia|too short|not given/.test(text))).toEqual([]);
  });

  it('carry a figure for every mark', () => {
    for (const scenario of [calm, farm, smallFarm, { ...farm, settler: 'mixed' as const, hottestWater: 38 }]) {
      for (const { text, figures } of planCheck(scenario, factors)) {
        for (const [, mark] of text.matchAll(/\{(\w+)[:}]/g)) expect(figures, text).toHaveProperty(mark!);
      }
    }
  });
});

describe('cautions about water', () => {
  it('tell the oxygen time and have backup air within half of it', () => {
    const time = figureOf(calm, 'backup air', 'time')!;
    expect(time).toBeCloseTo((6 / (1.1 * 250)) * DAY, 6);
    expect(figureOf(calm, 'backup air', 'half')).toBeCloseTo(time / 2, 9);
    expect(has(farm, 'too short for anyone')).toBe(true);
    expect(has({ ...calm, oxygenFloor: 0.007 }, 'the fish have no time')).toBe(true);
    expect(has({ ...calm, tankVolume: undefined }, 'Tank volume is not given')).toBe(true);
  });

  it('say that the ammonia limit allows too much un-ionized ammonia in the worst water', () => {
    const worst = { ...calm, highestPh: 8.5 };
    expect(has(worst, 'harms fish')).toBe(true);
    expect(figureOf(worst, 'harms fish', 'safe')).toBeLessThan(worst.ammoniaLimit);
    expect(has({ ...calm, ph: undefined, highestPh: undefined }, 'pH is not given')).toBe(true);
  });

  it('say that stocking is too high, and what water the species needs', () => {
    expect(has({ ...calm, stockingLimit: 4 }, 'above the limit of')).toBe(true);
    expect(has({ ...calm, coldestWater: 8 }, 'below the limit of {low:temperature} for tilapia')).toBe(true);
    expect(has({ ...calm, species: 'rainbow trout' }, 'above the limit of {high:temperature} for rainbow trout')).toBe(
      true,
    );
    expect(has({ ...calm, highestPh: 9 }, 'goes outside the range of')).toBe(true);
    expect(has({ ...calm, species: undefined }, 'Species is not given')).toBe(true);
  });

  it('say that air is not there, or not enough for the worst hour or the hottest water', () => {
    expect(has({ ...calm, airSupply: 'none' }, 'There is no air supply')).toBe(true);
    expect(has({ ...calm, airSupply: undefined }, 'Air supply is not given')).toBe(true);
    expect(has({ ...calm, peakOxygenFactor: 9 }, 'not the worst hour')).toBe(true);
    expect(has({ ...calm, airSupply: 1e-9 }, '“air” carries')).toBe(true);
    expect(has({ ...calm, oxygenAtPowerFailure: 0.009 }, 'cannot maintain')).toBe(true);
  });
});

describe('cautions about solids', () => {
  it('say that water rises faster than settlers were measured at', () => {
    const fast = { ...calm, pumpFlow: 0.004 };
    expect(has(fast, 'at which a swirl settler was measured')).toBe(true);
    expect(has({ ...fast, settler: 0.6 }, 'above the overflow limit')).toBe(true);
    expect(has(calm, 'at which a swirl settler was measured')).toBe(false);
  });

  it('say what the capture depends on', () => {
    expect(has(calm, 'one trial of a')).toBe(true);
    expect(has({ ...calm, settler: 'mixed' }, 'SETTLE.JAR')).toBe(true);
    expect(has({ ...calm, settler: 0.6 }, 'captured')).toBe(false);
    expect(has({ ...calm, drums: undefined }, 'Drums are not given')).toBe(true);
  });

  it('say what replaces drums, or that nothing does', () => {
    expect(has(smallFarm, 'Gravel beds catch all the solids')).toBe(true);
    expect(has({ ...smallFarm, pads: 2 }, 'pads catch what drums would')).toBe(true);
    expect(has({ ...smallFarm, bedArea: 'none' }, 'Nothing removes solids')).toBe(true);
  });

  it('say that pads or beds fill too fast', () => {
    expect(has({ ...calm, padHolding: 0.001 }, 'Pads are full after')).toBe(true);
    expect(has({ ...calm, bedHolding: 0.01 }, 'Gravel is full')).toBe(true);
  });

  it('keep raw solids off food for 120 or 90 days', () => {
    expect(figureOf(calm, 'Solids drawn off are raw', 'touching')).toBe(120 * DAY);
    expect(figureOf(calm, 'Solids drawn off are raw', 'clear')).toBe(90 * DAY);
    expect(has(smallFarm, 'Solids drawn off are raw')).toBe(false);
  });
});

describe('cautions about handling', () => {
  it('come with electricity, a full drum and alkali, and with nothing that is not there', () => {
    for (const words of ['ground-fault', 'A full drum weighs about', 'dissolved first'])
      expect(has(calm, words)).toBe(true);
    expect(has({ ...calm, drums: 'none' }, 'A full drum weighs about')).toBe(false);
    const still = { ...calm, pumpFlow: 'none', airSupply: 'none', power: undefined } as const;
    expect(has(still, 'ground-fault')).toBe(false);
  });
});

describe('cautions about feed', () => {
  it('say that feed typed is not what the fish eat', () => {
    expect(has({ ...calm, feed: 0.5 / DAY }, 'The feed typed')).toBe(true);
    expect(has({ ...calm, feed: 0.2 / DAY }, 'The feed typed')).toBe(false);
  });

  it('say that the feeding rate is well above the published chart', () => {
    const trout = { ...calm, species: 'rainbow trout' as const, temperature: 12.8 };
    expect(has({ ...trout, feedingRate: 0.03 }, 'published chart for rainbow trout')).toBe(true);
    expect(has({ ...trout, feedingRate: 0.01 }, 'published chart')).toBe(false);
    expect(has({ ...trout, temperature: 30 }, 'published chart')).toBe(false);
  });
});
