import { describe, expect, it } from 'vitest';
import { define } from '../../src/catalogue/define';
import { Refusal } from '../../src/formulas/refusal';
import { type Adapted, adapt } from '../../src/functions/adapter';
import { CellError } from './cell-error';

const frustum = define({
  name: 'TEST.FRUSTUM',
  summary: 'Two results of three lengths.',
  arguments: {
    top: { kind: 'dimension', above: 0, meaning: 'top' },
    bottom: { kind: 'dimension', atLeast: 0, meaning: 'bottom' },
    pieces: { kind: 'count', atLeast: 1, whole: true, default: 1, meaning: 'pieces' },
    measured: { choice: ['fit', 'inside', 'outside'], default: 'fit', meaning: 'measured' },
  },
  result: { row: { difference: { kind: 'dimension' }, ratio: { kind: 'number' } } },
  compute: ({ top, bottom, pieces }) => {
    if (bottom > top) {
      throw new Refusal('bottom', 'give a length from 0 up to top ({top})', { figures: { top } });
    }
    return { difference: top - bottom, ratio: bottom / top / pieces };
  },
  sources: ['a test'],
  example: { formula: '=SILT.TEST.FRUSTUM("US",2,1)', gives: '1' },
});

const ratio = define({
  name: 'TEST.RATIO',
  summary: 'One over a length squared.',
  arguments: { length: { kind: 'dimension', above: 0, meaning: 'length' } },
  result: { scalar: 'number' },
  compute: ({ length }) => 1 / (length * length),
  sources: ['a test'],
  example: { formula: '=SILT.TEST.RATIO("US",2)', gives: '388' },
});

const total = define({
  name: 'TEST.TOTAL',
  summary: 'The sum of a table of lengths.',
  arguments: { table: { table: { name: { text: true }, length: { kind: 'dimension', above: 0 } }, meaning: 'rows' } },
  result: { rows: { name: { text: true }, row: { kind: 'count' } } },
  compute: ({ table }) => table.map((line, i) => ({ name: line.name, row: i })),
  sources: ['a test'],
  example: { formula: '=SILT.TEST.TOTAL("US",A1:B3)', gives: 'rows' },
});

const makeError = (code: string, message: string) => new CellError(code, message);
const frustumCall = adapt(frustum, makeError);
const ratioCall = adapt(ratio, makeError);
const totalCall = adapt(total, makeError);

function outcomeOf(implementation: Adapted, ...values: unknown[]): string {
  try {
    implementation(...values);
    return '';
  } catch (error) {
    return error instanceof CellError ? `${error.code} ${error.message}` : `raw ${error}`;
  }
}

describe('the adapter reads arguments', () => {
  it('takes single cells, one-cell blocks and omitted options alike', () => {
    expect(frustumCall('US', 2, 1)).toEqual(frustumCall('US', [[2]], [[1]], null, null, null, { invocation: true }));
  });

  it('reads text in its own unit whatever the profile', () => {
    expect(frustumCall('US', '50.8 mm', '1 in')[0]![0]).toBeCloseTo(1, 12);
    expect(frustumCall('metric', '2 in', 25.4)[0]![0]).toBeCloseTo(25.4, 12);
  });

  it('names the argument, what was given and what is allowed', () => {
    expect(outcomeOf(frustumCall, 'US', 22.5, 24)).toBe(
      '#VALUE! bottom: 24 in is not allowed; give a length from 0 up to top (22.5 in)',
    );
    expect(outcomeOf(frustumCall, 'US', -3, 1)).toBe(
      '#VALUE! top: -3 in is not allowed; give a length of more than 0 in',
    );
    expect(outcomeOf(frustumCall, 'US', 0, 1)).toContain('top: 0 or blank is not allowed');
    expect(outcomeOf(frustumCall, 'US', null, 1)).toContain(
      'top: blank is not allowed; give a length of more than 0 in',
    );
    expect(outcomeOf(frustumCall, 'US', 2, 1, 2.5)).toContain('pieces: 2.5 is not allowed; give a whole number');
    expect(outcomeOf(frustumCall, 'US', 2, 1, 1, 'insde')).toContain(
      'measured: "insde" is not allowed; give fit, inside or outside',
    );
  });

  it('says what a number where the profile belongs means', () => {
    expect(outcomeOf(frustumCall, 22.5, 4, 9)).toBe(
      '#VALUE! 22.5 is not a profile; put "US", "metric" or the cell SiltUnits first',
    );
  });

  it('refuses arguments beyond the last, but not the object that Excel adds', () => {
    expect(outcomeOf(ratioCall, 'US', 1, 2)).toContain('takes at most 2 arguments: units, length');
    expect(outcomeOf(ratioCall, 'US', 1, {})).toBe('');
  });

  it('gives a message instead of a number that is not finite', () => {
    expect(outcomeOf(ratioCall, 'metric', 1e-200)).toBe(
      '#VALUE! length: these numbers are too large or too small to compute with; check their units',
    );
  });

  it('reads a range of nothing as a blank, and says what a cell of another sort is not', () => {
    expect(outcomeOf(ratioCall, 'US', [[]])).toContain('length: blank is not allowed');
    expect(outcomeOf(ratioCall, 'US', { type: 'Entity', basicType: 'Error' })).toContain(
      'length: something that is neither a number nor',
    );
    expect(ratioCall('metric', { type: 'Entity', text: '1 m' })).toEqual([[1]]);
  });
});

