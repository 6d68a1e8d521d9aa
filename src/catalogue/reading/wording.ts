import type { Caution } from '../../formulas/caution';
import type { Figure } from '../../formulas/refusal';
import { isKind, type Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { wordQuantity } from '../../units/quantity';

/** The kind of the argument of that name, where it has one. */
export type KindOf = (name: string) => Kind | undefined;

/** Figures of a caution are to be read, not reckoned with; a limit in a refusal is to be typed, so it is exact. */
export const digitsToRead = 4;
export const digitsToType = 6;

/** Puts the figures of a sentence into the user's units; a mark may say its kind itself, `{rate:areal rate}`. */
export function formatMessage(sentence: Caution, kindOf: KindOf, profile: Profile, digits = digitsToRead): string {
  const { text, figures = {} } = sentence;
  return text.replace(/\{(\w+)(?::([^{}]+))?\}/g, (mark, name: string, own = name) => {
    const figure: Figure | undefined = figures[name];
    if (figure === undefined) return mark;
    const { value, like } = typeof figure === 'number' ? { value: figure, like: own } : figure;
    const kind = kindOf(like) ?? (isKind(like) ? like : undefined);
    return wordQuantity(profile, kind ?? 'number', value, digits);
  });
}
