import { describe, expect, it } from 'vitest';
import { coefficient } from '../../../src/catalogue/coefficients/all';
import { inputTable } from '../../../src/catalogue/reading/input-table';
import { inputValue, namedColumn } from '../../../src/catalogue/reading/named-column';
import { withNamedRefusals } from '../../../src/catalogue/reading/named-refusals';
import { Refusal } from '../../../src/formulas/refusal';
import { fishLimits } from '../../../src/formulas/water/water-species';
import { readProfile } from '../../../src/units/profile';
import { type Cells, fault, inputs, says, table } from './bank-of-tests';

const metric = readProfile('metric');
const meaning = 'a test';

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
      'top length: none is not allowed',
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

  it('holds errors beside the names until they are read', () => {
    expect(column([['gap', 1000, fault]]).values.gap).toBe(1);
    expect(says(() => column([['gap', 1000, fault]], 1))).toBe(fault);
  });

  it('takes a range for its middle only where there may be one, and never for a word', () => {
    const cells = table([
      ['top length', '1000 to 2000 mm'],
      ['species', '1 to 2'],
    ]);
    const refused = says(() => namedColumn(inputs, cells, 0, '', metric));
    expect(refused).toMatch(/^top length: 1000 to 2000 mm is not/);
    expect(says(() => namedColumn(inputs, cells, 0, '', metric, true))).toBe(
      'species: 1 to 2 is not allowed; give tilapia or channel catfish',
    );
    const ranged = namedColumn(inputs, table([['top length', '1000 to 2000 mm']]), 0, '', metric, true);
    expect(ranged.values).toMatchObject({ topLength: 1.5 });
    expect([...ranged.ranges.keys()]).toEqual(['topLength']);
  });

  it('has a crop where a figure is its feed', () => {
    expect(inputValue('crop', 5)).toEqual({ feed: 5, plants: undefined });
    expect(inputValue('gap', 5)).toBe(5);
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
  const named = (error: unknown, values = {}) =>
    says(() =>
      withNamedRefusals({ place: 'in it: ', inputs, renamed: { top: 'topLength' }, profile: metric, values }, () => {
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

  it('says what the input was given, where that is a figure', () => {
    const refused = new Refusal('top', 'give less');
    expect(named(refused, { topLength: 0.4 })).toBe('in it: top length: 400 mm is not allowed; give less');
    expect(named(refused, { topLength: 'none' })).toBe('in it: top length: give less');
    expect(named(refused, { top: 0.4 })).toBe('in it: top length: give less');
  });
});
