/**
 * A piece where it lies on a sheet, as the exact lines, arcs and corners of its outline. Frame and units as in `piece`.
 */
import { cosine, sine } from '../numeric/portable-angles';
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
  /** The direction of its middle, of length 1, and the cosine of the angle from there to its ends. */
  readonly middleX: number;
  readonly middleY: number;
  readonly reach: number;
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
  /** Of its turn. */
  readonly cos: number;
  readonly sin: number;
  readonly lines: readonly LaidLine[];
  readonly arcs: readonly LaidArc[];
  readonly corners: readonly Point[];
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The cosine of a direction at the end of an arc may be less by so much through rounding. */
const rounding = 1e-15;

/** Whether a direction, of some length, leads from the middle of an arc's circle to the arc. */
export function isWithin({ middleX, middleY, reach }: LaidArc, x: number, y: number, length = 1): boolean {
  return x * middleX + y * middleY >= length * (reach - rounding);
}

export function laidPiece(piece: Piece, outline: readonly OutlinePart[], pose: Pose): LaidPiece {
  const { x, y, turn } = pose;
  const cos = cosine(turn);
  const sin = sine(turn);
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
      const { radius, sweep, from, middle, reach } = part.arc;
      fromX = x + from.x * cos - from.y * sin;
      fromY = y + from.x * sin + from.y * cos;
      const isOutward = sweep > 0;
      const middleX = middle.x * cos - middle.y * sin;
      const middleY = middle.x * sin + middle.y * cos;
      const arc: LaidArc = { x, y, radius, middleX, middleY, reach, side: isOutward ? 1 : -1 };
      arcs.push(arc);
      if (isOutward) {
        if (isWithin(arc, 1, 0)) right = Math.max(right, x + radius);
        if (isWithin(arc, 0, 1)) top = Math.max(top, y + radius);
        if (isWithin(arc, -1, 0)) left = Math.min(left, x - radius);
        if (isWithin(arc, 0, -1)) bottom = Math.min(bottom, y - radius);
      }
    }
    corners.push({ x: fromX, y: fromY });
    left = Math.min(left, fromX);
    right = Math.max(right, fromX);
    bottom = Math.min(bottom, fromY);
    top = Math.max(top, fromY);
  }
  return { piece, pose, cos, sin, lines, arcs, corners, left, right, bottom, top };
}

/** Whether a point is inside of a piece and not on its outline. */
export function contains({ piece, pose, cos, sin }: LaidPiece, { x, y }: Point): boolean {
  const px = (x - pose.x) * cos + (y - pose.y) * sin;
  const py = (y - pose.y) * cos - (x - pose.x) * sin;
  if (piece.shape === 'rectangle') return px > 0 && py > 0 && px < piece.length && py < piece.width;
  const { innerRadius, outerRadius, angle, lap } = piece;
  const out = Math.sqrt(px * px + py * py);
  if (out <= innerRadius || out >= outerRadius) return false;
  const halfCos = cosine(angle / 2);
  if (px > out * halfCos) return true;
  const halfSin = sine(angle / 2);
  const aside = py * halfCos - px * halfSin;
  return aside >= 0 && aside < lap && px * halfCos + py * halfSin > halfChord(innerRadius, lap);
}
