import { describe, expect, it } from 'vitest';
import { Refusal } from '../../../src/formulas/refusal';
import { carbonateConstants, carbonDioxideSolubility, waterCarbonDioxide } from '../../../src/formulas/water/carbonate';
import { refusalOf } from '../refusal-of';
import { wholeRefusal } from '../whole-refusal';

describe('carbonateConstants', () => {
  it('gives pK1 6.352, pK2 10.329 and pKw 13.995 at 25 °C (Plummer and Busenberg 1982; Stumm and Morgan 1981)', () => {
    const { first, second, water } = carbonateConstants(25);
    expect(-Math.log10(first)).toBeCloseTo(6.352, 3);
    expect(-Math.log10(second)).toBeCloseTo(10.329, 3);
    expect(-Math.log10(water)).toBeCloseTo(13.995, 2);
  });
});

describe('waterCarbonDioxide', () => {
  it('is within 3 % of Tucker’s (1984) factors per alkalinity from 5 to 35 °C', () => {
    const temperatures = [5, 10, 15, 20, 25, 30, 35];
    const factors: Record<string, readonly number[]> = {
      '6.0': [2.915, 2.539, 2.315, 2.112, 1.97, 1.882, 1.839],
      '6.8': [0.462, 0.402, 0.367, 0.335, 0.313, 0.298, 0.291],
      '7.4': [0.116, 0.101, 0.092, 0.084, 0.078, 0.075, 0.073],
    };
    for (const [ph, row] of Object.entries(factors)) {
      row.forEach((factor, i) => {
        expect(Math.abs(waterCarbonDioxide(0.1, Number(ph), temperatures[i]!) / 0.1 / factor - 1)).toBeLessThan(0.03);
      });
    }
  });

  it('falls tenfold for one pH unit where bicarbonate is nearly all', () => {
    expect(waterCarbonDioxide(0.1, 6.5, 20) / waterCarbonDioxide(0.1, 7.5, 20)).toBeCloseTo(10, 0);
  });

  it('keeps carbon whole: acid, bicarbonate and carbonate add up to the alkalinity given', () => {
    const { first, second, water } = carbonateConstants(20);
    const hydrogen = 10 ** -7.3;
    const dioxide = waterCarbonDioxide(0.1, 7.3, 20) / 44.009;
    const bicarbonate = (dioxide * first) / hydrogen;
    const carbonate = (bicarbonate * second) / hydrogen;
    const alkalinity = bicarbonate + 2 * carbonate + water / hydrogen - hydrogen;
    expect((alkalinity * 100.086) / 2).toBeCloseTo(0.1, 10);
  });

  it('grows with alkalinity and falls with pH, down to nothing', () => {
    for (const t of [0, 20, 40]) {
      for (let ph = 6; ph < 9; ph += 0.5) {
        expect(waterCarbonDioxide(0.1, ph + 0.5, t)).toBeLessThan(waterCarbonDioxide(0.1, ph, t));
        expect(waterCarbonDioxide(0.2, ph, t)).toBeGreaterThan(waterCarbonDioxide(0.1, ph, t));
      }
      expect(waterCarbonDioxide(0.1, 10, t)).toBeGreaterThan(0);
      expect(waterCarbonDioxide(0.1, 10, t)).toBeLessThan(1e-4);
    }
  });

  it('is refused where hydroxide alone exceeds the alkalinity, and names what hydroxide gives', () => {
    // At 25 °C and pH 11: 10^(11 - 13.995) mol/L of hydroxide, each half a calcium carbonate of 100.086 g/mol.
    expect(refusalOf(() => waterCarbonDioxide(0.001, 11, 25))).toMatchObject({
      argument: 'alkalinity',
      advice: 'at this pH hydroxide alone gives {least:alkalinity}; give more, or measure the pH again',
      figures: { least: expect.closeTo(10 ** -2.995 * 50.043, 3) },
    });
    expect(waterCarbonDioxide(0, 7, 20)).toBeGreaterThan(-1e-9);
  });

  it('is taken a little above the least alkalinity named, and refused a little below, at any pH over neutral', () => {
    for (const ph of [7, 8, 11]) {
      const { least } = refusalOf(() => waterCarbonDioxide(0, ph, 40)).figures;
      if (typeof least !== 'number') throw new Error('no least alkalinity');
      expect(waterCarbonDioxide(least * (1 + 1e-6), ph, 40)).toBeGreaterThan(0);
      expect(() => waterCarbonDioxide(least * (1 - 1e-6), ph, 40)).toThrow(wholeRefusal);
    }
  });

  it('is refused above what an atmosphere of carbon dioxide dissolves, and says the least pH', () => {
    const refused = (alkalinity: number, ph: number) => {
      try {
        return waterCarbonDioxide(alkalinity, ph, 20);
      } catch (error) {
        if (error instanceof Refusal) return error;
        throw error;
      }
    };
    for (const alkalinity of [0, 0.02, 0.1, 1]) {
      const refusal = refused(alkalinity, 3);
      expect(refusal).toMatchObject({ argument: 'ph', reason: 'unavailable' });
      const least = refusal instanceof Refusal ? refusal.figures.least : undefined;
      // Plummer and Busenberg: pKH 1.406 at 20 °C.
      const most = refusal instanceof Refusal ? refusal.figures.most : undefined;
      expect(most).toEqual(expect.closeTo(10 ** -1.406 * 44.009, 2));
      expect(refused(alkalinity, Number(least) + 1e-6)).toBeCloseTo(carbonDioxideSolubility(20) * 44.009, 3);
    }
  });
});
