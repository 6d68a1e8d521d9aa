import { type NitrogenForm, nitrogenShare, splitNitrogenForm } from './nitrogen-form';
import type { Profile } from './profile';
import { readQuantity } from './quantity';
import { tidyText } from './text';

export { type NitrogenForm, nitrogenShare } from './nitrogen-form';

export interface Concentration {
  readonly si: number;
  /** What the text says that it is measured as; undefined where it does not say. */
  readonly as?: NitrogenForm;
}

/** Reads a concentration in kg/m3 that may say what it is measured as: `40 mg/L as NO3`, `9 mg/L NO3-N`. */
export function readConcentration(profile: Profile, value: unknown): Concentration {
  if (typeof value !== 'string' || value.length > 200) return { si: readQuantity(profile, 'concentration', value) };
  const { text, as } = splitNitrogenForm(tidyText(value));
  if (as === undefined) return { si: readQuantity(profile, 'concentration', value) };
  return { si: readQuantity(profile, 'concentration', text), as };
}

/** The nitrogen in a concentration measured as an ion or molecule: 44.27 mg/L as NO3 is 10 mg/L as N. */
export function asNitrogen(concentration: number, form: NitrogenForm): number {
  return concentration * nitrogenShare[form];
}
