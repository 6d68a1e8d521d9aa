/**
 * Lays pieces on sheets: finds a short layout and gives the place of each piece. Lengths in m, angles in rad.
 */
import { type Job, prepareJob, type Shape, type SheetSize } from './cut-job';
import type { Spot } from './cut-layout';
import { bestLayout } from './cut-repeat';
import type { Piece } from './piece';

export type { SheetSize };

export interface LayingOptions extends SheetSize {
  /** The length of the search, in multiples of the usual one. */
  readonly effort: number;
  /** Lays nothing rather than leave a piece out. */
  readonly needsAll: boolean;
  /** Whether there are pieces besides these that are left out. */
  readonly lacksSome: boolean;
}

/** The place of a piece, as in the rows of a plan. */
export interface LaidPlace {
  /** Which of the pieces that fit, from 0. */
  readonly item: number;
  readonly sheet: number;
  readonly x: number;
  readonly y: number;
  readonly direction: number;
}

export interface LaidPieces {
  /** Whether each piece fits the sheet at some turn. */
  readonly fits: readonly boolean[];
  /** In the order of the pieces that fit; empty if nothing was laid. */
  readonly places: readonly LaidPlace[];
  readonly sheets: number;
  /** The used length of the last sheet, with the gap before it. */
  readonly lengthUsed: number;
}

/** Whether the search is here; the function script has to load it first. */
export const isSearchLoaded = (): boolean => true;

/** The places of all pieces that fit the sheet. */
export function layPieces(
  pieces: readonly Piece[],
  { effort, needsAll, lacksSome, ...sheet }: LayingOptions,
): LaidPieces {
  const all = prepareJob(pieces, sheet);
  const fits = pieces.map((_, item) => all.shapeOf(item).families.every.length > 0);
  const fitting = pieces.filter((_, item) => fits[item]);
  const isAll = fitting.length === pieces.length;
  if (fitting.length === 0 || (needsAll && (lacksSome || !isAll)))
    return { fits, places: [], sheets: 0, lengthUsed: 0 };
  const job = isAll ? all : prepareJob(fitting, sheet);
  const layout = bestLayout(job, effort);
  const spots = inReadingOrder(leastUsedLast(layout.spots), job);
  const places = spots.map(({ item, rows: { turn, originX, originY }, sheet: on, x, y }): LaidPlace => {
    const isSector = job.shapeOf(item).piece.shape === 'sector';
    return {
      ...{ item, sheet: on + 1, direction: wholeTurnLess(turn) },
      x: sheet.gap + x + (isSector ? originX : 0),
      y: sheet.gap + y + (isSector ? originY : 0),
    };
  });
  const used = spots.reduce(
    (most, spot) => (spot.sheet === layout.sheets - 1 ? Math.max(most, rightEnd(spot)) : most),
    0,
  );
  return { fits, places, sheets: layout.sheets, lengthUsed: sheet.gap + used };
}

/** The sheet that is used least becomes the last one, because its rest is worth most. */
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

/** Equal pieces are numbered from the first sheet and from left to right; rows keep their order. */
function inReadingOrder(spots: readonly Spot[], job: Job): readonly Spot[] {
  const sorted = [...spots].sort((a, b) => a.sheet - b.sheet || a.x - b.x || a.y - b.y);
  const alike = new Map<Shape, { readonly items: number[]; taken: number }>();
  for (const item of job.pieces.keys()) {
    const shape = job.shapeOf(item);
    const found = alike.get(shape) ?? { items: [], taken: 0 };
    found.items.push(item);
    alike.set(shape, found);
  }
  const ordered = sorted.map((spot) => {
    const queue = alike.get(job.shapeOf(spot.item));
    return { ...spot, item: queue?.items[queue.taken++] ?? spot.item };
  });
  return ordered.sort((a, b) => a.item - b.item);
}

/** The turn from 0 to less than a whole one, with rounding errors near a whole turn removed. */
function wholeTurnLess(turn: number): number {
  const whole = 2 * Math.PI;
  const rest = turn - whole * Math.floor(turn / whole);
  return rest < 1e-12 || whole - rest < 1e-12 ? 0 : rest;
}
