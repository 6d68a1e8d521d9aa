/** Cells that arguments read in their own way: readings of a test kit, sizes of pipe, nutrients, media and crops. */
import { describe, expect, it } from 'vitest';
import { phosphorusOr, potassiumOr } from '../../src/catalogue/nutrient-arguments';
import { pieceOf } from '../../src/catalogue/pattern-argument';
import { fittings, nominal } from '../../src/catalogue/pipe-arguments';
import { wordsOf } from '../../src/catalogue/plan/named-input';
import { cropInput, mediaInput, settlerInput } from '../../src/catalogue/plan/scenario-readers';
import { ammoniaAsNitrogen, nitrogenReading, reading, textReader } from '../../src/catalogue/readers';
import { readProfile } from '../../src/units/profile';

const metric = readProfile('metric');
const US = readProfile('US');

describe('a reading of a test kit', () => {
  const warmth = reading('temperature', { atLeast: 0, atMost: 40 });

  it('is not taken where it is a dash, alone', () => {
    for (const dash of ['-', ' - ', '–', '—', '\t-']) {
      expect(warmth.reader(dash, metric)).toBeUndefined();
      expect(nitrogenReading('nitrate').reader(dash, metric)).toBeUndefined();
    }
    for (const other of ['- 3 °C', '-3', 'x', '3 -']) expect(() => warmth.reader(other, metric)).toThrow();
  });

  it('lies within its bounds, in the units of the profile', () => {
    expect([0, 25, 40].map((degrees) => warmth.reader(degrees, metric))).toEqual([0, 25, 40]);
    expect(warmth.reader(104, US)).toBeCloseTo(40, 9);
    const advice = 'is not allowed; give from 0 °C to 40 °C, or - if it was not measured';
    expect(() => warmth.reader(-0.5, metric)).toThrow(`-0.5 °C ${advice}`);
    expect(() => warmth.reader(41, metric)).toThrow(`41 °C ${advice}`);
    expect(() => warmth.reader(31, US)).toThrow('give from 32 °F to 104 °F');
  });

  it('of ammonia is nitrogen: 17.031 g of NH3 hold 14.007 g', () => {
    expect(ammoniaAsNitrogen.reader('17.031 mg/L as NH3', metric)).toBeCloseTo(14.007e-3, 6);
    expect(ammoniaAsNitrogen.reader(2, metric)).toBeCloseTo(2e-3, 12);
    expect(ammoniaAsNitrogen.reader(0, metric)).toBe(0);
    expect(() => ammoniaAsNitrogen.reader(-1, metric)).toThrow('-1 mg/L is not allowed; give 0 mg/L or more');
  });

  it('of a nitrogen compound is not that of another tube of the kit', () => {
    const forms = { ammonia: ['N', 'NH3', 'NH4'], nitrite: ['N', 'NO2'], nitrate: ['N', 'NO3'] } as const;
    for (const compound of ['ammonia', 'nitrite', 'nitrate'] as const) {
      const { reader, accepts } = nitrogenReading(compound);
      for (const form of ['N', 'NH3', 'NH4', 'NO2', 'NO3'] as const) {
        const text = `2 mg/L as ${form}`;
        if ((forms[compound] as readonly string[]).includes(form)) {
          expect(reader(text, metric)).toEqual({ si: 2e-3, as: form });
        } else {
          const advice = `give it as ${forms[compound].join(' or ')}`;
          expect(() => reader(text, metric)).toThrow(`${text} is not allowed; ${advice}`);
        }
      }
      expect(accepts).toContain(`2 mg/L as ${forms[compound][1]}`);
    }
    expect(() => ammoniaAsNitrogen.reader('1 mg/L as NO2', metric)).toThrow(
      '1 mg/L as NO2 is not allowed; give it as N or NH3 or NH4',
    );
    expect(() => ammoniaAsNitrogen.reader('9 mg/L NO3', US)).toThrow('give it as N or NH3 or NH4');
  });

  it('has the article that its kind needs', () => {
    expect(reading('alkalinity', { atLeast: 0, atMost: 10 }).accepts).toBe(
      'an alkalinity, or - if it was not measured',
    );
    expect(warmth.accepts).toBe('a temperature, or - if it was not measured');
  });

  it('of text is without the spaces round it, and no number', () => {
    const word = textReader('a word');
    expect(word.reader('  a word ', metric)).toBe('a word');
    expect(() => word.reader(7, metric)).toThrow('7 is not text; give a word');
  });
});

