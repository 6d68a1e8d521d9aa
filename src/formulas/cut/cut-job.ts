/**
 * What there is to lay out, with every piece prepared in the turns that are tried.
 */
import { pieceRows, type Rows } from './cut-rows';
import { type Grown, grownBy } from './cut-sheet';
import { turnsOf } from './cut-turns';
import { type Piece, pieceArea } from './piece';
import { bestTurn, turnedBox } from './piece-fit';

export interface SheetSize {
  readonly length: number;
  readonly width: number;
  readonly gap: number;
}

/** Pieces that are alike share a shape. */
export interface Shape {
  readonly piece: Piece;
  readonly area: number;
  /** Turns at which the piece goes on the sheet; all are empty where it does at none. */
  readonly families: Families;
  /** The piece at a turn; undefined where it does not go on the sheet at that. */
  readonly at: (turn: number) => Rows | undefined;
  /** The piece at a turn and head to tail with that, the turns at which pieces of one kind lie closest in rows. */
  readonly pair: (turn: number) => readonly Rows[];
}

/** From the few turns that a person would try to all of them. */
export interface Families {
  readonly center: readonly Rows[];
  readonly edge: readonly Rows[];
  readonly usual: readonly Rows[];
  readonly every: readonly Rows[];
}

export interface Job {
  readonly sheet: SheetSize;
  readonly pieces: readonly Piece[];
  /** Each unlike shape once, and the shape of each piece. */
  readonly shapes: readonly Shape[];
  readonly shapeOf: (item: number) => Shape;
  /** Where pieces may lie, the gap at the sheet's edges taken off. */
  readonly length: number;
  readonly width: number;
  readonly rowCount: number;
  readonly rowHeight: number;
  /** A turned piece with the gap round it. */
  readonly grown: (rows: Rows) => Grown;
}

/** Rows that halves, thirds and quarters of a sheet go into; many pieces are laid on coarser ones, which is quicker. */
const fewPieces = 12;
const rowsForFew = 240;
const rowsForMany = 120;
/** Of more unlike shapes than this only the likeliest turns are tried, of many more only the plainest. */
const fewShapes = 100;
const manyShapes = 300;

export function prepareJob(pieces: readonly Piece[], sheet: SheetSize): Job {
  const length = sheet.length - 2 * sheet.gap;
  const width = sheet.width - 2 * sheet.gap;
  const rowCount = pieces.length > fewPieces ? rowsForMany : rowsForFew;
  const rowHeight = width / rowCount;
  const names = pieces.map((piece) => JSON.stringify(piece));
  const unlike = new Map(names.map((name, i) => [name, pieces[i] as Piece]));
  const room = { length, width, rowHeight, unlike: unlike.size };
  const byName = new Map(Array.from(unlike, ([name, piece]) => [name, shapeFor(piece, room)]));
  const items = names.map((name) => byName.get(name) as Shape);
  const known = new Map<Rows, Grown>();
  const grown = (rows: Rows) => {
    const found = known.get(rows) ?? grownBy(rows, sheet.gap, rowHeight, rowCount);
    known.set(rows, found);
    return found;
  };
  return {
    ...{ sheet, pieces, length, width, rowCount, rowHeight, grown },
    shapes: [...byName.values()],
    shapeOf: (item) => items[item] as Shape,
  };
}

interface Room {
  readonly length: number;
  readonly width: number;
  readonly rowHeight: number;
  /** Unlike shapes of the job. */
  readonly unlike: number;
}

function shapeFor(piece: Piece, room: Room): Shape {
  const at = rowsAt(piece, room);
  const families = familiesOf(piece, room, at);
  const pairs = new Map<number, readonly Rows[]>();
  const pair = (turn: number) => {
    const known = pairs.get(turn);
    if (known !== undefined) return known;
    const found = [at(turn), at(turn + Math.PI)].filter((rows) => rows !== undefined);
    const kept = found.length > 0 ? found : families.center;
    pairs.set(turn, kept);
    return kept;
  };
  return { piece, area: pieceArea(piece), families, at, pair };
}

/**
 * The rows of a piece by its turn, made once. A piece is put in rows only where it goes on the sheet: of one far wider than
 * the sheet they would be without number.
 */
function rowsAt(piece: Piece, { length, width, rowHeight }: Room): (turn: number) => Rows | undefined {
  const box = turnedBox(piece);
  const fits = (size: { readonly length: number; readonly width: number }, allowance: number) =>
    size.width <= width * (1 + allowance) && size.length <= length * (1 + allowance);
  const known = new Map<number, Rows | undefined>();
  return (wanted) => {
    const turn = piece.shape === 'rectangle' ? squareTurn(wanted) : wanted;
    if (turn === undefined) return undefined;
    if (known.has(turn)) return known.get(turn);
    const rows = fits(box(turn), 1e-9) ? pieceRows(piece, turn, rowHeight) : undefined;
    const kept = rows !== undefined && fits(rows, 1e-12) ? rows : undefined;
    known.set(turn, kept);
    return kept;
  };
}

/** A rectangle lies along the sheet or across it, so that a plan can say where its corner is; at no other turn. */
function squareTurn(turn: number): number | undefined {
  const quarters = turn / (Math.PI / 2);
  const whole = Math.round(quarters);
  if (Math.abs(quarters - whole) > 1e-9) return undefined;
  return whole % 2 === 0 ? 0 : Math.PI / 2;
}

function familiesOf(piece: Piece, { length, width, unlike }: Room, at: Shape['at']): Families {
  const turns = turnsOf(piece);
  const fitting = (some: readonly number[]) => some.map(at).filter((rows) => rows !== undefined);
  const center = fitting(turns.center);
  const edge = unlike <= manyShapes ? fitting(turns.edge) : [];
  const between = unlike <= fewShapes ? fitting(turns.between) : [];
  const usual = [...center, ...edge];
  const every = [...usual, ...between];
  // A piece that only just goes on the sheet may do so at no usual turn.
  const left = every.length > 0 ? every : fitting([bestTurn(piece, length, width).turn]);
  const orLeft = (family: readonly Rows[]) => (family.length > 0 ? family : left);
  return { center: orLeft(center), edge: orLeft(edge), usual: orLeft(usual), every: left };
}
