import type { SheetHost } from '../../hosts/sheet-host';
import { unitsCaution, type WorkbookUnits } from '../workbook-units';
import type { Job } from './job';
import { readJobCells } from './job-cells';
import type { StepState } from './step-panel';
import { verdictOf } from './stops';
import { openStep, stopsOf } from './where';

/** All that the guide shows of a job, at the step that its cells allow; a sentence where the units do not let it be read. */
export async function readState(host: SheetHost, job: Job, workbook: WorkbookUnits): Promise<StepState | string> {
  const { profile } = workbook.units ?? {};
  const caution = unitsCaution(workbook);
  if (caution !== undefined) return caution;
  if (profile === undefined) return 'The workbook has no units; add them in Units.';
  const cells = await readJobCells(host, job.sheets);
  const verdict = verdictOf(cells, job, profile);
  const step = openStep(cells, job, verdict);
  return { cells, job: { ...job, step }, profile, verdict, stops: stopsOf(step, cells, job, { verdict, profile }) };
}
