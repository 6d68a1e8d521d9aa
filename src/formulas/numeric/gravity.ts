/** Standard acceleration of free fall, m/s2, exact. Source: 3rd General Conference on Weights and Measures, 1901. */
export const GRAVITY = 9.80665;
