import type { Layer, Line, Point } from './drawing-model';
import { line } from './shapes';

/**
 * Parallel strokes inside a polygon (even-odd), `spacing` apart in the direction given, always through the same places so
 * that neighboring areas run on. They are real lines: every writer draws them the same and needs no pattern fill.
 */
export function hatched(
  boundary: readonly Point[],
  spacing: number,
  direction: number,
  layer: Layer = 'mark',
): readonly Line[] {
  const cos = Math.cos(direction);
  const sin = Math.sin(direction);
  // In the turned frame strokes are level: `along` runs with them, `across` counts them.
  const turned = boundary.map(({ x, y }) => ({ along: x * cos + y * sin, across: y * cos - x * sin }));
  const low = Math.min(...turned.map(({ across }) => across));
  const high = Math.max(...turned.map(({ across }) => across));
  const strokes: Line[] = [];
  for (let i = Math.ceil(low / spacing); i * spacing < high; i++) {
    const level = i * spacing;
    const hits: number[] = [];
    turned.forEach((from, k) => {
      const to = turned[(k + 1) % turned.length] ?? from;
      if (from.across <= level === to.across <= level) return;
      hits.push(from.along + ((level - from.across) / (to.across - from.across)) * (to.along - from.along));
    });
    hits.sort((a, b) => a - b);
    const place = (along: number): Point => ({ x: along * cos - level * sin, y: along * sin + level * cos });
    hits.forEach((to, k) => {
      const from = hits[k - 1];
      if (k % 2 === 1 && from !== undefined) strokes.push(line(layer, 'thin', place(from), place(to)));
    });
  }
  return strokes;
}
