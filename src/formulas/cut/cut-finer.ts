/**
 * Lays a layout again on finer rows. Two pieces on rows keep up to two rows more apart than they must, so that finer rows
 * let all of them move closer.
 */

import type { Target } from './cut-changes';
import { type Job, prepareJob } from './cut-job';
import { type Layout, lengthOf } from './cut-layout';
import { laidNear } from './cut-near';
import type { StepBudget } from './cut-sheet';

/** On so many rows a layout is changed once more. */
export const fineRows = 240;
const mostRows = 1920;
/** A gap over more rows than this takes too long to grow pieces by. */
const mostGapRows = 64;

/** On so many rows a layout is laid at last. */
export function finestRows({ width, sheet }: Pick<Job, 'width' | 'sheet'>): number {
  return Math.min(mostRows, Math.max(fineRows, Math.floor((mostGapRows * width) / sheet.gap)));
}

/** A layout on the rows of its job. */
export interface OnRows {
  readonly job: Job;
  readonly layout: Layout;
}

/** The layout on so many rows, each piece near its place; undefined if a piece no longer finds room there. */
export function onFinerRows({ job, layout }: OnRows, rowCount: number, budget: StepBudget): OnRows | undefined {
  const finer = prepareJob(job.pieces, job.sheet, rowCount, job);
  const within = rowCount / job.rowCount;
  const targets: Target[] = [];
  for (const spot of layout.spots) {
    const rows = finer.shapeOf(spot.item).at(spot.rows.turn);
    if (rows === undefined) return undefined;
    targets.push({ ...spot, rows, within });
  }
  const limits = { length: lengthOf(layout, job) + 1e-9, budget, mostSteps: Infinity };
  const laid = laidNear(finer, { targets, first: 0 }, limits, []);
  return laid && { job: finer, layout: laid };
}
