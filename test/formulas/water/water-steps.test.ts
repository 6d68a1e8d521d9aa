import { describe, expect, it } from 'vitest';
import { alkalis, waterDose } from '../../../src/formulas/water/alkali';
import { waterSteps } from '../../../src/formulas/water/alkali-dose';
import { refusalOf } from '../refusal-of';

const water = { alkalinity: 0.05, ph: 6.8, temperature: 25 };

describe('waterSteps', () => {
  it('reaches the target, never by more than the step, and adds up to the whole dose', () => {
    for (const alkali of alkalis) {
      const steps = waterSteps(3, water, 0.12, alkali, 0.15, 0.95);
      let start = water.ph;
      for (const { atOnce, aired } of steps) {
        expect(Math.max(atOnce ?? aired, aired) - start).toBeLessThanOrEqual(0.15 + 1e-9);
        start = aired;
      }
      expect(steps.at(-1)?.alkalinity).toBeCloseTo(0.12, 12);
      expect(steps.map(({ day }) => day)).toEqual(steps.map((_, i) => i + 1));
      const all = steps.reduce((sum, { amount }) => sum + amount, 0);
      expect(all).toBeCloseTo(waterDose(3, 0.07, alkali, 0.95), 9);
    }
  });

  it('leaves no crumb for a last day, whatever the target', () => {
    for (const alkali of ['sodium bicarbonate', 'sodium carbonate', 'sodium hydroxide'] as const) {
      for (let target = 0.055; target < 0.13; target += 0.0037) {
        const steps = waterSteps(1, water, target, alkali, 0.3, 1);
        expect(Math.min(...steps.map(({ amount }) => amount))).toBeGreaterThan(1e-9);
      }
    }
  });

  it('names the alkalinity now where the target is not above it, and the highest where aired water passes pH 9', () => {
    expect(refusalOf(() => waterSteps(1, water, 0.05, 'sodium bicarbonate', 0.2, 1)).figures).toEqual({
      alkalinity: 0.05,
    });
    const stripped = { ...water, ph: 8.8 };
    const { highest } = refusalOf(() => waterSteps(1, stripped, 0.4, 'sodium bicarbonate', 0.2, 1)).figures;
    if (typeof highest !== 'number') throw new Error('no highest target');
    expect(waterSteps(1, stripped, highest, 'sodium bicarbonate', 0.2, 1).at(-1)?.aired).toBeLessThanOrEqual(9);
  });

  it('refuses a plan of over a year', () => {
    expect(
      refusalOf(() => waterSteps(1, { ...water, alkalinity: 0.001, ph: 5.2 }, 2, 'sodium hydroxide', 0.01, 1)).argument,
    ).toBe('most');
  });
});
