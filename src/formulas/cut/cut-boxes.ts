/**
 * Lays the boxes of pieces, so that no plan is worse than boxes alone; boxes are exact if equal ones just fill a
 * sheet, rows are not. The free room of a sheet is kept as all largest empty rectangles (the maximal rectangles of
 * Jylänki, 2010).
 */
import type { Job } from './cut-job';
import { isShorter, type Layout, layoutOf, momentOf, type Spot } from './cut-layout';
import type { Rows } from './cut-rows';
import type { StepBudget } from './cut-sheet';

interface Room {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** How well a box fits a room: less is better. */
type Badness = (restLength: number, restWidth: number, room: Room) => number;

const measures: readonly Badness[] = [
  (length, width) => Math.min(length, width),
  (length, width, room) => room.length * room.width - (room.length - length) * (room.width - width),
  (_length, _width, room) => room.x + room.y * 1e-6,
];

/**
 * The layouts of boxes in each order and by each way to choose a room; the gap is added to every box and to the sheet.
 * After the steps are spent, at most one more layout is made, and pieces are only tried on the last sheet.
 */
export function layBoxes(
  job: Job,
  orders: readonly (readonly number[])[],
  budget: StepBudget,
  mostSteps: number,
): Layout {
  let best: Layout | undefined;
  for (const order of orders) {
    for (const badness of measures) {
      if (best !== undefined && budget.spent > mostSteps) return best;
      const layout = layInOrder(job, order, badness, budget, mostSteps);
      if (best === undefined || isShorter(layout, best, job)) best = layout;
    }
  }
  if (best === undefined) throw new Error('there was no order to lay pieces in');
  return best;
}

function layInOrder(
  job: Job,
  order: readonly number[],
  badness: Badness,
  budget: StepBudget,
  mostSteps: number,
): Layout {
  const { gap } = job.sheet;
  const sheets: Room[][] = [];
  const spots: Spot[] = [];
  for (const item of order) {
    const { usual } = job.shapeOf(item).families;
    let spot: Spot | undefined;
    for (let sheet = budget.spent > mostSteps ? Math.max(0, sheets.length - 1) : 0; spot === undefined; sheet++) {
      const rooms = sheets[sheet] ?? [{ x: 0, y: 0, length: job.length + gap, width: job.width + gap }];
      budget.spent += 2 * rooms.length * usual.length;
      sheets[sheet] = rooms;
      const found = bestRoom(rooms, usual, gap, badness);
      if (found === undefined) continue;
      const { room, rows } = found;
      spot = { item, rows, sheet, x: room.x, y: room.y };
      const box = { x: room.x, y: room.y, length: rows.length + gap, width: rows.width + gap };
      sheets[sheet] = largestOnly(rooms, box, budget);
    }
    spots.push(spot);
  }
  return layoutOf(spots, momentOf(spots, job));
}

/** Equal sizes may differ by rounding. */
const allowance = 1e-12;

function bestRoom(rooms: readonly Room[], options: readonly Rows[], gap: number, badness: Badness) {
  let best: { readonly room: Room; readonly rows: Rows } | undefined;
  let least = Infinity;
  for (const room of rooms) {
    for (const rows of options) {
      const restLength = room.length - rows.length - gap;
      const restWidth = room.width - rows.width - gap;
      if (restLength < -allowance * room.length || restWidth < -allowance * room.width) continue;
      const score = badness(restLength, restWidth, room);
      if (score >= least) continue;
      least = score;
      best = { room, rows };
    }
  }
  return best;
}

/** The rest of a room beside a box: up to four rooms that overlap each other. */
function roomsAround(room: Room, box: Room): readonly Room[] {
  const right = room.x + room.length;
  const top = room.y + room.width;
  const boxRight = box.x + box.length;
  const boxTop = box.y + box.width;
  if (box.x >= right || boxRight <= room.x || box.y >= top || boxTop <= room.y) return [room];
  const left: Room[] = [];
  if (box.x > room.x) left.push({ ...room, length: box.x - room.x });
  if (boxRight < right) left.push({ ...room, x: boxRight, length: right - boxRight });
  if (box.y > room.y) left.push({ ...room, width: box.y - room.y });
  if (boxTop < top) left.push({ ...room, y: boxTop, width: top - boxTop });
  return left;
}

/** At most this many rooms of a sheet are kept; the smallest are dropped. */
const mostRooms = 200;

/** The rooms that a box leaves, without those inside another one. */
function largestOnly(rooms: readonly Room[], box: Room, budget: StepBudget): Room[] {
  const isWithin = (one: Room, other: Room) =>
    one.x >= other.x &&
    one.y >= other.y &&
    one.x + one.length <= other.x + other.length &&
    one.y + one.width <= other.y + other.width;
  const kept: Room[] = [];
  const left = rooms.flatMap((free) => roomsAround(free, box));
  for (const room of left.sort((a, b) => b.length * b.width - a.length * a.width).slice(0, mostRooms)) {
    budget.spent += kept.length;
    if (!kept.some((other) => isWithin(room, other))) kept.push(room);
  }
  return kept;
}
