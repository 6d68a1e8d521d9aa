/**
 * Lays a layout found on coarse rows again on fine ones, each piece near its place.
 */
import type { Job } from './cut-job';
import { type Layout, layoutOf, type Spot } from './cut-layout';
import { pieceRows, type Rows } from './cut-rows';
import { emptySheet, type Grown, grownBy, leftmost, occupy, type Sheet, type StepBudget } from './cut-sheet';
import type { Piece } from './piece';

const fineRows = 1920;
/** With more different shapes than this, fine rows would take too long to make. */
const mostShapes = 200;

interface Fine {
  readonly rows: Rows;
  readonly grown: Grown;
}

/** The finer layout; undefined if a piece no longer finds room near its place. */
export function polished(job: Job, layout: Layout, effort: StepBudget): Layout | undefined {
  if (job.shapes.length > mostShapes) return undefined;
  const finer = fineRows / job.rowCount;
  const rowHeight = job.width / fineRows;
  const known = new Map<Rows, Fine>();
  const sheets: Sheet[] = Array.from({ length: layout.sheets }, () => emptySheet(fineRows));
  const spots: Spot[] = [];
  let moment = 0;
  for (const { item, rows, sheet, y } of layout.spots) {
    const { piece, area } = job.shapeOf(item);
    const target = sheets[sheet];
    if (target === undefined) return undefined;
    const fine = known.get(rows) ?? fineOf(piece, rows.turn, rowHeight, job.sheet.gap, effort);
    known.set(rows, fine);
    const row = Math.round(y / rowHeight);
    const last = Math.min(fineRows - fine.rows.count, row + finer);
    let most = job.length * (1 + 1e-12) - fine.rows.length;
    let spot: Spot | undefined;
    let spotRow = 0;
    for (let at = Math.max(0, row - finer); at <= last; at++) {
      const x = leftmost(target, fine.rows, at, 0, most, effort);
      if (x > most) continue;
      most = x - 1e-9;
      spotRow = at;
      spot = { item, rows: fine.rows, sheet, x, y: at * rowHeight };
    }
    if (spot === undefined) return undefined;
    occupy(target, fine.grown, spot.x, spotRow, effort);
    spots.push(spot);
    moment += area * (sheet * job.length + spot.x + fine.rows.middleX);
  }
  return layoutOf(spots, moment);
}

function fineOf(piece: Piece, turn: number, rowHeight: number, gap: number, effort: StepBudget): Fine {
  const rows = pieceRows(piece, turn, rowHeight);
  return { rows, grown: grownBy(rows, gap, rowHeight, fineRows, effort) };
}
