import {
  type Arc,
  type Extent,
  fullTurn,
  type Point,
  type Primitive,
  polar,
  quarterTurn,
  type Text,
} from './drawing-model';
import { lineStep, textWidth } from './text-width';

/** The smallest upright rectangle that holds everything drawn. */
export function extentOf(primitives: readonly Primitive[]): Extent {
  let left = Number.POSITIVE_INFINITY;
  let bottom = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let top = Number.NEGATIVE_INFINITY;
  for (const primitive of primitives) {
    for (const { x, y } of boundingPoints(primitive)) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      bottom = Math.min(bottom, y);
      top = Math.max(top, y);
    }
  }
  return left > right ? { left: 0, bottom: 0, right: 0, top: 0 } : { left, bottom, right, top };
}

export function grown(extent: Extent, by: number): Extent {
  return { left: extent.left - by, bottom: extent.bottom - by, right: extent.right + by, top: extent.top + by };
}

/** Points whose bounding rectangle is that of the primitive. */
function boundingPoints(primitive: Primitive): readonly Point[] {
  switch (primitive.shape) {
    case 'line':
      return [primitive.from, primitive.to];
    case 'circle':
      return [0, 1, 2, 3].map((quarter) => polar(primitive.center, primitive.radius, quarter * quarterTurn));
    case 'arc':
      return arcReach(primitive);
    case 'area':
      return primitive.boundary;
    case 'text':
      return textCorners(primitive);
  }
}

/** The ends of an arc and the quarter points that it passes. */
function arcReach({ center, radius, start, sweep }: Arc): readonly Point[] {
  const low = Math.min(start, start + sweep);
  const high = Math.max(start, start + sweep);
  const points = [polar(center, radius, start), polar(center, radius, start + sweep)];
  for (let quarter = Math.ceil(low / quarterTurn); quarter * quarterTurn <= high; quarter++) {
    points.push(polar(center, radius, quarter * quarterTurn));
  }
  return points;
}

/** The lines of the text, one below the other, turned with it. */
export function textLines({
  at,
  text,
  height,
  turn = 0,
}: Text): readonly { readonly at: Point; readonly text: string }[] {
  const lines = text.split('\n');
  const middle = (lines.length - 1) / 2;
  return lines.map((words, i) => ({
    at: polar(at, (middle - i) * lineStep * height, turn + quarterTurn),
    text: words,
  }));
}

function textCorners(text: Text): readonly Point[] {
  const { height, anchor, turn = 0 } = text;
  return textLines(text).flatMap(({ at, text: words }) => {
    const width = textWidth(words, height) * (text.bold ? 1.06 : 1);
    const before = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
    const ends = [polar(at, -before, turn), polar(at, width - before, turn)];
    return ends.flatMap((end) => [0.75, -0.75].map((up) => polar(end, up * height, turn + quarterTurn)));
  });
}

/** Points along a primitive, at most `step` apart, to find which pages it touches. */
export function traced(primitive: Primitive, step: number): readonly Point[] {
  if (primitive.shape === 'line') {
    const { from, to } = primitive;
    const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step);
    return Array.from({ length: count + 1 }, (_, i) => ({
      x: from.x + ((to.x - from.x) * i) / Math.max(count, 1),
      y: from.y + ((to.y - from.y) * i) / Math.max(count, 1),
    }));
  }
  if (primitive.shape === 'arc' || primitive.shape === 'circle') {
    const start = primitive.shape === 'arc' ? primitive.start : 0;
    const sweep = primitive.shape === 'arc' ? primitive.sweep : fullTurn;
    const count = Math.ceil((Math.abs(sweep) * primitive.radius) / step);
    return Array.from({ length: count + 1 }, (_, i) =>
      polar(primitive.center, primitive.radius, start + (sweep * i) / Math.max(count, 1)),
    );
  }
  return boundingPoints(primitive);
}
