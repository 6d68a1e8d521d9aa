import type { CellResult } from '../../hosts/workbook-model';
import type { Profile } from '../../units/profile';
import { readQuantity } from '../../units/quantity';
import { capitalized } from '../../units/text';
import { Unreadable } from '../../units/unreadable';
import { typedIn } from './entries';
import { figure } from './facts';
import type { Job } from './job';
import type { JobCells } from './job-cells';
import { isStep, type StepId, steps } from './steps';
import type { Stop, Verdict } from './stops';

const orderOf = (id: StepId): number => steps.findIndex((step) => step.id === id);

/** The step that is marked in the workbook, or an earlier one where its cells do not allow that one any more. */
export function openStep(cells: JobCells, job: Job, { stops }: Verdict, wanted?: StepId): StepId {
  const marked = String(cells.value('drums', 'D22'));
  const step = wanted ?? (isStep(marked) ? marked : job.step);
  if (orderOf(step) > orderOf('check') && stops.length > 0) return 'check';
  return orderOf(step) >= orderOf('buy') && job.sheets.bank === undefined ? 'cut' : step;
}

/** What keeps the job at a step. */
export function stopsOf(
  step: StepId,
  cells: JobCells,
  job: Job,
  { verdict, profile }: { readonly verdict: Verdict; readonly profile: Profile },
): readonly Stop[] {
  if (step === 'check') return verdict.stops;
  if (step !== 'buy') return [];
  const parts = cells.value('parts', 'A4');
  const typed = typedIn(cells, 'drumHeight', job.row);
  if (typed === '') return [];
  const refused = typeof parts === 'object' ? `${capitalized(parts.error.message.replace(/^bank: /, ''))}.` : undefined;
  // The sentence of the sheet names the pipe itself.
  if (refused?.startsWith('Pipe size')) return [{ field: 'pipeSize', sentence: refused }];
  const words = refused ?? tooLow(cells, job, profile);
  if (words === undefined) return [];
  const unit = Number.isFinite(Number(typed)) ? ` ${profile.units.dimension.symbol}` : '';
  return [{ field: 'drumHeight', sentence: `Height of the drum: ${typed}${unit}. ${words}` }];
}

/** Hosts and conversions of units change the last digits of a number. */
const roundingError = 1e-9;

/** What to say of a drum that is lower than its water line, which no sheet compares. */
function tooLow(cells: JobCells, job: Job, profile: Profile): string | undefined {
  const height = lengthIn(cells.value('bank', 'B7'), profile);
  const [rise, cone, water] = [
    cells.value('baseMix', 'B16'),
    cells.value('drums', `G${job.row}`),
    cells.value('drums', `J${job.row}`),
  ].map((value) => lengthIn(value, profile));
  if (height === undefined || rise === undefined || cone === undefined || water === undefined) return undefined;
  const line = rise + cone + water;
  if (line <= height + roundingError) return undefined;
  const { scale } = profile.units.dimension;
  const shown = figure(line / scale, 'dimension', profile);
  return `The water line is ${shown} above the floor of the drum, so the water would run over its rim. Measure the drum again, or give less water above the cone in Measure.`;
}

/** A length in meters; undefined where the cell holds none. */
function lengthIn(value: CellResult, profile: Profile): number | undefined {
  try {
    return typeof value === 'object' || value === '' ? undefined : readQuantity(profile, 'dimension', value);
  } catch (error) {
    if (error instanceof Unreadable) return undefined;
    throw error;
  }
}
