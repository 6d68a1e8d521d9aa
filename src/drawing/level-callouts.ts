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
  const boxes = spread(
    sorted.map((level) => ({
      level,
      height: (1 + level.lines.length) * lineStep * small + 0.6 * h,
      middle: level.from.y,
    })),
  );
  const anchor = side === 1 ? 'start' : 'end';
  const bend = edge - side * 2.2 * h;
  return boxes.flatMap(({ level: { from, name, lines }, height, middle }) => {
    const first = middle + height / 2 - 0.9 * h;
    return [
      line('text', 'thin', from, { x: bend, y: from.y }),
      line('text', 'thin', { x: bend, y: from.y }, { x: edge - side * 0.5 * h, y: first }),
      text({ x: edge, y: first }, name, h, { anchor, bold: true }),
      ...lines.map((words, k) => text({ x: edge, y: first - (k + 1) * lineStep * small }, words, small, { anchor })),
    ];
  });
}

/** The room that one level's text needs, and where its middle is. */
interface Box {
  readonly level: Level;
  readonly height: number;
  readonly middle: number;
}

/** Boxes that touch, kept together. */
interface Cluster {
  readonly boxes: readonly Box[];
  readonly height: number;
  readonly middle: number;
}

/** The boxes with their middles as near as possible to their levels, from top to bottom, without overlap. */
function spread(wanted: readonly Box[]): readonly Box[] {
  const clusters: Cluster[] = [];
  for (const box of wanted) {
    let next: Cluster = { boxes: [box], height: box.height, middle: box.middle };
    for (;;) {
      const above = clusters.at(-1);
      if (above === undefined || above.middle - above.height / 2 >= next.middle + next.height / 2) break;
      clusters.pop();
      next = joined(above, next);
    }
    clusters.push(next);
  }
  return clusters.flatMap(({ boxes, height, middle }) => {
    let top = middle + height / 2;
    return boxes.map((box) => {
      top -= box.height;
      return { ...box, middle: top + box.height / 2 };
    });
  });
}

function joined(above: Cluster, below: Cluster): Cluster {
  const height = above.height + below.height;
  const middle = (above.middle * above.height + below.middle * below.height) / height;
  return { boxes: [...above.boxes, ...below.boxes], height, middle };
}
