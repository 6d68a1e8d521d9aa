/** Both sides of each bound on a cone, with what the refusal says and the limit that it names. */
import { describe, expect, it } from 'vitest';
import { coneAngle, coneHeight, coneVolume } from '../../../src/formulas/cone/cone';
import { coneBackfill } from '../../../src/formulas/cone/cone-backfill';
import { coneMidPlane, type MeasuredCone } from '../../../src/formulas/cone/cone-mid-plane';
import { conePattern, lapRefusal } from '../../../src/formulas/cone/cone-pattern';
import { coneRivets } from '../../../src/formulas/cone/cone-rivets';

const degree = Math.PI / 180;
const plain = { pieces: 1, lap: 0, thickness: 0, measured: 'fit', clearance: 0 } as const;

/** A refusal of an argument that names a limit. */
const refusal = (argument: string, advice: string, figures: Readonly<Record<string, unknown>>) =>
  expect.objectContaining({ argument, advice, figures });
const limit = (value: number, like: string) => ({ limit: { value: expect.closeTo(value, 12), like } });

describe('the bottom of a cone', () => {
  it('may be as wide as the top, and not wider', () => {
    const wide = refusal('bottom', 'give a length from 0 up to top ({top})', { top: 0.5 });
    for (const figure of [coneAngle, coneVolume]) {
      expect(() => figure(0.5, 0.5, 0.3)).not.toThrow();
      expect(() => figure(0.5, 0.5001, 0.3)).toThrow(wide);
    }
  });

  it('must be narrower than the top where the height is wanted', () => {
    for (const bottom of [0.5, 0.6]) {
      expect(() => coneHeight(0.5, bottom, 1)).toThrow(
        refusal('bottom', 'give a diameter from 0 to less than top ({top})', { top: 0.5 }),
      );
    }
    expect(coneHeight(0.5, 0.4, 45 * degree)).toBeCloseTo(0.05, 12);
  });
});

describe('the edge of a seam', () => {
  it('may be half the slant, with one rivet in the middle, and not more', () => {
    expect(coneRivets(1, 0.2, 0.5)).toBe(1);
    expect(() => coneRivets(1, 0.2, 0.501)).toThrow(
      refusal('edge', 'give up to half the slant ({limit})', limit(0.5, 'edge')),
    );
  });
});

describe('the drum round a cone', () => {
  const cone = { top: 0.5, bottom: 0.1, height: 0.2, thickness: 0, measured: 'fit', rise: 0 } as const;

  it('may be as wide as the cone, by a rounding, and not narrower', () => {
    expect(coneBackfill({ ...cone, drum: 0.5 * (1 - 1e-12) })).toBeGreaterThan(0);
    expect(() => coneBackfill({ ...cone, drum: 0.4999 })).toThrow(
      refusal('drum', 'give at least the cone’s outside diameter at its top ({outside})', {
        outside: { value: expect.closeTo(0.5, 12), like: 'drum' },
      }),
    );
  });

  it('must hold the sheet too of a cone that was measured inside', () => {
    const inside = { ...cone, thickness: 0.002, measured: 'inside' } as const;
    // At 45 degrees a sheet of 2 mm is 2 x 2 mm x sin 45 wider outside than inside.
    const outside = 0.5 + 0.004 * Math.SQRT1_2;
    expect(coneBackfill({ ...inside, drum: outside + 1e-6 })).toBeGreaterThan(0);
    expect(() => coneBackfill({ ...inside, drum: outside - 1e-6 })).toThrow(
      expect.objectContaining({
        argument: 'drum',
        figures: { outside: { value: expect.closeTo(outside, 12), like: 'drum' } },
      }),
    );
  });
});

