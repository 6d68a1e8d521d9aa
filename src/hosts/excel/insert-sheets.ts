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
    const added: Excel.Worksheet[] = [];
    const named: string[] = [];
    try {
      for (const { name } of sheets) added.push(context.workbook.worksheets.add(name));
      await context.sync();
      for (const name of names) {
        if (await isNamed(context, name.name)) continue;
        await putName(context, name);
        await context.sync();
        named.push(name.name);
      }
      for (const [at, sheet] of sheets.entries()) {
        await step?.(at / sheets.length);
        putCells(added[at]!, sheet);
        putStyles(added[at]!, sheet);
        await context.sync();
        putLayout(added[at]!, sheet);
        await context.sync();
      }
      for (const [at, sheet] of sheets.entries()) putCharts(context, added[at]!, sheet);
      await context.sync();
    } catch (error) {
      await takeAway(context, added, named);
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

async function takeAway(
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
  for (const cell of filled) block[cell.row]![cell.column] = contentOf(cell);
  worksheet.getRangeByIndexes(0, 0, rows, columns).formulas = block;
}

function contentOf({ formula, value }: CellData): string | number | boolean | null {
  if (formula !== undefined) return formula;
  return value === undefined || typeof value === 'object' ? null : asTyped(value);
}
