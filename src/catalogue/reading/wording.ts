import type { Caution } from '../../formulas/caution';
import type { Figure } from '../../formulas/refusal';
import { isKind, type Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { toProfile, wordQuantity } from '../../units/quantity';

/** The kind of the argument with that name, if it has one. */
export type KindOf = (name: string) => Kind | undefined;

/** Digits of a figure in a caution, which is only read, and of a limit in a refusal, which the user types. */
export const digitsToRead = 4;
export const digitsToType = 6;

/** A fault of the result as a whole; the caller puts the names of the arguments before the message. */
export class AnswerFault extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'AnswerFault';
  }
}

const notFinite = 'these numbers are too large or too small to compute with; check their units';

/** Returns a finite figure as it is and refuses any other. */
export function finite(value: number): number {
  if (Number.isFinite(value)) return value === 0 ? 0 : value;
  throw new AnswerFault(notFinite);
}

/** Writes the figures of a sentence in the user's units; a mark can name its kind, `{rate:areal rate}`. */
export function formatMessage(sentence: Caution, kindOf: KindOf, profile: Profile, digits = digitsToRead): string {
  const { text, figures = {} } = sentence;
  return text.replace(/\{(\w+)(?::([^{}]+))?\}/g, (mark, name: string, kindOrName = name) => {
    const figure: Figure | undefined = figures[name];
    if (figure === undefined) return mark;
    const {
      value,
      like,
      digits: own = digits,
    } = typeof figure === 'number' ? { value: figure, like: kindOrName } : figure;
    const kind = kindOf(like) ?? (isKind(like) ? like : 'number');
    finite(toProfile(profile, kind, value));
    return wordQuantity(profile, kind, value, own);
  });
}
