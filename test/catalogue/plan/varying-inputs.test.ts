import { describe, expect, it } from 'vitest';
import { scenarioFactors, withOneScenario } from '../../../src/catalogue/plan/scenario';
import { varyingInputs } from '../../../src/catalogue/plan/varying-inputs';
import { planResults } from '../../../src/formulas/plan/plan-results';
import { readProfile } from '../../../src/units/profile';

const metric = readProfile('metric');
const bare = [
  ['feed', 2],
  ['pump flow', 100],
  ['pads', 4],
  ['pad area', '0.3 m2'],
  ['tank volume', 4000],
  ['air supply', 1],
] as const;
const read = (...more: readonly (readonly [string, string | number])[]) =>
  withOneScenario([...new Map([...bare, ...more])], metric, (scenario) => scenario);
const names = (...more: readonly (readonly [string, string | number])[]) =>
  varyingInputs(read(...more)).map(({ name }) => name);

describe('what varies in a scenario', () => {
  it('is coefficients left at their default, and neither limits nor choices nor what was typed', () => {
    const all = names();
    for (const name of [
      'solids share',
      'protein',
      'removal',
      'solids decay',
      'ammonia factor',
      'swirl capture',
      'media',
    ])
      expect(all).toContain(name);
    for (const name of [
      'ammonia limit',
      'solids limit',
      'stocking limit',
      'oxygen floor',
      'filter reserve',
      'garden need',
      'settler',
      'radial capture',
      'feed',
      'water out',
    ])
      expect(all).not.toContain(name);
    expect(names(['protein', '40 %'])).not.toContain('protein');
    expect(names(['settler', 'radial'])).toContain('radial capture');
    expect(names(['settler', 0.5])).not.toContain('swirl capture');
  });

  it('gives back the plan when put in at the plan, and something else at either end', () => {
    const given = read();
    const { scenario } = given;
    const plan = planResults(scenario, scenarioFactors);
    let moved = 0;
    for (const { low, plan: typical, high, put } of varyingInputs(given)) {
      expect(low).toBeLessThanOrEqual(typical);
      expect(typical).toBeLessThanOrEqual(high);
      const at = (si: number) => {
        const drawn = { scenario: { ...scenario }, factors: { ...scenarioFactors } };
        put(drawn, si);
        return planResults(drawn.scenario, drawn.factors);
      };
      expect(at(typical)).toEqual(plan);
      if (low < high && JSON.stringify(at(low)) !== JSON.stringify(at(high))) moved++;
    }
    expect(moved).toBeGreaterThan(15);
  });

  it('is the feed of a crop that is typed as a range: 2 kg on 40 to 50 g a square meter', () => {
    const given = read(['crop', '40 to 50 g/m2/d']);
    const crop = varyingInputs(given).find(({ name }) => name === 'crop')!;
    const bedsAt = (si: number) => {
      const drawn = { scenario: { ...given.scenario }, factors: { ...scenarioFactors } };
      crop.put(drawn, si);
      return planResults(drawn.scenario, drawn.factors).bedArea;
    };
    expect(bedsAt(crop.low)).toBeCloseTo(2 / 0.04, 9);
    expect(bedsAt(crop.high)).toBeCloseTo(2 / 0.05, 9);
  });
});

describe('a scenario', () => {
  it('may have a volume or a pH without the one that it is compared with', () => {
    expect(read(['system volume', 'none']).scenario.systemVolume).toBe('none');
    expect(read(['tank volume', 'none'], ['system volume', 6000]).scenario.tankVolume).toBe('none');
    expect(read(['highest pH', 8]).scenario).toMatchObject({ ph: undefined, highestPh: 8 });
    expect(() => read(['system volume', 3000])).toThrow('tank volume: 4000 L is not allowed; give up to system volume');
    expect(() => read(['pH', 8], ['highest pH', 7])).toThrow('pH: 8 is not allowed; give up to highest pH (7)');
  });
});
