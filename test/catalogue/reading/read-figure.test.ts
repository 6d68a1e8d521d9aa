import { describe, expect, it } from 'vitest';
import type { QuantityArgument } from '../../../src/catalogue/argument';
import { ArgumentError } from '../../../src/catalogue/reading/argument-error';
import { allowed } from '../../../src/catalogue/reading/bounds';
import { figureReader } from '../../../src/catalogue/reading/read-figure';
import { blankIsNotZero, typedZero, typedZeroReader, zeroToType } from '../../../src/catalogue/reading/typed-zero';
import { readProfile } from '../../../src/units/profile';

const metric = readProfile('metric');
const US = readProfile('US');
type Spec = Omit<QuantityArgument, 'meaning'>;
const specOf = (spec: Spec): QuantityArgument => ({ meaning: 'a test', ...spec });

function read(
  spec: Spec,
  value: string | number,
  profile = metric,
  reader: typeof typedZeroReader = figureReader,
): number | string {
  try {
    return reader('it', specOf(spec))(value, profile);
  } catch (error) {
    if (!(error instanceof ArgumentError)) throw error;
    return error.message;
  }
}

describe('the bounds of a figure', () => {
  it.each<[Spec, readonly number[], readonly number[]]>([
    [{ kind: 'number', atLeast: 2, atMost: 3 }, [2, 2.5, 3], [1.999, 3.001]],
    [{ kind: 'number', above: 2, below: 3 }, [2.001, 2.999], [2, 3]],
    [{ kind: 'number' }, [-1e9, 0, 1e9], []],
    [{ kind: 'number', whole: true }, [-2, 3], [2.5]],
    [{ kind: 'count' }, [0, 1.5], [-0.1]],
    [{ kind: 'count', above: -2 }, [-1], [-2]],
    [{ kind: 'count', atLeast: 1 }, [1], [0.9]],
    [{ kind: 'share' }, [0, 0.3, 1], [-0.1, 1.1]],
    [{ kind: 'share', below: 1 }, [0, 0.999], [1]],
    [{ kind: 'share', above: 0 }, [0.001, 1], [0]],
    [{ kind: 'share', atMost: 3 }, [3], [3.1]],
  ])('%j', (spec, good, bad) => {
    for (const figure of good) expect(read(spec, figure)).toBe(figure);
    for (const figure of bad) expect(read(spec, figure)).toMatch(/^it: .*(?:is not allowed|is allowed)/);
  });

  it.each<[Spec, string]>([
    [{ kind: 'dimension', atLeast: 0.5, atMost: 1 }, 'a length from 500 mm to 1000 mm'],
    [{ kind: 'dimension', above: 0.5 }, 'a length of more than 500 mm'],
    [{ kind: 'dimension', atLeast: 0.5 }, 'a length of at least 500 mm'],
    [{ kind: 'dimension', below: 1 }, 'a length of less than 1000 mm'],
    [{ kind: 'dimension', atMost: 1 }, 'a length of at most 1000 mm'],
    [{ kind: 'dimension', above: 0.5, atMost: 1 }, 'a length of more than 500 mm and at most 1000 mm'],
    [{ kind: 'dimension', atLeast: 0.5, below: 1 }, 'a length of at least 500 mm and less than 1000 mm'],
    [{ kind: 'dimension' }, 'a length in mm'],
    [{ kind: 'number' }, 'a number'],
    [{ kind: 'volume', above: 0 }, 'a volume of more than 0 L'],
    [{ kind: 'number', whole: true, atLeast: 1 }, 'a whole number of at least 1'],
    [{ kind: 'share' }, 'a share from 0 to 1'],
  ])('%j are said as “%s”', (spec, words) => {
    expect(allowed(specOf(spec), metric)).toBe(words);
  });
});

