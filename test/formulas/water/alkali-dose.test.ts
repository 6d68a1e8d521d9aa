import { describe, expect, it } from 'vitest';
import { alkalis, dissolvesSlowly, waterDose } from '../../../src/formulas/water/alkali';
import { safeWaterDose, waterAfter } from '../../../src/formulas/water/alkali-dose';
import {
  airedAlkalinity,
  airedPh,
  carbonateConstants,
  carbonDioxideSolubility,
  closedPh,
} from '../../../src/formulas/water/carbonate';
import { unionizedShare } from '../../../src/formulas/water/water-ammonia';
import { alkaliDoseOracle } from '../../oracles/alkali-dose';
import { refusalOf } from '../refusal-of';

const water = { alkalinity: 0.05, ph: 6.8, temperature: 25 };

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
    expect(unionized).toBeLessThan(1e-3);
  });

  it('takes un-ionized ammonia at the aired pH where the alkali has no pH at once', () => {
    const { unionized, aired } = waterAfter(1, water, 'calcium carbonate', 0.01, 1, 1e-3);
    expect(unionized).toBeCloseTo(1e-3 * unionizedShare(aired, 25, 0), 12);
    expect(unionized).toBeLessThan(1e-5);
  });

  it('goes up to 2.5 kg/m3 as CaCO3, the end of fresh-water chemistry, and refuses more', () => {
    const to = (alkalinity: number) => () =>
      waterAfter(1, water, 'calcium carbonate', alkalinity - water.alkalinity, 1, undefined);
    expect(to(2.499)().alkalinity).toBeCloseTo(2.499, 9);
    expect(refusalOf(to(2.501))).toMatchObject({
      argument: 'amount',
      advice: 'it raises alkalinity above {most:alkalinity}, where fresh-water chemistry is no longer valid',
      figures: { most: 2.5 },
    });
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
      const { step, most } = refusalOf(() => safeWaterDose(2, 0.05, alkali, 0.8, water)).figures;
      if (typeof step !== 'object') throw new Error(`${alkali} has no step`);
      const dose = safeWaterDose(2, step.value, alkali, 0.8, water);
      // Both figures are rounded down to three digits.
      expect(Math.abs(Number(most) / dose - 1)).toBeLessThan(0.02);
      for (const amount of [dose, Number(most)]) {
        expect(waterAfter(2, water, alkali, amount, 0.8, undefined).atOnce).toBeLessThanOrEqual(9);
        expect(waterAfter(2, water, alkali, 1.02 * amount, 0.8, undefined).atOnce).toBeGreaterThan(9);
      }
    }
  });

  it('says what pH the dose would raise the water to, in tenths', () => {
    const amount = waterDose(2, 0.05, 'sodium hydroxide', 0.8);
    const ph = waterAfter(2, water, 'sodium hydroxide', amount, 0.8, undefined).atOnce ?? 0;
    const refusal = refusalOf(() => safeWaterDose(2, 0.05, 'sodium hydroxide', 0.8, water));
    expect(refusal).toMatchObject({
      argument: 'rise',
      advice:
        'this dose would raise the pH to {atOnce} at once; at most {most:portion}, a rise of {step}, stays below pH 9: dose in steps, see WATER.STEPS',
      figures: { atOnce: Number(ph.toFixed(1)), most: expect.any(Number), step: { like: 'rise' } },
    });
    expect(ph).toBeGreaterThan(9);
    expect(ph).toBeLessThan(14);
  });

  it('takes bicarbonates and slow carbonates as they are', () => {
    for (const alkali of ['sodium bicarbonate', 'calcium carbonate'] as const) {
      expect(safeWaterDose(1, 0.2, alkali, 1, water)).toBe(waterDose(1, 0.2, alkali, 1));
    }
  });

  it('needs no pH of slow carbonates, so that none of their doses is refused', () => {
    const acid = { ...water, ph: 3 };
    for (const alkali of ['calcium carbonate', 'calcium magnesium carbonate'] as const) {
      expect(safeWaterDose(1, 3, alkali, 1, acid)).toBe(waterDose(1, 3, alkali, 1));
    }
    expect(refusalOf(() => safeWaterDose(1, 0.1, 'sodium bicarbonate', 1, acid)).argument).toBe('ph');
  });

  it('goes up to 2.5 kg/m3 as CaCO3 in all, and refuses more', () => {
    expect(safeWaterDose(1, 2, 'sodium bicarbonate', 1, { ...water, alkalinity: 0.5 })).toBeGreaterThan(3);
    expect(
      refusalOf(() => safeWaterDose(1, 2.001, 'sodium bicarbonate', 1, { ...water, alkalinity: 0.5 })),
    ).toMatchObject({ argument: 'rise', figures: { most: 2.5 } });
  });

  it('lets nothing be added to water at pH 9 and over, not even a bicarbonate', () => {
    for (const ph of [9.2, 9.4]) {
      for (const alkali of ['sodium hydroxide', 'sodium carbonate', 'sodium bicarbonate'] as const) {
        expect(refusalOf(() => safeWaterDose(1, 0.001, alkali, 1, { ...water, ph }))).toMatchObject({
          argument: 'rise',
          advice: 'the water already has pH {ph}, so no dose of this alkali is safe; air it first',
          figures: { ph },
        });
      }
    }
    for (let alkalinity = 0.02; alkalinity < 0.5; alkalinity += 0.01) {
      const full = { ...water, ph: 9, alkalinity };
      expect(refusalOf(() => safeWaterDose(1, 0.05, 'sodium hydroxide', 1, full)).figures).toEqual({ ph: 9 });
    }
  });

  it('takes a rise of nothing as no dose, whatever the pH', () => {
    expect(safeWaterDose(1, 0, 'sodium hydroxide', 1, { ...water, ph: 9.4 })).toBe(0);
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
