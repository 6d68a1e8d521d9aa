import { describe, expect, it } from 'vitest';
import { airPressure } from '../../../src/formulas/water/atmosphere';
import { airCarbonDioxide, systemCarbonDioxide } from '../../../src/formulas/water/carbon-dioxide-air';

describe('airCarbonDioxide', () => {
  it('is 0.63 mg/L at 25 °C and sea level: 10^-1.468 mol/L under an atmosphere x 420 ppm x 44.009 g/mol', () => {
    expect(airCarbonDioxide(25, 0)).toBeCloseTo(10 ** -1.468 * 4.2e-4 * 44.009, 5);
  });

  it('falls with warmth, and with height as the air pressure does', () => {
    for (let t = 0; t < 40; t++) expect(airCarbonDioxide(t + 1, 0)).toBeLessThan(airCarbonDioxide(t, 0));
    expect(airCarbonDioxide(20, 2000) / airCarbonDioxide(20, 0)).toBeCloseTo(airPressure(2000) / 101325, 12);
  });
});

describe('systemCarbonDioxide', () => {
  it('is 44 g for 32 g of oxygen where bicarbonate is dosed, whatever is nitrified', () => {
    for (const nitrified of [0, 0.001, 0.005]) {
      expect(systemCarbonDioxide(0.032, nitrified, 'sodium bicarbonate')).toBeCloseTo(0.044, 4);
    }
  });

  it('is 3.14 g a gram of nitrogen less where carbonate is dosed, and 6.28 g less where hydroxide is', () => {
    const whole = systemCarbonDioxide(0.1, 0.01, 'sodium bicarbonate');
    expect(whole - systemCarbonDioxide(0.1, 0.01, 'sodium carbonate')).toBeCloseTo(0.0314, 4);
    expect(whole - systemCarbonDioxide(0.1, 0.01, 'calcium magnesium carbonate')).toBeCloseTo(0.0314, 4);
    expect(whole - systemCarbonDioxide(0.1, 0.01, 'sodium hydroxide')).toBeCloseTo(0.0628, 4);
  });

  it('is none, and not less, where all the oxygen goes into nitrifying and hydroxide takes up the acid', () => {
    expect(systemCarbonDioxide(0.0457, 0.01, 'sodium hydroxide')).toBeCloseTo(0, 4);
    expect(systemCarbonDioxide(0.03, 0.01, 'sodium hydroxide')).toBe(0);
  });
});