describe('the lap of a piece', () => {
  const widest = 'give less than {limit}, the width of a piece';
  const round = 'give up to {limit}, or cut more pieces: a wider lap comes round to the piece’s other edge';

  it('is narrower than the radius of a half disc, and than the piece square to its edge', () => {
    const half = { ...plain, top: 12, bottom: 6, height: 3 * Math.sqrt(3) };
    for (const [pieces, most] of [
      [1, 12],
      [2, 12],
      [3, 12 * Math.sin(60 * degree)],
      [6, 6],
    ] as const) {
      expect(conePattern({ ...half, pieces, lap: most - 1e-6 }).lap).toBe(most - 1e-6);
      expect(() => conePattern({ ...half, pieces, lap: most + 1e-6 })).toThrow(
        refusal('lap', widest, limit(most, 'lap')),
      );
    }
  });

  it('is narrower than the piece of a sleeve without it', () => {
    const sleeve = { ...plain, top: 0.5, bottom: 0.5, height: 0.1, pieces: 4 };
    const most = (Math.PI * 0.5) / 4;
    expect(conePattern({ ...sleeve, lap: most - 1e-6 }).blankLength).toBeCloseTo(2 * most, 5);
    expect(() => conePattern({ ...sleeve, lap: most + 1e-6 })).toThrow(refusal('lap', widest, limit(most, 'lap')));
  });

  it('does not come round to the other edge of a piece that is nearly a ring', () => {
    const flat = { ...plain, top: 0.5, bottom: 0.1, height: 0.02 };
    const { innerRadius, sectorAngle } = conePattern(flat);
    // The inner corner of the other edge lies so far aside from the edge with the lap.
    const most = innerRadius! * Math.sin(2 * Math.PI - sectorAngle!);
    expect(conePattern({ ...flat, lap: most - 1e-9 }).lap).toBe(most - 1e-9);
    expect(() => conePattern({ ...flat, lap: most + 1e-9 })).toThrow(refusal('lap', round, limit(most, 'lap')));
    expect(conePattern({ ...flat, pieces: 2, lap: most + 1e-9 }).pieces).toBe(2);
  });

  it('is free of that up to 270 degrees, at which nothing of the piece is in its way', () => {
    const spread = (degrees: number) => {
      const cosine = degrees / 360;
      return { ...plain, top: 0.5, bottom: 0.1, height: 0.2 * Math.sqrt(1 / (cosine * cosine) - 1), lap: 0.2 };
    };
    expect(conePattern(spread(269)).sectorAngle! / degree).toBeCloseTo(269, 9);
    expect(() => conePattern(spread(271))).toThrow(expect.objectContaining({ argument: 'lap', advice: round }));
  });

  it('may just reach the other edge, and has none beside it at 270 degrees', () => {
    const sector = { shape: 'sector', innerRadius: 0.1, outerRadius: 1 } as const;
    const most = 0.1 * Math.sin(2 * Math.PI - 6);
    expect(lapRefusal({ ...sector, angle: 6, lap: most })).toBeUndefined();
    expect(lapRefusal({ ...sector, angle: 6, lap: most * (1 + 1e-9) })?.advice).toBe(round);
    expect(lapRefusal({ ...sector, angle: 1.5 * Math.PI, lap: 0.5 })).toBeUndefined();
  });

  it('cannot be exactly as wide as the piece, but none is refused on a piece without width', () => {
    const sheet = { shape: 'rectangle', width: 0.3 } as const;
    expect(lapRefusal({ ...sheet, length: 0.4, lap: 0.2 })?.advice).toBe(widest);
    expect(lapRefusal({ ...sheet, length: 0, lap: 0 })).toBeUndefined();
  });

  it('may be nothing, even where the piece is nearly a ring', () => {
    expect(conePattern({ ...plain, top: 0.5, bottom: 0.1, height: 0.001 }).lap).toBe(0);
  });
});

