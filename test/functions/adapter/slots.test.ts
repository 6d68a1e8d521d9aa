import { describe, expect, it } from 'vitest';
import type { Argument } from '../../../src/catalogue/argument';
import { coefficient } from '../../../src/catalogue/coefficients/all';
import { ArgumentError } from '../../../src/catalogue/reading/argument-error';
import { PassedError } from '../../../src/functions/adapter/cells';
import { type GivenSoFar, slot } from '../../../src/functions/adapter/slots';
import { readProfile } from '../../../src/units/profile';
import { Unreadable } from '../../../src/units/unreadable';

const metric = readProfile('metric');
const meaning = 'a test';

function read(spec: Argument, value: unknown, given: GivenSoFar = {}): unknown {
  try {
    return slot('it', spec).read(value, metric, given);
  } catch (error) {
    return error instanceof ArgumentError ? `${error.code} ${error.message}` : error;
  }
}

describe('a word of a list', () => {
  const choice = ['warm-water', 'cool water', 'Trout'] as const;

  it('is read in any case and spacing', () => {
    for (const typed of ['Trout', ' trout ', 'TROUT']) expect(read({ choice, meaning }, typed)).toBe('Trout');
    expect(read({ choice, meaning }, 'Cool \t water')).toBe('cool water');
    expect(read({ choice: ['1', '2'], meaning }, 2)).toBe('2');
    expect(slot('it', { choice, meaning }).broadcasts).toBe(false);
  });

  it('is its default where it is blank or the 0 of an empty cell, or absent where it is optional', () => {
    for (const blank of ['', ' ', null, undefined, 0]) {
      expect(read({ choice, default: 'Trout', meaning }, blank)).toBe('Trout');
      expect(read({ choice, optional: true, meaning }, blank)).toBeUndefined();
    }
    const words = 'give warm-water, cool water or Trout';
    expect(read({ choice, meaning }, '')).toBe(`#VALUE! it: blank is not allowed; ${words}`);
    expect(read({ choice, meaning }, 0)).toBe(`#VALUE! it: 0 or blank is not allowed; ${words}`);
    expect(read({ choice, meaning }, 'trouts')).toBe(`#VALUE! it: "trouts" is not allowed; ${words}`);
    expect(read({ choice, meaning }, 'x'.repeat(50))).toContain(`"${'x'.repeat(40)}" is`);
  });

  it('is refused with the list, up to eight of it, and the nearest of more than six', () => {
    const words = (count: number) => ['aa', 'bb', 'cc', 'dd', 'ee', 'ff', 'gg', 'hh', 'ii'].slice(0, count);
    const refusal = (count: number) => read({ choice: words(count), meaning }, 'gx');
    expect(refusal(6)).toBe('#VALUE! it: "gx" is not allowed; give aa, bb, cc, dd, ee or ff');
    expect(refusal(7)).toMatch(/; give aa, bb, cc, dd, ee, ff or gg; nearest are gg, /);
    expect(refusal(8)).toMatch(/; give aa, bb, cc, dd, ee, ff, gg or hh; nearest/);
    expect(refusal(9)).toMatch(/; give one of aa, bb, cc, dd, ee, ff, gg or hh …; nearest/);
  });
});

describe('a table', () => {
  const table = { name: { text: true }, length: { kind: 'dimension' } } as const;
  const fault = { code: '#N/A', message: '' };

  it('may be left out where it is optional', () => {
    expect(read({ table, optional: true, meaning }, '')).toBeUndefined();
    expect(read({ table, meaning }, '')).toContain('it: blank is not allowed; give rows of name, length');
    expect(read({ table, optional: true, meaning }, [['a', 1000]])).toEqual([{ row: 1, name: 'a', length: 1 }]);
    expect(slot('it', { table, meaning }).broadcasts).toBe(false);
  });

  it('keeps its faulty rows only where the function works with the others', () => {
    const rows = [
      ['a', 1000],
      ['b', fault],
    ];
    expect(read({ table, meaning }, rows)).toBeInstanceOf(PassedError);
    expect(read({ table, faulty: 'kept', meaning }, rows)).toEqual([
      { row: 1, name: 'a', length: 1 },
      { row: 2, fault: expect.any(PassedError) },
    ]);
  });
});

describe('a range that the function reads itself', () => {
  it('is rows of cells with the errors in them, and cannot be left out', () => {
    const spec = { cells: true, meaning } as const;
    expect(read(spec, [[1, ''], [null]])).toEqual([[1, ''], ['']]);
    expect(read(spec, [[1, { code: '#N/A' }]])).toEqual([[1, expect.any(PassedError)]]);
    expect(read(spec, '')).toBe('#VALUE! it: blank is not allowed; give a range');
    expect(slot('it', spec).broadcasts).toBe(false);
  });
});

describe('a cell with a reader of its own', () => {
  const spec = {
    accepts: 'a word',
    meaning,
    reader: (value: unknown) => {
      if (value === 'bad') throw new Unreadable('bad is no word');
      if (value === 'worse') throw new RangeError('ours');
      return `${value}!`;
    },
  };

  it('is read by it, and its refusal gets the name of the argument', () => {
    expect(read(spec, 'good')).toBe('good!');
    expect(read(spec, 'bad')).toBe('#VALUE! it: bad is no word');
    expect(read(spec, 'worse')).toBeInstanceOf(RangeError);
    expect(slot('it', spec).broadcasts).toBe(true);
  });

  it('has its default where it is blank, or is absent, or is missing', () => {
    expect(read({ ...spec, default: 'usual' }, ' ')).toBe('usual');
    expect(read({ ...spec, default: undefined }, '')).toBeUndefined();
    expect(read({ ...spec, optional: true }, '')).toBeUndefined();
    expect(read({ ...spec, blank: true }, '')).toBeUndefined();
    expect(read(spec, '')).toBe('#VALUE! it: blank is not allowed; give a word');
  });
});

describe('a figure', () => {
  it('is read in the unit of the profile, or stands for its default where it is blank', () => {
    const length = { kind: 'dimension', meaning } as const;
    expect(read(length, 1000)).toBe(1);
    expect(read({ ...length, default: 2 }, 1000)).toBe(1);
    expect(read({ ...length, default: 2 }, '')).toBe(2);
    expect(read({ ...length, default: 0 }, null)).toBe(0);
    expect(read({ ...length, optional: true }, '')).toBeUndefined();
    expect(read(length, '')).toBe('#VALUE! it: blank is not allowed; give a length in mm');
    expect(slot('it', length).broadcasts).toBe(true);
  });

  it('takes a default from a coefficient, or from the arguments before it', () => {
    expect(read({ kind: 'share', default: 'protein', meaning }, '')).toBe(coefficient('protein').typical);
    const twice = ({ top }: { readonly top: number }) => 2 * top;
    expect(read({ kind: 'dimension', default: twice, meaning }, '', { top: 3 })).toBe(6);
    expect(read({ kind: 'dimension', default: twice, meaning }, 1000, { top: 3 })).toBe(1);
  });

  it('refuses a bare 0 where a blank means something else, and takes it where it does not', () => {
    const days = { kind: 'days', meaning } as const;
    expect(read({ ...days, default: 86400 }, 0)).toContain('0 or blank is not allowed; type 0 days for a real 0');
    expect(read({ ...days, default: 86400 }, '0 days')).toBe(0);
    expect(read({ ...days, default: 0 }, 0)).toBe(0);
  });
});
