import type { Arc, Circle, Layer, Line, LineStyle, Point, Text } from './drawing-model';

export function line(layer: Layer, style: LineStyle, from: Point, to: Point): Line {
  return { shape: 'line', layer, style, from, to };
}

/** Lines from each point to the next. */
export function polyline(layer: Layer, style: LineStyle, points: readonly Point[]): readonly Line[] {
  return points.slice(1).map((to, i) => line(layer, style, points[i] ?? to, to));
}

/** Lines from each point to the next and back to the first. */
export function closedPolyline(layer: Layer, style: LineStyle, points: readonly Point[]): readonly Line[] {
  return polyline(layer, style, [...points, ...points.slice(0, 1)]);
}

export function corners(left: number, bottom: number, right: number, top: number): readonly Point[] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
}

export function arc(layer: Layer, style: LineStyle, center: Point, radius: number, start: number, sweep: number): Arc {
  return { shape: 'arc', layer, style, center, radius, start, sweep };
}

export function circle(layer: Layer, style: LineStyle, center: Point, radius: number): Circle {
  return { shape: 'circle', layer, style, center, radius };
}

export function text(
  at: Point,
  words: string,
  height: number,
  more: { readonly anchor?: Text['anchor']; readonly turn?: number; readonly bold?: true } = {},
): Text {
  return { shape: 'text', layer: 'text', at, text: words, height, anchor: 'middle', ...more };
}

/** Two crossed strokes that show a point, such as the center of an arc. */
export function cross(layer: Layer, at: Point, arm: number): readonly Line[] {
  return [
    line(layer, 'thin', { x: at.x - arm, y: at.y }, { x: at.x + arm, y: at.y }),
    line(layer, 'thin', { x: at.x, y: at.y - arm }, { x: at.x, y: at.y + arm }),
  ];
}
