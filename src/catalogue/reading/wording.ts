import type { Caution } from '../../formulas/caution';
import type { Figure } from '../../formulas/refusal';
import { isKind, type Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { toProfile, wordQuantity } from '../../units/quantity';

/** The kind of the argument of that name, where it has one. */
export type KindOf = (name: string) => Kind | undefined;

/** Figures of a caution are to be read, not reckoned with; a limit in a refusal is to be typed, so it is exact. */
export const digitsToRead = 4;
export const digitsToType = 6;

/** A figure came out as none: what was given is too large or too small to compute with. */
export class NotFinite extends Error {
  constructor() {
    super('these numbers are too large or too small to compute with; check their units');
    this.name = 'NotFinite';
  }
}

/** Puts the figures of a sentence into the user's units; a mark may say its kind itself, `{rate:areal rate}`. */
export function formatMessage(sentence: Caution, kindOf: KindOf, profile: Profile, digits = digitsToRead): string {
  const { text, figures = {} } = sentence;
  return text.replace(/\{(\w+)(?::([^{}]+))?\}/g, (mark, name: string, own = name) => {
    const figure: Figure | undefined = figures[name];
    if (figure === undefined) return mark;
    const { value, like } = typeof figure === 'number' ? { value: figure, like: own } : figure;
    const kind = kindOf(like) ?? (isKind(like) ? like : 'number');
    if (!Number.isFinite(toProfile(profile, kind, value))) throw new NotFinite();
    return wordQuantity(profile, kind, value, digits);
  });
}
