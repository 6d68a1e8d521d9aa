/** Marks of a piece: which there are, where they lie, and what a tape reads between them. */
import { describe, expect, it } from 'vitest';
import { type ConeMark, coneMarks } from '../../../src/formulas/cone/cone-marks';
import type { RectanglePiece, SectorPiece } from '../../../src/formulas/cut/piece';

const degree = Math.PI / 180;
const names = (marks: readonly ConeMark[]) =>
  marks.filter(({ mark }) => !mark.startsWith('check')).map(({ mark }) => mark);
const named = (marks: readonly ConeMark[], mark: string): ConeMark => marks.find((one) => one.mark === mark)!;

/** A third of a ring, 0.2 to 0.5 m. */
const third: SectorPiece = { shape: 'sector', innerRadius: 0.2, outerRadius: 0.5, angle: 120 * degree, lap: 0 };
const sheet: RectanglePiece = { shape: 'rectangle', length: 0.8, width: 0.3, lap: 0 };

describe('marks of a sector', () => {
  it('stand at each step, at both edges, and once where the last step meets the edge', () => {
    const steps = ['first edge', 'mark 1', 'mark 2', 'mark 3', 'last edge'];
    expect(names(coneMarks(third, 30 * degree))).toEqual(steps);
    expect(names(coneMarks(third, 35 * degree))).toEqual(steps);
    expect(names(coneMarks(third, 120 * degree))).toEqual(['first edge', 'last edge']);
    expect(names(coneMarks(third, 200 * degree))).toEqual(['first edge', 'last edge']);
    const turns = coneMarks(third, 35 * degree).map(({ angle }) => angle && Math.round(angle / degree));
    expect(turns).toEqual([0, 35, 70, 105, 120, ...[undefined, undefined, undefined, undefined]]);
  });

  it('lie where polar coordinates say: a third of a ring has its outer corners at the ends of its blank', () => {
    const marks = coneMarks(third, 60 * degree);
    const half = 0.5 * Math.sin(60 * degree);
    const low = 0.2 * Math.cos(60 * degree);
    for (const [mark, x, turned] of [
      ['first edge', 2 * half, 60],
      ['mark 1', half, 0],
      ['last edge', 0, -60],
    ] as const) {
      const { outerX, outerY, innerX, innerY } = named(marks, mark);
      expect(outerX).toBeCloseTo(x, 12);
      expect(outerY).toBeCloseTo(0.5 * Math.cos(turned * degree) - low, 12);
      expect(innerX).toBeCloseTo(half + 0.2 * Math.sin(turned * degree), 12);
      expect(innerY).toBeCloseTo(0.2 * Math.cos(turned * degree) - low, 12);
    }
  });

  it('are at 0, not near it, on the edges of the blank', () => {
    const marks = coneMarks(third, 60 * degree);
    expect(named(marks, 'last edge').outerX).toBe(0);
    expect(named(marks, 'first edge').innerY).toBe(0);
    expect(named(marks, 'last edge').innerY).toBe(0);
  });

  it('show the foot of a wide lap on the inner circle, square to the lap line', () => {
    const marks = coneMarks({ ...third, lap: 0.25 }, 60 * degree);
    const { innerX: x, innerY: y, outerX } = named(marks, 'lap foot');
    expect(outerX).toBeUndefined();
    const [first, line] = [named(marks, 'first edge'), named(marks, 'lap line')];
    // Both edges run through the middle of the circles, two thirds of the way from the inner mark to the outer one behind it.
    const middle = (mark: ConeMark) => [
      mark.innerX! - ((mark.outerX! - mark.innerX!) * 2) / 3,
      mark.innerY! - ((mark.outerY! - mark.innerY!) * 2) / 3,
    ];
    const [cx, cy] = middle(line) as [number, number];
    expect(middle(first)).toEqual([expect.closeTo(cx, 12), expect.closeTo(cy, 12)]);
    expect(Math.hypot(x! - cx, y! - cy)).toBeCloseTo(0.2, 12);
    const along = [line.outerX! - line.innerX!, line.outerY! - line.innerY!] as const;
    expect((x! - cx) * along[0] + (y! - cy) * along[1]).toBeCloseTo(0, 12);
    // Away from the piece.
    expect(Math.hypot(x! - first.outerX!, y! - first.outerY!)).toBeGreaterThan(0.5);
  });

  it('show the lap by its line and its edge, which lies the lap aside from it', () => {
    const marks = coneMarks({ ...third, lap: 0.03 }, 60 * degree);
    expect(names(marks)).toEqual(['first edge', 'mark 1', 'lap line', 'lap edge']);
    expect(named(marks, 'lap line').angle).toBeCloseTo(120 * degree, 12);
    const edge = named(marks, 'lap edge');
    expect(edge.angle).toBeUndefined();
    const line = named(marks, 'lap line');
    // How far the edge's outer mark lies from the line through both marks of the lap line.
    const along = [line.outerX! - line.innerX!, line.outerY! - line.innerY!] as const;
    const aside =
      (along[0] * (edge.outerY! - line.innerY!) - along[1] * (edge.outerX! - line.innerX!)) / Math.hypot(...along);
    expect(Math.abs(aside)).toBeCloseTo(0.03, 12);
    expect(Math.hypot(edge.outerX! - edge.innerX!, edge.outerY! - edge.innerY!)).toBeCloseTo(
      Math.sqrt(0.25 - 9e-4) - Math.sqrt(0.04 - 9e-4),
      12,
    );
  });

  it('show the foot of a lap that is wider than the inner radius, an inner radius aside from the apex', () => {
    expect(names(coneMarks({ ...third, lap: 0.2 }, 60 * degree))).not.toContain('lap foot');
    const marks = coneMarks({ ...third, lap: 0.21 }, 60 * degree);
    expect(names(marks).at(-1)).toBe('lap foot');
    const foot = named(marks, 'lap foot');
    expect([foot.angle, foot.outerX, foot.outerY]).toEqual([undefined, undefined, undefined]);
    const line = named(marks, 'lap line');
    // The apex lies on the lap line, as far below its inner mark as that radius.
    const apex = [
      line.innerX! - (2 / 3) * (line.outerX! - line.innerX!),
      line.innerY! - (2 / 3) * (line.outerY! - line.innerY!),
    ] as const;
    expect(Math.hypot(foot.innerX! - apex[0], foot.innerY! - apex[1])).toBeCloseTo(0.2, 12);
    const along =
      (foot.innerX! - apex[0]) * (line.outerX! - apex[0]) + (foot.innerY! - apex[1]) * (line.outerY! - apex[1]);
    expect(along).toBeCloseTo(0, 12);
  });

  it('are at most 9000 steps', () => {
    const least = third.angle / 9000;
    expect(names(coneMarks(third, least * (1 + 1e-9)))).toHaveLength(9001);
    expect(() => coneMarks(third, least * (1 - 1e-6))).toThrow(
      expect.objectContaining({
        argument: 'step',
        advice: 'give {least} or more',
        figures: { least: { value: expect.closeTo(least, 12), like: 'step' } },
      }),
    );
    expect(names(coneMarks({ ...third, angle: 2 }, 2 / 9000))).toHaveLength(9001);
  });
});

