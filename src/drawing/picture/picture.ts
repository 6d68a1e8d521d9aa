import { captionLines } from '../caption';
import { withoutDimensions } from '../dimension-lines';
import {
  type Drawing,
  type LineStyle,
  type Point,
  type Primitive,
  pointBetween,
  polar,
  type Text,
} from '../drawing-model';
import { textLines, traced } from '../extent';
import { textWidth } from '../text-width';
import { Ink } from './ink';
import { strokesOf } from './stroke-letters';

/** A drawing as a PNG file, for programs that show no other form of it. */
export interface Picture {
  readonly png: Uint8Array;
  /** Size in pixels; on a screen it is shown at half of that, so that it stays sharp on paper. */
  readonly width: number;
  readonly height: number;
}

/** Height of capitals of ordinary text in pixels, and what a picture may be at most, each way. */
const textPixels = 18;
const mostPixels = 4_000;

const thickness: Readonly<Record<LineStyle, number>> = { outline: 3.4, thin: 1.5, dashed: 2, center: 1.5 };
/** Lengths of strokes and gaps in pixels. */
const dashes: Readonly<Partial<Record<LineStyle, readonly number[]>>> = { dashed: [12, 8], center: [28, 6, 4, 6] };

/** The drawing with its title and notes below it, black on white. */
export async function toPicture(drawing: Drawing): Promise<Picture> {
  // A package of modules only, which older Node loads this way alone.
  const { encode } = await import('fast-png');
  const { extent, entities, textHeight } = drawing;
  const caption = captionLines(drawing, extent.right - extent.left);
  const [across, down] = [extent.right - extent.left, extent.top - extent.bottom + caption.height];
  const scale = Math.min(textPixels / textHeight, mostPixels / across, mostPixels / down);
  const ink = new Ink(Math.max(1, Math.ceil(across * scale)), Math.max(1, Math.ceil(down * scale)));
  const place = ({ x, y }: Point): Point => ({ x: (x - extent.left) * scale, y: (extent.top - y) * scale });
  for (const primitive of [...withoutDimensions(entities, textHeight), ...caption.entities])
    lay(ink, primitive, place, scale);
  const png = encode({
    width: ink.width,
    height: ink.height,
    data: ink.cover.map((cover) => 255 - cover),
    channels: 1,
    depth: 8,
  });
  return { png, width: ink.width, height: ink.height };
}

type Place = (point: Point) => Point;

function lay(ink: Ink, primitive: Primitive, place: Place, scale: number): void {
  switch (primitive.shape) {
    case 'area':
      ink.tone(primitive.boundary.map(place), primitive.tone);
      return;
    case 'text':
      write(ink, primitive, place, scale);
      return;
    case 'line':
      follow(ink, [place(primitive.from), place(primitive.to)], primitive.style);
      return;
    default: {
      // Chords that stray from the arc by less than a twentieth of a pixel.
      const step = Math.sqrt(0.4 * primitive.radius * scale) / scale;
      follow(ink, traced(primitive, step).map(place), primitive.style);
    }
  }
}

/** A line through points, broken into strokes and gaps where its style asks for it. */
function follow(ink: Ink, points: readonly Point[], style: LineStyle): void {
  const pattern = dashes[style];
  let at = 0;
  let left = pattern?.[0] ?? Number.POSITIVE_INFINITY;
  points.forEach((to, i) => {
    const from = points[i - 1];
    if (from === undefined) return;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    let done = 0;
    while (done < length || length === 0) {
      const until = Math.min(length, done + left);
      if (at % 2 === 0)
        ink.line(
          pointBetween(from, to, done / (length || 1)),
          pointBetween(from, to, until / (length || 1)),
          thickness[style],
        );
      left -= until - done;
      done = until;
      if (left <= 0) {
        at = (at + 1) % (pattern?.length ?? 1);
        left = pattern?.[at] ?? Number.POSITIVE_INFINITY;
      }
      if (length === 0) return;
    }
  });
}

/** Letters as wide as the drawing was laid out for. */
function write(ink: Ink, words: Text, place: Place, scale: number): void {
  const { height, anchor, turn = 0, bold } = words;
  const pen = Math.max(1.2, height * scale * (bold ? 0.19 : 0.11));
  for (const { at, text } of textLines(words)) {
    const { width: natural, strokes } = strokesOf(text);
    if (natural === 0) continue;
    const width = textWidth(text, height) * (bold ? 1.06 : 1);
    const before = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
    const start = polar(polar(at, -before, turn), height / 2, turn - Math.PI / 2);
    const put = ([x, y]: readonly [number, number]): Point =>
      place(polar(polar(start, (x * width) / natural, turn), y * height, turn + Math.PI / 2));
    for (const stroke of strokes)
      stroke.forEach((point, i) => {
        const from = stroke[i - 1];
        if (from !== undefined) ink.line(put(from), put(point), pen);
      });
  }
}
