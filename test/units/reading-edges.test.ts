import { describe, expect, it } from 'vitest';
import { convert } from '../../src/units/convert';
import type { Kind } from '../../src/units/kinds';
import { nearest } from '../../src/units/nearest';
import { numberAtHead } from '../../src/units/number-text';
import { readProfile } from '../../src/units/profile';
import { readQuantity, wordGiven } from '../../src/units/quantity';
import { isRangeText, splitRange } from '../../src/units/quantity-range';
import { Unreadable } from '../../src/units/unreadable';

const metric = readProfile('metric');
const read = (kind: Kind, value: unknown, atMost?: number) => readQuantity(metric, kind, value, atMost);
function refusal(call: () => unknown): string {
  try {
    return `gives ${call()}`;
  } catch (error) {
    if (error instanceof Unreadable) return error.message;
    throw error;
  }
}

describe('the number that a text begins with', () => {
  it.each([
    ['+ 5', 5, ''],
    ['5 in', 5, 'in'],
    ['1/2 in', 0.5, 'in'],
    ['5/4', 1.25, ''],
    ['4/4', 1, ''],
    ['2 3/4 in', 2.75, 'in'],
  ])('%s', (text, value, rest) => {
    expect(numberAtHead(text)).toEqual({ value, rest });
  });

  it('is none where a fraction has no value or is no part of one', () => {
    for (const text of ['5/0', '1 3/0', '22 4/4', '22 5/4']) expect(numberAtHead(text)).toBeUndefined();
  });
});

describe('a bare number at its bounds', () => {
  it('is read up to them', () => {
    expect([read('share', 3, 3), read('date', 2958465.5), read('dimension', 73051)]).toEqual([3, 2958465.5, 73.051]);
    expect(refusal(() => read('date', 2958466))).toContain('give a date');
    expect(refusal(() => read('date', 0))).toMatch(/^0 or blank is not allowed/);
    expect(refusal(() => read('date', -1))).toMatch(/^-1 is not allowed/);
    expect(refusal(() => read('dimension', 73050))).toContain('type 0 1/2');
  });

  it('is a percentage without its sign up to ten thousand', () => {
    expect(refusal(() => read('share', 10_000))).toMatch(/^10000 reads as 1000000 %/);
    expect(refusal(() => read('share', 10_001))).toBe('10001 is not allowed; give a share such as 0.32 or 32 %');
  });
});

describe('text of a quantity', () => {
  it('has two hundred signs at most, and is no word of a list', () => {
    expect(read('dimension', `1 mm${' '.repeat(196)}`)).toBe(0.001);
    expect(refusal(() => read('dimension', `1 mm${' '.repeat(197)}`))).toContain('give a dimension');
    expect(refusal(() => read('choice', '1'))).toBe('1 is not allowed; give a word from the list');
  });

  it('adds parts of smaller and smaller units', () => {
    expect(read('run', "6' 4 cm")).toBeCloseTo(1.8288 + 0.04, 14);
    expect(read('run', '6 ft 11.9 in')).toBeCloseTo(1.8288 + 11.9 * 0.0254, 14);
    expect(read('density', 'SG1.19')).toBeCloseTo(1190, 10);
  });

  it.each<[Kind, string]>([
    ['run', '6 ft 12 in'],
    ['run', '6 ft 1/0 in'],
    ['run', '6 % ft 4 in'],
    ['temperature', '68 F 30 F'],
    ['density', '5 sg 1.19'],
    ['dimension', '2026-05-01'],
  ])('of %s cannot be %s', (kind, text) => {
    expect(refusal(() => read(kind, text))).not.toMatch(/^gives/);
  });

  it('is given back with the unit of the profile where it is only a number', () => {
    const given = (value: string) => wordGiven(metric, 'dimension', value);
    expect(['1e3', '1e+10', '-.5'].map(given)).toEqual(['1e3 mm', '1e+10 mm', '-.5 mm']);
    expect(['x24', '24x', '1ex'].map(given)).toEqual(['x24', '24x', '1ex']);
    expect([given('1'.repeat(39)), given('1'.repeat(40))]).toEqual([`${'1'.repeat(39)} mm`, '1'.repeat(40)]);
  });
});

describe('a range at its edges', () => {
  it('is text with a figure, of two hundred signs at most', () => {
    for (const value of [5, null, true, ['1 to 2']]) expect(isRangeText(value)).toBe(false);
    expect([isRangeText(`1 to 2${' '.repeat(194)}`), isRangeText(`1 to 2${' '.repeat(195)}`)]).toEqual([true, false]);
  });

  it('gives its unit to the end that has none, and leaves what is no figure', () => {
    expect(splitRange('flow', 'x to 5 gpm')).toEqual({ low: 'x', high: '5 gpm' });
    expect(splitRange('flow', '5 to x')).toEqual({ low: '5', high: 'x' });
    expect(splitRange('flow', '3 gpm ± 2')).toEqual({ low: '1 gpm', high: '5 gpm' });
    expect(splitRange('flow', '3 gpm ± 2 gpm')).toEqual({ low: '1 gpm', high: '5 gpm' });
    expect(splitRange('flow', '3 ± 0')).toEqual({ low: '3', high: '3' });
    expect(refusal(() => splitRange('flow', '5 ± x'))).toContain('is not a range of flow');
    expect(refusal(() => splitRange('flow', '5'))).toContain('is not a range of flow');
  });
});

describe('an exception to a profile at its edges', () => {
  it('follows its kind after a space, a colon or an equals sign', () => {
    for (const text of ['US, flow=L/s', 'US, flow:L/s', 'US, flow : L/s', 'US,flow L/s'])
      expect(readProfile(text).units.flow.symbol).toBe('L/s');
    expect(refusal(() => readProfile('US, flowx L/s'))).toContain('flowx L/s is not an exception to a profile');
    expect(refusal(() => readProfile('US, air flwo big cfm'))).toContain('such as air flow,');
  });

  it('has a thousand signs at most', () => {
    expect(readProfile(`US${' '.repeat(998)}`).name).toBe('US');
    expect(refusal(() => readProfile(`US${' '.repeat(999)}`))).toContain('is not a profile');
  });
});

describe('a conversion that is refused', () => {
  it('says which unit says more, whichever comes first', () => {
    expect(refusal(() => convert(1, 'mg/L', 'mg/L as NO3'))).toMatch(/^mg\/L as NO3 says .* and mg\/L does not/);
  });

  it.each<[unknown, string, string]>([
    [undefined, 'in', 'blank is not a number'],
    [true, 'in', 'true is not a number'],
    ['x'.repeat(50), 'in', `${'x'.repeat(39)}… is not a number`],
    [`1${' '.repeat(199)}`, 'in', '1 is not a number'],
    [1, 'xc', 'xc is not a unit that is read'],
    [1, ' F ', 'F is a temperature'],
    [1, ' ', 'blank is not a unit'],
  ])('%j %s: %s', (value, from, words) => {
    expect(refusal(() => convert(value, from, 'mm'))).toContain(words);
  });

  it('is read up to two hundred signs', () => {
    expect(convert(`1${' '.repeat(198)}`, 'in', 'mm')).toBe(25.4);
  });
});

describe('the nearest of some words', () => {
  it('do not depend on their case, and are the shortest for a blank', () => {
    expect(nearest('ABC', ['xyz', 'abc'])[0]).toBe('abc');
    expect(nearest('', ['abc', 'a'])).toEqual(['a', 'abc']);
  });
});
