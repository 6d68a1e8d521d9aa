import { Workbook } from '@cj-tech-master/excelts';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { readZip, unpack } from '../../src/workbooks/zip-container';

const full: WorkbookData = {
  title: 'Drums',
  activeSheet: 'Plan',
  sheets: [
    {
      name: 'Silt drums',
      columnWidths: { 0: 22, 2: 9.5 },
      rowHeights: { 0: 30 },
      merges: ['A1:C1'],
      frozenRows: 2,
      frozenColumns: 1,
      tabColor: 'E0B400',
      hideGridlines: true,
      validations: [
        { range: 'B3:B9', type: 'list', formulas: ['"fit,inside"'], allowBlank: true, errorStyle: 'stop' },
        {
          range: 'C3',
          type: 'decimal',
          operator: 'between',
          formulas: ['0', '10'],
          allowBlank: false,
          prompt: 'a height',
          error: '0 to 10',
          errorStyle: 'stop',
        },
      ],
      conditions: [
        { range: 'A3:A9', formula: '=$B$3<>$B$4', style: { bold: true, fontColor: '9B2C1F', fill: 'FDE0E0' } },
      ],
      print: {
        landscape: true,
        paper: 9,
        fitToWidth: 1,
        fitToHeight: 0,
        area: 'A1:K20',
        titleRows: '1:2',
        footer: '&P',
      },
      cells: [
        {
          row: 0,
          column: 0,
          value: 'Drums',
          style: { bold: true, fontSize: 16, fontColor: '1F4E5F', fill: 'DCE9EC' },
        },
        { row: 1, column: 0, value: 'height', style: { horizontal: 'center', vertical: 'middle', wrap: true } },
        { row: 2, column: 0, value: 22.5, style: { numberFormat: '0.00' }, note: 'measured twice' },
        { row: 2, column: 1, value: '22 1/2 in', style: { locked: false } },
        { row: 2, column: 2, value: true },
        { row: 3, column: 0, formula: '=SILT.CONE.ANGLE(SiltUnits,A3,4,9.25)', value: 45.5 },
        { row: 3, column: 1, formula: '=LET(a,A3,a*2)', value: 45 },
        { row: 3, column: 2, formula: '=1/0', value: { error: { code: '#DIV/0!', message: '' } } },
        { row: 5, column: 0, formula: '=SILT.CONE.PATTERN(SiltUnits,A3,4,9)', value: 1, spill: 'A6:B7' },
        { row: 5, column: 1, value: 2 },
        { row: 6, column: 0, value: 3 },
        { row: 6, column: 1, value: 4, style: { borderTop: { style: 'thin', color: '808080' } } },
      ],
    },
    {
      name: 'Plan',
      cells: [{ row: 0, column: 0, formula: '="_xlfn. stays in quotes"', value: '_xlfn. stays in quotes' }],
    },
    { name: 'Kept away', hidden: true, cells: [] },
  ],
  names: [{ name: 'SiltUnits', refersTo: "'Silt drums'!$B$9" }],
};

