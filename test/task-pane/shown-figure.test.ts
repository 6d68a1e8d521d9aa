import { describe, expect, test } from 'vitest';
import { isAsTyped, shownFigure } from '../../src/task-pane/shown-figure';

describe('a figure in a field', () => {
  test.each([
    // Computed: the diameter of a girth of 72 in and a wall of 1/8 in, in either profile, and in other units.
    ['22.66831180523293', '22.67'],
    ['575.7751198529164', '575.8'],
    ['0.5757751198529164', '0.5758'],
    ['1.8890259837694108', '1.889'],
    ['-0.0000012345678', '-0.000001235'],
    // The places before the point are never rounded away.
    ['1234567.0000001', '1234567'],
    // Typed: nothing of it is lost, down to sixty-fourths of an inch.
    ['22.984375', '22.984375'],
    ['22 1/2 in', '22 1/2 in'],
    ['12345678901', '12345678901'],
    ['2027-03-20 09:00', '2027-03-20 09:00'],
    ['', ''],
  ])('%s is shown as %s', (figure, shown) => {
    expect(shownFigure(figure)).toBe(shown);
  });

  test('is as typed unless it has no end', () => {
    expect([22.984375, 0.125, 1830, 22 + 1 / 3].map(isAsTyped)).toEqual([true, true, true, false]);
  });
});
