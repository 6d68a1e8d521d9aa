import { DAY } from '../../formulas/numeric/time';

/** The units that sources print, in SI, for the coefficient tables only. */
export const GRAMS_PER_SQUARE_METRE_DAY = 1e-3 / DAY;
export const GRAMS_PER_SQUARE_METRE = 1e-3;
export const MILLIGRAMS_PER_LITRE = 1e-3;
export const CENTIMETRES_PER_SECOND = 1e-2;
/** Exact: 0.45359237 kg over 1000 square feet of 0.09290304 m2. */
export const POUNDS_PER_THOUSAND_SQUARE_FEET = 0.45359237 / (1000 * 0.09290304);
