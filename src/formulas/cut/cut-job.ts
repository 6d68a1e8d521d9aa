/**
 * The pieces to lay out, each prepared in the turns that are tried.
 */
import { pieceRows, type Rows } from './cut-rows';
import { type Grown, grownBy, type StepBudget } from './cut-sheet';
import { turnsOf } from './cut-turns';
import { type Piece, pieceArea } from './piece';
import { bestTurn, turnedBox } from './piece-fit';
import { type OutlinePart, pieceOutline } from './piece-outline';

export interface SheetSize {
  readonly length: number;
  readonly width: number;
  readonly gap: number;
}

/** Pieces that are alike share a shape. */
export interface Shape {
  readonly piece: Piece;
  readonly outline: readonly OutlinePart[];
  readonly area: number;
  /** Turns at which the piece fits the sheet; all are empty if it never fits. */
  readonly families: Families;
  /** The turns of the last family, without the rows, which take time to make. */
  readonly turns: readonly number[];
  /** The piece at a turn; undefined if it does not fit the sheet at that turn. */
  readonly at: (turn: number) => Rows | undefined;
  /** The piece at a turn and head to tail with it: the turns at which pieces of one kind lie closest in rows. */
  readonly pair: (turn: number) => readonly Rows[];
}

/** Families of turns, from the few that a person would try to all. */
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
  /** The area for pieces, without the gap at the sheet's edges. */
  readonly length: number;
  readonly width: number;
  readonly rowCount: number;
  readonly rowHeight: number;
  /** Whether pieces on its rows may overlap a little. */
  readonly isRough: boolean;
  /** A turned piece with the gap round it. */
  readonly grown: (rows: Rows, budget: StepBudget) => Grown;
}

/** A row count that halves, thirds and quarters of a sheet divide. */
const usualRows = 120;
/** With more different shapes than this only the likeliest turns are tried, with many more only the simplest. */
const fewShapes = 100;
const manyShapes = 300;

/** So few rough rows are quick to lay on and tell good layouts from bad ones. */
const roughRows = 42;

/** The job on rough rows, with its pieces at the same turns. */
export function roughJob(job: Job): Job {
  return prepareJob(job.pieces, job.sheet, roughRows, job, true);
}

/** A job from its pieces. One with such pieces on the same sheet saves the work of trying their turns again. */
export function prepareJob(
  pieces: readonly Piece[],
  sheet: SheetSize,
  rowCount = usualRows,
  like?: Job,
  isRough = false,
): Job {
  const length = sheet.length - 2 * sheet.gap;
  const width = sheet.width - 2 * sheet.gap;
  const rowHeight = width / rowCount;
  const names = pieces.map((piece) => JSON.stringify(piece));
  const unlike = new Map(names.map((name, i) => [name, pieces[i] as Piece]));
  const room = { length, width, rowHeight, unlike: unlike.size, isRough };
  const tried = shapesByName(like, unlike.size);
  const byName = new Map(
    Array.from(unlike, ([name, piece]) => {
      const alike = tried.get(name);
      return [
        name,
        alike !== undefined && like?.rowCount === rowCount && like.isRough === isRough
          ? alike
          : shapeFor(piece, room, alike),
      ];
    }),
  );
  const items = names.map((name) => byName.get(name) as Shape);
  const known = new Map<Rows, Grown>();
  const grown = (rows: Rows, budget: StepBudget) => {
    const found = known.get(rows) ?? grownBy(rows, sheet.gap, rowHeight, rowCount, budget, isRough);
    known.set(rows, found);
    return found;
  };
  return {
    ...{ sheet, pieces, length, width, rowCount, rowHeight, isRough, grown },
    shapes: [...byName.values()],
    shapeOf: (item) => items[item] as Shape,
  };
}

/** The shapes of a job in which each was tried at the same turns as in one of so many shapes. */
function shapesByName(like: Job | undefined, unlike: number): ReadonlyMap<string, Shape> {
  const shapes = like?.shapes ?? [];
  const areSame = shapes.length <= fewShapes || shapes.length === unlike;
  return new Map(areSame ? shapes.map((shape) => [JSON.stringify(shape.piece), shape]) : []);
}

interface Room {
  readonly length: number;
  readonly width: number;
  readonly rowHeight: number;
  /** Different shapes of the job. */
  readonly unlike: number;
  readonly isRough: boolean;
}

function shapeFor(piece: Piece, room: Room, alike: Shape | undefined): Shape {
  const outline = pieceOutline(piece);
  const at = rowsAt(piece, outline, room);
  // Their rows are many, and a layout that is laid again needs none of them.
  let made: Families | undefined;
  const families = () => (made ??= familiesOf(piece, room, at));
  let turns: readonly number[] | undefined;
  const pairs = new Map<number, readonly Rows[]>();
  const pair = (turn: number) => {
    const known = pairs.get(turn);
    if (known !== undefined) return known;
    const found = [at(turn), at(turn + Math.PI)].filter((rows) => rows !== undefined);
    const kept = found.length > 0 ? found : families().center;
    pairs.set(turn, kept);
    return kept;
  };
  return {
    ...{ piece, outline, area: pieceArea(piece), at, pair },
    get families() {
      return families();
    },
    get turns() {
      turns ??= alike?.turns ?? families().every.map(({ turn }) => turn);
      return turns;
    },
  };
}

/**
 * The rows of a piece by its turn, made once. Rows are made only for a piece that fits the sheet: one far wider would
 * have too many.
 */
function rowsAt(
  piece: Piece,
  outline: readonly OutlinePart[],
  { length, width, rowHeight, isRough }: Room,
): (turn: number) => Rows | undefined {
  const box = turnedBox(piece);
  const fits = (size: { readonly length: number; readonly width: number }, allowance: number) =>
    size.width <= width * (1 + allowance) && size.length <= length * (1 + allowance);
  const known = new Map<number, Rows | undefined>();
  return (wanted) => {
    const turn = piece.shape === 'rectangle' ? squareTurn(wanted) : wanted;
    if (turn === undefined) return undefined;
    const before = known.get(turn);
    if (before !== undefined || known.has(turn)) return before;
    const rows = fits(box(turn), 1e-9) ? pieceRows(outline, turn, rowHeight, isRough) : undefined;
    const kept = rows !== undefined && fits(rows, 1e-12) ? rows : undefined;
    known.set(turn, kept);
    return kept;
  };
}

/** A rectangle lies along the sheet or across it and at no other turn, so that a plan can give its corner. */
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
  // A piece that barely fits the sheet may fit at none of the usual turns.
  const left = every.length > 0 ? every : fitting([bestTurn(piece, length, width).turn]);
  const orLeft = (family: readonly Rows[]) => (family.length > 0 ? family : left);
  return { center: orLeft(center), edge: orLeft(edge), usual: orLeft(usual), every: left };
}
