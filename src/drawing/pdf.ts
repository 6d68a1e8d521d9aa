import { captionLines } from './caption';
import { withoutDimensions } from './dimension-lines';
import type { Drawing } from './drawing-model';
import { drawingOperators } from './pdf-canvas';
import { type PdfPage, pdfFile, pointsPerMeter } from './pdf-file';
import { fullSizePages } from './pdf-full-size';
import { margin, type PaperName, papers } from './tiling';

export interface PdfOptions {
  readonly paper: PaperName;
  /** True tiles at full size, false fits one page; the default is what the drawing is meant for. */
  readonly fullSize?: boolean;
}

/**
 * Drawings as a PDF file: at full size over as many pages as each takes, up to 20, after a page map; or
 * each made to fit one page.
 *
 * Throws `DrawingTooLarge` with a sentence that says what to do instead.
 */
export function toPdf(drawings: Drawing | readonly Drawing[], { paper, fullSize }: PdfOptions): Uint8Array {
  const list = 'entities' in drawings ? [drawings] : drawings;
  const pages = list.flatMap((drawing) =>
    (fullSize ?? drawing.fullSize) ? fullSizePages(drawing, papers[paper]) : [fittedPage(drawing, paper)],
  );
  return pdfFile(list.map(({ title }) => title).join('; '), pages);
}

/** One page, portrait or landscape, whichever shows the drawing larger. */
function fittedPage(drawing: Drawing, name: PaperName): PdfPage {
  const caption = captionLines(drawing, drawing.extent.right - drawing.extent.left);
  const { left, bottom, right, top } = { ...drawing.extent, bottom: drawing.extent.bottom - caption.height };
  const { width, height } = papers[name];
  const scaleOn = (across: number, down: number) =>
    Math.min((across - 3 * margin) / (right - left), (down - 3 * margin) / (top - bottom));
  const lying = scaleOn(height, width) > 1.15 * scaleOn(width, height);
  const [across, down] = lying ? [height, width] : [width, height];
  // Text is never set larger than 3.5 mm: a small drawing stays small.
  const scale = Math.min(scaleOn(across, down), 0.0035 / drawing.textHeight);
  const placing = {
    scale: scale * pointsPerMeter,
    x: ((across - scale * (right + left)) / 2) * pointsPerMeter,
    y: (down - 1.5 * margin - scale * top) * pointsPerMeter,
  };
  const all = [...withoutDimensions(drawing.entities, drawing.textHeight), ...caption.entities];
  return { width: across * pointsPerMeter, height: down * pointsPerMeter, content: drawingOperators(all, placing) };
}
