import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conePattern } from '../../../src/formulas/cone/cone-pattern';
import { readPattern } from '../../../src/formulas/cone/read-pattern';
import { pieceHolds, piecePolygon } from '../cut/piece-shape';

const degree = Math.PI / 180;
const plain = { pieces: 1, lap: 0, thickness: 0, measured: 'fit', clearance: 0 } as const;

function polygonArea(points: readonly { x: number; y: number }[]): number {
  return points.reduce((sum, { x, y }, i) => {
    const next = points[(i + 1) % points.length]!;
    return sum + (x * next.y - y * next.x) / 2;
  }, 0);
}

const cones = fc
  .record({
    top: fc.double({ min: 0.1, max: 2, noNaN: true }),
    share: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 0.98, noNaN: true })),
    height: fc.double({ min: 0.05, max: 2, noNaN: true }),
    pieces: fc.integer({ min: 2, max: 6 }),
    lap: fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 0.03, noNaN: true })),
  })
  .map(({ share, ...cone }) => ({ ...plain, ...cone, bottom: share * cone.top }));

describe('the pattern of a cone', () => {
  it('is the half disc of a cone at 60 degrees, whatever its diameters', () => {
    const pattern = conePattern({ ...plain, top: 12, bottom: 6, height: 3 * Math.sqrt(3) });
    expect(pattern.wallAngle / degree).toBeCloseTo(60, 12);
    expect(pattern.sectorAngle! / degree).toBeCloseTo(180, 12);
    expect(pattern.blankLength).toBeCloseTo(24, 12);
    expect(pattern.blankWidth).toBeCloseTo(12, 12);
  });

  it('spreads to 254.56 degrees at 45 degrees, and its blank goes below the arc center', () => {
    const pattern = conePattern({ ...plain, top: 22.5, bottom: 4, height: 9.25 });
    expect(pattern.sectorAngle! / degree).toBeCloseTo(360 * Math.SQRT1_2, 10);
    expect(pattern.blankLength).toBeCloseTo(31.8198, 4);
    expect(pattern.blankWidth).toBeCloseTo(25.5465, 4);
  });

  it('keeps the lateral area of the cone, however many pieces it is cut in', () => {
    fc.assert(
      fc.property(cones, (cone) => {
        const { area, slant, pieces } = conePattern({ ...cone, lap: 0 });
        expect((area * pieces) / ((Math.PI / 2) * (cone.top + cone.bottom) * slant)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('tends to the full cone as the bottom closes', () => {
    const open = conePattern({ ...plain, top: 1, bottom: 1e-9, height: 1 });
    const full = conePattern({ ...plain, top: 1, bottom: 0, height: 1 });
    expect(open.area).toBeCloseTo(full.area, 8);
    expect(open.outerRadius).toBeCloseTo(full.outerRadius!, 8);
    expect(full.innerRadius).toBe(0);
  });

  it('tends to the cylinder as the wall stands up', () => {
    const cylinder = conePattern({ ...plain, top: 0.5, bottom: 0.5, height: 0.3, pieces: 2, lap: 0.02 });
    const nearly = conePattern({ ...plain, top: 0.5, bottom: 0.499999, height: 0.3, pieces: 2, lap: 0.02 });
    expect(cylinder).toMatchObject({ innerRadius: undefined, outerRadius: undefined, sectorAngle: undefined });
    expect(cylinder.blankLength).toBeCloseTo((Math.PI * 0.5) / 2 + 0.02, 12);
    expect(nearly.area).toBeCloseTo(cylinder.area, 5);
    expect(nearly.blankWidth).toBeCloseTo(cylinder.blankWidth, 5);
  });

  it('has the area and the blank of its outline', () => {
    fc.assert(
      fc.property(cones, (cone) => {
        const pattern = conePattern(cone);
        const polygon = piecePolygon(readPattern(pattern, 'patterns', 1), pattern.outerRadius! * 1e-7);
        const xs = polygon.map(({ x }) => x);
        const ys = polygon.map(({ y }) => y);
        expect(polygonArea(polygon) / pattern.area).toBeCloseTo(1, 5);
        expect((Math.max(...ys) - Math.min(...ys)) / pattern.blankLength).toBeCloseTo(1, 5);
        expect((Math.max(...xs) - Math.min(...xs)) / pattern.blankWidth).toBeCloseTo(1, 5);
      }),
      { numRuns: 60 },
    );
  });

  it('has the area of a lap that is wider than the inner radius', () => {
    const pattern = conePattern({ ...plain, top: 0.5, bottom: 0.02, height: 0.25, lap: 0.05 });
    const polygon = piecePolygon(readPattern(pattern, 'patterns', 1), 1e-9);
    expect(pattern.lap).toBeGreaterThan(pattern.innerRadius!);
    expect(polygonArea(polygon) / pattern.area).toBeCloseTo(1, 6);
  });

  it('cannot have a lap as wide as its piece, or one that comes round to its other edge', () => {
    expect(() => conePattern({ ...plain, top: 0.5, bottom: 0.1, height: 0.25, lap: 0.41 })).toThrow('lap');
    expect(() => conePattern({ ...plain, top: 0.5, bottom: 0.1, height: 0.25, pieces: 12, lap: 0.2 })).toThrow('lap');
    expect(() => conePattern({ ...plain, top: 0.5, bottom: 0.1, height: 0.02, lap: 0.04 })).toThrow('other edge');
    expect(() => conePattern({ ...plain, top: 0.5, bottom: 0.5, height: 0.1, pieces: 9, lap: 0.2 })).toThrow('lap');
  });
});

describe('a point', () => {
  it('is in the piece as often as the area says', () => {
    const pattern = conePattern({ ...plain, top: 0.5, bottom: 0.1, height: 0.25, pieces: 2, lap: 0.03 });
    const piece = readPattern(pattern, 'patterns', 1);
    const radius = pattern.outerRadius!;
    let inside = 0;
    const side = 600;
    for (let i = 0; i < side; i++) {
      for (let j = 0; j < side; j++) {
        if (pieceHolds(piece, ((2 * i + 1) / side - 1) * radius, ((2 * j + 1) / side - 1) * radius)) inside++;
      }
    }
    expect((inside * (2 * radius) ** 2) / side ** 2 / pattern.area).toBeCloseTo(1, 2);
  });
});
