import { describe, expect, it } from 'vitest';
import { readFittingLoss, readNominalSize } from '../../src/catalogue/pipe-readers';
import { Unreadable } from '../../src/units/unreadable';

describe('readNominalSize', () => {
  it('reads an inch size as a number or as a plumber writes it', () => {
    for (const given of [2.5, '2.5', '2-1/2', '2 1/2', '2-1/2 in', '2 1/2"', '2.5 inch', '2-1/2 IN']) {
      expect(readNominalSize(given)).toEqual({ series: 'inch', size: 2.5 });
    }
    expect(readNominalSize('1/2 in')).toEqual({ series: 'inch', size: 0.5 });
  });

  it('reads an outside diameter in millimetres', () => {
    expect(readNominalSize('63 mm')).toEqual({ series: 'metric', size: 63 });
    expect(readNominalSize('63mm')).toEqual({ series: 'metric', size: 63 });
  });

  it('cannot read a date, nothing, another unit or words', () => {
    for (const given of [46024, 0, -2, '2 ft', 'two', '']) expect(() => readNominalSize(given)).toThrow(Unreadable);
    expect(() => readNominalSize(46024)).toThrow(/date/);
  });
});

describe('readFittingLoss', () => {
  it('reads a K, or fittings in words', () => {
    expect(readFittingLoss(2.5)).toEqual({ coefficient: 2.5, bores: 0 });
    expect(readFittingLoss('2.5')).toEqual({ coefficient: 2.5, bores: 0 });
    expect(readFittingLoss('2 elbow, 1 tee')).toEqual({ coefficient: 0, bores: 120 });
  });

  it('cannot read a word it does not know, and lists those it does', () => {
    expect(() => readFittingLoss('2 flange')).toThrow(/elbow, elbow 45/);
    expect(() => readFittingLoss(-1)).toThrow(Unreadable);
  });
});
