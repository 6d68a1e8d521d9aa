/**
 * Lays a layout again with a few of its pieces moved: each piece near where it lay, which takes far fewer steps than
 * looking over the whole sheet.
 */
import type { Changed } from './cut-changes';
import type { Job } from './cut-job';
import { type LayingLimits, type Layout, layoutOf, type Spot } from './cut-layout';
import type { Rows } from './cut-rows';
import { clearSheet, emptySheet, leftmost, occupy, type Sheet, type StepBudget } from './cut-sheet';

/** Rows to either side that a piece is tried on that was not moved. */
const nearRows = 1;

/**
 * The layout of the pieces in their order, each as far left as it goes on the first sheet with room near its row; those
 * before the first change stay exactly where they are. Undefined if it needs more length or steps than the limits. The
 * sheets are cleared and used again.
 */
export function laidNear(
  job: Job,
  { targets, first }: Changed,
  { length, budget, mostSteps }: LayingLimits,
  sheets: Sheet[],
): Layout | undefined {
  for (const sheet of sheets) clearSheet(sheet);
  const sheetAt = (sheet: number) => (sheets[sheet] ??= emptySheet(job.rowCount));
  const spots: Spot[] = [];
  let moment = 0;
  for (const target of targets) {
    const { item, rows, within = nearRows } = target;
    const near = Math.round(target.y / job.rowHeight);
    let spot: Spot | undefined = spots.length < first ? target : undefined;
    for (let sheet = 0; spot === undefined; sheet++) {
      const room = Math.min(job.length, length - sheet * job.length);
      if (room <= 0 || budget.spent > mostSteps) return undefined;
      const found = placeNear(sheetAt(sheet), rows, near, within, room * (1 + 1e-12), budget);
      if (found !== undefined) spot = { item, rows, sheet, x: found.x, y: found.row * job.rowHeight };
    }
    occupy(sheetAt(spot.sheet), job.grown(rows, budget), spot.x, Math.round(spot.y / job.rowHeight), budget);
    spots.push(spot);
    moment += job.shapeOf(item).area * (spot.sheet * job.length + spot.x + rows.middleX);
  }
  return layoutOf(spots, moment);
}

/** The place farthest left within some rows of one; of equal places the nearest. */
function placeNear(
  sheet: Sheet,
  rows: Rows,
  near: number,
  within: number,
  room: number,
  budget: StepBudget,
): { readonly x: number; readonly row: number } | undefined {
  const last = sheet.taken.length - rows.count;
  const middle = Math.max(0, Math.min(last, near));
  let place: { readonly x: number; readonly row: number } | undefined;
  let most = room - rows.length;
  for (let i = 0; i <= 2 * within; i++) {
    // The row itself, then one above, one below, two above and so on.
    const row = middle + (i % 2 === 0 ? -i / 2 : (i + 1) / 2);
    if (row < 0 || row > last) continue;
    const x = leftmost(sheet, rows, row, 0, most, budget);
    if (x > most) continue;
    most = x - 1e-9;
    place = { x, row };
  }
  return place;
}
