import { describe, expect, it } from 'vitest';
import { tankCircle, tankPorts, tankStand, tankWeight } from '../../../src/formulas/tank/tank-ports';

describe('tankPorts', () => {
  it('puts the inlet a third up from the cone and the outlet a third down from the water', () => {
    const [inlet, outlet] = tankPorts(0.75, 0.2, 0.5);
    expect(inlet).toEqual({ port: 'inlet', aboveCone: 0.25, aboveFloor: 0.45, aboveGround: 0.95 });
    expect(outlet).toEqual({ port: 'outlet', aboveCone: 0.5, aboveFloor: 0.7, aboveGround: 1.2 });
  });
});

describe('tankStand', () => {
  it('lets a 14 in pail under a valve that hangs 6 in down with 2 in to spare', () => {
    expect(tankStand(14, 6, 2)).toBe(22);
  });
});

describe('tankWeight', () => {
  it('adds water, base and drum and shares them among the legs', () => {
    const { water, base, total, aLeg } = tankWeight(0.2, 0.05, 600, 10, 4);
    expect([water, base, total, aLeg]).toEqual([200, 30, 240, 60]);
  });

  it('gives the load of each of two legs that carry all, as on uneven ground', () => {
    expect(tankWeight(0.2, 0.05, 600, 10, 4).onTwo).toBe(120);
    expect(tankWeight(0.2, 0.05, 600, 10, 3).onTwo).toBe(120);
    expect(tankWeight(0.2, 0.05, 600, 10, 1).onTwo).toBe(240);
  });

  it('makes a full drum weigh about 230 kg', () => {
    expect(Math.abs(tankWeight(0.2137, 0.03, 700, 9, 4).total - 250)).toBeLessThan(10);
  });
});

describe('tankCircle', () => {
  it('spaces the holes evenly on the circle', () => {
    const holes = tankCircle(6, 0.2);
    for (const { x, y } of holes) expect(Math.hypot(x, y)).toBeCloseTo(0.1, 15);
    const chords = holes.map(({ x, y }, i) => {
      const next = holes[(i + 1) % 6]!;
      return Math.hypot(next.x - x, next.y - y);
    });
    for (const chord of chords) expect(chord).toBeCloseTo(0.1, 15);
  });

  it('numbers the holes from the right, counter-clockwise', () => {
    const holes = tankCircle(8, 2);
    expect(holes.map(({ hole }) => hole)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    for (const { hole, angle, x, y } of holes) {
      expect(angle).toBeCloseTo(((hole - 1) * Math.PI) / 4, 14);
      expect(x).toBeCloseTo(Math.cos(angle), 14);
      expect(y).toBeCloseTo(Math.sin(angle), 14);
    }
  });

  it('has no crumbs on the axes', () => {
    expect(tankCircle(4, 2).map(({ x, y }) => [x, y])).toEqual([
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ]);
  });
});
