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
