import { describe, expect, it } from 'vitest';
import {
  at,
  cell,
  height,
  isBlock,
  openRows,
  PassedError,
  plainRows,
  unwrap,
  width,
} from '../../../src/functions/adapter/cells';

describe('the value of an argument', () => {
  it.each([
    [5, 5],
    ['text', 'text'],
    [[5], 5],
    [[[5]], 5],
    [[[null]], null],
    [[], ''],
    [[[]], ''],
    [[[], []], ''],
  ])('%j is the single value %j', (given, value) => {
    expect(unwrap(given)).toEqual(value);
  });

  it.each([
    [[[1, 2]], [[1, 2]]],
    [
      [[1], [2]],
      [[1], [2]],
    ],
    [[1, 2], [[1, 2]]],
    [
      [[], [1]],
      [[], [1]],
    ],
  ])('%j is a block', (given, block) => {
    expect(unwrap(given)).toEqual(block);
    expect(isBlock(unwrap(given))).toBe(true);
  });

  it('is a block only if it is an array', () => {
    for (const value of [5, '', null, undefined, { length: 2 }]) expect(isBlock(value)).toBe(false);
  });
});

describe('a cell', () => {
  it.each([
    [5, 5],
    [false, false],
    ['', ''],
    [null, ''],
    [undefined, ''],
    [{ basicValue: 3 }, 3],
    [{ basicValue: false }, false],
    [{ basicValue: 'drum 1', text: 'other' }, 'drum 1'],
    [{ text: '1 m' }, '1 m'],
    [{ text: 1 }, 'something that is neither a number nor text'],
    [{}, 'something that is neither a number nor text'],
    [{ code: 'DIV/0', basicValue: 2 }, 2],
    [12n, '12'],
    ['x'.repeat(300), 'x'.repeat(300)],
  ])('%o reads as %j', (given, value) => {
    expect(cell(given)).toBe(value);
  });

  it('of any other sort is text that is cut', () => {
    const symbol = Symbol('long '.repeat(100));
    expect(cell(symbol)).toBe(String(symbol).slice(0, 255));
  });

  it.each([
    [{ code: '#N/A', message: 'no figure' }, '#N/A', 'no figure'],
    [{ code: '#DIV/0!', message: 7 }, '#DIV/0!', ''],
    [{ code: 7, basicValue: '#REF!' }, '#REF!', ''],
  ])('%o is the error in it', (given, code, message) => {
    const passed = () => cell(given);
    expect(passed).toThrow(PassedError);
    expect(passed).toThrow(expect.objectContaining({ name: 'PassedError', code, message }));
  });
});

describe('the place of a cell', () => {
  const grid = [
    [1, 2],
    [3, 4],
  ];
  it('is that of the joint shape, in which one row or column is repeated', () => {
    expect(at(7, 1, 1)).toBe(7);
    expect([at(grid, 0, 1), at(grid, 1, 0)]).toEqual([2, 3]);
    expect([at([[5, 6]], 3, 1), at([[5], [6]], 1, 3)]).toEqual([6, 6]);
    expect([at(grid, 2, 0), at(grid, 0, 2), at([[], []], 1, 0)]).toEqual([undefined, undefined, undefined]);
    expect([height(grid), width(grid), width([[1, 2, 3]]), width([])]).toEqual([2, 2, 3, 0]);
  });
});

describe('the rows of a block', () => {
  const fault = { code: '#N/A', message: '' };

  it('are plain cells, and a single value is one row', () => {
    expect(plainRows(5)).toEqual([[5]]);
    expect(openRows(5)).toEqual([[5]]);
    expect(plainRows([[1, null], [{ basicValue: 2 }]])).toEqual([[1, ''], [2]]);
    expect(openRows([[1, null], [{ basicValue: 2 }]])).toEqual([[1, ''], [2]]);
  });

  it('end with the first error, or hold it where the function can go on', () => {
    expect(() => plainRows([[1, fault]])).toThrow(PassedError);
    const [[one, error] = []] = openRows([[1, fault]]);
    expect(one).toBe(1);
    expect(error).toBeInstanceOf(PassedError);
  });

  it('hide no fault of our own', () => {
    const broken = {
      get code(): string {
        throw new RangeError('ours');
      },
    };
    expect(() => openRows([[broken]])).toThrow(RangeError);
  });
});
