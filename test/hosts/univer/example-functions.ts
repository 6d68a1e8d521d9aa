import { CustomFunctionError, type Implementation } from '../../../src/hosts/univer/custom-functions';
import type { HostFunction } from '../../../src/hosts/univer/function-set';

function example(name: string, parameters: readonly string[], implementation: Implementation): HostFunction {
  return {
    fullName: `SILT.${name}`,
    metadata: {
      id: name,
      name,
      description: `example ${name}`,
      parameters: parameters.map((parameter) =>
        parameter === 'units'
          ? { name: parameter, dimensionality: 'scalar' as const }
          : { name: parameter, dimensionality: 'matrix' as const },
      ),
    },
    implementation,
  };
}

/** Small functions whose answers are plain to see, to test a host apart from the add-in's own functions. */
export const exampleFunctions: readonly HostFunction[] = [
  example('TEST.SEEN', ['units', 'value', 'other'], (...args) => [[JSON.stringify(args.slice(0, 3))]]),
  example('TEST.GRID', ['units', 'value'], (_units, value) => [
    [1, 'two', true],
    [JSON.stringify(value), '', 0.1 + 0.2],
  ]),
  example('TEST.TWICE', ['units', 'values'], (_units, values) =>
    (values as unknown[][]).map((row) => row.map((cell) => (typeof cell === 'number' ? cell * 2 : ''))),
  ),
  example('TEST.REFUSE', ['units', 'value'], (_units, value) => {
    throw new CustomFunctionError('#VALUE!', `value: ${JSON.stringify(value)} is not allowed`);
  }),
  example('TEST.NONE', ['units'], () => {
    throw new CustomFunctionError('#N/A', 'no published value');
  }),
  example('TEST.MIXED', ['units'], () => [
    [1, 2],
    [new CustomFunctionError('#VALUE!', 'row 2: bad'), ''],
    [5, 6],
  ]),
  example('TEST.BROKEN', ['units'], () => {
    throw new TypeError('a slip');
  }),
  example('TEST.NAN', ['units'], () => [[Number.NaN]]),
];
