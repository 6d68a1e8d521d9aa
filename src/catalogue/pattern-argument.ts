import type { PatternRow } from '../formulas/cone/cone-pattern';
import { readPattern } from '../formulas/cone/read-pattern';
import type { Piece } from '../formulas/cut/piece';
import type { Profile } from '../units/profile';
import { patternColumns } from './pattern-columns';

/** Rows of CONE.PATTERN, as the functions that lay them out or mark them take them. */
export const patterns = {
  table: patternColumns,
  meaning: 'rows of ten columns as CONE.PATTERN gives them',
} as const;

type ReadRow = PatternRow & { readonly row?: number };

/** The piece behind each row; rows whose numbers do not agree with each other came from another profile. */
export function pieceOf(argument: string, pattern: ReadRow, profile: Profile): Piece {
  return readPattern(pattern, argument, pattern.row ?? 1, profile.text);
}
