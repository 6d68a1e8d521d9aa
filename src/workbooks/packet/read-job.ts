import { readPlan } from '../../catalogue/reading/read-patterns';
import type { CutRow, PlacedPattern } from '../../formulas/cut/cut-plan';
import type { FunctionLibrary } from '../../functions/function-library';
import type { CellScalar } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import { type Profile, readProfile } from '../../units/profile';
import { readQuantity } from '../../units/quantity';
import { drumSet } from '../sheets/cone-cut-plan/drum-set';
import {
  PacketMistake,
  type SheetCells,
  sheetNamed,
  tableIn,
  valueBeside,
  valueBesideOr,
  valueOrThrow,
} from './packet-cells';
import { drumsOf, type JobDrum } from './read-drums';
import { type Prices, readCalendar, readPlumbing, readPrices } from './read-prices';

export interface Job {
  /** The sheet of its drums, if the workbook has several sets of the cone sheets; else undefined. */
  readonly set: string | undefined;
  readonly profile: Profile;
  readonly drums: readonly JobDrum[];
  /** What the packet leaves out, and why: drums without a pattern, and sets of sheets that cannot be read. */
  readonly left: readonly string[];
  readonly patterns: readonly PlacedPattern[];
  readonly plan: readonly CutRow[];
  readonly planCells: readonly (readonly CellScalar[])[];
  readonly sheets: readonly CellScalar[];
  readonly toBuy: { readonly headings: readonly string[]; readonly values: readonly CellScalar[] };
  readonly settings: Readonly<
    Record<'thickness' | 'sheetLength' | 'sheetWidth' | 'gap' | 'stand' | 'pail' | 'drop' | 'legs' | 'rise', CellScalar>
  >;
  readonly mix: readonly CellScalar[];
  readonly markStep: CellScalar;
  readonly rivetSpacing: CellScalar;
  /** Undefined if the workbook has no prices. */
  readonly prices: Prices | undefined;
  /** Step, date and note; undefined if the workbook has no calendar. */
  readonly calendar: readonly (readonly CellScalar[])[] | undefined;
  /** Pipe size and wall seal, as PLAN.PARTS takes them. */
  readonly plumbing: readonly (readonly CellScalar[])[];
  /** Calls a worksheet function, so that a figure that is in no cell still equals the one of the worksheet. */
  readonly call: (name: string, ...values: readonly unknown[]) => readonly (readonly CellScalar[])[];
  readonly si: (kind: Kind, value: CellScalar) => number;
}

export type Functions = Pick<FunctionLibrary, 'catalogue' | 'adapt'>;

/**
 * Reads the jobs from the cells of a workbook, with their last calculated values: one, or one for each set of cone
 * sheets, because a set has room for eight drums. Throws PacketMistake if it can read none.
 */
export function readJobs(sheets: readonly SheetCells[], units: string, functions: Functions): readonly Job[] {
  const [first = '', ...others] = sheets.flatMap(({ name }) => drumSet(name) ?? []);
  const jobs: Job[] = [];
  const mistakes: string[] = [];
  for (const suffix of [first, ...others]) {
    try {
      const job = readJob(sheets, units, functions, suffix);
      const set = others.length > 0 ? `Drums${suffix}` : undefined;
      // Own parts are on one list.
      const prices = jobs.length > 0 && job.prices !== undefined ? { ...job.prices, own: [] } : job.prices;
      jobs.push({ ...job, set, prices });
    } catch (error) {
      if (!(error instanceof PacketMistake) || others.length === 0) throw error;
      mistakes.push(`the sheet Drums${suffix}: ${error.message}`);
    }
  }
  const [job, ...more] = jobs;
  if (job === undefined) throw new PacketMistake(mistakes.join('; '));
  return [{ ...job, left: [...job.left, ...mistakes] }, ...more];
}

function readJob(sheets: readonly SheetCells[], units: string, functions: Functions, suffix: string): Job {
  const profile = readProfile(units);
  const [drumSheet, patternSheet, planSheet, mixSheet, standSheet, markSheet] = [
    'Drums',
    'Patterns',
    'Cut plan',
    'Base mix',
    'Stand and ports',
    'Marking out',
  ].map((name) => sheetNamed(sheets, `${name}${suffix}`)) as [
    SheetCells,
    SheetCells,
    SheetCells,
    SheetCells,
    SheetCells,
    SheetCells,
  ];
  const call: Job['call'] = (name, ...values) => {
    const row = functions.catalogue.find((entry) => entry.name === name);
    if (row === undefined) throw new PacketMistake(`there is no function SILT.${name}`);
    const call = functions.adapt(row, (_, message) => new PacketMistake(message));
    return call(...(row.units === false ? [] : [profile.text]), ...values) as CellScalar[][];
  };
  const planTable = tableIn(planSheet, 'pattern row');
  const planCells = planTable.rows
    .map((row) => row.slice(0, 6).map((value) => valueOrThrow(value, 'Cut plan')))
    .filter(([, piece]) => piece !== '');
  const bought = tableIn(planSheet, 'sheets', 'area used');
  const toBuy = tableIn(mixSheet, 'aggregate', 'bags');
  const { drums, left, patterns } = drumsOf([drumSheet, patternSheet, mixSheet, standSheet], profile);
  return {
    ...{ set: undefined, profile, drums, left, patterns, planCells, call },
    plan: readPlan('plan', planCells, profile),
    sheets: (bought.rows[0] ?? []).map((value) => valueOrThrow(value, 'Cut plan')),
    toBuy: { headings: toBuy.headings, values: (toBuy.rows[0] ?? []).map((value) => valueOrThrow(value, 'Base mix')) },
    settings: {
      thickness: valueBeside(drumSheet, 'Sheet thickness'),
      sheetLength: valueBeside(drumSheet, 'Length of a sheet'),
      sheetWidth: valueBeside(drumSheet, 'Width of a sheet'),
      gap: valueBeside(drumSheet, 'Gap between pieces'),
      stand: valueBeside(standSheet, 'Height of the stand'),
      pail: valueBeside(standSheet, 'Height of the pail'),
      drop: valueBesideOr(standSheet, 'Valve below the stand', 0),
      legs: valueBesideOr(standSheet, 'Legs', 4),
      rise: valueBeside(mixSheet, 'Cone’s foot above the floor'),
    },
    mix: ['Parts of light aggregate', 'Spil', 'Cement in a bag'].map((label) => valueBeside(mixSheet, label)),
    markStep: markStepOf(markSheet),
    rivetSpacing: valueBeside(patternSheet, 'Rivets along one seam'),
    prices: readPrices(sheets),
    calendar: readCalendar(sheets),
    plumbing: readPlumbing(sheets, profile.name === 'US' ? '2' : '63 mm'),
    si: (kind, value) => readQuantity(profile, kind, value),
  };
}

function markStepOf({ rows }: SheetCells): CellScalar {
  const row = rows.find((cells) => cells.some((value) => value === 'Degrees between marks'));
  const place = row?.indexOf('Degrees between marks') ?? -1;
  return valueOrThrow(row?.[place + 1] ?? 15, 'Marking out');
}
