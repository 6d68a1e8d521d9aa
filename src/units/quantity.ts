import { serialOfDate } from './date';
import { kindOfUnit, unitOfKind } from './kind-units';
import type { Kind } from './kinds';
import { nitrogenShare, splitNitrogenForm } from './nitrogen-form';
import { notRead } from './not-read';
import { numberAtHead } from './number-text';
import { judgeBare } from './plain-number';
import type { Profile } from './profile';
import { tidyText, wordText } from './text';
import { fromSi, type Unit } from './unit';
import type { Measure } from './unit-text';
import { Unreadable } from './unreadable';
import { unitsRead } from './wording';
import { wrongUnit } from './wrong-unit';

export { wordGiven, wordQuantity } from './wording';

/** Text longer than this is not a quantity. */
const LONGEST_TEXT = 200;

/**
 * Reads what was given as SI: a bare number, or text that is only a number, in the profile's unit; text with a unit in
 * that unit. `atMost` is the most, in SI, that a bare length or share may read as, in place of 100 m and 1.
 * Throws Unreadable if it is not a quantity of the kind, or a bare number that looks like an error.
 */
export function readQuantity(profile: Profile, kind: Kind, value: unknown, atMost?: number): number {
  if (typeof value === 'number') {
    const unit = unitOf(profile, kind);
    if (value >= unit.plainFrom && value <= unit.plainTo) return (value + unit.shift) * unit.scale;
    return judgeBare(profile, kind, value, atMost);
  }
  if (typeof value !== 'string' || value.length > LONGEST_TEXT || kind === 'choice')
    throw notRead(profile, kind, value);
  return readText(profile, kind, value, atMost);
}

/** A quantity in SI as a number in the profile's unit. */
export function toProfile(profile: Profile, kind: Kind, si: number): number {
  return fromSi(unitOf(profile, kind), si);
}

function unitOf(profile: Profile, kind: Kind): Unit {
  return profile.index.get(kind) ?? profile.units[kind];
}

function readText(profile: Profile, kind: Kind, value: string, atMost: number | undefined): number {
  const text = withoutSigns(kind, tidyText(value));
  if (kind === 'date') {
    const serial = serialOfDate(text);
    if (serial !== undefined) return serial;
  }
  const head = numberAtHead(text);
  if (!head || !Number.isFinite('readings' in head ? 0 : head.value)) throw notRead(profile, kind, value);
  if ('readings' in head) {
    const [decimal, grouped] = head.readings.map((reading) => `${reading} ${head.rest}`.trim());
    throw new Unreadable(`${wordText(value)} could be ${decimal} or ${grouped}; write the one that you mean`);
  }
  if (head.rest === '') return readQuantity(profile, kind, head.value, atMost);
  const si = withUnit(kind, head.value, head.rest, text.startsWith('-'));
  if (si === undefined) throw refusal(profile, kind, value, head.rest);
  if (!Number.isFinite(si)) throw notRead(profile, kind, value);
  return si;
}

/** Removes the currency sign from money, and puts `SG` after its number. */
function withoutSigns(kind: Kind, text: string): string {
  if (kind === 'money' || kind === 'price of mass' || kind === 'price of energy') {
    return text.replace(/ ?[$€£¥] ?/, '');
  }
  const gravity = /^(?:sg|s\.g\.|specific gravity)(?: ?[:=])? ?(?=[\d.])/i.exec(text);
  return gravity ? `${text.slice(gravity[0].length)} SG` : text;
}

/** A number with the unit after it, or with several: `6' 4"`, `2 lb 3 oz`, `1 h 30 min`. */
function withUnit(kind: Kind, value: number, rest: string, negative: boolean): number | undefined {
  const unit = unitOfKind(kind, rest);
  if (unit) return toSi(unit, value);
  const [whole, name = ''] = /^([a-z]+\.?|')(?: ?[,-]| and(?= ))? ?(?=[\d.])/i.exec(rest) ?? [];
  const larger = whole === undefined ? undefined : unitOfKind(kind, name);
  const next = larger && numberAtHead(rest.slice((whole ?? '').length));
  if (larger?.shift !== 0 || !next || 'readings' in next) return undefined;
  const part = withUnit(kind, next.value, next.rest === '' && name === "'" ? '"' : next.rest, false);
  if (part === undefined || !(part < toSi(larger, 1))) return undefined;
  return toSi(larger, value) + (negative ? -part : part);
}

function toSi(unit: Measure, value: number): number {
  return ((value + unit.shift) * unit.numerator) / unit.denominator;
}

function refusal(profile: Profile, kind: Kind, value: string, rest: string): Unreadable {
  const isPieces = /^[\d.,-]|^\/\d|^['a-z]+[. -]*\d/i.test(rest);
  if (isPieces && !kindOfUnit(rest)) return notRead(profile, kind, value);
  const split = splitNitrogenForm(` ${rest}`);
  if (kind === 'concentration' && split.as) {
    const share = nitrogenShare[split.as];
    const nitrogen = share < 1 ? ` (its nitrogen is ${(100 * share).toFixed(1)} % of it)` : '';
    return new Unreadable(
      `${wordText(value)} says what it is measured as, which this argument does not use; give the number and its unit${nitrogen}`,
    );
  }
  return new Unreadable(wrongUnit(kind, value, rest, unitsRead(profile, kind)));
}
