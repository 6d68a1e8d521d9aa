import { describe, expect, it } from 'vitest';
import type { CellFault, CellValue, Columns } from '../../../src/catalogue/argument';
import { patternColumns } from '../../../src/catalogue/pattern-columns';
import { ArgumentError, asArgumentError, withPlace } from '../../../src/catalogue/reading/argument-error';
import { isBlank } from '../../../src/catalogue/reading/blank';
import { headings, inWords } from '../../../src/catalogue/reading/headings';
import { readPatterns, readPlan } from '../../../src/catalogue/reading/read-patterns';
import { readTable } from '../../../src/catalogue/reading/read-table';
import { readProfile } from '../../../src/units/profile';
import { Unreadable } from '../../../src/units/unreadable';

const metric = readProfile('metric');
const columns = {
  name: { text: true },
  innerLength: { kind: 'dimension', above: 0 },
  note: { text: true, blank: true },
} as const satisfies Columns;
const fault = Object.assign(new Error('bad'), { code: '#N/A' });
type Lines = readonly (readonly (CellValue | CellFault)[])[];

function read(lines: Lines, faulty: 'refused' | 'kept' = 'refused', of: Columns = columns) {
  try {
    return readTable('log', of, lines, metric, faulty);
  } catch (error) {
    return error instanceof ArgumentError ? error.message : error;
  }
}

describe('a table', () => {
  it('is read row by row, without blank rows and columns to the right', () => {
    expect(
      read([
        ['', ' ', '', ''],
        [' a ', 1000, '', 9],
        ['', '', '', 9],
        [7, '1 m', 'second', ''],
      ]),
    ).toEqual([
      { row: 2, name: 'a', innerLength: 1, note: undefined },
      { row: 4, name: '7', innerLength: 1, note: 'second' },
    ]);
  });

  it('counts rows below its headings, and names a column by its heading', () => {
    const log = (value: CellValue, heading: CellValue = 'length (mm)') =>
      read([
        ['', '', ''],
        ['drum', heading, ''],
        ['a', 1000, ''],
        ['', '', ''],
        ['b', value, ''],
      ]);
    expect(log(2000)).toMatchObject([{ row: 1 }, { row: 3, innerLength: 2 }]);
    expect(log(-1)).toBe('log: row 3, length (mm): -1 mm is not allowed; give a length of more than 0 mm');
    expect(log('')).toBe('log: row 3, length (mm): blank is not allowed; give a length of more than 0 mm');
    expect(read([['a', -1, '']])).toContain('log: row 1, inner length: -1 mm');
    expect(read([['', 1000, '']])).toBe('log: row 1, name: blank is not allowed; give text');
  });

  it.each<[string, Lines[0], boolean]>([
    ['words', ['drum', 'length', ''], true],
    ['a word with a figure and a bracket', ['drum', 'length 2 (mm)', ''], true],
    ['a word with a figure', ['drum', 'length 2', ''], false],
    ['a number', ['drum', 'length', 3], false],
    ['a figure in text', ['drum', '1 m', ''], false],
    ['an error', ['drum', 'length', fault], false],
    ['a blank where the first figure belongs', ['drum', '', 'note'], false],
  ])('has a heading row of %s or not', (_, top, heads) => {
    const first = read([top, ['a', 1000, '']]);
    expect(Array.isArray(first) && first.length === 1 && first[0]?.row === 1).toBe(heads);
  });

  it('has no heading row if it has only texts', () => {
    expect(read([['name'], ['a']], 'refused', { name: { text: true } })).toHaveLength(2);
  });

  it('needs its columns up to the last that may not be blank', () => {
    const rows = '; give rows of name, inner length, note';
    expect(read([['a', 1000]])).toEqual([{ row: 1, name: 'a', innerLength: 1, note: undefined }]);
    expect(read([['a'], ['b']])).toBe(`log: 1 column is not allowed${rows}`);
    expect(read([['a']])).toBe(`log: a is not allowed${rows}`);
    const third = { ...columns, note: { text: true } } as const;
    expect(read([['a', 1000]], 'refused', third)).toBe(`log: 2 columns is not allowed${rows}`);
    expect(read([[], []])).toBe(`log: 0 columns is not allowed${rows}`);
    expect(read([])).toBe(`log: 0 columns is not allowed${rows}`);
    expect(read([['', '', '']])).toBe(`log: no rows were given${rows}`);
    expect(read([['drum', 'length', '']])).toBe(`log: no rows were given${rows}`);
    expect(read([['']], 'refused', { note: { text: true, blank: true } })).toContain('no rows were given');
  });

  it('keeps faulty rows or is refused for them', () => {
    const rows: Lines = [
      ['a', 1000, ''],
      ['b', fault, ''],
      ['c', -1, ''],
    ];
    expect(read(rows)).toBe(fault);
    expect(read(rows, 'kept')).toEqual([
      { row: 1, name: 'a', innerLength: 1, note: undefined },
      { row: 2, fault },
      { row: 3, fault: expect.any(ArgumentError) },
    ]);
  });

  it('has columns with readers of their own, whose faults of ours are not kept', () => {
    const own = {
      reader: (value: CellValue) => {
        if (value === 'bad') throw new Unreadable('bad is bad');
        if (value === 'worse') throw new RangeError('ours');
        return `${value}!`;
      },
      accepts: 'a word',
    };
    const table = (value: CellValue) => read([['x'], [value]], 'kept', { own });
    expect(table('y')).toEqual([
      { row: 1, own: 'x!' },
      { row: 2, own: 'y!' },
    ]);
    expect(table('worse')).toBeInstanceOf(RangeError);
    expect(table('bad')).toMatchObject([{ row: 1 }, { row: 2, fault: { message: 'log: row 2, own: bad is bad' } }]);
    expect(read([['bad'], ['y']], 'refused', { own })).toEqual([{ row: 1, own: 'y!' }]);
    expect(
      read(
        [
          ['x', 1],
          ['', 2],
        ],
        'refused',
        { own, number: { kind: 'number' } },
      ),
    ).toBe('log: row 2, own: blank is not allowed; give a word');
  });
});

