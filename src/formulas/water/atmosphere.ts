/**
 * The air above the water, by the standard atmosphere.
 */

/** Standard atmosphere at sea level, Pa, exact. Source: 10th General Conference on Weights and Measures, 1954. */
export const ATMOSPHERE = 101325;

/**
 * Mean air pressure at an elevation above sea level, Pa: 101325 (1 - 0.0065 h / 288.15)^5.2559.
 *
 * h in m, -5000 to 11000. Weather changes it by about 3 %. Source: ISO 2533:1975, Standard Atmosphere, troposphere.
 */
export function airPressure(elevation: number): number {
  return ATMOSPHERE * (1 - (0.0065 * elevation) / 288.15) ** 5.2558797;
}
