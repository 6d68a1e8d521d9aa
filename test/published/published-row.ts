import type { ReferenceKey } from '../../src/manual/evidence/references';

/** One published figure and the call that should reproduce it; the runner sends every row through the adapter. */
export interface PublishedRow {
  /** The function's name and its arguments as a user gives them; a range is an array of rows. */
  readonly call: readonly [name: string, ...args: readonly unknown[]];
  /** Which cell of a spilled result is meant: its row (0-based, no heading row, or what stands first in it) and column. */
  readonly cell?: readonly [row: number | string, column: number];
  readonly expected: number | string;
  /** Relative tolerance of a number; text must match exactly. */
  readonly tolerance?: number;
  /** Absolute tolerance, where a relative one makes no sense. */
  readonly absolute?: number;
  /** The key of the source in the list of references. */
  readonly source: ReferenceKey;
  /** Table, equation, example or page in the source. */
  readonly place: string;
  /** Read in a copy of the source; computed by a script in test/oracles; worked by hand from the source, as the row shows. */
  readonly known: 'read' | 'computed' | 'worked' | 'memory' | 'common practice';
  /** Where authorities differ: the published figure that ours does not match, and why. */
  readonly disagrees?: string;
}
