import type { BookCell } from './book';
import type { Part } from './read-formula';

/** Where a part of a formula stands: the cell of its formula, and the words that LET gave a meaning. */
export interface Scope {
  readonly home: BookCell;
  readonly bound: ReadonlyMap<string, { readonly part: Part; readonly scope: Scope } | undefined>;
}

export function scopeOf(home: BookCell): Scope {
  return { home, bound: new Map() };
}
