/** Places of nearness: each kind worked by hand, and pairs by chance held to the distance of their outlines. */
import { describe, expect, it } from 'vitest';
import type { LaidPiece, Pose } from '../../../src/formulas/cut/laid-piece';
import { areBoxesNear, type Near, nearPlaces, rightEnd, sheetEdge } from '../../../src/formulas/cut/nearness';
import type { Piece } from '../../../src/formulas/cut/piece';
import { randomNumbers } from '../../../src/formulas/cut/random-numbers';
import { box, degree, layAt, outlineDistance, pairByChance, pose, sector, sharedArea } from './laid-shapes';

type At = readonly [Piece, Pose];
const lay = (...pieces: readonly At[]): readonly LaidPiece[] => pieces.map(([piece, at]) => layAt(piece, at));

/** The places between pieces, which lie far within their sheet. */
function placesOf(laid: readonly LaidPiece[], reach = 0.2, movable = laid.length): readonly Near[] {
  return nearPlaces(laid, movable, 1e6, 1e6, reach).filter(({ one }) => one >= 0);
}

const place = (one: number, other: number, numbers: readonly number[]) => {
  const [x, y, apartX, apartY, distance] = numbers.map((value) => expect.closeTo(value, 8));
  return { one, other, x, y, apartX, apartY, distance };
};

describe('a place of each kind, worked by hand', () => {
  const cases: readonly (readonly [string, At, At, ReturnType<typeof place>])[] = [
    ['a corner at a line', [box(2, 1), pose(0, 0)], [box(1, 1), pose(1, 1.1, 45)], place(0, 1, [1, 1.1, 0, 1, 0.1])],
    [
      'a corner at a corner',
      [box(1, 1), pose(0, 0)],
      [box(1, 1), pose(1.03, 1.04)],
      place(0, 1, [1.03, 1.04, 0.6, 0.8, 0.05]),
    ],
    [
      'a corner at an arc',
      [sector(0.5, 1, 90), pose(0, 0)],
      [box(1, 1), pose(1.1, 0, -45)],
      place(0, 1, [1.1, 0, 1, 0, 0.1]),
    ],
    [
      'a corner in a hollow',
      [sector(1, 2, 300), pose(0, 0)],
      [box(0.3, 0.3), pose(0.9, 0, 135)],
      place(0, 1, [0.9, 0, -1, 0, 0.1]),
    ],
    [
      'an arc at a line',
      [box(1, 2), pose(-1, -1)],
      [sector(0.5, 1, 90), pose(1.1, 0, 180)],
      place(0, 1, [0.1, 0, 1, 0, 0.1]),
    ],
    [
      'an arc in a hollow',
      [sector(1, 2, 90), pose(0, 0)],
      [sector(0, 0.5, 60), pose(0.4, 0)],
      place(0, 1, [0.9, 0, -1, 0, 0.1]),
    ],
    [
      'a corner just over a line',
      [box(2, 1), pose(0, 0)],
      [box(1, 1), pose(1, 0.99, 45)],
      place(0, 1, [1, 0.99, 0, 1, -0.01]),
    ],
    [
      'a corner just in a corner',
      [box(1, 1), pose(0, 0)],
      [box(1, 1), pose(0.97, 0.99)],
      place(0, 1, [0.97, 0.99, 0, 1, -0.01]),
    ],
  ];

  it.each(cases)('%s', (_, one, other, expected) => {
    expect(placesOf(lay(one, other))).toContainEqual(expected);
    // The other way round the names change and nothing else.
    expect(placesOf(lay(other, one))).toContainEqual({ ...expected, one: 1, other: 0 });
  });

  const large: At = [sector(0.3, 1, 90), pose(0, 0)];
  const small: At = [sector(0.2, 0.5, 90), pose(1.6, 0, 180)];

  it('an arc at an arc, which is one place for both', () => {
    expect(placesOf(lay(large, small))).toEqual([place(0, 1, [1.1, 0, 1, 0, 0.1])]);
    expect(placesOf(lay(small, large))).toEqual([place(0, 1, [1, 0, -1, 0, 0.1])]);
  });

  /** Both pieces turned about the origin together, and then moved. */
  const [cos, sin] = [Math.cos(37 * degree), Math.sin(37 * degree)];
  const turned = (x: number, y: number) => [x * cos - y * sin, x * sin + y * cos] as const;
  const carried = ([piece, { x, y, turn }]: At): At => {
    const [tx, ty] = turned(x, y);
    return [piece, { x: tx + 0.3, y: ty - 0.7, turn: turn + 37 * degree }];
  };
  const arcAtArc = ['an arc at an arc', large, small, place(0, 1, [1.1, 0, 1, 0, 0.1])] as const;
  const lines: (typeof cases)[number] = [
    'lines',
    [box(2, 1), pose(0, 0)],
    [box(1.4, 1), pose(0.3, 1.1)],
    place(0, 1, [0.3, 1.1, 0, 1, 0.1]),
  ];

  it.each([...cases, arcAtArc, lines])('the same turned and moved together: %s', (_, one, other) => {
    const found = placesOf(lay(one, other));
    const there = found.map(({ x, y, apartX, apartY, distance, ...names }) => {
      const [tx, ty] = turned(x, y);
      const [ax, ay] = turned(apartX, apartY);
      return { ...place(names.one, names.other, [tx + 0.3, ty - 0.7, ax, ay, distance]) };
    });
    const again = placesOf(lay(carried(one), carried(other)));
    expect(again).toHaveLength(found.length);
    expect(again).toEqual(expect.arrayContaining(there));
  });

  it('nothing that is no number, where a corner lies on a corner or on the center of an arc', () => {
    const corners: readonly At[] = [
      [box(1, 1), pose(0, 0)],
      [box(1, 1), pose(1, 1)],
    ];
    const center: readonly At[] = [
      [sector(0.1, 1, 90), pose(0, 0)],
      [box(1, 1), pose(0, 0, 135)],
    ];
    for (const laid of [corners, center]) {
      const numbers = placesOf(lay(...laid)).flatMap(({ x, y, apartX, apartY, distance }) => [
        x,
        y,
        apartX,
        apartY,
        distance,
      ]);
      expect(numbers.every(Number.isFinite)).toBe(true);
    }
  });

  it('no place of an arc in a hollow that it is too large for', () => {
    const hollow: At = [sector(1, 2, 90), pose(0, 0)];
    const inIt = (radius: number) =>
      placesOf(lay(hollow, [sector(0, radius, 20), pose(0.01, 0)])).filter(({ y }) => Math.abs(y) < 1e-9);
    expect(inIt(0.97)).toEqual([place(0, 1, [0.98, 0, -1, 0, 0.02])]);
    expect(inIt(1.03)).toEqual([]);
  });
});

