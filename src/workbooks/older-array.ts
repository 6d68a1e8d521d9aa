import { parseRange } from '../hosts/address';
import type { CellResult } from '../hosts/workbook-model';

/** An array formula of the older kind fills the cells it was entered into, whatever the size of its result. */
export function fitted(values: readonly (readonly CellResult[])[], ref: string): CellResult[][] {
  const { rows, columns } = parseRange(ref) ?? { rows: 1, columns: 1 };
  const missing: CellResult = { error: { code: '#N/A', message: '' } };
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const line = values.length === 1 ? values[0] : values[row];
      return (line?.length === 1 ? line[0] : line?.[column]) ?? missing;
    }),
  );
}
