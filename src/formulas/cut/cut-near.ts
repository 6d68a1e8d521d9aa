/**
 * Lays a layout again with a few of its pieces moved: each piece near where it lay, which takes far fewer steps than
 * looking over the whole sheet.
 */
import type { Target } from './cut-changes';
import type { Job } from './cut-job';
import { type Layout, type LayingLimits, layoutOf, type Spot } from './cut-layout';
import type { Rows } from './cut-rows';
import { clearSheet, emptySheet, leftmost, occupy, type Sheet, type StepBudget } from './cut-sheet';

/**
 * The layout of the pieces in their order, each as far left as it goes on the first sheet with room within some rows of
 * its own; those before `first` stay exactly where they are. Undefined if it needs more length or steps than the limits.
 */
export function laidNear(
  job: Job,
  targets: readonly Target[],
  first: number,
  reach: number,
  { length, budget, mostSteps }: LayingLimits,
  sheets: Sheet[] = [],
): Layout | undefined {
  for (const sheet of sheets) clearSheet(sheet);
  const spots: Spot[] = [];
  let moment = 0;
  for (let place = 0; place < targets.length; place++) {
    const target = targets[place] as Target;
    const { item, rows } = target;
    const near = Math.round(target.y / job.rowHeight);
    let spot: Spot | undefined = place < first ? target : undefined;
    for (let sheet = spot?.sheet ?? 0; ; sheet++) {
      const on = (sheets[sheet] ??= emptySheet(job.rowCount));
      if (spot === undefined) {
        const room = Math.min(job.length, length - sheet * job.length);
        if (room <= 0 || budget.spent > mostSteps) return undefined;
        const found = placeNear(on, rows, near, target.reach ?? reach, room * (1 + 1e-12), budget);
        if (found !== undefined) spot = { item, rows, sheet, x: found.x, y: found.row * job.rowHeight };
      }
      if (spot === undefined) continue;
      occupy(on, job.grown(rows), spot.x, Math.round(spot.y / job.rowHeight), budget);
      break;
    }
    if (spot.x === target.x && spot.y === target.y && spot.sheet === target.sheet && !target.reach) spot = target;
    spots.push(spot);
    moment += job.shapeOf(item).area * (spot.sheet * job.length + spot.x + rows.middleX);
  }
  return layoutOf(spots, moment);
}

/** The place farthest left within some rows of one; of equal places that one. */
function placeNear(
  sheet: Sheet,
  rows: Rows,
  near: number,
  reach: number,
  room: number,
  budget: StepBudget,
): { readonly x: number; readonly row: number } | undefined {
  const last = sheet.taken.length - rows.count;
  let place: { readonly x: number; readonly row: number } | undefined;
  let most = room - rows.length;
  for (let i = 0; i <= 2 * reach; i++) {
    // The row itself, then one above, one below, two above and so on.
    const row = Math.max(0, Math.min(last, near)) + (i % 2 === 0 ? -i / 2 : (i + 1) / 2);
    if (row < 0 || row > last) continue;
    const x = leftmost(sheet, rows, row, 0, most, budget);
    if (x > most) continue;
    most = x - 1e-9;
    place = { x, row };
  }
  return place;
}
