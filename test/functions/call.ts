import { catalogue } from '../../src/catalogue/all';
import { type Adapted, adapt } from '../../src/functions/adapter';
import { CellError } from './cell-error';

const functions = new Map<string, Adapted>(
  catalogue.map((row) => [row.name, adapt(row, (code, message) => new CellError(code, message))]),
);

/** Calls a worksheet function as a host does; the whole block it spills. */
export function spill(name: string, ...values: unknown[]): unknown[][] {
  const implementation = functions.get(name);
  if (!implementation) throw new Error(`no function ${name}`);
  return implementation(...values);
}

/** The first cell of what a function spills. */
export function call(name: string, ...values: unknown[]): unknown {
  return spill(name, ...values)[0]![0];
}

/** The error that a call gives, as `code message`; empty where it gives a result. */
export function refusal(name: string, ...values: unknown[]): string {
  try {
    const [[first] = []] = spill(name, ...values);
    return first instanceof CellError ? `${first.code} ${first.message}` : '';
  } catch (error) {
    if (error instanceof CellError) return `${error.code} ${error.message}`;
    throw error;
  }
}
