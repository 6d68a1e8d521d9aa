/**
 * The outline of a piece, as exact lines and arcs. Frame and units as in `piece`.
 */
import { cosine } from '../numeric/portable-angles';
import { type Corner, halfChord, lapTurn, type Piece, pieceCorners, pointBeside, polar } from './piece';

export interface OutlineLine {
  readonly line: readonly [from: Corner, to: Corner];
}

/** An arc about the origin from an angle, counter-clockwise where the sweep is positive. */
export interface OutlineArc {
  readonly arc: {
    readonly radius: number;
    readonly start: number;
    readonly sweep: number;
    /** Where it begins. */
    readonly from: Corner;
    /** The direction of its middle, of length 1, and the cosine of the angle from there to its ends. */
    readonly middle: Corner;
    readonly reach: number;
  };
}

export type OutlinePart = OutlineLine | OutlineArc;

/** Lines and arcs counter-clockwise, each beginning where the one before it ends. */
export function pieceOutline(piece: Piece): readonly OutlinePart[] {
  const corners = pieceCorners(piece);
  if (piece.shape === 'rectangle') {
    return corners.map((from, i) => ({ line: [from, corners[(i + 1) % corners.length] ?? from] }));
  }
  const { innerRadius, outerRadius, angle, lap } = piece;
  const [innerStart, outerStart, outerEnd] = corners;
  const outer = angle + lapTurn(piece, outerRadius);
  const inner = angle + lapTurn(piece, innerRadius);
  const foot = pointBeside(angle / 2, halfChord(innerRadius, lap), lap);
  const parts: OutlinePart[] = [
    { line: [innerStart, outerStart] },
    arcPart(outerRadius, -angle / 2, outer),
    { line: [outerEnd, foot] },
  ];
  if (lap > innerRadius) parts.push({ line: [foot, pointBeside(angle / 2, 0, innerRadius)] });
  if (innerRadius > 0) parts.push(arcPart(innerRadius, -angle / 2 + inner, -inner));
  return parts;
}

function arcPart(radius: number, start: number, sweep: number): OutlineArc {
  const [from, middle] = [polar(radius, start), polar(1, start + sweep / 2)];
  return { arc: { radius, start, sweep, from, middle, reach: cosine(sweep / 2) } };
}
