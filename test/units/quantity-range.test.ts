import { describe, expect, it } from 'vitest';
import { isRangeText, splitRange } from '../../src/units/quantity-range';

describe('ranges as they are typed', () => {
  it.each([
    ['0.2 to 0.4', '0.2', '0.4'],
    ['8 to 12 oz', '8 oz', '12 oz'],
    ['8 oz to 1 lb', '8 oz', '1 lb'],
    ['350 ± 20', '330', '370'],
    ['350 +/- 20', '330', '370'],
    ['68 ± 4 °F', '64 °F', '72 °F'],
    ['0.3 ± 0.1', '0.2', '0.4'],
    ['25 % to 30 %', '25 %', '30 %'],
    ['25 to 30 %', '25 %', '30 %'],
    ['-1 to 3', '-1', '3'],
    ['1 1/2 to 2 in', '1 1/2 in', '2 in'],
  ])('%s is from %s to %s', (typed, low, high) => {
    expect(isRangeText(typed)).toBe(true);
    const range = splitRange('number', typed);
    expect(Object.values(range).map((end) => end.replace('°f', '°F'))).toEqual([low, high]);
  });

  it.each(['0.3', 'swirl', '3-1/4 in', 'up to now', '', 'sodium bicarbonate'])('%s is not a range', (typed) => {
    expect(isRangeText(typed)).toBe(false);
  });

  it('says what a half-width must be', () => {
    expect(() => splitRange('flow', '350 ± -20')).toThrow('350 ± -20 has a half-width below 0');
    expect(() => splitRange('flow', '3 gpm ± 2 L/min')).toThrow('has two units; give both figures in one');
    expect(() => splitRange('flow', 'many ± 2')).toThrow('is not a range of flow');
  });
});
