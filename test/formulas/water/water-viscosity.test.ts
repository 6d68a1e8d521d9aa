import { describe, expect, it } from 'vitest';
import { freshWaterViscosity, waterViscosity } from '../../../src/formulas/water/water-viscosity';
import { viscosityOracle } from '../../oracles/water-properties';

describe('waterViscosity', () => {
  it('stays within 0.005 % of IAPWS R12-08 from 0 to 40 °C', () => {
    for (const [temperature, viscosity] of viscosityOracle.rows) {
      expect(Math.abs(freshWaterViscosity(temperature) / viscosity - 1)).toBeLessThan(5e-5);
    }
  });

  it('gives the check value of IAPWS SR6-08, 889.996773679 µPa·s at 298.15 K', () => {
    expect(freshWaterViscosity(25) * 1e6).toBeCloseTo(889.996773679, 8);
  });

  it('is within 0.05 % of Sharqawy et al. (2010) at 35 g/kg, on their own fresh water', () => {
    for (const [t, published] of [
      [10, 1.39677e-3],
      [20, 1.07663e-3],
      [25, 0.95883e-3],
    ] as const) {
      expect(Math.abs(waterViscosity(t, 35) / published - 1)).toBeLessThan(5e-4);
    }
  });

  it('is 1.08399 times that of fresh water at 40 °C and 35 g/kg: A = 2.18788, B = 5.70544, S = 0.03516504', () => {
    expect(waterViscosity(40, 35) / freshWaterViscosity(40)).toBeCloseTo(1.0839921, 6);
  });

  it('falls with warmth and rises with salt', () => {
    for (let t = 0; t < 40; t++) {
      expect(waterViscosity(t + 1, 10)).toBeLessThan(waterViscosity(t, 10));
      expect(waterViscosity(t, 11)).toBeGreaterThan(waterViscosity(t, 10));
    }
    expect(waterViscosity(20, 1e-9)).toBeCloseTo(freshWaterViscosity(20), 12);
  });
});
