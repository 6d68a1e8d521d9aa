import { kindOfUnit } from './kind-units';
import type { Kind } from './kinds';
import { nearest } from './nearest';
import { splitNitrogenForm } from './nitrogen-form';
import { withArticle, wordList, wordText } from './text';

const phrases: Partial<Record<Kind, string>> = {
  particle: 'a particle size',
  fish: 'a fish mass',
  daily: 'a daily amount',
  settling: 'a settling velocity',
  surface: 'a specific surface',
  minutes: 'a time',
  hours: 'a time',
  days: 'a time',
  months: 'a time',
  money: 'money',
};

/** A kind as a message names it: `a volume`, `an air flow`, `a time`. */
export function phraseOfKind(kind: Kind): string {
  return phrases[kind] ?? withArticle(kind);
}

/** Figures of examples where 20 of the unit would be absurd, by unit or by kind. */
const exampleFigures: Readonly<Record<string, string>> = { in: '22 1/2', '°F': '70', K: '293', particle: '0.1' };

/** `20 gpm`: what may be typed for a kind, in one of its units. */
function exampleOf(kind: Kind, unit: string): string {
  return `${exampleFigures[kind] ?? exampleFigures[unit] ?? '20'} ${unit}`;
}

/** What a quantity of the kind may be given as: `a dimension (in, mm or ft), such as 22 1/2 in`. */
export function allowedAs(kind: Kind, units: readonly string[], hasExample = true): string {
  if (kind === 'date') return 'a date, such as 2026-05-01';
  if (kind === 'share') return 'a share from 0 to 1, or a percentage such as 32 %';
  if (kind === 'choice') return 'a word from the list';
  const [unit] = units;
  if (unit === undefined) return `${phraseOfKind(kind)}, a number without a unit`;
  return `${phraseOfKind(kind)} (${wordList(units)})${hasExample ? `, such as ${exampleOf(kind, unit)}` : ''}`;
}

/** Says that a quantity has a unit of another kind, or one that is not known, and what is allowed, the nearest first. */
export function wrongUnit(kind: Kind, given: string, unit: string, units: readonly string[]): string {
  const other = kindOfUnit(unit) ?? (splitNitrogenForm(` ${unit}`).as && 'concentration');
  // A profile is given units without figures.
  const hasExample = given !== unit;
  if (other && phraseOfKind(other) !== phraseOfKind(kind)) {
    return `${wordText(given)} is ${phraseOfKind(other)}; give ${allowedAs(kind, units, hasExample)}`;
  }
  return `${wordText(unit)} is not a unit that is read here; give ${allowedAs(kind, nearest(unit, units, 20), hasExample)}`;
}
