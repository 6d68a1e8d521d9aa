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

/** Something is wrong with an answer as a whole; whoever called puts the names of the arguments before it. */
export class AnswerFault extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'AnswerFault';
  }
}

const notFinite = 'these numbers are too large or too small to compute with; check their units';

/** A figure as it is, where it is one. */
export function finite(value: number): number {
  if (Number.isFinite(value)) return value === 0 ? 0 : value;
  throw new AnswerFault(notFinite);
}

/** Puts the figures of a sentence into the user's units; a mark may say its kind itself, `{rate:areal rate}`. */
export function formatMessage(sentence: Caution, kindOf: KindOf, profile: Profile, digits = digitsToRead): string {
  const { text, figures = {} } = sentence;
  return text.replace(/\{(\w+)(?::([^{}]+))?\}/g, (mark, name: string, own = name) => {
    const figure: Figure | undefined = figures[name];
    if (figure === undefined) return mark;
    const { value, like } = typeof figure === 'number' ? { value: figure, like: own } : figure;
    const kind = kindOf(like) ?? (isKind(like) ? like : 'number');
    finite(toProfile(profile, kind, value));
    return wordQuantity(profile, kind, value, digits);
  });
}