describe('lines that face each other', () => {
  const low: At = [box(2, 1), pose(0, 0)];
  const facing = (other: At) =>
    placesOf(lay(low, other)).filter(({ one, apartY }) => one === 0 && Math.abs(apartY) > 0.9);
  const corners = (other: At) => placesOf(lay(low, other)).filter(({ one }) => one === 1);

  it('are near at both ends of the stretch that they share', () => {
    const wider = facing([box(3, 1), pose(-0.5, 1.1)]);
    expect(wider).toEqual([place(0, 1, [0, 1, 0, 1, 0.1]), place(0, 1, [2, 1, 0, 1, 0.1])].reverse());
    const beside = facing([box(3, 1), pose(0.5, 1.1)]);
    // Its own corner is near the line as well.
    expect(beside).toContainEqual(place(0, 1, [0.5, 1, 0, 1, 0.1]));
    expect(beside).toContainEqual(place(0, 1, [2, 1, 0, 1, 0.1]));
    expect(beside).toContainEqual(place(0, 1, [0.5, 1.1, 0, 1, 0.1]));
    expect(facing([box(3, 1), pose(2.1, 1.1)])).toEqual([]);
    expect(facing([box(1.9, 1), pose(-2, 1.1)])).toEqual([]);
  });

  it('end above the end of the upper one where it is turned', () => {
    const end = 0.5 + Math.cos(10 * degree);
    const upper = Math.sin(10 * degree) + 0.02;
    const out = [-Math.sin(10 * degree), Math.cos(10 * degree)];
    expect(facing([box(1, 1), pose(0.5, 1.02, 10)])).toContainEqual(
      place(0, 1, [end, 1, out[0]!, out[1]!, upper * Math.cos(10 * degree)]),
    );
  });

  it('show where they cross, with the direction out of the other one reversed', () => {
    // About (1, 1) by 2 degrees: at the left end of the lower box they are clear, at the right end they cross.
    const angle = (-2 * Math.PI) / 180;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const crossed: At = [box(3, 1), pose(1 - 1.5 * cos, 1 - 1.5 * sin, -2)];
    const ends = [place(0, 1, [0, 1, -sin, cos, sin]), place(0, 1, [2, 1, -sin, cos, -sin])];
    // At the left end the upper line is above: its distance out of the lower box is positive.
    expect(facing(crossed)).toContainEqual({ ...ends[0]!, distance: expect.closeTo(-sin, 9) });
    expect(facing(crossed)).toContainEqual({ ...ends[1]!, distance: expect.closeTo(sin, 9) });
    expect(corners(crossed).length).toBeGreaterThan(0);
  });

  it('are no place where one lies far behind the other, as the far sides of thin boxes', () => {
    const thin = placesOf(lay([box(0.03, 1), pose(0, 0)], [box(0.03, 1), pose(0.035, 0)]));
    expect(Math.min(...thin.map(({ distance }) => distance))).toBeCloseTo(0.005, 9);
    const thick = placesOf(lay([box(0.3, 1), pose(0, 0)], [box(0.3, 1), pose(0.305, 0)]));
    expect(Math.min(...thick.map(({ distance }) => distance))).toBeCloseTo(0.005, 9);
  });

  it('face no longer when they are turned by more than 14 degrees', () => {
    const turned = (degrees: number) => facing([box(0.5, 0.5), pose(0.5, 1.02, degrees)]).length;
    // Two corners near the line, and both ends of the stretch or none.
    expect([turned(13), turned(15)]).toEqual([4, 2]);
  });
});

