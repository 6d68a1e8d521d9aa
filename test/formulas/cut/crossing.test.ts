/** Overlaps of laid pieces, held to the areas that a polygon library finds in common. */
import { describe, expect, it } from 'vitest';
import { overlaps, overlapsDeeply } from '../../../src/formulas/cut/crossing';
import type { Pose } from '../../../src/formulas/cut/laid-piece';
import { nearPlaces } from '../../../src/formulas/cut/nearness';
import type { Piece } from '../../../src/formulas/cut/piece';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { box, layAt, outlineDistance, pairByChance, pose, sector, sharedArea } from './laid-shapes';

const doOverlap = (...pieces: readonly (readonly [Piece, Pose])[]) =>
  overlaps(
    pieces.map(([piece, at]) => layAt(piece, at)),
    pieces.length,
  );

describe('pieces by chance', () => {
  it('overlap where they share an area, whichever comes first', () => {
    const random = randomNumbers();
    let [clear, shared] = [0, 0];
    for (let i = 0; i < 300; i++) {
      const pair = pairByChance(random);
      const area = sharedArea(pair);
      // The polygons stray from the arcs by a thousandth of a millimeter.
      if (area < 0.5 && outlineDistance(pair, 1e-4) < 1e-5) continue;
      const [one, other] = pair.map(({ piece, pose: at }) => layAt(piece, at));
      const isShared = area > 0;
      if (isShared) shared++;
      else clear++;
      expect(overlaps([one!, other!], 2), JSON.stringify(pair)).toBe(isShared);
      expect(overlaps([other!, one!], 2), JSON.stringify(pair)).toBe(isShared);
    }
    expect(Math.min(clear, shared)).toBeGreaterThan(80);
  });
});

