/**
 * Whether laid pieces overlap, exactly: their outlines cross, or one lies inside of the other.
 */
import { contains, isWithin, type LaidArc, type LaidLine, type LaidPiece } from './laid-piece';
import { areBoxesNear, type Near } from './nearness';

/** Whether two pieces overlap where no near place tells: one lies deep in the other. */
export function overlapsDeeply(pieces: readonly LaidPiece[], places: readonly Near[]): boolean {
  const count = pieces.length;
  const told = new Set<number>();
  for (const { one, other, distance } of places) {
    if (one >= 0 && distance < 0) told.add(Math.min(one, other) * count + Math.max(one, other));
  }
  return pieces.some((one, i) => pieces.some((other, j) => j > i && !told.has(i * count + j) && doOverlap(one, other)));
}

/** Whether any of the first so many pieces overlaps another. Pieces that only touch may count as overlapping by rounding. */
export function overlaps(pieces: readonly LaidPiece[], count: number): boolean {
  return pieces.slice(0, count).some((one, i) => pieces.some((other, j) => j > i && doOverlap(one, other)));
}

function doOverlap(one: LaidPiece, other: LaidPiece): boolean {
  if (!areBoxesNear(one, other, 0)) return false;
  if (one.corners.some((corner) => contains(other, corner))) return true;
  if (other.corners.some((corner) => contains(one, corner))) return true;
  return (
    one.lines.some(
      (line) =>
        other.lines.some((next) => doLinesCross(line, next)) || other.arcs.some((arc) => doesArcCross(line, arc)),
    ) ||
    one.arcs.some(
      (arc) => other.lines.some((line) => doesArcCross(line, arc)) || other.arcs.some((next) => doArcsCross(arc, next)),
    )
  );
}

/** The ends of a line lie on different sides of another. */
function parts(line: LaidLine, { x, y, outX, outY, length }: LaidLine): boolean {
  const from = (x - line.x) * line.outX + (y - line.y) * line.outY;
  const to = from + length * (outX * line.outY - outY * line.outX);
  return from * to < 0;
}

function doLinesCross(one: LaidLine, other: LaidLine): boolean {
  return parts(one, other) && parts(other, one);
}

function doesArcCross(line: LaidLine, arc: LaidArc): boolean {
  const aside = (arc.x - line.x) * line.outX + (arc.y - line.y) * line.outY;
  if (Math.abs(aside) >= arc.radius) return false;
  const middle = (arc.y - line.y) * line.outX - (arc.x - line.x) * line.outY;
  const half = Math.sqrt(arc.radius * arc.radius - aside * aside);
  return [middle - half, middle + half].some((along) => {
    if (along <= 0 || along >= line.length) return false;
    const x = line.x - along * line.outY - arc.x;
    const y = line.y + along * line.outX - arc.y;
    return isWithin(arc, x, y, arc.radius);
  });
}

function doArcsCross(one: LaidArc, other: LaidArc): boolean {
  const [dx, dy] = [other.x - one.x, other.y - one.y];
  const from = Math.sqrt(dx * dx + dy * dy);
  if (from >= one.radius + other.radius || from <= Math.abs(one.radius - other.radius)) return false;
  // The foot of a crossing on the line of the two centers, and its height above that line, in lengths between the centers.
  const along = (1 + ((one.radius - other.radius) * (one.radius + other.radius)) / (from * from)) / 2;
  const aside = Math.sqrt(Math.max(0, (one.radius / from) * (one.radius / from) - along * along));
  return [aside, -aside].some((height) => {
    const x = along * dx - height * dy;
    const y = along * dy + height * dx;
    return isWithin(one, x, y, one.radius) && isWithin(other, x - dx, y - dy, other.radius);
  });
}
