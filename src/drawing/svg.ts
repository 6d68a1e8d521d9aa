import { captionLines } from './caption';
import { withoutDimensions } from './dimension-lines';
import {
  type Area,
  type Drawing,
  fullTurn,
  type Layer,
  type LineStyle,
  type Point,
  type Primitive,
  polar,
  type Text,
} from './drawing-model';
import { textLines } from './extent';
import { plainText } from './plain-text';
import { capitalHeight } from './text-width';

export interface SvgOptions {
  /** True for a separate file in millimeters at full size. False in a page, where the style sheet sets the size. */
  readonly standalone?: boolean;
  /** Title and notes under the drawing; false for a page that shows them itself. */
  readonly caption?: boolean;
}

const layers: readonly Layer[] = ['cut', 'mark', 'text'];

/** Stroke widths in pixels of the screen, whatever the scale. */
const strokeWidths: Readonly<Record<LineStyle, number>> = { outline: 1.8, thin: 0.8, dashed: 1.1, center: 0.8 };
const dashes: Readonly<Partial<Record<LineStyle, string>>> = { dashed: '6 4', center: '14 3 2 3' };

/**
 * A drawing as SVG text, one user unit a millimeter at full size, layers as groups with the classes `cut`, `mark` and
 * `text`. Everything is drawn in `currentColor` through presentation attributes, so that a page's own style sheet, dark
 * theme or forced colors decide, and no inline style asks for a looser content security policy.
 */
export function toSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const { standalone = false, caption = standalone } = options;
  const { extent, textHeight } = drawing;
  const captions = caption ? captionLines(drawing, extent.right - extent.left) : { entities: [], height: 0 };
  const width = extent.right - extent.left;
  const height = extent.top - extent.bottom + captions.height;
  const all = [...withoutDimensions(drawing.entities, textHeight), ...captions.entities];
  const box = `${number(extent.left)} ${number(-extent.top)} ${number(width)} ${number(height)}`;
  const size = standalone ? ` width="${number(width)}mm" height="${number(height)}mm"` : '';
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}"${size} role="img" color="currentColor" fill="none" stroke="currentColor" stroke-linecap="round" font-family="Helvetica, Arial, 'Liberation Sans', sans-serif">`;
  const areas = all.filter((primitive) => primitive.shape === 'area').map(areaElement);
  const groups = layers.map((layer) => {
    const shapes = all.filter((primitive) => primitive.layer === layer && primitive.shape !== 'area');
    return `<g class="${layer}"${standalone ? ` id="${layer}"` : ''}>\n${shapes.map(element).join('\n')}\n</g>`;
  });
  const tones =
    areas.length === 0 ? [] : [`<g class="tone" stroke="none" fill="currentColor">\n${areas.join('\n')}\n</g>`];
  return `${[head, `<title>${escaped(drawing.title)}</title>`, ...tones, ...groups, '</svg>'].join('\n')}\n`;
}

function element(primitive: Primitive): string {
  switch (primitive.shape) {
    case 'line':
      return `<path d="M${place(primitive.from)}L${place(primitive.to)}"${stroke(primitive.style)}/>`;
    case 'circle': {
      const { x, y } = primitive.center;
      return `<circle cx="${number(x)}" cy="${number(-y)}" r="${number(primitive.radius)}"${stroke(primitive.style)}/>`;
    }
    case 'arc': {
      const { center, radius, start, sweep } = primitive;
      const r = number(radius);
      const large = Math.abs(sweep) > fullTurn / 2 ? 1 : 0;
      const clockwise = sweep > 0 ? 0 : 1;
      const end = place(polar(center, radius, start + sweep));
      return `<path d="M${place(polar(center, radius, start))}A${r} ${r} 0 ${large} ${clockwise} ${end}"${stroke(primitive.style)}/>`;
    }
    case 'area':
      return areaElement(primitive);
    case 'text':
      return textElement(primitive);
  }
}

function areaElement({ boundary, tone }: Area): string {
  return `<path d="M${boundary.map(place).join('L')}Z" fill-opacity="${tone}"/>`;
}

function textElement(words: Text): string {
  const size = words.height / capitalHeight;
  const turn = ((words.turn ?? 0) * 360) / fullTurn;
  const weight = words.bold ? ' font-weight="700"' : '';
  return textLines(words)
    .map(({ at, text }) => {
      // The baseline is half a capital below the middle, across the way the text runs.
      const foot = polar(at, words.height / 2, (words.turn ?? 0) - fullTurn / 4);
      const x = number(foot.x);
      const y = number(-foot.y);
      const rotate = Math.abs(turn) < 1e-9 ? '' : ` transform="rotate(${Number((-turn).toFixed(4))} ${x} ${y})"`;
      return `<text x="${x}" y="${y}" font-size="${number(size)}" text-anchor="${words.anchor}" stroke="none" fill="currentColor"${weight}${rotate}>${escaped(text)}</text>`;
    })
    .join('\n');
}

function stroke(style: LineStyle): string {
  const dash = dashes[style];
  return ` stroke-width="${strokeWidths[style]}" vector-effect="non-scaling-stroke"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}`;
}

function place({ x, y }: Point): string {
  return `${number(x)} ${number(-y)}`;
}

/** Meters to millimeters, to a tenth of a micrometer. */
function number(meters: number): string {
  return String(Number((meters * 1000).toFixed(4)));
}

/** Text from cells is never markup. */
function escaped(words: string): string {
  return plainText(words).replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}
