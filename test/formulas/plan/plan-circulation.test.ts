import { describe, expect, it } from 'vitest';
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
