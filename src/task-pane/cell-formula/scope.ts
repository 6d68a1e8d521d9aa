import type { BookCell } from './book';
import type { Part } from './read-formula';

/** Where a part of a formula is: the cell of the formula, and the names that LET defines there. */
export interface Scope {
  readonly home: BookCell;
  readonly bound: ReadonlyMap<string, { readonly part: Part; readonly scope: Scope } | undefined>;
}

export function scopeOf(home: BookCell): Scope {
  return { home, bound: new Map() };
}
