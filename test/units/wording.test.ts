import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/units/nearest';
import { readProfile } from '../../src/units/profile';
import { wordGiven, wordQuantity } from '../../src/units/quantity';
import { alsoRead, unitsRead } from '../../src/units/wording';

const US = readProfile('US');
const metric = readProfile('metric');

describe('a quantity in a message', () => {
  it('has the unit of the profile and six digits at most', () => {
    expect(wordQuantity(US, 'dimension', 0.5715)).toBe('22.5 in');
    expect(wordQuantity(metric, 'dimension', 0.5715)).toBe('571.5 mm');
    expect(wordQuantity(US, 'temperature', 20)).toBe('68 °F');
    expect(wordQuantity(US, 'share', 0.32)).toBe('0.32');
    expect(wordQuantity(US, 'angle', Math.PI / 4)).toBe('45 degrees');
    expect(wordQuantity(US, 'angle', Math.PI / 180)).toBe('1 degree');
    expect(wordQuantity(US, 'days', 3 * 86400)).toBe('3 days');
    expect(wordQuantity(US, 'days', 86400)).toBe('1 day');
    expect(wordQuantity(US, 'date', 46143)).toBe('2026-05-01');
    expect(wordQuantity(US, 'volume', 1)).toBe('264.172 gal');
    expect(wordQuantity(US, 'price of mass', 1)).toBe('0.453592 a lb');
  });

  it('is as it was given where it was given', () => {
    expect(wordGiven(US, 'dimension', 24)).toBe('24 in');
    expect(wordGiven(US, 'dimension', '24')).toBe('24 in');
    expect(wordGiven(US, 'dimension', '55 gal')).toBe('55 gal');
    expect(wordGiven(US, 'dimension', 1 / 3)).toBe('0.333333333333 in');
    expect(wordGiven(US, 'share', 32)).toBe('32');
    expect(wordGiven(US, 'dimension', '')).toBe('blank');
    expect(wordGiven(US, 'dimension', undefined)).toBe('blank');
    expect(wordGiven(US, 'dimension', false)).toBe('FALSE');
    expect(wordGiven(US, 'dimension', 'a'.repeat(50))).toBe(`${'a'.repeat(39)}…`);
  });
});

describe('the lists of units', () => {
  it('begin with that of the profile', () => {
    expect(unitsRead(US, 'run')).toEqual(['ft', 'm', 'mm', 'cm', 'in', 'km']);
    expect(unitsRead(readProfile('US, run yd'), 'run')).toEqual(['yd', 'm', 'ft', 'mm', 'cm', 'in', 'km']);
    expect(alsoRead(metric, 'temperature')).toEqual(['°F', 'K']);
    expect(alsoRead(metric, 'count')).toEqual([]);
  });
});

describe('the nearest words', () => {
  it('come in order of likeness, whatever the case', () => {
    expect(nearest('INSID', ['outside', 'inside', 'middle', 'fit'], 2)).toEqual(['inside', 'outside']);
    expect(nearest('', ['a'])).toEqual(['a']);
  });

  it('finds a name by one of its words, mistyped or not', () => {
    const fish = ['warm-water', 'cool-water', 'tilapia', 'channel catfish', 'rainbow trout', 'sprout'];
    expect(nearest('trout', fish)[0]).toBe('rainbow trout');
    expect(nearest('Catfsh', fish)[0]).toBe('channel catfish');
    expect(nearest('tilapa', fish)[0]).toBe('tilapia');
    expect(nearest('trout', ['rainbow trout', 'trout'])).toEqual(['trout', 'rainbow trout']);
  });

  it('is found in no time, however long the text', () => {
    expect(nearest('x'.repeat(1e5), ['fit'])).toEqual(['fit']);
  });
});
