/**
 * Outlines of the pieces of a cut plan, rebuilt in millimeters from the pattern rows and plan rows alone, and what an
 * independent polygon library says of them.
 */
import { Clipper, FillRule, Path64, Paths64, Point64 } from 'clipper2-js';
import type { PatternRow } from '../../../src/formulas/cone/cone-pattern';
import type { CutRow } from '../../../src/formulas/cut/cut-plan';

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Laid {
  readonly sheet: number;
  readonly outline: readonly Point[];
}

/** Arcs are drawn in chords of so many degrees. */
export function laidOutlines(patterns: readonly PatternRow[], plan: readonly CutRow[], chord = 0.1): readonly Laid[] {
  const step = (chord * Math.PI) / 180;
  return plan.map((row) => ({ sheet: row.sheet, outline: outlineOf(patterns[row.pattern - 1]!, row, step) }));
}

function outlineOf(pattern: PatternRow, { x, y, direction }: CutRow, step: number): readonly Point[] {
  const { innerRadius, outerRadius, sectorAngle, lap } = pattern;
  if (innerRadius === undefined || outerRadius === undefined || sectorAngle === undefined) {
    const turned = Math.abs(direction - Math.PI / 2) < 1e-9;
    if (!turned && direction !== 0) throw new Error(`a rectangle lies at ${direction}`);
    const along = (turned ? pattern.blankWidth : pattern.blankLength) * 1000;
    const across = (turned ? pattern.blankLength : pattern.blankWidth) * 1000;
    return [
      { x: x * 1000, y: y * 1000 },
      { x: x * 1000 + along, y: y * 1000 },
      { x: x * 1000 + along, y: y * 1000 + across },
      { x: x * 1000, y: y * 1000 + across },
    ];
  }
  const first = direction - sectorAngle / 2;
  const last = direction + sectorAngle / 2;
  const at = (radius: number, angle: number): Point => ({
    x: 1000 * (x + radius * Math.cos(angle)),
    y: 1000 * (y + radius * Math.sin(angle)),
  });
  const arc = (radius: number, from: number, to: number): Point[] => {
    const count = Math.max(1, Math.ceil(Math.abs(to - from) / step));
    return Array.from({ length: count + 1 }, (_, i) => at(radius, from + ((to - from) * i) / count));
  };
  const outline = arc(outerRadius, first, last + Math.asin(lap / outerRadius));
  const innerTurn = lap >= innerRadius ? Math.PI / 2 : Math.asin(lap / innerRadius);
  if (lap > innerRadius) {
    // The lap's foot is the line through the apex square to the straight edge.
    outline.push(at(lap, last + Math.PI / 2));
  }
  return [...outline, ...arc(innerRadius, last + (innerRadius > 0 ? innerTurn : 0), first)];
}

/** Tenths of a micrometer: whole numbers for the polygon library. */
const scale = 1e4;

function pathsOf(outline: readonly Point[]): Paths64 {
  const path = new Path64();
  for (const { x, y } of outline) path.push(new Point64(Math.round(x * scale), Math.round(y * scale)));
  const paths = new Paths64();
  paths.push(path);
  return paths;
}

/** Pairs of pieces on one sheet whose boxes are nearer than the gap. */
function neighbors(laid: readonly Laid[], gap: number): readonly (readonly [Laid, Laid])[] {
  const boxes = laid.map(boxOf);
  return laid.flatMap((one, i) =>
    laid.flatMap((other, j) => {
      if (j <= i || one.sheet !== other.sheet) return [];
      const [a, b] = [boxes[i]!, boxes[j]!];
      const apart = Math.max(a.left - b.right, b.left - a.right, a.low - b.high, b.low - a.high);
      return apart < gap ? [[one, other] as const] : [];
    }),
  );
}

function boxOf({ outline }: Laid) {
  const xs = outline.map(({ x }) => x);
  const ys = outline.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}

/** The largest area that two pieces of one sheet share, mm2. */
export function largestOverlap(laid: readonly Laid[]): number {
  const areas = neighbors(laid, 0).map(([one, other]) => {
    const shared = Clipper.Intersect(pathsOf(one.outline), pathsOf(other.outline), FillRule.NonZero);
    return Math.abs(Clipper.areaPaths(shared)) / scale ** 2;
  });
  return Math.max(0, ...areas);
}

/** The least distance between two pieces of one sheet, mm, where it is less than the gap; else the gap. */
export function leastDistance(laid: readonly Laid[], gap: number): number {
  const distances = neighbors(laid, gap).flatMap(([one, other]) => [
    distanceFrom(one, other, gap),
    distanceFrom(other, one, gap),
  ]);
  return Math.min(gap, ...distances);
}

/** From the corners of one outline to the sides of another, where that is less than the gap. */
function distanceFrom(one: Laid, other: Laid, gap: number): number {
  const box = boxOf(other);
  let least = gap;
  for (const { x, y } of one.outline) {
    if (x < box.left - gap || x > box.right + gap || y < box.low - gap || y > box.high + gap) continue;
    let end = other.outline.at(-1)!;
    for (const next of other.outline) {
      const start = end;
      end = next;
      // Most sides are plainly farther off.
      if (x - least > start.x && x - least > end.x) continue;
      if (x + least < start.x && x + least < end.x) continue;
      if (y - least > start.y && y - least > end.y) continue;
      if (y + least < start.y && y + least < end.y) continue;
      const [dx, dy] = [end.x - start.x, end.y - start.y];
      const along = ((x - start.x) * dx + (y - start.y) * dy) / (dx * dx + dy * dy || 1);
      const share = Math.min(1, Math.max(0, along));
      least = Math.min(least, Math.hypot(x - start.x - share * dx, y - start.y - share * dy));
    }
  }
  return least;
}

/** How far a piece goes over the sheet less its gap, mm; negative where all keep clear. */
export function farthestOver(laid: readonly Laid[], length: number, width: number, gap: number): number {
  let most = -Infinity;
  for (const { outline } of laid) {
    for (const { x, y } of outline) most = Math.max(most, gap - x, gap - y, x - (length - gap), y - (width - gap));
  }
  return most;
}
