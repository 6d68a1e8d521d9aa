import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneAngle, coneHeight, coneVolume } from '../../../src/formulas/cone/cone';
import { coneMidPlane, type Measured } from '../../../src/formulas/cone/cone-mid-plane';

const degree = Math.PI / 180;

describe('the frustum', () => {
  it('holds what the textbook frustum holds', () => {
    // Volume of a frustum, 10 and 4 across, 4 high: pi 4 (100 + 40 + 16)/12.
    expect(coneVolume(10, 4, 4)).toBeCloseTo(163.3628, 4);
  });

  it('gives back the height that its angle came from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        (top, share, height) => {
          const angle = coneAngle(top, share * top, height);
          expect(coneHeight(top, share * top, angle) / height).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('stands upright when both diameters are the same', () => {
    expect(coneAngle(0.5, 0.5, 0.3)).toBe(Math.PI / 2);
  });

  it('cannot be wider at the bottom than at the top', () => {
    expect(() => coneAngle(0.5, 0.6, 0.3)).toThrow('bottom');
    expect(() => coneVolume(0.5, 0.6, 0.3)).toThrow('bottom');
    expect(() => coneHeight(0.5, 0.5, 45 * degree)).toThrow('bottom');
  });
});

describe('the mid-plane of a measured cone', () => {
  const drum = { top: 0.5715, bottom: 0.1016, height: 0.23495, clearance: 0 };

  it('is the measured cone where the sheet has no thickness', () => {
    for (const measured of ['fit', 'inside', 'outside', 'middle'] as Measured[]) {
      const cone = coneMidPlane({ ...drum, thickness: 0, measured });
      expect(cone).toMatchObject({ top: 0.5715, bottom: 0.1016 });
      expect(cone.wallAngle / degree).toBeCloseTo(45, 12);
    }
  });

  it.each([0.001, 0.005, 0.02])('meets its own wall angle under fit, sheet of %s m', (thickness) => {
    const cone = coneMidPlane({ ...drum, thickness, measured: 'fit', clearance: 0.003 });
    const offset = thickness * Math.sin(cone.wallAngle);
    expect(Math.abs(cone.wallAngle - Math.atan2(2 * drum.height, cone.top - cone.bottom))).toBeLessThan(4e-16);
    expect(cone.top + offset).toBeCloseTo(drum.top - 0.006, 15);
    expect(cone.bottom - offset).toBeCloseTo(drum.bottom, 15);
  });

  it('lies inside an outside measure and outside an inside one by t sin a', () => {
    const outside = coneMidPlane({ ...drum, thickness: 0.002, measured: 'outside' });
    const inside = coneMidPlane({ ...drum, thickness: 0.002, measured: 'inside' });
    expect(outside.top).toBeCloseTo(0.5715 - 0.002 * Math.SQRT1_2, 12);
    expect(outside.bottom).toBeCloseTo(0.1016 - 0.002 * Math.SQRT1_2, 12);
    expect(inside.top).toBeCloseTo(0.5715 + 0.002 * Math.SQRT1_2, 12);
  });

  it('of equal bores stays a cylinder, less thickness and two clearances', () => {
    const sleeve = coneMidPlane({
      top: 0.5,
      bottom: 0.5,
      height: 0.3,
      thickness: 0.002,
      measured: 'fit',
      clearance: 0.001,
    });
    expect(sleeve).toEqual({ top: 0.496, bottom: 0.496, height: 0.3, wallAngle: Math.PI / 2 });
  });

  it('of a full cone stays a point', () => {
    for (const measured of ['fit', 'inside', 'outside'] as Measured[]) {
      const cone = coneMidPlane({ ...drum, bottom: 0, thickness: 0.002, measured });
      expect(cone.bottom).toBe(0);
      expect(cone.wallAngle).toBeCloseTo(Math.atan2(2 * drum.height, cone.top), 15);
    }
  });

  it('changes without a jump as the sheet grows, up to the thickest that makes a cone', () => {
    const angle = (thickness: number) =>
      coneMidPlane({ top: 0.5, bottom: 0.4, height: 0.3, thickness, measured: 'fit', clearance: 0 }).wallAngle;
    for (let mm = 1; mm < 50; mm++) expect(angle(mm / 1000)).toBeGreaterThan(angle((mm - 1) / 1000));
    expect(() => angle(0.0501)).toThrow('thickness');
  });

  it('cannot have a clearance or a thickness that leaves no cone', () => {
    expect(() => coneMidPlane({ ...drum, thickness: 0, measured: 'fit', clearance: 0.3 })).toThrow('clearance');
    expect(() => coneMidPlane({ ...drum, thickness: 0.4, measured: 'fit', clearance: 0 })).toThrow('thickness');
    expect(() => coneMidPlane({ ...drum, bottom: 0.001, thickness: 0.01, measured: 'outside', clearance: 0 })).toThrow(
      'thickness',
    );
  });
});
