/**
 * Laying the boxes of pieces, so that no plan is worse than boxes alone: exact where equal boxes just fill a sheet, which
 * rows are not. The free room of a sheet is kept as all largest empty rectangles (the maximal rectangles of Jylänki, 2010).
 */
import type { Job } from './cut-job';
import type { Layout, Spot } from './cut-layout';
import type { Rows } from './cut-rows';

interface Room {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** How well a box goes into a room: less is better. */
type Badness = (restLength: number, restWidth: number, room: Room) => number;

const measures: readonly Badness[] = [
  (length, width) => Math.min(length, width),
  (length, width, room) => room.length * room.width - (room.length - length) * (room.width - width),
  (_length, _width, room) => room.x + room.y * 1e-6,
];

/** The layouts of boxes in each order and by each way to choose a room; the gap is added to every box and to the sheet. */
export function layBoxes(job: Job, orders: readonly (readonly number[])[]): readonly Layout[] {
  return orders.flatMap((order) => measures.map((badness) => layInOrder(job, order, badness)));
}

function layInOrder(job: Job, order: readonly number[], badness: Badness): Layout {
  const sheets: Room[][] = [];
  const spots: Spot[] = [];
  let moment = 0;
  for (const item of order) {
    const shape = job.shapes[job.items[item]!]!;
    let spot: Spot | undefined;
    for (let sheet = 0; spot === undefined; sheet++) {
      if (sheet === sheets.length)
        sheets.push([{ x: 0, y: 0, length: job.length + job.gap, width: job.width + job.gap }]);
      const found = bestRoom(sheets[sheet]!, shape.families[2]!, job.gap, badness);
      if (found === undefined) continue;
      const { room, rows } = found;
      spot = { item, rows, sheet, x: room.x, y: room.y };
      const box = { x: room.x, y: room.y, length: rows.length + job.gap, width: rows.width + job.gap };
      sheets[sheet] = largestOnly(sheets[sheet]!.flatMap((free) => around(free, box)));
    }
    spots.push(spot);
    moment += shape.area * (spot.sheet * job.length + spot.x + spot.rows.middleX);
  }
  const last = sheets.length - 1;
  const used = Math.max(...spots.filter(({ sheet }) => sheet === last).map(({ x, rows }) => x + rows.length));
  return { spots, sheets: sheets.length, used, moment };
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

/** What is left of a room beside a box: up to four rooms that overlap each other. */
function around(room: Room, box: Room): readonly Room[] {
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

/** Rooms that are not within another one. */
function largestOnly(rooms: readonly Room[]): Room[] {
  const within = (one: Room, other: Room) =>
    one.x >= other.x &&
    one.y >= other.y &&
    one.x + one.length <= other.x + other.length &&
    one.y + one.width <= other.y + other.width;
  const kept: Room[] = [];
  for (const room of [...rooms].sort((a, b) => b.length * b.width - a.length * a.width)) {
    if (!kept.some((other) => within(room, other))) kept.push(room);
  }
  return kept;
}
