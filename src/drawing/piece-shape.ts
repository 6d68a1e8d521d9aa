import { type Corner, halfChord, type Piece, pointBeside } from '../formulas/cut/piece';
import { pieceOutline } from '../formulas/cut/piece-outline';
import type { Line, LineStyle, Point, Primitive } from './drawing-model';
import { arc, line } from './shapes';

/** The place of a piece: a sector's arc center and the direction of its center line, or a rectangle's lower-left corner. */
export interface Place extends Point {
  readonly direction: number;
}

/** A point of the piece's own frame, moved to its place. A turned rectangle keeps its lower-left corner. */
export function laid(piece: Piece, at: Place): (point: Corner) => Point {
  const cos = roundedUnit(Math.cos(at.direction));
  const sin = roundedUnit(Math.sin(at.direction));
  const shift = piece.shape === 'rectangle' ? { x: piece.width * sin, y: 0 } : { x: 0, y: 0 };
  return ({ x, y }) => ({ x: at.x + shift.x + x * cos - y * sin, y: at.y + shift.y + x * sin + y * cos });
}

/** Quarter turns leave straight edges exactly upright. */
function roundedUnit(value: number): number {
  const nearest = Math.round(value);
  return Math.abs(value - nearest) < 1e-12 ? nearest : value;
}

/** The outline to cut, including the lap. */
export function outlineOf(piece: Piece, at: Place): readonly Primitive[] {
  const place = laid(piece, at);
  return pieceOutline(piece).map((part) =>
    'line' in part
      ? line('cut', 'outline', place(part.line[0]), place(part.line[1]))
      : arc('cut', 'outline', at, part.arc.radius, at.direction + part.arc.start, part.arc.sweep),
  );
}

/** The line that the other edge reaches, and the rivet lines in the lap and under it. */
export function marksOf(piece: Piece, at: Place): readonly Primitive[] {
  const { lap } = piece;
  if (lap === 0) return [];
  const place = laid(piece, at);
  const mark = (style: LineStyle, from: Corner, to: Corner): Line => line('mark', style, place(from), place(to));
  if (piece.shape === 'rectangle') {
    const across = (style: LineStyle, x: number) => mark(style, { x, y: 0 }, { x, y: piece.width });
    return [across('dashed', lap), across('center', lap / 2), across('center', piece.length - lap / 2)];
  }
  const { innerRadius, outerRadius, angle } = piece;
  const along = (style: LineStyle, edge: number, aside: number) =>
    mark(
      style,
      pointBeside(edge, halfChord(innerRadius, aside), aside),
      pointBeside(edge, halfChord(outerRadius, aside), aside),
    );
  return [along('dashed', angle / 2, 0), along('center', angle / 2, lap / 2), along('center', -angle / 2, lap / 2)];
}
