import { describe, expect, it } from 'vitest';
import { fittingNames, readFittings } from '../../../src/catalogue/reading/read-fittings';
import { noFittings } from '../../../src/formulas/pipe/fittings';
import { Unreadable } from '../../../src/units/unreadable';

describe('readFittings', () => {
  it('adds fittings listed as people list them', () => {
    const two = readFittings('2 elbow, 1 tee');
    for (const same of ['2 elbows and tee', '2x elbow + tee', 'elbow; elbow; 1 TEE', ' 2  Elbows , 1 tee ']) {
      expect(readFittings(same)).toEqual(two);
    }
    expect(two).toEqual({ coefficient: 0, bores: 120 });
  });

  it('takes 45 and 90 before an elbow as its angle, not as a count', () => {
    expect(readFittings('45 elbow')).toEqual(readFittings('1 elbow 45'));
    expect(readFittings('90° elbow')).toEqual(readFittings('elbow'));
    expect(readFittings('3 45° elbows').bores).toBe(3 * readFittings('45 elbow').bores);
  });

  it('knows every name it lists, alone and counted', () => {
    for (const name of fittingNames) {
      const single = readFittings(name);
      expect(readFittings(`3 ${name}`)).toEqual({ coefficient: 3 * single.coefficient, bores: 3 * single.bores });
    }
  });

  it('gives a 90° sweep less loss than an elbow and a figure of its own, not that of a 45° bend', () => {
    const [sweep, elbow, bend] = ['sweep', 'elbow', 'elbow 45'].map((name) => readFittings(name).bores);
    expect(sweep).toBe(14);
    expect(sweep).toBeLessThan(bend ?? 0);
    expect(bend).toBeLessThan(elbow ?? 0);
  });

  it('takes a count of any size before the name, with or without an x and a space', () => {
    const { bores } = readFittings('elbow');
    for (const [text, count] of [
      ['2elbow', 2],
      ['12elbow', 12],
      ['2xelbow', 2],
      ['12x elbows', 12],
      ['2 x elbow', 2],
      ['3×elbow', 3],
      ['3 × elbows', 3],
      ['1.5 elbow', 1.5],
      ['1.25 elbows', 1.25],
      ['10 elbow', 10],
    ] as const)
      expect(readFittings(text).bores, text).toBe(count * bores);
    expect(() => readFittings('big 2 elbow')).toThrow('"big 2 elbow" is not a known fitting');
    expect(() => readFittings('big 2elbow')).toThrow('is not a known fitting');
  });

  it('knows an angle in all its spellings', () => {
    const bend = readFittings('elbow 45');
    for (const text of [
      'elbow 45°',
      '45 deg elbow',
      '45 degree elbow',
      '2 45 degrees elbows',
      '45-elbow',
      'elbow 45 deg',
    ])
      expect(readFittings(text).bores, text).toBe(bend.bores * (text.startsWith('2') ? 2 : 1));
  });

  it('gives no loss for empty text', () => {
    expect(readFittings(' ')).toEqual(noFittings);
  });

  it('refuses a word that is not in the table and lists the words that are', () => {
    expect(() => readFittings('1 flange')).toThrow(
      /^"1 flange" is not a known fitting; give a K, or any of: elbow, elbow 45/,
    );
    expect(() => readFittings('2 constructor')).toThrow(Unreadable);
  });
});
