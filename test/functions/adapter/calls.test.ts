import { describe, expect, it } from 'vitest';
import type { CatalogueRow } from '../../../src/catalogue/define';
import { Refusal } from '../../../src/formulas/refusal';
import { adapt, argumentNames, takesHeadings } from '../../../src/functions/adapter';
import { CellError } from '../cell-error';

const meaning = 'a test';
const rowOf = (row: Pick<CatalogueRow, 'arguments' | 'result' | 'compute'> & { units?: false }): CatalogueRow => ({
  name: 'TEST',
  summary: meaning,
  sources: [meaning],
  example: { formula: '=SILT.TEST()', gives: '1' },
  ...row,
});
const dimension = { kind: 'dimension', meaning } as const;
const word = { choice: ['fit', 'inside'], default: 'fit', meaning } as const;
const made = (row: CatalogueRow) => adapt(row, (code, message) => new CellError(code, message));

/** A function of a length, a word and a second length that may be left out. */
const lengths = (compute: CatalogueRow['compute'], result: CatalogueRow['result'] = { scalar: 'number' }) =>
  made(rowOf({ arguments: { top: dimension, word, low: { ...dimension, optional: true } }, result, compute }));
const refusing = (...refusal: ConstructorParameters<typeof Refusal>) =>
  lengths(() => {
    throw new Refusal(...refusal);
  });

function says(call: () => unknown): string {
  try {
    return JSON.stringify(call());
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    return `${error.code} ${error.message}`;
  }
}

describe('the arguments of a function', () => {
  const one = lengths(({ top }) => top);

  it('are named with the profile before and the headings behind', () => {
    const row = rowOf({ arguments: { top: dimension }, result: { row: {} }, compute: () => ({}) });
    expect(argumentNames(row)).toEqual(['units', 'top', 'headings']);
    expect(argumentNames({ ...row, units: false, result: { scalar: 'number' } })).toEqual(['top']);
    const results = [{ rows: {} }, { lines: true }, { grid: true }, { text: true }] as const;
    expect(results.map((result) => takesHeadings({ ...row, result }))).toEqual([true, true, false, false]);
  });

  it('are at most so many, but for blanks and the object that Excel adds', () => {
    for (const more of [[], [null], [undefined, null], [{ invocation: true }]])
      expect(one('metric', 1000, '', '', ...more)).toEqual([[1]]);
    for (const more of [[5], [[[5]]], [null, 5], [{}, {}], [null, {}]])
      expect(says(() => one('metric', 1000, '', '', ...more))).toBe(
        '#VALUE! SILT.TEST takes at most 4 arguments: units, top, word, low',
      );
  });

  it('take a profile as text or one cell, and no range of them', () => {
    expect(one([['US']], '1 m')).toEqual([[1]]);
    expect(says(() => one([['US'], ['US']], 1))).toBe(
      '#VALUE! units: a range is not allowed; put "US", "metric" or the cell SiltUnits first',
    );
    expect(says(() => one({ code: '#REF!' }, 1))).toBe('#REF! ');
    expect(says(() => one(null, 1))).toContain('blank is not a profile');
    expect(says(() => one('metric', 1, [['fit', 'fit']]))).toBe('#VALUE! word: a range is not allowed; give one word');
  });

  it('take headings as a truth value, a number or a word', () => {
    const row = lengths(({ top }) => ({ top }), { row: { top: { kind: 'dimension' } } });
    const heads = (value: unknown) => row('metric', 1000, '', '', value).length === 2;
    for (const yes of [true, 1, -1, 'TRUE', ' true ', [[true]]]) expect(heads(yes)).toBe(true);
    for (const no of [false, 0, '', ' ', null, 'False', [[false]]]) expect(heads(no)).toBe(false);
    expect(says(() => heads('x'.repeat(50)))).toBe(
      `#VALUE! headings: "${'x'.repeat(40)}" is not allowed; give TRUE or FALSE`,
    );
    expect(row('metric', [[1000], [2000]], '', '', true)).toEqual([['top (mm)'], [1000], [2000]]);
    expect(row('metric', [[1000, 2000]])).toEqual([[1000], [2000]]);
  });
});

