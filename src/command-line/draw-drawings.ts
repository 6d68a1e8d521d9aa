import type { Bounds, CellValue } from '../catalogue/argument';
import { figureReader } from '../catalogue/reading/read-figure';
import { readPatterns, readPlan } from '../catalogue/reading/read-patterns';
import { coneRows } from '../catalogue/rows/cone';
import { cutRows } from '../catalogue/rows/cut';
import { cutPlanDrawing } from '../drawing/cut-plan-drawing';
import type { Drawing } from '../drawing/drawing-model';
import { drumSectionDrawing } from '../drawing/drum-section-drawing';
import { patternDrawing } from '../drawing/pattern-drawing';
import type { CutRow, PlacedPattern } from '../formulas/cut/cut-plan';
import { adapt } from '../functions/adapter';
import { type Profile, readProfile } from '../units/profile';
import { DrawMistake, type DrawOption, type DrawRequest } from './draw-request';
import { trainDrawings } from './draw-train';
import { cellsOf, openDrawn, unitsOf } from './draw-workbook';

/** Draws what the command line asks for; each pattern of a workbook is a drawing of its own. */
export async function requestedDrawings(request: DrawRequest): Promise<readonly Drawing[]> {
  if (request.what === 'drum') return [drum(request)];
  if (request.what === 'workbook' && request.given.scenarios !== undefined) return trainDrawings(request);
  const patterns = request.what === 'cone' ? cone(request) : await fromWorkbook(request);
  const { profile, rows, plan } = patterns;
  const { name, 'sheet-length': sheetLength } = request.given;
  if (sheetLength !== undefined || request.given['sheet-width'] !== undefined || plan !== undefined) {
    return [planned(request, patterns)];
  }
  return rows.map((pattern, i) => {
    const place = pattern.row ?? i + 1;
    const own =
      rows.length === 1
        ? name
        : `${name === undefined ? '' : `${name}, `}${name === undefined ? 'Row' : 'row'} ${place}`;
    return patternDrawing({ pattern, profile, row: place, ...(own === undefined ? {} : { name: own }) });
  });
}

type Cells = readonly (readonly CellValue[])[];

interface Patterns {
  readonly profile: Profile;
  /** The rows as a worksheet holds them, for the functions that take them. */
  readonly cells: Cells;
  readonly rows: readonly PlacedPattern[];
  readonly plan?: readonly CutRow[];
}

function profileOf(units: string | undefined): Profile {
  if (units === undefined) throw new DrawMistake('--units: give US or metric');
  return readProfile(units);
}

/** Calls a worksheet function itself, so that readings, bounds and messages are the worksheet's. */
function called(name: string, profile: Profile, values: readonly unknown[]): Cells {
  const row = [...coneRows, ...cutRows].find((one) => one.name === name);
  if (row === undefined) throw new RangeError(`no function ${name}`);
  const implementation = adapt(row, (_code, message) => new DrawMistake(message));
  return implementation(profile.text, ...values) as CellValue[][];
}

function cone({ given }: DrawRequest): Patterns {
  const profile = profileOf(given.units);
  const names = ['top', 'bottom', 'height', 'pieces', 'lap', 'thickness', 'measured', 'clearance'] as const;
  const cells = called(
    'CONE.PATTERN',
    profile,
    names.map((name) => plainNumber(given[name])),
  );
  return { profile, cells, rows: readPatterns('patterns', cells, profile) };
}

/** A shell passes everything as text; text that is only a number is read in the profile's unit. */
function plainNumber(typed: string | undefined): CellValue | undefined {
  return typed !== undefined && /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(typed.trim()) ? Number(typed) : typed;
}

async function fromWorkbook({ given }: DrawRequest): Promise<Patterns> {
  if (given.range === undefined) throw new DrawMistake("--range: give the pattern rows, such as 'Patterns'!B5:K7");
  const workbook = await openDrawn(given.workbook ?? '');
  const profile = profileOf(given.units ?? unitsOf(workbook));
  const cells = cellsOf(workbook, given.range);
  const rows = readPatterns('patterns', cells, profile);
  if (given.plan === undefined) return { profile, cells, rows };
  return { profile, cells, rows, plan: readPlan('plan', cellsOf(workbook, given.plan), profile) };
}

/** The plan of the workbook, or the one that `SILT.CUT.PLAN` makes of the rows. */
function planned({ given }: DrawRequest, { profile, cells, rows, plan }: Patterns): Drawing {
  const sheetLength = figure(given, 'sheet-length', profile, positive);
  const sheetWidth = figure(given, 'sheet-width', profile, positive);
  if (sheetLength === undefined || sheetWidth === undefined) {
    throw new DrawMistake('a cut plan needs both --sheet-length and --sheet-width');
  }
  const sizes = (['sheet-length', 'sheet-width', 'gap'] as const).map((name) => plainNumber(given[name]));
  return cutPlanDrawing({
    patterns: rows,
    plan: plan ?? readPlan('plan', called('CUT.PLAN', profile, [cells, ...sizes]), profile),
    sheetLength,
    sheetWidth,
    profile,
    ...(given.name === undefined ? {} : { name: given.name }),
  });
}

const positive: Bounds = { above: 0 };
const notNegative: Bounds = { atLeast: 0 };

function figure(given: DrawRequest['given'], option: DrawOption, profile: Profile, bounds: Bounds): number | undefined {
  const value = plainNumber(given[option]);
  if (value === undefined) return undefined;
  return figureReader(`--${option}`, { kind: 'dimension', meaning: option, ...bounds })(value, profile);
}

function drum({ given }: DrawRequest): Drawing {
  const profile = profileOf(given.units);
  const drumDiameter = figure(given, 'drum', profile, positive);
  if (drumDiameter === undefined) throw new DrawMistake('--drum: give the inside diameter of the drum');
  const depth = figure(given, 'depth', profile, positive);
  if (depth === undefined) throw new DrawMistake('--depth: give the depth of water above the cone');
  const rest = {
    coneHeight: figure(given, 'cone-height', profile, notNegative),
    coneTop: figure(given, 'cone-top', profile, positive),
    coneBottom: figure(given, 'cone-bottom', profile, notNegative),
    rise: figure(given, 'rise', profile, notNegative),
    stand: figure(given, 'stand', profile, notNegative),
    drumHeight: figure(given, 'drum-height', profile, positive),
    container: figure(given, 'container', profile, positive),
    drainDrop: figure(given, 'drain-drop', profile, positive),
    name: given.name,
  };
  const named = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
  return drumSectionDrawing({ profile, drumDiameter, depth, ...named });
}
