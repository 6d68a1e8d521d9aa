import { planResults } from '../../formulas/plan/plan-results';
import type { Profile } from '../../units/profile';
import { toProfile } from '../../units/quantity';
import { wordText } from '../../units/text';
import type { CellFault, MixedCell } from '../argument';
import { ArgumentError } from '../reading/argument-error';
import { type InputTable, inputTable, type OpenCell } from '../reading/input-table';
import { isBlankColumn } from '../reading/named-column';
import { readScenario, scenarioFactors, scenarioTitles, withScenario } from './scenario';
import { scenarioInputs } from './scenario-inputs';
import { compareRows, type ResultKey, resultKeys, resultName, scenarioResults } from './scenario-results';

type GridCell = MixedCell | CellFault;

/** Scenarios side by side: names and units of the results, then one column each; a column that fails shows its error on top. */
export function planCompare(
  scenarios: readonly (readonly OpenCell[])[],
  profile: Profile,
): readonly (readonly GridCell[])[] {
  const table = inputTable('scenarios', scenarioInputs, scenarios, scenarioTitles);
  const columns = Array.from({ length: table.count }, (_, column) => resultColumn(table, column, profile));
  const top = columns[0]?.[0];
  if (columns.length === 1 && top instanceof Error) throw top;
  const units = resultKeys.map((key) => profile.units[scenarioResults[key].kind].symbol);
  const body = compareRows.map((name, i): GridCell[] => [
    name,
    units[i] ?? '',
    ...columns.map((column) => column[i] ?? ''),
  ]);
  if (table.heading === undefined) return body;
  return [['result', 'unit', ...table.heading.slice(1).map(shown)], ...body];
}

const shown = (title: unknown): GridCell => (typeof title === 'number' ? title : String(title));

/** `column 2 (800 fish)`, counted from the first scenario. */
function placeOf({ heading, argument }: InputTable, column: number): string {
  const title = wordText(String(heading?.[column + 1] ?? ''));
  return `${argument}: column ${column + 1}${title === 'blank' ? '' : ` (${title})`}, `;
}

function resultColumn(table: InputTable, column: number, profile: Profile): readonly GridCell[] {
  if (isBlankColumn(table, column)) return [];
  const place = placeOf(table, column);
  try {
    const { scenario, defaults } = readScenario(table, column, place, profile);
    const results = withScenario(place, profile, scenario, () => planResults(scenario, scenarioFactors));
    return [...resultKeys.map((key) => resultCell(key, results[key], place, profile)), defaults.join(', ')];
  } catch (error) {
    if (isFault(error)) return [error];
    throw error;
  }
}

function isFault(error: unknown): error is CellFault {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('#');
}

function resultCell(key: ResultKey, value: number | string, place: string, profile: Profile): GridCell {
  if (typeof value === 'string') return value;
  const { kind } = scenarioResults[key];
  if (Number.isFinite(toProfile(profile, kind, value))) return { kind, si: value };
  throw new ArgumentError(`${place}${resultName(key)} is too large or too small to compute with; check the units`);
}
