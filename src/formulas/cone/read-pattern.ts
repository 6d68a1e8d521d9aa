/**
 * From a pattern row back to the piece, when its ten numbers agree with each other.
 */

import { type Piece, pieceArea, type RectanglePiece, type SectorPiece } from '../cut/piece';
import { Refusal } from '../refusal';
import { lapRefusal, type PatternRow, pieceBlank } from './cone-pattern';

/** Cells may have been rounded to what a rule can mark; areas are rounded more coarsely than lengths. */
const allowance = 1e-3;
const areaAllowance = 3e-3;

/**
 * The piece of a pattern row: radii, angle and lap as they stand, once slant, wall angle, blank and area agree with them.
 *
 * Refuses a row whose numbers disagree, such as one made with other units: lengths in inches keep their
 * proportions when they are read as millimeters, but the area beside them does not. `argument` is the table's name,
 * `place` the row's place in it, `under` what its units are called.
 */
export function readPattern(row: PatternRow, argument: string, place: number, under = 'these units'): Piece {
  const piece = pieceOfRow(row);
  const trouble = typeof piece === 'string' ? piece : disagreement(row, piece);
  if (typeof piece === 'string' || trouble !== undefined) {
    throw new Refusal(argument, `row ${place} was not made with ${under}, or was changed since: ${trouble}`);
  }
  return piece;
}

/** The piece, or why the row has none. */
function pieceOfRow({ innerRadius, outerRadius, sectorAngle, blankLength, slant, lap }: PatternRow): Piece | string {
  if (innerRadius === undefined && outerRadius === undefined && sectorAngle === undefined) {
    return { shape: 'rectangle', length: blankLength, width: slant, lap };
  }
  if (innerRadius === undefined || outerRadius === undefined || sectorAngle === undefined) {
    return 'inner radius, outer radius and sector angle are all blank for a cylinder, else none of them';
  }
  return { shape: 'sector', innerRadius, outerRadius, angle: sectorAngle, lap };
}

function disagreement(row: PatternRow, piece: Piece): string | undefined {
  const ofShape = piece.shape === 'sector' ? sectorDisagreement(row, piece) : rectangleDisagreement(row, piece);
  if (ofShape !== undefined) return ofShape;
  if (lapRefusal(piece) !== undefined) return 'its lap is wider than the piece can take';
  const { length, width } = pieceBlank(piece);
  const most = Math.max(length, width) * allowance;
  if (differsByMore(row.blankLength, length, most) || differsByMore(row.blankWidth, width, most)) {
    return 'its blank does not go with its radii, sector angle and lap';
  }
  const area = pieceArea(piece);
  return differsByMore(row.area, area, area * areaAllowance) ? 'its area does not go with its lengths' : undefined;
}

function sectorDisagreement({ wallAngle, slant, pieces }: PatternRow, piece: SectorPiece): string | undefined {
  const { innerRadius, outerRadius, angle } = piece;
  if (innerRadius < 0 || innerRadius >= outerRadius) return 'its outer radius is not over its inner radius';
  if (differsByMore(outerRadius - innerRadius, slant, slant * allowance + outerRadius * 1e-5)) {
    return 'its slant is not the difference of its radii';
  }
  // The sector angles of all pieces together are 360 degrees times the cosine of the wall angle.
  const share = (angle * pieces) / (2 * Math.PI);
  const apart = differsByMore(share, Math.cos(wallAngle), Math.max(share, 0.1) * allowance);
  return angle <= 0 || apart ? 'its sector angle does not go with its wall angle and pieces' : undefined;
}

function rectangleDisagreement(
  { wallAngle, blankWidth, slant }: PatternRow,
  piece: RectanglePiece,
): string | undefined {
  if (differsByMore(wallAngle, Math.PI / 2, allowance)) return 'a cylinder’s wall angle is 90 degrees';
  if (differsByMore(blankWidth, slant, slant * allowance)) return 'a cylinder’s blank is as wide as its slant';
  return piece.length > 0 && piece.width > 0 ? undefined : 'its blank has no size';
}

function differsByMore(given: number, meant: number, most: number): boolean {
  return !(Math.abs(given - meant) <= most);
}
