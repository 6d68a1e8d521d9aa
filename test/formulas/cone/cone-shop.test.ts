import { describe, expect, it } from 'vitest';
import { coneBackfill } from '../../../src/formulas/cone/cone-backfill';
import { coneCheck } from '../../../src/formulas/cone/cone-check';
import { coneMarks } from '../../../src/formulas/cone/cone-marks';
import { coneMix } from '../../../src/formulas/cone/cone-mix';
import { conePattern } from '../../../src/formulas/cone/cone-pattern';
import { coneRivets } from '../../../src/formulas/cone/cone-rivets';
import { readPattern } from '../../../src/formulas/cone/read-pattern';
import { piecePolygon } from '../cut/piece-shape';

const degree = Math.PI / 180;
const inch = 0.0254;
const drum = { top: 22.5 * inch, bottom: 4 * inch, height: 9.25 * inch };
const pieceOf = (pieces: number, lap: number) =>
  readPattern(conePattern({ ...drum, pieces, lap, thickness: 0, measured: 'fit', clearance: 0 }), 'pattern', 1);

describe('rivets', () => {
  it('are no farther apart than asked and stand away from both ends', () => {
    expect(coneRivets(13, 2, 1)).toBe(7);
    expect(coneRivets(12, 2, 1)).toBe(6);
    expect(coneRivets(0.3, 0.05, 0.025)).toBe(6);
    expect(coneRivets(2, 5, 1)).toBe(1);
  });

  it('cannot stand farther from the ends than the middle', () => {
    expect(() => coneRivets(1, 0.2, 0.6)).toThrow('edge');
  });
});

describe('base mix', () => {
  const plain = { ...drum, drum: drum.top, thickness: 0, measured: 'fit' as const, rise: 0 };

  it('and cone together fill the drum up to the rim', () => {
    const cone = (Math.PI / 12) * 9.25 * (22.5 ** 2 + 22.5 * 4 + 16) * inch ** 3;
    const cylinder = (Math.PI / 4) * 22.5 ** 2 * 9.25 * inch ** 3;
    expect(coneBackfill(plain) + cone).toBeCloseTo(cylinder, 12);
  });

  it('grows by a slice of the drum for each bit of rise', () => {
    const slice = (Math.PI / 4) * drum.top ** 2 * 0.05;
    expect(coneBackfill({ ...plain, rise: 0.05 }) - coneBackfill(plain)).toBeCloseTo(slice, 12);
  });

  it('does not ask how thick a cone is that was measured outside, and is less round a thicker one measured inside', () => {
    const wide = { ...plain, drum: 0.6 };
    const outside = (thickness: number) => coneBackfill({ ...wide, thickness, measured: 'outside' });
    const inside = (thickness: number) => coneBackfill({ ...wide, thickness, measured: 'inside' });
    expect(outside(0.002)).toBeCloseTo(outside(0), 12);
    // At 45 degrees the outside is 2 t sin 45 wider than the inside.
    const wider = 0.004 * Math.SQRT1_2;
    const grown = coneBackfill({ ...wide, top: drum.top + wider, bottom: drum.bottom + wider });
    expect(inside(0.002)).toBeCloseTo(grown, 12);
  });

  it('is nothing round a sleeve as wide as the drum, and cannot be less', () => {
    expect(coneBackfill({ ...plain, bottom: drum.top })).toBeCloseTo(0, 12);
    expect(() => coneBackfill({ ...plain, drum: 0.5 })).toThrow('drum');
  });

  it('takes one sack of cement for as many cubic feet of aggregate as there are parts', () => {
    // Perlite Institute: a 94 lb sack yields 4, 5, 6, 8 ft3 at 1:4, 1:5, 1:6, 1:8.
    const foot3 = 0.3048 ** 3;
    for (const parts of [4, 5, 6, 8]) {
      const mix = coneMix(parts * foot3, parts, 0, 94 * 0.45359237);
      expect(mix.bags).toBe(1);
      expect(mix.cement).toBeCloseTo(94 * 0.45359237, 9);
    }
    expect(coneMix(6 * foot3, 6, 0.1, 94 * 0.45359237).bags).toBe(2);
  });
});

