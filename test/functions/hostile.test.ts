import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue/all';
import { adapt, argumentNames } from '../../src/functions/adapter';
import { CellError } from './cell-error';

/** What a sheet, or a user in a hurry, can put into an argument. */
const hostile = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    undefined,
    '',
    ' ',
    0,
    -0,
    -1,
    1e300,
    -1e300,
    5e-324,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    46000,
    true,
    false,
    'NaN',
    'Infinity',
    '1e999',
    '<b>bold</b>',
    '=1+1',
    '22,5 in',
    '1/2',
    '12 %',
    'twelve',
    '3 kg',
    '{top}',
    '__proto__',
    'constructor',
    'toString',
    { code: '#DIV/0!', message: '' },
    { type: 'Error', basicType: 'Error', basicValue: '#REF!' },
    { type: 'Double', basicType: 'Double', basicValue: 3 },
    [],
    [[]],
    [[1], ['']],
    [[1, 2, 3]],
    [
      ['a', 1],
      ['b', 'x'],
    ],
  ),
  fc.double({ noNaN: true }),
  fc.integer({ min: -3, max: 400 }),
  fc.string({ maxLength: 30 }),
  fc.array(fc.array(fc.oneof(fc.double(), fc.string(), fc.constant(null)), { minLength: 2, maxLength: 2 }), {
    minLength: 1,
    maxLength: 3,
  }),
);

const sane = (cell: unknown): boolean =>
  typeof cell === 'string' ||
  typeof cell === 'boolean' ||
  (typeof cell === 'number' && Number.isFinite(cell)) ||
  (cell instanceof CellError && cell.code.startsWith('#'));

describe('hostile values never get past the border', () => {
  it.each(catalogue.map((row) => ({ name: row.name, row })))(
    'SILT.$name gives a result or refuses in words',
    ({ row }) => {
      const implementation = adapt(row, (code, message) => new CellError(code, message));
      const names = argumentNames(row);
      const units = fc.oneof(
        { weight: 6, arbitrary: fc.constantFrom('US', 'metric') },
        { weight: 1, arbitrary: hostile },
      );
      const values = fc.tuple(
        ...names.map((name) =>
          name === 'units' ? units : fc.oneof(hostile, fc.double({ min: 0.01, max: 50, noNaN: true })),
        ),
      );
      fc.assert(
        fc.property(values, (given) => {
          let block: unknown[][];
          try {
            block = implementation(...given, {});
          } catch (error) {
            expect(error).toBeInstanceOf(CellError);
            const { code, message } = error as CellError;
            expect(code).toMatch(/^#/);
            expect(message).not.toMatch(/fault in Siltstead|undefined|NaN\b.*NaN|\[object/);
            if (code === '#VALUE!') expect(message.length).toBeGreaterThan(8);
            return;
          }
          expect(block.length).toBeGreaterThan(0);
          const wide = block[0]!.length;
          for (const line of block) {
            expect(line.length).toBe(wide);
            for (const cell of line) expect(sane(cell), String(cell)).toBe(true);
          }
        }),
        { numRuns: 150, seed: 20261 },
      );
    },
  );
});