describe('a plan', () => {
  it('is read without the rows that say why a pattern was not placed', () => {
    const plan: Lines = [
      [1, 1, 1, 0, 0, 0],
      [2, '', 'does not fit: give less', '', '', ''],
    ];
    expect(readPlan('plan', plan as readonly (readonly CellValue[])[], metric)).toHaveLength(1);
    expect(() => readPlan('plan', [['2', '', 1, 0, 0, 0]], metric)).toThrow('row 1, piece: blank is not allowed');
  });
});

describe('patterns', () => {
  it('are the ten columns of CONE.PATTERN in SI', () => {
    const row = [90, 200, '', '', '', 800, 200, 0.16, 1, 0];
    const cells = [Object.keys(patternColumns), row];
    const [read] = readPatterns('patterns', cells as readonly (readonly CellValue[])[], metric);
    expect(read).toMatchObject({
      row: 1,
      pieces: 1,
      slant: 0.2,
      blankLength: 0.8,
      blankWidth: 0.2,
      area: 0.16,
      lap: 0,
    });
    expect(read?.wallAngle).toBeCloseTo(Math.PI / 2, 12);
    expect(read?.innerRadius).toBeUndefined();
  });
});

describe('headings and messages', () => {
  it('spell a key in words, with its unit', () => {
    expect(inWords('innerRadiusOf2Parts')).toBe('inner radius of2 parts');
    const shown = { ...columns, other: { mixed: true, unitOf: 'volume', heading: 'most' } } as const;
    expect(headings(shown, metric)).toEqual(['name', 'inner length (mm)', 'note', 'most (L)']);
  });

  it('begin with the place, and leave other errors as they are', () => {
    const inPlace = (error: unknown) => () =>
      withPlace('row 2, ', () => {
        throw error;
      });
    expect(inPlace(new ArgumentError('x: bad', '#N/A'))).toThrow(
      expect.objectContaining({ message: 'row 2, x: bad', code: '#N/A', name: 'ArgumentError' }),
    );
    expect(inPlace(fault)).toThrow(fault);
    expect(asArgumentError('x', new Unreadable('bad'))).toEqual(new ArgumentError('x: bad'));
    expect(asArgumentError('x', fault)).toBe(fault);
    expect(['', ' ', null, undefined, 0, 'x', false].map(isBlank)).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
      false,
    ]);
  });
});
