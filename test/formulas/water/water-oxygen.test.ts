import { describe, expect, it } from 'vitest';
import { airPressure } from '../../../src/formulas/water/atmosphere';
import { oxygenAtPressure, vaporPressure, waterOxygen } from '../../../src/formulas/water/water-oxygen';
import { oxygenOracle } from '../../oracles/water-properties';

describe('airPressure', () => {
  it('follows ISO 2533: 1 atm at sea level, 0.96439 at 1000 ft, 79495 Pa at 2000 m', () => {
    expect(airPressure(0)).toBe(101325);
    expect(airPressure(304.8) / 101325).toBeCloseTo(0.96439, 5);
    expect(Math.abs(airPressure(2000) - 79495)).toBeLessThan(1);
  });
});

describe('waterOxygen', () => {
  it('gives the table of APHA Standard Methods 4500-O, fresh, salt and at 0.95 atm', () => {
    for (const [t, fresh, salt, thin] of [
      [0, 14.621, 11.446, 13.886],
      [10, 11.288, 9.024, 10.717],
      [20, 9.092, 7.396, 8.627],
      [30, 7.559, 6.237, 7.165],
    ] as const) {
      expect(Math.abs(waterOxygen(t, 0, 0) * 1e3 - fresh)).toBeLessThan(6e-4);
      expect(Math.abs(waterOxygen(t, 0, 35) * 1e3 - salt)).toBeLessThan(6e-4);
      expect(Math.abs(oxygenAtPressure(t, 0.95 * 101325, 0) * 1e3 - thin)).toBeLessThan(6e-4);
    }
  });

  it('stays within 0.01 mg/L of Garcia and Gordon’s fit as the reference library has it', () => {
    for (const [t, s, oxygen] of oxygenOracle.rows) expect(Math.abs(waterOxygen(t, 0, s) - oxygen)).toBeLessThan(1e-5);
  });

  it('falls faster than the pressure, since only the dry part of the air counts', () => {
    expect(oxygenAtPressure(20, 0.95 * 101325, 0)).toBeLessThan(0.95 * waterOxygen(20, 0, 0));
    expect(vaporPressure(100)).toBeCloseTo(1, 1);
  });

  it('falls with the pressure as APHA prints it at 40 °C, where theta is 0.000975 - 0.0005704 + 0.000103 = 0.0005076', () => {
    const vapor = vaporPressure(40);
    const kept = ((0.7 - vapor) * (1 - 0.7 * 5.0758e-4)) / ((1 - vapor) * (1 - 5.0758e-4));
    expect(oxygenAtPressure(40, 0.7 * 101325, 0) / oxygenAtPressure(40, 101325, 0)).toBeCloseTo(kept, 7);
  });

  it('falls with warmth, height and salt', () => {
    for (let t = 0; t < 40; t++) expect(waterOxygen(t + 1, 0, 0)).toBeLessThan(waterOxygen(t, 0, 0));
    expect(waterOxygen(20, 500, 0)).toBeLessThan(waterOxygen(20, 0, 0));
    for (let s = 0; s < 40; s++) expect(waterOxygen(20, 0, s + 1)).toBeLessThan(waterOxygen(20, 0, s));
  });

  it('tends to fresh water as the salt runs out', () => {
    for (const t of [0, 20, 40]) expect(waterOxygen(t, 0, 1e-9) / waterOxygen(t, 0, 0)).toBeCloseTo(1, 10);
  });
});
