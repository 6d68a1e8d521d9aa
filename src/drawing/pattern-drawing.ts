import type { PatternRow } from '../formulas/cone/cone-pattern';
import { readPattern } from '../formulas/cone/read-pattern';
import type { Piece, RectanglePiece } from '../formulas/cut/piece';
import type { Profile } from '../units/profile';
import { drawing } from './drawing';
import type { Drawing, Entity, Extent } from './drawing-model';
import { wordAngle, wordLength } from './length-text';
import { blankSize, lapSize, readableHeight, type Worded } from './pattern-sizes';
import { marksOf, outlineOf, type Place } from './piece-shape';
import { sectorPattern } from './sector-pattern';
import { text } from './shapes';
import { titled } from './titled';

export interface PatternDrawingInput {
  /** A pattern row in SI, as `SILT.CONE.PATTERN` computes it. */
  readonly pattern: PatternRow;
  readonly profile: Profile;
  /** The name of the drum: `Drum 2`. */
  readonly name?: string;
  /** The row in the user's table, for the message if its numbers do not agree; the default is 1. */
  readonly row?: number;
}

/**
 * One piece of a pattern at full size, with its lap, marks and dimensions. The blank's lower-left corner is the origin and a
 * sector's center line points up, as in the marking-out table.
 *
 * Refuses a row whose numbers do not agree, as `SILT.CUT.PLAN` does.
 */
export function patternDrawing({ pattern, profile, name, row = 1 }: PatternDrawingInput): Drawing {
  const piece = readPattern(pattern, 'pattern', row, profile.text);
  const word: Worded = (meters) => wordLength(profile, meters);
  const what = piece.shape === 'rectangle' ? 'cylinder pattern' : 'cone pattern';
  const count = pattern.pieces === 1 ? 'cut 1' : `cut ${pattern.pieces} alike`;
  return drawing({
    title: titled(name, `${what}, ${count}`),
    notes: notesFor(pattern, piece, word),
    ...(piece.shape === 'rectangle' ? rectanglePattern(piece, count, word) : sectorPattern(piece, count, word)),
    fullSize: true,
    units: profile.name,
    tooLarge: 'make it of more pieces, mark it out from the marking-out table, or send the DXF to a cutting machine',
  });
}

function notesFor({ wallAngle, slant, pieces, lap }: PatternRow, piece: Piece, word: Worded): readonly string[] {
  const shape =
    piece.shape === 'rectangle'
      ? `Straight wall, ${word(slant)} high.`
      : `Wall ${wordAngle(wallAngle)} from horizontal, ${word(slant)} along the slope.`;
  const other = pieces === 1 ? 'the other edge' : 'the edge of the next piece';
  const seam =
    lap === 0
      ? 'No lap: the straight edges butt together.'
      : `Dashed: ${other} comes up to this line. Dash and dot: rivet line, in the lap and under it.`;
  return [
    `Cut along the thick outline. ${shape} Sizes are of the middle of the sheet.`,
    seam,
    'Cut sheet is sharp: wear gloves, and deburr every edge before anyone reaches inside.',
  ];
}

function rectanglePattern(
  piece: RectanglePiece,
  count: string,
  word: Worded,
): { readonly entities: readonly Entity[]; readonly textHeight: number } {
  const { length, width, lap } = piece;
  const at: Place = { x: 0, y: 0, direction: 0 };
  const blank: Extent = { left: 0, bottom: 0, right: length, top: width };
  const h = readableHeight(blank);
  const entities: readonly Entity[] = [
    ...outlineOf(piece, at),
    ...marksOf(piece, at),
    ...blankSize(blank, h, 0, 'right', word),
    ...(lap === 0 ? [] : [lapSize({ x: 0, y: width }, { x: lap, y: width }, 2 * h, lap, word)]),
    text({ x: (length + lap) / 2, y: width / 2 }, count, Math.min(h, width / 4), { bold: true }),
  ];
  return { entities, textHeight: h };
}
