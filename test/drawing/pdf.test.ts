import { describe, expect, test } from 'vitest';
import { cutPlanDrawing } from '../../src/drawing/cut-plan-drawing';
import type { Drawing } from '../../src/drawing/drawing-model';
import { patternDrawing } from '../../src/drawing/pattern-drawing';
import { toPdf } from '../../src/drawing/pdf';
import { DrawingTooLarge } from '../../src/drawing/pdf-full-size';
import { textWidth } from '../../src/drawing/text-width';
import { type ReadPage, type ReadStroke, readPdf } from './read-pdf';
import { drumCone, inch, metric, patternOf, us } from './samples';

type Dot = readonly [x: number, y: number];

/** The registration crosses of a page: the small circles, by the middle of their outermost points. */
function crosses({ strokes }: ReadPage): readonly Dot[] {
  return strokes
    .filter(({ curved, points }) => curved && span(points) < 5)
    .map(({ points }) => [middle(points.map(([x]) => x)), middle(points.map(([, y]) => y))] as const);
}

const span = (points: readonly Dot[]) => Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x));
const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;

/** Row and column as printed on the page. */
function place({ texts }: ReadPage): { readonly row: number; readonly column: number } {
  const words = texts.map(({ text }) => text).join(' ');
  const [, row, column] = /row (\d+), column (\d+)/.exec(words) ?? [];
  return { row: Number(row), column: Number(column) };
}

/** Taped together as the map page says: neighbors laid cross over cross. Every stroke, in millimeters of the whole. */
function taped(pages: readonly ReadPage[]): readonly ReadStroke[] {
  return pages.flatMap((page) => {
    const marks = crosses(page);
    const left = Math.min(...marks.map(([x]) => x));
    const right = Math.max(...marks.map(([x]) => x));
    const low = Math.min(...marks.map(([, y]) => y));
    const high = Math.max(...marks.map(([, y]) => y));
    const { row, column } = place(page);
    const shift = [column * (right - left) - left, -row * (high - low) - low] as const;
    return page.strokes.map((stroke) => ({
      ...stroke,
      points: stroke.points.map(([x, y]) => [x + shift[0], y + shift[1]] as const),
    }));
  });
}

/** Least-squares circle through points (Kasa's method: x2 + y2 = a x + b y + c is linear). */
function circleThrough(points: readonly Dot[]): { readonly x: number; readonly y: number; readonly radius: number } {
  const mx = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const my = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  let [xx, xy, yy, xz, yz, zz] = [0, 0, 0, 0, 0, 0];
  for (const [px, py] of points) {
    const [x, y] = [px - mx, py - my];
    const z = x * x + y * y;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
    zz += z;
  }
  const determinant = xx * yy - xy * xy;
  const x = (xz * yy - yz * xy) / determinant / 2;
  const y = (yz * xx - xz * xy) / determinant / 2;
  return { x: x + mx, y: y + my, radius: Math.sqrt(zz / points.length + x * x + y * y) };
}

const thick = ({ weight, curved, dashed }: ReadStroke) => weight > 1 && curved && !dashed;

/** The cut arcs of taped pages, larger circle first, each from all the pages that show a part of it. */
function cutArcs(pages: readonly ReadPage[]) {
  const arcs = taped(pages.slice(1)).filter(thick);
  const largest = Math.max(...arcs.map(({ points }) => circleThrough(points).radius));
  const outer = arcs.filter(({ points }) => circleThrough(points).radius > 0.8 * largest);
  const inner = arcs.filter((arc) => !outer.includes(arc));
  return [outer, inner].map((part) => {
    const points = part.flatMap((one) => one.points);
    return { ...circleThrough(points), points };
  });
}

const pattern = (profile = metric, pieces = 1, lap = 0): Drawing =>
  patternDrawing({ pattern: drumCone(pieces, lap), profile });

