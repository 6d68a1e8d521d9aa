import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../src/formulas/refusal';
import { alkalis, dissolvesSlowly, waterDose } from '../../../src/formulas/water/alkali';
import { safeWaterDose, waterAfter, waterSteps } from '../../../src/formulas/water/alkali-dose';
import {
  airedAlkalinity,
  airedPh,
  carbonateConstants,
  carbonDioxideSolubility,
  closedPh,
} from '../../../src/formulas/water/carbonate';

import { alkaliDoseOracle } from '../../oracles/alkali-dose';

const water = { alkalinity: 0.05, ph: 6.8, temperature: 25 };

function refused(run: () => unknown): Refusal | undefined {
  try {
    run();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  return undefined;
}

describe('closedPh', () => {
  const constants = carbonateConstants(25);

  it('gives neutral water without carbon, and 10.98 to strong base of 1e-3 mol/L (water alone, pKw 13.99)', () => {
    expect(closedPh({ alkalinity: 0, carbon: 0 }, constants)).toBeCloseTo(6.997, 2);
    expect(closedPh({ alkalinity: 1e-3, carbon: 0 }, constants)).toBeCloseTo(10.995, 2);
  });

  it('gives half of pK1 + pK2 to a bicarbonate, and pK1 to one half neutralized', () => {
    expect(closedPh({ alkalinity: 0.02, carbon: 0.02 }, constants)).toBeCloseTo((6.352 + 10.329) / 2, 2);
    expect(closedPh({ alkalinity: 0.01, carbon: 0.02 }, constants)).toBeCloseTo(6.352, 2);
  });

  it('gives 5.6 to pure water in balance with air of 420 ppm, and back to no alkalinity', () => {
    const dioxide = 420e-6 * carbonDioxideSolubility(25);
    const ph = airedPh(0, dioxide, constants);
    expect(ph).toBeCloseTo(5.61, 1);
    expect(airedAlkalinity(ph, dioxide, constants)).toBeCloseTo(0, 12);
  });
});

describe('waterAfter', () => {
  it('adds as much alkalinity as the dose was calculated for, and airs to the same pH whatever the alkali', () => {
    const aired = alkalis.map((alkali) => {
      const after = waterAfter(1, water, alkali, waterDose(1, 0.05, alkali, 0.9), 0.9, undefined);
      expect(after.alkalinity).toBeCloseTo(0.1, 12);
      expect(after.unionized).toBeUndefined();
      expect(after.atOnce === undefined).toBe(dissolvesSlowly(alkali));
      return after.aired;
    });
    for (const ph of aired) expect(ph).toBeCloseTo(aired[0] ?? 0, 9);
  });

  it('leaves the pH alone where nothing is added', () => {
    const { atOnce, aired } = waterAfter(1, water, 'sodium carbonate', 0, 1, undefined);
    expect(atOnce).toBeCloseTo(6.8, 9);
    expect(aired).toBeCloseTo(6.8, 9);
  });

  it('takes un-ionized ammonia at the higher pH', () => {
    const { unionized, atOnce } = waterAfter(1, water, 'sodium hydroxide', 0.4, 1, 1e-3);
    expect(atOnce).toBeGreaterThan(11);
    expect(unionized).toBeGreaterThan(0.99e-3);
  });

  it('refuses more than fresh-water chemistry holds for', () => {
    expect(refused(() => waterAfter(1, water, 'sodium hydroxide', 40, 1, undefined))?.argument).toBe('amount');
  });
});

describe('safeWaterDose', () => {
  it('refuses a dose that passes pH 9 at once, and takes the largest that it names', () => {
    for (const alkali of [
      'sodium hydroxide',
      'calcium hydroxide',
      'sodium carbonate',
      'potassium carbonate',
    ] as const) {
      const refusal = refused(() => safeWaterDose(2, 0.05, alkali, 0.8, water));
      const step = refusal?.figures.step;
      if (typeof step !== 'object') throw new Error(`${alkali} was not refused`);
      const dose = safeWaterDose(2, step.value, alkali, 0.8, water);
      expect(waterAfter(2, water, alkali, dose, 0.8, undefined).atOnce).toBeLessThanOrEqual(9);
      expect(waterAfter(2, water, alkali, 1.02 * dose, 0.8, undefined).atOnce).toBeGreaterThan(9);
    }
  });

  it('takes bicarbonates and slow carbonates as they are', () => {
    for (const alkali of ['sodium bicarbonate', 'calcium carbonate'] as const) {
      expect(safeWaterDose(1, 0.2, alkali, 1, water)).toBe(waterDose(1, 0.2, alkali, 1));
    }
  });

  it('lets nothing be added to water at pH 9 and over', () => {
    const alkaline = { ...water, ph: 9.4 };
    expect(refused(() => safeWaterDose(1, 0.05, 'sodium hydroxide', 1, alkaline))?.advice).toContain('already');
  });
});

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

  it('names the alkalinity now where the target is not above it, and the highest where aired water passes pH 9', () => {
    expect(refused(() => waterSteps(1, water, 0.05, 'sodium bicarbonate', 0.2, 1))?.figures).toEqual({
      alkalinity: 0.05,
    });
    const stripped = { ...water, ph: 8.8 };
    const highest = refused(() => waterSteps(1, stripped, 0.4, 'sodium bicarbonate', 0.2, 1))?.figures.highest;
    if (typeof highest !== 'object') throw new Error('was not refused');
    expect(waterSteps(1, stripped, highest.value, 'sodium bicarbonate', 0.2, 1).at(-1)?.aired).toBeLessThanOrEqual(9);
  });

  it('refuses a plan of over a year', () => {
    expect(
      refused(() => waterSteps(1, { ...water, alkalinity: 0.001, ph: 5.2 }, 2, 'sodium hydroxide', 0.01, 1))?.argument,
    ).toBe('most');
  });
});

describe('waterAfter beside a general-purpose geochemistry program', () => {
  // It lowers the activity of ions, at 1 to 5 mmol/L of salts, and pairs calcium with carbonate; ours leaves both out.
  it.each(alkaliDoseOracle.rows)(
    '%d °C, pH %d, %d mg/L, %s, rise %d mg/L',
    (temperature, ph, alkalinity, alkali, rise, atOnce, aired) => {
      const before = { temperature, ph, alkalinity: alkalinity / 1000 };
      const after = waterAfter(1, before, alkali, waterDose(1, rise / 1000, alkali, 1), 1, undefined);
      expect(Math.abs((after.atOnce ?? 0) - atOnce)).toBeLessThan(alkali === 'calcium hydroxide' ? 0.21 : 0.1);
      expect(Math.abs(after.aired - aired)).toBeLessThan(0.02);
    },
  );
});
