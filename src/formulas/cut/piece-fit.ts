/**
 * Whether a piece can lie on a sheet, turned any way. Frame and units as in `piece`.
 */
import { lapRefusal } from '../cone/cone-pattern';
import { type Piece, pieceArea, reachOf } from './piece';

/** Steps of a half turn that are tried before the best are refined. */
const steps = 180;

/**
 * The turn at which the piece needs least of a rectangle, rad: the smallest value of the larger share of length or
 * width.
 * A share over 1 there means that the piece does not lie on the rectangle at any turn.
 */
export function bestTurn(
  piece: Piece,
  length: number,
  width: number,
): { readonly turn: number; readonly share: number } {
  const share = shareAt(piece, length, width);
  const step = Math.PI / steps;
  const tried = Array.from({ length: steps }, (_, i) => share(i * step));
  const reach = reachOf(piece);
  const [most, aside] = [reach(0) + reach(Math.PI), reach(Math.PI / 2) + reach(-Math.PI / 2)];
  const diagonal = Math.sqrt(most * most + aside * aside);
  // The size of a piece changes by at most its greatest extent per radian, so most places cannot be the best.
  const gain = (diagonal / Math.min(length, width)) * step;
  let best = { turn: 0, share: Infinity };
  for (const [i, here] of tried.entries()) {
    const next = tried[(i + 1) % steps] ?? here;
    const previous = tried[(i + steps - 1) % steps] ?? here;
    if (here - gain > best.share || here > next || here > previous) continue;
    const found = narrowed(share, i * step, step);
    if (found.share < best.share) best = found;
  }
  return best;
}

/** Length and width of a piece along and across the sheet, by its turn. */
export function turnedBox(piece: Piece): (turn: number) => { readonly length: number; readonly width: number } {
  const reach = reachOf(piece);
  return (turn) => ({
    length: reach(-turn) + reach(Math.PI - turn),
    width: reach(Math.PI / 2 - turn) + reach(-Math.PI / 2 - turn),
  });
}

/** The larger share of a rectangle's length or width that a piece needs, by its turn. */
function shareAt(piece: Piece, length: number, width: number): (turn: number) => number {
  const box = turnedBox(piece);
  return (turn) => {
    const taken = box(turn);
    return Math.max(taken.length / length, taken.width / width);
  };
}

/** Whether the piece fits the rectangle at some turn; a billionth too much counts as rounding. */
export function fitsRectangle(piece: Piece, length: number, width: number): boolean {
  if (length <= 0 || width <= 0) return false;
  // Most pieces are clearly too large, or fit the rectangle square to it; then no turns need to be searched.
  if (!(pieceArea(piece) <= length * width * (1 + 1e-8))) return false;
  const most = 1 + 1e-9;
  const share = shareAt(piece, length, width);
  return share(0) <= most || share(Math.PI / 2) <= most || bestTurn(piece, length, width).share <= most;
}

/** More pieces per cone than this are not tried. */
export const mostPieces = 60;

/** The least number of pieces per cone at which one fits the rectangle; undefined if none up to the limit fits. */
export function piecesThatFit(pieceOf: (pieces: number) => Piece, length: number, width: number): number | undefined {
  for (let pieces = 1; pieces <= mostPieces; pieces++) {
    const piece = pieceOf(pieces);
    if (lapRefusal(piece) === undefined && fitsRectangle(piece, length, width)) return pieces;
  }
  return undefined;
}

/** The least value near a place, by thirds. */
function narrowed(value: (x: number) => number, middle: number, reach: number): { turn: number; share: number } {
  let low = middle - reach;
  let high = middle + reach;
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3;
    if (value(low + third) < value(high - third)) high -= third;
    else low += third;
  }
  // A turn square to the sheet is often the best, and is then used exactly.
  const square = { turn: middle, share: value(middle) };
  const between = { turn: (low + high) / 2, share: value((low + high) / 2) };
  return square.share <= between.share ? square : between;
}
