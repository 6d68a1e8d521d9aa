import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../src/catalogue/all';
import type { Argument } from '../../../src/catalogue/argument';
import { functionLibrary } from '../../../src/functions/function-library';
import { acceptedValues, defaultText, unitOf } from '../../../src/task-pane/functions/field-words';
import { computeResult, type Given } from '../../../src/task-pane/functions/live-result';
import { readProfile } from '../../../src/units/profile';

const argument = (name: string, key: string): Argument => row(name).arguments[key]!;
const row = (name: string) => catalogue.find((one) => one.name === name)!;
const ask = (name: string, units: string, ...given: Given[]) => computeResult(functionLibrary, row(name), units, given);

describe('the result of a form', () => {
  test('is a figure with its unit', () => {
    // The girth of a circle is pi times its diameter.
    expect(ask('TANK.GIRTH', 'US', 70)).toMatchObject({ rows: [[expect.closeTo(70 / Math.PI, 9)]], unit: 'in' });
  });

  test('is a row with headings, or several', () => {
    const one = ask('CONE.PATTERN', 'metric', 571.5, 101.6, 234.95);
    expect(one).toMatchObject({ is: 'result', heading: expect.arrayContaining(['slant (mm)']) });
    const several = ask('CONE.PATTERN', 'metric', [[571.5], [500]], 101.6, 234.95);
    expect(several).toMatchObject({ rows: { length: 2 } });
  });

  test('is the message that the cell would show', () => {
    expect(ask('CONE.ANGLE', 'US', 22.5, 24, 9.25)).toMatchObject({
      is: 'fault',
      code: '#VALUE!',
      message: expect.stringContaining('bottom: 24 in is not allowed'),
    });
    expect(ask('CONE.ANGLE', '22.5', 22.5, 4, 9)).toMatchObject({ message: expect.stringContaining('not a profile') });
  });

  test('passes on the error of a cell that it reads, and keeps good rows', () => {
    const failed = { error: { code: '#DIV/0!', message: '' } };
    const mixed = ask('TANK.GIRTH', 'US', [[70], [failed]]);
    expect(mixed).toMatchObject({ rows: [[expect.any(Number)], [{ error: { code: '#DIV/0!' } }]] });
  });
});

describe('the words beside a field', () => {
  const us = readProfile('US');
  test('show unit, bounds and default', () => {
    const temperature = argument('PIPE.LOSS', 'temperature');
    expect([
      unitOf(temperature, us),
      acceptedValues(temperature, us),
      defaultText(temperature, us, functionLibrary),
    ]).toEqual(['°F', 'a temperature from 32 °F to 104 °F', '68 °F']);
    const solidsShare = argument('LOAD.SOLIDS', 'solidsShare');
    expect(defaultText(solidsShare, us, functionLibrary)).toMatch(/^0\.\d+, the usual solids share$/);
  });

  test('exist for every argument of every function', () => {
    for (const { name, arguments: specs } of catalogue) {
      for (const [key, spec] of Object.entries(specs)) {
        expect(acceptedValues(spec, us), `${name} ${key}`).not.toBe('');
        expect(defaultText(spec, us, functionLibrary), `${name} ${key}`).not.toContain('undefined');
      }
    }
  });
});
