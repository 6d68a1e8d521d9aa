import type { Entity, Point } from './drawing-model';
import { line, text } from './shapes';
import { lineStep } from './text-width';

export interface Level {
  readonly from: Point;
  readonly name: string;
  readonly lines: readonly string[];
}

/**
 * Names and heights in a column, each with a line to its level, moved apart if levels are too close for their text.
 * The column runs rightwards from its edge, or leftwards where `side` is -1.
 */
export function callouts(levels: readonly Level[], edge: number, h: number, side: 1 | -1 = 1): readonly Entity[] {
  const sorted = [...levels].sort((a, b) => b.from.y - a.from.y);
  const small = 0.85 * h;
  const tall = sorted.map(({ lines }) => (1 + lines.length) * lineStep * small + 0.6 * h);
  const places = spread(
    sorted.map(({ from }) => from.y),
    tall,
  );
  const anchor = side === 1 ? 'start' : 'end';
  const bend = edge - side * 2.2 * h;
  return sorted.flatMap(({ from, name, lines }, i) => {
    const first = places[i]! + tall[i]! / 2 - 0.9 * h;
    return [
      line('text', 'thin', from, { x: bend, y: from.y }),
      line('text', 'thin', { x: bend, y: from.y }, { x: edge - side * 0.5 * h, y: first }),
      text({ x: edge, y: first }, name, h, { anchor, bold: true }),
      ...lines.map((words, k) => text({ x: edge, y: first - (k + 1) * lineStep * small }, words, small, { anchor })),
    ];
  });
}

/** Middles as near as possible to their levels, from top to bottom, without overlap. */
function spread(wanted: readonly number[], tall: readonly number[]): readonly number[] {
  interface Cluster {
    readonly items: readonly number[];
    readonly height: number;
    readonly middle: number;
  }
  const clusters: Cluster[] = [];
  wanted.forEach((middle, i) => {
    let next: Cluster = { items: [i], height: tall[i]!, middle };
    for (;;) {
      const above = clusters.at(-1);
      if (above === undefined || above.middle - above.height / 2 >= next.middle + next.height / 2) break;
      clusters.pop();
      next = joined(above, next);
    }
    clusters.push(next);
  });
  function joined(above: Cluster, below: Cluster): Cluster {
    const items = [...above.items, ...below.items];
    const height = above.height + below.height;
    return { items, height, middle: (above.middle * above.height + below.middle * below.height) / height };
  }
  const places: number[] = [];
  for (const { items, height, middle } of clusters) {
    let top = middle + height / 2;
    for (const i of items) {
      places[i] = top - tall[i]! / 2;
      top -= tall[i]!;
    }
  }
  return places;
}
