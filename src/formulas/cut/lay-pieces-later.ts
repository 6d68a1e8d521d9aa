/**
 * Stands for `lay-pieces` in the function script: the search is a script of its own, which is loaded when the first cut
 * plan is asked for, because most workbooks ask for none.
 */
import type { layPieces as find, LaidPieces, LayingOptions } from './lay-pieces';
import type { Piece } from './piece';

export type { SheetSize } from './lay-pieces';

/** Where the script of the search leaves it. */
export interface PieceSearchHolder {
  siltsteadLayPieces?: typeof find;
}

const search = () => (globalThis as PieceSearchHolder).siltsteadLayPieces;

export const isSearchLoaded = (): boolean => search() !== undefined;

export function layPieces(pieces: readonly Piece[], options: LayingOptions): LaidPieces {
  const lay = search();
  if (lay === undefined) throw new Error('The search for cut plans is not loaded');
  return lay(pieces, options);
}
