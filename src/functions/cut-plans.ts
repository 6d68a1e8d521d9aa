/**
 * The script of the search for cut plans, which the function script loads when the first plan is asked for.
 */
import { layPieces } from '../formulas/cut/lay-pieces';
import type { PieceSearchHolder } from '../formulas/cut/lay-pieces-later';

(globalThis as PieceSearchHolder).siltsteadLayPieces = layPieces;
