import type { Drawing, Entity, Extent, Point, Primitive, Text } from './drawing-model';
import { extentOf, grown } from './extent';
import { checkBars, pageFoot } from './page-foot';
import { clipped, drawingOperators, paper } from './pdf-canvas';
import { type PdfPage, pointsPerMeter } from './pdf-file';
import { mapPage } from './pdf-page-map';
import { circle, cross, line, text } from './shapes';
import { foot, margin, overlap, type Paper, type Tile, type Tiling, tiled } from './tiling';

const mostPages = 20;

/** The message says why a drawing is not printed and what to do instead. */
export class DrawingTooLarge extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'DrawingTooLarge';
  }
}

/** The page map, then the drawing at full size, one part per page. */
export function fullSizePages(drawing: Drawing, size: Paper): readonly PdfPage[] {
  const cut = drawing.entities.filter((entity): entity is Primitive => 'layer' in entity && entity.layer === 'cut');
  const extent = grown(extentOf(cut), 0.003);
  refuseHuge(drawing, extent.right - extent.left, extent.top - extent.bottom, size);
  const tiling = tiled(cut, extent, size);
  const count = tiling.tiles.length + 1;
  if (count > mostPages) throw tooLarge(drawing, `${count} pages`, size);
  const shown = drawing.entities.filter(onPaper).map(withSmallText);
  return [mapPage(drawing, tiling), ...tiling.tiles.map((tile) => tilePage(drawing, tiling, tile, shown))];
}

/** Refuses a drawing kilometers across before counting its pages. */
function refuseHuge(drawing: Drawing, width: number, height: number, size: Paper): void {
  if (width * height > 4 * mostPages || width + height > 40) throw tooLarge(drawing, 'hundreds of pages', size);
}

function tooLarge({ title, tooLarge: instead }: Drawing, pages: string, size: Paper): DrawingTooLarge {
  const advice = instead ?? 'print it to fit one page, or send the DXF to a cutting machine';
  return new DrawingTooLarge(
    `${title}: full size needs ${pages} of ${size.name}, and the limit is ${mostPages} pages; ${advice}`,
  );
}

/** Dimensions are around the piece and would need more paper; the page map shows them. */
function onPaper(entity: Entity): entity is Primitive {
  return 'layer' in entity && (entity.layer !== 'text' || entity.shape === 'text');
}

/** People read full-size paper from nearby, so its text can be small. */
function withSmallText(primitive: Primitive): Primitive {
  return primitive.shape === 'text' ? { ...primitive, height: Math.min(primitive.height, 0.006) } : primitive;
}

function tilePage(drawing: Drawing, tiling: Tiling, tile: Tile, shown: readonly Primitive[]): PdfPage {
  const { pageWidth, pageHeight, windowWidth, windowHeight } = tiling;
  const windowLeft = margin;
  const windowBottom = margin + foot;
  const placing = {
    scale: pointsPerMeter,
    x: (windowLeft - tile.left) * pointsPerMeter,
    y: (windowBottom - tile.bottom) * pointsPerMeter,
  };
  const seen = grown(
    { left: tile.left, bottom: tile.bottom, right: tile.left + windowWidth, top: tile.bottom + windowHeight },
    0.001,
  );
  const here = shown.filter((primitive) => meets(extentOf([primitive]), seen));
  const window = [windowLeft, windowBottom, windowWidth, windowHeight].map((meters) => meters * pointsPerMeter);
  const [left, bottom, width, height] = window as [number, number, number, number];
  const where = `Page ${tile.number + 1} of ${tiling.tiles.length + 1}: row ${tile.row + 1}, column ${tile.column + 1}`;
  return {
    width: pageWidth * pointsPerMeter,
    height: pageHeight * pointsPerMeter,
    content: [
      clipped(left, bottom, width, height, drawingOperators(here, placing)),
      '0.55 G 0.55 g',
      drawingOperators(joins(tiling, tile), paper),
      '0 G 0 g',
      drawingOperators(registration(tiling), paper),
      drawingOperators([...checkBars(), ...pageFoot(drawing.title, where, pageWidth)], paper),
    ].join('\n'),
  };
}

function meets(a: Extent, b: Extent): boolean {
  return a.left <= b.right && a.right >= b.left && a.bottom <= b.top && a.top >= b.bottom;
}

const millimeters = (meters: number) => meters * 1000;

/** Crosses in circles in the middle of each overlap: the same points of the drawing on neighboring pages. */
function registration({ windowWidth, windowHeight }: Tiling): readonly Primitive[] {
  const [left, right] = [margin + overlap / 2, margin + windowWidth - overlap / 2].map(millimeters) as [number, number];
  const low = millimeters(margin + foot + overlap / 2);
  const high = millimeters(margin + foot + windowHeight - overlap / 2);
  const points: readonly Point[] = [left, right].flatMap((x) => [low, high].map((y) => ({ x, y })));
  return points.flatMap((at) => [...cross('mark', at, 4), circle('mark', 'thin', at, 2)]);
}

/** The line where the next page goes on top, with the number of that page. */
function joins(tiling: Tiling, tile: Tile): readonly Primitive[] {
  const { tiles, windowWidth, windowHeight } = tiling;
  const left = millimeters(margin + overlap / 2);
  const right = millimeters(margin + windowWidth - overlap / 2);
  const low = millimeters(margin + foot + overlap / 2);
  const high = millimeters(margin + foot + windowHeight - overlap / 2);
  const middle = { x: (left + right) / 2, y: (low + high) / 2 };
  const sides = [
    {
      row: 0,
      column: -1,
      from: { x: left, y: low },
      to: { x: left, y: high },
      at: { x: left - 2.4, y: middle.y },
      turn: Math.PI / 2,
    },
    {
      row: 0,
      column: 1,
      from: { x: right, y: low },
      to: { x: right, y: high },
      at: { x: right + 2.4, y: middle.y },
      turn: Math.PI / 2,
    },
    {
      row: -1,
      column: 0,
      from: { x: left, y: high },
      to: { x: right, y: high },
      at: { x: middle.x, y: high + 2.4 },
      turn: 0,
    },
    {
      row: 1,
      column: 0,
      from: { x: left, y: low },
      to: { x: right, y: low },
      at: { x: middle.x, y: low - 2.4 },
      turn: 0,
    },
  ];
  return sides.flatMap(({ row, column, from, to, at, turn }) => {
    const next = tiles.find((other) => other.row === tile.row + row && other.column === tile.column + column);
    if (next === undefined) return [];
    const words: Text = text(at, `page ${next.number + 1} joins here`, 2, { turn });
    return [line('mark', 'dashed', from, to), words];
  });
}
