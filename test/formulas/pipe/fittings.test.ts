import { describe, expect, it } from 'vitest';
import { fittingCoefficient, fittingNames, noFittings, readFittings } from '../../../src/formulas/pipe/fittings';
import { wholeRefusal } from '../whole-refusal';

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
      const one = readFittings(name);
      expect(readFittings(`3 ${name}`)).toEqual({ coefficient: 3 * one.coefficient, bores: 3 * one.bores });
    }
  });

  it('has a sweep of 90° that is easier than an elbow, and not the figure of a 45° bend', () => {
    const [sweep, elbow, bend] = ['sweep', 'elbow', 'elbow 45'].map((name) => readFittings(name).bores);
    expect(sweep).toBe(14);
    expect(sweep).toBeLessThan(bend ?? 0);
    expect(bend).toBeLessThan(elbow ?? 0);
  });

  it('is nothing for nothing', () => {
    expect(readFittings(' ')).toEqual(noFittings);
  });

  it('cannot take a word that is not in the table, and lists the words', () => {
    expect(() => readFittings('1 flange')).toThrow(wholeRefusal);
    expect(() => readFittings('1 flange')).toThrow(/elbow, elbow 45/);
  });
});

describe('fittingCoefficient', () => {
  it('gives Crane’s K of a 2 in elbow 0.57, tee branch 1.14, ball valve 0.06, gate valve 0.15 (TP-410)', () => {
    const bore = 2.067 * 0.0254;
    for (const [name, k] of [
      ['elbow', 0.57],
      ['tee', 1.14],
      ['ball valve', 0.06],
      ['gate valve', 0.15],
      ['globe valve', 6.5],
    ] as const) {
      expect(Math.abs(fittingCoefficient(readFittings(name), bore) / k - 1)).toBeLessThan(0.06);
    }
  });
});
