/**
 * A piece as points, to hold its figures to: its outline as a polygon, and whether a point is in it.
 */
import type { Corner, Piece } from '../../../src/formulas/cut/piece';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';

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

/** Whether a point is in the piece or on its outline, by the definition of a sector and its strip of lap. */
export function pieceHolds(piece: Piece, x: number, y: number): boolean {
  if (piece.shape === 'rectangle') return x >= 0 && y >= 0 && x <= piece.length && y <= piece.width;
  const { innerRadius, outerRadius, angle, lap } = piece;
  const radius = Math.hypot(x, y);
  if (radius < innerRadius || radius > outerRadius) return false;
  if (Math.abs(Math.atan2(y, x)) <= angle / 2) return true;
  const cos = Math.cos(angle / 2);
  const sin = Math.sin(angle / 2);
  const aside = y * cos - x * sin;
  return x * cos + y * sin >= 0 && aside >= 0 && aside <= lap;
}
