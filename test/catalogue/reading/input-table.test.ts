import { describe, expect, it } from 'vitest';
import { foldedName, isNothing } from '../../../src/catalogue/reading/input-table';
import { isBlankColumn } from '../../../src/catalogue/reading/named-column';
import { type Cells, fault, says, table } from './bank-of-tests';

describe('a table of inputs', () => {
  it('has names in any case and spacing, and counts from below its headings', () => {
    expect(foldedName('  Top \t LENGTH ')).toBe('top length');
    const { lines, heading, count, argument } = table([
      ['', ''],
      ['Bank', 'first'],
      ['TOP  length', 5],
      [0, null as never],
      ['gap', 6],
    ]);
    expect([heading, count, argument]).toEqual([['Bank', 'first'], 1, 'bank']);
    expect([...lines]).toEqual([
      ['topLength', [5]],
      ['gap', [6]],
    ]);
  });

  it.each<[Cells, readonly unknown[] | undefined]>([
    [
      [
        ['', 'first'],
        ['gap', 1],
      ],
      ['', 'first'],
    ],
    [
      [
        [0, 'first'],
        ['gap', 1],
      ],
      [0, 'first'],
    ],
    [
      [
        ['INPUT', ''],
        ['gap', 1],
      ],
      ['INPUT', ''],
    ],
    [[['gap', 1]], undefined],
    [
      [
        ['', '', 'second'],
        ['gap', 1, 2],
      ],
      ['', '', 'second'],
    ],
  ])('%j has the headings %j', (cells, heading) => {
    expect(table(cells).heading).toEqual(heading);
  });

  it.each<[Cells, string | RegExp | Error]>([
    [[['gap']], 'bank: one column is not allowed; give names in the first column and values beside them'],
    [[], /one column is not allowed/],
    [[['', '']], 'bank: no rows were given; give rows of name and value'],
    [[['input', '']], 'bank: no rows were given; give rows of name and value'],
    [
      [
        ['gap', 1],
        ['', ''],
        ['Gap', 2],
      ],
      'bank: row 3, gap appears twice; delete one row',
    ],
    [
      [
        ['', 'first'],
        ['gap', 1],
        ['', 2],
      ],
      'bank: row 2: a name is missing',
    ],
    [
      [
        ['gap', 1, 2],
        ['', '', 5],
      ],
      'bank: row 2: a name is missing',
    ],
    [
      [
        ['', 'first'],
        ['gap', 1],
        ['gap', 2],
      ],
      'bank: row 2, gap appears twice; delete one row',
    ],
    [
      [
        ['gap', 1],
        ['gup', 2],
      ],
      /^bank: row 2: gup is not an input; nearest are gap, /,
    ],
    [
      [
        ['gap', 1],
        [fault, 2],
      ],
      fault,
    ],
    [
      [
        ['', fault],
        ['gap', 2],
      ],
      fault,
    ],
  ])('%j is refused: %s', (cells, message) => {
    const refusal = says(() => table(cells));
    if (message instanceof RegExp) expect(refusal).toMatch(message);
    else expect(refusal).toBe(message);
  });

  it('has a blank column where every cell is blank or 0', () => {
    const two = table([
      ['gap', 0, 1],
      ['flow', '', 0],
    ]);
    expect([isBlankColumn(two, 0), isBlankColumn(two, 1)]).toEqual([true, false]);
    expect(['', 0, ' ', null, undefined, '0', false].map(isNothing)).toEqual([
      true,
      true,
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});
