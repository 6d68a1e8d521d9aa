import type { Profile } from '../../units/profile';
import { capitalized } from '../../units/text';
import { typedIn } from './entries';
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
  if (typeof parts !== 'object' || typed === '') return [];
  const words = parts.error.message.replace(/^bank: /, '');
  const unit = Number.isFinite(Number(typed)) ? ` ${profile.units.dimension.symbol}` : '';
  const sentence = `Height of the drum: ${typed}${unit}. ${capitalized(words)}.`;
  return [{ field: 'drumHeight', sentence }];
}
