import type { Argument, Column } from '../../catalogue/argument';
import { isKind, type Kind } from '../../units/kinds';

/** How a part of a cell formula is read. */
export type Role =
  /** Numbers of one kind, read in the workbook's units. `worked` names the arithmetic before, if there is any. */
  | { readonly as: 'figure'; readonly kind: Kind; readonly afterArithmetic?: string }
  /** A table; columns without a kind hold words or plain numbers. */
  | { readonly as: 'columns'; readonly kinds: readonly (Kind | undefined)[] }
  /** Rows whose first column names the input, which gives the kind of the other columns. */
  | { readonly as: 'inputs'; readonly kinds: Readonly<Record<string, Kind>> }
  /** Only its sign matters. */
  | { readonly as: 'sign' }
  /** Used by a function that does not know the workbook's units. */
  | { readonly as: 'other' }
  /** Whether there is a value, a count, a word: to change a number there changes nothing. */
  | { readonly as: 'nothing' };

export const other: Role = { as: 'other' };
export const nothing: Role = { as: 'nothing' };
export const sign: Role = { as: 'sign' };

/** The role of an argument; `kindWord` is the text of an argument called `kind`, for functions that have one. */
export function roleOfArgument(spec: Argument, kindWord: string | undefined): Role {
  if ('choice' in spec) return nothing;
  if ('table' in spec) return { as: 'columns', kinds: Object.values(spec.table).map(kindOfColumn) };
  if ('cells' in spec) return spec.inputs === undefined ? other : { as: 'inputs', kinds: spec.inputs };
  if ('reader' in spec) {
    if (spec.kind !== undefined) return { as: 'figure', kind: spec.kind };
    const told = kindWord?.trim().toLowerCase() ?? '';
    return isKind(told) ? { as: 'figure', kind: told } : nothing;
  }
  return { as: 'figure', kind: spec.kind };
}

function kindOfColumn(column: Column): Kind | undefined {
  return 'kind' in column ? column.kind : undefined;
}

/** The kind of an input's figures, by the name in its row. */
export function kindOfInput(kinds: Readonly<Record<string, Kind>>, name: string): Kind | undefined {
  const folded = name.trim().toLowerCase().replace(/\s+/g, ' ');
  return Object.keys(kinds).includes(folded) ? kinds[folded] : undefined;
}

/** The role of numbers that go through arithmetic before they reach this role. */
export function worked(role: Role, how: string): Role {
  return role.as === 'figure'
    ? { ...role, afterArithmetic: role.afterArithmetic ?? how }
    : role.as === 'nothing'
      ? role
      : other;
}

export function keyOf(role: Role): string {
  if (role.as === 'figure') return `figure ${role.kind} ${role.afterArithmetic ?? ''}`;
  if (role.as === 'columns') return `columns ${role.kinds.join()}`;
  if (role.as === 'inputs') return `inputs ${Object.keys(role.kinds).join()}`;
  return role.as;
}

/** Whether it comes from one of our functions. */
export function isOurs(role: Role): boolean {
  return role.as === 'figure' || role.as === 'columns' || role.as === 'inputs';
}

/** The role of one cell of a range, by its column and the name in its row. */
export function inColumn(role: Role, across: number, nameOfRow: string): Role {
  if (role.as !== 'columns' && role.as !== 'inputs') return role;
  const kind =
    role.as === 'columns' ? role.kinds[across] : across === 0 ? undefined : kindOfInput(role.kinds, nameOfRow);
  return kind === undefined ? nothing : { as: 'figure', kind };
}
