import type { Profile } from './profile';
import { readQuantity } from './quantity';

export type NitrogenForm = 'N' | 'NO3' | 'NO2' | 'NH3' | 'NH4';

/** Mass of nitrogen in a mass of each form, from the conventional atomic masses N 14.007, O 15.999, H 1.008 (IUPAC). */
export const nitrogenShare: Readonly<Record<NitrogenForm, number>> = {
  N: 1,
  NO3: 14.007 / (14.007 + 3 * 15.999),
  NO2: 14.007 / (14.007 + 2 * 15.999),
  NH3: 14.007 / (14.007 + 3 * 1.008),
  NH4: 14.007 / (14.007 + 4 * 1.008),
};

export interface Concentration {
  readonly si: number;
  /** The form that the text names; undefined where it names none. */
  readonly as?: NitrogenForm;
}

/** Reads a concentration that may say what it is measured as: `40 mg/L as NO3`. */
export function readConcentration(profile: Profile, value: unknown): Concentration {
  return { si: readQuantity(profile, 'concentration', value) };
}
