import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { readCall } from '../../src/command-line/read-call';

describe('a typed call', () => {
  test('is read into its name and its constants', () => {
    expect(readCall('=SILT.STOCK.FEED("metric", -350, 2.5e2, 1.5%, TRUE)')).toEqual({
      name: 'STOCK.FEED',
      values: ['metric', -350, 250, 0.015, true],
    });
  });

  test('keeps a doubled quote and a comma inside text', () => {
    expect(readCall('=SILT.UNIT.READ("metric","dimension","3 1/4"", or so")').values[2]).toBe('3 1/4", or so');
  });

  test('leaves an argument out between two commas', () => {
    expect(readCall('=SILT.A(1,,2)').values).toEqual([1, null, 2]);
  });

  test('reads a block row by row', () => {
    expect(readCall('=SILT.A({1,"b";3,4})').values).toEqual([
      [
        [1, 'b'],
        [3, 4],
      ],
    ]);
  });

  test('holds a call inside a call', () => {
    expect(readCall('=SILT.A(SILT.B.C(1),2)').values).toEqual([{ name: 'B.C', values: [1] }, 2]);
  });

  test.each(['=1+1', '=SILT.A(B5)', '=SILT.A(1', '=SILT.A({1,2', '=SILT.A(1) SILT.B(2)', '"text"'])(
    'is refused where it is anything else: %s',
    (formula) => {
      expect(() => readCall(formula)).toThrow();
    },
  );

  test('is what every example of the catalogue is', () => {
    for (const { example, name } of catalogue) expect(readCall(example.formula).name).toBe(name);
  });
});
