/**
 * Points to mark a piece from two edges of its blank, so that no large compass is needed.
 */
import {
  type Corner,
  halfChord,
  type Piece,
  pieceReach,
  pointBeside,
  type RectanglePiece,
  type SectorPiece,
} from '../cut/piece';
import { wholeUp } from '../numeric/whole';
import { Refusal } from '../refusal';

/** A mark on both arcs, or a distance to check with a tape. Lengths in m, angles in rad. */
export interface ConeMark {
  readonly mark: string;
  /** From the clockwise straight edge. */
  readonly angle: number | undefined;
  /** From the blank's lower-left corner, its length along x: on the outer arc, and on the inner arc. */
  readonly outerX: number | undefined;
  readonly outerY: number | undefined;
  readonly innerX: number | undefined;
  readonly innerY: number | undefined;
  /** From corner to corner. */
  readonly distance: number | undefined;
}

const mostMarks = 9000;
const quarter = Math.PI / 2;

/**
 * Marks on both arcs at each step of angle from the clockwise straight edge, at the other edge, at the lap's corners; last,
 * distances from corner to corner. The blank lies with the sector's center line along its width, the outer arc at the top.
 *
 * A rectangle has marks at its corners only. Refuses more than 9000 marks. Source: polar coordinates.
 */
export function coneMarks(piece: Piece, step: number): readonly ConeMark[] {
  const marks = piece.shape === 'rectangle' ? rectangleMarks(piece) : sectorMarks(piece, step);
  const onBothArcs = marks.filter(isOnBothArcs);
  const [first] = onBothArcs;
  const last = onBothArcs.at(-1);
  return first === undefined || last === undefined ? marks : [...marks, ...distances(first, last)];
}

function sectorMarks(piece: SectorPiece, step: number): readonly ConeMark[] {
  const { innerRadius, outerRadius, angle, lap } = piece;
  if (angle / step > mostMarks) {
    throw new Refusal('step', 'give {least} or more', {
      figures: { least: { value: angle / mostMarks, like: 'step' } },
    });
  }
  const left = pieceReach(piece, quarter);
  const low = pieceReach(piece, 2 * quarter);
  // A point on the blank's own edge is meant to be at 0, whatever rounding left of it.
  const clean = (length: number) => (Math.abs(length) < 1e-14 * outerRadius ? 0 : length);
  const onBlank = ({ x, y }: Corner): Corner => ({ x: clean(left - y), y: clean(low + x) });
  const onArcs = (mark: string, turn: number, aside: number): ConeMark => {
    const point = (radius: number) => onBlank(pointBeside(turn - angle / 2, halfChord(radius, aside), aside));
    return coneMark(mark, aside === 0 ? turn : undefined, point(outerRadius), point(innerRadius));
  };
  const between = Math.max(0, wholeUp(angle / step) - 1);
  const marks = [onArcs('first edge', 0, 0)];
  for (let i = 1; i <= between; i++) marks.push(onArcs(`mark ${i}`, i * step, 0));
  marks.push(onArcs(lap > 0 ? 'lap line' : 'last edge', angle, 0));
  if (lap > 0) marks.push(onArcs('lap edge', angle, lap));
  if (lap > innerRadius)
    marks.push(coneMark('lap foot', undefined, undefined, onBlank(pointBeside(angle / 2, 0, innerRadius))));
  return marks;
}

/** The outer points are on the top edge of the blank, the inner ones on the bottom edge; the lap is at the left. */
function rectangleMarks({ length, width, lap }: RectanglePiece): readonly ConeMark[] {
  const across = (mark: string, x: number) => coneMark(mark, undefined, { x, y: width }, { x, y: 0 });
  const first = across('first edge', length);
  if (lap === 0) return [first, across('last edge', 0)];
  return [first, across('lap line', lap), across('lap edge', 0)];
}

/** A mark with a point on the outer and one on the inner arc; the foot of a wide lap has only one. */
type MarkOnArcs = ConeMark & { readonly [K in 'outerX' | 'outerY' | 'innerX' | 'innerY']: number };

function isOnBothArcs(mark: ConeMark): mark is MarkOnArcs {
  return mark.outerX !== undefined && mark.innerX !== undefined;
}

function distances(first: MarkOnArcs, last: MarkOnArcs): readonly ConeMark[] {
  const check = (mark: string, x: number, y: number): ConeMark => ({
    ...coneMark(mark, undefined, undefined, undefined),
    distance: Math.hypot(x, y),
  });
  const between = (from: readonly [x: number, y: number], to: readonly [x: number, y: number]) =>
    [to[0] - from[0], to[1] - from[1]] as const;
  const outer = (mark: MarkOnArcs) => [mark.outerX, mark.outerY] as const;
  const inner = (mark: MarkOnArcs) => [mark.innerX, mark.innerY] as const;
  return [
    check('check: outer corner to outer corner', ...between(outer(first), outer(last))),
    check('check: inner corner to inner corner', ...between(inner(first), inner(last))),
    check(`check: first edge outer to ${last.mark} inner`, ...between(outer(first), inner(last))),
    check(`check: ${last.mark} outer to first edge inner`, ...between(outer(last), inner(first))),
  ];
}

function coneMark(
  mark: string,
  angle: number | undefined,
  outer: Corner | undefined,
  inner: Corner | undefined,
): ConeMark {
  return {
    mark,
    angle,
    outerX: outer?.x,
    outerY: outer?.y,
    innerX: inner?.x,
    innerY: inner?.y,
    distance: undefined,
  };
}
