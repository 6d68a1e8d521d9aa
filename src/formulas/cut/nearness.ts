/**
 * Where two laid pieces, or a piece and the edge of its sheet, are near each other: at corners, and where an outward arc
 * comes nearest to a line or an arc. Two pieces that do not overlap are nowhere nearer than at the least of these.
 */
import { contains, isWithin, type LaidArc, type LaidLine, type LaidPiece, type Point } from './laid-piece';

/** One place of nearness; the first order of any small movement follows from it. */
export interface Near {
  /** The piece that is left behind along the direction; −1 for the sheet, and −2 for its right end. */
  readonly one: number;
  readonly other: number;
  readonly x: number;
  readonly y: number;
  /** The direction that leads apart. */
  readonly apartX: number;
  readonly apartY: number;
  /** Negative where they overlap. */
  readonly distance: number;
}

export const sheetEdge = -1;
export const rightEnd = -2;

/** Of the directions out of two lines that face each other, at most. */
const facingCosine = -0.97;

/** The places at the first so many pieces that are nearer than some reach. */
export function nearPlaces(
  pieces: readonly LaidPiece[],
  movable: number,
  length: number,
  width: number,
  reach: number,
): Near[] {
  const found: Near[] = [];
  for (let i = 0; i < movable; i++) {
    const one = pieces[i] as LaidPiece;
    addEdges(found, i, one, length, width, reach);
    for (let j = i + 1; j < pieces.length; j++) {
      const other = pieces[j] as LaidPiece;
      if (!areBoxesNear(one, other, reach)) continue;
      addPair(found, i, one, j, other, reach);
      addPair(found, j, other, i, one, reach);
    }
  }
  return found;
}

export function areBoxesNear(one: LaidPiece, other: LaidPiece, reach: number): boolean {
  return (
    one.left - reach < other.right &&
    other.left - reach < one.right &&
    one.bottom - reach < other.top &&
    other.bottom - reach < one.top
  );
}

function addEdges(found: Near[], i: number, piece: LaidPiece, length: number, width: number, reach: number): void {
  const { left, right, bottom, top } = piece;
  const isNear = left < reach || bottom < reach || right > length - reach || top > width - reach;
  if (!isNear) return;
  const add = (x: number, y: number) => {
    if (x < reach) found.push({ one: sheetEdge, other: i, x, y, apartX: 1, apartY: 0, distance: x });
    if (y < reach) found.push({ one: sheetEdge, other: i, x, y, apartX: 0, apartY: 1, distance: y });
    if (width - y < reach) found.push({ one: sheetEdge, other: i, x, y, apartX: 0, apartY: -1, distance: width - y });
    if (length - x < reach) found.push({ one: rightEnd, other: i, x, y, apartX: -1, apartY: 0, distance: length - x });
  };
  for (const { x, y } of piece.corners) add(x, y);
  for (const arc of piece.arcs) {
    if (arc.side < 0) continue;
    if (isWithin(arc, 1, 0)) add(arc.x + arc.radius, arc.y);
    if (isWithin(arc, 0, 1)) add(arc.x, arc.y + arc.radius);
    if (isWithin(arc, -1, 0)) add(arc.x - arc.radius, arc.y);
    if (isWithin(arc, 0, -1)) add(arc.x, arc.y - arc.radius);
  }
}

/** The corners and outward arcs of the other piece that are near the one. */
function addPair(found: Near[], i: number, one: LaidPiece, j: number, other: LaidPiece, reach: number): void {
  for (const corner of other.corners) addCorner(found, i, one, j, corner, reach);
  if (i < j) {
    for (const line of one.lines) for (const facing of other.lines) addLineAtLine(found, i, line, j, facing, reach);
  }
  for (const arc of other.arcs) {
    if (arc.side < 0) continue;
    for (const line of one.lines) addArcAtLine(found, i, line, j, arc, reach);
    for (const beside of one.arcs) if (beside.side < 0 || i < j) addArcAtArc(found, i, beside, j, arc, reach);
  }
}

/** Also where one would be so deep in the other that it is rather beyond it, as behind a narrow end. */
function isFar(distance: number, reach: number): boolean {
  return distance >= reach || distance <= -reach / 4;
}

