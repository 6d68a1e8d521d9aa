/**
 * The search for a shorter layout of few pieces by overlaps: the sheet is made a little shorter, and each piece that
 * overlaps others goes where it overlaps them least, at its turn or another one. Overlaps that stay for long come to weigh
 * more (the guided local search of Egeblad, Nielsen and Odgaard, 2007, with any turn); small ones are removed by moving all
 * pieces together.
 */
import { shuffle } from '../numeric/shuffle';
import { compacted, type PosedPiece } from './compaction';
import { eitherWay, nearTurn, nudge } from './cut-changes';
import type { Job } from './cut-job';
import type { StepBudget } from './cut-sheet';
import { Overlaps, type Placed } from './cut-squeeze-overlaps';
import type { Pose } from './laid-piece';
import { TakenRows } from './taken-rows';

/** The sheet is made shorter by this share. */
const shorter = 0.01;
/** After so many rounds without a gain some pieces of the shortest layout are put elsewhere by chance. */
const mostRounds = 8;
const putElsewhere = 3;
/** The turns that a piece is tried at besides its own: near it, those of other pieces, and any. */
const turns = { near: 2, others: 2, any: 2 };
/** Near turns are tried so many rows away, other ones on every second row. */
const nearRows = 4;
const coarseStep = 2;
/** Layouts with overlaps of less than this share of the area are compacted; it adapts, so that some of them are. */
const firstSmall = 0.003;
const smallChange = { compacted: 0.95, left: 1.1 };
const compactionRounds = 12;
/** A step of looking for the least overlap takes this part of the time of a step of laying. */
const workAStep = 0.5;
const anyRow = Number.MAX_SAFE_INTEGER;

export interface SqueezeLimits {
  readonly budget: StepBudget;
  readonly mostSteps: number;
  /** A layout no longer than this ends the search. */
  readonly enough: number;
  readonly random: () => number;
}

export interface Squeezed {
  readonly poses: readonly Pose[];
  readonly length: number;
}

/** Shorter poses of all pieces of a sheet, on the rough rows of a job; undefined if none were found. */
export function squeezed(
  job: Job,
  items: readonly number[],
  posed: readonly PosedPiece[],
  length: number,
  { budget, mostSteps, enough, random }: SqueezeLimits,
): Squeezed | undefined {
  const { width, sheet } = job;
  // Steps along a sheet are too coarse for a gap that is longer than all pieces.
  if (posed.length < 2 || sheet.gap > length) return undefined;
  const taken = new TakenRows(job.rowCount, length, sheet.gap, posed.length);
  const how = { width, gap: sheet.gap, rounds: compactionRounds, budget };
  const area = items.reduce((sum, item) => sum + job.shapeOf(item).area, 0);
  let best: Squeezed = { poses: posed.map(({ pose }) => pose), length };
  let small = firstSmall;
  let overlaps = overlapsAt(job, items, best, budget);
  let rounds = 0;
  while (overlaps !== undefined && budget.spent < mostSteps && best.length > enough) {
    const within = best.length * (1 - shorter);
    if (rounds === 0) overlaps.moveInto(within);
    const overlapping = overlaps.overlapping();
    shuffle(overlapping, random);
    for (const i of overlapping) {
      if (budget.spent >= mostSteps) break;
      if (overlaps.of(i) > 0) overlaps.place(i, leastOverlap(job, overlaps, i, within, taken, random));
      budget.spent += workAStep * taken.work;
      taken.work = 0;
    }
    rounds++;
    const isSmall = overlaps.sum() < small * area;
    small *= isSmall ? smallChange.compacted : smallChange.left;
    const poses = overlaps.poses();
    const pieces = posed.map((one, i): PosedPiece => ({ ...one, pose: poses[i] as Pose }));
    const next = isSmall ? compacted(pieces, { ...how, enough: best.length }) : undefined;
    const isShorter = next !== undefined && next.length < best.length - 1e-9;
    if (isShorter) best = next;
    if (isShorter || rounds > mostRounds) {
      overlaps = overlapsAt(job, items, best, budget);
      if (!isShorter) for (let i = 0; i < putElsewhere; i++) overlaps?.putAnywhere(random, within);
      rounds = 0;
    } else {
      overlaps.weigh();
    }
  }
  return best.length < length ? best : undefined;
}

/** The poses on rough rows, at turns whose rows are known or soon made; undefined if a piece has no rows at its turn. */
function overlapsAt(job: Job, items: readonly number[], { poses }: Squeezed, budget: StepBudget): Overlaps | undefined {
  const placed: Placed[] = [];
  for (const [i, { x, y, turn }] of poses.entries()) {
    const item = items[i] as number;
    const { at } = job.shapeOf(item);
    const rows = at(nearTurn(turn, 0)) ?? at(turn);
    if (rows === undefined) return undefined;
    const row = Math.round((y - rows.originY) / job.rowHeight);
    placed.push({ item, rows, row: Math.max(0, Math.min(job.rowCount - rows.count, row)), x: x - rows.originX });
  }
  return new Overlaps(job, placed, budget);
}

/** The place and turn of a piece at which its overlaps weigh least. */
function leastOverlap(
  job: Job,
  overlaps: Overlaps,
  i: number,
  within: number,
  taken: TakenRows,
  random: () => number,
): Placed {
  const me = overlaps.placed[i] as Placed;
  const shape = job.shapeOf(me.item);
  overlaps.takeOthers(i, taken);
  let found = me;
  let least = Infinity;
  const tryTurn = (turn: number, reach: number, step: number) => {
    const rows = shape.at(turn);
    if (rows === undefined) return;
    const middle = me.row + Math.round((me.rows.count - rows.count) / 2);
    const from = Math.max(0, middle - reach) + Math.floor(random() * step);
    const place = taken.leastPlace(rows, within, { from, to: middle + reach, step }, least);
    if (place === undefined) return;
    least = place.overlap;
    found = { item: me.item, rows, row: place.row, x: place.x };
  };
  const { turn } = me.rows;
  tryTurn(turn, anyRow, 1);
  if (shape.piece.shape === 'rectangle') {
    for (const other of shape.turns) tryTurn(other, anyRow, 1);
    return found;
  }
  for (let k = 0; k < turns.near; k++) tryTurn(nearTurn(turn, nudge(random)), nearRows, 1);
  for (let k = 0; k < turns.others; k++) {
    const other = overlaps.placed[Math.floor(random() * overlaps.placed.length)] as Placed;
    tryTurn(nearTurn(eitherWay(other.rows.turn, random() < 0.5), 0), anyRow, coarseStep);
  }
  for (let k = 0; k < turns.any; k++) tryTurn(nearTurn(2 * Math.PI * random(), 0), anyRow, coarseStep);
  return found;
}