describe('pieces worked by hand', () => {
  const thin = box(1, 0.01);

  it('overlap where their lines cross, though no corner lies in the other', () => {
    expect(doOverlap([thin, pose(-0.5, 0)], [thin, pose(0, -0.5, 90)])).toBe(true);
    expect(doOverlap([thin, pose(-0.5, 0)], [thin, pose(0, 0.02, 90)])).toBe(false);
    expect(doOverlap([thin, pose(-0.5, 0, 30)], [thin, pose(0, -0.5, 100)])).toBe(true);
  });

  it('overlap where a strip crosses an arc or two arcs cross, though no corner lies in the other', () => {
    const disc = sector(0, 0.3, 200);
    const strip = box(0.2, 2);
    // The arc bulges over the strip's left side by 0.1 and by -0.1.
    expect(doOverlap([disc, pose(0, 0)], [strip, pose(0.2, -1)])).toBe(true);
    expect(doOverlap([strip, pose(0.2, -1)], [disc, pose(0, 0)])).toBe(true);
    expect(doOverlap([disc, pose(0, 0)], [strip, pose(0.4, -1)])).toBe(false);
    expect(doOverlap([disc, pose(0, 0)], [disc, pose(0.59, 0, 180)])).toBe(true);
    expect(doOverlap([disc, pose(0, 0)], [disc, pose(0.61, 0, 180)])).toBe(false);
  });

  it('overlap where two thin arcs cross like an X, on either side, and not where they face other ways', () => {
    // Circles of 1 about 0 and 1 meet 60 degrees up and down from the one, 120 from the other.
    const arc = sector(0.99, 1, 30);
    const crossAt = (one: number, other: number) => doOverlap([arc, pose(0, 0, one)], [arc, pose(1, 0, other)]);
    expect([crossAt(60, 120), crossAt(-60, -120)]).toEqual([true, true]);
    expect([crossAt(60, -120), crossAt(-60, 120), crossAt(60, 60), crossAt(0, 120)]).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  it('overlap where a thin strip goes through a thin arc, outwards or inwards', () => {
    const arc = sector(0.99, 1, 40);
    expect(doOverlap([arc, pose(0, 0)], [thin, pose(0.5, -0.005)])).toBe(true);
    expect(doOverlap([arc, pose(0, 0)], [thin, pose(1.5, 0.005, 180)])).toBe(true);
    expect(doOverlap([arc, pose(0, 0, 180)], [thin, pose(0.5, -0.005)])).toBe(false);
    expect(doOverlap([arc, pose(0, 0)], [thin, pose(-0.02, -0.005)])).toBe(false);
  });

  it('overlap where one lies in the other, but not in its hollow or its mouth', () => {
    const small = box(0.05, 0.05);
    const ring = sector(0.3, 0.5, 300);
    expect(doOverlap([ring, pose(0, 0)], [small, pose(0.38, 0)])).toBe(true);
    expect(doOverlap([small, pose(0.38, 0)], [ring, pose(0, 0)])).toBe(true);
    expect(doOverlap([ring, pose(0, 0)], [small, pose(0, 0)])).toBe(false);
    expect(doOverlap([ring, pose(0, 0)], [small, pose(-0.42, -0.02)])).toBe(false);
    expect(doOverlap([ring, pose(0, 0, 180)], [small, pose(-0.42, -0.02)])).toBe(true);
    // A disc in the hollow, clear of it by a tenth of its radius and then over it by as much.
    const disc = sector(0, 0.2, 350);
    expect(doOverlap([ring, pose(0, 0)], [disc, pose(0.08, 0)])).toBe(false);
    expect(doOverlap([ring, pose(0, 0)], [disc, pose(0.12, 0)])).toBe(true);
  });

  it('do not overlap where they are a billionth of a meter apart, and do where they share as much', () => {
    const square = box(0.3, 0.3);
    for (const [by, expected] of [
      [1e-9, false],
      [-1e-9, true],
    ] as const) {
      expect(doOverlap([square, pose(0, 0)], [square, pose(0.3 + by, 0.1)])).toBe(expected);
      expect(doOverlap([square, pose(0, 0)], [sector(0, 0.2, 90), pose(0.5 + by, 0.15, 180)])).toBe(expected);
      expect(doOverlap([sector(0, 0.3, 90), pose(0, 0)], [sector(0, 0.2, 90), pose(0.5 + by, 0, 180)])).toBe(expected);
      expect(doOverlap([sector(0.3, 0.4, 90), pose(0, 0)], [sector(0, 0.2, 90), pose(0.1 - by, 0)])).toBe(expected);
    }
  });

  it('are only looked at where one of them is among the first so many', () => {
    const laid = [pose(0, 0), pose(2, 0), pose(2.1, 0.1)].map((at) => layAt(box(0.5, 0.5), at));
    expect([0, 1, 2, 3].map((count) => overlaps(laid, count))).toEqual([false, false, true, true]);
  });
});

describe('pieces deep in each other', () => {
  const reach = 0.05;
  const isDeep = (...pieces: readonly (readonly [Piece, Pose])[]) => {
    const laid = pieces.map(([piece, at]) => layAt(piece, at));
    return overlapsDeeply(laid, nearPlaces(laid, laid.length, 2, 2, reach));
  };
  const strip = box(1, 0.2);

  it('are those whose overlap no near place tells of', () => {
    expect(isDeep([strip, pose(0, 0.5)], [strip, pose(0.6, 0, 90)])).toBe(true);
    expect(isDeep([strip, pose(0, 0.5)], [strip, pose(0.01, 0.69)])).toBe(false);
    expect(isDeep([strip, pose(0, 0.5)], [strip, pose(0.01, 0.71)])).toBe(false);
    expect(isDeep([box(0.9, 0.9), pose(0, 0)], [box(0.1, 0.1), pose(0.4, 0.4)])).toBe(true);
    // Its end is near an edge that it has passed, which tells of no overlap.
    expect(isDeep([strip, pose(0, 0.5)], [box(0.71, 0.2), pose(0.6, 0, 90)])).toBe(true);
  });

  it('are told from others that overlap a little at the same piece', () => {
    const [one, little, deep] = [
      [strip, pose(0, 0.5)],
      [strip, pose(0.01, 0.69)],
      [strip, pose(0.6, 0, 90)],
    ] as const;
    expect(isDeep(one, little, [box(0.1, 0.1), pose(1.5, 0)])).toBe(false);
    // Only the places of the one piece tell of the small box, whichever numbers they have.
    const small = [box(0.1, 0.1), pose(0.4, 0.69)] as const;
    const far = [box(0.1, 0.1), pose(1.5, 0)] as const;
    expect([isDeep(one, small), isDeep(far, one, small), isDeep(one, far, small)]).toEqual([false, false, false]);
    expect(isDeep(one, little, deep)).toBe(true);
    expect(isDeep(deep, little, one)).toBe(true);
  });
});
