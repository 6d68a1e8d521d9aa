import type { SiltCall } from '../cell-formula/calls';

/** Place of the effort among the arguments of CUT.PLAN, the units counted. */
export const effortPlace = 5;

/**
 * A cell formula with another effort in its call of CUT.PLAN; undefined where the effort is no plain number, because what
 * it refers to may be used elsewhere too.
 */
export function withEffort(formula: string, call: SiltCall, effort: number): string | undefined {
  const { given } = call;
  const part = given[effortPlace];
  if (part) {
    if (part.type !== 'Literal' || part.loc === undefined) return undefined;
    return spliced(formula, part.loc, String(effort));
  }
  const end = call.end;
  if (end === undefined) return undefined;
  if (given.length <= effortPlace) {
    return spliced(formula, [end - 1, end - 1], `${','.repeat(effortPlace + 1 - given.length)}${effort}`);
  }
  // The headings are given, and the effort's place before them is empty.
  const headings = given[effortPlace + 1]?.loc?.[0];
  const comma = headings === undefined ? -1 : formula.lastIndexOf(',', headings - 1);
  return comma < 0 ? undefined : spliced(formula, [comma, comma], String(effort));
}

function spliced(text: string, [from = 0, to = from]: readonly number[], put: string): string {
  return `${text.slice(0, from)}${put}${text.slice(to)}`;
}
