import { asNitrogen, type NitrogenForm, readConcentration } from '../units/concentration';
import type { Kind } from '../units/kinds';
import type { Profile } from '../units/profile';
import { readQuantity, wordGiven, wordQuantity } from '../units/quantity';
import { Unreadable } from '../units/unreadable';
import type { CellValue, ReaderArgument } from './argument';

/** How to read a cell; each function adds its own meaning. */
type Reader<T> = Omit<ReaderArgument<T>, 'meaning'>;

/** One cell as it is, for a function that needs its other arguments to read it. */
export function anyCell(accepts: string): Reader<CellValue> {
  return { accepts, reader: (value) => value };
}

/** Text in a cell. */
export function textReader(accepts: string): Reader<string> {
  return {
    accepts,
    reader: (value) => {
      if (typeof value !== 'string') throw new Unreadable(`${value} is not text; give ${accepts}`);
      return value.trim();
    },
  };
}

/** Text `-` means that the reading was not taken. */
function notTaken(value: CellValue): boolean {
  return typeof value === 'string' && /^\s*[-–—]\s*$/.test(value);
}

/** A reading of a water test: a figure within bounds in SI, or undefined if not taken. */
export function reading(
  kind: Kind,
  bounds: { readonly atLeast: number; readonly atMost: number },
): Reader<number | undefined> & { readonly blank: true } {
  return {
    accepts: `${/^a/.test(kind) ? 'an' : 'a'} ${kind}, or - if it was not measured`,
    kind,
    blank: true,
    reader: (value, profile) => {
      if (notTaken(value)) return undefined;
      const si = readQuantity(profile, kind, value);
      if (si >= bounds.atLeast && si <= bounds.atMost) return si;
      const [low, high] = [bounds.atLeast, bounds.atMost].map((bound) => wordQuantity(profile, kind, bound));
      throw new Unreadable(
        `${wordGiven(profile, kind, value)} is not allowed; give from ${low} to ${high}, or - if it was not measured`,
      );
    },
  };
}

/** A concentration of a nitrogen compound; text can say what it is measured as. */
export interface NitrogenReading {
  readonly si: number;
  readonly as: NitrogenForm | undefined;
}

function readNitrogen(forms: readonly NitrogenForm[], value: CellValue, profile: Profile): NitrogenReading {
  const { si, as } = readConcentration(profile, value);
  if (si < 0) {
    throw new Unreadable(`${wordGiven(profile, 'concentration', value)} is not allowed; give 0 mg/L or more`);
  }
  if (as === undefined || as === 'N' || forms.includes(as)) return { si, as };
  throw new Unreadable(
    `${wordGiven(profile, 'concentration', value)} is not allowed; give it as N or ${forms.join(' or ')}`,
  );
}

/** The ions or molecules that a kit may give ammonia as; as nitrite or nitrate it would be the reading of another tube. */
const ofAmmonia = ['NH3', 'NH4'] as const;

const nitrogenForms = { ammonia: ofAmmonia, nitrite: ['NO2'], nitrate: ['NO3'] } as const;

/** A reading of a nitrogen compound in a water test, or not taken. */
export function nitrogenReading(
  compound: keyof typeof nitrogenForms,
): Reader<NitrogenReading | undefined> & { readonly blank: true } {
  const forms = nitrogenForms[compound];
  return {
    accepts: `a concentration such as 2, 2 mg/L as N or 2 mg/L as ${forms[0]}, or - if it was not measured`,
    kind: 'concentration',
    blank: true,
    reader: (value, profile) => (notTaken(value) ? undefined : readNitrogen(forms, value, profile)),
  };
}

/** Total ammonia as nitrogen; text that says `as NH3` is converted. */
export const ammoniaAsNitrogen: Reader<number> = {
  accepts: 'a concentration such as 2, or 2.4 mg/L as NH3',
  kind: 'concentration',
  reader: (value, profile) => {
    const { si, as } = readNitrogen(ofAmmonia, value, profile);
    return asNitrogen(si, as ?? 'N');
  },
};
