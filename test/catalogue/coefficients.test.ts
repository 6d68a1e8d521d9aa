import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { coefficient, coefficients, differs } from '../../src/catalogue/coefficients/all';
import { chartedSpecies } from '../../src/formulas/stock/stock-feed-rate';

describe('the table of coefficients', () => {
  it('has no key twice', () => {
    const keys = coefficients.map((one) => one.key.toLowerCase());
    expect(keys.filter((key, place) => keys.indexOf(key) !== place)).toEqual([]);
  });

  it('keeps typical between low and high', () => {
    for (const one of coefficients) {
      expect(one.low ?? one.typical, one.key).toBeLessThanOrEqual(one.typical);
      expect(one.high ?? one.typical, one.key).toBeGreaterThanOrEqual(one.typical);
    }
  });

  it('gives each a source and a meaning, and says so where there is no source', () => {
    for (const one of coefficients) {
      expect(one.source.length, one.key).toBeGreaterThan(3);
      expect(one.meaning.length, one.key).toBeGreaterThan(3);
      if (one.source.startsWith('common practice')) expect(one.known, one.key).toBe('common practice');
    }
  });

  it('says that sources differ wherever what feed becomes, how it settles or what it is worth is published far apart', () => {
    const wide = coefficients.filter(
      (one) => differs(one) && one.known !== 'common practice' && ['LOAD', 'SETTLE', 'HARVEST'].includes(one.topic),
    );
    expect(wide.length).toBeGreaterThan(10);
    expect(wide.filter((one) => !one.meaning.includes('differ')).map((one) => one.key)).toEqual([]);
  });

  it('holds the scenario’s own names', () => {
    const names =
      'solids share, settleable share, ammonia limit, removal, pad holding, pad capture, nitrification, filter reserve, nitrogen share, phosphorus share, potassium share, slurry solids, garden need, phosphate need, available nitrogen, bed holding, bed depth, overflow limit, median settling, settling spread, oxygen floor, peak oxygen factor, oxygen at power failure, stocking limit, alkali purity, protein';
    for (const name of names.split(', ')) expect(coefficient(name).key).toBe(name);
    for (const species of chartedSpecies) expect(coefficient(species).kind).toBe('share');
  });

  it('is what help says about a calculated default', () => {
    const told = catalogue.flatMap(({ name, arguments: given }) =>
      Object.entries(given).flatMap(([key, spec]) =>
        'defaultReads' in spec && spec.defaultReads ? [[`${name} ${key}`, spec.defaultReads] as const] : [],
      ),
    );
    const figures = told.flatMap(([place, text]) => {
      const keys = /\(([a-z, ]+)\)$/.exec(text)?.[1]?.split(', ') ?? [];
      if (!keys.every((key) => coefficients.some((one) => one.key === key))) return [];
      const numbers = text.match(/\d+(\.\d+)?( %)?/g) ?? [];
      return keys.map(
        (key, i) => [place, key, Number.parseFloat(numbers[i]!) / (numbers[i]!.endsWith('%') ? 100 : 1)] as const,
      );
    });
    expect(figures.length).toBeGreaterThan(5);
    for (const [place, key, figure] of figures) expect(coefficient(key).typical, place).toBeCloseTo(figure, 9);
  });

  it('cannot give one that it has not', () => {
    expect(() => coefficient('luck')).toThrow(/luck/);
  });
});
