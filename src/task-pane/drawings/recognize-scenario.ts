import type { FunctionLibrary } from '../../functions/function-library';
import { rangeName } from '../../hosts/address';
import type { Block } from '../../hosts/sheet-host';
import type { CellResult } from '../../hosts/workbook-model';
import { CalledError } from '../follow/evaluate';
import { type Grid, widthOf } from '../follow/grid';
import { UserError } from '../user-error';
import type { Recognition, Recognized, SelectionContext } from './recognition';
import { inputKinds, scenarioFigures } from './scenario-figures';
import { trainOf } from './train-of';

const mostColumns = 60;
const reach = 120;

/** One scenario of a table of names and columns of figures, and the others to choose from. */
export function recognizedScenario(
  scenarios: Grid,
  column: number,
  units: string,
  from: string,
  functionLibrary: FunctionLibrary,
): Recognized {
  const count = widthOf(scenarios) - 1;
  if (count < 1)
    throw new UserError(`${from} has no column of figures; type the scenario’s figures in a column beside its names.`);
  const titles = Array.from({ length: count }, (_, at) => titleOf(scenarios, at));
  const chosen = Math.min(column, count - 1);
  return {
    request: trainOf(scenarioFigures(scenarios, chosen, units, functionLibrary), `${titles[chosen]}: train`),
    from,
    ...(count === 1
      ? {}
      : {
          others: {
            titles,
            chosen,
            recognizeOther: (index) => recognizedScenario(scenarios, index, units, from, functionLibrary),
          },
        }),
  };
}

function titleOf([heading = []]: Grid, column: number): string {
  const title = isHeading(heading[0]) ? heading[column + 1] : undefined;
  const words = typeof title === 'object' || title === undefined ? '' : String(title).trim();
  return words === '' ? `Scenario ${column + 1}` : words;
}

/** The scenario of the selected column, found by the names of inputs to its left. */
export async function recognizeScenario(
  { sheet, range }: Block,
  around: SelectionContext,
): Promise<Recognition | undefined> {
  const top = Math.max(0, range.row - reach);
  const columns = Math.min(range.column + mostColumns, 16_384);
  const read = { row: top, column: 0, rows: range.row - top + reach, columns };
  const { values } = await around.host.read({ sheet, range: read });
  const names = Object.keys(inputKinds(around.functionLibrary));
  const table = inputTable(values, range.row - top, range.column, new Set(names));
  if (table === undefined) return undefined;
  if (around.units === undefined)
    throw new UserError('This workbook has no units yet; choose a profile in Units, then select the scenario again.');
  const { rows, column, wide } = table;
  const grid = rows.map((row) => (values[row] ?? []).slice(column, column + wide));
  const place = { row: top + (rows[0] ?? 0), column, rows: (rows.at(-1) ?? 0) - (rows[0] ?? 0) + 1, columns: wide };
  const from = `${sheet}!${rangeName(place)}`;
  try {
    return {
      recognized: recognizedScenario(
        grid,
        Math.max(0, range.column - column - 1),
        around.units,
        from,
        around.functionLibrary,
      ),
    };
  } catch (error) {
    if (error instanceof CalledError) throw new UserError(`The scenario in ${from} cannot be drawn: ${error.reason}.`);
    throw error;
  }
}

interface Table {
  readonly rows: readonly number[];
  readonly column: number;
  readonly wide: number;
}

/** Rows of names may stand apart, with headings of their own between them; this far apart they are still one table. */
const furthestApart = 4;

function inputTable(values: Grid, row: number, column: number, names: ReadonlySet<string>): Table | undefined {
  const nameIn = (value: CellResult | undefined): string | undefined => {
    const name = typeof value === 'string' ? value.trim().toLowerCase().replace(/\s+/g, ' ') : '';
    return names.has(name) ? name : undefined;
  };
  for (let left = column; left >= 0; left--) {
    const at = (line: number): string | undefined => nameIn(values[line]?.[left]);
    const start = [row, row + 1].find((line) => at(line) !== undefined);
    if (start === undefined) continue;
    const rows = [...[...rowsReached(start, -1, at)].reverse(), start, ...rowsReached(start, 1, at)];
    const found = new Set(rows.map(at));
    if (!found.has('feed') && !found.has('fish count')) continue;
    const above = values[(rows[0] ?? 0) - 1];
    const titled = above !== undefined && isHeading(above[left]) && above.slice(left + 1).some((value) => value !== '');
    const taken = titled ? [(rows[0] ?? 0) - 1, ...rows] : rows;
    let wide = 1;
    while (taken.some((line) => (values[line]?.[left + wide] ?? '') !== '')) wide++;
    return { rows: taken, column: left, wide };
  }
  return undefined;
}

/** The rows with names above or below a row, up to the first wide gap. */
function rowsReached(start: number, step: 1 | -1, at: (line: number) => string | undefined): readonly number[] {
  const rows: number[] = [];
  for (let line = start + step, last = start; line >= 0 && Math.abs(line - last) <= furthestApart; line += step) {
    if (at(line) === undefined) continue;
    rows.push(line);
    last = line;
  }
  return rows;
}

function isHeading(value: CellResult | undefined): boolean {
  return typeof value !== 'object' && /^(input|scenario)?$/i.test(String(value ?? '').trim());
}
