/**
 * A piece where it lies on a sheet, as the exact lines, arcs and corners of its outline. Frame and units as in `piece`.
 */
import { halfChord, type Piece } from './piece';
import type { OutlinePart } from './piece-outline';

/** Where the origin of a piece lies, and its turn. */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

export interface LaidLine {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  /** Square to the line, out of the piece; the line runs a quarter turn counter-clockwise from it. */
  readonly outX: number;
  readonly outY: number;
}

export interface LaidArc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** From here counter-clockwise. */
  readonly start: number;
  readonly sweep: number;
  /** 1 where the piece lies inside of the circle, −1 where it lies outside. */
  readonly side: 1 | -1;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface LaidPiece {
  readonly piece: Piece;
  readonly pose: Pose;
  readonly lines: readonly LaidLine[];
  readonly arcs: readonly LaidArc[];
  readonly corners: readonly Point[];
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const whole = 2 * Math.PI;

/** Whether a direction lies on the way from a start counter-clockwise. */
export function isWithin(direction: number, { start, sweep }: LaidArc): boolean {
  const turned = (direction - start) % whole;
  return (turned < 0 ? turned + whole : turned) <= sweep;
}

export function laidPiece(piece: Piece, outline: readonly OutlinePart[], pose: Pose): LaidPiece {
  const { x, y, turn } = pose;
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const lines: LaidLine[] = [];
  const arcs: LaidArc[] = [];
  const corners: Point[] = [];
  let left = Infinity;
  let right = -Infinity;
  let bottom = Infinity;
  let top = -Infinity;
  for (const part of outline) {
    let fromX: number;
    let fromY: number;
    if ('line' in part) {
      const from = part.line[0];
      const to = part.line[1];
      fromX = x + from.x * cos - from.y * sin;
      fromY = y + from.x * sin + from.y * cos;
      const alongX = (to.x - from.x) * cos - (to.y - from.y) * sin;
      const alongY = (to.x - from.x) * sin + (to.y - from.y) * cos;
      const length = Math.sqrt(alongX * alongX + alongY * alongY);
      lines.push({ x: fromX, y: fromY, length, outX: alongY / length, outY: -alongX / length });
    } else {
      const { radius, start, sweep } = part.arc;
      const from = turn + start;
      fromX = x + radius * Math.cos(from);
      fromY = y + radius * Math.sin(from);
      const isOutward = sweep > 0;
      const arc: LaidArc = {
        x,
        y,
        radius,
        start: isOutward ? from : from + sweep,
        sweep: Math.abs(sweep),
        side: isOutward ? 1 : -1,
      };
      arcs.push(arc);
      if (isOutward) {
        if (isWithin(0, arc)) right = Math.max(right, x + radius);
        if (isWithin(Math.PI / 2, arc)) top = Math.max(top, y + radius);
        if (isWithin(Math.PI, arc)) left = Math.min(left, x - radius);
        if (isWithin(-Math.PI / 2, arc)) bottom = Math.min(bottom, y - radius);
      }
    }
    corners.push({ x: fromX, y: fromY });
    left = Math.min(left, fromX);
    right = Math.max(right, fromX);
    bottom = Math.min(bottom, fromY);
    top = Math.max(top, fromY);
  }
  return { piece, pose, lines, arcs, corners, left, right, bottom, top };
}

/** Whether a point is inside of a piece and not on its outline. */
export function contains({ piece, pose }: LaidPiece, { x, y }: Point): boolean {
  const cos = Math.cos(pose.turn);
  const sin = Math.sin(pose.turn);
  const px = (x - pose.x) * cos + (y - pose.y) * sin;
  const py = (y - pose.y) * cos - (x - pose.x) * sin;
  if (piece.shape === 'rectangle') return px > 0 && py > 0 && px < piece.length && py < piece.width;
  const { innerRadius, outerRadius, angle, lap } = piece;
  const out = Math.hypot(px, py);
  if (out <= innerRadius || out >= outerRadius) return false;
  const half = angle / 2;
  if (Math.abs(Math.atan2(py, px)) < half) return true;
  const aside = py * Math.cos(half) - px * Math.sin(half);
  return aside >= 0 && aside < lap && px * Math.cos(half) + py * Math.sin(half) > halfChord(innerRadius, lap);
}
