/**
 * Rounding that allows for binary fractions: 0.29 x 100 is 28.999999999999996, and is meant as 29.
 */
const ALLOWANCE = 1e-9;

/** The least whole number not below the figure, for things bought or fitted whole; 2.0000000001 is 2. */
export function wholeUp(figure: number): number {
  return Math.ceil(figure - ALLOWANCE) + 0;
}

/** The greatest whole number not above the figure, for figures that are cut; 28.9999999999 is 29. */
export function wholeDown(figure: number): number {
  return Math.floor(figure + ALLOWANCE);
}
