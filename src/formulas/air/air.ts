/**
 * What an aerator gives in the farm's water, and the air that supplies a demand. Transfers and demands in kg/s.
 */

import { Refusal } from '../refusal';
import { airPressure } from '../water/atmosphere';
import { molarMass } from '../water/atomic-mass';
import { waterOxygen } from '../water/water-oxygen';

/** Growth of transfer per °C. Source: ASCE/EWRI 2-06, Measurement of Oxygen Transfer in Clean Water. */
export const THETA = 1.024;

export interface Aerator {
  /** Transfer as rated: clean water, 20 °C, 1 atm, no oxygen in it, kg/s. */
  readonly rated: number;
  readonly temperature: number;
  /** Oxygen kept in the water, kg/m3. */
  readonly target: number;
  readonly elevation: number;
  /** Transfer in this water over that in clean water. */
  readonly alpha: number;
  /** Saturation in this water over that in clean water of the same salinity. */
  readonly beta: number;
  readonly salinity: number;
}

/**
 * Field oxygen transfer, kg/s: rated x alpha x 1.024^(t - 20) x (beta Cs - target) / Cs20.
 *
 * Cs saturation at the temperature, elevation and salinity, Cs20 that of clean water at 20 °C and 1 atm. Refuses more oxygen than the water holds
 * in balance with air. Source: ASCE/EWRI 2-06; Metcalf and Eddy, Wastewater Engineering, aeration systems.
 */
export function airTransfer(aerator: Aerator): number {
  const { target } = aerator;
  const saturation = saturationOf(aerator);
  if (target >= saturation) {
    throw new Refusal('target', 'air can bring this water only to {saturation}; give less', {
      figures: { saturation: { value: saturation, like: 'target' } },
    });
  }
  return transferOf(aerator, saturation);
}

/** The same, but nothing where air cannot bring the water to the target; refusals cost time where many farms are computed. */
export function airTransferIfAny(aerator: Aerator): number {
  const saturation = saturationOf(aerator);
  return aerator.target >= saturation ? 0 : transferOf(aerator, saturation);
}

function saturationOf({ temperature, elevation, beta, salinity }: Aerator): number {
  return beta * waterOxygen(temperature, elevation, salinity);
}

function transferOf({ rated, temperature, target, alpha }: Aerator, saturation: number): number {
  const driving = (saturation - target) / waterOxygen(20, 0, 0);
  return rated * alpha * THETA ** (temperature - 20) * driving;
}

/** Oxygen in dry air, moles per mole. Source: ISO 2533:1975. */
const OXYGEN_IN_AIR = 0.209476;

/** Molar gas constant, J/mol/K, exact. Source: International System of Units, 2019. */
const GAS_CONSTANT = 8.314462618;

/** Oxygen in a cubic meter of dry air, kg, at a temperature in °C and an elevation in m, as an ideal gas. */
export function oxygenInAir(temperature: number, elevation: number): number {
  const moles = airPressure(elevation) / (GAS_CONSTANT * (temperature + 273.15));
  return moles * OXYGEN_IN_AIR * molarMass.oxygen * 1e-3;
}

/**
 * Air flow that carries an oxygen demand, m3/s at the temperature and elevation: demand / (efficiency x oxygen in air).
 *
 * `efficiency` is the share of the air's oxygen that dissolves, above 0 up to 1. Source: ideal gas; ISO 2533:1975 for what air is made of.
 */
export function airSupply(demand: number, efficiency: number, temperature: number, elevation: number): number {
  return demand / (efficiency * oxygenInAir(temperature, elevation));
}
