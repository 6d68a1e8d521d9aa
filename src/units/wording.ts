import { dateOfSerial } from './date';
import { isUnitless, listedUnits } from './kind-units';
import type { Kind } from './kinds';
import type { Profile } from './profile';
import { tidyText, wordText } from './text';
import { fromSi } from './unit';

/** A quantity for a message: at most six significant digits and the profile's unit. */
export function wordQuantity(profile: Profile, kind: Kind, si: number, digits = 6): string {
  return wordBare(profile, kind, fromSi(profile.units[kind], si), digits);
}

/** What a user gave, as given, with the profile's unit after a bare number. */
export function wordGiven(profile: Profile, kind: Kind, value: unknown): string {
  if (typeof value === 'number') return wordBare(profile, kind, value, 12);
  if (typeof value === 'boolean') return String(value).toUpperCase();
  if (value === null || value === undefined) return 'blank';
  if (typeof value !== 'string') return 'this';
  const bare = value.length < 40 && /^[-+.\d]+(?:e[-+]?\d+)?$/i.test(tidyText(value));
  return bare && !isUnitless(kind) ? `${wordText(value)} ${profile.units[kind].symbol}` : wordText(value);
}

/** The units that text may be given in, the profile's own first. */
export function unitsRead(profile: Profile, kind: Kind): readonly string[] {
  const { symbol } = profile.units[kind];
  return symbol === '' ? listedUnits(kind) : [symbol, ...alsoRead(profile, kind)];
}

/** The units that are read besides the profile's own. */
export function alsoRead(profile: Profile, kind: Kind): readonly string[] {
  return listedUnits(kind).filter((symbol) => symbol !== profile.units[kind].symbol);
}

function wordBare(profile: Profile, kind: Kind, bare: number, digits = 6): string {
  if (kind === 'date') return dateOfSerial(bare);
  const { symbol } = profile.units[kind];
  const one = bare === 1 && /^(?:minute|hour|day|month|degree)s$/.test(symbol) ? symbol.slice(0, -1) : symbol;
  const rounded = Number(bare.toPrecision(digits));
  return `${Number.isFinite(rounded) ? rounded : bare} ${one}`.trimEnd();
}
