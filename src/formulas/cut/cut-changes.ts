/**
 * Small changes of a layout, of which the search keeps those that make it shorter.
 */
import { cosine } from '../numeric/portable-angles';
import type { Job } from './cut-job';
import type { Spot } from './cut-layout';

/** Turns are whole numbers of this part of a radian, so that the rows of a turn are made once and used often. */
const finestTurn = 1 / 128;
/** Turns by chance are whole numbers of this one; small changes make them finer later. */
const coarserTurn = 4 * finestTurn;
/** The largest small change of turn, in such parts; most are far smaller. */
const widestTurn = 50;
/** Rows to either side that a moved piece is tried on. */
const movedRows = 6;
/** The most changes at once. */
const mostChanges = 3;
/** How often all pieces are turned; how often a piece changes places with one near it in the order. */
const shares = { all: 0.05, near: 0.5 };

/** Where a piece is to be laid: near its spot, up to so many rows away if it was moved. */
export interface Target extends Spot {
  readonly within?: number;
}

/** Where pieces are to be laid, in that order, and the first place of the order that differs from before. */
export interface Changed {
  readonly targets: readonly Target[];
  readonly first: number;
}

/**
 * The spots with up to three small changes: two pieces change places, a piece moves in the order and to any row, a piece
 * takes another turn, or is turned a little; or all pieces are turned a little.
 */
export function changed(spots: readonly Spot[], job: Job, random: () => number): Changed {
  const targets: Target[] = [...spots];
  const pick = (count: number) => Math.floor(random() * count);
  const halfTheTimes = () => random() < 0.5;
  const toAnyRow = (spot: Spot): Target => moved(spot, random() * (job.width - spot.rows.width));
  if (random() < shares.all) {
    const by = nudge(random);
    // Pieces that face the other way are turned with their pair, or against it.
    const against = halfTheTimes() ? by : -by;
    const all = targets.map((spot) => {
      const { turn } = spot.rows;
      return turned(spot, nearTurn(turn, cosine(turn) >= 0 ? by : against), job);
    });
    return { targets: all, first: 0 };
  }
  let first = targets.length;
  for (let changes = 1 + pick(mostChanges); changes > 0; changes--) {
    const kind = pick(6);
    const at = pick(targets.length);
    const to =
      random() < shares.near ? Math.min(targets.length - 1, Math.max(0, at + pick(9) - 4)) : pick(targets.length);
    const one = targets[at] as Target;
    const other = targets[to] as Target;
    first = Math.min(first, at, kind < 2 ? to : at);
    if (kind === 0) {
      targets[to] = moved(one, other.y);
      targets[at] = moved(other, one.y);
    } else if (kind === 1) {
      targets.splice(to, 0, ...targets.splice(at, 1).map(toAnyRow));
    } else if (kind < 4) {
      const { turns } = job.shapeOf(one.item);
      const turn = halfTheTimes() ? eitherWay(other.rows.turn, halfTheTimes()) : (turns[pick(turns.length)] as number);
      const next = turned(one, turn, job);
      targets[at] = halfTheTimes() ? next : toAnyRow(next);
    } else {
      targets[at] = turned(one, nearTurn(one.rows.turn, nudge(random)), job);
    }
  }
  return { targets, first };
}

function moved(spot: Spot, y: number): Target {
  return { ...spot, y, within: movedRows };
}

/** A turn so many parts away, in whole parts. */
export function nearTurn(turn: number, parts: number): number {
  return (Math.round(turn / finestTurn) + parts) * finestTurn;
}

/** Any turn in coarser parts, so that the rows of most of them are known. */
export function turnByChance(random: () => number): number {
  return Math.round((2 * Math.PI * random()) / coarserTurn) * coarserTurn;
}

/** By how many parts a piece is turned a little. */
export function nudge(random: () => number): number {
  const way = random() < 0.5 ? 1 : -1;
  const share = random();
  return way * (1 + Math.floor(widestTurn * share * share * share));
}

/** A turn, or the one head to tail with it. */
export function eitherWay(turn: number, opposite: boolean): number {
  if (!opposite) return turn;
  return turn > Math.PI ? turn - Math.PI : turn + Math.PI;
}

/** A piece turned about its origin, which stays as high as it was; or the piece as it is, if it does not fit so turned. */
function turned(spot: Target, turn: number, job: Job): Target {
  const rows = job.shapeOf(spot.item).at(turn);
  return rows === undefined ? spot : { ...moved(spot, spot.y + spot.rows.originY - rows.originY), rows };
}