function addCorner(found: Near[], i: number, one: LaidPiece, j: number, { x, y }: Point, reach: number): void {
  if (x < one.left - reach || x > one.right + reach || y < one.bottom - reach || y > one.top + reach) return;
  let least = reach;
  let distance = Infinity;
  let apartX = 0;
  let apartY = 0;
  for (const line of one.lines) {
    const out = (x - line.x) * line.outX + (y - line.y) * line.outY;
    if (Math.abs(out) >= least) continue;
    const along = (y - line.y) * line.outX - (x - line.x) * line.outY;
    if (along < 0 || along > line.length) continue;
    least = Math.abs(out);
    distance = out;
    apartX = line.outX;
    apartY = line.outY;
  }
  for (const arc of one.arcs) {
    const [dx, dy] = [x - arc.x, y - arc.y];
    const from = Math.sqrt(dx * dx + dy * dy);
    const out = arc.side * (from - arc.radius);
    if (Math.abs(out) >= least || from === 0 || !isWithin(arc, dx, dy, from)) continue;
    least = Math.abs(out);
    distance = out;
    apartX = (arc.side * dx) / from;
    apartY = (arc.side * dy) / from;
  }
  for (const corner of one.corners) {
    const [dx, dy] = [x - corner.x, y - corner.y];
    // A corner at the end of a line on which the other one lies is nearest only to rounding.
    const from = Math.sqrt(dx * dx + dy * dy) * (1 + 1e-9);
    if (from >= least || from === 0) continue;
    least = from;
    const way = contains(one, { x, y }) ? -1 : 1;
    distance = way * from;
    apartX = (way * dx) / from;
    apartY = (way * dy) / from;
  }
  if (least < reach) found.push({ one: i, other: j, x, y, apartX, apartY, distance });
}

/**
 * Two lines that face each other, at both ends of the stretch that they share: where pieces lie head to tail, the corners
 * of each may all lie just outside of the other one while the lines cross.
 */
function addLineAtLine(found: Near[], i: number, line: LaidLine, j: number, facing: LaidLine, reach: number): void {
  const cosine = line.outX * facing.outX + line.outY * facing.outY;
  if (cosine > facingCosine) return;
  const to = (facing.y - line.y) * line.outX - (facing.x - line.x) * line.outY;
  const from = to + facing.length * cosine;
  if (to <= 0 || from >= line.length) return;
  for (const along of [Math.max(0, from), Math.min(line.length, to)]) {
    const x = line.x - along * line.outY;
    const y = line.y + along * line.outX;
    const distance = (x - facing.x) * facing.outX + (y - facing.y) * facing.outY;
    if (isFar(distance, reach)) continue;
    found.push({ one: i, other: j, x, y, apartX: -facing.outX, apartY: -facing.outY, distance });
  }
}

function addArcAtLine(found: Near[], i: number, line: LaidLine, j: number, arc: LaidArc, reach: number): void {
  const x = arc.x - line.outX * arc.radius;
  const y = arc.y - line.outY * arc.radius;
  const distance = (x - line.x) * line.outX + (y - line.y) * line.outY;
  if (isFar(distance, reach)) return;
  const along = (y - line.y) * line.outX - (x - line.x) * line.outY;
  if (along < 0 || along > line.length || !isWithin(arc, -line.outX, -line.outY)) return;
  found.push({ one: i, other: j, x, y, apartX: line.outX, apartY: line.outY, distance });
}

/** Two outward arcs side by side, or an outward arc in the hollow of the one piece. */
function addArcAtArc(found: Near[], i: number, beside: LaidArc, j: number, arc: LaidArc, reach: number): void {
  const [dx, dy] = [arc.x - beside.x, arc.y - beside.y];
  const from = Math.sqrt(dx * dx + dy * dy);
  const isHollow = beside.side < 0;
  if (from === 0 || (isHollow && arc.radius > beside.radius)) return;
  const distance = isHollow ? beside.radius - from - arc.radius : from - beside.radius - arc.radius;
  if (isFar(distance, reach)) return;
  const way = isHollow ? 1 : -1;
  if (!isWithin(beside, dx, dy, from) || !isWithin(arc, way * dx, way * dy, from)) return;
  const [unitX, unitY] = [dx / from, dy / from];
  const x = isHollow ? arc.x + unitX * arc.radius : arc.x - unitX * arc.radius;
  const y = isHollow ? arc.y + unitY * arc.radius : arc.y - unitY * arc.radius;
  found.push({ one: i, other: j, x, y, apartX: beside.side * unitX, apartY: beside.side * unitY, distance });
}
