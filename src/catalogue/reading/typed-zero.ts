import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import type { QuantityArgument } from '../argument';
import { ArgumentError } from './argument-error';
import { boundsTest } from './bounds';
import { type FigureReader, figureReader } from './read-figure';

/**
 * Older hosts pass an empty cell as 0, newer ones as nothing. If a blank means something other than 0, a bare 0 is
 * ambiguous: it is refused, and a real 0 is typed with its unit.
 */
export function blankIsNotZero(spec: QuantityArgument): boolean {
  return spec.optional === true || (spec.default !== undefined && spec.default !== 0);
}

/** How to type a real 0: `0 days`, `0 °C`, `0 %`, or `none` if the figure has no unit. */
export function typedZero(kind: Kind, profile: Profile): string {
  if (kind === 'share') return '0 %';
  const { symbol } = profile.units[kind];
  return symbol === '' ? 'none' : `0 ${symbol}`;
}

/** How to type a 0 that the argument allows but refuses as a bare number; undefined if there is no such 0. */
export function zeroToType(spec: QuantityArgument, profile: Profile): string | undefined {
  const { shift, scale } = profile.units[spec.kind];
  return blankIsNotZero(spec) && boundsTest(spec)(shift * scale) ? typedZero(spec.kind, profile) : undefined;
}

/** Reads a figure; a bare 0 is refused because it may be an empty cell. `name` begins every message. */
export function typedZeroReader(name: string, spec: QuantityArgument): FigureReader {
  const read = figureReader(name, spec);
  return (value, profile) => {
    const typed = typedZero(spec.kind, profile);
    const isNone = typed === 'none' && typeof value === 'string' && value.trim().toLowerCase() === typed;
    const si = read(isNone ? '0' : value, profile);
    if (value !== 0) return si;
    throw new ArgumentError(
      `${name}: 0 or blank is not allowed; type ${typed} for a real 0, or leave it out for the default`,
    );
  };
}
