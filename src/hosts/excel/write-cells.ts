import { HostError, type Write } from '../sheet-host';
import type { CellScalar } from '../workbook-model';
import { hostError, run, supports } from './run';

/** Excel counts a column's width in points here: 7 pixels a character and 5 of padding, 3/4 point a pixel. */
export const widthInPoints = (characters: number): number => (characters * 7 + 5) * 0.75;

/** Writes all cells or none: if Excel stops half way, the old contents are restored. */
export async function writeCells(writes: readonly Write[]): Promise<void> {
  await run(async (context) => {
    const places = writes.map((write) => ({
      write,
      sheet: context.workbook.worksheets.getItemOrNullObject(write.sheet),
    }));
    for (const { sheet } of places) sheet.load('name');
    await context.sync();
    const missing = places.find(({ sheet }) => sheet.isNullObject);
    if (missing !== undefined)
      throw new HostError('missing', `There is no sheet called ${missing.write.sheet} any more.`);
    const targets = places.map(({ write, sheet }) => {
      const range = sheet.getRangeByIndexes(write.row, write.column, write.cells.length, write.cells[0]?.length ?? 0);
      range.load('formulas,numberFormat');
      return { range, write };
    });
    await context.sync();
    const before = targets.map(({ range }): Before => {
      const { formulas, numberFormat } = range;
      return { range, formulas, numberFormat };
    });
    try {
      for (const { range, write } of targets) putBlock(range, write);
      await context.sync();
    } catch (error) {
      await restore(before);
      throw hostError(error);
    }
    await putNotes(context, writes);
  });
}

function putBlock(range: Excel.Range, { cells, numberFormat, bold, widths }: Write): void {
  if (numberFormat !== undefined) range.numberFormat = cells.map((line) => line.map(() => numberFormat));
  // Null leaves a cell as it is.
  range.formulas = cells.map((line) => line.map((value) => (value === undefined ? null : asTyped(value))));
  if (bold !== undefined) range.format.font.bold = bold;
  widths?.forEach((width, across) => {
    if (width !== undefined) range.getColumn(across).format.columnWidth = widthInPoints(width);
  });
}

/** Text that would be read as a number, a date or a formula gets an apostrophe, as a person would type it. */
export function asTyped(value: CellScalar): CellScalar {
  if (typeof value !== 'string' || value === '' || value.startsWith('=')) return value;
  return /\d|^['+\-@]|^(?:true|false)$/i.test(value) ? `'${value}` : value;
}

interface Before {
  readonly range: Excel.Range;
  readonly formulas: Excel.Range['formulas'];
  readonly numberFormat: Excel.Range['numberFormat'];
}

/** Restores each range separately, because the range that failed will refuse this too. */
async function restore(before: readonly Before[]): Promise<void> {
  for (const { range, formulas, numberFormat } of before) {
    try {
      range.numberFormat = numberFormat;
      range.formulas = formulas.map((line: unknown[]) => line.map(asTypedBefore));
      await range.context.sync();
    } catch {
      // This range was not written, so it needs no restoring.
    }
  }
}

/** The old content of a cell, so that text stays text when it is written back. */
function asTypedBefore(formula: unknown): unknown {
  return typeof formula === 'string' ? asTyped(formula) : formula;
}

/** Older versions of Excel do not support notes. */
async function putNotes(context: Excel.RequestContext, writes: readonly Write[]): Promise<void> {
  if (!supports('1.18') || writes.every(({ note }) => note === undefined)) return;
  for (const { sheet, row, column, note } of writes) {
    if (note === undefined) continue;
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.notes.add(worksheet.getCell(row, column), note);
  }
  await context.sync();
}
