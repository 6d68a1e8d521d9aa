/**
 * Laying patterns on sheet stock. Lengths in m, angles in rad, areas in m2.
 */
import type { PatternRow } from '../cone/cone-pattern';
import { readPattern } from '../cone/read-pattern';
import { Refusal } from '../refusal';
import { type Job, prepareJob, type SheetSize } from './cut-job';
import type { Spot } from './cut-layout';
import { shortestLayout } from './cut-search';
import { type Piece, pieceArea } from './piece';
import { mostPieces, piecesThatFit } from './piece-fit';

/** A pattern row as a table gives it, with its place in the table where that is not its place in the list. */
export type PlacedPattern = PatternRow & { readonly row?: number };

export interface CutRow {
  /** Place of the pattern row in its table, from 1. */
  readonly pattern: number;
  /** From 1 to the row's pieces. */
  readonly piece: number;
  readonly sheet: number;
  /** Of a sector the arc center, of a rectangle the lower-left corner as it lies, from the sheet's lower-left corner. */
  readonly x: number;
  readonly y: number;
  /** Of a sector the center line's, counter-clockwise from the sheet's length; of a rectangle 0 or a quarter turn. */
  readonly direction: number;
}

export interface CutSheets {
  readonly sheets: number;
  readonly areaUsed: number;
  readonly areaBought: number;
  readonly shareUsed: number;
  /** How far the last sheet is used along its length. */
  readonly lengthUsed: number;
}

/** One of the pieces that the rows ask for. */
interface Wanted {
  readonly pattern: number;
  readonly number: number;
  readonly of: number;
  readonly piece: Piece;
}

/** More pieces than this are not laid out at once. */
const mostCutPieces = 1000;

/**
 * Where each piece lies: true shapes, any rotation, as few sheets and then as little of the last one as the search finds.
 *
 * Pieces keep the gap from each other and from the sheet's edge, and never overlap. The same input gives the same plan.
 * `under` is what the units of the rows are called, for the refusal of a row that was made under others.
 * Cannot lay a piece that goes on the sheet at no turn, a row whose numbers disagree, or more than 1000 pieces.
 * Source: rows of intervals and bottom-left placement, improved by small changes (Bennell and Oliveira, 2009, a tutorial
 * in irregular shape packing problems).
 */
export function cutPlan(
  patterns: readonly PlacedPattern[],
  sheetLength: number,
  sheetWidth: number,
  gap: number,
  under?: string,
): readonly CutRow[] {
  return planOf(patterns, { length: sheetLength, width: sheetWidth, gap }, under).rows;
}

/** What the plan takes: sheets to buy, areas, the share of what is bought that is used, and the last sheet's length used. Cannot and source as cutPlan. */
export function cutSheets(
  patterns: readonly PlacedPattern[],
  sheetLength: number,
  sheetWidth: number,
  gap: number,
  under?: string,
): CutSheets {
  return planOf(patterns, { length: sheetLength, width: sheetWidth, gap }, under).sheets;
}

interface Plan {
  readonly rows: readonly CutRow[];
  readonly sheets: CutSheets;
}

/** A sheet asks for the plan and for its totals with the same figures, so the latest plans are kept. */
const latest = new Map<string, Plan>();
const mostKept = 8;

function planOf(patterns: readonly PlacedPattern[], sheet: SheetSize, under?: string): Plan {
  const name = JSON.stringify([patterns, sheet]);
  const kept = latest.get(name);
  if (kept !== undefined) return kept;
  const plan = newPlan(patterns, sheet, under);
  if (latest.size >= mostKept) latest.delete(latest.keys().next().value!);
  latest.set(name, plan);
  return plan;
}