describe('the edges of the sheet', () => {
  const at = (piece: Piece, where: Pose, reach = 0.05) => nearPlaces(lay([piece, where]), 1, 2, 1, reach);

  it('are near the corners of a box, each edge in its direction', () => {
    expect(at(box(1.9, 0.9), pose(0.01, 0.02))).toEqual(
      expect.arrayContaining([
        place(sheetEdge, 0, [0.01, 0.02, 1, 0, 0.01]),
        place(sheetEdge, 0, [0.01, 0.02, 0, 1, 0.02]),
        place(sheetEdge, 0, [0.01, 0.92, 1, 0, 0.01]),
        place(sheetEdge, 0, [1.91, 0.02, 0, 1, 0.02]),
      ]),
    );
    expect(at(box(1.9, 0.9), pose(0.01, 0.02))).toHaveLength(4);
    expect(at(box(0.5, 0.5), pose(1.49, 0.48))).toEqual(
      expect.arrayContaining([
        place(sheetEdge, 0, [1.49, 0.98, 0, -1, 0.02]),
        place(rightEnd, 0, [1.99, 0.48, -1, 0, 0.01]),
        place(rightEnd, 0, [1.99, 0.98, -1, 0, 0.01]),
      ]),
    );
    expect(at(box(0.5, 0.5), pose(0.3, 0.3))).toEqual([]);
    // Over an edge is near it.
    expect(at(box(0.5, 0.5), pose(-0.02, 0.3))).toHaveLength(2);
  });

  it('are near an arc where it reaches farthest, if it does', () => {
    const disc = sector(0, 0.4, 200);
    expect(at(disc, pose(1.59, 0.5))).toEqual([place(rightEnd, 0, [1.99, 0.5, -1, 0, 0.01])]);
    expect(at(disc, pose(0.41, 0.5, 180))).toEqual([place(sheetEdge, 0, [0.01, 0.5, 1, 0, 0.01])]);
    expect(at(disc, pose(1, 0.59, 90))).toEqual([place(sheetEdge, 0, [1, 0.99, 0, -1, 0.01])]);
    expect(at(disc, pose(1, 0.41, -90))).toEqual([place(sheetEdge, 0, [1, 0.01, 0, 1, 0.01])]);
    // The circle would reach the edge, the arc does not.
    expect(at(disc, pose(0.41, 0.5, 0))).toEqual([]);
    // Nor where its other side is near one.
    for (const degrees of [0, 90, 180, 270]) {
      const narrow = nearPlaces(lay([disc, pose(0.41, 0.41, degrees)]), 1, 0.82, 0.82, 0.05);
      const middles = new Set(narrow.map(({ x, y }) => [x, y].map((value) => Math.round(100 * value)).join()));
      // The half disk is somewhat more than half, and reaches three edges with its arc.
      const missed = { 0: '1,41', 90: '41,1', 180: '81,41', 270: '41,81' }[degrees] ?? '';
      const reached = ['1,41', '41,1', '81,41', '41,81'].filter((place) => middles.has(place));
      expect([degrees, reached.length, reached.includes(missed)]).toEqual([degrees, 3, false]);
    }
    // A hollow reaches no edge: its middle, at 0.11, is no place.
    const ring = at(sector(0.3, 0.4, 80), pose(0.41, 0.5, 180), 0.2);
    expect(ring.filter(({ y }) => Math.abs(y - 0.5) < 0.1)).toEqual([place(sheetEdge, 0, [0.01, 0.5, 1, 0, 0.01])]);
  });
});

