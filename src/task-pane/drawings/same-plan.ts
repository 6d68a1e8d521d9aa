/**
 * The other formulas of a workbook that lay out the same pieces on the same sheets: the sheets to buy and the places of
 * the pieces must come from one search, or they contradict each other.
 */
import { HostError, type SheetHost } from '../../hosts/sheet-host';
import { isSameSpot } from '../cell-formula/book';
import type { SiltCall } from '../cell-formula/calls';
import { siltCalls } from '../cell-formula/calls';
import { readFormula } from '../cell-formula/read-formula';
import { scopeOf } from '../cell-formula/scope';
import { argument, unitsOf, withoutErrors } from '../follow/arguments';
import type { Surroundings } from '../follow/evaluate';
import { first } from '../follow/grid';
import { effortPlace, withEffort } from './effort-argument';
import type { CutSearch } from './recognition';

type Around = Surroundings & { readonly host: SheetHost };

/** A formula with another effort; `next` is undefined where its effort is no plain number. */
export interface OtherFormula {
  readonly place: CutSearch['place'];
  readonly formula: string;
  readonly next: string | undefined;
}

const layouts = new Set(['CUT.PLAN', 'CUT.SHEETS']);

/** The other formulas of the same plan whose effort differs. */
export async function othersOfPlan(search: CutSearch, effort: number, around: Around): Promise<OtherFormula[]> {
  const others: OtherFormula[] = [];
  for (const { sheet, range, formulas } of await around.host.readUsed()) {
    for (const [down, line] of formulas.entries()) {
      for (const [across, formula] of line.entries()) {
        if (formula === undefined || !/SILT[._]CUT[._]/i.test(formula)) continue;
        const place = { sheet, row: range.row + down, column: range.column + across };
        if (isSameSpot(place, search.place)) continue;
        const next = await withOneEffort(formula, place, search, effort, around);
        if (next !== formula) others.push({ place, formula, next });
      }
    }
  }
  return others;
}

/** The formula with the effort in each of its calls for the plan. */
async function withOneEffort(
  formula: string,
  place: CutSearch['place'],
  search: CutSearch,
  effort: number,
  around: Around,
): Promise<string | undefined> {
  let text: string | undefined = formula;
  for (;;) {
    const call: SiltCall | undefined = await callToChange(text, place, search, effort, around);
    if (call === undefined) return text;
    text = withEffort(text, call, effort);
    if (text === undefined) return undefined;
  }
}

async function callToChange(
  formula: string,
  place: CutSearch['place'],
  search: CutSearch,
  effort: number,
  around: Around,
): Promise<SiltCall | undefined> {
  const part = readFormula(formula);
  if (part === undefined) return undefined;
  for (const call of siltCalls(part, scopeOf({ ...place, value: '', formula, source: undefined }))) {
    if (layouts.has(call.name) && (await isToChange(call, search, effort, around))) return call;
  }
  return undefined;
}

async function isToChange(call: SiltCall, search: CutSearch, effort: number, around: Around): Promise<boolean> {
  try {
    const given = async (at: number) => withoutErrors(await argument(call, at, around));
    const [patterns, length, width, gap, own] = await Promise.all([1, 2, 3, 4, effortPlace].map(given));
    const sizes = [length, width, gap].map((grid) => first(grid ?? []));
    const values = [await unitsOf(call, around), patterns, ...sizes];
    return isSame(values, search.arguments) && Number(first(own ?? []) || 1) !== effort;
  } catch (error) {
    // A call that cannot be read is of no plan, or shows an error of its own.
    if (error instanceof HostError) throw error;
    return false;
  }
}

/** A gap that is left out is 0. */
function isSame(one: readonly unknown[], other: readonly unknown[]): boolean {
  const plain = (values: readonly unknown[]) => JSON.stringify([...values.slice(0, 4), values[4] || 0]);
  return plain(one) === plain(other);
}
