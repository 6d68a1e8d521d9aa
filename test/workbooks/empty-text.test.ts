import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { openPackage, storedCells } from './package-parts';

const cells = [
  { row: 0, column: 0, formula: '=IF(1>2,1,"")', value: '' },
  { row: 1, column: 0, formula: '=SILT.UNIT.LABEL("US","flow")', value: '' },
];

describe('a formula that gives empty text', () => {
  it('is stored as text, so that it does not become blank or 0', async () => {
    const bytes = await writeWorkbook({ sheets: [{ name: 'Sheet', cells }] });
    const stored = storedCells(openPackage(bytes).xml('xl/worksheets/sheet1.xml'));
    expect(stored.map(({ address, type, value }) => [address, type, value])).toEqual([
      ['A1', 'str', ''],
      ['A2', 'str', ''],
    ]);
  });

  it('gives empty text again when the file is read', async () => {
    const read = await readWorkbook(await writeWorkbook({ sheets: [{ name: 'Sheet', cells }] }));
    expect(read.sheets[0]!.cells.map(({ value }) => value)).toEqual(['', '']);
  });

  it('names the engine in the file, so that Excel does not calculate again on opening', async () => {
    const { xml } = openPackage(await writeWorkbook({ sheets: [{ name: 'Sheet', cells }] }));
    const properties = xml('xl/workbook.xml').children.find(({ name }) => name === 'calcPr');
    // ECMA-376 part 1, 18.2.2, and what the Excel of 2025 writes there.
    expect(properties?.attributes.calcId).toBe('191029');
  });
});
