import type { Drawing } from '../../drawing/drawing-model';
import { buyingDrawing } from '../../drawing/first-job/buying-drawing';
import { measuringDrawing } from '../../drawing/first-job/measuring-drawing';
import { pouringDrawing } from '../../drawing/first-job/pouring-drawing';
import type { CellResult, CellScalar } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { drawingsOf } from '../drawings/drawings-of';
import type { DrumRequest } from '../drawings/request';
import { placeRow } from './facts';
import type { Job } from './job';
import type { JobCells } from './job-cells';
import type { StepId } from './steps';

export interface PictureInput {
  readonly cells: JobCells;
  readonly job: Job;
  readonly profile: Profile;
  /** Which of the ways to measure is chosen. */
  readonly width: number;
  readonly cone: number;
  /** Whether the check has let the drum through. */
  readonly isDone: boolean;
  /** For the width of the pane; otherwise with all its figures. */
  readonly isSmall: boolean;
}

/** The picture of a step: where the tape goes, or the drum as its cells have it. Throws a sentence where it cannot be drawn. */
export function pictureFor(step: StepId, input: PictureInput): Drawing | undefined {
  const { cells, job, profile, isDone } = input;
  const units = profile.name;
  switch (step) {
    case 'check':
      return isDone ? drumPicture(input, {}) : measuring(input);
    case 'pattern':
      return patternPicture(cells, job, profile);
    case 'cut':
      return planPicture(cells, profile);
    case 'buy':
      return buyingDrawing(units);
    case 'pour':
      return pouringDrawing(units);
    case 'leak test':
      return drumPicture(input, {
        stand: plain(cells.value('stand', 'B22')),
        container: plain(cells.value('stand', 'B16')),
        drainDrop: plain(cells.value('stand', 'B17')),
        drumHeight: plain(cells.value('bank', 'B7')),
      });
    default:
      return measuring(input);
  }
}

function measuring({ width, cone, profile }: PictureInput): Drawing {
  return measuringDrawing({
    width: width === 1 ? 'girth' : 'inside',
    cone: (['angle', 'height', 'slant'] as const)[cone] ?? 'angle',
    units: profile.name,
  });
}

/** A drum that is not measured yet, or an answer in error, has no figure to draw. */
function plain(value: CellResult): CellScalar {
  return typeof value === 'object' ? '' : value;
}

function drumPicture(
  { cells, job, profile, isSmall }: PictureInput,
  more: DrumRequest['figures'],
): Drawing | undefined {
  const at = (letter: string): CellScalar => plain(cells.value('drums', `${letter}${job.row}`));
  const figures: DrumRequest['figures'] = {
    drumDiameter: at('K'),
    depth: at('J'),
    coneHeight: at('G'),
    coneBottom: at('F'),
    rise: plain(cells.value('baseMix', 'B16')),
    ...more,
  };
  const given = Object.fromEntries(Object.entries(figures).filter(([, value]) => value !== ''));
  return drawingsOf({ what: 'drum', units: profile.text, figures: given, name: String(at('A')), isSmall })[0];
}

function patternPicture(cells: JobCells, job: Job, profile: Profile): Drawing | undefined {
  const row = placeRow(cells, job);
  const [line = []] = cells.rows('patterns', `A${row}:K${row}`);
  const [name = '', ...pattern] = line.map(plain);
  return drawingsOf({ what: 'patterns', units: profile.text, rows: [pattern], names: [String(name)] })[0];
}

function planPicture(cells: JobCells, profile: Profile): Drawing | undefined {
  const filled = (range: string, role: 'cutPlan' | 'patterns') =>
    cells.rows(role, range).map((line) => line.map(plain));
  const plan = filled('A8:F71', 'cutPlan').filter(([, , sheet]) => typeof sheet === 'number');
  const patterns = filled('B5:K12', 'patterns').filter((line) => line.some((value) => value !== ''));
  if (plan.length === 0) return undefined;
  return drawingsOf({
    what: 'cut plan',
    units: profile.text,
    plan,
    patterns,
    sheetLength: plain(cells.value('drums', 'C18')),
    sheetWidth: plain(cells.value('drums', 'C19')),
  })[0];
}
