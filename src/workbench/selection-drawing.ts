import type { CellValue } from '../catalogue/argument';
import { patternColumns } from '../catalogue/pattern-columns';
import { figureReader } from '../catalogue/reading/read-figure';
import { readTable } from '../catalogue/reading/read-table';
import { cutPlanDrawing } from '../drawing/cut-plan-drawing';
import type { Drawing } from '../drawing/drawing-model';
import { patternDrawing } from '../drawing/pattern-drawing';
import type { CutRow, PlacedPattern } from '../formulas/cut-plan';
import { contains } from '../hosts/address';
import { callArguments } from '../hosts/formula-call';
import type { Block, Place } from '../hosts/sheet-host';
import type { Evaluated } from '../hosts/univer/evaluate';
import type { CellResult } from '../hosts/workbook-model';
import { type Profile, readProfile } from '../units/profile';

/** What a drawing of the selection needs to know of the workbook. */
export interface DrawingSource {
  readonly read: (place: Place) => Promise<Block>;
  /** Computes a formula, beginning with `=`, as if it stood on the sheet. */
  readonly evaluate: (sheet: string, formula: string) => Promise<Evaluated>;
}

type Rows = readonly (readonly CellValue[])[];

const patternWidth = Object.keys(patternColumns).length;
const planColumns = {
  pattern: { kind: 'count', atLeast: 1, whole: true },
  piece: { kind: 'count', atLeast: 1, whole: true },
  sheet: { kind: 'count', atLeast: 1, whole: true },
  x: { kind: 'dimension' },
  y: { kind: 'dimension' },
  direction: { kind: 'angle' },
} as const;

/** An error cell is said as it is; a drawing cannot be made of it. */
function plainRows(rows: readonly (readonly CellResult[])[]): Rows {
  return rows.map((row) =>
    row.map((cell) => {
      if (typeof cell === 'object') throw new Error(cell.error.message);
      return cell;
    }),
  );
}

function rowsOf(value: Evaluated): Rows {
  if (typeof value !== 'object') return [[value]];
  if ('error' in value) throw new Error(value.error.message);
  return plainRows(value);
}

/** The block that the selected cell belongs to and the formula that fills it, where one does. */
async function filledBlock(selection: Block, source: DrawingSource): Promise<Block> {
  const { row, column } = selection.range;
  const spill = selection.spills.find((range) => contains(range, row, column));
  return spill === undefined ? selection : source.read({ sheet: selection.sheet, range: spill });
}

/**
 * The drawing that the selected cell calls for: a pattern row by SILT.CONE.PATTERN, or a cut plan by SILT.CUT.PLAN.
 * Undefined where it is neither. Cannot draw rows in error or rows whose numbers do not agree: it throws what to say.
 */
export async function selectionDrawing(selection: Block, source: DrawingSource): Promise<Drawing | undefined> {
  const block = await filledBlock(selection, source);
  const formula = block.formulas[0]?.[0];
  if (formula === undefined) return undefined;
  // An argument may use names that a LET around the call gives.
  const named = /^=\s*LET\s*\(/i.test(formula) ? callArguments(formula, 'LET')?.slice(0, -1) : undefined;
  const around = (text: string): string => (named === undefined ? `=${text}` : `=LET(${[...named, text].join(',')})`);
  const evaluated = async (text: string | undefined): Promise<Rows> =>
    text === undefined || text === '' ? [['']] : rowsOf(await source.evaluate(selection.sheet, around(text)));
  const profileOf = async (text: string | undefined): Promise<Profile> => readProfile((await evaluated(text))[0]?.[0]);

  const pattern = callArguments(formula, 'SILT.CONE.PATTERN');
  if (pattern !== undefined && block.range.columns === patternWidth) {
    return drawPattern(block, selection.range.row, await profileOf(pattern[0]));
  }
  const plan = callArguments(formula, 'SILT.CUT.PLAN');
  if (plan === undefined) return undefined;
  const [units, patterns, length, width] = plan;
  const profile = await profileOf(units);
  const figure = async (name: string, text: string | undefined): Promise<number> =>
    figureReader(name, { kind: 'dimension', meaning: name, above: 0 })((await evaluated(text))[0]?.[0] ?? '', profile);
  return cutPlanDrawing({
    patterns: readTable('patterns', patternColumns, await evaluated(patterns), profile) as unknown as PlacedPattern[],
    plan: readTable('plan', planColumns, plainRows(block.values), profile) as unknown as CutRow[],
    sheetLength: await figure('sheetLength', length),
    sheetWidth: await figure('sheetWidth', width),
    profile,
  });
}

/** Draws the pattern row that is selected; on a heading row, the first one. */
function drawPattern(block: Block, selectedRow: number, profile: Profile): Drawing | undefined {
  const rows = block.values.map((row) => (typeof row[0] === 'object' ? [] : plainRows([row])[0]!));
  const hasHeading = typeof rows[0]?.[0] === 'string' && rows.length > 1;
  const index = Math.max(selectedRow - block.range.row, hasHeading ? 1 : 0);
  const first = block.values[index]?.[0];
  if (typeof first === 'object') throw new Error(first.error.message);
  const row = rows[index];
  if (row === undefined || row.every((cell) => cell === '')) return undefined;
  const [pattern] = readTable('pattern', patternColumns, [row], profile) as unknown as PlacedPattern[];
  if (pattern === undefined) return undefined;
  const place = index + (hasHeading ? 0 : 1);
  const name = block.values.length > (hasHeading ? 2 : 1) ? { name: `Row ${place}` } : {};
  return patternDrawing({ pattern, profile, row: place, ...name });
}
