/**
 * Carbon dioxide of water in balance with air, and what nitrification adds to it.
 */

import { type Alkali, alkaliMole } from './alkali';
import { ATMOSPHERE, airPressure } from './atmosphere';
import { CARBON_DIOXIDE_PER_OXYGEN, molarMass, OXYGEN_PER_NITROGEN } from './atomic-mass';
import { carbonDioxideSolubility } from './carbonate';

/** Share of carbon dioxide in dry air. Source: NOAA Global Monitoring Laboratory, 2023, 420 ppm (from memory). */
const IN_AIR = 4.2e-4;

/** Dissolved carbon dioxide in balance with air, kg/m3; t in °C, 0 to 90. Source: Plummer and Busenberg (1982). */
export function airCarbonDioxide(temperature: number, elevation: number): number {
  return (
    ((carbonDioxideSolubility(temperature) * airPressure(elevation)) / ATMOSPHERE) * IN_AIR * molarMass.carbonDioxide
  );
}

/**
 * Carbon dioxide made, kg/s: 1.375 of the oxygen that the whole system takes, where bicarbonate is dosed.
 *
 * Nitrifying takes 4.57 g of oxygen a g of nitrogen and makes no carbon dioxide, but its acid drives 6.28 g out of
 * bicarbonate, the same 1.375. Carbonate brings half as much carbon, hydroxide none: 3.14 and 6.28 g less. Source:
 * NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, IUPAC masses.
 */
export function systemCarbonDioxide(oxygen: number, nitrified: number, alkali: Alkali): number {
  const { carbon, equivalents } = alkaliMole(alkali);
  const spared = (1 - carbon / equivalents) * OXYGEN_PER_NITROGEN * nitrified;
  return Math.max(0, CARBON_DIOXIDE_PER_OXYGEN * (oxygen - spared));
}