describe('a pattern that is not one', () => {
  const pattern = {
    ...{ wallAngle: 1.5707963267948966, slant: 0.2, blankLength: 0.8, blankWidth: 0.2, area: 0.2, pieces: 1, lap: 0 },
    ...{ innerRadius: undefined, outerRadius: undefined, sectorAngle: undefined },
  };

  it('is named by its row, or as the first', () => {
    expect(() => pieceOf('pattern', { ...pattern, row: 3 }, metric)).toThrow('row 3 was not made with metric');
    expect(() => pieceOf('pattern', pattern, US)).toThrow('row 1 was not made with US');
    expect(pieceOf('pattern', { ...pattern, area: 0.16 }, metric)).toMatchObject({ length: 0.8, width: 0.2 });
  });
});

describe('a nominal size', () => {
  it('is in inches in every profile, unless it ends in mm', () => {
    for (const profile of [metric, US]) {
      expect(nominal.reader(2, profile)).toEqual({ series: 'inch', size: 2 });
      expect(nominal.reader('2-1/2', profile)).toEqual({ series: 'inch', size: 2.5 });
      for (const metricSize of ['63 mm', '63 MM ', '63mm'])
        expect(nominal.reader(metricSize, profile)).toEqual({ series: 'metric', size: 63 });
    }
  });
});

describe('fittings', () => {
  const read = (value: string | number) => fittings.reader(value, metric);

  it('are a K from 0 to a million, as a number or as text', () => {
    for (const k of [0, 0.5, 1e6]) expect([read(k), read(`${k}`)]).toEqual(Array(2).fill({ coefficient: k, bores: 0 }));
    const advice = 'is not allowed; give a K from 0 up, or words such as 2 elbow, 1 tee';
    for (const k of [-1, 1e6 + 1]) expect(() => read(k)).toThrow(`${k} ${advice}`);
  });

  it('or words', () => {
    expect(read('2 elbow').bores).toBe(60);
  });
});

describe('nutrients that are left out', () => {
  it('are those of the element, or as much of its oxide: P2O5 of 2 x 30.974, K2O of 2 x 39.098', () => {
    expect([phosphorusOr(0.3, 'oxide'), potassiumOr(0.4, 'oxide')]).toEqual([0.3, 0.4]);
    expect([phosphorusOr(undefined, 'element'), potassiumOr(undefined, 'element')]).toEqual([0.0254, 0.001]);
    expect(phosphorusOr(undefined, 'oxide') / 0.0254).toBeCloseTo(141.943 / 61.948, 4);
    expect(potassiumOr(undefined, 'oxide') / 0.001).toBeCloseTo(94.195 / 78.196, 4);
  });
});

describe('a word or a figure of a scenario', () => {
  it('is of more than 0, or a word of its list', () => {
    expect(mediaInput.reader(200, metric)).toBe(200);
    for (const nothing of ['0 m2/m3', '-5 m2/m3'])
      expect(() => mediaInput.reader(nothing, metric)).toThrow('is not allowed; give more than 0 m2/m3, or a medium');
    expect(cropInput.reader('50 g/m2/d', metric)).toEqual({
      feed: expect.closeTo(0.05 / 86400, 15),
      plants: undefined,
    });
  });

  it('names the nearest of a long list and all of a short one', () => {
    expect(() => mediaInput.reader('gravle', metric)).toThrow(/^gravle is not allowed; nearest are gravel, /);
    expect(() => settlerInput.reader('swril', metric)).toThrow('give swirl, radial, mixed or ideal, or a share');
  });

  it('offers its words', () => {
    expect(wordsOf({ choice: ['a', 'b'], meaning: '' })).toEqual(['a', 'b']);
    expect(wordsOf(settlerInput)).toEqual(['swirl', 'radial', 'mixed', 'ideal']);
    const { words: _, ...wordless } = settlerInput;
    expect(wordsOf(wordless)).toEqual([]);
    expect(wordsOf({ kind: 'share', meaning: '' })).toEqual([]);
  });
});
