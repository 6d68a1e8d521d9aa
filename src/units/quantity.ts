import { unitOfKind } from './kind-units';
import type { Kind } from './kinds';
import type { Profile } from './profile';
import { Unreadable } from './unreadable';

/** Reads what was given as SI; a bare number is in the profile's unit. `atMost` (SI) replaces the most a bare number may read as. */
export function readQuantity(profile: Profile, kind: Kind, value: unknown, _atMost?: number): number {
  const unit = profile.units[kind];
  if (typeof value === 'number' && Number.isFinite(value)) return (value + unit.shift) * unit.scale;
  if (typeof value === 'string') {
    const [, digits = '', rest = ''] = /^\s*([-+]?[\d.]+)(.*)$/.exec(value) ?? [];
    const own = rest.trim() === '' ? unit : undefined;
    const measure = unitOfKind(kind, rest);
    if (digits !== '' && own) return (Number(digits) + own.shift) * own.scale;
    if (digits !== '' && measure) return ((Number(digits) + measure.shift) * measure.numerator) / measure.denominator;
  }
  throw new Unreadable(`${String(value)} is not a ${kind}`);
}

export function toProfile(profile: Profile, kind: Kind, si: number): number {
  const unit = profile.units[kind];
  return si * unit.inverse - unit.shift;
}

/** A quantity for a message: at most six significant digits and the unit. */
export function wordQuantity(profile: Profile, kind: Kind, si: number): string {
  return `${Number(toProfile(profile, kind, si).toPrecision(6))} ${profile.units[kind].symbol}`.trim();
}

/** What was given, as it was given, with the profile's unit behind a bare number. */
export function wordGiven(profile: Profile, kind: Kind, value: unknown): string {
  if (typeof value === 'number') return `${value} ${profile.units[kind].symbol}`.trim();
  return String(value ?? 'blank');
}
