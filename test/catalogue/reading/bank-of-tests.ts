import type { CellValue } from '../../../src/catalogue/argument';
import type { NamedInputs } from '../../../src/catalogue/plan/named-input';
import { ArgumentError } from '../../../src/catalogue/reading/argument-error';
import { inputTable, type OpenCell } from '../../../src/catalogue/reading/input-table';
import { Unreadable } from '../../../src/units/unreadable';

const meaning = 'a test';

/** An input of each sort. */
export const inputs = {
  drums: { kind: 'count', whole: true, equipment: true, meaning },
  topLength: { kind: 'dimension', above: 0, required: true, meaning },
  species: { choice: ['tilapia', 'channel catfish'], meaning },
  protein: { kind: 'share', default: 'coefficient', meaning },
  stocking: { kind: 'stocking', default: 10, species: ({ oxygen }: { oxygen: number }) => oxygen, meaning },
  gap: { kind: 'dimension', atLeast: 0, default: 0.5, meaning },
  other: { kind: 'dimension', as: 'gap', meaning },
  lowest: { kind: 'temperature', default: 5, name: 'lowest °C', meaning },
  flow: { kind: 'flow', meaning },
  tip: {
    kind: 'number',
    accepts: 'a word',
    default: 'usual',
    meaning,
    reader: (value: CellValue) => {
      if (value === 'bad') throw new Unreadable('bad is bad');
      return `${value}!`;
    },
  },
} as unknown as NamedInputs;

export type Cells = readonly (readonly OpenCell[])[];
export const table = (cells: Cells) => inputTable('bank', inputs, cells, ['input', 'bank']);

/** An error in a cell. */
export const fault = Object.assign(new Error('bad'), { code: '#N/A' });

/** What a call gives, or the message or the error with which it is refused. */
export function says(call: () => unknown): unknown {
  try {
    return call();
  } catch (error) {
    return error instanceof ArgumentError ? error.message : error;
  }
}
