import { describe, expect, it } from 'vitest';
import { patchSheet } from '../../src/workbooks/patch-sheet';
import { scanSheet } from '../../src/workbooks/sheet-scan';

const sheet = (data: string, dimension = 'A1:C3'): string =>
  `<?xml version="1.0"?>\r\n<worksheet xmlns="urn:x"><dimension ref="${dimension}"/><!-- <c r="Z9"/> --><sheetData>${data}</sheetData><extLst/></worksheet>\n`;

const resultAt = (row: number, column: number, value: number | string | boolean) => ({
  row,
  column,
  values: [[value]],
});

describe('results written into a sheet', () => {
  it('change the value of a formula cell and nothing else', () => {
    const before = sheet('<row r="1" spans="1:2"><c r="A1" s="3"><f>1+1</f><v>1</v></c><c r="B1"><v>7</v></c></row>');
    expect(patchSheet(before, [resultAt(0, 0, 2)])).toBe(before.replace('<v>1</v>', '<v>2</v>'));
  });

  it('do not touch a cell whose value is already right, in any notation', () => {
    const before = sheet("<row r='1'><c   r='A1' ><f>1+1</f><v>2</v></c></row>");
    expect(patchSheet(before, [resultAt(0, 0, 2)])).toBe(before);
  });

  it('have their type: text, logical, error', () => {
    const before = sheet('<row r="1"><c r="A1" t="e" vm="1"><f>A2</f><v>#VALUE!</v></c></row>');
    expect(patchSheet(before, [resultAt(0, 0, 'a < "b" & c')])).toContain(
      '<c r="A1" t="str"><f>A2</f><v>a &lt; &quot;b&quot; &amp; c</v></c>',
    );
    expect(patchSheet(before, [resultAt(0, 0, true)])).toContain('<c r="A1" t="b"><f>A2</f><v>1</v></c>');
    const error = { row: 0, column: 0, values: [[{ error: { code: '#N/A', message: 'why' } }]] };
    expect(patchSheet(before, [error])).toContain('<c r="A1" t="e"><f>A2</f><v>#N/A</v></c>');
  });

  it('store an error that the file format does not know as #VALUE!', () => {
    const before = sheet('<row r="1"><c r="A1"><f>A2</f><v>1</v></c></row>');
    const error = { row: 0, column: 0, values: [[{ error: { code: '#SPILL!', message: '' } }]] };
    expect(patchSheet(before, [error])).toContain('t="e"><f>A2</f><v>#VALUE!</v>');
  });

  it('let a spill grow into new cells and rows, in order', () => {
    const before = sheet(
      '<row r="1" spans="1:3"><c r="A1" cm="1"><f t="array" ref="A1">X()</f><v>1</v></c><c r="C1" s="2"/></row><row r="3" ht="20"/><row r="5"><c r="A5"><v>5</v></c></row>',
      'A1:C5',
    );
    const grown = patchSheet(before, [
      {
        row: 0,
        column: 0,
        values: [
          [1, 2],
          [3, 'x'],
          [5, 6],
        ],
      },
    ]);
    expect(grown).toBe(
      before
        .replace('ref="A1">', 'ref="A1:B3">')
        .replace('</c><c r="C1"', '</c><c r="B1"><v>2</v></c><c r="C1"')
        .replace(
          '</row><row r="3"',
          '</row><row r="2"><c r="A2"><v>3</v></c><c r="B2" t="str"><v>x</v></c></row><row r="3"',
        )
        .replace('<row r="3" ht="20"/>', '<row r="3" ht="20"><c r="A3"><v>5</v></c><c r="B3"><v>6</v></c></row>'),
    );
  });

  it('clear what a larger spill left and keep the cells’ style', () => {
    const before = sheet(
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">X()</f><v>1</v></c></row><row r="2"><c r="A2" s="4"><v>2</v></c></row><row r="3"><c r="A3" t="str"><v>c</v></c></row>',
    );
    expect(patchSheet(before, [{ row: 0, column: 0, values: [[1], [9]] }])).toBe(
      before
        .replace('A1:A3', 'A1:A2')
        .replace('<c r="A2" s="4"><v>2</v></c>', '<c r="A2" s="4"><v>9</v></c>')
        .replace('<c r="A3" t="str"><v>c</v></c>', '<c r="A3"/>'),
    );
  });

  it('widen the used range and the row’s spans when a spill goes beyond them', () => {
    const before = sheet(
      '<row r="1" spans="1:1"><c r="A1" cm="1"><f t="array" ref="A1">X()</f><v>1</v></c></row>',
      'A1',
    );
    const after = patchSheet(before, [{ row: 0, column: 0, values: [[1, 2, 3]] }]);
    expect(after).toContain('<dimension ref="A1:C1"/>');
    expect(after).toContain('spans="1:3"');
  });

  it('widen a row’s spans for cells put before its first one', () => {
    const before = sheet(
      '<row r="1" spans="1:1"><c r="A1" cm="1"><f t="array" ref="A1">X()</f><v>1</v></c></row><row r="2" spans="3:3"><c r="C2"><v>7</v></c></row>',
    );
    const after = patchSheet(before, [{ row: 0, column: 0, values: [[1], [2]] }]);
    expect(after).toContain('<row r="2" spans="1:3"><c r="A2"><v>2</v></c><c r="C2">');
  });

  it('keep the prefix of a file’s tags, CDATA, and a byte order mark', () => {
    const before =
      '\uFEFF<x:worksheet xmlns:x="urn:x"><x:sheetData><x:row r="1"><x:c r="A1" cm="1"><x:f t="array" ref="A1"><![CDATA[IF(1<2,"<c>",0)]]></x:f><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>';
    expect(patchSheet(before, [{ row: 0, column: 0, values: [[2, 3]] }])).toBe(
      before
        .replace('ref="A1"', 'ref="A1:B1"')
        .replace('<x:v>1</x:v></x:c>', '<x:v>2</x:v></x:c><x:c r="B1"><x:v>3</x:v></x:c>'),
    );
  });

  it('find cells without an address by their order', () => {
    const scanned = scanSheet(sheet('<row><c><v>1</v></c><c><f>A1</f></c></row><row><c/></row>'));
    expect(scanned.rows.map((row) => row.cells.map((cell) => [cell.row, cell.column]))).toEqual([
      [
        [0, 0],
        [0, 1],
      ],
      [[1, 0]],
    ]);
  });

  it('refuse text that is not XML or not a sheet', () => {
    expect(() => scanSheet('<worksheet><sheetData></worksheet>')).toThrow(SyntaxError);
    expect(() => scanSheet('<worksheet/>')).toThrow(/no sheetData/);
  });
});
