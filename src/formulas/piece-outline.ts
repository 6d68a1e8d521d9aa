/**
 * The outline of a piece, as exact lines and arcs and as a polygon. Frame and units as in `piece`.
 */
import { beside, type Corner, lapTurn, type Piece, pieceCorners, rise } from './piece';

export interface OutlineLine {
  readonly line: readonly [from: Corner, to: Corner];
}

/** An arc about the origin from an angle, counter-clockwise where the sweep is positive. */
export interface OutlineArc {
  readonly arc: { readonly radius: number; readonly start: number; readonly sweep: number };
}

export type OutlinePart = OutlineLine | OutlineArc;

/** Lines and arcs counter-clockwise, each beginning where the one before it ends. */
export function pieceOutline(piece: Piece): readonly OutlinePart[] {
  const corners = pieceCorners(piece);
  if (piece.shape === 'rectangle') {
    return corners.map((from, i) => ({ line: [from, corners[(i + 1) % corners.length]!] }));
  }
  const { innerRadius, outerRadius, angle, lap } = piece;
  const outer = angle + lapTurn(piece, outerRadius);
  const inner = angle + lapTurn(piece, innerRadius);
  const foot = beside(angle / 2, rise(innerRadius, lap), lap);
  const parts: OutlinePart[] = [
    { line: [corners[0]!, corners[1]!] },
    { arc: { radius: outerRadius, start: -angle / 2, sweep: outer } },
    { line: [corners[2]!, foot] },
  ];
  if (lap > innerRadius) parts.push({ line: [foot, beside(angle / 2, 0, innerRadius)] });
  if (innerRadius > 0) parts.push({ arc: { radius: innerRadius, start: -angle / 2 + inner, sweep: -inner } });
  return parts;
}

/** The outline as a polygon whose chords stray from the arcs by at most the tolerance, m. */
export function piecePolygon(piece: Piece, tolerance: number): readonly Corner[] {
  const polygon: Corner[] = [];
  for (const part of pieceOutline(piece)) {
    if ('line' in part) {
      polygon.push(part.line[0]);
      continue;
    }
    const { radius, start, sweep } = part.arc;
    const widest = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
    const steps = Math.max(1, Math.ceil(Math.abs(sweep) / widest));
    for (let i = 0; i < steps; i++) {
      const angle = start + (sweep * i) / steps;
      polygon.push({ x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
    }
  }
  return polygon;
}
