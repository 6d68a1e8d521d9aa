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
  withOneScenario([...bare, ...more], metric, (scenario) => scenario);
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
});
