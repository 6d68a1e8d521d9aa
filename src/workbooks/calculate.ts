import { cellName, parseRange } from '../hosts/address';
import type { HostFunction } from '../hosts/univer/function-set';
import { type Headless, openHeadless } from '../hosts/univer/headless';
import type { CellData, SheetData, WorkbookData } from '../hosts/workbook-model';

function calculatedSheet(host: Headless, sheet: SheetData): SheetData {
  const cells = new Map<string, CellData>(sheet.cells.map((cell) => [cellName(cell.row, cell.column), cell]));
  for (const cell of sheet.cells) {
    if (cell.formula === undefined) continue;
    const own = host.readCell(sheet.name, cell.row, cell.column);
    const { spill: _before, ...rest } = cell;
    cells.set(cellName(cell.row, cell.column), {
      ...rest,
      value: own.value,
      ...(own.spill?.includes(':') ? { spill: own.spill } : {}),
    });
    const range = own.spill?.includes(':') ? parseRange(own.spill) : undefined;
    if (range === undefined) continue;
    host.read(sheet.name, range).forEach((line, downwards) => {
      line.forEach(({ value }, across) => {
        if (downwards === 0 && across === 0) return;
        const [row, column] = [range.row + downwards, range.column + across];
        cells.set(cellName(row, column), { ...cells.get(cellName(row, column)), row, column, value });
      });
    });
  }
  const inOrder = [...cells.values()].sort((a, b) => a.row - b.row || a.column - b.column);
  return { ...sheet, cells: inOrder };
}

/** The workbook with the result of every formula, and the cells that spills fill. */
export async function calculateWorkbook(
  functions: readonly HostFunction[],
  workbook: WorkbookData,
): Promise<WorkbookData> {
  const host = await openHeadless(functions, workbook);
  try {
    return { ...workbook, sheets: workbook.sheets.map((sheet) => calculatedSheet(host, sheet)) };
  } finally {
    host.dispose();
  }
}

/** The same workbook with results instead of formulas, for programs without the add-in's functions. */
export function valuesOnly(workbook: WorkbookData): WorkbookData {
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map(({ formula: _formula, spill: _spill, ...cell }) => cell),
    })),
  };
}
