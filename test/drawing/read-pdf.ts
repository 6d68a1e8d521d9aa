import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

/** What an independent reader (pdf.js) finds on one page; lengths in millimeters from the page's lower-left corner. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly ReadStroke[];
  readonly texts: readonly ReadText[];
}

export interface ReadStroke {
  /** Width of the line in points. */
  readonly weight: number;
  readonly dashed: boolean;
  /** Ends of its straight and curved parts, and points along the curves. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly curved: boolean;
}

export interface ReadText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

const millimeters = 25.4 / 72;

/** The pages of a file, or only so many from the first. */
export async function readPdf(bytes: Uint8Array, most = Number.POSITIVE_INFINITY): Promise<readonly ReadPage[]> {
  const document = await getDocumentProxy(Uint8Array.from(bytes), { verbosity: 0 });
  const { OPS } = await getResolvedPDFJS();
  const pages: ReadPage[] = [];
  for (let number = 1; number <= Math.min(document.numPages, most); number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const list = await page.getOperatorList();
    const strokes: ReadStroke[] = [];
    let weight = 1;
    let dashed = false;
    list.fnArray.forEach((operator, i) => {
      const given: readonly unknown[] = list.argsArray[i] ?? [];
      if (operator === OPS.setLineWidth) weight = given[0] as number;
      if (operator === OPS.setDash) dashed = (given[0] as readonly number[]).length > 0;
      if (operator !== OPS.constructPath || given[0] !== OPS.stroke) return;
      const [path] = given[1] as readonly [Float32Array];
      strokes.push({ weight, dashed, ...followed(path) });
    });
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) => {
      if (!('str' in item) || item.str === '') return [];
      const [a, b, , , x, y] = item.transform as readonly number[];
      return [
        {
          text: item.str,
          x: x! * millimeters,
          y: y! * millimeters,
          width: item.width * millimeters,
          size: Math.hypot(a!, b!) * millimeters,
        },
      ];
    });
    pages.push({ width: (right - left) * millimeters, height: (top - bottom) * millimeters, strokes, texts });
  }
  return pages;
}

/** pdf.js hands a path over as numbers: 0 x y moves, 1 x y draws a line, 2 and six numbers a cubic curve. */
function followed(path: Float32Array): Pick<ReadStroke, 'points' | 'curved'> {
  const points: (readonly [number, number])[] = [];
  let curved = false;
  let i = 0;
  while (i < path.length) {
    const kind = path[i++]!;
    if (kind === 3 || kind === 4) continue;
    const take = kind === 2 ? 6 : 2;
    const given = Array.from(path.subarray(i, i + take), (points72) => points72 * millimeters);
    i += take;
    if (kind === 2) {
      curved = true;
      const [x0, y0] = points.at(-1)!;
      const [x1, y1, x2, y2, x3, y3] = given as [number, number, number, number, number, number];
      for (const t of [0.25, 0.5, 0.75, 1]) {
        const u = 1 - t;
        const blend = (p0: number, p1: number, p2: number, p3: number) =>
          u * u * u * p0 + 3 * u * u * t * p1 + 3 * u * t * t * p2 + t * t * t * p3;
        points.push([blend(x0, x1, x2, x3), blend(y0, y1, y2, y3)]);
      }
    } else points.push([given[0]!, given[1]!]);
  }
  return { points, curved };
}
