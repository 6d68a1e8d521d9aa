import type { CellScalar } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import { splitNitrogenForm } from '../../units/nitrogen-form';
import type { Profile } from '../../units/profile';
import { readQuantity, toProfile } from '../../units/quantity';
import { isRangeText, splitRange } from '../../units/quantity-range';
import { tidyText } from '../../units/text';
import { Unreadable } from '../../units/unreadable';

export type NewValue =
  | { readonly value: number }
  /** A range with both ends in the new unit. */
  | { readonly range: string }
  /** Has the same meaning in both profiles: text with a unit, a kind whose unit does not change, words. */
  | 'same'
  /** A number that the old profile does not allow, and why. */
  | { readonly fault: string };

/**
 * The number that has the same meaning in the new profile as the typed one in the old. Text with a unit has the same
 * meaning in both; text that is only a number is a number.
 */
export function newValue(value: CellScalar, kind: Kind, from: Profile, to: Profile): NewValue {
  if (typeof value === 'boolean') return 'same';
  const [old, next] = [from.units[kind], to.units[kind]];
  if (old.scale === next.scale && old.shift === next.shift) return 'same';
  if (isRangeText(value)) return newRange(value, kind, from, to);
  const plain = typeof value === 'string' && kind === 'concentration' ? splitNitrogenForm(tidyText(value)).text : value;
  let before: number;
  try {
    before = readQuantity(from, kind, plain);
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    return typeof value === 'number' ? { fault: error.message } : 'same';
  }
  if (typeof value === 'number') {
    const next = toProfile(to, kind, before);
    return next === value ? 'same' : { value: next };
  }
  const after = readUnder(to, kind, plain);
  if (after === before) return 'same';
  if (plain !== value) return { fault: `${value} has no unit` };
  return { value: toProfile(to, kind, before) };
}

/** Both ends of a range, each with its unit where it had none. */
function newRange(value: string, kind: Kind, from: Profile, to: Profile): NewValue {
  try {
    const ends = Object.values(splitRange(kind, value));
    const before = ends.map((end) => readQuantity(from, kind, end));
    const after = ends.map((end) => readUnder(to, kind, end));
    if (before.every((end, at) => end === after[at])) return 'same';
    const [low, high] = before.map((end) => Number(toProfile(to, kind, end).toPrecision(6)));
    return { range: `${low} to ${high} ${to.units[kind].symbol}` };
  } catch (error) {
    if (error instanceof Unreadable) return 'same';
    throw error;
  }
}

function readUnder(profile: Profile, kind: Kind, value: CellScalar): number | undefined {
  try {
    return readQuantity(profile, kind, value);
  } catch (error) {
    if (error instanceof Unreadable) return undefined;
    throw error;
  }
}
