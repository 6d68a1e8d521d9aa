import { describe, expect, it } from 'vitest';
import { kindOfUnit, symbolOfKind, unitOfKind } from '../../src/units/kind-units';
import { isKind, type Kind } from '../../src/units/kinds';
import { capitalized, tidyText, withArticle, wordList, wordText } from '../../src/units/text';
import { fromSi, makeUnit, neat } from '../../src/units/unit';
import { composeUnit, tidyUnit } from '../../src/units/unit-text';

describe('a unit of a profile', () => {
  it.each<[Kind, string, string, scale: number, from: number, to: number]>([
    ['dimension', 'in', 'in', 0.0254, -1e290, 30 / 0.0254],
    ['run', 'ft', 'ft', 0.3048, -1e290, 30 / 0.3048],
    ['particle', 'mm', 'mm', 0.001, -1e290, 30_000],
    ['volume', 'litres', 'L', 0.001, -1e290, 1e290],
    ['flow', 'gallons per minute', 'gpm', 0.003785411784 / 60, -1e290, 1e290],
    ['flow', 'm3/min', 'm3/min', 1 / 60, -1e290, 1e290],
    ['share', '', '', 1, -1e290, 1],
    ['number', '', '', 1, -1e290, 1e290],
    ['date', '', '', 1, 1, 2_958_465],
    ['density', 'kg/m3', 'kg/m3', 1, 25, 1e290],
    ['density', 'lb/ft3', 'lb/ft3', 0.45359237 / 0.3048 ** 3, 5, 1e290],
    ['density', 'g/cm3', 'g/cm3', 1000, -1e290, 1e290],
  ])('of %s, %s', (kind, text, symbol, scale, from, to) => {
    const unit = makeUnit(kind, text);
    expect(unit?.symbol).toBe(symbol);
    expect((unit?.scale ?? 0) / scale).toBeCloseTo(1, 14);
    expect((unit?.inverse ?? 0) * scale).toBeCloseTo(1, 14);
    expect((unit?.plainFrom ?? 0) / from).toBeCloseTo(1, 14);
    expect((unit?.plainTo ?? 0) / to).toBeCloseTo(1, 14);
    expect(unit?.shift).toBe(0);
  });

  it('is none where the text is no unit of the kind', () => {
    expect(makeUnit('dimension', 'kg')).toBeUndefined();
    expect(makeUnit('dimension', '')).toBeUndefined();
    expect(makeUnit('temperature', 'F')).toMatchObject({ symbol: '°F', shift: -32 });
  });

  it('has a listed symbol of the same size before its own', () => {
    const symbol = (kind: Kind, text: string) => symbolOfKind(kind, text, unitOfKind(kind, text)!);
    expect([symbol('pressure', 'hPa'), symbol('pressure', 'bar')]).toEqual(['hPa', 'bar']);
    expect([symbol('temperature', 'kelvin'), symbol('volume', 'litre')]).toEqual(['K', 'L']);
    expect(kindOfUnit('m3/min')).toBe('flow');
    expect(['', 'c', 'F', 'k', 'furlong'].map(kindOfUnit)).toEqual(Array(5).fill(undefined));
  });

  it('composes powers, factors and reciprocals', () => {
    const of = (text: string) => composeUnit(tidyUnit(text));
    expect(of('lb/1000 ft2')).toMatchObject({ symbol: 'lb/1000 ft2', numerator: 45359237 * 1250 ** 2 });
    expect(of('1000 ft2')).toMatchObject({ symbol: '1000 ft2', numerator: 1000 * 381 ** 2, denominator: 1250 ** 2 });
    expect(of('h-1')).toMatchObject({ numerator: 1, denominator: 3600 });
    expect(of('/h')).toMatchObject({ symbol: '/h', numerator: 1, denominator: 3600 });
    for (const text of ['', '/', 'm/', 'm//s', 'x', 'm4', 'kilox']) expect(of(text), text).toBeUndefined();
    expect([of('kilometres')?.symbol, of('xkilometres')]).toEqual(['km', undefined]);
  });
});

describe('a number in a unit', () => {
  it('is that with six decimals where only rounding parts them', () => {
    expect([neat(0.1 + 0.2), neat(1 / 3), neat(1.2345678)]).toEqual([0.3, 1 / 3, 1.2345678]);
    // What was shifted has the rounding of the figure before.
    expect([neat(3e-15, -32), neat(3e-15), neat(32 + 2 ** -47, -32)]).toEqual([0, 3e-15, 32]);
    expect(fromSi(makeUnit('temperature', '°F')!, 20)).toBe(68);
  });
});

describe('text in messages', () => {
  it('has single spaces, and forty signs at most', () => {
    expect([tidyText(' a \t\n b '), wordText(' a \t\n b ')]).toEqual(['a b', 'a b']);
    expect(wordText('x'.repeat(40))).toBe('x'.repeat(40));
    expect(wordText('x'.repeat(41))).toBe(`${'x'.repeat(39)}…`);
    expect([wordText(' '.repeat(300)), wordText(`${' '.repeat(300)}x`)]).toEqual(['blank', 'x']);
  });

  it('has lists, articles and capitals as a sentence needs them', () => {
    expect([wordList([]), wordList(['a']), wordList(['a', 'b']), wordList(['a', 'b', 'c'], 'and')]).toEqual([
      '',
      'a',
      'a or b',
      'a, b and c',
    ]);
    expect([withArticle('area'), withArticle('unit')]).toEqual(['an area', 'a unit']);
    expect([capitalized('ammonia in tank'), capitalized('pH'), capitalized('')]).toEqual(['Ammonia in tank', 'pH', '']);
    expect(['volume', 'volumes', 'toString'].map(isKind)).toEqual([true, false, false]);
  });
});
