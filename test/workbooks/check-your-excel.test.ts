import { expect, test } from 'vitest';
import { openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { checkYourExcel } from '../../src/workbooks/sheets/check-your-excel';

async function verdicts(workbook: WorkbookData) {
  const host = await openHeadless(await sourceFunctions(), workbook);
  try {
    const rows = host.read('Check', { row: 4, column: 0, rows: 31, columns: 5 });
    const [summary] = host.read('Check', { row: 2, column: 0, rows: 1, columns: 1 });
    return {
      line: summary?.[0]?.value,
      failed: rows
        .filter((row) => row[4]?.value !== 'pass')
        .map((row) => [row[0]?.value, row[1]?.value, row[2]?.value]),
      count: rows.length,
    };
  } finally {
    host.dispose();
  }
}

test('every claim is true in the workbench’s engine, and a line says so', async () => {
  const { failed, line } = await verdicts(checkYourExcel());
  expect(failed).toEqual([]);
  expect(line).toBe('Siltstead check: 33 of 33 passed');
});

test('the line names a claim that is not true', async () => {
  const workbook = checkYourExcel();
  const sheets = workbook.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) =>
      cell.row === 4 && cell.column === 2 ? { ...cell, formula: '=SILT.CONE.ANGEL("US",22.5,4,9.25)' } : cell,
    ),
  }));
  const { failed, line } = await verdicts({ ...workbook, sheets });
  expect(failed.map(([number]) => number)).toEqual([1]);
  expect(line).toBe('Siltstead check: 32 of 33 passed; not 1');
});