describe('the refusal of a formula', () => {
  it('says what was given, in the profile of the user, and what is allowed', () => {
    const small = refusing('top', 'give more than {low}', { figures: { low: 0.5 } });
    expect(says(() => small('metric', 100))).toBe('#VALUE! top: 100 mm is not allowed; give more than 500 mm');
    expect(says(() => small('metric', '4 in'))).toBe('#VALUE! top: 4 in is not allowed; give more than 500 mm');
  });

  it('is #N/A where no figure is known', () => {
    const unknown = refusing('top', 'give less', { reason: 'unavailable' });
    expect(says(() => unknown('metric', 100))).toBe('#N/A top: 100 mm is not covered; give less');
    expect(says(() => refusing('', 'not known', { reason: 'unavailable' })('metric', 100))).toBe('#N/A not known');
  });

  it('does not repeat a word or a blank, and may name no argument', () => {
    expect(says(() => refusing('word', 'give another')('metric', 100, 'inside'))).toBe('#VALUE! word: give another');
    expect(says(() => refusing('low', 'give one')('metric', 100))).toBe('#VALUE! low: give one');
    expect(says(() => refusing('other', 'give one')('metric', 100))).toBe('#VALUE! other: give one');
    expect(says(() => refusing('', 'give one')('metric', 100))).toBe('#VALUE! give one');
  });

  it('with a figure that is none is said of the arguments given', () => {
    const endless = refusing('top', 'give {low}', { figures: { low: Number.NaN } });
    expect(says(() => endless('metric', 1))).toMatch(/^#VALUE! top: these numbers are too large or too small/);
    expect(says(() => endless('metric', 1, 'fit', 1))).toMatch(/^#VALUE! top or low: these numbers/);
  });
});

describe('a result that is no number', () => {
  it('names the arguments that were given, or all where none was', () => {
    const none = { arguments: { top: { ...dimension, default: 1 }, word, low: { ...dimension, default: 1 } } };
    const call = made(rowOf({ ...none, result: { scalar: 'number' }, compute: () => Number.NaN }));
    expect(says(() => call('metric', '', '', 5))).toMatch(/^#VALUE! low: these numbers/);
    expect(says(() => call('metric'))).toMatch(/^#VALUE! top, word or low: these numbers/);
  });

  it('and a fault of ours are said as such', () => {
    const throwing = (fault: unknown) =>
      lengths(() => {
        throw fault;
      });
    const report = 'this is a fault in Siltstead, please report it: ';
    expect(says(() => throwing(new RangeError('x'.repeat(200)))('metric', 1))).toBe(
      `#VALUE! ${report}${'x'.repeat(150)}`,
    );
    expect(says(() => throwing('a word')('metric', 1))).toBe(`#VALUE! ${report}a word`);
    expect(says(() => throwing(new CellError('#N/A', 'own'))('metric', 1))).toBe(`#VALUE! ${report}own`);
  });
});

describe('ranges', () => {
  it('are refused where one value gives several rows, with the argument that has one', () => {
    for (const result of [{ rows: {} }, { lines: true }, { grid: true }] as const)
      expect(says(() => lengths(() => [], result)('metric', 1, '', [[1, 2]]))).toBe(
        '#VALUE! low: a range is not allowed here, because the result has several rows; give one value',
      );
  });

  it('leave blank only the cells where every range is blank', () => {
    const sum = lengths(({ top, low }) => Number(top) + Number(low ?? 0));
    expect(sum('metric', [[1000], ['']], '', [[1000], [null]])).toEqual([[2], ['']]);
    const [, [second] = []] = sum('metric', [[1000], ['']], '', [[''], [1000]]);
    expect((second as CellError).message).toBe('top: blank is not allowed; give a length in mm');
    expect(sum('metric', 1000, '', [[''], [1000]])).toEqual([[''], [2]]);
  });

  it('of a table are not spread, and are not named where others are too large', () => {
    const table = { table: { length: { kind: 'dimension' } }, meaning } as const;
    const call = made(rowOf({ arguments: { table, top: dimension }, result: { scalar: 'number' }, compute: () => 1 }));
    expect(call('metric', [[1], [2], [3]], 5)).toEqual([[1]]);
    expect(call('metric', [[1], [2], [3]], [[5], [6]])).toEqual([[1], [1]]);
    const many = Array.from({ length: 1001 }, () => new Array(1000).fill(''));
    expect(says(() => call('metric', [[1], [2]], many))).toBe(
      '#VALUE! top: the result would be 1001000 values; give smaller ranges',
    );
    const stacked = made(rowOf({ arguments: { table, top: dimension }, result: { row: {} }, compute: () => ({}) }));
    expect(says(() => stacked('metric', [[1], [2]], many))).toContain('top: ranges of 1001 rows and 1000 columns do');
  });
});

describe('an error in a cell of a grid', () => {
  it('is the host’s own in its place', () => {
    const fault = Object.assign(new Error('bad'), { code: '#N/A' });
    const [[error, figure] = []] = lengths(() => [[fault, 1]], { grid: true })('metric', 1);
    expect(error).toBeInstanceOf(CellError);
    expect(figure).toBe(1);
  });
});
