/**
 * A page of text, tables and pictures to hang up, with the bars that show whether it was printed at full size. All in
 * millimeters of paper from the lower-left corner.
 */
import { withoutDimensions } from './dimension-lines';
import type { Drawing, Extent, Primitive } from './drawing-model';
import { checkBars, pageFoot } from './page-foot';
import { drawingOperators, paper } from './pdf-canvas';
import { type PdfPage, pointsPerMeter } from './pdf-file';
import { closedPolyline, corners, line, text } from './shapes';
import { lineStep, wrapped } from './text-width';
import { foot, margin, type Paper } from './tiling';

/** Something put on the page, and where the next thing can begin below it. */
export interface Placed {
  readonly primitives: readonly Primitive[];
  readonly bottom: number;
}

export interface PageLayout {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function layoutOf({ width, height }: Paper): PageLayout {
  const inset = margin * 1000;
  return { left: inset, right: width * 1000 - inset, top: height * 1000 - inset, bottom: inset + foot * 1000 + 3 };
}

/** Sentences broken to a width, from a corner down. */
export function sentencesAt(
  at: { readonly x: number; readonly y: number },
  width: number,
  sentences: readonly string[],
  height: number,
  bold = false,
): Placed {
  const primitives: Primitive[] = [];
  let { y } = at;
  for (const sentence of sentences) {
    // Bold letters are 6 % wider.
    for (const words of wrapped(sentence, height * (bold ? 1.06 : 1), width)) {
      y -= height;
      primitives.push(
        text({ x: at.x, y: y + height / 2 }, words, height, { anchor: 'start', ...(bold ? { bold: true } : {}) }),
      );
      y -= (lineStep - 1) * height;
    }
  }
  return { primitives, bottom: y };
}

export interface TableLook {
  readonly height: number;
  /** Shares of the width, one per column. */
  readonly columns: readonly number[];
  /** The first row is a heading and is bold. */
  readonly headed?: boolean;
  /** The last row is a total and is bold. */
  readonly footed?: boolean;
  /** Whether each row except the heading and the total begins with a box to tick. */
  readonly ticks?: boolean;
}

/** Rows of cells, each broken to its column, with a thin line under each row. */
export function tableAt(
  at: { readonly x: number; readonly y: number },
  width: number,
  rows: readonly (readonly string[])[],
  { height, columns, headed = false, footed = false, ticks = false }: TableLook,
): Placed {
  const total = columns.reduce((sum, share) => sum + share, 0);
  const pad = 0.5 * height;
  const first = at.x + (ticks ? 2.6 * height : 0);
  const room = at.x + width - first;
  const primitives: Primitive[] = [];
  let { y } = at;
  for (const [i, row] of rows.entries()) {
    const bold = (headed && i === 0) || (footed && i === rows.length - 1);
    if (ticks && !bold) {
      const top = y - 0.55 * height;
      primitives.push(...closedPolyline('text', 'thin', corners(at.x, top - 1.5 * height, at.x + 1.5 * height, top)));
    }
    let x = first;
    let bottom = y - 1.5 * height;
    for (const [j, share] of columns.entries()) {
      const wide = (room * share) / total;
      const cell = sentencesAt({ x, y: y - pad }, wide - pad, [row[j] ?? ''], height, bold);
      primitives.push(...cell.primitives);
      bottom = Math.min(bottom, cell.bottom);
      x += wide;
    }
    y = bottom;
    primitives.push(line('text', 'thin', { x: at.x, y }, { x: at.x + width, y }));
  }
  return { primitives, bottom: y };
}

export interface Picture {
  readonly drawing: Drawing;
  readonly box: Extent;
}

export interface PaperPage {
  readonly title: string;
  readonly where: string;
  readonly primitives: readonly Primitive[];
  readonly pictures?: readonly Picture[];
}

export function paperPage({ title, where, primitives, pictures = [] }: PaperPage, size: Paper): PdfPage {
  return {
    width: size.width * pointsPerMeter,
    height: size.height * pointsPerMeter,
    content: [
      ...pictures.map(pictured),
      drawingOperators([...primitives, ...checkBars(), ...pageFoot(title, where, size.width)], paper),
    ].join('\n'),
  };
}

/** The drawing as large as its box allows, in the middle of it. */
function pictured({ drawing, box }: Picture): string {
  const { left, bottom, right, top } = drawing.extent;
  const scale = Math.min((box.right - box.left) / (right - left), (box.top - box.bottom) / (top - bottom)) / 1000;
  const points = pointsPerMeter / 1000;
  const placing = {
    scale: scale * pointsPerMeter,
    x: ((box.left + box.right) / 2) * points - (scale * pointsPerMeter * (left + right)) / 2,
    y: ((box.bottom + box.top) / 2) * points - (scale * pointsPerMeter * (bottom + top)) / 2,
  };
  return drawingOperators(withoutDimensions(drawing.entities, drawing.textHeight), placing);
}
