import { describe, expect, it } from 'vitest';
import { dateOfSerial, serialOfDate } from '../../src/units/date';

describe('a date as a serial number', () => {
  // Excel's DATEVALUE help page gives 39448 for 2008-01-01 and 40777 for 2011-08-22; 1900-01-01 is 1 and 9999-12-31 the last.
  it.each([
    ['1900-01-01', 1],
    ['1900-02-28', 59],
    ['1900-03-01', 61],
    ['2000-01-01', 36526],
    ['2008-01-01', 39448],
    ['2011-08-22', 40777],
    ['2024-02-29', 45351],
    ['9999-12-31', 2958465],
  ])('%s is %s', (text, serial) => {
    expect(serialOfDate(text)).toBe(serial);
    expect(dateOfSerial(serial)).toBe(text);
  });

  it.each(['2026-13-01', '2026-00-10', '2026-02-30', '1899-12-31', '1900-00-31', '02026-05-01', '2026-05-011', 'x'])(
    'is none for %s',
    (text) => {
      expect(serialOfDate(text)).toBeUndefined();
    },
  );

  it('is written as it is where the calendar has no such day', () => {
    expect([0, -1, 2958466, Number.NaN].map(dateOfSerial)).toEqual(['0', '-1', '2958466', 'NaN']);
    expect([59, 61].map(dateOfSerial)).toEqual(['1900-02-28', '1900-03-01']);
  });

  it('keeps the day that the date system invents, and drops the time of day', () => {
    expect(dateOfSerial(60)).toBe('1900-02-29');
    expect(dateOfSerial(45351.75)).toBe('2024-02-29');
    expect(serialOfDate('1900-02-29')).toBeUndefined();
  });
});
