import { isUnitless, listedUnits } from '../../units/kind-units';
import { type Kind, kindRows, kinds } from '../../units/kinds';
import { type Profile, readProfile } from '../../units/profile';
import { Unreadable } from '../../units/unreadable';

/** A chosen profile: one of the two, and the kinds with another unit. */
export interface ProfileChoice {
  readonly name: 'metric' | 'US';
  readonly exceptions: ReadonlyMap<Kind, string>;
}

/** Kinds whose unit follows that of mass, and so are not chosen on their own. */
const followers: readonly Kind[] = ['daily', 'transfer'];
const times: readonly Kind[] = ['minutes', 'hours', 'days', 'months'];

/** The kinds whose unit can be chosen, in their usual order. */
export const choosableKinds: readonly Kind[] = kinds.filter(
  (kind) => !isUnitless(kind) && !times.includes(kind) && !followers.includes(kind) && listedUnits(kind).length > 1,
);

/** What a profile text chooses. */
export function choiceOf(profile: Profile): ProfileChoice {
  const exceptions = new Map<Kind, string>();
  for (const kind of choosableKinds) {
    const { symbol } = profile.units[kind];
    if (symbol !== kindRows[kind][profile.name]) exceptions.set(kind, symbol);
  }
  return { name: profile.name, exceptions };
}

/** The text that asks for a choice: `US, flow L/min, temperature °C`. */
export function textOf({ name, exceptions }: ProfileChoice): string {
  const wanted = choosableKinds.flatMap((kind) => {
    const symbol = exceptions.get(kind);
    return symbol === undefined || symbol === kindRows[kind][name] ? [] : [`${kind} ${symbol}`];
  });
  return [name, ...wanted].join(', ');
}

/** Units that a kind can be given in a profile, the profile's own first. */
export function unitsToChoose(kind: Kind, name: 'metric' | 'US', chosen: string | undefined): readonly string[] {
  const own = kindRows[kind][name];
  const listed = listedUnits(kind).filter((symbol) => symbol !== own && isTaken(name, kind, symbol));
  const known = [own, ...listed];
  return chosen === undefined || known.includes(chosen) ? known : [...known, chosen];
}

/** Whether a profile accepts this unit; a few units are allowed in text but not for every number. */
function isTaken(name: string, kind: Kind, symbol: string): boolean {
  try {
    readProfile(`${name}, ${kind} ${symbol}`);
    return true;
  } catch (error) {
    if (error instanceof Unreadable) return false;
    throw error;
  }
}

/** What is measured in a kind, where its name does not say it. */
export const kindNotes: Partial<Record<Kind, string>> = {
  dimension: 'drum, cone, bore, sheet',
  run: 'pipe run, lift, elevation, head',
  particle: 'grain size',
  volume: 'water, slurry',
  bulk: 'base mix, media',
  mass: 'also sets mass per day and per hour',
  fish: 'mass of one fish',
  portion: 'nutrients, small doses',
  stocking: 'fish in water',
  loading: 'overflow rate',
  velocity: 'in a pipe',
  settling: 'of a particle',
  holding: 'solids held by a pad',
  'bed holding': 'solids held by gravel',
  'areal rate': 'nitrification, feed on beds',
  application: 'nutrient on a garden',
  surface: 'of media',
};
