import type { CellScalar } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import type { Profile } from '../../units/profile';
import { type Book, type BookCell, placeText, type Spot } from '../cell-formula/book';
import { newValue } from './new-value';
import type { LiteralUse, Use, Uses } from './use';

/** One possible new content of a cell, and its text in the list. */
export interface Choice {
  readonly kind: Kind | undefined;
  readonly content: CellScalar;
  readonly shown: string;
}

/** A cell whose typed numbers have another meaning in the new profile. */
export interface Conversion {
  readonly spot: Spot;
  /** The present content: the typed value, or the formula with numbers in it. */
  readonly content: CellScalar;
  readonly shown: string;
  /** One choice, or one for each kind that the cell is used as. */
  readonly choices: readonly Choice[];
  /** Why it is listed separately and changed only if ticked; undefined for a clear case. */
  readonly apart: string | undefined;
}

export interface LeftAlone {
  readonly spot: Spot;
  readonly why: string;
}

export interface Findings {
  readonly plain: readonly Conversion[];
  readonly apart: readonly Conversion[];
  /** Numbers that cannot be converted here, and why. */
  readonly byHand: readonly LeftAlone[];
}

/** Sorts the numbers: those to convert, those to convert only if ticked, and those to check by hand. */
export function findingsOf(book: Book, uses: Uses, from: Profile, to: Profile): Findings {
  const found: Conversion[] = [];
  const matters = (kind: Kind | undefined) => kind === undefined || from.units[kind].scale !== to.units[kind].scale;
  const byHand: LeftAlone[] = uses.byHand.flatMap(({ at, why, kind }) => (matters(kind) ? [{ spot: at, why }] : []));
  const change = { from, to };
  for (const cell of book.typed) {
    const conversion = typedConversion(cell, uses.ofCell.get(cell) ?? [], change, byHand);
    if (conversion !== undefined) found.push(conversion);
  }
  for (const [cell, literals] of uses.literals) {
    const conversion = formulaConversion(cell, literals, change);
    if (conversion !== undefined) found.push(conversion);
  }
  return {
    plain: found.filter(({ apart }) => apart === undefined),
    apart: found.filter(({ apart }) => apart !== undefined),
    byHand,
  };
}

interface Change {
  readonly from: Profile;
  readonly to: Profile;
}

function typedConversion(
  cell: BookCell,
  uses: readonly Use[],
  { from, to }: Change,
  byHand: LeftAlone[],
): Conversion | undefined {
  const { value } = cell;
  if (typeof value === 'object' || typeof value === 'boolean') return undefined;
  const choices: Choice[] = [];
  for (const kind of kindsOf(uses)) {
    const next = newValue(value, kind, from, to);
    if (next === 'same') continue;
    if ('fault' in next) byHand.push({ spot: cell, why: next.fault });
    else if ('range' in next) choices.push({ kind, content: next.range, shown: next.range });
    else choices.push({ kind, content: next.value, shown: withUnit(next.value, kind, to) });
  }
  const [first] = choices;
  if (first === undefined) return undefined;
  const shown = withUnit(value, choices.length === 1 ? first.kind : undefined, from);
  return { spot: cell, content: value, shown, choices, apart: whyApart(uses, kindsOf(uses)) };
}

function kindsOf(uses: readonly Use[]): readonly Kind[] {
  return [...new Set(uses.flatMap(({ role }) => (role.as === 'figure' ? [role.kind] : [])))];
}

function whyApart(uses: readonly Use[], kinds: readonly Kind[]): string | undefined {
  if (kinds.length > 1) return `used as ${kinds.join(' and as ')}`;
  const foreign = uses.find(({ role }) => role.as === 'other' || (role.as === 'sign' && kinds[0] === 'temperature'));
  if (foreign !== undefined) return `also used in ${placeText(foreign.by)}`;
  for (const { role, by } of uses) {
    if (role.as === 'figure' && role.afterArithmetic !== undefined)
      return `used in ${role.afterArithmetic} in ${placeText(by)}`;
  }
  return undefined;
}

/** A formula with numbers typed inside: all of them change together. */
function formulaConversion(
  cell: BookCell,
  literals: readonly LiteralUse[],
  { from, to }: Change,
): Conversion | undefined {
  const places = new Map<number, LiteralUse[]>();
  for (const one of literals) places.set(one.from, [...(places.get(one.from) ?? []), one]);
  let formula = cell.formula ?? '';
  let apart: string | undefined;
  const [before, after]: [string[], string[]] = [[], []];
  for (const [, uses] of [...places].sort(([a], [b]) => b - a)) {
    const [first] = uses as [LiteralUse];
    const [kind, second] = kindsOf(uses);
    const next = kind === undefined ? 'same' : newValue(first.value, kind, from, to);
    if (kind === undefined || next === 'same' || !('value' in next)) continue;
    if (second !== undefined) return undefined;
    apart ??= whyApart(uses, [kind]);
    // A spreadsheet keeps 15 digits of a number in a formula.
    formula = `${formula.slice(0, first.from)}${Number(next.value.toPrecision(15))}${formula.slice(first.to)}`;
    before.unshift(withUnit(first.value, kind, from));
    after.unshift(withUnit(next.value, kind, to));
  }
  if (before.length === 0) return undefined;
  return {
    spot: cell,
    content: cell.formula ?? '',
    shown: `in its formula: ${before.join(', ')}`,
    choices: [{ kind: undefined, content: formula, shown: after.join(', ') }],
    apart,
  };
}

function withUnit(value: number | string, kind: Kind | undefined, profile: Profile): string {
  const figure = typeof value === 'number' ? String(Number(value.toPrecision(7))) : value;
  return `${figure} ${kind === undefined ? '' : profile.units[kind].symbol}`.trimEnd();
}
