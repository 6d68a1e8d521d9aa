/**
 * The pattern row of a cone: what is marked on the sheet, and the currency between cones, cut plans and drawings.
 */

import { type Piece, pieceArea, pieceReach, type SectorPiece } from '../cut/piece';
import { Refusal } from '../refusal';
import { coneMidPlane, type MeasuredCone, type MidPlaneCone } from './cone-mid-plane';

/** Lengths in m, angles in rad, area in m2. A cylinder has no radii and no sector angle. */
export interface PatternRow {
  /** From the horizontal. */
  readonly wallAngle: number;
  readonly slant: number;
  readonly innerRadius: number | undefined;
  readonly outerRadius: number | undefined;
  /** Of one piece without its lap. */
  readonly sectorAngle: number | undefined;
  readonly blankLength: number;
  readonly blankWidth: number;
  /** Of one piece with its lap. */
  readonly area: number;
  readonly pieces: number;
  readonly lap: number;
}

export interface PatternRequest extends MeasuredCone {
  readonly pieces: number;
  readonly lap: number;
}

/**
 * Pattern of the mid-plane of a cone, cut in so many equal pieces.
 *
 * Slant s = sqrt(h2 + ((D - d)/2)2); radii D s/(D - d) and d s/(D - d); sector angle pi (D - d)/s over the pieces, which is
 * 2 pi cos(wall angle) over the pieces. Equal diameters give rectangles of girth/pieces + lap by height. Refuses a
 * bottom wider than the top, a lap wider than the piece, a piece that overlaps itself.
 * Source: radial-line development of the right cone, sheet-metal drafting textbooks.
 */
export function conePattern(request: PatternRequest): PatternRow {
  const { pieces, lap } = request;
  const cone = coneMidPlane(request);
  const piece = conePiece(cone, pieces, lap);
  const refused = lapRefusal(piece);
  if (refused !== undefined) throw refused;
  const { length, width } = pieceBlank(piece);
  const sector = piece.shape === 'sector' ? piece : undefined;
  return {
    wallAngle: cone.wallAngle,
    slant: coneSlant(cone),
    innerRadius: sector?.innerRadius,
    outerRadius: sector?.outerRadius,
    sectorAngle: sector?.angle,
    blankLength: length,
    blankWidth: width,
    area: pieceArea(piece),
    pieces,
    lap,
  };
}

function coneSlant({ top, bottom, height }: MidPlaneCone): number {
  return Math.hypot(height, (top - bottom) / 2);
}

/** One of so many equal pieces of a mid-plane cone. */
export function conePiece(cone: MidPlaneCone, pieces: number, lap: number): Piece {
  const { top, bottom, height } = cone;
  if (top === bottom) return { shape: 'rectangle', length: (Math.PI * top) / pieces + lap, width: height, lap };
  const slant = coneSlant(cone);
  return {
    shape: 'sector',
    innerRadius: (bottom * slant) / (top - bottom),
    outerRadius: (top * slant) / (top - bottom),
    angle: (Math.PI * (top - bottom)) / slant / pieces,
    lap,
  };
}

/** The smallest rectangle, the sector's center line along its width, that holds the piece with its lap. */
export function pieceBlank(piece: Piece): { readonly length: number; readonly width: number } {
  if (piece.shape === 'rectangle') return { length: piece.length, width: piece.width };
  const quarter = Math.PI / 2;
  return {
    length: pieceReach(piece, quarter) + pieceReach(piece, -quarter),
    width: pieceReach(piece, 0) + pieceReach(piece, 2 * quarter),
  };
}

/** A lap as wide as the piece, square to its edge, or one that comes round to the piece's other edge. */
export function lapRefusal(piece: Piece): Refusal | undefined {
  const { lap } = piece;
  const like = (value: number) => ({ figures: { limit: { value, like: 'lap' } } });
  const widest = piece.shape === 'rectangle' ? piece.length - lap : widestLap(piece);
  if (lap > 0 && lap >= widest) return new Refusal('lap', 'give less than {limit}, the width of a piece', like(widest));
  if (piece.shape === 'rectangle' || !overlapsItself(piece)) return undefined;
  return new Refusal(
    'lap',
    'give up to {limit}, or cut more pieces: a wider lap comes round to the piece’s other edge',
    like(piece.innerRadius * Math.sin(2 * Math.PI - piece.angle)),
  );
}

/** Width of a sector square to its straight edge, m. */
function widestLap({ outerRadius, angle }: SectorPiece): number {
  return outerRadius * Math.sin(Math.min(angle, Math.PI / 2));
}

/** Whether the lap comes round to the piece’s own clockwise edge; only a piece of over 270 degrees can. */
function overlapsItself({ innerRadius, angle, lap }: SectorPiece): boolean {
  const open = 2 * Math.PI - angle;
  return lap > 0 && open < Math.PI / 2 && lap > innerRadius * Math.sin(Math.max(0, open));
}
