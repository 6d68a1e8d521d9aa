/**
 * Small changes of a layout, of which the search keeps those that make it shorter.
 */
import type { Job } from './cut-job';
import type { Spot } from './cut-layout';
import type { Rows } from './cut-rows';

const K = (name: string, value: number) => Number((globalThis as any).process?.env?.[name] ?? value);
const Q = K('QUANTUM', 128);
const WIDE = K('WIDE', 50);
const MOST = K('MOST', 3);
const LOCAL = K('LOCAL', 0.5);
const ALL = K('ALL', 0.05);
const LIKE = K('LIKE', 0.5);
const HIGH = K('HIGH', 6);

/** Where a piece is to be laid: near its spot, up to some rows away. */
export interface Target extends Spot {
  readonly reach?: number;
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
  const nudge = () => (random() < 0.5 ? 1 : -1) * (1 + Math.floor(WIDE * random() ** 3)) / Q;
  const near = (turn: number) => Math.round(turn * Q) / Q;
  const anyRow = (spot: Target): Target => ({ ...spot, y: random() * (job.width - spot.rows.width) , reach: HIGH});
  if (random() < ALL) {
    const by = nudge();
    // Pieces that face the other way are turned with their pair, or against it.
    const against = random() < 0.5 ? 1 : -1;
    const all = targets.map((spot) => turned(spot, near(spot.rows.turn + (Math.cos(spot.rows.turn) >= 0 ? by : against * by)), job));
    return { targets: all, first: 0 };
  }
  let first = targets.length;
  for (let changes = 1 + pick(MOST); changes > 0; changes--) {
    const kind = pick(6);
    const at = pick(targets.length);
    const to = random() < LOCAL ? Math.min(targets.length - 1, Math.max(0, at + pick(9) - 4)) : pick(targets.length);
    const one = targets[at] as Target;
    const other = targets[to] as Target;
    first = Math.min(first, at);
    if (kind === 0) {
      first = Math.min(first, to);
      targets[to] = { ...one, y: other.y, reach: HIGH };
      targets[at] = { ...other, y: one.y, reach: HIGH };
    } else if (kind === 1) {
      first = Math.min(first, to);
      targets.splice(to, 0, ...targets.splice(at, 1).map(anyRow));
    } else if (kind < 4) {
      const { every } = job.shapeOf(one.item).families;
      const like = random() < LIKE ? opposite(other.rows.turn, random()) : (every[pick(every.length)] as Rows).turn;
      const next = turned(one, like, job);
      targets[at] = random() < 0.5 ? next : anyRow(next);
    } else {
      targets[at] = turned(one, near(one.rows.turn + nudge()), job);
    }
  }
  return { targets, first };
}

function opposite(turn: number, r: number): number {
  return r < 0.5 ? turn : turn > Math.PI ? turn - Math.PI : turn + Math.PI;
}

/** A piece turned about its origin, which stays as high as it was; or the piece as it is, if it does not fit so turned. */
function turned(spot: Target, turn: number, job: Job): Target {
  const rows = job.shapeOf(spot.item).at(turn);
  return rows === undefined ? spot : { ...spot, rows, y: spot.y + spot.rows.originY - rows.originY, reach: HIGH };
}
