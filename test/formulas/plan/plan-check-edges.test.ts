import { describe, expect, it } from 'vitest';
import { planCheck } from '../../../src/formulas/plan/plan-check';
import { planFarm } from '../../../src/formulas/plan/plan-farm';
import { planLimit } from '../../../src/formulas/plan/plan-limit';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { settleCapture } from '../../../src/formulas/settle/settle-capture';
import { chartedSpecies, stockFeedRate } from '../../../src/formulas/stock/stock-feed-rate';
import { fishKinds, fishLimits, survivalRange } from '../../../src/formulas/water/water-species';
import { bare, DAY, factors, farm, smallFarm } from './plan-farm';

/** 40 tilapia of 250 g at 2 % a day: 200 g of feed a day, within every limit. */
const calm: Scenario = { ...farm, fishCount: 40, temperature: 25, coldestWater: 22, hottestWater: 28 };
const found = (change: Partial<Scenario>, words: string) =>
  planCheck({ ...calm, ...change }, factors).find(({ text }) => text.includes(words));
const has = (change: Partial<Scenario>, words: string) => found(change, words) !== undefined;

describe('every caution', () => {
  it.each<[string, Partial<Scenario>]>([
    ['bad water', { hottestWater: 39, coldestWater: 5, highestPh: 9.5, ph: 5, stockingLimit: 1 }],
    ['water in which fish grow poorly', { coldestWater: 16, hottestWater: 34, oxygenAtPowerFailure: 0.002 }],
    ['full pads and gravel', { padHolding: 0.001, bedHolding: 0.01, drums: undefined, settler: 'mixed' }],
    ['nothing that removes solids', { ...smallFarm, bedArea: 'none' }],
    ['closed water and small media', { drums: 'none', waterOut: 0, mediaVolume: 0.01 }],
    ['feed that is not eaten', { feed: 1 / DAY, feedingRate: 0.2, species: 'rainbow trout', temperature: 12.8 }],
    ['figures that cannot be right', { conversion: 0.3, overflowLimit: 0.0001, settler: 0.5 }],
    ['fast water in the drums', { pumpFlow: 0.01 }],
    ['water too hot for the oxygen wanted', { hottestWater: 38, oxygenAtPowerFailure: 0.009 }],
  ])('has a figure for each of its marks, with %s', (_, change) => {
    const silent = planCheck({ ...calm, ...change }, factors).flatMap(({ text, figures = {} }) =>
      [...text.matchAll(/\{(\w+)/g)].map(([, mark = '']) => mark).filter((mark) => figures[mark] === undefined),
    );
    expect(silent).toEqual([]);
  });
});

describe('each caution', () => {
  it('is a sentence', () => {
    const changes: readonly Partial<Scenario>[] = [
      {},
      bare,
      { fishMass: undefined, feed: 1 / DAY },
      { pads: 'none', bedArea: 'none' },
      { feed: 1 },
      { drums: 'none', waterOut: 0, mediaVolume: 0.01 },
      { conversion: 0.3, settler: 0.5 },
    ];
    // A capital, and words rather than a name with a colon: `pads: carries …` is no sentence.
    for (const change of changes)
      for (const { text } of planCheck({ ...calm, ...change }, factors)) {
        expect(text).toMatch(/^\p{Lu}.* .*\.$/u);
        expect(text).not.toMatch(/^[\w ,-]{1,40}: carries/);
      }
  });
});

describe('stages that carry less than the feed', () => {
  it('are those beyond a rounding of it', () => {
    const capacity = planLimit(planFarm(calm, factors)).first?.capacity as number;
    const over = (feed: number) => has({ feed }, 'of feed, but you feed');
    expect([over(capacity * (1 + 5e-10)), over(capacity * (1 + 1e-6))]).toEqual([false, true]);
  });

  it('leave solids that nothing removes to their own caution, and no other stage that carries nothing', () => {
    const solids = { pads: 'none', bedArea: 'none' } as const;
    expect(has(solids, '“circulation, solids” carries')).toBe(false);
    expect(has(solids, 'The first limit is')).toBe(false);
    expect(has({ solidsLimit: 1e-4 }, '“circulation, solids” carries')).toBe(true);
    expect(has({ hottestWater: 38, oxygenAtPowerFailure: 0.007 }, '“air” carries')).toBe(true);
  });

  it('or the first limit, with the next if there is one', () => {
    expect(has({}, 'The first limit is')).toBe(true);
    expect(has({}, 'The next limit is')).toBe(true);
    const one = { ...bare, bedArea: 10 };
    expect(has(one, 'The first limit is “plant beds”')).toBe(true);
    const air = { ...bare, airSupply: 1e-3 };
    expect(found(air, 'The first limit is “air”')?.text).not.toContain('The next limit');
    expect(has(bare, 'The first limit is')).toBe(false);
  });
});

describe('cautions with something left out', () => {
  it('of feed need fish, their mass and a rate', () => {
    const typed = { feed: 0.5 / DAY };
    expect(has(typed, 'The feed typed')).toBe(true);
    for (const absent of [{ fishCount: undefined }, { fishMass: undefined }, { feedingRate: undefined }])
      expect(has({ ...typed, ...absent }, 'The feed typed')).toBe(false);
    expect(has({}, 'The feed typed')).toBe(false);
  });

  it('of the feeding rate give it and that of the chart in per cent', () => {
    const trout = { species: 'rainbow trout', temperature: 12.8, feedingRate: 0.03 } as const;
    const figures = found(trout, 'published chart')?.figures;
    expect(figures?.rate).toBeCloseTo(3, 12);
    expect(figures?.chart).toBeCloseTo(100 * stockFeedRate('rainbow trout', 0.25, 12.8), 12);
  });

  it('of electricity come with a pump, air or a motor', () => {
    const still = { pumpFlow: 'none', airSupply: 'none', power: undefined } as const;
    expect(has(still, 'ground-fault')).toBe(false);
    for (const one of [{ pumpFlow: 0.001 }, { airSupply: 0.001 }, { power: 50 }])
      expect(has({ ...still, ...one }, 'ground-fault')).toBe(true);
  });

  it('of pH need one', () => {
    const [acid, alkaline] = fishLimits('tilapia').ph;
    const words = 'goes outside the range of {low} to {high}';
    expect(has({ ph: undefined, highestPh: undefined }, words)).toBe(false);
    expect(has({ ph: undefined, highestPh: alkaline + 0.1 }, words)).toBe(true);
    expect(has({ ph: acid - 0.1, highestPh: alkaline }, words)).toBe(true);
  });

  it('of air need a supply that covers the mean of the day but not its worst hour', () => {
    const covers = (times: number) => {
      const air = planLimit(planFarm(calm, factors)).rows.find(({ stage }) => stage === 'air')?.capacity as number;
      return has({ airSupply: ((calm.airSupply as number) * times * 0.2) / DAY / air }, 'Air covers');
    };
    expect([0.99, 1.01, 1.49, 1.51].map(covers)).toEqual([false, true, true, false]);
    expect(has({ airSupply: 'none' }, 'Air covers')).toBe(false);
  });

  it('of growth come only where the fish survive, to the ends of their range', () => {
    const [low, high] = survivalRange('tilapia');
    const [coldestWater] = fishLimits('tilapia').growsBest;
    expect([low - 0.1, low, low + 0.1].map((water) => has({ coldestWater: water }, 'grow poorly'))).toEqual([
      false,
      true,
      true,
    ]);
    expect(
      [high - 0.1, high, high + 0.1].map((water) => has({ coldestWater, hottestWater: water }, 'grow poorly')),
    ).toEqual([true, true, false]);
  });

  it('of rising water need drums and a flow, and name the settler that was measured', () => {
    const fast = { pumpFlow: 0.01 };
    expect(has({ ...fast, settler: 'radial' }, 'at which a radial settler was measured')).toBe(true);
    expect(has({ ...fast, settler: 'swirl' }, 'at which a swirl settler was measured')).toBe(true);
    expect(has({ ...fast, settler: 'mixed' }, 'above the overflow limit')).toBe(true);
    for (const absent of [{ pumpFlow: 'none' }, { drums: undefined }, { drumDiameter: undefined }] as const)
      expect(has({ ...fast, ...absent }, 'Water rises in the drums')).toBe(false);
  });

  it('of what drums capture name the share of one pass and say how it is known', () => {
    // Swirl separators are taken to capture 0.4, radial ones 0.8.
    expect(found({ settler: 'swirl' }, 'one trial of a swirl settler')?.figures?.share).toBeCloseTo(0.4, 12);
    expect(found({ settler: 'radial' }, 'one trial of a radial settler')?.figures?.share).toBeCloseTo(0.8, 12);
    const computed = { overflow: 0.04 / 60, median: 0.017, spread: 2.5, settleable: 0.5, inLine: 1 };
    for (const [settler, mixing] of [
      ['mixed', 1],
      ['ideal', 'ideal'],
    ] as const) {
      const share = found({ settler }, 'captured in one pass, {share:share}, is calculated at')?.figures?.share;
      expect(share).toBeCloseTo(settleCapture({ ...computed, mixing }), 6);
    }
    expect(has({ settler: 0.6 }, 'captured in one pass')).toBe(false);
  });

  it('of gravel and of food come with beds', () => {
    expect(has({ bedArea: undefined, bedHolding: 0.01 }, 'Gravel is full')).toBe(false);
    expect(has({}, 'Keep tank water and raw solids off leaves')).toBe(true);
    expect(has({ bedArea: 'none' }, 'Keep tank water and raw solids off leaves')).toBe(false);
  });

  it('of a published chart need a species that has one', () => {
    const fed = { feedingRate: 0.2, temperature: 12.8 };
    expect(has({ ...fed, species: 'rainbow trout' }, 'published chart for rainbow trout')).toBe(true);
    for (const species of fishKinds.filter((one) => !chartedSpecies.some((name) => name === one)))
      expect(has({ ...fed, species }, 'published chart')).toBe(false);
  });
});