describe('the adapter spreads over ranges', () => {
  it('gives one value a cell for a scalar function', () => {
    const block = ratioCall('metric', [
      [1000, 2000],
      [4000, 5000],
    ]);
    expect(block.map((line) => line.length)).toEqual([2, 2]);
    expect(block[0]).toEqual([1, 0.25]);
  });

  it('stacks rows, leaving blank rows blank and good rows whole beside a bad one', () => {
    const block = frustumCall('US', [[2], [''], [1], [4]], [[1], [null], [3], [1]]);
    expect(block).toHaveLength(4);
    expect(block[0]).toEqual([expect.closeTo(1, 12), 0.5]);
    expect(block[1]).toEqual(['', '']);
    expect(block[2]![0]).toBeInstanceOf(CellError);
    expect((block[2]![0] as CellError).message).toContain('bottom: 3 in is not allowed');
    expect(block[2]![1]).toBe('');
    expect(block[3]![1]).toBe(0.25);
  });

  it('pairs cells as spreadsheet arrays do: row with column, one with many, cell with cell', () => {
    const product = define({
      name: 'TEST.PRODUCT',
      summary: 'One number and a second one.',
      units: false,
      arguments: { first: { kind: 'number', meaning: 'first' }, second: { kind: 'number', meaning: 'second' } },
      result: { scalar: 'number' },
      compute: ({ first, second }) => 100 * first + second,
      sources: ['a test'],
      example: { formula: '=SILT.TEST.PRODUCT(1,2)', gives: '102' },
    });
    const call = adapt(product, makeError);
    const grid = [
      [1, 2, 3],
      [4, 5, 6],
    ];
    const row = [[7, 8, 9]];
    const column = [[7], [8]];
    expect(call(row, column)).toEqual([
      [707, 807, 907],
      [708, 808, 908],
    ]);
    expect(call(column, row)).toEqual([
      [707, 708, 709],
      [807, 808, 809],
    ]);
    expect(call(grid, row)).toEqual([
      [107, 208, 309],
      [407, 508, 609],
    ]);
    expect(call(column, grid)).toEqual([
      [701, 702, 703],
      [804, 805, 806],
    ]);
    expect(call(grid, 5)).toEqual([
      [105, 205, 305],
      [405, 505, 605],
    ]);
    expect(call(grid, grid)[1]).toEqual([404, 505, 606]);
    expect(outcomeOf(call, grid, [[1], [2], [3]])).toContain('second: 3 rows do not fit the 2 rows');
    expect(outcomeOf(call, grid, [[1, 2]])).toContain('second: 2 columns do not fit the 3 columns');
  });

  it('gives a million values or ten thousand stacked rows, and says so where it would be more', () => {
    const column = (count: number) => Array.from({ length: count }, () => ['']);
    expect(ratioCall('metric', column(1_000_000)).length).toBe(1_000_000);
    expect(outcomeOf(ratioCall, 'metric', column(1_000_001))).toBe(
      '#VALUE! length: the result would be 1000001 values; give smaller ranges',
    );
    expect(frustumCall('metric', column(10_000), 1).length).toBe(10_000);
    expect(outcomeOf(frustumCall, 'metric', column(10_001), 1)).toContain('top: the result would be 10001 values');
    const lengths = (count: number) => Array.from({ length: count }, (_, i) => [`a${i}`, 1]);
    expect(totalCall('metric', lengths(10_000)).length).toBe(10_000);
    expect(outcomeOf(totalCall, 'metric', lengths(10_001))).toBe(
      '#VALUE! table: the result would be 10001 rows; the limit is 10000, so ask for fewer',
    );
  });

  it('combines a column with a single value and refuses sizes that do not fit', () => {
    expect(frustumCall('US', [[2], [4]], 1)).toHaveLength(2);
    expect(outcomeOf(frustumCall, 'US', [[2], [4]], [[1], [1], [1]])).toContain('bottom: 3 rows do not fit the 2 rows');
    expect(outcomeOf(frustumCall, 'US', [[2], [4]], [[1, 1]])).toContain(
      'top or bottom: ranges of 2 rows and 2 columns do not stack',
    );
  });

  it('passes an error in a cell on as what it is', () => {
    const bad = { code: '#DIV/0!', message: '' };
    const block = ratioCall('metric', [[1000], [bad]]);
    expect((block[1]![0] as CellError).code).toBe('#DIV/0!');
    expect(outcomeOf(ratioCall, 'metric', [[bad]])).toContain('#DIV/0!');
    expect(outcomeOf(ratioCall, 'metric', { type: 'Error', basicValue: '#N/A', basicType: 'Error' })).toContain('#N/A');
  });

  it('puts a heading row with units on top when asked', () => {
    expect(frustumCall('US', 2, 1, null, null, true)[0]).toEqual(['difference (in)', 'ratio']);
    expect(outcomeOf(frustumCall, 'US', 2, 1, null, null, 'yes')).toContain('headings: "yes" is not allowed');
  });
});

describe('the adapter reads tables', () => {
  it('skips a heading row and blank rows and ignores columns to the right', () => {
    const block = totalCall('US', [
      ['drum', 'length (in)', ''],
      ['a', 2, 'x'],
      ['', '', ''],
      ['b', '3 1/2 in', 9],
    ]);
    expect(block.map(([name]) => name)).toEqual(['a', 'b']);
  });

  it('names the row and the column at fault', () => {
    expect(
      outcomeOf(totalCall, 'US', [
        ['a', 2],
        ['b', -1],
      ]),
    ).toContain('table: row 2, length: -1 in is not allowed');
    expect(outcomeOf(totalCall, 'US', 5)).toContain('table: 5 is not allowed; give rows of name, length');
    expect(outcomeOf(totalCall, 'US', [['', '']])).toContain('table: no rows were given');
  });
});