describe('the sheet of a cone', () => {
  const cone: MeasuredCone = { top: 0.5, bottom: 0.3, height: 0.1, thickness: 0, measured: 'fit', clearance: 0 };
  const thick = 'leaves no cone of these diameters; give less than {limit}';

  it('leaves a clearance of less than half of what top is wider than bottom', () => {
    for (const clearance of [0.1, 0.11]) {
      expect(() => coneMidPlane({ ...cone, clearance })).toThrow(
        refusal('clearance', 'give less than half of what top is wider than bottom ({limit})', limit(0.1, 'clearance')),
      );
    }
    expect(coneMidPlane({ ...cone, clearance: 0.0999 }).top).toBeCloseTo(0.3002, 12);
  });

  it.each([
    ['a sleeve', { ...cone, bottom: 0.5 }, 0.5],
    ['a sleeve with clearance', { ...cone, bottom: 0.5, clearance: 0.05 }, 0.4],
    // The rim takes one thickness and the drain another, both from the 200 mm between top and bottom.
    ['a cone that fits', cone, 0.1],
    ['a cone that ends in a point', { ...cone, bottom: 0 }, 0.5],
    // Outside, 45 degrees: the bottom closes when t sin 45 is its diameter.
    [
      'a cone measured outside',
      { ...cone, bottom: 0.01, height: 0.245, measured: 'outside' as const },
      0.01 * Math.SQRT2,
    ],
  ])('of %s is thinner than the limit that its refusal names', (_, given, most) => {
    expect(coneMidPlane({ ...given, thickness: most * 0.999 }).bottom).toBeGreaterThanOrEqual(0);
    expect(() => coneMidPlane({ ...given, thickness: most * 1.001 })).toThrow(
      refusal('thickness', thick, limit(most, 'thickness')),
    );
  });

  it('of a sleeve may not be exactly as thick as the sleeve is wide', () => {
    expect(() => coneMidPlane({ ...cone, bottom: 0.5, thickness: 0.5 })).toThrow(
      refusal('thickness', thick, limit(0.5, 'thickness')),
    );
  });

  it('of a cone measured inside or in the middle has no limit', () => {
    for (const measured of ['inside', 'middle'] as const) {
      for (const bottom of [0, 0.3])
        expect(coneMidPlane({ ...cone, bottom, measured, thickness: 1 }).top).toBeGreaterThan(0);
    }
  });

  it('lies where its own wall angle says, however it was measured', () => {
    for (const measured of ['fit', 'outside', 'inside', 'middle'] as const) {
      for (const bottom of [0, 0.05, 0.3, 0.49]) {
        for (const thickness of [0, 0.001, 0.004]) {
          for (const height of [0.01, 0.1, 1]) {
            const middle = coneMidPlane({ ...cone, bottom, height, thickness, measured });
            expect(middle.wallAngle).toBeCloseTo(Math.atan2(2 * height, middle.top - middle.bottom), 12);
            const offset = thickness * Math.sin(middle.wallAngle);
            const atTop = { fit: 1, outside: 1, inside: -1, middle: 0 }[measured];
            const atBottom = bottom === 0 ? 0 : { fit: -1, outside: 1, inside: -1, middle: 0 }[measured];
            expect(middle.top + atTop * offset).toBeCloseTo(0.5, 12);
            expect(middle.bottom + atBottom * offset).toBeCloseTo(bottom, 12);
          }
        }
      }
    }
  });

  it('has the smallest of the angles that would do, found by looking at every ten-thousandth of a radian', () => {
    for (const ratio of [0.9, 0.98, 1.02, 1.05, 1.08, 1.2]) {
      for (const height of [0.05, 0.14, 0.15, 0.16, 0.165, 0.17, 0.1715, 0.173, 0.18, 0.22]) {
        // Top is 1 m wider than bottom, and both rims together take 1 m / ratio of it when upright.
        const thickness = 0.5 / ratio;
        const angles = Array.from({ length: 15_707 }, (_, i) => (i + 1) * 1e-4);
        const first = angles.find((angle) => (1 - Math.sin(angle) / ratio) * Math.tan(angle) >= 2 * height);
        const middle = () => coneMidPlane({ ...cone, top: 2, bottom: 1, height, thickness });
        if (first === undefined) expect(middle).toThrow(refusal('thickness', thick, limit(0.5, 'thickness')));
        else expect(Math.abs(middle().wallAngle - first)).toBeLessThan(1.001e-4);
      }
    }
  });
});
