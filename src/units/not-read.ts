import type { Kind } from './kinds';
import type { Profile } from './profile';
import { Unreadable } from './unreadable';
import { unitsRead, wordGiven } from './wording';
import { allowedAs } from './wrong-unit';

/** Says that a value is not a quantity of the kind, and what is allowed. */
export function notRead(profile: Profile, kind: Kind, value: unknown): Unreadable {
  const given = kind === 'date' && value === 0 ? '0 or blank' : wordGiven(profile, kind, value);
  return new Unreadable(`${given} is not allowed; give ${allowedAs(kind, unitsRead(profile, kind))}`);
}
