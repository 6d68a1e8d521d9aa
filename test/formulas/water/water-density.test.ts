import { describe, expect, it } from 'vitest';
import { freshWaterDensity, waterDensity } from '../../../src/formulas/water/water-density';
import { densityOracle } from '../../oracles/water-properties';

describe('waterDensity', () => {
  it('stays within 0.01 kg/m3 of TEOS-10 from 0 to 40 °C and 0 to 40 g/kg', () => {
    for (const [temperature, salinity, density] of densityOracle.rows) {
      expect(Math.abs(waterDensity(temperature, salinity) - density)).toBeLessThan(0.01);
    }
  });

  it('gives the check values of UNESCO 44 (1983), whose temperatures are on the scale of 1968', () => {
    expect(waterDensity(5 / 1.00024, 35)).toBeCloseTo(1027.67547, 3);
    expect(waterDensity(25 / 1.00024, 35)).toBeCloseTo(1023.34306, 2);
    expect(waterDensity(5 / 1.00024, 0)).toBeCloseTo(999.96675, 3);
  });

  it('is heaviest near 4 °C where it is fresh', () => {
    const at = [3.9, 3.983035, 4.1].map(freshWaterDensity);
    expect(at[1]).toBeGreaterThan(at[0]!);
    expect(at[1]).toBeGreaterThan(at[2]!);
    expect(at[1]).toBeCloseTo(999.97495, 9);
    for (let t = 4; t < 40; t++) expect(freshWaterDensity(t + 1)).toBeLessThan(freshWaterDensity(t));
  });

  it('tends to fresh water as the salt runs out, and never falls with salt', () => {
    expect(waterDensity(20, 1e-9)).toBeCloseTo(freshWaterDensity(20), 8);
    for (let s = 0; s < 40; s++) expect(waterDensity(20, s + 1)).toBeGreaterThan(waterDensity(20, s));
  });

  it('does not come from the misprint of Kell’s constant, which gives 997.94 at 20 °C', () => {
    expect(waterDensity(20, 0)).toBeCloseTo(998.2067, 4);
  });
});
