import { describe, expect, it } from 'vitest';
import { colebrook, frictionFactor, fullyTurbulentFactor } from '../../../src/formulas/pipe/friction';
import { colebrookOracle } from '../../oracles/pipe';

describe('colebrook', () => {
  it('agrees with the reference library to 1e-10', () => {
    for (const [reynolds, roughness, factor] of colebrookOracle.rows) {
      expect(Math.abs(colebrook(reynolds, roughness) / factor - 1)).toBeLessThan(1e-10);
    }
  });

  it('satisfies its own equation to 1e-10', () => {
    for (let power = 3.6; power <= 8; power += 0.2) {
      for (const e of [0, 1e-6, 1e-4, 1e-2, 0.05]) {
        const x = 1 / Math.sqrt(colebrook(10 ** power, e));
        expect((-2 * Math.log10(e / 3.7 + (2.51 * x) / 10 ** power)) / x).toBeCloseTo(1, 10);
      }
    }
  });

  it('tends to the smooth-pipe law of Prandtl, whose value at 1e5 is 0.01799 (Nikuradse 1932)', () => {
    expect(colebrook(1e5, 0)).toBeCloseTo(0.01799, 5);
  });
});

describe('frictionFactor', () => {
  it('has no jump between laminar and turbulent flow', () => {
    for (const e of [0, 1e-4, 0.05]) {
      for (const edge of [2000, 4000]) {
        const before = frictionFactor(edge * (1 - 1e-9), e);
        const after = frictionFactor(edge * (1 + 1e-9), e);
        expect(after / before).toBeCloseTo(1, 7);
      }
    }
  });

  it('is 64/Re where the flow is laminar, whatever the wall', () => {
    expect(frictionFactor(1000, 0.05)).toBe(0.064);
  });

  it('leaves 64/Re at 2000 and reaches Colebrook at 4000, on a straight line between', () => {
    for (const e of [0, 1e-3, 0.05]) {
      expect(frictionFactor(2000, e)).toBe(0.032);
      expect(frictionFactor(2010, e)).toBeGreaterThan(64 / 2010);
      expect(frictionFactor(3990, e)).not.toBeCloseTo(colebrook(3990, e), 7);
      expect(frictionFactor(4010, e)).toBe(colebrook(4010, e));
      expect(frictionFactor(3000, e)).toBeCloseTo((0.032 + colebrook(4000, e)) / 2, 15);
      expect(frictionFactor(2500, e)).toBeCloseTo(0.032 * 0.75 + colebrook(4000, e) * 0.25, 15);
    }
  });
});

describe('fullyTurbulentFactor', () => {
  it('takes clean commercial steel as 0.00015 ft rough (Moody 1944; Crane Technical Paper 410, page A-23, from memory)', () => {
    const rough = 0.00015 * 0.3048;
    for (const bore of [0.0158, 0.0525, 0.154]) {
      expect(1 / Math.sqrt(fullyTurbulentFactor(bore))).toBeCloseTo(2 * Math.log10((3.7 * bore) / rough), 12);
    }
  });

  it('is within 5 % of Crane’s table A-26, 0.027 at 1/2 in to 0.015 at 6 in', () => {
    for (const [bore, factor] of [
      [0.622, 0.027],
      [0.824, 0.025],
      [1.049, 0.023],
      [2.067, 0.019],
      [4.026, 0.017],
      [6.065, 0.015],
    ] as const) {
      expect(Math.abs(fullyTurbulentFactor(bore * 0.0254) / factor - 1)).toBeLessThan(0.05);
    }
  });
});
