import { describe, expect, it } from 'vitest';
import type { Result } from '../../../src/catalogue/define';
import { AnswerFault } from '../../../src/catalogue/reading/wording';
import { headingRow, mostRows, presenter } from '../../../src/functions/adapter/results';
import { readProfile } from '../../../src/units/profile';

const metric = readProfile('metric');
const show = (result: Result, computed: unknown) =>
  presenter(result, (name) => (name === 'top' ? 'dimension' : undefined))(computed, metric);
const sentence = { text: 'top is {top}', figures: { top: 0.5 } };
const columns = { length: { kind: 'dimension' }, note: { mixed: true }, name: { text: true } } as const;

describe('what a function returns', () => {
  it('is a block of one cell for a figure, a quantity, a text and a date', () => {
    expect(show({ scalar: 'dimension' }, 0.5)).toEqual([[500]]);
    expect(show({ quantity: true }, { kind: 'volume', si: 0.5 })).toEqual([[500]]);
    expect(show({ text: true }, 'words')).toEqual([['words']]);
    expect(show({ date: true }, 46143)).toEqual([[46143]]);
  });

  it('is a row or rows in the order of the columns, with blanks where a value is absent', () => {
    const computed = { name: 'a', length: 0.5, note: sentence };
    expect(show({ row: columns }, computed)).toEqual([[500, 'top is 500 mm', 'a']]);
    expect(show({ rows: columns }, [computed, { name: 'b', note: 7 }])).toEqual([
      [500, 'top is 500 mm', 'a'],
      ['', 7, 'b'],
    ]);
    expect(show({ rows: columns }, [])).toEqual([['']]);
  });

  it('is a sentence a line, or a grid with each error in its cell', () => {
    expect(show({ lines: true }, [sentence, { text: 'plain' }])).toEqual([['top is 500 mm'], ['plain']]);
    const fault = Object.assign(new Error('bad'), { code: '#N/A' });
    expect(
      show({ grid: true }, [
        [1, fault],
        ['x', { kind: 'dimension', si: 2 }],
      ]),
    ).toEqual([
      [1, fault],
      ['x', 2000],
    ]);
  });

  it('is refused where a figure is not finite, and never is -0', () => {
    for (const [result, computed] of [
      [{ scalar: 'number' }, Number.NaN],
      [{ date: true }, Number.POSITIVE_INFINITY],
      [{ quantity: true }, { kind: 'number', si: Number.NaN }],
      [{ row: columns }, { length: Number.NaN }],
      [{ row: columns }, { note: Number.NaN }],
      [{ lines: true }, [{ text: '{top}', figures: { top: Number.NaN } }]],
    ] as const)
      expect(() => show(result, computed)).toThrow(AnswerFault);
    expect(Object.is(show({ scalar: 'number' }, -0)[0]![0], 0)).toBe(true);
  });

  it('has ten thousand rows at most', () => {
    const many = (count: number) => Array.from({ length: count }, () => [1]);
    expect(show({ grid: true }, many(mostRows))).toHaveLength(10_000);
    expect(() => show({ grid: true }, many(mostRows + 1))).toThrow(
      'the result would be 10001 rows; the limit is 10000',
    );
  });

  it('has headings over rows and sentences, and over nothing else', () => {
    expect(headingRow({ row: columns }, metric)).toEqual(['length (mm)', 'note', 'name']);
    expect(headingRow({ rows: columns }, metric)).toEqual(['length (mm)', 'note', 'name']);
    expect(headingRow({ lines: true }, metric)).toEqual(['cautions']);
    expect(headingRow({ grid: true }, metric)).toBeUndefined();
    expect(headingRow({ scalar: 'number' }, metric)).toBeUndefined();
  });
});
