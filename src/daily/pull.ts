import { likelySolids, likelyVolumes } from '../formulas/harvest/likely-pull';
import type { Kind } from '../units/kinds';
import { readProfile } from '../units/profile';
import { readQuantity, wordQuantity } from '../units/quantity';
import { Unreadable } from '../units/unreadable';
import type { Entry } from './entries';

/** What somebody typed about a pull, ready to be kept; or a sentence about what cannot be read. */
export type ReadPull = { readonly volume: string; readonly solids: string } | { readonly wrong: string };

/**
 * Reads the volume of a pull and the share of solids. A plain number is kept with its unit, because it may be pasted into a
 * book in other units.
 */
export function readPull(units: string, volume: string, solids: string): ReadPull {
  if (volume === '') return { wrong: 'Type how much you pulled.' };
  const profile = readProfile(units);
  let field = 'How much';
  try {
    if (readQuantity(profile, 'volume', volume) <= 0) return { wrong: `${field}: ${volume} is not more than 0.` };
    field = 'Share of solids';
    const share = solids === '' ? 0 : readQuantity(profile, 'share', solids);
    if (share < 0 || share > 1) return { wrong: `${field}: ${solids} is not from 0 to 100 %.` };
  } catch (error) {
    if (error instanceof Unreadable) return { wrong: `${field}: ${error.message}.` };
    throw error;
  }
  return { volume: withUnit(units, 'volume', volume), solids };
}

/** What is not likely about a pull, beside the last two before it: a sentence each. It is kept all the same. */
export function unlikely(
  units: string,
  { volume, solids }: Readonly<Record<'volume' | 'solids', string>>,
  before: readonly Entry[],
): readonly string[] {
  const profile = readProfile(units);
  const [one, other] = before
    .flatMap((entry) => (entry.kind === 'pull' ? volumeOf(units, entry.volume) : []))
    .slice(-2);
  const sentences: string[] = [];
  if (one !== undefined && other !== undefined) {
    const { least, most } = likelyVolumes(one, other);
    const [size = least] = volumeOf(units, volume);
    const word = (si: number): string => wordQuantity(profile, 'volume', si, 3);
    if (size < least * (1 - 1e-9) || size > most * (1 + 1e-9))
      sentences.push(
        `A pull of ${volume} is not likely; after your last two, the usual range is ${word(least)} to ${word(most)}.`,
      );
  }
  const share = solids === '' ? undefined : readQuantity(profile, 'share', solids);
  if (share !== undefined && (share < likelySolids.least || share > likelySolids.most))
    sentences.push(
      `A solids share of ${Number((100 * share).toPrecision(4))} % is not likely; the usual range is ${100 * likelySolids.least} to ${100 * likelySolids.most} %.`,
    );
  return sentences.map((sentence) => `${sentence} If it is a slip, delete it below.`);
}

/** A volume in SI; none if it cannot be read, as in a file that somebody changed. */
function volumeOf(units: string, text: string): readonly number[] {
  try {
    return [readQuantity(readProfile(units), 'volume', text)];
  } catch (error) {
    if (error instanceof Unreadable) return [];
    throw error;
  }
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