describe('reading an .xlsx file', () => {
  it('gives all that was written', async () => {
    const read = await readWorkbook(await writeWorkbook(full));
    expect(read.names).toEqual(full.names);
    expect(read.activeSheet).toBe('Plan');
    expect(read.sheets.map((sheet) => [sheet.name, sheet.hidden])).toEqual([
      ['Silt drums', undefined],
      ['Plan', undefined],
      ['Kept away', true],
    ]);
    const [drums] = read.sheets;
    const { cells, columnWidths, ...rest } = drums!;
    const { cells: written, columnWidths: writtenWidths, ...writtenRest } = full.sheets[0]!;
    expect(rest).toEqual(writtenRest);
    expect(columnWidths).toMatchObject(writtenWidths!);
    for (const cell of written) {
      expect(cells.find(({ row, column }) => row === cell.row && column === cell.column)).toEqual(
        // A dynamic formula of one cell comes back as one that fills a range only where it does.
        expect.objectContaining(cell),
      );
    }
    expect(read.sheets[1]!.cells).toEqual(full.sheets[1]!.cells);
  });

  it('reads dates as serial numbers, shared formulas, rich text and theme colors', async () => {
    const file = new Workbook();
    const sheet = file.addWorksheet('Log');
    sheet.getCell('A1').value = new Date(Date.UTC(2026, 4, 1));
    sheet.getCell('A1').numFmt = 'yyyy-mm-dd';
    sheet.getCell('A2').value = { richText: [{ text: 'two ' }, { font: { bold: true }, text: 'parts' }] };
    sheet.getCell('B1').value = { formula: 'A1+1', result: 1 };
    sheet.getCell('B2').value = { sharedFormula: 'B1', result: 2 };
    sheet.getCell('A3').fill = { type: 'pattern', pattern: 'solid', fgColor: { theme: 4 } };
    const read = await readWorkbook(await file.xlsx.writeBuffer());
    const at = (row: number, column: number) =>
      read.sheets[0]!.cells.find((cell) => cell.row === row && cell.column === column);
    // 2026-05-01 is day 46143 of the 1900 date system (Excel, DATE(2026,5,1)).
    expect(at(0, 0)).toMatchObject({ value: 46143, style: { numberFormat: 'yyyy-mm-dd' } });
    expect(at(1, 0)).toMatchObject({ value: 'two parts' });
    expect(at(1, 1)).toMatchObject({ formula: '=A2+1', value: 2 });
    expect(at(2, 0)).toMatchObject({ style: { fill: '4472C4' } });
  });

  // ECMA-376 part 1, 18.3.1.73: customHeight says that somebody has set the height of a row.
  it('reads heights that somebody set, and leaves those that a program fitted to the text', async () => {
    const sheets = [{ name: 'Rows', cells: [{ row: 0, column: 0, value: 1 }], rowHeights: { 0: 30, 1: 45, 2: 20 } }];
    const files = unzipSync(await writeWorkbook({ sheets }));
    const part = 'xl/worksheets/sheet1.xml';
    const text = strFromU8(files[part]!);
    const fitted = text
      .replace('ht="30" customHeight="1"', 'ht="30"')
      .replace('ht="20" customHeight="1"', 'ht="20" customHeight="0"');
    expect(text.length - fitted.length).toBe(' customHeight="1"'.length);
    const read = await readWorkbook(zipSync({ ...files, [part]: strToU8(fitted) }));
    expect(read.sheets[0]?.rowHeights).toEqual({ 1: 45 });
    // Written anew, as with values only, the others have no height that would cut their text.
    const again = strFromU8(unzipSync(await writeWorkbook(read))[part]!);
    expect(again.match(/ ht="[\d.]+"/g)).toEqual([' ht="45"']);
  });

  it('refuses what is not a workbook', async () => {
    await expect(readWorkbook(new TextEncoder().encode('not a zip file'))).rejects.toThrow(
      'not a readable .xlsx workbook',
    );
    await expect(readWorkbook(new Uint8Array())).rejects.toThrow('not a readable .xlsx workbook');
  });

  it('writes every column width, that of nine characters too, which the file writer takes for not given', async () => {
    const columnWidths = { 0: 9, 1: 8, 2: 9.5, 4: 9 };
    const file = await writeWorkbook({ sheets: [{ name: 'Widths', columnWidths, cells: [] }] });
    const sheet = readZip(file).find(({ name }) => name === 'xl/worksheets/sheet1.xml')!;
    const text = new TextDecoder().decode(unpack(sheet));
    const written = [...text.matchAll(/<col min="(\d+)" max="(\d+)" width="([\d.]+)"/g)].map(([, from, to, width]) => [
      Number(from),
      Number(to),
      Math.round(10 * Number(width)) / 10,
    ]);
    expect(written).toEqual([
      [1, 1, 9],
      [2, 2, 8],
      [3, 3, 9.5],
      [5, 5, 9],
    ]);
  });
});
