/**
 * Oxygen that water holds in equilibrium with moist air.
 */
import { ATMOSPHERE, airPressure } from './atmosphere';

/** Vapor pressure of water over itself, atm. Source: Benson and Krause (1980), as in APHA Standard Methods 4500-O. */
export function vaporPressure(temperature: number): number {
  const kelvin = temperature + 273.15;
  return Math.exp(11.8571 - 3840.7 / kelvin - 216961 / (kelvin * kelvin));
}

/**
 * Dissolved oxygen at saturation, kg/m3, at an air pressure in Pa.
 *
 * Benson and Krause's equation at one atmosphere, times P (1 - Pwv/P)(1 - theta P) / ((1 - Pwv)(1 - theta)) with P in atm and
 * Pwv the vapor pressure: oxygen follows the dry part of the air, so it falls faster than the pressure. t in °C, 0 to 40;
 * practical salinity, 0 to 40. Source: Benson and Krause, Limnology and Oceanography 29:620 (1984); APHA Standard Methods 4500-O.
 */
export function oxygenAtPressure(temperature: number, pressure: number, salinity: number): number {
  const kelvin = temperature + 273.15;
  const i = 1 / kelvin;
  const fresh = -139.34411 + i * (1.575701e5 + i * (-6.642308e7 + i * (1.2438e10 - i * 8.621949e11)));
  const salt = 1.7674e-2 + i * (-10.754 + i * 2140.7);
  const atOne = 1e-3 * Math.exp(fresh - salinity * salt);
  const atmospheres = pressure / ATMOSPHERE;
  const vapor = vaporPressure(temperature);
  const theta = 9.75e-4 + temperature * (-1.426e-5 + temperature * 6.436e-8);
  return (atOne * (atmospheres - vapor) * (1 - theta * atmospheres)) / ((1 - vapor) * (1 - theta));
}

/**
 * Dissolved oxygen at saturation, kg/m3, at an elevation in m by the standard atmosphere.
 *
 * Range and sources as for oxygenAtPressure.
 */
export function waterOxygen(temperature: number, elevation: number, salinity: number): number {
  return oxygenAtPressure(temperature, airPressure(elevation), salinity);
}
