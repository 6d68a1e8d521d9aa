import type { CatalogueRow } from '../../catalogue/define';
import { inWords } from '../../catalogue/reading/headings';
import type { Spot } from '../cell-formula/book';
import type { SiltCall } from '../cell-formula/calls';
import { evaluate, type Surroundings } from '../follow/evaluate';
import type { Grid } from '../follow/grid';
import { atPlace, type Origins, type PlaceInGrid } from '../follow/origins';

interface RefusedCall {
  readonly call: SiltCall;
  readonly row: CatalogueRow;
  /** Where the values of each argument come from, the units included. */
  readonly origins: readonly (Origins | undefined)[];
  /** The value of the result that is refused. */
  readonly place: PlaceInGrid;
  /** `height: 0 or blank is not allowed; …`, `patterns: row 2, lap: …`, `drum diameter: …`. */
  readonly reason: string;
}

/** The cells that a refusal is about: an argument, a row and column of a table, or a named input. */
export async function refusedCells(refused: RefusedCall, around: Surroundings): Promise<readonly Spot[]> {
  const { call, row, origins, place, reason } = refused;
  const words = reason.split(':').map((one) => one.trim());
  const [word = ''] = words;
  // `bank: drum diameter: …` or only `drum diameter: …`.
  const isArgument = Object.keys(row.arguments).includes(word);
  const input = (isArgument ? words[1] : word) ?? '';
  const offset = row.units === false ? 0 : 1;
  const valuesOf = (at: number): Promise<Grid> | undefined => {
    const part = call.given[at];
    return part ? evaluate(part, call.scope, around) : undefined;
  };
  for (const [index, [name, spec]] of Object.entries(row.arguments).entries()) {
    const at = index + offset;
    const grid = origins[at];
    if (name === word && !('table' in spec || 'cells' in spec)) return atPlace(grid, place);
    const values = 'table' in spec || 'cells' in spec ? await valuesOf(at) : undefined;
    if (values === undefined || grid === undefined) continue;
    if (name === word && 'table' in spec) {
      const told = /^[^:]+: row (\d+), (?:([^:]+):)?/.exec(reason);
      const line = told === null ? undefined : grid[Number(told[1]) - 1 + rowsAbove(values)];
      const columns = Object.keys(spec.table).map(inWords);
      return line?.[Math.max(0, columns.indexOf(told?.[2] ?? ''))] ?? [];
    }
    const line = values.findIndex(([name]) => typeof name === 'string' && isSameWord(name, input));
    // Columns of names and units stand before the first scenario in the result, one of names in the table.
    const column = (values[0]?.length ?? 0) > 2 ? Math.max(1, place.across - 1) : 1;
    const spots = grid[line]?.[column];
    if (spots !== undefined) return spots;
  }
  return [];
}

/** The number of blank rows and headings at the top of a table, which a refusal does not count. */
function rowsAbove(values: Grid): number {
  const first = values.findIndex((line) => line.some((value) => value !== ''));
  const isHeading = values[first]?.every((value) => typeof value === 'string') === true && values.length > first + 1;
  return Math.max(0, first) + (isHeading ? 1 : 0);
}

function isSameWord(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
