import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/catalogue/argument';
import { coefficient } from '../../../src/catalogue/coefficients/all';
import type { NamedInputs } from '../../../src/catalogue/plan/named-input';
import { ArgumentError } from '../../../src/catalogue/reading/argument-error';
import { foldedName, inputTable, isNothing, type OpenCell } from '../../../src/catalogue/reading/input-table';
import { isBlankColumn, namedColumn } from '../../../src/catalogue/reading/named-column';
import { withNamedRefusals } from '../../../src/catalogue/reading/named-refusals';
import { Refusal } from '../../../src/formulas/refusal';
import { fishLimits } from '../../../src/formulas/water/water-species';
import { readProfile } from '../../../src/units/profile';
import { Unreadable } from '../../../src/units/unreadable';

const metric = readProfile('metric');
const meaning = 'a test';
const fault = Object.assign(new Error('bad'), { code: '#N/A' });

const inputs = {
  drums: { kind: 'count', whole: true, equipment: true, meaning },
  topLength: { kind: 'dimension', above: 0, required: true, meaning },
  species: { choice: ['tilapia', 'channel catfish'], meaning },
  protein: { kind: 'share', default: 'coefficient', meaning },
  stocking: { kind: 'stocking', default: 10, species: ({ oxygen }: { oxygen: number }) => oxygen, meaning },
  gap: { kind: 'dimension', atLeast: 0, default: 0.5, meaning },
  other: { kind: 'dimension', as: 'gap', meaning },
  lowest: { kind: 'temperature', default: 5, name: 'lowest °C', meaning },
  flow: { kind: 'flow', meaning },
  tip: {
    kind: 'number',
    accepts: 'a word',
    default: 'usual',
    meaning,
    reader: (value: CellValue) => {
      if (value === 'bad') throw new Unreadable('bad is bad');
      return `${value}!`;
    },
  },
} as unknown as NamedInputs;

type Cells = readonly (readonly OpenCell[])[];
const table = (cells: Cells) => inputTable('bank', inputs, cells, ['input', 'bank']);
function column(cells: Cells, at = 0) {
  const { values, defaults, left } = namedColumn(
    inputs,
    table([['top length', 1000, 1000], ...cells]),
    at,
    'in it: ',
    metric,
  );
  return { values: values as Record<string, unknown>, defaults, left };
}
function says(call: () => unknown): unknown {
  try {
    return call();
  } catch (error) {
    return error instanceof ArgumentError ? error.message : error;
  }
}

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

  it('holds errors beside the names until they are read', () => {
    expect(column([['gap', 1000, fault]]).values.gap).toBe(1);
    expect(says(() => column([['gap', 1000, fault]], 1))).toBe(fault);
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

describe('a column of inputs', () => {
  it('uses defaults for what is left out, and says which', () => {
    const { values, defaults, left } = column([]);
    expect(values).toEqual({
      topLength: 1,
      protein: coefficient('protein').typical,
      stocking: 10,
      gap: 0.5,
      other: 0.5,
      lowest: 5,
      tip: 'usual!',
    });
    expect(defaults).toEqual(['protein', 'stocking', 'gap', 'other', 'lowest °C', 'tip']);
    expect([...left]).toEqual(['protein', 'stocking', 'gap', 'other', 'lowest', 'tip']);
  });

  it.each(['', 0, ' ', '-', '–', '0', '0.0', '00', '0,', 'Not given', ' - '])('takes %j for nothing', (nothing) => {
    const typed = ['drums', 'protein', 'gap', 'flow', 'tip', 'species'].map((name) => [name, nothing]);
    expect(column(typed)).toEqual(column([]));
  });

  it('takes none for no stage, for 0, or for nothing, and refuses it where a figure must be', () => {
    const none = column(['drums', 'gap', 'protein', 'flow', 'tip'].map((name) => [name, 'None'])).values;
    expect(none).toMatchObject({ drums: 'none', gap: 0, protein: 0, tip: 'usual!' });
    expect(none.flow).toBeUndefined();
    expect(says(() => column([['lowest °C', 'none']]))).toContain('in it: lowest °C: none is not allowed');
    expect(says(() => namedColumn(inputs, table([['top length', 'none']]), 0, '', metric))).toContain(
      '0 or blank is not allowed',
    );
  });

  it('takes an equipment of 0 for nothing', () => {
    expect(column([['drums', '0e1']]).values.drums).toBeUndefined();
    expect(column([['drums', 2]]).values.drums).toBe(2);
  });

  it('names the input at fault, and what is missing', () => {
    expect(says(() => column([['drums', 2.5]]))).toContain('in it: drums: 2.5 is not allowed; give a whole number');
    expect(says(() => column([['tip', 'bad']]))).toBe('in it: tip: bad is bad');
    const top = (cells: Cells) => says(() => namedColumn(inputs, table(cells), 0, 'in it: ', metric));
    expect(top([['gap', 1]])).toBe('in it: top length: its row is missing; give a length of more than 0 mm');
    expect(top([['top length', 0]])).toBe(
      'in it: top length: 0 or blank is not allowed; give a length of more than 0 mm',
    );
  });

  it('takes a limit from the species, unless one is typed', () => {
    const fish = ['species', ' CHANNEL   catfish '] as const;
    expect(column([fish]).values.stocking).toBe(fishLimits('channel catfish').oxygen);
    expect(column([fish]).defaults).toContain('stocking (from species)');
    expect(column([fish, ['stocking', 7]]).values.stocking).toBe(7);
    expect(says(() => column([['species', 'trout']]))).toBe(
      'in it: species: trout is not allowed; give tilapia or channel catfish',
    );
  });

  it('follows another input', () => {
    expect(column([['gap', 2000]]).values).toMatchObject({ gap: 2, other: 2 });
    expect(column([['other', 2000]]).values).toMatchObject({ gap: 0.5, other: 2 });
  });

  it('names the nearest of a long list of words', () => {
    const choice = ['aa', 'bb', 'cc', 'dd', 'ee', 'ff', 'gg'];
    const word = (count: number) => {
      const long = { word: { choice: choice.slice(0, count), meaning } } as const;
      return says(() => namedColumn(long, inputTable('x', long, [['word', 'ax']], []), 0, '', metric));
    };
    expect(word(7)).toMatch(/^word: ax is not allowed; nearest are aa, /);
    expect(word(6)).toBe('word: ax is not allowed; give aa, bb, cc, dd, ee or ff');
  });
});

describe('the refusal of a formula', () => {
  const named = (error: unknown) =>
    says(() =>
      withNamedRefusals({ place: 'in it: ', inputs, renamed: { top: 'topLength' }, profile: metric }, () => {
        throw error;
      }),
    );

  it('names the input, with figures in the units of the profile', () => {
    const figures = { top: 0.5, gap: 0.25, all: 3 };
    expect(named(new Refusal('top', 'give {top}, {gap} or {all}', { figures }))).toBe(
      'in it: top length: give 500 mm, 250 mm or 3',
    );
    expect(named(fault)).toBe(fault);
  });
});
