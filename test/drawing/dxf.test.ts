import { describe, expect, test } from 'vitest';
import { toDxf } from '../../src/drawing/dxf';
import { patternDrawing } from '../../src/drawing/pattern-drawing';
import { readDxf } from './read-dxf';
import { drumCone, inch, metric, patternOf, us } from './samples';

const degrees = (radians: number) => (radians * 180) / Math.PI;
const cutArcs = (file: string) =>
  readDxf(file)
    .arcs.filter(({ layer }) => layer === 'cut')
    .toSorted((a, b) => b.radius - a.radius);

/**
 * Radial-line development: radius = slant height of the whole cone, angle = 360 x base radius / slant height (any
 * sheet-metal drafting text); with walls at 60 degrees that is half a circle, at 45 degrees 360/sqrt 2.
 */
describe('a pattern read back from its DXF file', () => {
  test('a cone with walls at 60 degrees unrolls to half a circle with the radii of the cone run out to its point', () => {
    const height = ((600 - 100) / 2) * Math.sqrt(3);
    const pattern = patternOf(0.6, 0.1, height / 1000);
    const [outer, inner] = cutArcs(toDxf(patternDrawing({ pattern, profile: metric })));
    expect(outer!.radius).toBeCloseTo(600, 4);
    expect(inner!.radius).toBeCloseTo(100, 4);
    expect(degrees(outer!.endAngle) - degrees(outer!.startAngle)).toBeCloseTo(180, 6);
  });

  test('a cone with walls at 45 degrees unrolls to 254.558 degrees, in inches where the profile is US', () => {
    const dxf = readDxf(toDxf(patternDrawing({ pattern: drumCone(), profile: us })));
    const outer = dxf.arcs.filter(({ layer }) => layer === 'cut').toSorted((a, b) => b.radius - a.radius)[0]!;
    const sweep = (degrees(outer.endAngle) - degrees(outer.startAngle) + 360) % 360;
    expect(sweep).toBeCloseTo(360 / Math.SQRT2, 6);
    expect(outer.radius * 25.4).toBeCloseTo((22.5 / 2) * Math.SQRT2 * 25.4, 3);
    expect(dxf.header.$INSUNITS).toBe(1);
    expect(dxf.header.$MEASUREMENT).toBe(0);
  });

  test('the header has millimeters and the metric system in a metric profile', () => {
    const { header, layers } = readDxf(toDxf(patternDrawing({ pattern: drumCone(), profile: metric })));
    expect(header.$INSUNITS).toBe(4);
    expect(header.$MEASUREMENT).toBe(1);
    expect(layers).toEqual(expect.arrayContaining(['cut', 'mark', 'text']));
  });

  test('three pieces each have a third of the angle, and the lap adds a strip of its own width', () => {
    const lap = 25;
    const pattern = patternOf(0.6, 0.1, 0.4, 3, lap / 1000);
    const { arcs, lines } = readDxf(toDxf(patternDrawing({ pattern, profile: metric })));
    const cut = arcs.filter(({ layer }) => layer === 'cut').toSorted((a, b) => b.radius - a.radius);
    const slant = Math.hypot(250, 400);
    const sector = (360 * (250 / slant)) / 3;
    const strip = degrees(Math.asin(lap / cut[0]!.radius));
    expect(degrees(cut[0]!.endAngle) - degrees(cut[0]!.startAngle)).toBeCloseTo(sector + strip, 6);
    // The lap's edge runs parallel to the dashed line that the next piece comes up to, one lap away.
    const dashed = lines.find(({ layer, lineType }) => layer === 'mark' && lineType === 'DASHED')!;
    const edges = lines.filter(({ layer }) => layer === 'cut');
    const gaps = edges.map((edge) => distances(dashed.vertices, edge.vertices));
    expect(gaps.some(([a, b]) => Math.abs(a - lap) < 1e-3 && Math.abs(b - lap) < 1e-3)).toBe(true);
  });

  test.each([
    ['over 180 degrees', drumCone(1, inch)],
    ['in three pieces', drumCone(3, inch)],
    ['to a point', patternOf(0.5, 0, 0.3, 2, 0.02)],
    ['a cylinder', patternOf(0.5, 0.5, 0.3, 2, 0.02)],
  ])('what is cut is one closed outline: %s', (_name, pattern) => {
    const { arcs, lines } = readDxf(toDxf(patternDrawing({ pattern, profile: metric })));
    const ends = [
      ...lines.filter(({ layer }) => layer === 'cut').flatMap(({ vertices }) => [vertices[0]!, vertices[1]!]),
      ...arcs
        .filter(({ layer }) => layer === 'cut')
        .flatMap(({ center, radius, startAngle, endAngle }) =>
          [startAngle, endAngle].map((angle) => ({
            x: center.x + radius * Math.cos(angle),
            y: center.y + radius * Math.sin(angle),
          })),
        ),
    ];
    for (const end of ends) {
      const meeting = ends.filter((other) => Math.hypot(end.x - other.x, end.y - other.y) < 1e-4);
      expect(meeting).toHaveLength(2);
    }
  });

  test('the blank’s lower-left corner is the origin, so that the marking-out table and the file agree', () => {
    const pattern = drumCone(1, inch);
    const { arcs } = readDxf(toDxf(patternDrawing({ pattern, profile: us })));
    const outer = arcs.find(({ layer }) => layer === 'cut')!;
    expect(outer.center.x).toBeCloseTo(outer.radius, 6);
    expect(outer.center.y + outer.radius).toBeCloseTo(pattern.blankWidth / inch, 5);
  });

  test('text from cells stays text: no line of it can begin a DXF group and no code in it is obeyed', () => {
    const name = 'a\n0\nEOF\n%%d %%% \\U+0041 ünïcode';
    const { texts, arcs } = readDxf(toDxf(patternDrawing({ pattern: drumCone(), profile: us, name })));
    const title = texts.map(({ text }) => text).join(' ');
    expect(arcs.length).toBeGreaterThan(1);
    expect(title).toContain('EOF');
    expect(title).not.toMatch(/%%|\\U\+/);
    expect(title).toContain('ünïcode');
  });

  test('the same drawing gives the same bytes', () => {
    const drawing = patternDrawing({ pattern: drumCone(2, inch), profile: us });
    expect(toDxf(drawing)).toBe(toDxf(drawing));
  });
});

interface Dot {
  readonly x: number;
  readonly y: number;
}

/** How far the ends of one line lie from another, taken as endless. */
function distances(line: readonly Dot[], other: readonly Dot[]): readonly [number, number] {
  const [a, b] = [line[0]!, line[1]!];
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const off = ({ x, y }: Dot) => Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / long;
  return [off(other[0]!), off(other[1]!)];
}
