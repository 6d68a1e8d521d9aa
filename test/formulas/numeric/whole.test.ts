import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeDown, wholeUp } from '../../../src/formulas/numeric/whole';

describe('whole numbers', () => {
  it('forgive what binary fractions do', () => {
    expect(wholeDown(0.29 * 100)).toBe(29);
    expect(wholeUp(27 / 0.3)).toBe(90);
    expect(wholeUp(1.1 * 3)).toBe(4);
  });

  it('do not forgive a millionth', () => {
    expect(wholeUp(2 + 1e-6)).toBe(3);
    expect(wholeDown(3 - 1e-6)).toBe(2);
  });

  it('leave whole numbers as they are, and never give -0', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (n) => {
        expect(wholeUp(n)).toBe(n);
        expect(wholeDown(n)).toBe(n);
      }),
    );
    expect(Object.is(wholeUp(0), 0)).toBe(true);
    expect(Object.is(wholeUp(1e-12), 0)).toBe(true);
  });
});
