/**
 * Small changes of a layout's recipe, of which the search keeps those that make the layout shorter.
 */
import type { Job } from './cut-job';
import type { Recipe, Rule } from './cut-layout';
import type { Rows } from './cut-rows';
import { rules } from './cut-starts';

/** Small changes of turn are up to so much, most of them far less. */
const widestNudge = Math.PI / 8;
/** How often all pieces are looked for room anywhere, and how often a piece that changes is. */
const allFree = 0.1;
const oneFree = 0.5;
const allTurned = 0.1;
const turnsOffered = 4;

/** A recipe that may be changed. */
interface Draft {
  readonly order: number[];
  readonly choices: (readonly Rows[])[];
  readonly near: (number | undefined)[];
  /** Whether every piece may go anywhere. */
  readonly free: boolean;
}

/**
 * A recipe with up to three small changes: two pieces change places, a piece moves in the order, a piece takes one other
 * turn or the best of a few, or is turned a little; or all pieces are turned a little. Most pieces are then laid near where
 * they were. `first` is the first place of the order that is laid otherwise than before.
 */
export function changed(
  recipe: Recipe,
  job: Job,
  random: () => number,
): { readonly next: Recipe; readonly first: number } {
  const free = random() < allFree;
  const upward = random() < 0.5;
  const draft: Draft = {
    order: [...recipe.order],
    choices: [...recipe.choices],
    near: free ? [] : [...(recipe.near ?? [])],
    free,
  };
  const { order, choices, near } = draft;
  const all = random() < allTurned;
  let first = all ? 0 : order.length;
  if (all) turnAll(draft, job, random);
  else {
    for (let changes = 1 + Math.floor(random() * 3); changes > 0; changes--) {
      first = Math.min(first, changeOne(draft, job, random));
    }
  }
  const otherRule = !all && random() >= 0.85;
  const rule = otherRule ? (rules[Math.floor(random() * rules.length)] as Rule) : recipe.rule;
  return { next: { order, choices, near, upward, rule }, first: otherRule ? 0 : first };
}

function nudge(random: () => number): number {
  return widestNudge * (2 * random() - 1) ** 3;
}

/** Pieces that face the other way are turned with their pair, or against it. */
function turnAll(draft: Draft, job: Job, random: () => number): void {
  const by = nudge(random) / 2;
  const against = random() < 0.5 ? 1 : -1;
  for (const item of draft.order) {
    const faces = Math.cos(draft.choices[item]?.[0]?.turn ?? 0) >= 0;
    turnPiece(draft, item, faces ? by : against * by, job);
  }
}

/** Turns a piece about its origin, which stays about as high as it was. */
function turnPiece({ choices, near }: Draft, item: number, by: number, job: Job): void {
  const rows = choices[item]?.[0];
  const next = rows && job.shapeOf(item).at(rows.turn + by);
  if (rows === undefined || next === undefined) return;
  const row = near[item];
  if (row !== undefined) near[item] = Math.round(row + (rows.originY - next.originY) / job.rowHeight);
  choices[item] = [next];
}

/** One change, and the first place of the order that it touches. */
function changeOne(draft: Draft, job: Job, random: () => number): number {
  const { order, choices, near, free } = draft;
  const pick = (count: number) => Math.floor(random() * count);
  const kind = pick(6);
  const at = pick(order.length);
  const to = pick(order.length);
  const item = order[at] as number;
  const other = order[to] as number;
  const { every } = job.shapeOf(item).families;
  const mayFree = (one: number) => {
    if (!free && random() < oneFree) near[one] = undefined;
  };
  if (kind === 0) {
    [order[at], order[to]] = [other, item];
    [near[item], near[other]] = [near[other], near[item]];
    mayFree(item);
    mayFree(other);
  } else if (kind === 1) {
    order.splice(to, 0, ...order.splice(at, 1));
    near[item] = undefined;
  } else if (kind < 4) {
    const from = pick(every.length);
    // Seven turns on is far from the one before, and comes round to none of the few that are offered.
    const offered = Array.from(
      { length: kind === 2 ? 1 : turnsOffered },
      (_, i) => every[(from + 7 * i) % every.length],
    );
    choices[item] = offered.filter((rows) => rows !== undefined);
    near[item] = undefined;
  } else {
    turnPiece(draft, item, nudge(random), job);
    mayFree(item);
  }
  return kind < 2 ? Math.min(at, to) : at;
}
