/**
 * Carbon dioxide in fresh water, from what a test kit can tell: alkalinity and pH.
 */

import { rootBetween } from '../numeric/root';
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
 * Carbon dioxide that fresh water dissolves under one atmosphere of it, mol/L; times 4.2e-4 that in balance with air.
 *
 * t in °C, 0 to 90. Source: Plummer and Busenberg, Geochimica et Cosmochimica Acta 46:1011 (1982), log KH.
 */
export function carbonDioxideSolubility(temperature: number): number {
  const t = temperature + 273.15;
  return 10 ** (108.3865 + 0.01985076 * t - 6919.53 / t - 40.45154 * Math.log10(t) + 669365 / (t * t));
}

/**
 * Dissolved carbon dioxide, kg/m3: [H+] [HCO3-] / K1, with [HCO3-] (1 + 2 K2/[H+]) = alkalinity + [H+] - Kw/[H+].
 *
 * Alkalinity in kg/m3 as CaCO3, temperature in °C. Fresh water whose alkalinity is carbonate; dissolved salts lower the
 * constants, so that at 500 mg/L of them the true figure is some 8 % less. Refuses an alkalinity below that of
 * hydroxide alone, because there is no carbon dioxide then, and more than one atmosphere of the gas dissolves. Source: carbonate equilibrium, Stumm and Morgan, Aquatic Chemistry.
 */
export function waterCarbonDioxide(alkalinity: number, ph: number, temperature: number): number {
  const { first, second, water } = carbonateConstants(temperature);
  const hydrogen = 10 ** -ph;
  const hydroxide = water / hydrogen;
  const equivalents = (2 * alkalinity) / molarMass.calciumCarbonate;
  const carbonate = equivalents + hydrogen - hydroxide;
  if (carbonate < 0) {
    const least = ((hydroxide - hydrogen) * molarMass.calciumCarbonate) / 2;
    throw new Refusal(
      'alkalinity',
      'at this pH hydroxide alone gives {least:alkalinity}; give more, or measure the pH again',
      {
        figures: { least },
      },
    );
  }
  const dioxide = (carbonate / (1 + (2 * second) / hydrogen) / first) * hydrogen;
  const most = carbonDioxideSolubility(temperature);
  if (dioxide > most) {
    const least = -Math.log10((Math.sqrt(equivalents ** 2 + 4 * first * most) - equivalents) / 2);
    throw new Refusal(
      'ph',
      'water of this alkalinity and pH would hold more than the {most:concentration} that an atmosphere of carbon dioxide dissolves; give pH {least} or more, or measure again',
      {
        figures: { most: most * molarMass.carbonDioxide, least },
        reason: 'unavailable',
      },
    );
  }
  return dioxide * molarMass.carbonDioxide;
}

/** A mol of charge a liter as kg/m3 of calcium carbonate, and back by division. */
export const CALCIUM_CARBONATE_PER_EQUIVALENT = molarMass.calciumCarbonate / 2;

/** Water whose alkalinity is carbonate: alkalinity in mol of charge a liter, all inorganic carbon in mol/L. */
export interface CarbonateWater {
  readonly alkalinity: number;
  readonly carbon: number;
}

/** Charge of carbonate ions per mol of inorganic carbon, 0 to 2. */
export function carbonateCharge(hydrogen: number, { first, second }: CarbonateConstants): number {
  return (first * (hydrogen + 2 * second)) / (hydrogen * hydrogen + first * (hydrogen + second));
}

/** Charge of hydroxide over hydrogen ions, mol/L. */
export function waterCharge(hydrogen: number, { water }: CarbonateConstants): number {
  return water / hydrogen - hydrogen;
}

/** Range in which a pH is looked for. */
const [LOWEST_PH, HIGHEST_PH] = [1, 14];

/**
 * pH of water in a closed bottle: its alkalinity = carbon x charge of carbonate + hydroxide - hydrogen.
 *
 * Fresh water, 0 to 40 °C; source as for carbonateConstants, mass and charge balance by Stumm and Morgan, Aquatic Chemistry.
 */
export function closedPh({ alkalinity, carbon }: CarbonateWater, constants: CarbonateConstants): number {
  const excess = (ph: number): number => {
    const hydrogen = 10 ** -ph;
    return carbon * carbonateCharge(hydrogen, constants) + waterCharge(hydrogen, constants) - alkalinity;
  };
  return rootBetween(excess, LOWEST_PH, HIGHEST_PH, 1e-12);
}

/** pH of water that air keeps at a level of dissolved carbon dioxide, mol/L. Range and sources as for closedPh. */
export function airedPh(alkalinity: number, dioxide: number, constants: CarbonateConstants): number {
  const excess = (ph: number): number => airedAlkalinity(ph, dioxide, constants) - alkalinity;
  return rootBetween(excess, LOWEST_PH, HIGHEST_PH, 1e-12);
}

/** Alkalinity, mol of charge a liter, at which water with that much carbon dioxide has a pH; the inverse of airedPh. */
export function airedAlkalinity(ph: number, dioxide: number, constants: CarbonateConstants): number {
  const hydrogen = 10 ** -ph;
  const { first, second } = constants;
  return (dioxide * first * (hydrogen + 2 * second)) / (hydrogen * hydrogen) + waterCharge(hydrogen, constants);
}
