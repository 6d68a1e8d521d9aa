import { readPatterns, readPlan } from '../../catalogue/reading/read-patterns';
import type { CutRow, PlacedPattern } from '../../formulas/cut/cut-plan';
import type { FunctionLibrary } from '../../functions/function-library';
import type { CellResult, CellScalar } from '../../hosts/workbook-model';
import type { Kind } from '../../units/kinds';
import { type Profile, readProfile } from '../../units/profile';
import { readQuantity } from '../../units/quantity';
import {
  PacketMistake,
  type SheetCells,
  sheetNamed,
  tableIn,
  valueBeside,
  valueBesideOr,
  valueOrThrow,
} from './packet-cells';
import { type Prices, readCalendar, readPlumbing, readPrices } from './read-prices';

/** One drum of the workbook; figures are the cell values, in the workbook's units. */
export interface JobDrum {
  readonly name: string;
  readonly held: string;
  /** Its pattern row, counted from 1. */
  readonly row: number;
  readonly pattern: PlacedPattern;
  readonly patternCells: readonly CellScalar[];
  readonly diameter: CellScalar;
  readonly drain: CellScalar;
  readonly coneHeight: CellScalar;
  readonly depth: CellScalar;
  readonly baseMix: CellScalar;
  readonly water: CellScalar;
  readonly massTotal: CellScalar;
  readonly massPerLeg: CellScalar;
}

export interface Job {
  readonly profile: Profile;
  readonly drums: readonly JobDrum[];
  /** The drums that have no pattern, and why. */
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

/** Reads the job from the cells of a workbook, with their last calculated values. */
export function readJob(sheets: readonly SheetCells[], units: string, functions: Functions): Job {
  const profile = readProfile(units);
  const [drumSheet, patternSheet, planSheet, mixSheet, standSheet, markSheet] = [
    'Drums',
    'Patterns',
    'Cut plan',
    'Base mix',
    'Stand and ports',
    'Marking out',
  ].map((name) => sheetNamed(sheets, name)) as [SheetCells, SheetCells, SheetCells, SheetCells, SheetCells, SheetCells];
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
    ...{ profile, drums, left, patterns, planCells, call },
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

function drumsOf(
  [drumSheet, patternSheet, mixSheet, standSheet]: readonly [SheetCells, SheetCells, SheetCells, SheetCells],
  profile: Profile,
): Pick<Job, 'drums' | 'left' | 'patterns'> {
  const list = tableIn(drumSheet, 'Drum', 'Diameter used');
  const made = tableIn(patternSheet, 'Drum', 'wall angle');
  const mixed = tableIn(mixSheet, 'Drum', 'Base mix');
  const weighed = tableIn(standSheet, 'Drum');
  const drums: JobDrum[] = [];
  const left: string[] = [];
  const patterns: PlacedPattern[] = [];
  for (const [i, row] of made.rows.entries()) {
    const name = String(valueOrThrow(row[0], 'Patterns'));
    const typed = list.rows.find((cells) => cells[0] === row[0]) ?? [];
    const cells = row.slice(1, 11);
    const fault = cells.find((value) => typeof value === 'object');
    const of = (table: typeof list, heading: string): CellResult => {
      const line = table === list ? typed : (table.rows.find((cells) => cells[0] === row[0]) ?? []);
      return line[table.column(heading)] ?? '';
    };
    try {
      if (typeof fault === 'object') throw new PacketMistake(fault.error.message || fault.error.code);
      const patternCells = cells.map((value) => valueOrThrow(value, `Patterns, ${name}`));
      const [pattern] = readPatterns('pattern', [patternCells], profile);
      if (pattern === undefined) throw new PacketMistake('its pattern row is blank');
      patterns.push({ ...pattern, row: i + 1 });
      const figure = (table: typeof list, heading: string) => valueOrThrow(of(table, heading), `${name}, ${heading}`);
      drums.push({
        ...{ name, row: i + 1, pattern, patternCells },
        held: String(figure(list, 'What it held')),
        diameter: figure(list, 'Diameter used'),
        drain: figure(list, 'Drain bore'),
        coneHeight: figure(list, 'Cone height'),
        depth: figure(list, 'Water above cone'),
        baseMix: figure(mixed, 'Base mix'),
        water: figure(mixed, 'Water held'),
        massTotal: figure(weighed, 'total'),
        massPerLeg: figure(weighed, 'load per leg'),
      });
    } catch (error) {
      left.push(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  if (drums.length === 0)
    throw new PacketMistake(`no drum has a pattern${left.length > 0 ? ` (${left.join('; ')})` : ''}`);
  return { drums, left, patterns };
}
