/**
 * Lays patterns on sheet stock. Lengths in m, angles in rad, areas in m2.
 */
import type { PatternRow } from '../cone/cone-pattern';
import { readPattern } from '../cone/read-pattern';
import { Refusal } from '../refusal';
import { isSearchLoaded, layPieces, type SheetSize } from './lay-pieces';
import { type Piece, pieceArea } from './piece';
import { mostPieces, piecesThatFit } from './piece-fit';

export { isSearchLoaded };

/** A pattern row from a table, with its place in the table if that differs from its place in the list. */
export type PlacedPattern = PatternRow & { readonly row?: number };

export interface CutRow {
  /** Place of the pattern row in its table, from 1. */
  readonly pattern: number;
  /** From 1 to the row's pieces. */
  readonly piece: number;
  readonly sheet: number;
  /**
   * The arc center of a sector, or the lower-left corner of a rectangle as it lies, from the sheet's lower-left
   * corner.
   */
  readonly x: number;
  readonly y: number;
  /**
   * The direction of a sector's center line, counter-clockwise from the sheet's length; for a rectangle 0 or a
   * quarter turn.
   */
  readonly direction: number;
}

export interface CutSheets {
  readonly sheets: number;
  readonly areaUsed: number;
  readonly areaBought: number;
  readonly shareUsed: number;
  /** The used length of the last sheet. */
  readonly lengthUsed: number;
}

/** One of the pieces that the rows ask for. */
interface Wanted {
  readonly pattern: number;
  readonly number: number;
  readonly of: number;
  readonly piece: Piece;
}

/** The most pieces in one plan. */
const mostCutPieces = 1000;

/** The stock that pieces are cut from, m. */
export interface SheetStock {
  readonly sheetLength: number;
  readonly sheetWidth: number;
  readonly gap: number;
}

export interface PlanOptions {
  /** The length of the search, in multiples of the usual one. */
  readonly effort?: number;
  /** The names of the rows' units, for the refusal of a row that was made in other units. */
  readonly under?: string;
  /** Refuses rather than leave a row out. */
  readonly whole?: boolean;
}

/** A pattern row that cannot be laid, and why. */
export interface NotLaid {
  readonly pattern: number;
  readonly refusal: Refusal;
  /** Whether its piece fits the sheet at no turn. */
  readonly tooLarge: boolean;
}

export interface CutPlan {
  readonly rows: readonly CutRow[];
  readonly sheets: CutSheets;
  readonly notLaid: readonly NotLaid[];
}

/**
 * The place of each piece: true shapes, any rotation, the fewest sheets and then the least of the last one that the
 * search finds.
 *
 * Pieces keep the gap from each other and from the sheet's edge, and never overlap. The same input gives the same plan.
 * Refuses a piece that does not fit on the sheet, a row whose numbers disagree, and more than 1000 pieces. If a row
 * cannot
 * be placed, the others still are; the call is refused only if no row can.
 * Source: rows of intervals and bottom-left placement, improved by small changes (Bennell and Oliveira, 2009, a tutorial
 * in irregular shape packing problems); all pieces moved together by linear programs (Li and Milenkovic, 1995, compaction
 * and separation algorithms for non-convex polygons); of few pieces, overlaps that come to weigh more (Egeblad, Nielsen and
 * Odgaard, 2007, fast neighborhood search for nesting).
 */
export function layPatterns(
  patterns: readonly PlacedPattern[],
  stock: SheetStock,
  { effort = 1, under, whole = false }: PlanOptions = {},
): CutPlan {
  const sheet = rounded({ length: stock.sheetLength, width: stock.sheetWidth, gap: stock.gap });
  const asked = readRows(patterns, sheet, under);
  // Keyed by the rounded figures of the search, so that rows that went through a cell find the same plan.
  const name = JSON.stringify([asked, sheet, effort]);
  const plan = keptPlans.get(name) ?? newPlan(asked, sheet, effort, whole);
  // Each row that is not laid says why, in the units of the call.
  if (plan.notLaid.length > 0) return plan;
  keptPlans.delete(name);
  keptPlans.set(name, plan);
  const [oldest = name] = keptPlans.keys();
  if (keptPlans.size > mostKept) keptPlans.delete(oldest);
  return plan;
}

/**
 * A sheet needs the plan and its totals from the same figures, and a change that is undone needs those before it, so
 * the plans that were used last are kept, in that order, each by all that it follows from. A page may keep them for
 * longer, and bring them back.
 */
