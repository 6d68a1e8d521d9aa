/**
 * Carbon dioxide in fresh water, from what a test kit can tell: alkalinity and pH.
 */

import { Refusal } from '../refusal';
import { molarMass } from './atomic-mass';

/** First and second dissociation of carbonic acid and the ion product of water, mol/L, at infinite dilution. */
export interface CarbonateConstants {
  readonly first: number;
  readonly second: number;
  readonly water: number;
}

/**
 * Constants of the carbonate equilibrium at a temperature in °C, 0 to 90.
 *
 * Source: carbonic acid, Plummer and Busenberg, Geochimica et Cosmochimica Acta 46:1011 (1982); water, pKw = 4470.99/T - 6.0875 +
 * 0.01706 T, Harned and Owen in Stumm and Morgan, Aquatic Chemistry (1981).
 */
export function carbonateConstants(temperature: number): CarbonateConstants {
  const t = temperature + 273.15;
  const log = Math.log10(t);
  const first = -356.3094 - 0.06091964 * t + 21834.37 / t + 126.8339 * log - 1684915 / (t * t);
  const second = -107.8871 - 0.03252849 * t + 5151.79 / t + 38.92561 * log - 563713.9 / (t * t);
  return { first: 10 ** first, second: 10 ** second, water: 10 ** (6.0875 - 0.01706 * t - 4470.99 / t) };
}

/**
 * Dissolved carbon dioxide, kg/m3: [H+] [HCO3-] / K1, with [HCO3-] (1 + 2 K2/[H+]) = alkalinity + [H+] - Kw/[H+].
 *
 * Alkalinity in kg/m3 as CaCO3, temperature in °C. Fresh water whose alkalinity is carbonate; dissolved salts lower the
 * constants, so that at 500 mg/L of them the true figure is some 8 % less. Cannot be answered where hydroxide alone makes up
 * more than the alkalinity: there is no carbon dioxide then. Source: carbonate equilibrium, Stumm and Morgan, Aquatic Chemistry.
 */
export function waterCarbonDioxide(alkalinity: number, ph: number, temperature: number): number {
  const { first, second, water } = carbonateConstants(temperature);
  const hydrogen = 10 ** -ph;
  const hydroxide = water / hydrogen;
  const equivalents = (2 * alkalinity) / molarMass.calciumCarbonate;
  const carbonate = equivalents + hydrogen - hydroxide;
  if (carbonate < 0) {
    const least = ((hydroxide - hydrogen) * molarMass.calciumCarbonate) / 2;
    throw new Refusal('alkalinity', 'at this pH hydroxide alone makes {least}; give more, or measure the pH again', {
      figures: { least: { value: least, like: 'alkalinity' } },
    });
  }
  return (carbonate / (1 + (2 * second) / hydrogen) / first) * hydrogen * molarMass.carbonDioxide;
}
