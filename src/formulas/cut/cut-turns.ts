import type { Piece } from './piece';

/**
 * Ways to turn a piece, in families from the few that a person would try to the many: its center line along or across the
 * sheet, one of its straight edges along or across the sheet, and every thirty degrees between.
 */
export interface Turns {
  readonly center: readonly number[];
  readonly edge: readonly number[];
  readonly between: readonly number[];
}

const quarter = Math.PI / 2;
const quarters = [0, 1, 2, 3].map((i) => i * quarter);

export function turnsOf(piece: Piece): Turns {
  if (piece.shape === 'rectangle') return { center: [0, quarter], edge: [], between: [] };
  const half = piece.angle / 2;
  return {
    center: quarters,
    edge: quarters.flatMap((turn) => [turn - half, turn + half]),
    between: Array.from({ length: 12 }, (_, i) => ((2 * i + 1) * Math.PI) / 12),
  };
}
