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

  it('keeps the day that the date system invents, and drops the time of day', () => {
    expect(dateOfSerial(60)).toBe('1900-02-29');
    expect(dateOfSerial(45351.75)).toBe('2024-02-29');
    expect(serialOfDate('1900-02-29')).toBeUndefined();
  });
});
