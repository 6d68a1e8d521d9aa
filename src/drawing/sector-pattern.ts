import { halfChord, pieceReach, pointBeside, type SectorPiece } from '../formulas/cut/piece';
import { type Entity, type Extent, polar, quarterTurn } from './drawing-model';
import { wordAngle } from './length-text';
import { blankSize, lapSize, readableHeight, type Worded } from './pattern-sizes';
import { laid, marksOf, outlineOf, type Place } from './piece-shape';
import { closedPolyline, corners, cross, line, text } from './shapes';
import { textWidth } from './text-width';

interface Shown {
  /** The arc center of a slightly tapered wall is far away; drawing it would make the piece too small to see. */
  readonly center: boolean;
  /** A narrow sector has no room inside: its radii go beside the clockwise edge. */
  readonly narrow: boolean;
}

/** A sector with its blank, arc center, center line and all the sizes that mark it out. */
export function sectorPattern(
  piece: SectorPiece,
  count: string,
  word: Worded,
): { readonly entities: readonly Entity[]; readonly textHeight: number } {
  const { innerRadius: inner, outerRadius: outer, angle, lap } = piece;
  const at: Place = {
    x: pieceReach(piece, quarterTurn),
    y: pieceReach(piece, 2 * quarterTurn),
    direction: quarterTurn,
  };
  const blank: Extent = {
    left: 0,
    bottom: 0,
    right: at.x + pieceReach(piece, -quarterTurn),
    top: at.y + pieceReach(piece, 0),
  };
  const h = readableHeight(blank);
  const slant = outer - inner;
  const center = inner < 2 * slant;
  const shown: Shown = { center, narrow: center && angle < 2.2 };
  const countRadius = inner + 0.7 * slant;
  const room = 0.8 * countRadius * Math.min(angle, Math.PI);
  const under = center ? Math.max(0, (shown.narrow ? 5 : 2.2) * h - at.y) : h;
  const place = laid(piece, at);
  const lapEnd = place(pointBeside(angle / 2, halfChord(outer, lap), lap));
  const entities: readonly Entity[] = [
    ...outlineOf(piece, at),
    ...marksOf(piece, at),
    ...closedPolyline('text', 'thin', corners(blank.left, blank.bottom, blank.right, blank.top)),
    ...centerLine(piece, at, h, center),
    ...(center ? arcCenter(piece, at, h, shown.narrow) : []),
    ...(shown.narrow ? radiiOutside(piece, at, h, word) : radiiInside(piece, at, h, word, center)),
    sectorAngle(piece, at, h),
    ...blankSize(blank, h, under, shown.narrow ? 'left' : 'right', word),
    ...(lap === 0 ? [] : [lapSize(lapEnd, place(pointBeside(angle / 2, outer, 0)), 1.6 * h, lap, word)]),
    text(polar(at, countRadius, at.direction), count, Math.min(h, room / textWidth(count, 1)), { bold: true }),
  ];
  return { entities, textHeight: h };
}

function arcCenter(piece: SectorPiece, at: Place, h: number, toLeft: boolean): readonly Entity[] {
  const mark = cross('mark', at, 0.8 * h);
  const down = toLeft ? undefined : roomUnderCenter(piece, at, h);
  const words =
    down === undefined
      ? text({ x: at.x + (toLeft ? -1.2 : 1.2) * h, y: at.y - 1.3 * h }, centerWords, 0.8 * h, {
          anchor: toLeft ? 'end' : 'start',
        })
      : text({ x: at.x, y: at.y - down - 0.4 * h }, centerWords, 0.8 * h);
  return [...mark, words];
}

/** How far under the center its words can begin without a line through them; undefined if they have no room there. */
function roomUnderCenter({ innerRadius: inner, angle, lap }: SectorPiece, at: Place, h: number): number | undefined {
  const least = h;
  const half = textWidth(centerWords, 0.8 * h) / 2 + 0.4 * h;
  const gap = Math.PI - angle / 2;
  if (gap >= Math.PI / 2 || inner > Math.hypot(half, least + 0.8 * h)) return least;
  // Between the edges, of which one has the lap beside it.
  const down = Math.max(least, (half + lap / Math.cos(gap)) / Math.tan(gap));
  return down + 0.8 * h > at.y ? undefined : down;
}

const centerWords = 'arc center';

function sectorAngle({ innerRadius: inner, outerRadius: outer, angle }: SectorPiece, at: Place, h: number): Entity {
  const radius = inner + 0.35 * (outer - inner);
  const oneLine = `sector angle ${wordAngle(angle)}`;
  const fits = textWidth(oneLine, h) < 1.6 * radius * Math.sin(Math.min(angle, Math.PI) / 2);
  return {
    shape: 'angle dimension',
    center: at,
    radius,
    start: at.direction - angle / 2,
    sweep: angle,
    text: fits ? oneLine : `sector angle\n${wordAngle(angle)}`,
  };
}

/** Two short marks on the center line, clear of the text in the piece. */
function centerLine(
  { innerRadius: inner, outerRadius: outer }: SectorPiece,
  at: Place,
  h: number,
  centerShown: boolean,
): readonly Entity[] {
  const slant = outer - inner;
  const stroke = (from: number, to: number) =>
    line('mark', 'center', polar(at, from, at.direction), polar(at, to, at.direction));
  return [
    stroke(centerShown ? 0 : inner - Math.min(h, inner), inner + 0.2 * slant),
    stroke(outer - 0.14 * slant, outer + h),
  ];
}

function radiiOutside(
  { innerRadius: inner, outerRadius: outer, angle }: SectorPiece,
  at: Place,
  h: number,
  word: Worded,
): readonly Entity[] {
  const along = (radius: number, offset: number, words: string): Entity => ({
    shape: 'length dimension',
    from: at,
    to: polar(at, radius, at.direction - angle / 2),
    offset,
    text: words,
  });
  return [
    along(outer, -5 * h, `outer radius ${word(outer)}`),
    ...(inner > 0 ? [along(inner, -1.6 * h, `inner radius ${word(inner)}`)] : []),
  ];
}

function radiiInside(
  { innerRadius: inner, outerRadius: outer, angle }: SectorPiece,
  at: Place,
  h: number,
  word: Worded,
  centerShown: boolean,
): readonly Entity[] {
  const ray = (radius: number, direction: number, tail: number, words: string): Entity => ({
    shape: 'radius dimension',
    center: at,
    radius,
    direction,
    tail,
    text: words,
  });
  const turn = Math.min(angle / 3.4, Math.PI / 3);
  const tail = centerShown ? 0 : (inner + 0.05 * (outer - inner)) / outer;
  const words = `inner radius\n${word(inner)}`;
  const room = Math.max(...words.split('\n').map((one) => textWidth(one, h))) + 2 * h;
  const outside = !centerShown || room > 0.9 * inner;
  return [
    ray(outer, at.direction - turn, tail, `outer radius\n${word(outer)}`),
    ...(inner > 0 ? [ray(inner, at.direction + turn, outside ? 1 + room / inner : 0, words)] : []),
  ];
}
