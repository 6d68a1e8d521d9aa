import { middleOf } from '../../formulas/numeric/triangle';
import type { Profile } from '../../units/profile';
import { splitRange } from '../../units/quantity-range';
import { wordText } from '../../units/text';
import { Unreadable } from '../../units/unreadable';
import type { NamedInput } from '../plan/named-input';
import { ArgumentError, asArgumentError, namingErrors } from './argument-error';
import { figureReader } from './read-figure';

/** A range that was typed in place of one figure, its ends in SI. */
export interface TypedRange {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly typed: string;
}

type EndReader = (end: string, profile: Profile) => number;

/** Reads a range for an input; its messages begin with the input's name. Undefined if the input is a word. */
export function rangeReader(
  name: string,
  spec: NamedInput,
): ((value: string, profile: Profile) => TypedRange) | undefined {
  if ('choice' in spec) return undefined;
  const readEnd = endReader(name, spec);
  return (value, profile) => {
    const typed = wordText(value);
    if ('whole' in spec && spec.whole)
      throw new ArgumentError(`${name}: ${typed} is not allowed; give one whole number`);
    const { low: from, high: to } = namingErrors(name, () => splitRange(spec.kind, value));
    const [low, high] = [from, to].map((end) => endOf(name, typed, () => readEnd(end, profile))) as [number, number];
    if (low > high)
      throw new ArgumentError(`${name}: ${typed} has its ends reversed; write ${wordText(to)} to ${wordText(from)}`);
    return { low, middle: middleOf(low, high), high, typed };
  };
}

function endReader(name: string, spec: Exclude<NamedInput, { readonly choice: readonly string[] }>): EndReader {
  if ('reader' in spec)
    return (end, profile) =>
      figureOf(
        namingErrors(name, () => spec.reader(end, profile)),
        end,
      );
  const read = figureReader(name, spec);
  return (end, profile) => {
    const figure = read(end, profile);
    if (!spec.equipment || figure > 0) return figure;
    throw new ArgumentError(`${name}: ${end} is not allowed; give more than 0, or only none if the farm has none`);
  };
}

/** The figure that a reader gave for an end: the figure itself, or the feed of a crop. */
function figureOf(read: unknown, end: string): number {
  const figure = typeof read === 'object' && read !== null && 'feed' in read ? read.feed : read;
  if (typeof figure === 'number') return figure;
  throw new Unreadable(`${wordText(end)} is a word; give a figure at both ends of a range`);
}

/** Puts the whole range into the message about one of its ends. */
function endOf(name: string, typed: string, read: () => number): number {
  try {
    return read();
  } catch (error) {
    const refusal = asArgumentError(name, error);
    if (!(refusal instanceof ArgumentError)) throw refusal;
    throw new ArgumentError(refusal.message.replace(`${name}: `, `${name}: in ${typed}, `), refusal.code);
  }
}
