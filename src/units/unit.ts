import { LAST_SERIAL } from './date';
import { isUnitless, symbolOfKind, unitOfKind } from './kind-units';
import type { Kind } from './kinds';

/** A profile's unit for one kind: si = (bare + shift) * scale, bare = si * inverse - shift. */
export interface Unit {
  readonly symbol: string;
  readonly scale: number;
  readonly inverse: number;
  readonly shift: number;
  /** Bare numbers from here to `plainTo` are taken at once; any other is checked. */
  readonly plainFrom: number;
  readonly plainTo: number;
}

/** Far enough below overflow that a number times any scale stays finite. */
const HUGE = 1e290;

/** The longest length in m that a bare number may read as, and the one that a date typed for a fraction reaches. */
export const LONGEST = 100;
export const DATE_LENGTH = 30;

/** Below these a bare density is most likely a specific gravity. */
export const lightest: Readonly<Record<string, number>> = { 'kg/m3': 25, 'lb/ft3': 5 };

/** The unit of a kind by its name; undefined where it is no unit of the kind. */
export function makeUnit(kind: Kind, text: string): Unit | undefined {
  const measure = unitOfKind(kind, text);
  if (!measure) return undefined;
  const symbol = symbolOfKind(kind, text, measure);
  const scale = measure.numerator / measure.denominator;
  const isLength = kind === 'dimension' || kind === 'run' || kind === 'particle';
  return {
    symbol,
    scale,
    inverse: measure.denominator / measure.numerator,
    shift: isUnitless(kind) ? 0 : measure.shift,
    plainFrom: kind === 'density' ? (lightest[symbol] ?? -HUGE) : kind === 'date' ? 1 : -HUGE,
    plainTo: isLength ? DATE_LENGTH / scale : kind === 'share' ? 1 : kind === 'date' ? LAST_SERIAL : HUGE,
  };
}

/**
 * A quantity in SI as a number in the unit. Where the number is within rounding of one with six decimals, it is that
 * one, so that 3 1/4 in is 82.55 mm and not a last digit beside it.
 */
export function fromSi(unit: Unit, si: number): number {
  return neat(si * unit.inverse - unit.shift, unit.shift);
}

/** The number with six decimals that a computed one is within rounding of, else the number itself. */
export function neat(value: number, shift = 0): number {
  const near = Math.round(value * 1e6) / 1e6;
  return Math.abs(near - value) <= 4.5e-16 * (Math.abs(value) + Math.abs(shift)) ? near : value;
}