describe('a pattern read back from full-size pages taped together', () => {
  test.each(['A4', 'Letter'] as const)(
    'radii, their common center and the angle are right to 0.1 mm on %s',
    async (paper) => {
      const pages = await readPdf(toPdf(pattern(), { paper }));
      const [outer, inner] = cutArcs(pages) as [ReturnType<typeof cutArcs>[0], ReturnType<typeof cutArcs>[0]];
      // A cone with walls at 45 degrees: radius = half the diameter x sqrt 2, angle = 360/sqrt 2.
      const radius = (22.5 / 2) * 25.4 * Math.SQRT2;
      const hole = (4 / 2) * 25.4 * Math.SQRT2;
      expect(Math.abs(outer.radius - radius)).toBeLessThan(0.05);
      expect(Math.abs(inner.radius - hole)).toBeLessThan(0.05);
      expect(Math.hypot(outer.x - inner.x, outer.y - inner.y)).toBeLessThan(0.1);
      for (const [x, y] of outer.points)
        expect(Math.abs(Math.hypot(x - outer.x, y - outer.y) - radius)).toBeLessThan(0.1);
      // The ends of the outer arc are the furthest of its points from the top, on either side of the open angle.
      const lowest = Math.min(...outer.points.map(([, y]) => y));
      const open = 360 - 360 / Math.SQRT2;
      const drop = radius * Math.cos((open / 2 / 180) * Math.PI);
      expect(Math.abs(outer.y - lowest - drop)).toBeLessThan(0.1);
    },
  );

  test('every page has a bar of exactly 100 mm and one of exactly 4 in', async () => {
    const pages = await readPdf(toPdf(pattern(us, 3, inch), { paper: 'Letter' }));
    for (const page of pages) {
      const level = page.strokes
        .filter(
          ({ points, curved, weight }) =>
            !curved && weight > 1 && points.length === 2 && points[0]![1] === points[1]![1],
        )
        .map(({ points }) => Math.abs(points[1]![0] - points[0]![0]));
      expect(level.some((long) => Math.abs(long - 100) < 0.001)).toBe(true);
      expect(level.some((long) => Math.abs(long - 101.6) < 0.001)).toBe(true);
      const words = page.texts.map(({ text }) => text);
      expect(words).toEqual(expect.arrayContaining(['100 mm', '4 in']));
    }
  });

  test('pages have the chosen paper, portrait or landscape', async () => {
    for (const [paper, sides] of [
      ['A4', [210, 297]],
      ['Letter', [215.9, 279.4]],
    ] as const) {
      for (const { width, height } of await readPdf(toPdf(pattern(metric, 3), { paper }))) {
        expect([width, height].toSorted((a, b) => a - b)).toEqual(sides.map((side) => expect.closeTo(side, 1)));
      }
    }
  });

  test('neighboring pages show the same strip, and each says which page joins where', async () => {
    const pages = (await readPdf(toPdf(pattern(), { paper: 'A4' }))).slice(1);
    const places = pages.map(place);
    pages.forEach((page, i) => {
      const { row, column } = places[i]!;
      const right = places.findIndex((other) => other.row === row && other.column === column + 1);
      const words = page.texts.map(({ text }) => text);
      if (right >= 0) expect(words).toContain(`page ${right + 2} joins here`);
      const marks = crosses(page);
      expect(marks).toHaveLength(4);
      // The overlap reaches 5 mm beyond the crosses: nothing within it may be cut off by the page's white edge.
      expect(Math.min(...marks.map(([x]) => x))).toBeGreaterThan(10);
      expect(page.width - Math.max(...marks.map(([x]) => x))).toBeGreaterThan(10);
    });
  });

  test('the first page is a map that numbers the others and shows the dimensions', async () => {
    const pages = await readPdf(toPdf(pattern(), { paper: 'A4' }));
    const words = pages[0]!.texts.map(({ text }) => text);
    for (let number = 2; number <= pages.length; number++) expect(words).toContain(String(number));
    const title = pages[0]!.texts.filter(({ text }) => text === 'Cone pattern, cut 1');
    expect(Math.max(...title.map(({ size }) => size))).toBeCloseTo(4.2 / 0.718, 3);
    expect(words.join(' ')).toContain('outer radius');
    expect(words.join(' ')).toContain('Print at 100 %');
    expect(words.join(' ')).toContain('254.56°');
  });

  test('the lap’s edge and the rivet line are on the pages, a lap and half a lap from the edge of the sector', async () => {
    const pages = await readPdf(toPdf(pattern(metric, 3, 0.02), { paper: 'A4' }));
    const strokes = taped(pages.slice(1)).filter(({ curved, points }) => !curved && span(points) > 100);
    const dashed = strokes.filter(({ weight, dashed: broken }) => broken && weight === 0.7);
    // All strokes along the counter-clockwise edge are parallel to the dashed one: take their distances from it.
    const edge = dashed.find(
      ({ points }) => Math.abs(points[1]![0] - points[0]![0]) < 300 && points[0]![1] !== points[1]![1],
    )!;
    const [[x0, y0], [x1, y1]] = [edge.points[0]!, edge.points[1]!];
    const long = Math.hypot(x1 - x0, y1 - y0);
    const off = ([x, y]: Dot) => ((x1 - x0) * (y - y0) - (y1 - y0) * (x - x0)) / long;
    const gaps = strokes
      .filter(({ points }) => Math.abs(off(points[0]!) - off(points[1]!)) < 0.01)
      .map(({ points }) => Math.abs(off(points[0]!)));
    expect(gaps.some((gap) => Math.abs(gap - 20) < 0.1)).toBe(true);
    expect(gaps.some((gap) => Math.abs(gap - 10) < 0.1)).toBe(true);
  });
});

