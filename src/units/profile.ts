import { isUnitless, listedUnits } from './kind-units';
import { type Kind, kindRows, kinds } from './kinds';
import { nearest } from './nearest';
import { tidyText, wordList, wordText } from './text';
import { makeUnit, type Unit } from './unit';
import { Unreadable } from './unreadable';
import { phraseOfKind, wrongUnit } from './wrong-unit';

/** The unit of every kind, as a text such as `US, flow L/min, temperature C` asks for them. */
export interface Profile {
  readonly text: string;
  readonly name: 'metric' | 'US';
  readonly units: Readonly<Record<Kind, Unit>>;
  /** The same units; a map is read faster than an object with that many keys. */
  readonly index: ReadonlyMap<Kind, Unit>;
}

const ADVICE = 'put "US", "metric" or the cell SiltUnits first';
const EXCEPTIONS = 'exceptions may follow, as in "US, flow L/min, temperature C"';

const profiles = new Map<string, Profile>();

/** Reads a profile: `metric` or `US`, then any exceptions, each a kind and its unit, parted by commas; case and spacing do not matter. */
export function readProfile(value: unknown): Profile {
  if (typeof value !== 'string') {
    const given =
      typeof value === 'boolean' ? String(value).toUpperCase() : typeof value === 'number' ? value : 'blank';
    throw new Unreadable(`${given} is not a profile; ${ADVICE}`);
  }
  const known = profiles.get(value);
  if (known) return known;
  const profile = parseProfile(value);
  if (profiles.size >= 200) profiles.clear();
  profiles.set(value, profile);
  return profile;
}

function parseProfile(text: string): Profile {
  const [head = '', ...exceptions] = text.length > 1000 ? [text] : sameCase(tidyText(text)).split(/ ?[,;](?!\d{3}) ?/);
  const word = head.toLowerCase().replaceAll('.', '');
  if (word !== 'us' && word !== 'metric')
    throw new Unreadable(`${wordText(head)} is not a profile; ${ADVICE}; ${EXCEPTIONS}`);
  const name = word === 'us' ? 'US' : 'metric';
  const chosen = new Map<Kind, Unit>();
  for (const exception of exceptions) {
    if (exception !== '') addException(chosen, exception);
  }
  const units = {} as Record<Kind, Unit>;
  for (const kind of kinds) units[kind] = chosen.get(kind) ?? unitMade(kind, kindRows[kind][name]);
  return { text, name, units, index: new Map(kinds.map((kind) => [kind, units[kind]])) };
}

/** In a profile typed all in capitals case means nothing, so ML is mL. */
function sameCase(text: string): string {
  return text === text.toUpperCase() ? text.toLowerCase() : text;
}

/** The kinds that share one mass unit, so that a daily amount times days is a mass. */
const massKinds = { mass: '', daily: '/d', transfer: '/h' } as const;

function addException(chosen: Map<Kind, Unit>, exception: string): void {
  const [kind, text] = splitException(exception);
  const unit = makeUnit(kind, text) ?? makeUnit(kind, `/${text}`);
  if (!unit) throw new Unreadable(wrongUnit(kind, text, text, listedUnits(kind)));
  if (kind === 'mass' || kind === 'daily' || kind === 'transfer') {
    const time = massKinds[kind];
    if (!unit.symbol.endsWith(time)) {
      const allowed = listedUnits('mass').map((symbol) => symbol + time);
      throw new Unreadable(`${wordText(text)} is not a unit for ${kind} in a profile; give ${wordList(allowed)}`);
    }
    const mass = unit.symbol.slice(0, unit.symbol.length - time.length);
    for (const each of ['mass', 'daily', 'transfer'] as const) {
      chooseUnit(chosen, each, unitMade(each, mass + massKinds[each]));
    }
  } else chooseUnit(chosen, kind, unit);
}

/** A unit of our own lists, or one composed of a unit that was just read. */
function unitMade(kind: Kind, text: string): Unit {
  const unit = makeUnit(kind, text);
  if (unit === undefined) throw new Error(`${text} is no unit of ${kind}`);
  return unit;
}

function chooseUnit(chosen: Map<Kind, Unit>, kind: Kind, unit: Unit): void {
  const other = chosen.get(kind);
  if (other && other.symbol !== unit.symbol) {
    const why = kind in massKinds ? '; mass, daily and transfer share one mass unit' : '';
    throw new Unreadable(`the profile has ${kind} in ${other.symbol} and in ${unit.symbol}; keep one of them${why}`);
  }
  chosen.set(kind, unit);
}

const byLength = [...kinds].sort((a, b) => b.length - a.length);
const choosable = kinds.filter((kind) => !isUnitless(kind) && !/^(?:minutes|hours|days|months)$/.test(kind));

function splitException(exception: string): readonly [Kind, string] {
  const lower = exception.toLowerCase();
  const kind = byLength.find(
    (each) => lower === each || (lower.startsWith(each) && /[ =:]/.test(lower.charAt(each.length))),
  );
  if (!kind) {
    const near = nearest(lower.replace(/ [^ ]*$/, ''), choosable, 5);
    throw new Unreadable(
      `${wordText(exception)} is not an exception to a profile; name a kind and its unit, such as ${wordList(near)}; UNIT.LIST has them all`,
    );
  }
  const text = exception.slice(kind.length).replace(/^ ?[=:]? ?/, '');
  if (!choosable.includes(kind)) throw new Unreadable(`${kind} has no unit to choose; leave it out of the profile`);
  if (text === '')
    throw new Unreadable(`${kind} needs a unit after it; give ${phraseOfKind(kind)} in ${wordList(listedUnits(kind))}`);
  return [kind, text];
}