describe('marks', () => {
  it.each([
    [1, 0],
    [2, 0.025],
    [1, 0.1],
  ])('lie on the outline within the blank, %s pieces and lap %s m', (pieces, lap) => {
    const piece = pieceOf(pieces, lap);
    const pattern = conePattern({ ...drum, pieces, lap, thickness: 0, measured: 'fit', clearance: 0 });
    const marks = coneMarks(piece, 15 * degree);
    const xs = marks.flatMap(({ outerX, innerX }) => [outerX, innerX]).filter((x) => x !== undefined);
    const ys = marks.flatMap(({ outerY, innerY }) => [outerY, innerY]).filter((y) => y !== undefined);
    for (const x of xs) expect(x).toBeGreaterThan(-1e-12);
    for (const y of ys) expect(y).toBeGreaterThan(-1e-12);
    expect(Math.max(...xs)).toBeLessThan(pattern.blankLength + 1e-12);
    expect(Math.max(...ys)).toBeLessThan(pattern.blankWidth + 1e-12);
    const outer = marks.filter(({ angle }) => angle !== undefined);
    for (const { outerX, outerY, innerX, innerY } of outer) {
      expect(Math.hypot(outerX! - innerX!, outerY! - innerY!)).toBeCloseTo(pattern.slant, 12);
    }
  });

  it('step from the clockwise edge to the other one, both included', () => {
    const angles = coneMarks(pieceOf(1, 0), 15 * degree)
      .filter(({ angle }) => angle !== undefined)
      .map(({ angle }) => angle! / degree);
    expect(angles).toHaveLength(18);
    expect(angles[1]).toBeCloseTo(15, 12);
    expect(angles.at(-2)).toBeCloseTo(240, 12);
    expect(angles.at(-1)).toBeCloseTo(254.5584, 4);
  });

  it('end with distances that a tape would read between the corners of the outline', () => {
    const piece = pieceOf(2, 0.025);
    const polygon = piecePolygon(piece, 1e-9);
    const checks = coneMarks(piece, 15 * degree).filter(({ distance }) => distance !== undefined);
    expect(checks).toHaveLength(4);
    const first = polygon[1]!;
    const longest = checks[0]!.distance!;
    expect(polygon.some(({ x, y }) => Math.abs(Math.hypot(x - first.x, y - first.y) - longest) < 1e-9)).toBe(true);
  });

  it('of a rectangle are its corners', () => {
    const sleeve = conePattern({
      ...{ top: 0.5, bottom: 0.5, height: 0.3, pieces: 2, lap: 0.02 },
      ...{ thickness: 0, measured: 'fit', clearance: 0 },
    });
    const marks = coneMarks(readPattern(sleeve, 'pattern', 1), 15 * degree);
    expect(marks[0]).toMatchObject({ outerX: sleeve.blankLength, outerY: 0.3, innerY: 0 });
    expect(marks.at(-1)!.distance).toBeCloseTo(Math.hypot(sleeve.blankLength, 0.3), 12);
  });

  it('cannot be more than can be read', () => {
    expect(() => coneMarks(pieceOf(1, 0), 1e-6)).toThrow('step');
  });
});

describe('cautions about a cone', () => {
  const none = { drum: undefined, sheetLength: undefined, sheetWidth: undefined };
  const plain = { ...drum, pieces: 1, lap: 0, thickness: 0, ...none };
  const texts = (request: Parameters<typeof coneCheck>[0]) =>
    coneCheck(request)
      .map(({ text }) => text)
      .join('\n');

  it('name a wall under 45 degrees, one under 60, and neither when it is as steep', () => {
    expect(texts({ ...plain, height: 9 * inch })).toContain('below 45');
    expect(texts(plain)).toContain('below 60');
    expect(texts(plain)).not.toContain('below 45');
    expect(texts({ ...plain, height: 9.25 * inch * Math.sqrt(3) })).toContain('Nothing found');
  });

  it('turn at 45 and at 60 degrees, to a ten-thousandth', () => {
    const across = (22.5 - 4) / 2;
    const at = (degrees: number) => texts({ ...plain, height: across * inch * Math.tan((degrees * Math.PI) / 180) });
    expect(at(44.9999)).toContain('below 45');
    expect(at(45)).not.toContain('below 45');
    expect(at(45)).toContain('below 60');
    expect(at(59.9999)).toContain('below 60');
    expect(at(60)).not.toContain('below 60');
    expect(at(60.0001)).not.toContain('under');
  });

  it('take a cone as wide as the drum, and none wider', () => {
    expect(texts({ ...plain, drum: plain.top })).not.toContain('does not fit into the drum');
    expect(texts({ ...plain, drum: plain.top * (1 - 1e-9) })).toContain('does not fit into the drum');
  });

  it('always say that wet mix lifts the cone', () => {
    expect(texts(plain)).toContain('lifts it');
    expect(texts({ ...plain, height: 20 * inch })).toContain('lifts it');
  });

  it('tell how many pieces go on the sheet when one does not', () => {
    const small = { sheetLength: 24 * inch, sheetWidth: 24 * inch };
    expect(texts({ ...plain, ...small })).toContain('cut 2 pieces instead of 1');
    expect(texts({ ...plain, sheetLength: 96 * inch, sheetWidth: 48 * inch })).not.toContain('sheet');
    expect(texts({ ...plain, sheetLength: 4 * inch, sheetWidth: 4 * inch })).toContain('no number of pieces');
  });

  it('report what the pattern would refuse', () => {
    expect(texts({ ...plain, bottom: 1 })).toContain('The bottom is not allowed:');
    expect(texts({ ...plain, lap: 1 })).toContain('The lap is not allowed:');
    expect(texts({ ...plain, drum: 0.5 })).toContain('does not fit into the drum');
  });
});
