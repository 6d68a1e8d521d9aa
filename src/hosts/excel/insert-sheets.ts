import { contains, parseRange } from '../address';
import type { CellData, SheetData, WorkbookData } from '../workbook-model';
import { putName } from './names';
import { hostError, run } from './run';
import { putCharts } from './sheet-charts';
import { putLayout } from './sheet-layout';
import { putStyles } from './sheet-styles';
import { refuseTaken } from './sheets';
import { asTyped } from './write-cells';

/**
 * Adds whole sheets after the others. All sheets and names exist before any cell is filled, because formulas refer
 * to them; if anything fails, everything added is removed again.
 */
export async function insertSheets(
  { sheets, names = [] }: WorkbookData,
  step?: (share: number) => Promise<void>,
): Promise<void> {
  await run(async (context) => {
    await refuseTaken(
      context,
      sheets.map(({ name }) => name),
    );
    const added: { readonly worksheet: Excel.Worksheet; readonly sheet: SheetData }[] = [];
    const named: string[] = [];
    try {
      for (const sheet of sheets) added.push({ worksheet: context.workbook.worksheets.add(sheet.name), sheet });
      await context.sync();
      for (const name of names) {
        if (await isNamed(context, name.name)) continue;
        await putName(context, name);
        await context.sync();
        named.push(name.name);
      }
      for (const [at, { worksheet, sheet }] of added.entries()) {
        await step?.(at / sheets.length);
        putCells(worksheet, sheet);
        putStyles(worksheet, sheet);
        await context.sync();
        putLayout(worksheet, sheet);
        await context.sync();
      }
      for (const { worksheet, sheet } of added) putCharts(context, worksheet, sheet);
      await context.sync();
    } catch (error) {
      const worksheets = added.map(({ worksheet }) => worksheet);
      await removeAdded(context, worksheets, named);
      throw hostError(error);
    }
  });
}

async function isNamed(context: Excel.RequestContext, name: string): Promise<boolean> {
  const item = context.workbook.names.getItemOrNullObject(name);
  item.load('name');
  await context.sync();
  return !item.isNullObject;
}

async function removeAdded(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  names: readonly string[],
): Promise<void> {
  for (const thing of [...sheets, ...names.map((name) => context.workbook.names.getItem(name))]) {
    try {
      thing.delete();
      await context.sync();
    } catch {
      // It was never created.
    }
  }
}

/** All cells of a sheet in one block; those that a formula spills into stay empty for it. */
function putCells(worksheet: Excel.Worksheet, { cells }: SheetData): void {
  const spills = cells.flatMap(({ spill }) => (spill === undefined ? [] : (parseRange(spill) ?? [])));
  const filled = cells.filter(
    (cell) =>
      cell.formula !== undefined ||
      (cell.value !== undefined && !spills.some((range) => contains(range, cell.row, cell.column))),
  );
  if (filled.length === 0) return;
  const rows = 1 + Math.max(...filled.map(({ row }) => row));
  const columns = 1 + Math.max(...filled.map(({ column }) => column));
  const block: (string | number | boolean | null)[][] = Array.from({ length: rows }, () =>
    new Array<null>(columns).fill(null),
  );
  for (const cell of filled) block[cell.row]?.splice(cell.column, 1, contentOf(cell));
  worksheet.getRangeByIndexes(0, 0, rows, columns).formulas = block;
}

function contentOf({ formula, value }: CellData): string | number | boolean | null {
  if (formula !== undefined) return formula;
  return value === undefined || typeof value === 'object' ? null : asTyped(value);
}
