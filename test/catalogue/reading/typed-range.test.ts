import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/catalogue/argument';
import type { NamedInput } from '../../../src/catalogue/plan/named-input';
import { ArgumentError } from '../../../src/catalogue/reading/argument-error';
import { rangeReader } from '../../../src/catalogue/reading/typed-range';
import { AnswerFault, finite, formatMessage } from '../../../src/catalogue/reading/wording';
import { readProfile } from '../../../src/units/profile';
import { Unreadable } from '../../../src/units/unreadable';

const metric = readProfile('metric');
const meaning = 'a test';

function read(spec: NamedInput, text: string) {
  try {
    return rangeReader('it', spec)?.(text, metric);
  } catch (error) {
    if (!(error instanceof ArgumentError)) throw error;
    return error.message;
  }
}

describe('a range in place of a figure', () => {
  const share = { kind: 'share', meaning } as const;

  it('has two ends in SI and its middle', () => {
    expect(read(share, '20 % to 30 %')).toEqual({ low: 0.2, middle: 0.25, high: 0.3, typed: '20 % to 30 %' });
    expect(read(share, '0.25 to 0.25')).toMatchObject({ low: 0.25, middle: 0.25, high: 0.25 });
    // Ends more than five times apart have the geometric mean.
    expect(read(share, '1 % to 100 %')).toMatchObject({ low: 0.01, middle: 0.1, high: 1 });
  });

  it('is refused where an end is not allowed, with the whole range', () => {
    expect(read(share, '20 to 30')).toMatch(/^it: in 20 to 30, 20 reads as 2000 %/);
    expect(read({ ...share, atMost: 0.25 }, '20 % to 30 %')).toBe(
      'it: in 20 % to 30 %, 30 % is not allowed; give a share from 0 to 0.25',
    );
    expect(read(share, '30 % to 20 %')).toBe('it: 30 % to 20 % has its ends reversed; write 20 % to 30 %');
    expect(read(share, 'x ± y 1')).toMatch(/^it: x ± y 1 is not a range of share/);
  });

  it('is not for words and whole numbers', () => {
    expect(rangeReader('it', { choice: ['a'], meaning })).toBeUndefined();
    expect(read({ kind: 'count', whole: true, meaning }, '1 to 3')).toBe(
      'it: 1 to 3 is not allowed; give one whole number',
    );
  });

  it('of equipment begins above 0', () => {
    const area = { kind: 'area', equipment: true, meaning } as const;
    expect(read(area, '1 to 2 m2')).toMatchObject({ low: 1, high: 2 });
    expect(read(area, '0 to 2 m2')).toBe(
      'it: in 0 to 2 m2, 0 m2 is not allowed; give more than 0, or only none if the farm has none',
    );
    expect(read({ kind: 'area', meaning }, '0 to 2 m2')).toMatchObject({ low: 0, high: 2 });
  });

  it('of a cell with a reader of its own is of its figures', () => {
    const own = (reader: (value: CellValue) => unknown): NamedInput => ({
      kind: 'number',
      accepts: 'x',
      default: 'x',
      meaning,
      reader,
    });
    expect(read(own(Number), '1 to 3')).toMatchObject({ low: 1, middle: 2, high: 3 });
    expect(
      read(
        own((value) => ({ feed: Number(value) })),
        '1 to 3',
      ),
    ).toMatchObject({ low: 1, middle: 2, high: 3 });
    for (const word of ['swirl', null, { other: 1 }])
      expect(
        read(
          own(() => word),
          '1 to 3',
        ),
      ).toBe('it: in 1 to 3, 1 is a word; give a figure at both ends of a range');
    const refuses = () => {
      throw new Unreadable('1 is bad');
    };
    expect(read(own(refuses), '1 to 3')).toBe('it: in 1 to 3, 1 is bad');
    const broken = () => {
      throw new RangeError('ours');
    };
    expect(() => read(own(broken), '1 to 3')).toThrow(RangeError);
  });
});

describe('a message', () => {
  const kindOf = (name: string) => (name === 'top' ? 'dimension' : undefined);
  const format = (text: string, figures: Parameters<typeof formatMessage>[0]['figures'], digits?: number) =>
    formatMessage({ text, ...(figures && { figures }) }, kindOf, metric, digits);

  it('has its figures in the kind of the argument, of the mark, or without a unit', () => {
    expect(format('{top} and {top}', { top: 0.5 })).toBe('500 mm and 500 mm');
    expect(format('{rate:areal rate}', { rate: 1 / 86400 })).toBe('1000 g/m2/d');
    expect(format('{other:top} {other:volume} {other}', { other: 2 })).toBe('2000 mm 2000 L 2');
    expect(format('{low} {no}', { low: { value: 2, like: 'top' } })).toBe('2000 mm {no}');
    expect(format('{none}', undefined)).toBe('{none}');
  });

  it('has four digits, or as many as are asked for', () => {
    expect(format('{x}', { x: 1.2345678 })).toBe('1.235');
    expect(format('{x}', { x: 1.2345678 }, 6)).toBe('1.23457');
    expect(format('{x}', { x: { value: 1.2345678, like: 'x', digits: 2 } }, 6)).toBe('1.2');
  });

  it('has no figure that is not finite, and no -0', () => {
    expect(() => format('{x}', { x: Number.NaN })).toThrow(AnswerFault);
    expect(() => format('{top}', { top: 1e306 })).toThrow(/^these numbers are too large or too small/);
    expect([Object.is(finite(-0), 0), finite(2)]).toEqual([true, 2]);
    expect(() => finite(Number.POSITIVE_INFINITY)).toThrow(expect.objectContaining({ name: 'AnswerFault' }));
  });
});
