import { describe, expect, it } from 'vitest';
import { cellName, parseRange } from '../../../src/hosts/address';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import { sourceFunctions } from '../../../src/hosts/univer/source-functions';
import type { CellData, CellScalar, WorkbookData } from '../../../src/hosts/workbook-model';
import { readyMade, readyProfiles } from '../../../src/workbooks/sheets/ready-made';
import { withShortSearches } from '../../functions/short-searches';

withShortSearches();

interface Input extends CellData {
  readonly sheet: string;
}

/** The cells to type into; of a column of them, whose rows are all computed alike, the first two and the last. */
function inputsOf(workbook: WorkbookData): Input[] {
  return workbook.sheets.flatMap(({ name, cells }) => {
    const open = cells.filter((cell) => cell.formula === undefined && cell.style?.locked === false);
    const places = new Set(open.map(({ row, column }) => cellName(row, column)));
    const has = ({ row, column }: CellData, down: number): boolean =>
      row + down >= 0 && places.has(cellName(row + down, column));
    return open
      .filter((cell) => !(has(cell, -2) && has(cell, -1) && has(cell, 1)) || !isListOf(cell))
      .map((cell) => ({ ...cell, sheet: name }));
    /** Sheets where each row is an input of its own hold few of them. */
    function isListOf({ column }: CellData): boolean {
      return open.filter((cell) => cell.column === column).length > 12;
    }
  });
}

/** Another entry of the same sort, as somebody trying things out would type. */
function another(value: CellData['value']): CellScalar {
  if (typeof value === 'number') return Number.isInteger(value) ? value + 1 : value * 1.25;
  if (typeof value === 'boolean') return !value;
  return value === 'US' ? 'metric' : value === 'metric' ? 'US' : value === undefined ? 2 : `${String(value)} 2`;
}

/** What every formula shows, and every cell that it fills. */
function shown(host: Headless, workbook: WorkbookData): Record<string, unknown> {
  const values: Record<string, unknown> = {};
  for (const { name, cells } of workbook.sheets)
    for (const { row, column, formula } of cells) {
      if (formula === undefined) continue;
      const own = host.read(name, { row, column, rows: 1, columns: 1 })[0]![0]!;
      const range = parseRange(own.spill ?? '') ?? { row, column, rows: 1, columns: 1 };
      values[`${name}!${cellName(row, column)}`] = host.read(name, range).map((line) => line.map((cell) => cell.value));
    }
  return values;
}

function edited(workbook: WorkbookData, input: Input, value: CellScalar): WorkbookData {
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) =>
        sheet.name === input.sheet && cell.row === input.row && cell.column === input.column
          ? { ...cell, value }
          : cell,
      ),
    })),
  };
}

/** All inputs in one profile; the formulas of the other are the same, so that a part of its inputs is enough. */
const tried = readyProfiles.flatMap((profile, index) =>
  readyMade.map(({ id, build }) => ({ profile, id, build, step: index === 0 ? 1 : 10 })),
);

describe('after one input is changed, every cell is what it would be if all were computed anew', () => {
  it.each(tried)('$profile/$id', async ({ profile, build, step }) => {
    const functions = await sourceFunctions();
    const workbook = build(profile);
    const live = await openHeadless(functions, workbook);
    const other = await openHeadless(functions, workbook);
    const type = async (host: Headless, input: Input, value: CellScalar, from: 'changes' | 'everything') => {
      host.setCells(input.sheet, input.row, input.column, [[value]]);
      await host.recalculate(from);
      return shown(host, workbook);
    };
    const before = shown(live, workbook);
    const inputs = inputsOf(workbook).filter((_, index) => index % step === 0);
    let changes = 0;
    for (const [index, input] of inputs.entries()) {
      const value = another(input.value);
      const after = await type(live, input, value, 'changes');
      const anew = await type(other, input, value, 'everything');
      const cell = `${input.sheet}!${cellName(input.row, input.column)}`;
      expect({ cell, value, after }).toEqual({ cell, value, after: anew });
      if (index % 60 === 0) {
        const scratch = await openHeadless(functions, edited(workbook, input, value));
        expect({ cell, value, after }).toEqual({ cell, value, after: shown(scratch, workbook) });
        scratch.dispose();
      }
      if (JSON.stringify(after) !== JSON.stringify(before)) changes += 1;
      const back = typeof input.value === 'object' ? '' : (input.value ?? '');
      other.setCells(input.sheet, input.row, input.column, [[back]]);
      expect({ cell, back: await type(live, input, back, 'changes') }).toEqual({ cell, back: before });
    }
    live.dispose();
    other.dispose();
    // Many inputs are read by something; the others are names and notes.
    expect(changes).toBeGreaterThan(inputs.length / 3);
  });
});
