import type { CellRange } from '../address';
import { type Block, HostError, type Place } from '../sheet-host';
import type { CellResult } from '../workbook-model';
import { supports } from './run';

/** More cells than this are read in several steps, because Excel limits the size of one. */
const mostCells = 40_000;

const shape = 'rowIndex,columnIndex,rowCount,columnCount';
const content = 'values,formulas,valueTypes';

/** The selected cells; of whole columns and rows only what is in use. */
export async function readSelection(context: Excel.RequestContext): Promise<Block> {
  const selected = context.workbook.getSelectedRange();
  selected.load(shape);
  const { worksheet } = selected;
  worksheet.load('name');
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load(shape);
  await context.sync();
  const range = rangeOf(selected);
  const clipped =
    range.rows * range.columns > mostCells ? overlap(range, used.isNullObject ? undefined : rangeOf(used)) : range;
  return readBlock(context, { sheet: worksheet.name, range: clipped });
}

/** What is selected and in use, at least its first cell. */
function overlap(selected: CellRange, used: CellRange | undefined): CellRange {
  const { row, column } = selected;
  if (used === undefined) return { row, column, rows: 1, columns: 1 };
  return {
    row,
    column,
    rows: Math.max(1, Math.min(row + selected.rows, used.row + used.rows) - row),
    columns: Math.max(1, Math.min(column + selected.columns, used.column + used.columns) - column),
  };
}

/** The used cells of every sheet that has any. */
export async function readUsedBlocks(context: Excel.RequestContext): Promise<readonly Block[]> {
  const sheets = context.workbook.worksheets;
  sheets.load('items/name');
  await context.sync();
  const used = sheets.items.map((sheet) => {
    const range = sheet.getUsedRangeOrNullObject(true);
    range.load(shape);
    return { sheet: sheet.name, range };
  });
  await context.sync();
  const blocks: Block[] = [];
  for (const { sheet, range } of used) {
    if (!range.isNullObject) blocks.push(await readBlock(context, { sheet, range: rangeOf(range) }));
  }
  return blocks;
}

/** The values and formulas of one range, and which cells only show a part of another cell's result. */
export async function readBlock(context: Excel.RequestContext, { sheet, range }: Place): Promise<Block> {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
  worksheet.load('name');
  await context.sync();
  if (worksheet.isNullObject) throw new HostError('missing', `There is no sheet called ${sheet} any more.`);
  const rowsAtOnce = Math.max(1, Math.floor(mostCells / range.columns));
  const values: CellResult[][] = [];
  const formulas: (string | undefined)[][] = [];
  // The reader of one cell needs the source of its value too, so it is read in the same step.
  const single = range.rows * range.columns === 1 && supports('1.12');
  const parent = single ? parentOf(worksheet, range) : undefined;
  for (let done = 0; done < range.rows; done += rowsAtOnce) {
    const rows = Math.min(rowsAtOnce, range.rows - done);
    const part = worksheet.getRangeByIndexes(range.row + done, range.column, rows, range.columns);
    part.load(content);
    await context.sync();
    part.values.forEach((line: unknown[], down: number) => {
      values.push(line.map((value, across) => cellResult(value, part.valueTypes[down]?.[across])));
      formulas.push(line.map((value, across) => formulaIn(part.formulas[down]?.[across], value)));
    });
  }
  const outside = parent === undefined ? [] : await spillOf(context, worksheet, parent, range);
  const spills = outside.length > 0 ? outside : await readSpills(context, worksheet, range, values, formulas);
  for (const spill of spills) forgetSpilled(spill, range, formulas);
  return { sheet, range, values, formulas, spills };
}

function cellResult(value: unknown, type: unknown): CellResult {
  if (type === 'Error') return { error: { code: String(value), message: '' } };
  if (typeof value === 'number' || typeof value === 'boolean') return value;
  return value === null || value === undefined ? '' : String(value);
}

/** Excel gives a cell without a formula its value in place of one. */
function formulaIn(formula: unknown, value: unknown): string | undefined {
  return typeof formula === 'string' && formula.startsWith('=') && formula !== value ? formula : undefined;
}

function parentOf(worksheet: Excel.Worksheet, { row, column }: CellRange): Excel.Range {
  const parent = worksheet.getCell(row, column).getSpillParentOrNullObject();
  parent.load(shape);
  return parent;
}

/** The range that a formula elsewhere fills, this cell with it. */
async function spillOf(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  parent: Excel.Range,
  { row, column }: CellRange,
): Promise<readonly CellRange[]> {
  if (parent.isNullObject || (parent.rowIndex === row && parent.columnIndex === column)) return [];
  const spill = worksheet.getCell(parent.rowIndex, parent.columnIndex).getSpillingToRangeOrNullObject();
  spill.load(shape);
  await context.sync();
  return spill.isNullObject ? [] : [rangeOf(spill)];
}

/** Finds where formulas spill, only for those with something beside or below them. */
async function readSpills(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  range: CellRange,
  values: readonly (readonly CellResult[])[],
  formulas: readonly (readonly (string | undefined)[])[],
): Promise<readonly CellRange[]> {
  if (!supports('1.12')) return [];
  const asked: Excel.Range[] = [];
  formulas.forEach((line, down) => {
    line.forEach((formula, across) => {
      const beside = values[down]?.[across + 1] ?? '';
      const below = values[down + 1]?.[across] ?? '';
      const isAtEdge = down === range.rows - 1 || across === range.columns - 1;
      if (formula === undefined || (beside === '' && below === '' && !isAtEdge)) return;
      const spill = worksheet.getCell(range.row + down, range.column + across).getSpillingToRangeOrNullObject();
      spill.load(shape);
      asked.push(spill);
    });
  });
  if (asked.length > 0) await context.sync();
  return asked.filter((spill) => !spill.isNullObject && spill.rowCount * spill.columnCount > 1).map(rangeOf);
}

/** Some versions repeat the formula in every cell of its spill. */
function forgetSpilled(spill: CellRange, range: CellRange, formulas: (string | undefined)[][]): void {
  for (let row = spill.row; row < spill.row + spill.rows; row++) {
    const line = formulas[row - range.row];
    if (line === undefined) continue;
    for (let column = spill.column; column < spill.column + spill.columns; column++) {
      const isFirst = row === spill.row && column === spill.column;
      const across = column - range.column;
      if (!isFirst && across >= 0 && across < line.length) line[across] = undefined;
    }
  }
}

function rangeOf(range: Excel.Range): CellRange {
  return { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount };
}