describe('a figure beside its bound', () => {
  it('is the bound if only rounding parts them', () => {
    const ice = { kind: 'temperature', atLeast: 0, atMost: 40 } as const;
    expect([read(ice, -0.9e-9), read(ice, 40 + 0.9e-9)]).toEqual([0, 40]);
    expect(read(ice, -1.1e-9)).toContain('is not allowed; give a temperature from 0 °C to 40 °C');
    expect(read(ice, 40 + 1.1e-9)).toContain('is not allowed');
    const number = { kind: 'number', atLeast: 0, atMost: 40 } as const;
    expect(read(number, 40 * (1 + 0.9e-12))).toBe(40);
    expect(read(number, 40 * (1 + 1.1e-12))).toContain('is not allowed');
    expect(read(number, -1e-15)).toContain('is not allowed');
  });

  it('may be larger than usual where the argument allows it', () => {
    expect(read({ kind: 'run', atMost: 9000 }, 1500)).toBe(1500);
    expect(read({ kind: 'run', atMost: 50 }, 60)).toBe('it: 60 m is not allowed; give a length of at most 50 m');
    expect(read({ kind: 'run' }, 101)).toContain('longer than a bare number may be');
    expect(read({ kind: 'dimension', atMost: 9000 }, 1.5e6)).toContain('longer than a bare number may be');
    expect(read({ kind: 'share', below: 50 }, 32)).toBe(32);
    expect(read({ kind: 'share', atMost: 2 }, 32)).toContain('at most 200 % is allowed');
  });

  it('that is 0 may have been blank', () => {
    expect(read({ kind: 'number', above: 0 }, 0)).toBe('it: 0 or blank is not allowed; give a number of more than 0');
    expect(read({ kind: 'number', above: 0 }, '0')).toBe('it: 0 is not allowed; give a number of more than 0');
    expect(read({ kind: 'number' }, 'x')).toContain('it: x is not allowed');
  });
});

describe('a 0 that may be an empty cell', () => {
  it('is one where a blank means something else', () => {
    const blank = (spec: Spec) => blankIsNotZero(specOf(spec));
    expect(blank({ kind: 'days', default: 1 })).toBe(true);
    expect(blank({ kind: 'days', optional: true })).toBe(true);
    expect(blank({ kind: 'days', default: 0, optional: true })).toBe(true);
    expect(blank({ kind: 'days', default: 0 })).toBe(false);
    expect(blank({ kind: 'days' })).toBe(false);
  });

  it('is typed with its unit', () => {
    expect((['share', 'days', 'number'] as const).map((kind) => typedZero(kind, US))).toEqual([
      '0 %',
      '0 days',
      'none',
    ]);
    const typed = (spec: Spec, profile = metric) => zeroToType(specOf(spec), profile);
    expect(typed({ kind: 'days', default: 1 })).toBe('0 days');
    expect(typed({ kind: 'days', default: 0 })).toBeUndefined();
    expect(typed({ kind: 'days', default: 1, above: 0 })).toBeUndefined();
    // 0 °F is -17.8 °C.
    expect(typed({ kind: 'temperature', optional: true, atLeast: 0 })).toBe('0 °C');
    expect(typed({ kind: 'temperature', optional: true, atLeast: 0 }, US)).toBeUndefined();
    expect(typed({ kind: 'temperature', optional: true, atLeast: -18 }, US)).toBe('0 °F');
  });

  it('is refused if bare, and read if typed', () => {
    const zero = (spec: Spec, value: string | number) => read(spec, value, metric, typedZeroReader);
    const advice = (typed: string) =>
      `it: 0 or blank is not allowed; type ${typed} for a real 0, or leave it out for the default`;
    expect(zero({ kind: 'days' }, 0)).toBe(advice('0 days'));
    expect(zero({ kind: 'number' }, 0)).toBe(advice('none'));
    expect(zero({ kind: 'share' }, 0)).toBe(advice('0 %'));
    expect([zero({ kind: 'days' }, '0 days'), zero({ kind: 'days' }, 2)]).toEqual([0, 172800]);
    expect([zero({ kind: 'number' }, ' None '), zero({ kind: 'number' }, '0'), zero({ kind: 'share' }, '0 %')]).toEqual(
      [0, 0, 0],
    );
    expect(zero({ kind: 'number' }, 'nothing')).toContain('it: nothing is not allowed');
    expect(zero({ kind: 'days' }, 'none')).toContain('it: none is not allowed');
  });
});
