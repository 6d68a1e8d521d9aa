import { unitOfKind } from './kind-units';
import { type Kind, kindRows, kinds } from './kinds';
import { Unreadable } from './unreadable';

/** si = (bare + shift) * scale, bare = si * inverse - shift. */
export interface Unit {
  readonly symbol: string;
  readonly scale: number;
  readonly inverse: number;
  readonly shift: number;
}

export interface Profile {
  readonly text: string;
  readonly name: 'metric' | 'US';
  readonly units: Readonly<Record<Kind, Unit>>;
}

function unit(kind: Kind, text: string): Unit {
  const { numerator, denominator, shift, symbol } = unitOfKind(kind, text)!;
  return {
    symbol: kindRows[kind].metric === text || kindRows[kind].US === text ? text : symbol,
    scale: numerator / denominator,
    inverse: denominator / numerator,
    shift,
  };
}

const cache = new Map<string, Profile>();

export function readProfile(value: unknown): Profile {
  if (typeof value === 'string') {
    const known = cache.get(value);
    if (known) return known;
    const head = value.trim().toLowerCase();
    const name = head === 'us' ? 'US' : head === 'metric' ? 'metric' : undefined;
    if (name) {
      const units = Object.fromEntries(kinds.map((kind) => [kind, unit(kind, kindRows[kind][name])])) as Record<
        Kind,
        Unit
      >;
      const profile: Profile = { text: value, name, units };
      cache.set(value, profile);
      return profile;
    }
  }
  throw new Unreadable(`${String(value ?? 'blank')} is not a profile; put "US", "metric" or the cell SiltUnits first`);
}