describe('places', () => {
  it('are those nearer than the reach, of the first so many pieces', () => {
    const row = lay([box(0.3, 0.3), pose(0, 0)], [box(0.3, 0.2), pose(0.35, 0.05)], [box(0.3, 0.1), pose(0.7, 0.1)]);
    const pairs = (reach: number, movable: number) =>
      new Set(placesOf(row, reach, movable).map(({ one, other }) => [one, other].sort().join()));
    expect(pairs(0.06, 3)).toEqual(new Set(['0,1', '1,2']));
    expect(pairs(0.06, 1)).toEqual(new Set(['0,1']));
    expect(pairs(0.06, 0)).toEqual(new Set());
    expect(pairs(0.05 - 1e-9, 3)).toEqual(new Set());
    const edges = nearPlaces(row, 2, 1, 1, 0.11).filter(({ one }) => one < 0);
    expect(new Set(edges.map(({ other }) => other))).toEqual(new Set([0, 1]));
    for (const { distance } of edges) expect(distance).toBeLessThan(0.11);
  });

  it('are looked for only where boxes are nearer than the reach', () => {
    const [low] = lay([box(1, 1), pose(0, 0)]);
    for (const [x, y] of [
      [1.1, 0],
      [-1.1, 0],
      [0, 1.1],
      [0, -1.1],
    ]) {
      const [other] = lay([box(1, 1), pose(x!, y!)]);
      expect([0.05, 0.15].map((reach) => areBoxesNear(low!, other!, reach))).toEqual([false, true]);
    }
  });
});

describe('pairs by chance that do not overlap', () => {
  const reach = 0.08;
  const pairs = () => {
    const random = randomNumbers();
    return Array.from({ length: 400 }, () => pairByChance(random)).flatMap((pair) => {
      const distance = outlineDistance(pair, reach);
      return distance < reach - 1e-4 && distance > 1e-3 && sharedArea(pair) === 0 ? [{ pair, distance }] : [];
    });
  };

  it('are as far apart as at the nearest of the places', () => {
    const all = pairs();
    expect(all.length).toBeGreaterThan(30);
    for (const { pair, distance } of all) {
      const found = placesOf(
        pair.map(({ piece, pose: at }) => layAt(piece, at)),
        reach,
      );
      const nearest = Math.min(...found.map((near) => near.distance));
      expect(Math.max(...found.map((near) => near.distance))).toBeLessThan(reach);
      expect(nearest, JSON.stringify(pair)).toBeLessThan(distance + 3e-6);
      // Facing lines are held apart square to one of them, which is at most 3 % less.
      expect(nearest, JSON.stringify(pair)).toBeGreaterThan(0.97 * distance - 3e-6);
      const pointed = found.filter(({ apartX, apartY }) => Math.abs(Math.hypot(apartX, apartY) - 1) > 2e-9);
      expect(pointed).toEqual([]);
    }
  });

  it('come nearer by as much as the other one moves against the direction', () => {
    const step = 1e-4;
    for (const { pair, distance } of pairs()) {
      const laid = pair.map(({ piece, pose: at }) => layAt(piece, at));
      const nearest = placesOf(laid, reach).reduce((least, near) => (near.distance < least.distance ? near : least));
      if (Math.abs(nearest.distance - distance) > 3e-6) continue;
      const moved = pair.map(({ piece, pose: at }, i) =>
        i === nearest.other
          ? { piece, pose: { ...at, x: at.x - step * nearest.apartX, y: at.y - step * nearest.apartY } }
          : { piece, pose: at },
      );
      expect(outlineDistance(moved, reach), JSON.stringify(pair)).toBeCloseTo(distance - step, 5);
    }
  });
});
