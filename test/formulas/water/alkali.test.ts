import { describe, expect, it } from 'vitest';
import { filterAlkalinity } from '../../../src/formulas/filter/nitrification';
import { alkaliStrength, alkalis, dissolvesSlowly, waterBuffer, waterDose } from '../../../src/formulas/water/alkali';
import { oxygenTime } from '../../../src/formulas/water/oxygen-time';
import { wholeRefusal } from '../whole-refusal';

describe('alkaliStrength', () => {
  it('gives the equivalents of water-treatment handbooks: hydrated lime 1.35, soda ash 0.94, baking soda 0.60', () => {
    expect(alkaliStrength('calcium hydroxide')).toBeCloseTo(1.35, 2);
    expect(alkaliStrength('sodium carbonate')).toBeCloseTo(0.944, 3);
    expect(alkaliStrength('sodium bicarbonate')).toBeCloseTo(0.5957, 4);
    expect(alkaliStrength('sodium hydroxide')).toBeCloseTo(1.25, 2);
    expect(alkaliStrength('calcium magnesium carbonate')).toBeCloseTo(1.09, 2);
    expect(alkaliStrength('calcium carbonate')).toBe(1);
  });
});

describe('dissolvesSlowly', () => {
  it('is true of limestone and dolomite, and of no other', () => {
    expect(alkalis.filter(dissolvesSlowly)).toEqual(['calcium carbonate', 'calcium magnesium carbonate']);
  });
});

describe('waterBuffer', () => {
  it('takes 12 g of sodium bicarbonate and 7.14 g of calcium carbonate a gram of nitrogen', () => {
    expect(waterBuffer(1, 'sodium bicarbonate', 1)).toBeCloseTo(12, 1);
    expect(waterBuffer(1, 'calcium carbonate', 1)).toBeCloseTo(7.14, 1);
  });

  it('takes more of what is less pure', () => {
    for (const alkali of alkalis) {
      expect(waterBuffer(1, alkali, 0.5)).toBeCloseTo(2 * waterBuffer(1, alkali, 1), 12);
    }
  });
});

describe('waterDose', () => {
  it('takes 1.68 g of sodium bicarbonate to raise a liter by 1000 mg/L as CaCO3', () => {
    expect(waterDose(1, 1, 'sodium bicarbonate', 1)).toBeCloseTo(1.6787, 3);
  });
});

describe('waterBuffer and waterDose', () => {
  it('are one: what nitrifying takes out of a cubic meter, the buffer puts back', () => {
    for (const alkali of alkalis) {
      expect(waterDose(1, filterAlkalinity(3e-3), alkali, 0.9) / waterBuffer(3e-3, alkali, 0.9)).toBeCloseTo(1, 12);
    }
  });
});

describe('oxygenTime', () => {
  it('divides the oxygen above the floor by the demand', () => {
    expect(oxygenTime(1, 0.007, 0.003, 0.004 / 3600, 1)).toBeCloseTo(3600, 9);
    expect(oxygenTime(1, 0.007, 0.003, 0.004 / 3600, 2)).toBeCloseTo(1800, 9);
  });

  it('grows with water and oxygen and falls to nothing at the floor', () => {
    const time = (volume: number, oxygen: number) => oxygenTime(volume, oxygen, 0.003, 1e-6, 1.5);
    expect(time(2, 0.007) / time(1, 0.007)).toBeCloseTo(2, 12);
    expect(time(1, 0.008)).toBeGreaterThan(time(1, 0.007));
    expect(time(1, 0.003 * (1 + 1e-9))).toBeLessThan(1e-4);
  });

  it('cannot start at the floor', () => {
    expect(() => oxygenTime(1, 0.003, 0.003, 1e-6, 1)).toThrow(wholeRefusal);
  });
});
