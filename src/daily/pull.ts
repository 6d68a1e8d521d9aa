import type { Kind } from '../units/kinds';
import { readProfile } from '../units/profile';
import { readQuantity } from '../units/quantity';
import { Unreadable } from '../units/unreadable';

/** What somebody typed about a pull, ready to be kept; or a sentence about what cannot be read. */
export type ReadPull = { readonly volume: string; readonly solids: string } | { readonly wrong: string };

/**
 * Reads the volume of a pull and the share of solids. A plain number is kept with its unit, because it may be pasted into a
 * book in other units.
 */
export function readPull(units: string, volume: string, solids: string): ReadPull {
  if (volume === '') return { wrong: 'Type how much you pulled.' };
  const profile = readProfile(units);
  try {
    if (readQuantity(profile, 'volume', volume) <= 0) return { wrong: `How much: ${volume} is not more than 0.` };
    if (solids !== '') readQuantity(profile, 'share', solids);
  } catch (error) {
    if (error instanceof Unreadable) return { wrong: `${error.message}.` };
    throw error;
  }
  return { volume: withUnit(units, 'volume', volume), solids };
}

/** What was typed without a unit, `12 1/2` too, with the unit in which it was meant. */
export function withUnit(units: string, kind: Kind, text: string): string {
  const inUnits = (name: string): number | undefined => {
    try {
      return readQuantity(readProfile(name), kind, text);
    } catch (error) {
      if (error instanceof Unreadable) return undefined;
      throw error;
    }
  };
  return inUnits('metric') === inUnits('US') ? text : `${text} ${readProfile(units).units[kind].symbol}`;
}