describe('a drawing too large for paper', () => {
  test('more than 20 pages are refused, with the count and what to do', () => {
    const drawing = patternDrawing({ pattern: patternOf(2, 0.1, 1), profile: metric });
    expect(() => toPdf(drawing, { paper: 'A4' })).toThrow(DrawingTooLarge);
    expect(() => toPdf(drawing, { paper: 'A4' })).toThrow(/full size needs \d+ pages of A4.*more pieces.*DXF/);
  });

  test('something a hundred kilometers wide is refused at once', () => {
    const drawing = patternDrawing({ pattern: patternOf(1e5, 1, 1e5), profile: metric });
    expect(() => toPdf(drawing, { paper: 'A4' })).toThrow(DrawingTooLarge);
  });

  test('the same pattern in more pieces fits, and any drawing fits one page when asked', async () => {
    const drawing = patternDrawing({ pattern: patternOf(0.9, 0.1, 0.4), profile: metric });
    expect(() => toPdf(drawing, { paper: 'A4' })).toThrow(DrawingTooLarge);
    const inPieces = patternDrawing({ pattern: patternOf(0.9, 0.1, 0.4, 4), profile: metric });
    expect((await readPdf(toPdf(inPieces, { paper: 'A4' }))).length).toBeLessThanOrEqual(20);
    expect(await readPdf(toPdf(drawing, { paper: 'A4', fullSize: false }))).toHaveLength(1);
  });
});

describe('PDF files', () => {
  test('a cut plan fits one page and shows every piece number', async () => {
    const row = drumCone(2);
    const drawing = cutPlanDrawing({
      patterns: [row],
      plan: [
        { pattern: 1, piece: 1, sheet: 1, x: 0.5, y: 0.05, direction: Math.PI / 2 },
        { pattern: 1, piece: 2, sheet: 1, x: 1.4, y: 0.05, direction: Math.PI / 2 },
      ],
      sheetLength: 2.4,
      sheetWidth: 1.2,
      profile: metric,
    });
    const pages = await readPdf(toPdf(drawing, { paper: 'A4' }));
    expect(pages).toHaveLength(1);
    const words = pages[0]!.texts.map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(['1.1', '1.2', 'Sheet 1 of 1']));
  });

  test('text from cells cannot end a string or add operators, and keeps its letters if the font has them', async () => {
    const name = 'a) Tj ET (b \\ ½ Müller ≤ 中';
    const pages = await readPdf(toPdf(patternDrawing({ pattern: drumCone(3), profile: us, name }), { paper: 'A4' }));
    expect(pages[0]!.texts.map(({ text }) => text).join(' ')).toContain('a) Tj ET (b \\ ½ Müller <= ?');
  });

  test('text is as wide as the reader’s own metrics of Helvetica say', async () => {
    const pages = await readPdf(toPdf(pattern(us), { paper: 'A4' }));
    const regular = pages.flatMap(({ texts }) => texts).filter(({ text }) => /^(Lay|Dashed|page \d)/.test(text));
    expect(regular.length).toBeGreaterThan(5);
    for (const { text, width, size } of regular) expect(textWidth(text, size * 0.718) / width).toBeCloseTo(1, 3);
  });

  test('the same drawing gives the same bytes, with no date in them', () => {
    const bytes = toPdf(pattern(us, 2), { paper: 'A4' });
    expect(Buffer.from(bytes).equals(Buffer.from(toPdf(pattern(us, 2), { paper: 'A4' })))).toBe(true);
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/Date|\/ID|NaN|Infinity|undefined/);
  });
});
