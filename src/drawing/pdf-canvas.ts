import { type Arc, fullTurn, type LineStyle, type Point, type Primitive, polar, type Text } from './drawing-model';
import { textLines } from './extent';
import { figure, pointsPerMeter } from './pdf-file';
import { pdfString } from './pdf-text';
import { capitalHeight, textWidth } from './text-width';

/** Where the drawing's meters fall on the page: points = shift + scale x meters. */
export interface Placing {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** The page's own millimeters from its lower-left corner, for what belongs to the paper and not to the drawing. */
export const paper: Placing = { scale: pointsPerMeter / 1000, x: 0, y: 0 };

/** Stroke widths in points. */
const strokeWidths: Readonly<Record<LineStyle, number>> = { outline: 1.1, thin: 0.35, dashed: 0.7, center: 0.5 };
const dashes: Readonly<Record<LineStyle, string>> = {
  outline: '[] 0 d',
  thin: '[] 0 d',
  dashed: '[5 3] 0 d',
  center: '[12 3 2 3] 0 d',
};

/** The operators that draw primitives. */
export function drawingOperators(primitives: readonly Primitive[], placing: Placing): string {
  return primitives.map((primitive) => operators(primitive, placing)).join('\n');
}

/** Draws only inside a rectangle of the page, in points. */
export function clipped(left: number, bottom: number, width: number, height: number, content: string): string {
  return `q\n${[left, bottom, width, height].map(figure).join(' ')} re W n\n${content}\nQ`;
}

function operators(primitive: Primitive, placing: Placing): string {
  switch (primitive.shape) {
    case 'line':
      return stroked(primitive.style, `${pointText(primitive.from, placing)} m ${pointText(primitive.to, placing)} l`);
    case 'arc':
      return stroked(primitive.style, curve(primitive, placing));
    case 'circle':
      return stroked(primitive.style, curve({ ...primitive, start: 0, sweep: fullTurn }, placing));
    case 'area': {
      const [first, ...rest] = primitive.boundary.map((point) => pointText(point, placing));
      return `q ${figure(1 - primitive.tone)} g ${first} m ${rest.map((point) => `${point} l`).join(' ')} f Q`;
    }
    case 'text':
      return textOperators(primitive, placing);
  }
}

function stroked(style: LineStyle, path: string): string {
  return `${strokeWidths[style]} w ${dashes[style]} ${path} S`;
}

function pointText({ x, y }: Point, { scale, x: left, y: bottom }: Placing): string {
  return `${figure(left + scale * x)} ${figure(bottom + scale * y)}`;
}

/** Cubic curves of an eighth of a turn at most: they stray from the arc by 4 millionths of the radius. */
function curve({ center, radius, start, sweep }: Omit<Arc, 'shape'>, placing: Placing): string {
  const parts = Math.max(1, Math.ceil(Math.abs(sweep) / (fullTurn / 8)));
  const turn = sweep / parts;
  const handle = (4 / 3) * Math.tan(turn / 4) * radius;
  let path = `${pointText(polar(center, radius, start), placing)} m`;
  for (let i = 0; i < parts; i++) {
    const from = start + i * turn;
    const to = from + turn;
    const leaving = polar(polar(center, radius, from), handle, from + fullTurn / 4);
    const arriving = polar(polar(center, radius, to), -handle, to + fullTurn / 4);
    path += ` ${[leaving, arriving, polar(center, radius, to)].map((point) => pointText(point, placing)).join(' ')} c`;
  }
  return path;
}

function textOperators(words: Text, placing: Placing): string {
  const { height, anchor, turn = 0, bold } = words;
  const size = (height / capitalHeight) * placing.scale;
  const cos = figure(Math.cos(turn));
  const sin = figure(Math.sin(turn));
  const back = figure(-Math.sin(turn));
  return textLines(words)
    .map(({ at, text }) => {
      const width = textWidth(text, height) * (bold ? 1.06 : 1);
      const before = anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width;
      const start = polar(polar(at, -before, turn), height / 2, turn - fullTurn / 4);
      return `BT /${bold ? 'F2' : 'F1'} ${figure(size)} Tf ${cos} ${sin} ${back} ${cos} ${pointText(start, placing)} Tm ${pdfString(text)} Tj ET`;
    })
    .join('\n');
}
