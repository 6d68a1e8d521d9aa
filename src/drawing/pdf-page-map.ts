import { withoutDimensions } from './dimension-lines';
import type { Drawing, Extent, Primitive } from './drawing-model';
import { extentOf, grown } from './extent';
import { checkBars, pageFoot, shortened } from './page-foot';
import { drawingOperators, type Placing, paper } from './pdf-canvas';
import { type PdfPage, pointsPerMeter } from './pdf-file';
import { closedPolyline, corners, text } from './shapes';
import { lineStep, wrapped } from './text-width';
import { foot, margin, type Tiling } from './tiling';

const wordHeight = 2.6;

/** The first page: the places of the other pages, all dimensions, and how to print, check and join the pages. */
export function mapPage(drawing: Drawing, tiling: Tiling): PdfPage {
  const { pageWidth, pageHeight, tiles } = tiling;
  const left = margin * 1000;
  const width = pageWidth * 1000 - 2 * left;
  const high = pageHeight * 1000 - left;
  const count = tiles.length + 1;
  const sentences = [
    `Full size on ${count === 2 ? 'one page' : `${tiles.length} pages`} of ${tiling.paper.name}. Print at 100 % (actual size), not fitted to the page, and measure the check bars on every page with a good ruler before you cut.`,
    ...(tiles.length > 1
      ? [
          'Lay each page over the next so that the crosses in their circles match, and tape them together. Dashed frames on the map are the pages.',
        ]
      : []),
    ...drawing.notes,
  ];
  const words: Primitive[] = [
    text({ x: left, y: high - 3 }, shortened(drawing.title, 4.2, width), 4.2, { anchor: 'start', bold: true }),
  ];
  let y = high - 11;
  for (const sentence of sentences) {
    for (const one of wrapped(sentence, wordHeight, width)) {
      words.push(text({ x: left, y }, one, wordHeight, { anchor: 'start' }));
      y -= lineStep * wordHeight;
    }
    y -= 0.8;
  }
  const box: Extent = { left, bottom: left + foot * 1000 + 2, right: left + width, top: y };
  const placed = overview(drawing, tiling, box);
  return {
    width: pageWidth * pointsPerMeter,
    height: pageHeight * pointsPerMeter,
    content: [
      drawingOperators(words, paper),
      '0.8 g',
      drawingOperators(pageNumbers(tiling), placed),
      '0.5 G',
      drawingOperators(pageFrames(tiling), placed),
      '0 G 0 g',
      drawingOperators(withoutDimensions(drawing.entities, 0.75 * drawing.textHeight), placed),
      drawingOperators([...checkBars(), ...pageFoot(drawing.title, `Page 1 of ${count}: page map`, pageWidth)], paper),
    ].join('\n'),
  };
}

/** The whole drawing and its pages, as large as the box allows. */
function overview(drawing: Drawing, tiling: Tiling, box: Extent): Placing {
  const all = extentOf([...withoutDimensions(drawing.entities, drawing.textHeight), ...pageFrames(tiling)]);
  const { left, bottom, right, top } = grown(all, drawing.textHeight / 2);
  const scale = Math.min((box.right - box.left) / (right - left), (box.top - box.bottom) / (top - bottom)) / 1000;
  const points = pointsPerMeter / 1000;
  return {
    scale: scale * pointsPerMeter,
    x: ((box.left + box.right) / 2) * points - (scale * pointsPerMeter * (left + right)) / 2,
    y: box.top * points - scale * pointsPerMeter * top,
  };
}

function pageFrames({ tiles, windowWidth, windowHeight }: Tiling): readonly Primitive[] {
  return tiles.flatMap(({ left, bottom }) =>
    closedPolyline('mark', 'dashed', corners(left, bottom, left + windowWidth, bottom + windowHeight)),
  );
}

/** Large and pale behind the drawing, so that they hide nothing. */
function pageNumbers({ tiles, windowWidth, windowHeight }: Tiling): readonly Primitive[] {
  return tiles.map(({ number, left, bottom }) =>
    text(
      { x: left + windowWidth / 2, y: bottom + windowHeight / 2 },
      String(number + 1),
      0.3 * Math.min(windowWidth, windowHeight),
      {
        bold: true,
      },
    ),
  );
}
