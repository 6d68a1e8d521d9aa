/**
 * Laying pieces one after another, each as far left on the first sheet that takes it.
 */
import type { Job } from './cut-job';
import type { Rows } from './cut-rows';
import { emptySheet, leftmost, type Sheet, type StepBudget, take } from './cut-sheet';

/** What of a piece is kept left: the middle of its area, its right end, the middle of its box, or its left end. */
export type Rule = 'weight' | 'right' | 'middle' | 'left';

/** What decides a layout: the order of the pieces, the family of turns or the one turn that each may take, and the rule. */
export interface Recipe {
  readonly order: readonly number[];
  readonly choices: readonly (number | Rows)[];
  readonly rule: Rule;
}

/** A piece laid: the lower-left corner of its box, from the corner of what may be used of the sheet. */
export interface Spot {
  readonly item: number;
  readonly rows: Rows;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
}

export interface Layout {
  readonly spots: readonly Spot[];
  readonly sheets: number;
  /** Of the sheet opened last. */
  readonly used: number;
  /** Sum of area times how far right its middle lies: what is less leaves more room. */
  readonly moment: number;
}

/** Sheet needed in all, with the last sheet cut where its last piece ends. */
export function lengthOf({ sheets, used }: Layout, job: Job): number {
  return (sheets - 1) * job.length + used;
}

/** The layout of a recipe; undefined where it would need more length than the limit, or more steps than there are left. */
export function lay(
  job: Job,
  recipe: Recipe,
  limit: number,
  effort: StepBudget,
  mostSteps: number,
): Layout | undefined {
  const sheets: Sheet[] = [];
  const spots: Spot[] = [];
  const refused = new Set<string>();
  let moment = 0;
  for (const item of recipe.order) {
    const kind = job.items[item]!;
    const shape = job.shapes[kind]!;
    const choice = recipe.choices[item]!;
    const options = typeof choice === 'number' ? shape.families[choice]! : [choice];
    let spot: Spot | undefined;
    for (let sheet = 0; spot === undefined; sheet++) {
      const room = Math.min(job.length, limit - sheet * job.length);
      if (room <= 0 || effort.spent > mostSteps) return undefined;
      // What a sheet refused once it refuses for good, as sheets only fill up.
      const name = `${sheet} ${kind} ${typeof choice === 'number' ? choice : choice.turn}`;
      if (refused.has(name)) continue;
      if (sheet === sheets.length) sheets.push(emptySheet(job.rowCount));
      const found = bestPlace(sheets[sheet]!, options, recipe.rule, room * (1 + 1e-12), effort);
      if (found === undefined) {
        refused.add(name);
        continue;
      }
      take(sheets[sheet]!, job.grown(found.rows), found.x, found.row, effort);
      spot = { item, rows: found.rows, sheet, x: found.x, y: found.row * job.rowHeight };
    }
    spots.push(spot);
    moment += shape.area * (spot.sheet * job.length + spot.x + spot.rows.middleX);
  }
  return layoutOf(spots, moment);
}

export function layoutOf(spots: readonly Spot[], moment: number): Layout {
  const last = spots.reduce((most, { sheet }) => Math.max(most, sheet), 0);
  const used = spots.reduce((most, { sheet, x, rows }) => (sheet === last ? Math.max(most, x + rows.length) : most), 0);
  return { spots, sheets: last + 1, used, moment };
}

interface Place {
  readonly rows: Rows;
  readonly x: number;
  readonly row: number;
}

/** The place that keeps the piece farthest left by the rule, over all turns offered and all rows. */
function bestPlace(
  sheet: Sheet,
  options: readonly Rows[],
  rule: Rule,
  room: number,
  effort: StepBudget,
): Place | undefined {
  let place: Place | undefined;
  let least = Infinity;
  for (const rows of options) {
    const offset = offsetOf(rows, rule);
    const bounds = boundsOf(sheet, rows);
    for (let row = 0; row < bounds.length; row++) {
      const most = Math.min(room - rows.length, least - offset - 1e-9);
      if (bounds[row]! > most) continue;
      const x = leftmost(sheet, rows, row, bounds[row]!, most, effort);
      bounds[row] = x;
      if (x > most) continue;
      least = x + offset;
      place = { rows, x, row };
    }
  }
  return place;
}

function boundsOf(sheet: Sheet, rows: Rows): Float64Array {
  let bounds = sheet.bounds.get(rows);
  if (bounds === undefined) {
    bounds = new Float64Array(sheet.taken.length - rows.count + 1);
    sheet.bounds.set(rows, bounds);
  }
  return bounds;
}

function offsetOf(rows: Rows, rule: Rule): number {
  if (rule === 'right') return rows.length;
  if (rule === 'middle') return rows.length / 2;
  return rule === 'weight' ? rows.middleX : 0;
}
