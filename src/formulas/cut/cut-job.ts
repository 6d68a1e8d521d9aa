/**
 * What there is to lay out, with every piece prepared in the turns that are tried.
 */
import { pieceRows, type Rows } from './cut-rows';
import { type Grown, grownBy } from './cut-sheet';
import { turnsOf } from './cut-turns';
import { type Piece, pieceArea } from './piece';
import { bestTurn } from './piece-fit';

export interface SheetSize {
  readonly length: number;
  readonly width: number;
  readonly gap: number;
}

/** Pieces that are alike share a shape. */
export interface Shape {
  readonly piece: Piece;
  readonly area: number;
  /** Families of turns at which the piece goes on the sheet, the last one of all; empty where it does at no turn. */
  readonly families: readonly (readonly Rows[])[];
}

export interface Job {
  /** The shape of each piece. */
  readonly shapes: readonly Shape[];
  readonly items: readonly number[];
  /** Where pieces may lie, the gap at the sheet's edges taken off. */
  readonly length: number;
  readonly width: number;
  readonly gap: number;
  readonly rowCount: number;
  /** A turned piece with the gap round it. */
  readonly grown: (rows: Rows) => Grown;
  readonly rowHeight: number;
}

/** Rows that halves, thirds and quarters of a sheet go into; many pieces are laid on coarser ones, which is quicker. */
const fewPieces = 12;
const rowsForFew = 240;
const rowsForMany = 120;
/** Of more unlike shapes than this only the likeliest turns are tried. */
const fewShapes = 100;

export function prepareJob(pieces: readonly Piece[], sheet: SheetSize): Job {
  const length = sheet.length - 2 * sheet.gap;
  const width = sheet.width - 2 * sheet.gap;
  const rowCount = pieces.length > fewPieces ? rowsForMany : rowsForFew;
  const rowHeight = width / rowCount;
  const unlike = new Map(pieces.map((piece) => [JSON.stringify(piece), piece]));
  const names = [...unlike.keys()];
  const room = { length, width, rowHeight, everyTurn: unlike.size <= fewShapes };
  const shapes = names.map((name): Shape => {
    const piece = unlike.get(name)!;
    return { piece, area: pieceArea(piece), families: familiesOf(piece, room) };
  });
  const places = new Map(names.map((name, i) => [name, i]));
  const items = pieces.map((piece) => places.get(JSON.stringify(piece))!);
  const known = new Map<Rows, Grown>();
  const grown = (rows: Rows) => {
    const found = known.get(rows) ?? grownBy(rows, sheet.gap, rowHeight);
    known.set(rows, found);
    return found;
  };
  return { shapes, items, length, width, gap: sheet.gap, grown, rowCount, rowHeight };
}

function familiesOf(
  piece: Piece,
  {
    length,
    width,
    rowHeight,
    everyTurn,
  }: Pick<Job, 'length' | 'width' | 'rowHeight'> & { readonly everyTurn: boolean },
): readonly (readonly Rows[])[] {
  const { center, edge, between } = turnsOf(piece);
  const fits = (rows: Rows) => rows.width <= width * (1 + 1e-12) && rows.length <= length * (1 + 1e-12);
  const [first, second, third] = [center, edge, everyTurn ? between : []].map((turns) =>
    turns.map((turn) => pieceRows(piece, turn, rowHeight)).filter(fits),
  );
  const families = [first!, second!, [...first!, ...second!], [...first!, ...second!, ...third!]];
  const all = families[3]!;
  // A piece that only just goes on the sheet may do so at no usual turn.
  const only = () => [pieceRows(piece, bestTurn(piece, length, width).turn, rowHeight)].filter(fits);
  return families.map((family) => (family.length > 0 ? family : all.length > 0 ? all : only()));
}
