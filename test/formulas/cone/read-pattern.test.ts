/** Which rows of a table are patterns: rounded ones are, changed ones are not, each with its reason. */
import { describe, expect, it } from 'vitest';
import { conePattern, type PatternRow } from '../../../src/formulas/cone/cone-pattern';
import { readPattern } from '../../../src/formulas/cone/read-pattern';

const degree = Math.PI / 180;
const cone = { thickness: 0, measured: 'fit', clearance: 0, pieces: 2, lap: 0.025 } as const;
const made = () => conePattern({ ...cone, top: 0.5715, bottom: 0.1016, height: 0.23495 });
const sleeve = () => conePattern({ ...cone, top: 0.5, bottom: 0.5, height: 0.3 });

/** The reason for which a changed row is refused; nothing where it is not. */
function reason(row: PatternRow, changed: Partial<PatternRow>): string {
  try {
    readPattern({ ...row, ...changed }, 'patterns', 3);
    return '';
  } catch (error) {
    const start = 'patterns: row 3 was not made with these units, or was changed since: ';
    const { message } = error as Error;
    expect(message.startsWith(start)).toBe(true);
    return message.slice(start.length);
  }
}

const blanks = 'its blank does not go with its radii, sector angle and lap';
const slants = 'its slant is not the difference of its radii';
const angles = 'its sector angle does not go with its wall angle and pieces';
const radii = 'its outer radius is not over its inner radius';
const areas = 'its area does not go with its lengths';

