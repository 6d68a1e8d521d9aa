import { type Place, type WaterAfter, waterOnItsWay } from '../../formulas/balance/water-on-its-way';
import type { FunctionLibrary } from '../../functions/function-library';
import type { CellResult } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import { readProfile } from '../../units/profile';
import { wordGiven, wordQuantity } from '../../units/quantity';
import { Unreadable } from '../../units/unreadable';
import { kindOfInput } from '../convert-typed/role';
import { callOurs } from '../follow/evaluate';
import type { Grid } from '../follow/grid';

/** One scenario: what was put in, what comes out and what each stage carries, by name. */
export interface ScenarioFigures {
  /** An input as it was typed, or `` where it was not given. */
  readonly given: (name: string) => CellResult;
  /** An input as text with its unit; undefined if it is not given or `none`. */
  readonly inputText: (name: string) => string | undefined;
  readonly result: (name: string) => number | undefined;
  /** A result as text with its unit; undefined if there is none. */
  readonly resultText: (name: string) => string | undefined;
  /** The rows of `SILT.PLAN.LIMIT` except the last. */
  readonly stages: readonly { readonly stage: string; readonly feed: CellResult; readonly fish: CellResult }[];
  /** The first limit, as `SILT.PLAN.LIMIT` calls it. */
  readonly first: string | undefined;
  /** The next limit, as text. */
  readonly next: string;
  readonly units: string;
  /** Levels in the water that leaves a place, as text; undefined if no water flows. */
  readonly water: (after: Place, what: keyof WaterAfter) => string | undefined;
}

/** Computes the scenario in one column of a table with the functions that a cell would call. */
export function scenarioFigures(
  scenarios: Grid,
  column: number,
  units: string,
  functionLibrary: FunctionLibrary,
): ScenarioFigures {
  const table = scenarios.map((line) => [line[0] ?? '', line[column + 1] ?? '']);
  const kinds = inputKinds(functionLibrary);
  const folded = (name: CellResult): string => String(name).trim().toLowerCase().replace(/\s+/g, ' ');
  const inputs = new Map(table.map(([name, value]) => [folded(name ?? ''), value ?? '']));
  const given = (name: string): CellResult => inputs.get(name.toLowerCase()) ?? '';
  const results = new Map(
    callOurs('PLAN.COMPARE', [[[units]], table], functionLibrary).map(([name, unit, value]) => [
      folded(name ?? ''),
      { unit: String(unit), value: value ?? '' },
    ]),
  );
  const failed = [...results.values()].find(({ value }) => typeof value === 'object');
  if (failed !== undefined && typeof failed.value === 'object') throw new Unreadable(failed.value.error.message);
  const result = (name: string): number | undefined => {
    const value = results.get(name)?.value;
    return typeof value === 'number' ? value : undefined;
  };
  const limit = callOurs('PLAN.LIMIT', [[[units]], table], functionLibrary);
  const last = limit.at(-1) ?? [];
  const first = /^first limit: (?!not given)(.+)$/.exec(String(last[0]))?.[1];
  return {
    given,
    inputText: (name) => textOfInput(given(name), kindOfInput(kinds, name), units),
    result,
    resultText: (name) => {
      const value = result(name);
      return value === undefined ? undefined : `${threeDigits(value)} ${results.get(name)?.unit ?? ''}`.trimEnd();
    },
    stages: limit.slice(0, -1).map((line) => ({ stage: String(line[0]), feed: line[1] ?? '', fish: line[2] ?? '' })),
    first,
    next: String(last[4] ?? ''),
    units,
    water: waterOf(table, units, functionLibrary),
  };
}

export function inputKinds(functionLibrary: FunctionLibrary) {
  const spec = functionLibrary.catalogue.find(({ name }) => name === 'PLAN.COMPARE')?.arguments.scenarios;
  return spec !== undefined && 'inputs' in spec ? (spec.inputs ?? {}) : {};
}

function textOfInput(value: CellResult, kind: Kind | undefined, units: string): string | undefined {
  if (isLacking(value) || /^(none|-)$/i.test(String(value).trim())) return undefined;
  return kind === undefined ? String(value) : wordGiven(readProfile(units), kind, value);
}

function isLacking(value: CellResult): boolean {
  return value === '' || value === 0 || typeof value === 'object';
}

/** The levels of the balance that our functions use, as text. */
function waterOf(table: Grid, units: string, functionLibrary: FunctionLibrary): ScenarioFigures['water'] {
  const profile = readProfile(units);
  const cells = table.map((line) => line.map((value) => (typeof value === 'object' ? '' : value)));
  const places = waterOnItsWay(functionLibrary.farm(cells, profile).balance);
  return (after, what) => {
    const level = places?.[after][what];
    if (level === undefined) return undefined;
    return level === Number.POSITIVE_INFINITY ? 'without limit' : wordQuantity(profile, 'concentration', level, 3);
  };
}

function threeDigits(value: number): string {
  return String(Number(value.toPrecision(3)));
}
