import { describe, expect, it } from 'vitest';
import { feedAtLimit } from '../../../src/formulas/plan/plan-circulation';
import { planFarm } from '../../../src/formulas/plan/plan-farm';
import { planLimit } from '../../../src/formulas/plan/plan-limit';
import { planResults } from '../../../src/formulas/plan/plan-results';
import type { Scenario } from '../../../src/formulas/plan/plan-scenario';
import { farm as base, factors, milligrams } from './plan-farm';

const farm: Scenario = { ...base, degassing: 0.5, waterOut: 0.3, mediaVolume: 1 };
const feedAt = (scenario: Scenario, stage: string) =>
  planLimit(planFarm(scenario, factors)).rows.find((row) => row.stage === `circulation, ${stage}`)?.capacity;

/** The level of a waste at the feed at which it should be at its limit. */
function levelThere(
  scenario: Scenario,
  stage: string,
  level: 'carbonDioxideInTank' | 'ammoniaInTank' | 'unionizedAmmonia' | 'solidsInTank',
): number {
  const feed = feedAt(scenario, stage);
  if (typeof feed !== 'number') throw new Error(`no feed for ${stage}`);
  return planResults({ ...scenario, feed }, factors)[level] as number;
}

describe('the feed at which a waste is at its limit', () => {
  it.each<[string, Partial<Scenario>]>([
    ['bicarbonate', {}],
    ['hydroxide', { alkali: 'calcium hydroxide' }],
    ['little degassing', { degassing: 0.1 }],
    ['a high limit', { carbonDioxideLimit: 60 * milligrams }],
    ['small media', { mediaVolume: 0.1 }],
    ['small media and hydroxide', { mediaVolume: 0.1, alkali: 'calcium hydroxide' }],
    ['much water let out', { waterOut: 3 }],
    ['a warm tank', { temperature: 28, hottestWater: 28 }],
  ])('brings carbon dioxide there, with %s', (_, change) => {
    const scenario = { ...farm, ...change };
    const level = levelThere(scenario, 'carbon dioxide', 'carbonDioxideInTank');
    expect(level / scenario.carbonDioxideLimit).toBeCloseTo(1, 9);
  });

  it.each<[string, Partial<Scenario>]>([
    ['large media', {}],
    ['small media', { mediaVolume: 0.1 }],
    ['much water let out', { waterOut: 3 }],
  ])('brings ammonia and solids there, with %s', (_, change) => {
    const scenario = { ...farm, ...change };
    expect(levelThere(scenario, 'ammonia', 'ammoniaInTank') / scenario.ammoniaLimit).toBeCloseTo(1, 9);
    const unionized = levelThere(scenario, 'un-ionized ammonia', 'unionizedAmmonia');
    expect(unionized / scenario.unionizedAmmoniaLimit).toBeCloseTo(1, 9);
    expect(levelThere(scenario, 'solids', 'solidsInTank') / scenario.solidsLimit).toBeCloseTo(1, 9);
  });

  it('is 0 where water in balance with air has more carbon dioxide than is allowed', () => {
    // At 420 ppm and 20 °C fresh water holds 0.7 mg/L.
    expect(feedAt({ ...farm, carbonDioxideLimit: 0.5 * milligrams }, 'carbon dioxide')).toBe(0);
    expect(feedAt({ ...farm, carbonDioxideLimit: 1 * milligrams }, 'carbon dioxide')).toBeGreaterThan(0);
  });

  it('is not given without what it needs', () => {
    expect(feedAt({ ...farm, degassing: undefined }, 'carbon dioxide')).toBeUndefined();
    expect(feedAt({ ...farm, oxygenIn: 0.009 }, 'oxygen')).toBe('not given');
    expect(feedAt({ ...farm, oxygenOut: 0.006 }, 'oxygen')).toBe('not given');
    expect(feedAt({ ...farm, ph: undefined, highestPh: undefined }, 'un-ionized ammonia')).toBe('not given');
  });
});

describe('the feed at a limit, at its ends', () => {
  const at = (change: Partial<Scenario>, more: Partial<typeof factors> = {}) => {
    const there = planFarm({ ...farm, ...change }, { ...factors, ...more });
    return feedAtLimit(there, there.balance);
  };

  it('is left out where an input is', () => {
    expect(at({ degassing: undefined }).carbonDioxide).toBeUndefined();
    expect(at({ highestPh: undefined }).unionizedAmmonia).toBeUndefined();
    expect(at({ oxygenIn: 0.009 }).oxygen).toBeUndefined();
    expect(at({ oxygenOut: 0.006 }).oxygen).toBeUndefined();
    expect(at({ oxygenIn: 0.009, oxygenOut: 0.006 }).oxygen).toBeGreaterThan(0);
  });

  it('is without end where the slurry carries all ammonia away at its limit', () => {
    // Slurry of 0.05 % solids holds 105 L of water a day, and that 105 g at 1 kg/m3; 20 g are made.
    expect(at({ ammoniaLimit: 1, slurrySolids: 0.0005 }).ammonia).toBe(Number.POSITIVE_INFINITY);
    expect(at({ ammoniaLimit: 0.1, slurrySolids: 0.0005 }).ammonia).toBeLessThan(Number.POSITIVE_INFINITY);
  });

  it('is set by the media where they nitrify less than the flow brings: 28.8 g a day, or 58 m2', () => {
    expect(at({ mediaVolume: 57 / 300 }).ammoniaByMedia).toBe(true);
    expect(at({ mediaVolume: 58 / 300 }).ammoniaByMedia).toBe(false);
  });

  it('comes with the share of the solids that nothing removes: the half that does not settle', () => {
    const none = { pads: 'none', bedArea: 'none', waterOut: 0, solidsDecay: 0 } as const;
    expect(at(none)).toMatchObject({ solids: 0, rising: 0.5 });
    expect(at({}).rising).toBe(0);
  });

  // Hydroxide binds 44/14 x 2 of what is nitrified, 0.04 of the feed: 0.1828 of it as oxygen.
  it('of carbon dioxide is far off, or without end, where hydroxide binds most of it, or more than all', () => {
    const hydroxide = { alkali: 'calcium hydroxide', waterOut: 0, drums: 'none', mediaVolume: undefined } as const;
    const oxygenRatio = 0.25;
    const feed = at(hydroxide, { oxygenRatio }).carbonDioxide as number;
    const { carbonDioxideInTank } = planResults({ ...farm, ...hydroxide, feed }, { ...factors, oxygenRatio });
    expect((carbonDioxideInTank as number) / farm.carbonDioxideLimit).toBeCloseTo(1, 8);
    expect(at(hydroxide, { oxygenRatio: 0.15 }).carbonDioxide).toBe(Number.POSITIVE_INFINITY);
  });
});
