/**
 * What to check before a cone is cut: cautions as sentences with SI figures.
 */
import type { Caution } from '../caution';
import { fitsRectangle, mostPieces, piecesThatFit } from '../cut/piece-fit';
import { Refusal } from '../refusal';
import { coneVolume } from './cone';
import { coneMidPlane, type MidPlaneCone } from './cone-mid-plane';
import { conePiece, lapRefusal, pieceBlank } from './cone-pattern';

export interface ConeCheckRequest {
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  readonly pieces: number;
  readonly lap: number;
  readonly thickness: number;
  readonly drum: number | undefined;
  readonly sheetLength: number | undefined;
  readonly sheetWidth: number | undefined;
}

const degree = Math.PI / 180;
const lift =
  'Wet mix poured around a cone lifts it, with up to the weight of {volume:bulk} of mix: fill the cone with water or weigh it ' +
  'down, and pour in layers that set.';

/**
 * Cautions about a cone, or one line saying that nothing was found.
 *
 * Reports what the pattern would refuse instead of refusing it. Diameters are read as under `fit`. 45 and 60 degrees are
 * the usual least slopes of a hopper that solids must slide down (common practice, no source).
 */
export function coneCheck(request: ConeCheckRequest): readonly Caution[] {
  let cone: MidPlaneCone;
  try {
    cone = coneMidPlane({ ...request, measured: 'fit', clearance: 0 });
  } catch (error) {
    if (error instanceof Refusal) return [refusedCaution(error)];
    throw error;
  }
  const { top, bottom, height, drum } = request;
  const found = [...slopeCautions(cone), ...drumCautions(top, drum), ...pieceCautions(cone, request)];
  if (cone.top === cone.bottom) return found.length > 0 ? found : [{ text: 'Nothing found.' }];
  const volume = coneVolume(top, bottom, height);
  if (found.length > 0) return [...found, { text: lift, figures: { volume } }];
  return [{ text: `Nothing found in the figures. ${lift}`, figures: { volume } }];
}

function refusedCaution({ argument, advice, figures }: Refusal): Caution {
  return { text: `The ${argument} is not allowed: ${advice}.`, figures };
}

function slopeCautions({ wallAngle }: MidPlaneCone): readonly Caution[] {
  const figures = { angle: wallAngle };
  // An angle of 45 degrees that was worked out from a height may fall short by rounding.
  const under = (limit: number) => wallAngle < limit * degree - 1e-9;
  if (under(45))
    return [
      {
        text: 'The wall is {angle}, below 45 degrees: solids will stay on it instead of sliding to the drain.',
        figures,
      },
    ];
  if (under(60))
    return [{ text: 'The wall is {angle}, below 60 degrees: sticky solids may need a brush or a swirl.', figures }];
  return [];
}

function drumCautions(top: number, drum: number | undefined): readonly Caution[] {
  if (drum === undefined || top <= drum * (1 + 1e-12)) return [];
  return [
    {
      text: 'The top is {top} and does not fit into the drum, which is {drum} inside.',
      figures: { top, drum },
    },
  ];
}

function pieceCautions(cone: MidPlaneCone, request: ConeCheckRequest): readonly Caution[] {
  const { pieces, lap, sheetLength, sheetWidth } = request;
  const piece = conePiece(cone, pieces, lap);
  const refused = lapRefusal(piece);
  if (refused !== undefined) return [refusedCaution(refused)];
  if (sheetLength === undefined || sheetWidth === undefined) return [];
  if (fitsRectangle(piece, sheetLength, sheetWidth)) return [];
  const { length, width } = pieceBlank(piece);
  const enough = piecesThatFit((count) => conePiece(cone, count, lap), sheetLength, sheetWidth);
  const then =
    enough === undefined ? `no number of pieces up to ${mostPieces} fits` : `cut ${enough} pieces instead of ${pieces}`;
  return [
    {
      text: `A piece has a blank of {length:dimension} by {width:dimension} and does not fit on the sheet in any rotation: ${then}.`,
      figures: { length, width },
    },
  ];
}
