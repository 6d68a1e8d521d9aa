import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { argumentNames } from '../../src/functions/adapter';
import { isOptional } from '../../src/functions/metadata';
import { refusal, spill } from './call';
import { CellError } from './cell-error';
import { exampleCall } from './example-call';

/** What a note says where a reading of 0 may be an empty cell, so that the difference is not silent. */
const said = /An empty cell looks the same as 0/;

function answer(name: string, values: readonly unknown[]): string {
  try {
    return JSON.stringify(spill(name, ...values));
  } catch (error) {
    if (error instanceof CellError) return `${error.code} ${error.message}`;
    throw error;
  }
}

const cases = catalogue.flatMap((row) => {
  const names = argumentNames(row);
  return names.flatMap((argument, place) => {
    const spec = row.arguments[argument];
    const mayBeBlank = argument === 'headings' || (spec !== undefined && (isOptional(spec) || 'blank' in spec));
    return mayBeBlank ? [{ row, argument, place }] : [];
  });
});

describe('older hosts hand an empty cell over as 0', () => {
  it('has arguments to try', () => expect(cases.length).toBeGreaterThan(100));

  it.each(cases.map((one) => ({ ...one, title: `SILT.${one.row.name} ${one.argument}` })))(
    '$title means the same for both, or says what to type',
    ({ row, argument, place }) => {
      const whole = exampleCall(row);
      const call = (value: unknown) => {
        const values: unknown[] = [...whole];
        while (values.length <= place) values.push(undefined);
        values[place] = value;
        return answer(row.name, values);
      };
      const nothing = call(undefined);
      expect(call(null)).toBe(nothing);
      expect(call('')).toBe(nothing);
      expect(call([['']])).toBe(nothing);
      const zero = call(0);
      if (zero === nothing) return;
      if (zero.startsWith('#')) expect(zero).toContain(`#VALUE! ${argument}: 0 or blank is not allowed; `);
      else expect(zero).toMatch(said);
    },
  );
});

describe('a real 0 is typed', () => {
  it.each([
    ['PLAN.DATES', ['2026-05-04', '0 days']],
    ['PIPE.LOSS', ['US', 20, 1.59, 100, 0, '32 °F']],
    ['PIPE.LOSS', ['metric', 20, 40, 100, 0, '0 °C']],
    ['PIPE.LOSS', ['metric', 20, 40, 100, 0, 20, '0 mm']],
    ['PIPE.GRAVITY', ['US', 6, 200, 4.5, 0, 60, '0.0048 in', 'none']],
    ['PIPE.GRAVITY', ['US', 6, 200, 4.5, 0, 60, '0.0048 in', '0']],
    ['TANK.STAND', ['US', 14, 3, '0 in']],
    ['CONE.MIX', ['US', 5, 6, '0 %']],
  ])('SILT.%s %j', (name, values) => {
    expect(refusal(name, ...values)).toBe('');
  });

  it('says how, in the units of the profile', () => {
    expect(refusal('PLAN.DATES', '2026-05-04', 0)).toBe(
      '#VALUE! baseDays: 0 or blank is not allowed; type 0 days for a real 0, or leave it out for the default',
    );
    expect(refusal('PIPE.LOSS', 'metric', 20, 40, 100, 0, 0)).toContain('type 0 °C for a real 0');
    expect(refusal('PIPE.LOSS', 'US', 20, 1.59, 100, 0, 0)).toBe(
      '#VALUE! temperature: 0 or blank is not allowed; give a temperature from 32 °F to 104 °F',
    );
    expect(refusal('PIPE.GRAVITY', 'US', 6, 200, 4.5, 0, 60, 0.1, 0)).toContain(
      'ends: 0 or blank is not allowed; type none',
    );
  });

  it('is refused where it makes no sense, whatever is typed', () => {
    expect(refusal('TANK.WEIGHT', 'US', 55, 2, 0)).toContain('baseDensity: 0 or blank is not allowed');
    expect(refusal('TANK.WEIGHT', 'US', 55, 2, '0 lb/ft3')).toContain('baseDensity: 0 lb/ft3 is not allowed');
    expect(refusal('LOAD.AMMONIA', 'US', 2, 0.32, 0)).toContain('factor: 0 or blank is not allowed');
  });

  it('in a column of cells spoils only its own row', () => {
    const block = spill('PIPE.LOSS', 'metric', [[20], [20], [20]], 40, 100, 0, [[20], [0], ['']]);
    expect(block.map(([cell]) => typeof cell === 'number')).toEqual([true, false, true]);
  });
});
