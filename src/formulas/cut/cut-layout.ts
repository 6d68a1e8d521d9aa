/**
 * Lays pieces one after another, each as far left as possible on the first sheet that has room.
 */
import type { Job } from './cut-job';
import type { Rows } from './cut-rows';
import { emptySheet, leftmost, occupy, type Sheet, type StepBudget } from './cut-sheet';
import { RowBounds } from './row-bounds';

/** The point of a piece that is kept left: the center of its area, its right end, its middle or its left end. */
export type Rule = 'weight' | 'right' | 'middle' | 'left';

/** A layout follows from the order of the pieces, the turns that each may take, and the rule. */
export interface Recipe {
  readonly order: readonly number[];
  readonly choices: readonly (readonly Rows[])[];
  readonly rule: Rule;
}

/** A piece laid: the lower-left corner of its box, from the corner of the usable area. */
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
  /** Sum of area times the distance of its center from the left: less leaves more room. */
  readonly moment: number;
}

/** Total length needed, with the last sheet cut where its last piece ends. */
export function lengthOf({ sheets, used }: Layout, job: Job): number {
  return (sheets - 1) * job.length + used;
}

/** Fewer sheets, then less of the last one, then pieces that lie farther left. */
export function isShorter(one: Layout, other: Layout, job: Job): boolean {
  if (one.sheets !== other.sheets) return one.sheets < other.sheets;
  const difference = lengthOf(one, job) - lengthOf(other, job);
  return difference < -1e-9 || (difference < 1e-9 && one.moment < other.moment);
}

/** The turns of a piece; pieces with the same turns share one object. */
type Turns = Rows | readonly Rows[];

export interface LayingLimits {
  /** The most total length, m. */
  readonly length: number;
  readonly budget: StepBudget;
  /** The step of the budget at which laying stops. */
  readonly mostSteps: number;
}

/** The layout of a recipe; undefined if it would need more length than the limit or more steps than are left. */
export function lay(job: Job, recipe: Recipe, limits: LayingLimits): Layout | undefined {
  const sheets: Sheet[] = [];
  const spots: Spot[] = [];
  /** The first sheet that may have room for a piece of these turns: a sheet that had no room never has it again. */
  const openSheets = new Map<Turns, number>();
  let moment = 0;
  for (const item of recipe.order) {
    const turns = recipe.choices[item] as readonly Rows[];
    let spot: Spot | undefined;
    const name = turns[0] !== undefined && turns.length === 1 ? turns[0] : turns;
    for (let sheet = openSheets.get(name) ?? 0; spot === undefined; sheet++) {
      const room = Math.min(job.length, limits.length - sheet * job.length);
      if (room <= 0 || limits.budget.spent > limits.mostSteps) return undefined;
      const on = sheets[sheet] ?? emptySheet(job.rowCount);
      sheets[sheet] = on;
      const found = bestPlace(on, turns, recipe.rule, room * (1 + 1e-12), limits.budget);
      if (found === undefined) continue;
      openSheets.set(name, sheet);
      occupy(on, job.grown(found.rows, limits.budget), found.x, found.row, limits.budget);
      spot = { item, rows: found.rows, sheet, x: found.x, y: found.row * job.rowHeight };
    }
    spots.push(spot);
    moment += job.shapeOf(item).area * (spot.sheet * job.length + spot.x + spot.rows.middleX);
  }
  return layoutOf(spots, moment);
}

/** The pieces of an order that fit on one sheet, each at its best place; others are left out. */
export function fillSheet(job: Job, { order, choices, rule }: Recipe, budget: StepBudget): readonly Spot[] {
  const sheet = emptySheet(job.rowCount);
  const spots: Spot[] = [];
  const refused = new Set<readonly Rows[]>();
  for (const item of order) {
    const turns = choices[item] as readonly Rows[];
    if (refused.has(turns)) continue;
    const place = bestPlace(sheet, turns, rule, job.length * (1 + 1e-12), budget);
    if (place === undefined) {
      refused.add(turns);
      continue;
    }
    occupy(sheet, job.grown(place.rows, budget), place.x, place.row, budget);
    spots.push({ item, rows: place.rows, sheet: 0, x: place.x, y: place.row * job.rowHeight });
  }
  return spots;
}

export function layoutOf(spots: readonly Spot[], moment: number): Layout {
  const last = spots.reduce((most, { sheet }) => Math.max(most, sheet), 0);
  const used = spots.reduce((most, { sheet, x, rows }) => (sheet === last ? Math.max(most, x + rows.length) : most), 0);
  return { spots, sheets: last + 1, used, moment };
}

export function momentOf(spots: readonly Spot[], job: Job): number {
  return spots.reduce(
    (sum, { item, sheet, x, rows }) => sum + job.shapeOf(item).area * (sheet * job.length + x + rows.middleX),
    0,
  );
}

interface Place {
  readonly rows: Rows;
  readonly x: number;
  readonly row: number;
}

/**
 * The place that keeps the piece farthest left by the rule, over all turns offered and all rows.
 *
 * For each turn it first tries the row that may allow the place farthest left; that place is the best if no other row
 * may allow one farther left.
 */
function bestPlace(
  sheet: Sheet,
  turns: readonly Rows[],
  rule: Rule,
  room: number,
  budget: StepBudget,
): Place | undefined {
  let place: Place | undefined;
  let least = Infinity;
  for (const rows of turns) {
    const offset = offsetOf(rows, rule);
    const bounds = boundsOf(sheet, rows);
    for (;;) {
      const most = Math.min(room - rows.length, least - offset - 1e-9);
      const lowest = bounds.least;
      budget.spent += bounds.count / 8;
      if (!(lowest <= most)) break;
      const row = bounds.leastRow;
      const x = leftmost(sheet, rows, row, lowest, most, budget);
      bounds.set(row, x);
      if (x > most) continue;
      least = x + offset;
      place = { rows, x, row };
      if (x === lowest) break;
    }
  }
  return place;
}

function boundsOf(sheet: Sheet, rows: Rows): RowBounds {
  let bounds = sheet.bounds.get(rows);
  if (bounds === undefined) {
    bounds = new RowBounds(sheet.taken.length - rows.count + 1);
    sheet.bounds.set(rows, bounds);
  }
  return bounds;
}

function offsetOf(rows: Rows, rule: Rule): number {
  if (rule === 'right') return rows.length;
  if (rule === 'middle') return rows.length / 2;
  return rule === 'weight' ? rows.middleX : 0;
}
