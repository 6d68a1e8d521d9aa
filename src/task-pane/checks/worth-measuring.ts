import { foldedName } from '../../catalogue/reading/input-table';
import type { FunctionLibrary } from '../../functions/function-library';
import { type BookCell, openBook, type Spot } from '../cell-formula/book';
import { type SiltCall, siltCalls } from '../cell-formula/calls';
import { readFormula } from '../cell-formula/read-formula';
import { scopeOf } from '../cell-formula/scope';
import { CalledError, callOurs, evaluate, type Surroundings } from '../follow/evaluate';
import { type Grid, NotFollowed } from '../follow/grid';
import { type Origins, originsOf } from '../follow/origins';
import { readerOf } from './block-reader';
import type { Finding, WorkbookCells } from './find-cautions';
import { driverSentence, explaining, mostWorth } from './verdicts';

/** A farm of the workbook: its inputs, and the cells that they are in. */
interface Farm {
  readonly units: Grid;
  /** Names and values. */
  readonly scenario: Grid;
  /** The cells of the values; empty where they are not known. */
  readonly spots: readonly (readonly Spot[])[];
}

interface Driver {
  readonly name: string;
  /** The result that the figure makes most uncertain, and the share of that result’s variance that it explains alone. */
  readonly result: string;
  readonly share: number;
}

/** The results that decide how large each stage must be and how long the fish have. */
const results = [
  'solids captured',
  'solids in tank',
  'ammonia in tank',
  'flow needed',
  'media volume',
  'oxygen time',
] as const;
/** Functions that take one scenario, which somebody chose in the workbook. */
const ofOneScenario = ['PLAN.LIMIT', 'PLAN.CHECK', 'PLAN.BALANCE', 'PLAN.RANGE'];
/** Farms whose drivers are kept: an edit of another cell, or undoing one, does not compute them again. */
const mostKept = 8;

type Breathe = () => Promise<void>;

/** Finds what to measure; `breathe` lets the page respond before each long computation. */
export type FindMeasuring = (cells: WorkbookCells, breathe: Breathe) => Promise<readonly Finding[]>;

/**
 * Finds the figures most worth measuring for the first plan of a workbook: for the scenario that is chosen, or the
 * first one. Nothing where the workbook itself has PLAN.DRIVERS, whose rows say the same.
 */
export function createMeasuring(): FindMeasuring {
  const kept = new Map<string, readonly Driver[]>();
  return async (cells, breathe) => {
    const farm = await farmOf(cells);
    if (farm === undefined) return [];
    const key = JSON.stringify([farm.units, farm.scenario]);
    let drivers = kept.get(key);
    if (drivers === undefined) {
      drivers = await driversOf(farm, cells.functionLibrary, breathe);
      for (const oldest of [...kept.keys()].slice(0, Math.max(0, kept.size - mostKept + 1))) kept.delete(oldest);
      kept.set(key, drivers);
    }
    return drivers.map((driver) => finding(driver, farm));
  };
}

/**
 * The figures by how much of the plan’s uncertainty each explains: the sum over the results of the share of the variance
 * times the width of the band, as (high - low) / (high + low), so that a result that is nearly sure counts for little.
 */
async function driversOf(
  { units, scenario }: Farm,
  functionLibrary: FunctionLibrary,
  breathe: Breathe,
): Promise<readonly Driver[]> {
  const weights = new Map<string, { sum: number; most: number; driver: Driver }>();
  try {
    await breathe();
    const bands = callOurs('PLAN.RANGE', [units, scenario], functionLibrary);
    for (const result of results) {
      const [, , low, , high] = bands.find(([name]) => name === result) ?? [];
      if (typeof low !== 'number' || typeof high !== 'number' || !(high > low)) continue;
      await breathe();
      const rows = callOurs('PLAN.DRIVERS', [units, scenario, [[result]]], functionLibrary);
      for (const { name, share } of explaining(rows)) {
        const weight = (share * (high - low)) / (Math.abs(high) + Math.abs(low));
        const before = weights.get(name);
        const isMost = before === undefined || weight > before.most;
        weights.set(name, {
          sum: (before?.sum ?? 0) + weight,
          most: isMost ? weight : before.most,
          driver: isMost ? { name, share, result } : before.driver,
        });
      }
    }
  } catch (error) {
    // PLAN.COMPARE itself shows what is wrong with the scenario.
    if (error instanceof CalledError) return [];
    throw error;
  }
  return [...weights.values()]
    .sort((one, other) => other.sum - one.sum)
    .slice(0, mostWorth)
    .map(({ driver }) => driver);
}

function finding({ name, share, result }: Driver, { scenario, spots }: Farm): Finding {
  const line = scenario.findIndex(([typed]) => inputOf(typed) === foldedName(name));
  const hasTitle = ['input', 'scenario'].includes(inputOf(scenario[0]?.[0]));
  // An input that is left at its default has no cell yet; the farm's title is above the column where it belongs.
  return {
    tone: 'caution',
    rank: 1,
    about: hasTitle ? String(scenario[0]?.[1] ?? '') : '',
    sentence: driverSentence(name, share, result),
    spots: spots[Math.max(line, 0)] ?? [],
    affected: [],
  };
}

async function farmOf({ blocks, names, functionLibrary }: WorkbookCells): Promise<Farm | undefined> {
  const book = openBook(blocks, names);
  const around: Surroundings = { host: readerOf(blocks), functionLibrary, names };
  const calls = book.formulas.flatMap((cell) => callsIn(cell).map((call) => ({ call, cell })));
  if (calls.some(({ call, cell }) => call.name === 'PLAN.DRIVERS' && typeof cell.value !== 'object')) return undefined;
  const compared = calls.find(({ call }) => call.name === 'PLAN.COMPARE');
  if (compared === undefined) return undefined;
  const chosen = calls.filter(({ call }) => ofOneScenario.includes(call.name));
  for (const { call } of [...chosen, compared]) {
    const farm = await firstFarm(call, around);
    if (farm !== undefined) return farm;
  }
  return undefined;
}

function callsIn({ formula = '', ...cell }: BookCell): readonly SiltCall[] {
  if (!/SILT[._]PLAN[._]/i.test(formula)) return [];
  const part = readFormula(formula);
  return part === undefined ? [] : [...siltCalls(part, scopeOf({ ...cell, formula }))];
}

/** The first scenario that a call takes; undefined if there is none or its cells cannot be followed. */
async function firstFarm({ given: [units, table], scope }: SiltCall, around: Surroundings): Promise<Farm | undefined> {
  if (!units || !table) return undefined;
  try {
    const [profile, grid] = await Promise.all([evaluate(units, scope, around), evaluate(table, scope, around)]);
    const origins = await originsOf(table, scope, around).catch(noOrigins);
    const width = Math.max(...grid.map((line) => line.length));
    const columns = Array.from({ length: width - 1 }, (_, at) => at + 1);
    const column = columns.find((at) => grid.slice(1).some((line) => (line[at] ?? '') !== ''));
    if (column === undefined) return undefined;
    return {
      units: profile,
      scenario: grid.map((line) => [line[0] ?? '', line[column] ?? '']),
      spots: grid.map((_, row) => origins[row]?.[column] ?? []),
    };
  } catch (error) {
    if (error instanceof NotFollowed) return undefined;
    throw error;
  }
}

function noOrigins(error: unknown): Origins {
  if (error instanceof NotFollowed) return [];
  throw error;
}

function inputOf(value: unknown): string {
  return foldedName(String(value ?? ''));
}
