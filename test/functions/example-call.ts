import type { CatalogueRow } from '../../src/catalogue/define';
import { type Call, isCall, readCall } from '../../src/command-line/read-call';
import { spill } from './call';

/** The arguments of the example on a function's reference page, as a host would hand them over. */
export function exampleCall(row: CatalogueRow): readonly unknown[] {
  return valuesOf(readCall(row.example.formula));
}

function valuesOf({ values }: Call): readonly unknown[] {
  return values.map((value) => (isCall(value) ? spill(value.name, ...valuesOf(value)) : value));
}
