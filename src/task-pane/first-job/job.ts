import { parseRange, quoteSheet, rangeName } from '../../hosts/address';
import type { SheetHost, Write } from '../../hosts/sheet-host';
import type { CellScalar } from '../../hosts/workbook-model';
import { oneCell } from '../workbook-units';
import { findJobSheets, type JobSheets, type SheetRole } from './find-sheets';
import { firstJobName } from './job-name';
import { isStep, type StepId } from './steps';

/** Its row on Drums, under the settings: a label, a formula that refers to the drum, and the step. */
const [labelCell, drumCell, stepCell] = ['A22', 'C22', 'D22'];

/** A first job in a workbook: its sheets, the row of its drum, counted from 1, and the step that it has come to. */
export interface Job {
  readonly sheets: JobSheets;
  readonly row: number;
  readonly step: StepId;
}

/** Why a job that was begun cannot go on here. */
export class JobLost extends Error {}

/** The job that was begun in the open workbook; undefined where there is none. */
export async function findJob(host: SheetHost): Promise<Job | undefined> {
  const name = (await host.names()).find((one) => one.name.toLowerCase() === firstJobName.toLowerCase());
  const place = name === undefined ? undefined : oneCell(name.refersTo);
  if (place === undefined || rangeName(place.range) !== drumCell) {
    if (name === undefined) return undefined;
    throw new JobLost();
  }
  const blocks = await host.readUsed();
  const sheets = findJobSheets(blocks, place.sheet);
  const marked = await host.read({ ...place, range: { ...place.range, columns: 2 } });
  const drum = parseRange((marked.formulas[0]?.[0] ?? '').replace(/^=/, ''));
  if (sheets === undefined || drum === undefined) throw new JobLost();
  const step = String(marked.values[0]?.[1] ?? '');
  return { sheets, row: drum.row + 1, step: isStep(step) ? step : 'measure' };
}

/** The cells that mark a job; the name is set once they are written. */
export function markingWrites(sheet: string, row: number, step: StepId): readonly Write[] {
  return [entryAt(sheet, labelCell, 'First job'), entryAt(sheet, drumCell, `=A${row}`), entryAt(sheet, stepCell, step)];
}

export async function nameJob(host: SheetHost, sheet: string): Promise<void> {
  await host.setName({
    name: firstJobName,
    refersTo: `${quoteSheet(sheet)}!$C$22`,
    comment: 'The drum of the first job and, beside it, the step that the task pane shows.',
  });
}

export async function goToStep(host: SheetHost, job: Job, step: StepId): Promise<Job> {
  await host.write([entryAt(job.sheets.drums, stepCell, step)]);
  return { ...job, step };
}

/** One cell with one content. */
export function entryAt(sheet: string, address: string, content: CellScalar): Write {
  const place = parseRange(address);
  if (place === undefined) throw new Error(`${address} is no address`);
  return { sheet, row: place.row, column: place.column, cells: [[content]] };
}

/** The name of a sheet that the job has come to need. */
export function sheetOf({ sheets }: Job, role: SheetRole): string {
  const sheet = sheets[role];
  if (sheet === undefined) throw new Error(`the job has no sheet for ${role} yet`);
  return sheet;
}
