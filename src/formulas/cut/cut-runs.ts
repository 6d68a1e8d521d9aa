/**
 * The outline of a turned piece in lines and arcs that run one way along x and one way along y.
 */
import { cosine, sine } from '../numeric/portable-angles';
import type { Corner } from './piece';
import type { OutlinePart } from './piece-outline';

export interface Run {
  /** The heights that it spans. */
  from: number;
  to: number;
  readonly leftmost: number;
  readonly rightmost: number;
  /** Radius of an arc about the origin, negative on its left side; 0 for a line. */
  readonly radius: number;
  /** A line's foot and slope, x over y. */
  readonly foot: number;
  readonly footY: number;
  readonly slope: number;
}

/** The x of a run at a height within its span. */
export function xAt({ radius, foot, footY, slope, leftmost, rightmost }: Run, y: number): number {
  if (radius === 0) return Math.min(rightmost, Math.max(leftmost, foot + slope * (y - footY)));
  const x = Math.sqrt(Math.max(0, (radius - y) * (radius + y)));
  return radius < 0 ? -x : x;
}

/** The runs of an outline turned about the origin. */
export function runsOf(outline: readonly OutlinePart[], turn: number): Run[] {
  const cos = cosine(turn);
  const sin = sine(turn);
  const runs: Run[] = [];
  for (const part of outline) {
    if ('arc' in part) addArcRuns(runs, part.arc.radius, part.arc.start, part.arc.sweep, turn);
    else addLineRun(runs, part.line[0], part.line[1], cos, sin);
  }
  return runs;
}

function addLineRun(runs: Run[], start: Corner, end: Corner, cos: number, sin: number): void {
  const x0 = start.x * cos - start.y * sin;
  const y0 = start.x * sin + start.y * cos;
  const x1 = end.x * cos - end.y * sin;
  const y1 = end.x * sin + end.y * cos;
  runs.push({
    from: Math.min(y0, y1),
    to: Math.max(y0, y1),
    leftmost: Math.min(x0, x1),
    rightmost: Math.max(x0, x1),
    radius: 0,
    foot: x0,
    footY: y0,
    slope: y1 === y0 ? 0 : (x1 - x0) / (y1 - y0),
  });
}

/** An arc about the origin is split at every quarter, where it turns back along x or y. */
function addArcRuns(runs: Run[], radius: number, start: number, sweep: number, turn: number): void {
  const quarter = Math.PI / 2;
  const end = turn + Math.max(start, start + sweep);
  let from = turn + Math.min(start, start + sweep);
  let x0 = radius * cosine(from);
  let y0 = radius * sine(from);
  while (from < end) {
    const to = Math.min(end, (Math.floor(from / quarter + 1e-12) + 1) * quarter);
    const x1 = radius * cosine(to);
    const y1 = radius * sine(to);
    runs.push({
      from: Math.min(y0, y1),
      to: Math.max(y0, y1),
      leftmost: Math.min(x0, x1),
      rightmost: Math.max(x0, x1),
      radius: x0 + x1 < 0 ? -radius : radius,
      foot: 0,
      footY: 0,
      slope: 0,
    });
    from = to;
    x0 = x1;
    y0 = y1;
  }
}
