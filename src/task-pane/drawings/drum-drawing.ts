import type { CellValue } from '../../catalogue/argument';
import { ArgumentError } from '../../catalogue/reading/argument-error';
import { figureReader } from '../../catalogue/reading/read-figure';
import type { Drawing } from '../../drawing/drawing-model';
import { drumSectionDrawing } from '../../drawing/drum-section-drawing';
import type { Profile } from '../../units/profile';
import { wordQuantity } from '../../units/quantity';
import { UserError } from '../user-error';
import { drumWords } from './drum-words';
import type { DrumField, DrumRequest } from './request';

/** A figure of a drum that cannot be drawn, with the field that it is in. */
export class DrumFieldError extends UserError {
  readonly field: DrumField;
  constructor(field: DrumField, sentence: string) {
    super(`${sentence}.`);
    this.name = 'DrumFieldError';
    this.field = field;
  }
}

type Lengths = Partial<Record<DrumField, number>>;

/** A settling drum in section. Throws a sentence about the first figure that cannot be drawn. */
export function drumDrawing({ figures, name, isSmall = false }: DrumRequest, profile: Profile): Drawing {
  const read: Lengths = {};
  for (const [field, value] of Object.entries(figures) as [DrumField, CellValue][]) {
    read[field] = readLength(field, value, profile);
  }
  const { drumDiameter, depth, ...rest } = read;
  if (drumDiameter === undefined || depth === undefined) {
    throw new UserError('A drum in section needs its inside diameter and the depth of water; give both.');
  }
  if ((rest.coneHeight ?? 0) > 0) checkCone(read, profile);
  if ((rest.stand ?? 0) > 0 && rest.drainDrop !== undefined && rest.drainDrop >= (rest.stand ?? 0)) {
    throw mustBeLess('drainDrop', 'stand', read, profile);
  }
  return drumSectionDrawing({ profile, drumDiameter, depth, ...rest, isSmall, ...(name ? { name } : {}) });
}

function readLength(field: DrumField, value: CellValue, profile: Profile): number {
  const { label, mayBeNothing } = drumWords[field];
  const bounds = mayBeNothing ? { atLeast: 0 } : { above: 0 };
  try {
    return figureReader(label, { kind: 'dimension', meaning: label, ...bounds })(value, profile);
  } catch (error) {
    if (error instanceof ArgumentError) throw new DrumFieldError(field, error.message);
    throw error;
  }
}

/** A cone is no wider than its drum, and narrower at the bottom than at the top. */
function checkCone(read: Lengths, profile: Profile): void {
  const { drumDiameter = 0, coneTop = drumDiameter, coneBottom = 0 } = read;
  if (coneTop > drumDiameter) {
    throw notAllowed('coneTop', `at most ${worded('drumDiameter', read, profile)}`, read, profile);
  }
  if (coneBottom >= coneTop) {
    throw mustBeLess('coneBottom', read.coneTop === undefined ? 'drumDiameter' : 'coneTop', read, profile);
  }
}

function mustBeLess(field: DrumField, than: DrumField, read: Lengths, profile: Profile): DrumFieldError {
  return notAllowed(field, `less than ${worded(than, read, profile)}`, read, profile);
}

function notAllowed(field: DrumField, allowed: string, read: Lengths, profile: Profile): DrumFieldError {
  const { label } = drumWords[field];
  return new DrumFieldError(field, `${label}: ${length(field, read, profile)} is not allowed; give ${allowed}`);
}

/** `the inside diameter of the drum (22.5 in)`. */
function worded(field: DrumField, read: Lengths, profile: Profile): string {
  const { label } = drumWords[field];
  return `the ${label.charAt(0).toLowerCase()}${label.slice(1)} (${length(field, read, profile)})`;
}

function length(field: DrumField, read: Lengths, profile: Profile): string {
  return wordQuantity(profile, 'dimension', read[field] ?? 0);
}