export const keptPlans = new Map<string, CutPlan>();
const mostKept = 32;

/** The plan's rows, as layPatterns, but refuses a plan that leaves a row out. */
export function cutPlan(
  patterns: readonly PlacedPattern[],
  stock: SheetStock,
  options?: PlanOptions,
): readonly CutRow[] {
  return layPatterns(patterns, stock, { ...options, whole: true }).rows;
}

/**
 * The needs of the plan: sheets to buy, areas, the share of the bought area that is used, and the used length of the
 * last sheet.
 * As layPatterns, but refuses a plan that leaves a row out, because you would buy too little.
 */
export function cutSheets(patterns: readonly PlacedPattern[], stock: SheetStock, options?: PlanOptions): CutSheets {
  return layPatterns(patterns, stock, { ...options, whole: true }).sheets;
}

/**
 * Figures to 14 digits. The last digits of one length differ between units, and those of a pattern between browsers, and
 * would lead the search to another plan that is equally good.
 */
function rounded<T extends object>(figures: T): T {
  const entries = Object.entries(figures).map(([key, value]) => [
    key,
    typeof value === 'number' ? Number(value.toPrecision(14)) : value,
  ]);
  return Object.fromEntries(entries) as T;
}

function newPlan({ rows: read, notRead }: AskedRows, sheet: SheetSize, effort: number, whole: boolean): CutPlan {
  const wanted = read.flatMap(({ pattern, of, piece }) =>
    Array.from({ length: of }, (_, i): Wanted => ({ pattern, number: i + 1, of, piece })),
  );
  const laid = layPieces(
    wanted.map(({ piece }) => piece),
    { ...sheet, effort, needsAll: whole, lacksSome: notRead.length > 0 },
  );
  const tooLarge = wanted.flatMap(({ piece, of, pattern, number }, i): readonly NotLaid[] =>
    number > 1 || laid.fits[i] ? [] : [{ pattern, refusal: largeRefusal(piece, of, pattern, sheet), tooLarge: true }],
  );
  const notLaid = [...notRead, ...tooLarge].sort((one, other) => one.pattern - other.pattern);
  if ((whole || laid.places.length === 0) && notLaid[0] !== undefined) throw notLaid[0].refusal;
  const fitting = wanted.filter((_, i) => laid.fits[i]);
  const rows = laid.places.flatMap(({ item, ...place }) =>
    fitting.slice(item, item + 1).map(({ pattern, number }) => ({ pattern, piece: number, ...place })),
  );
  const areaUsed = fitting.reduce((sum, { piece }) => sum + pieceArea(piece), 0);
  const areaBought = laid.sheets * sheet.length * sheet.width;
  const shareUsed = areaUsed / areaBought;
  return {
    rows,
    sheets: { sheets: laid.sheets, areaUsed, areaBought, shareUsed, lengthUsed: laid.lengthUsed },
    notLaid,
  };
}

/** The rows that could be read, and why the others could not. */
interface AskedRows {
  readonly rows: readonly { readonly pattern: number; readonly of: number; readonly piece: Piece }[];
  readonly notRead: readonly NotLaid[];
}

function readRows(patterns: readonly PlacedPattern[], sheet: SheetSize, under: string | undefined): AskedRows {
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
  const rows: AskedRows['rows'][number][] = [];
  const notRead: NotLaid[] = [];
  for (const [i, row] of patterns.entries()) {
    const pattern = row.row ?? i + 1;
    try {
      rows.push({ pattern, of: row.pieces, piece: rounded(readPattern(row, 'patterns', pattern, under)) });
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      notRead.push({ pattern, refusal: error, tooLarge: false });
    }
  }
  return { rows, notRead };
}

function largeRefusal(piece: Piece, of: number, pattern: number, sheet: SheetSize): Refusal {
  const [length, width] = [sheet.length - 2 * sheet.gap, sheet.width - 2 * sheet.gap];
  const cutIn = (count: number): Piece =>
    piece.shape === 'sector'
      ? { ...piece, angle: (piece.angle * of) / count }
      : { ...piece, length: ((piece.length - piece.lap) * of) / count + piece.lap };
  const enough = piecesThatFit(cutIn, length, width);
  const instead = enough === undefined ? `nor would it fit in up to ${mostPieces}` : `it would fit in ${enough} pieces`;
  const given = of === 1 ? 'one piece' : `${of} pieces`;
  return new Refusal('patterns', `row ${pattern} in ${given} does not fit on the sheet in any rotation; ${instead}`);
}
