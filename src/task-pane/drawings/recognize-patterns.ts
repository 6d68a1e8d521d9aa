import { type CellRange, cellName, rangeName } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellScalar } from '../../hosts/workbook-model';
import { readProfile } from '../../units/profile';
import { UserError } from '../user-error';
import { type FoundPatterns, findPatterns, patternWidth } from './pattern-rows';
import type { Recognition, Recognized, SelectionContext } from './recognition';

const mostRows = 1000;
const mostColumns = 60;
const lastColumn = 16_384;

/** Pattern rows under the selection, a single cell of one or many rows; undefined where nothing looks like one. */
export async function recognizePatterns(selection: Block, around: SelectionContext): Promise<Recognition | undefined> {
  const { sheet, range } = selection;
  const before = Math.min(range.column, patternWidth);
  const selected = Math.min(range.columns, mostColumns);
  const column = range.column - before;
  const columns = Math.min(before + selected + patternWidth, lastColumn - column);
  const read: CellRange = { row: range.row, rows: Math.min(range.rows, mostRows), column, columns };
  const { values } = await around.host.read({ sheet, range: read });
  const rows = values.map((_, row) => row);
  // A click on the name beside a pattern row means the row.
  const reach = { from: before, to: before + selected };
  // In a workbook without units, the rows agree in only one of the two profiles.
  for (const units of around.units === undefined ? ['metric', 'US'] : [around.units]) {
    const found = findPatterns(values, rows, reach, readProfile(units));
    if (found !== undefined && found.rows.length > 0)
      return { recognized: recognizedRows(found, { sheet, range: read, values }, units) };
    const [fault] = found?.faults ?? [];
    if (found !== undefined && fault !== undefined && around.units !== undefined)
      throw disagreement(fault, { sheet, row: read.row, column: read.column + found.column });
  }
  return undefined;
}

type SearchedBlock = Pick<Block, 'sheet' | 'range' | 'values'>;

function recognizedRows(
  { column, rows, faults }: FoundPatterns,
  { sheet, range, values }: SearchedBlock,
  units: string,
): Recognized {
  const place = rangeName({
    row: range.row + (rows[0] ?? 0),
    column: range.column + column,
    rows: (rows.at(-1) ?? 0) - (rows[0] ?? 0) + 1,
    columns: patternWidth,
  });
  const [fault] = faults;
  const left = fault && cellName(range.row + fault.row, range.column + column).replace(/^[A-Z]+/, '');
  return {
    request: {
      what: 'patterns',
      units,
      rows: rows.map((row) => (values[row] ?? []).slice(column, column + patternWidth) as readonly CellScalar[]),
      names: rows.map((row) => nameBeside(values[row] ?? [], column)),
    },
    from: `${sheet}!${place}`,
    ...(fault === undefined ? {} : { note: `Row ${left} ${fault.why}; it is not drawn.` }),
  };
}

/** The word to the left of a row, as a drum's name is. */
function nameBeside(line: Block['values'][number], column: number): string {
  const value = column === 0 ? '' : line[column - 1];
  return typeof value === 'string' ? value.trim().slice(0, 60) : '';
}

function disagreement(
  { row, why }: FoundPatterns['faults'][number],
  top: { readonly sheet: string; readonly row: number; readonly column: number },
): UserError {
  const place = rangeName({ row: top.row + row, column: top.column, rows: 1, columns: patternWidth });
  return new UserError(`${top.sheet}!${place} ${why}; make the row again with SILT.CONE.PATTERN and select it again.`);
}
