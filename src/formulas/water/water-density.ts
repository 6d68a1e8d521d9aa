/**
 * Density of fresh and salt water at one atmosphere.
 */

/**
 * Density of air-free fresh water, kg/m3: a5 (1 - (t + a1)2 (t + a2) / (a3 (t + a4))).
 *
 * t in °C, 0 to 40. Uncertainty under 0.001 kg/m3. Source: Tanaka et al., Metrologia 38:301 (2001), eq. 1.
 */
export function freshWaterDensity(temperature: number): number {
  const offset = temperature - 3.983035;
  return 999.97495 * (1 - (offset * offset * (temperature + 301.797)) / (522528.9 * (temperature + 69.34881)));
}

/**
 * Density of water, kg/m3: Tanaka's fresh water plus what salt adds in the one-atmosphere equation of state of sea water.
 *
 * t in °C (0 to 40, taken to the scale of 1968 where the salt terms want it), practical salinity 0 to 42. Within
 * 0.01 kg/m3 of TEOS-10 over that range. Source: Tanaka et al. (2001); Millero and Poisson, Deep-Sea Research 28A:625
 * (1981), as UNESCO Technical Papers in Marine Science 44 (1983).
 */
export function waterDensity(temperature: number, salinity: number): number {
  const fresh = freshWaterDensity(temperature);
  if (salinity === 0) return fresh;
  const t = 1.00024 * temperature;
  const linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const threeHalves = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
  return fresh + salinity * (linear + threeHalves * Math.sqrt(salinity) + 4.8314e-4 * salinity);
}
