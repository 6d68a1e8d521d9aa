import type { Extent, Primitive } from './drawing-model';
import { traced } from './extent';

/** All in meters. */
export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

export const papers = {
  A4: { name: 'A4', width: 0.21, height: 0.297 },
  Letter: { name: 'Letter', width: 0.2159, height: 0.2794 },
} as const satisfies Record<string, Paper>;

export type PaperName = keyof typeof papers;

/** The margin that printers leave white, and a little more; the foot of the page holds the check bars. */
export const margin = 0.01;
export const foot = 0.018;
/** The width of the strip that neighboring pages share. */
export const overlap = 0.01;

/** One page's window on the drawing. Rows count from the top, columns from the left, numbers from 1 along the rows. */
export interface Tile {
  readonly number: number;
  readonly row: number;
  readonly column: number;
  readonly left: number;
  readonly bottom: number;
}

export interface Tiling {
  readonly paper: Paper;
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly windowWidth: number;
  readonly windowHeight: number;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
}

/** Pages that cover the cut lines, portrait or landscape, whichever needs fewer; empty pages are left out. */
export function tiled(cut: readonly Primitive[], extent: Extent, paper: Paper): Tiling {
  const points = cut.flatMap((primitive) => traced(primitive, 0.002));
  const upright = tilesCovering(points, extent, paper, paper.width, paper.height);
  const lying = tilesCovering(points, extent, paper, paper.height, paper.width);
  return lying.tiles.length < upright.tiles.length ? lying : upright;
}

function tilesCovering(
  points: readonly { readonly x: number; readonly y: number }[],
  { left, bottom, right, top }: Extent,
  paper: Paper,
  pageWidth: number,
  pageHeight: number,
): Tiling {
  const windowWidth = pageWidth - 2 * margin;
  const windowHeight = pageHeight - 2 * margin - foot;
  const across = windowWidth - overlap;
  const down = windowHeight - overlap;
  const columns = Math.max(1, Math.ceil((right - left - overlap) / across - 1e-9));
  const rows = Math.max(1, Math.ceil((top - bottom - overlap) / down - 1e-9));
  // The drawing is in the middle of all pages together.
  const originX = (left + right - columns * across - overlap) / 2;
  const originY = (bottom + top + rows * down + overlap) / 2;
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row++) {
    const shown = Array.from({ length: columns }, (_, column) => ({
      row,
      column,
      left: originX + column * across,
      bottom: originY - (row + 1) * down - overlap,
    })).filter((tile) => points.some(({ x, y }) => isInside(x, y, tile, windowWidth, windowHeight)));
    // Keeps every page between the first and the last of a row: paper without lines still holds the others in place.
    const first = shown[0];
    const last = shown.at(-1);
    if (first === undefined || last === undefined) continue;
    for (let column = first.column; column <= last.column; column++) {
      tiles.push({ ...first, column, left: originX + column * across, number: tiles.length + 1 });
    }
  }
  return { paper, pageWidth, pageHeight, windowWidth, windowHeight, rows, columns, tiles };
}

/** Points are 2 mm apart, so a line that only grazes the window is caught 2 mm outside it. */
function isInside(
  x: number,
  y: number,
  { left, bottom }: Omit<Tile, 'number'>,
  width: number,
  height: number,
): boolean {
  const slack = 0.002;
  return x >= left - slack && x <= left + width + slack && y >= bottom - slack && y <= bottom + height + slack;
}