describe('a pattern row that is read back', () => {
  it('is the piece that was made', () => {
    const { innerRadius, outerRadius, sectorAngle } = made();
    expect(readPattern(made(), 'patterns', 1)).toEqual({
      shape: 'sector',
      innerRadius,
      outerRadius,
      angle: sectorAngle,
      lap: 0.025,
    });
    const { blankLength } = sleeve();
    expect(readPattern(sleeve(), 'patterns', 1)).toEqual({
      shape: 'rectangle',
      length: blankLength,
      width: 0.3,
      lap: 0.025,
    });
  });

  it('may have been rounded to what a rule can mark', () => {
    const pattern = made();
    const round = (x: number | undefined, to: number) => Math.round(x! / to) * to;
    const rounded = {
      slant: round(pattern.slant, 1e-4),
      innerRadius: round(pattern.innerRadius, 1e-4),
      outerRadius: round(pattern.outerRadius, 1e-4),
      sectorAngle: round(pattern.sectorAngle, 0.01 * degree),
      blankLength: round(pattern.blankLength, 1e-4),
      blankWidth: round(pattern.blankWidth, 1e-4),
      area: round(pattern.area, 1e-3),
    };
    expect(reason(pattern, rounded)).toBe('');
  });

  it('is refused when it was made under other units, which are named', () => {
    // Inches read as millimeters, square feet read as square meters.
    const pattern = made();
    const mm = (x: number | undefined) => (x! / 0.0254) * 0.001;
    const misread = {
      ...pattern,
      slant: mm(pattern.slant),
      innerRadius: mm(pattern.innerRadius),
      outerRadius: mm(pattern.outerRadius),
      blankLength: mm(pattern.blankLength),
      blankWidth: mm(pattern.blankWidth),
      lap: mm(pattern.lap),
      area: pattern.area / 0.3048 ** 2,
    };
    expect(() => readPattern(misread, 'patterns', 2)).toThrow('patterns: row 2 was not made with these units');
    expect(() => readPattern(misread, 'patterns', 2, 'US units')).toThrow('row 2 was not made with US units, or');
  });

  it.each([
    ['slant', 1.01, slants],
    ['innerRadius', 1.05, slants],
    ['outerRadius', 1.01, slants],
    ['sectorAngle', 1.01, angles],
    ['blankLength', 1.01, blanks],
    ['blankWidth', 0.99, blanks],
    ['area', 1.01, areas],
    ['wallAngle', 1.01, angles],
    ['pieces', 2, angles],
    ['lap', 1.5, blanks],
    ['lap', 40, 'its lap is wider than the piece can take'],
  ] as const)('is refused when its %s is %s times what it was', (key, factor, because) => {
    const pattern = made();
    expect(reason(pattern, { [key]: pattern[key]! * factor })).toBe(because);
  });

  it.each([
    ['blankLength', 1e-3, blanks],
    ['blankWidth', 1e-3, blanks],
    ['area', 3e-3, areas],
    ['slant', 1e-3, slants],
    ['sectorAngle', 1e-3, angles],
  ] as const)('may differ in %s by %s of it either way, and hardly more', (key, most, because) => {
    const pattern = made();
    // A blank is held to the larger of its sides, a slant to a little of the outer radius too.
    const size = { ...pattern, blankWidth: Math.max(pattern.blankLength, pattern.blankWidth) }[key]!;
    for (const way of [1, -1]) {
      expect(reason(pattern, { [key]: pattern[key]! + way * 0.99 * most * size })).toBe('');
      expect(reason(pattern, { [key]: pattern[key]! + way * 1.05 * most * size })).toBe(because);
    }
  });

  it('is refused when only some of radii and angle are blank', () => {
    const keys = ['innerRadius', 'outerRadius', 'sectorAngle'] as const;
    const partly = 'inner radius, outer radius and sector angle are all blank for a cylinder, else none of them';
    for (const key of keys) {
      expect(reason(made(), { [key]: undefined })).toBe(partly);
      expect(reason(sleeve(), { [key]: 0.3 })).toBe(partly);
    }
  });

  it('has an inner radius of 0 for a full cone, and none below 0 or up to the outer one', () => {
    const full = conePattern({ ...cone, top: 0.5, bottom: 0, height: 0.2 });
    expect(reason(full, {})).toBe('');
    expect(reason(full, { innerRadius: -1e-4, outerRadius: full.outerRadius! - 1e-4 })).toBe(radii);
    for (const more of [0, 0.01]) expect(reason(made(), { innerRadius: made().outerRadius! + more })).toBe(radii);
  });

  it('has a sector angle above 0, even where the wall stands so steep that hardly any is left', () => {
    const steep = conePattern({ ...cone, lap: 0, top: 0.5, bottom: 0.4999, height: 0.3 });
    expect(reason(steep, {})).toBe('');
    for (const sectorAngle of [0, -1e-6]) expect(reason(steep, { sectorAngle })).toBe(angles);
  });

  it('of a cylinder has an upright wall, a blank as wide as its slant, and a size', () => {
    expect(reason(sleeve(), {})).toBe('');
    for (const way of [1, -1]) {
      expect(reason(sleeve(), { wallAngle: Math.PI / 2 + way * 0.9e-3 })).toBe('');
      expect(reason(sleeve(), { wallAngle: Math.PI / 2 + way * 1.1e-3 })).toBe('a cylinder’s wall angle is 90 degrees');
      expect(reason(sleeve(), { blankWidth: 0.3 * (1 + way * 0.9e-3) })).toBe('');
      expect(reason(sleeve(), { blankWidth: 0.3 * (1 + way * 1.1e-3) })).toBe(
        'a cylinder’s blank is as wide as its slant',
      );
    }
    const none = 'its blank has no size';
    for (const blankLength of [0, -1]) expect(reason(sleeve(), { blankLength, area: 0, lap: 0 })).toBe(none);
    expect(reason(sleeve(), { blankWidth: 0, slant: 0, area: 0, lap: 0 })).toBe(none);
    expect(reason(sleeve(), { lap: 0.5 })).toBe('its lap is wider than the piece can take');
    expect(reason(sleeve(), { area: sleeve().area * 1.01 })).toBe(areas);
  });

  it('is refused where a figure is no number', () => {
    expect(reason(made(), { area: Number.NaN })).toBe(areas);
  });
});
