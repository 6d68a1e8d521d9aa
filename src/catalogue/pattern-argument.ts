import type { PatternRow } from '../formulas/cone/cone-pattern';
import { readPattern } from '../formulas/cone/read-pattern';
import type { Piece } from '../formulas/cut/piece';
import type { Profile } from '../units/profile';
import { patternColumns } from './pattern-columns';

/** Rows of CONE.PATTERN, as an argument of other functions. */
export const patterns = {
  table: patternColumns,
  meaning: 'rows of ten columns from CONE.PATTERN',
} as const;

type ReadRow = PatternRow & { readonly row?: number };

/** The piece that a row describes; a row whose numbers disagree came from another profile and is refused. */
export function pieceOf(argument: string, pattern: ReadRow, profile: Profile): Piece {
  return readPattern(pattern, argument, pattern.row ?? 1, profile.text);
}
