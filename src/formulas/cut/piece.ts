/**
 * One piece of sheet, exactly: the sector of a cone with its lap, or the rectangle of a cylinder. Lengths in m, rad.
 *
 * A sector lies with its arc center at the origin and its center line along +x. Its lap is a strip of constant width
 * along
 * the counter-clockwise straight edge that ends on the same two arcs; if it is wider than the inner radius, its foot
 * is the line through the arc center square to the edge. A rectangle lies with its lower-left corner at the origin.
 */
import { arcSine, cosine, sine } from '../numeric/portable-angles';

export interface SectorPiece {
  readonly shape: 'sector';
  readonly innerRadius: number;
  readonly outerRadius: number;
  /** Angle of the sector without its lap. */
  readonly angle: number;
  readonly lap: number;
}

export interface RectanglePiece {
  readonly shape: 'rectangle';
  /** Along the girth, the lap included. */
  readonly length: number;
  readonly width: number;
  readonly lap: number;
}

export type Piece = SectorPiece | RectanglePiece;

/** Area with lap, m2. */
export function pieceArea(piece: Piece): number {
  if (piece.shape === 'rectangle') return piece.length * piece.width;
  const { innerRadius, outerRadius, angle, lap } = piece;
  const sector = (angle / 2) * (outerRadius - innerRadius) * (outerRadius + innerRadius);
  return sector + underArc(outerRadius, lap) - underArc(innerRadius, Math.min(lap, innerRadius));
}

/** Area between a circle and its diameter from the middle out to some width: (w sqrt(r2 - w2) + r2 asin(w/r)) / 2. */
function underArc(radius: number, width: number): number {
  if (width <= 0) return 0;
  const height = Math.sqrt(Math.max(0, radius * radius - width * width));
  return (width * height + radius * radius * arcSine(Math.min(1, width / radius))) / 2;
}

/**
 * How far the piece reaches from the origin in a direction, m: the greatest of x cos d + y sin d over its points.
 *
 * An arc reaches its radius where the direction is within its span; everything else is reached by a corner.
 */
export function pieceReach(piece: Piece, direction: number): number {
  return reachOf(piece)(direction);
}

/** The reach of a piece, prepared for many directions. */
export function reachOf(piece: Piece): (direction: number) => number {
  if (piece.shape === 'rectangle') {
    const { length, width } = piece;
    return (direction) => Math.max(0, length * cosine(direction)) + Math.max(0, width * sine(direction));
  }
  const { outerRadius, angle } = piece;
  const sweep = angle + lapTurn(piece, outerRadius);
  const corners = pieceCorners(piece);
  return (direction) => {
    if (isWithinSweep(direction, -angle / 2, sweep)) return outerRadius;
    const cos = cosine(direction);
    const sin = sine(direction);
    let reach = -Infinity;
    for (const { x, y } of corners) reach = Math.max(reach, x * cos + y * sin);
    return reach;
  };
}

export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Corners of the outline counter-clockwise from the foot of the clockwise straight edge. */
export function pieceCorners(piece: Piece): readonly [Corner, Corner, Corner, ...Corner[]] {
  if (piece.shape === 'rectangle') {
    const { length, width } = piece;
    return [corner(0, 0), corner(length, 0), corner(length, width), corner(0, width)];
  }
  const { innerRadius, outerRadius, angle, lap } = piece;
  const edge = angle / 2;
  const clockwise = [polar(innerRadius, -edge), polar(outerRadius, -edge)] as const;
  if (lap === 0) return [...clockwise, polar(outerRadius, edge), polar(innerRadius, edge)];
  const lapped = [
    pointBeside(edge, halfChord(outerRadius, lap), lap),
    pointBeside(edge, halfChord(innerRadius, lap), lap),
  ] as const;
  return [...clockwise, ...lapped, ...(lap > innerRadius ? [pointBeside(edge, 0, innerRadius)] : [])];
}

/**
 * The turn from the counter-clockwise straight edge to the end of the lap on an arc; a quarter turn if the lap is
 * wider.
 */
export function lapTurn({ lap }: SectorPiece, radius: number): number {
  return lap > radius ? Math.PI / 2 : arcSine(lap === 0 ? 0 : lap / radius);
}

/**
 * The distance at which a circle about the origin meets a line at some width beside a straight edge; 0 if it does
 * not.
 */
export function halfChord(radius: number, width: number): number {
  return Math.sqrt(Math.max(0, (radius - width) * (radius + width)));
}

/** A point at `out` along the line at the angle, `aside` counter-clockwise from it. */
export function pointBeside(angle: number, out: number, aside: number): Corner {
  const cos = cosine(angle);
  const sin = sine(angle);
  return { x: out * cos - aside * sin, y: out * sin + aside * cos };
}

/** The point of a circle about the origin at an angle. */
export function polar(radius: number, angle: number): Corner {
  return { x: radius * cosine(angle), y: radius * sine(angle) };
}

function corner(x: number, y: number): Corner {
  return { x, y };
}

/** Whether a direction lies in the span that starts at an angle and sweeps counter-clockwise. */
function isWithinSweep(direction: number, start: number, sweep: number): boolean {
  const whole = 2 * Math.PI;
  const turned = (direction - start) % whole;
  return (turned < 0 ? turned + whole : turned) <= sweep;
}
