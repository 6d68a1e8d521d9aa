import { unitOfKind } from './kind-units';
import { kinds } from './kinds';
import { Unreadable } from './unreadable';

/** Converts a number between two units, by name, of one kind. */
export function convert(value: unknown, from: string, to: string): number {
  for (const kind of kinds) {
    const source = unitOfKind(kind, from);
    const target = source && unitOfKind(kind, to);
    if (!source || !target) continue;
    const number = Number(value);
    return (
      ((number + source.shift) * source.numerator * target.denominator) / (source.denominator * target.numerator) -
      target.shift
    );
  }
  throw new Unreadable(`${from} and ${to} are not of one kind`);
}
