/**
 * The search for a shorter layout of few pieces by overlaps: the sheet is made a little shorter, and each piece that
 * overlaps others goes where it overlaps them least, at its turn or another one. Overlaps that stay for long come to weigh
 * more (the guided local search of Egeblad, Nielsen and Odgaard, 2007, with any turn); small ones are removed by moving all
 * pieces together.
 */
import { shuffle } from '../numeric/shuffle';
import { compacted, type PosedPiece } from './compaction';
import { eitherWay, nearTurn, nudge, turnByChance } from './cut-changes';
import type { Job } from './cut-job';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';
import { Overlaps, type Placed } from './cut-squeeze-overlaps';
import type { Pose } from './laid-piece';
import { TakenRows, type TriedRows } from './taken-rows';

/** The sheet is made shorter by this share. */
const shorter = 0.01;
const fewPieces = 10;
/**
 * After so many rounds without a gain pieces are put elsewhere by chance: of few pieces any number, as they may have to lie
 * quite differently; of more only some.
 */
const mostRounds = 8;
const putElsewhere = 3;
/** The search then goes on from a layout that is longer by this share at most, and so often before it goes back. */
const longer = 0.01;
const mostMoves = 20;
/** Layouts whose lengths differ by a smaller share are likely the same. */
const same = 0.0002;
/** The turns that a piece is tried at besides its own: near it, those of other pieces, and any. */
const turns = { near: 4, others: 4, any: 4 };
/**
 * Near turns are tried so many rows away, the piece's own on all rows and other ones on every second row; of more pieces on
 * half as many, and then on the rows beside the best.
 */
const nearRows = 4;
const otherStep = 2;
const coarserOfMore = 2;
/**
 * Layouts with overlaps of less than this share of the area are compacted; it adapts, so that some of them are: of more
 * pieces fewer, as each takes longer.
 */
const firstSmall = 0.003;
const smallChange = { few: { compacted: 0.95, left: 1.1 }, more: { compacted: 0.9, left: 1.05 } };
const compactionRounds = 8;
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
  const taken = new TakenRows(job.rowCount, length);
  const how = { width, gap: sheet.gap, rounds: compactionRounds, budget };
  const area = items.reduce((sum, item) => sum + job.shapeOf(item).area, 0);
  const start: Squeezed = { poses: posed.map(({ pose }) => pose), length };
  let best = start;
  // The search leaves the best layout for others that are a little longer, as all that lie near it may be longer.
  let current = start;
  let nextBest: Squeezed | undefined;
  let moves = 0;
  let small = firstSmall;
  const change = posed.length > fewPieces ? smallChange.more : smallChange.few;
  let overlaps = overlapsAt(job, items, current, budget);
  let rounds = 0;
  while (overlaps !== undefined && budget.spent < mostSteps && best.length > enough) {
    const within = current.length * (1 - shorter);
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
    small *= isSmall ? change.compacted : change.left;
    const poses = overlaps.poses();
    const pieces = posed.map((one, i): PosedPiece => ({ ...one, pose: poses[i] as Pose }));
    const next = isSmall ? compacted(pieces, { ...how, enough: current.length * (1 + longer) }) : undefined;
    const isShorter = next !== undefined && next.length < current.length - 1e-9;
    if (isShorter) {
      current = next;
      nextBest = undefined;
      if (current.length < best.length - 1e-9) {
        best = current;
        moves = 0;
      }
      overlaps = overlapsAt(job, items, current, budget);
      rounds = 0;
      continue;
    }
    if (next !== undefined && isOther(next, current) && next.length < (nextBest?.length ?? Infinity)) nextBest = next;
    if (rounds <= mostRounds) {
      overlaps.weigh();
      continue;
    }
    if (moves === mostMoves) {
      current = best;
      moves = 0;
    } else if (nextBest !== undefined) {
      current = nextBest;
      moves++;
    }
    nextBest = undefined;
    overlaps = overlapsAt(job, items, current, budget);
    putSomeElsewhere(overlaps, posed.length, within, random);
    rounds = 0;
  }
  return best.length < length ? best : undefined;
}

/** Not only the same layout, compacted a little less. */
function isOther(one: Squeezed, { length }: Squeezed): boolean {
  return one.length > length * (1 + same);
}

function putSomeElsewhere(overlaps: Overlaps | undefined, pieces: number, within: number, random: () => number): void {
  const count = pieces <= fewPieces ? 1 + Math.floor(random() * pieces) : putElsewhere;
  for (let i = 0; i < count; i++) overlaps?.putAnywhere(random, within);
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

/** The place and turn of a piece at which its overlaps weigh least, which may be those that it has. */
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
  let least = overlaps.weighedOf(i) / job.rowHeight;
  const coarser = overlaps.placed.length > fewPieces ? coarserOfMore : 1;
  const tryRows = (rows: Rows, tried: TriedRows) => {
    const place = taken.leastPlace(rows, within, tried, least);
    if (place === undefined) return;
    least = place.overlap;
    found = { item: me.item, rows, row: place.row, x: place.x };
  };
  const tryNear = (turn: number) => {
    const rows = shape.at(turn);
    if (rows === undefined) return;
    const middle = me.row + Math.round((me.rows.count - rows.count) / 2);
    tryRows(rows, { from: middle - nearRows, to: middle + nearRows, step: 1 });
  };
  const tryAnywhere = (turn: number, step: number) => {
    const rows = shape.at(turn);
    if (rows === undefined) return;
    tryRows(rows, { from: Math.floor(random() * step * coarser), to: anyRow, step: step * coarser });
    if (coarser > 1 && found.rows === rows) tryRows(rows, { from: found.row - 1, to: found.row + 1, step: 1 });
  };
  const { turn } = me.rows;
  tryAnywhere(turn, 1);
  if (shape.piece.shape === 'rectangle') {
    for (const other of shape.turns) tryAnywhere(other, 1);
    return found;
  }
  for (let k = 0; k < turns.near; k++) tryNear(nearTurn(turn, nudge(random)));
  for (let k = 0; k < turns.others; k++) {
    const other = overlaps.placed[Math.floor(random() * overlaps.placed.length)] as Placed;
    tryAnywhere(nearTurn(eitherWay(other.rows.turn, random() < 0.5), 0), otherStep);
  }
  for (let k = 0; k < turns.any; k++) tryAnywhere(turnByChance(random), otherStep);
  return found;
}