describe('marks of a rectangle', () => {
  it('are its corners, whatever the step', () => {
    const marks = coneMarks(sheet, 1e-9);
    expect(names(marks)).toEqual(['first edge', 'last edge']);
    expect(marks.slice(0, 2)).toMatchObject([
      { angle: undefined, outerX: 0.8, outerY: 0.3, innerX: 0.8, innerY: 0 },
      { angle: undefined, outerX: 0, outerY: 0.3, innerX: 0, innerY: 0 },
    ]);
  });

  it('have the lap at the left, its line as far from the edge as it is wide', () => {
    const marks = coneMarks({ ...sheet, lap: 0.02 }, 1);
    expect(names(marks)).toEqual(['first edge', 'lap line', 'lap edge']);
    expect(marks.slice(0, 3)).toMatchObject([
      { outerX: 0.8, innerX: 0.8 },
      { outerX: 0.02, outerY: 0.3, innerX: 0.02, innerY: 0 },
      { outerX: 0, outerY: 0.3, innerX: 0, innerY: 0 },
    ]);
  });
});

describe('distances to check with a tape', () => {
  const distances = (marks: readonly ConeMark[]) => marks.filter(({ mark }) => mark.startsWith('check'));

  it('of a rectangle are its two lengths and its two diagonals', () => {
    const checks = distances(coneMarks(sheet, 1));
    expect(checks.map(({ distance }) => distance)).toEqual(
      [0.8, 0.8, Math.hypot(0.8, 0.3), Math.hypot(0.8, 0.3)].map((one) => expect.closeTo(one, 12)),
    );
  });

  it('of a third of a ring are two chords and two equal diagonals', () => {
    const checks = distances(coneMarks(third, 1));
    const chord = (radius: number) => 2 * radius * Math.sin(60 * degree);
    // Law of cosines, 120 degrees between the sides.
    const diagonal = Math.sqrt(0.25 + 0.04 + 0.1);
    expect(checks).toEqual(
      [
        ['check: outer corner to outer corner', chord(0.5)] as const,
        ['check: inner corner to inner corner', chord(0.2)] as const,
        ['check: first edge outer to last edge inner', diagonal] as const,
        ['check: last edge outer to first edge inner', diagonal] as const,
      ].map(([mark, distance]) => ({
        ...{ mark, angle: undefined, outerX: undefined, outerY: undefined, innerX: undefined, innerY: undefined },
        distance: expect.closeTo(distance, 12),
      })),
    );
  });

  it('run to the edge of the lap, where there is one', () => {
    const marks = coneMarks({ ...third, lap: 0.03 }, 1);
    const [first, edge] = [named(marks, 'first edge'), named(marks, 'lap edge')];
    const apart = (x: number, y: number) => expect.closeTo(Math.hypot(x, y), 12);
    expect(distances(marks).map(({ mark, distance }) => [mark, distance])).toEqual([
      [expect.any(String), apart(first.outerX! - edge.outerX!, first.outerY! - edge.outerY!)],
      [expect.any(String), apart(first.innerX! - edge.innerX!, first.innerY! - edge.innerY!)],
      ['check: first edge outer to lap edge inner', apart(first.outerX! - edge.innerX!, first.outerY! - edge.innerY!)],
      ['check: lap edge outer to first edge inner', apart(edge.outerX! - first.innerX!, edge.outerY! - first.innerY!)],
    ]);
  });

  it('leave out the foot of a wide lap, which is a corner of the lap alone', () => {
    const checks = distances(coneMarks({ ...third, lap: 0.21 }, 1));
    expect(checks.map(({ mark }) => mark).slice(2)).toEqual([
      'check: first edge outer to lap edge inner',
      'check: lap edge outer to first edge inner',
    ]);
  });
});