function newPlan(patterns: readonly PlacedPattern[], sheet: SheetSize, under?: string): Plan {
  const wanted = wantedPieces(patterns, sheet, under);
  const job = prepareJob(
    wanted.map(({ piece }) => piece),
    sheet,
  );
  const tooLarge = wanted.find((_, item) => job.shapes[job.items[item]!]!.families[0]!.length === 0);
  if (tooLarge !== undefined) throw refusalOf(tooLarge, job);
  const layout = shortestLayout(job);
  const spots = inReadingOrder(leastUsedLast(layout.spots), job.items);
  const rows = spots.map(({ item, rows: { turn, originX, originY }, sheet: on, x, y }): CutRow => {
    const { pattern, number, piece } = wanted[item]!;
    const corner = { x: sheet.gap + x, y: sheet.gap + y };
    const place = piece.shape === 'sector' ? { x: corner.x + originX, y: corner.y + originY } : corner;
    return { pattern, piece: number, sheet: on + 1, ...place, direction: wholeTurnLess(turn) };
  });
  const areaUsed = wanted.reduce((sum, { piece }) => sum + pieceArea(piece), 0);
  const areaBought = layout.sheets * sheet.length * sheet.width;
  const lengthUsed = spots.reduce(
    (most, spot) => (spot.sheet === layout.sheets - 1 ? Math.max(most, rightEnd(spot)) : most),
    0,
  );
  const shareUsed = areaUsed / areaBought;
  return {
    rows,
    sheets: { sheets: layout.sheets, areaUsed, areaBought, shareUsed, lengthUsed: sheet.gap + lengthUsed },
  };
}

/** Reads every row, and refuses what cannot be laid. */
function wantedPieces(patterns: readonly PlacedPattern[], sheet: SheetSize, under?: string): readonly Wanted[] {
  const length = sheet.length - 2 * sheet.gap;
  const width = sheet.width - 2 * sheet.gap;
  if (length <= 0 || width <= 0) {
    throw new Refusal('gap', 'give less than half the sheet’s width ({limit})', {
      figures: { limit: { value: Math.min(sheet.length, sheet.width) / 2, like: 'gap' } },
    });
  }
  const count = patterns.reduce((sum, { pieces }) => sum + pieces, 0);
  if (count > mostCutPieces) {
    throw new Refusal('patterns', `${count} pieces are too many to lay out at once; give up to ${mostCutPieces}`);
  }
  return patterns.flatMap((row, i) => {
    const pattern = row.row ?? i + 1;
    const piece = readPattern(row, 'patterns', pattern, under);
    return Array.from({ length: row.pieces }, (_, j): Wanted => ({ pattern, number: j + 1, of: row.pieces, piece }));
  });
}

function refusalOf({ piece, of, pattern }: Wanted, { length, width }: Job): Refusal {
  const cutIn = (count: number): Piece =>
    piece.shape === 'sector'
      ? { ...piece, angle: (piece.angle * of) / count }
      : { ...piece, length: ((piece.length - piece.lap) * of) / count + piece.lap };
  const enough = piecesThatFit(cutIn, length, width);
  const instead = enough === undefined ? `nor would it in up to ${mostPieces}` : `it would fit in ${enough} pieces`;
  const given = of === 1 ? 'one piece' : `${of} pieces`;
  return new Refusal('patterns', `row ${pattern} in ${given} does not go on the sheet at any turn; ${instead}`);
}

/** The sheet that is used least becomes the last one, as its rest is worth most. */
function leastUsedLast(spots: readonly Spot[]): readonly Spot[] {
  const ends: number[] = [];
  for (const spot of spots) ends[spot.sheet] = Math.max(ends[spot.sheet] ?? 0, rightEnd(spot));
  const last = ends.length - 1;
  const least = ends.lastIndexOf(Math.min(...ends));
  const renumbered = (sheet: number) => (sheet === last ? least : sheet === least ? last : sheet);
  return spots.map((spot) => ({ ...spot, sheet: renumbered(spot.sheet) }));
}

function rightEnd({ x, rows }: Spot): number {
  return x + rows.length;
}

/** Pieces that are alike are numbered from the first sheet on and from left to right; rows stand as they were asked for. */
function inReadingOrder(spots: readonly Spot[], items: readonly number[]): readonly Spot[] {
  const sorted = [...spots].sort((a, b) => a.sheet - b.sheet || a.x - b.x || a.y - b.y);
  const queues = new Map<number, Spot[]>();
  for (const spot of sorted) {
    const kind = items[spot.item]!;
    queues.set(kind, [...(queues.get(kind) ?? []), spot]);
  }
  return items.map((kind, item) => ({ ...queues.get(kind)!.shift()!, item }));
}

/** The turn from 0 to less than a whole one, free of what rounding left of a whole turn. */
function wholeTurnLess(turn: number): number {
  const whole = 2 * Math.PI;
  const rest = turn - whole * Math.floor(turn / whole);
  return rest < 1e-12 || whole - rest < 1e-12 ? 0 : rest;
}
