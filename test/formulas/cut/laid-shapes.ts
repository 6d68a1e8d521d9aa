/** Pieces where they lie, as polygons of many corners that are turned point by point, to hold exact ones to. */
import { pieceRows, type Rows } from '../../../src/formulas/cut/cut-rows';
import { type LaidPiece, laidPiece, type Pose } from '../../../src/formulas/cut/laid-piece';
import type { Corner, Piece, SectorPiece } from '../../../src/formulas/cut/piece';
import { pieceOutline } from '../../../src/formulas/cut/piece-outline';
import { type Laid, largestOverlap, leastDistance } from './laid-outlines';
import { piecePolygon } from './piece-shape';

export const degree = Math.PI / 180;

export const sector = (innerRadius: number, outerRadius: number, degrees: number, lap = 0): SectorPiece => ({
  ...{ shape: 'sector', innerRadius, outerRadius, lap },
  angle: degrees * degree,
});

export const box = (length: number, width: number): Piece => ({ shape: 'rectangle', length, width, lap: 0 });

export const pose = (x: number, y: number, degrees = 0): Pose => ({ x, y, turn: degrees * degree });

export const layAt = (piece: Piece, at: Pose): LaidPiece => laidPiece(piece, pieceOutline(piece), at);

/** The outline where the piece lies, with chords that stray from the arcs by at most the tolerance. */
export function polygonAt(piece: Piece, { x, y, turn }: Pose, tolerance = 1e-7): readonly Corner[] {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return piecePolygon(piece, tolerance).map((corner) => ({
    x: x + corner.x * cos - corner.y * sin,
    y: y + corner.x * sin + corner.y * cos,
  }));
}

/** Whether a point is in a polygon, by how often a ray to the right crosses its sides. */
export function isInPolygon(polygon: readonly Corner[], x: number, y: number): boolean {
  let isInside = false;
  let from = polygon.at(-1)!;
  for (const to of polygon) {
    if (from.y > y !== to.y > y && x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x))
      isInside = !isInside;
    from = to;
  }
  return isInside;
}

interface At {
  readonly piece: Piece;
  readonly pose: Pose;
}

/** In millimeters, for the polygon library. */
export function outlinesOf(pieces: readonly At[], tolerance = 1e-6): readonly Laid[] {
  return pieces.map(({ piece, pose: at }) => ({
    sheet: 1,
    outline: polygonAt(piece, at, tolerance).map(({ x, y }) => ({ x: 1000 * x, y: 1000 * y })),
  }));
}

/** The least distance between the outlines of pieces, where it is less than the reach, m. */
export function outlineDistance(pieces: readonly At[], reach: number, tolerance = 1e-6): number {
  return leastDistance(outlinesOf(pieces, tolerance), 1000 * reach) / 1000;
}

/** The largest area that two pieces share, mm2. */
export function sharedArea(pieces: readonly At[]): number {
  return largestOverlap(outlinesOf(pieces));
}

/** Sectors and rectangles of every kind, from 0.1 to 0.5 m. */
export function pieceByChance(random: () => number): Piece {
  const kind = Math.floor(6 * random());
  const outer = 0.15 + 0.15 * random();
  const angle = 40 + 290 * random();
  if (kind === 0) return box(0.1 + 0.3 * random(), 0.1 + 0.2 * random());
  if (kind === 1) return sector(0, outer, angle);
  if (kind === 2) return sector(0, outer, Math.min(angle, 250), 0.02 + 0.05 * random());
  if (kind === 3) return sector(0.03, outer, Math.min(angle, 250), 0.04 + 0.04 * random());
  const inner = outer * (0.3 + 0.4 * random());
  return kind === 4 ? sector(inner, outer, angle) : sector(inner, outer, Math.min(angle, 250), 0.2 * inner);
}

/** Two pieces by chance that lie near each other, or on each other. */
export function pairByChance(random: () => number): readonly [At, At] {
  const at = (far: number) => pose(far * (random() - 0.5), far * (random() - 0.5), 360 * random());
  return [
    { piece: pieceByChance(random), pose: at(0) },
    { piece: pieceByChance(random), pose: at(1) },
  ];
}

/** The rows of a piece at a turn. */
export const rowsOf = (piece: Piece, turn: number, height: number, isRough = false): Rows =>
  pieceRows(pieceOutline(piece), turn, height, isRough);
