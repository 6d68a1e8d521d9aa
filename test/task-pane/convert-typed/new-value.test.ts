import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newValue } from '../../../src/task-pane/convert-typed/new-value';
import { isUnitless } from '../../../src/units/kind-units';
import { kinds } from '../../../src/units/kinds';
import { readProfile } from '../../../src/units/profile';
import { readQuantity } from '../../../src/units/quantity';

const [us, metric] = [readProfile('US'), readProfile('metric')];

describe('the new value of a typed number', () => {
  // The inch is 25.4 mm and the US gallon 231 cubic inches exactly (NIST Handbook 44, appendix C); 68 °F is 20 °C.
  test.each([
    ['dimension', 22.5, 571.5],
    ['volume', 1, 3.785411784],
    ['temperature', 68, 20],
    ['mass', 1, 0.45359237],
    ['price of mass', 1, 2.2046226218],
  ] as const)('of %s %d is %d', (kind, value, expected) => {
    expect(newValue(value, kind, us, metric)).toEqual({ value: expect.closeTo(expected, 9) });
  });

  test('is unchanged for text with a unit, words, TRUE, and kinds with the same unit in both', () => {
    for (const text of ['22 1/2 in', '3-1/4"', '572 mm', 'n/a', '-', '', true]) {
      expect(newValue(text, 'dimension', us, metric)).toBe('same');
    }
    expect(newValue(3, 'count', us, metric)).toBe('same');
    expect(newValue(0.32, 'share', us, metric)).toBe('same');
    expect(newValue(40, 'concentration', us, metric)).toBe('same');
    expect(newValue(0, 'dimension', us, metric)).toBe('same');
    expect(newValue('2 mg/L as NO3', 'concentration', us, readProfile('US, concentration g/L'))).toBe('same');
  });

  test('is that of the number if text is only a number', () => {
    expect(newValue('22 1/2', 'dimension', us, metric)).toEqual({ value: 571.5 });
    expect(newValue('1,250', 'volume', us, metric)).toEqual({ value: expect.closeTo(4731.76473, 6) });
  });

  test('is refused if the old profile would not read the number, or its text says too little', () => {
    expect(newValue(46_000, 'dimension', us, metric)).toEqual({ fault: expect.stringContaining('0 1/2') });
    expect(newValue('2 as NO3', 'concentration', us, readProfile('US, concentration g/L'))).toEqual({
      fault: expect.stringContaining('has no unit'),
    });
  });

  test('has the same meaning for every kind, and converts back', () => {
    const measured = kinds.filter((kind) => !isUnitless(kind));
    fc.assert(
      fc.property(fc.constantFrom(...measured), fc.double({ min: 30, max: 3000, noNaN: true }), (kind, value) => {
        const there = newValue(value, kind, us, metric);
        if (there === 'same' || !('value' in there)) return;
        const before = readQuantity(us, kind, value);
        expect(readQuantity(metric, kind, there.value)).toBeCloseTo(
          before,
          9 - Math.ceil(Math.log10(Math.abs(before) + 1)),
        );
        const back = newValue(there.value, kind, metric, us);
        if (back !== 'same' && 'value' in back) expect(back.value / value).toBeCloseTo(1, 12);
      }),
    );
  });

  test('a range without a unit is converted at both ends, one with a unit keeps its meaning', () => {
    expect(newValue('8 to 16', 'fish', us, metric)).toEqual({ range: '226.796 to 453.592 g' });
    expect(newValue('350 ± 20', 'volume', metric, us)).toEqual({ range: '87.1768 to 97.7437 gal' });
    expect(newValue('8 to 12 oz', 'fish', us, metric)).toBe('same');
    expect(newValue('0.2 to 0.4', 'share', us, metric)).toBe('same');
  });
});
