import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openHeadless } from '../../src/hosts/univer/headless';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { withShortSearches } from '../functions/short-searches';

withShortSearches();

it('keeps every figure with its own drum when a row between two drums is emptied', async () => {
  const file = new Uint8Array(readFileSync('sample-workbooks/US/cone-cut-plan.xlsx'));
  const book = await openHeadless(await sourceFunctions(), await readWorkbook(file));
  try {
    book.setCells('Drums', 5, 0, [['', '', '', '', '', '', '', '', '', '']]);
    book.setCells('Marking out', 3, 1, [['Sedge']]);
    await book.recalculate();
    const values = (sheet: string, row: number, column: number, columns: number) =>
      book.read(sheet, { row, column, rows: 1, columns })[0]!.map(({ value }) => value);
    // Diameter from the girth; for 45 degrees the height is half of what the cone narrows by.
    const diameter = 72 / Math.PI - 2 * 0.125;
    expect(values('Drums', 6, 11, 1)[0]).toBeCloseTo((diameter - 4) / 2, 9);
    expect(values('Drums', 5, 11, 1)[0] ?? '').toBe('');
    expect(values('Patterns', 5, 0, 1)).toEqual(['Sedge']);
    const [sector] = values('Patterns', 5, 5, 1);
    const marks = book.read('Marking out', { row: 6, column: 0, rows: 30, columns: 2 });
    const lapLine = marks.find(([name]) => name!.value === 'lap line');
    expect(lapLine?.[1]?.value).toBeCloseTo(sector as number, 9);
  } finally {
    book.dispose();
  }
});
