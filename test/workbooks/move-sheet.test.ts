import { readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { MovesOf } from '../../src/hosts/moved-formula';
import type { LineMove, Move } from '../../src/hosts/moved-lines';
import { asOpened } from '../../src/hosts/univer/from-snapshot';
import type { SheetData } from '../../src/hosts/workbook-model';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { moveSheet } from '../../src/workbooks/saving/move-sheet';
import { saveIntoFile } from '../../src/workbooks/saving/save-into-file';
import { all, openPackage, parseXml, storedCells } from './package-parts';

// Rows by their numbers, columns by their letters; wanted is what Excel has after the same changes.
const rows = (first: number, count: number, to?: number): LineMove => ({
  across: 'row',
  first: first - 1,
  count,
  ...(to === undefined ? {} : { to: to - 1 }),
});
const columns = (letter: string, count: number): LineMove => ({
  across: 'column',
  first: letter.charCodeAt(0) - 65,
  count,
});

describe('the part of a worksheet', () => {
  const x14 = 'xmlns:x14="x" xmlns:xm="y"';
  const sheet = (beside: readonly [before: string, after: string], cells = '') =>
    `<worksheet ${x14}>${beside[0]}<sheetData>${cells}</sheetData>${beside[1]}</worksheet>`;
  const moved = (xml: string, ...moves: Move[]): string => {
    const movesOf: MovesOf = (name) => (name === 'Log' ? moves : []);
    return moveSheet(xml, 'Log', movesOf, ({ row, column }) => `own(${row},${column})`);
  };
  const inside = (xml: string) => [
    /^<worksheet [^>]*>(.*)<sheetData>/s.exec(xml)?.[1],
    /<\/sheetData>(.*)<\/worksheet>$/s.exec(xml)?.[1],
  ];

  it('moves rows with their heights and cells with their addresses, and drops those that were deleted', () => {
    const cells =
      '<row r="1" spans="1:2" ht="30" customHeight="1"><c r="A1" s="2" t="s"><v>4</v></c><c r="B1"/></row>' +
      '<row r="4" hidden="1"><c r="A4"><f>SUM(A1:A3)</f><v>1</v></c></row><row r="6"><c r="B6"><v>9</v></c></row>';
    const text = moved(sheet(['', ''], cells), rows(2, 1), rows(7, -1), columns('B', 2));
    expect(text).toContain(
      '<row r="1" ht="30" customHeight="1"><c r="A1" s="2" t="s"><v>4</v></c><c r="D1"/></row>' +
        '<row r="5" hidden="1"><c r="A5"><f>SUM(A1:A3)</f><v>1</v></c></row></sheetData>',
    );
  });

  it('puts rows that moved into their new order', () => {
    const cells = '<row r="1"><c r="A1"/></row><row r="2"><c r="A2" s="2"/></row><row r="3"><c r="A3"/></row>';
    expect(moved(sheet(['', ''], cells), rows(2, 1, 4))).toContain(
      '<row r="1"><c r="A1"/></row><row r="2"><c r="A2"/></row><row r="3"><c r="A3" s="2"/></row>',
    );
  });

  it('gives a formula that is stored as a copy its own text, and moves the cells that one fills', () => {
    const cells =
      '<row r="3"><c r="A3"><f t="shared" ref="A3:A9" si="0">B3</f><v>1</v></c><c r="C3" cm="1"><f t="array" ref="C3:C5">B3:B5</f><v>1</v></c></row>' +
      '<row r="4"><c r="A4"><f t="shared" si="0"/><v>1</v></c></row>';
    const is = storedCells(parseXml(moved(sheet(['', ''], cells), rows(1, 2))));
    expect(is.map(({ address, formula, ref }) => [address, formula, ref])).toEqual([
      ['A5', 'own(2,0)', undefined],
      ['C5', 'B3:B5', 'C5:C7'],
      ['A6', 'own(3,0)', undefined],
    ]);
  });

  it('gives cells that were cut and pasted their own rules, and takes those with them that they had', () => {
    const xml = sheet([
      '',
      '<conditionalFormatting sqref="D5:D8"><cfRule type="expression"><formula>AND(D5&gt;1,C5&gt;1)</formula></cfRule></conditionalFormatting>' +
        '<dataValidations count="2"><dataValidation type="list" sqref="D5"><formula1>$A$1:$A$9</formula1></dataValidation>' +
        '<dataValidation type="list" sqref="F9"><formula1>"gone"</formula1></dataValidation></dataValidations>' +
        '<hyperlinks><hyperlink ref="D5" location="x"/><hyperlink ref="F9" location="gone"/></hyperlinks>',
    ]);
    const move: Move = { across: 'cells', from: { row: 4, column: 3, rows: 1, columns: 1 }, row: 8, column: 5 };
    expect(inside(moved(xml, move))[1]).toBe(
      '<conditionalFormatting sqref="D6:D8"><cfRule type="expression"><formula>AND(D6&gt;1,C6&gt;1)</formula></cfRule></conditionalFormatting>' +
        '<conditionalFormatting sqref="F9"><cfRule type="expression"><formula>AND(F9&gt;1,C9&gt;1)</formula></cfRule></conditionalFormatting>' +
        '<dataValidations count="1"><dataValidation type="list" sqref="F9"><formula1>$A$1:$A$9</formula1></dataValidation></dataValidations>' +
        '<hyperlinks><hyperlink ref="F9" location="x"/></hyperlinks>',
    );
  });

  it.each([
    [
      'merged cells',
      '<mergeCells count="2"><mergeCell ref="A1:B1"/><mergeCell ref="C5:D6"/></mergeCells>',
      '<mergeCells count="1"><mergeCell ref="C4:D5"/></mergeCells>',
    ],
    ['links', '<hyperlinks><hyperlink ref="A1" location="x"/></hyperlinks>', ''],
    ['a filter', '<autoFilter ref="A4:D9"/>', '<autoFilter ref="A3:D8"/>'],
    [
      'page breaks',
      '<rowBreaks count="1" manualBreakCount="1"><brk id="4" max="16383" man="1"/></rowBreaks>',
      '<rowBreaks count="1" manualBreakCount="1"><brk id="3" max="16383" man="1"/></rowBreaks>',
    ],
    [
      'colors',
      '<conditionalFormatting sqref="C4:C9 A1"><cfRule type="expression"><formula>C4&lt;$B$2</formula></cfRule></conditionalFormatting>',
      '<conditionalFormatting sqref="C3:C8"><cfRule type="expression"><formula>C3&lt;$B$1</formula></cfRule></conditionalFormatting>',
    ],
    [
      'lists',
      '<dataValidations count="2"><dataValidation type="list" sqref="A1"><formula1>$D$2:$D$4</formula1></dataValidation><dataValidation type="list" sqref="B4"><formula1>$D$2:$D$4</formula1></dataValidation></dataValidations>',
      '<dataValidations count="1"><dataValidation type="list" sqref="B3"><formula1>$D$1:$D$3</formula1></dataValidation></dataValidations>',
    ],
    [
      'lists of newer programs',
      '<extLst><ext><x14:dataValidations count="1"><x14:dataValidation type="list"><x14:formula1><xm:f>Lists!$A$2:$A$4</xm:f></x14:formula1><xm:sqref>B4</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>',
      '<extLst><ext><x14:dataValidations count="1"><x14:dataValidation type="list"><x14:formula1><xm:f>Lists!$A$2:$A$4</xm:f></x14:formula1><xm:sqref>B3</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>',
    ],
    [
      'small charts in cells',
      '<extLst><ext><x14:sparklines><x14:sparkline><xm:f>Log!A4:C4</xm:f><xm:sqref>D4</xm:sqref></x14:sparkline></x14:sparklines></ext></extLst>',
      '<extLst><ext><x14:sparklines><x14:sparkline><xm:f>Log!A3:C3</xm:f><xm:sqref>D3</xm:sqref></x14:sparkline></x14:sparklines></ext></extLst>',
    ],
  ])('lets %s follow a row that was deleted', (_, before, wanted) => {
    expect(inside(moved(sheet(['', before]), rows(1, -1)))).toEqual(['', wanted]);
  });

  it('moves the widths of columns, of which one run may hold many', () => {
    const before = '<cols><col min="1" max="1" width="9"/><col min="2" max="16384" width="12" style="3"/></cols>';
    const [now] = inside(moved(sheet([before, '']), columns('C', 1)));
    const runs = all(parseXml(now!), 'col').map(({ attributes: { min, max, width } }) => [min, max, width]);
    expect(runs.slice(0, 3)).toEqual([
      ['1', '1', '9'],
      ['2', '2', '12'],
      ['4', '4', '12'],
    ]);
    expect(runs.at(-1)?.slice(1)).toEqual(['16384', '12']);
    // None is there twice, and all are in order.
    runs.reduce((last, [min, max]) => {
      expect(Number(min)).toBeGreaterThan(last);
      return Number(max);
    }, 0);
  });
});

type Change = (sheet: SheetData) => SheetData;

/** A file opened, changed and saved as the workbench does it. */
async function saved(bytes: Uint8Array, name: string, change: Change): Promise<Uint8Array> {
  const before = asOpened(await readWorkbook(bytes));
  const sheets = before.sheets.map((sheet) => ({ ...sheet, openedAs: sheet.name }));
  return saveIntoFile(bytes, before, {
    ...before,
    sheets: sheets.map((sheet) => (sheet.name === name ? change(sheet) : sheet)),
  });
}

const sample = (name: string): Uint8Array => new Uint8Array(readFileSync(`sample-workbooks/US/${name}.xlsx`));
const withMoves =
  (...moves: LineMove[]): Change =>
  (sheet) => ({
    ...sheet,
    moves,
  });

describe('tables', () => {
  const table = (bytes: Uint8Array) => {
    const xml = openPackage(bytes).xml('xl/tables/table1.xml');
    return [xml.attributes.ref, ...all(xml, 'tableColumn').map(({ attributes }) => attributes.name)];
  };

  it('follow rows and columns, and every column has a heading that agrees with its cell', async () => {
    const book = sample('harvest-book');
    const [ref, ...names] = table(book);
    expect([ref, ...names]).toEqual(['A5:D81', 'Date', 'Slurry volume', 'Solids share', 'Remark']);
    const name = (await readWorkbook(book)).sheets.find(({ tables }) => tables !== undefined)!.name;
    const after = await saved(book, name, (sheet) => ({
      ...withMoves(rows(9, 2), columns('B', 1), columns('E', -1))(sheet),
      cells: sheet.cells.flatMap((cell) => {
        const row = cell.row >= 8 ? cell.row + 2 : cell.row;
        // Column D of solids is E by now, which is deleted; the volume has been given another heading.
        if (cell.column === 3) return [];
        const value = cell.row === 4 && cell.column === 1 ? 'Volume' : cell.value;
        return [
          { ...cell, row, column: cell.column > 0 ? cell.column + 1 : 0, ...(value === undefined ? {} : { value }) },
        ];
      }),
    }));
    expect(table(after)).toEqual(['A5:D83', 'Date', 'Column2', 'Volume', 'Solids share']);
    const cells = (await readWorkbook(after)).sheets.find((sheet) => sheet.name === name)!.cells;
    const headings = cells.filter(({ row, column }) => row === 4 && column < 4).map(({ value }) => value);
    expect(headings).toEqual(['Date', 'Column2', 'Volume', 'Solids share']);
  });

  it('are plain cells once the row of their headings was deleted', async () => {
    const book = sample('harvest-book');
    const opened = await readWorkbook(book);
    const name = opened.sheets.find(({ tables }) => tables !== undefined)!.name;
    const after = await saved(book, name, withMoves(rows(5, -1)));
    expect(openPackage(after).names.filter((part) => part.startsWith('xl/tables/'))).toEqual([]);
    expect(strFromU8(unzipSync(after)['[Content_Types].xml']!)).not.toContain('table1');
    expect((await readWorkbook(after)).sheets.find((sheet) => sheet.name === name)!.tables).toBeUndefined();
  });
});

describe('what lies over cells or reads them', () => {
  it('charts are over the same cells, and read the same', async () => {
    const path = 'test/workbooks/files/drum-store.xlsx';
    const bytes = new Uint8Array(readFileSync(path));
    const after = await saved(bytes, 'Drum store', withMoves(rows(2, 3)));
    const rowsOf = (file: Uint8Array) =>
      openPackage(file)
        .names.filter((name) => /^xl\/drawings\/drawing\d+\.xml$/.test(name))
        .flatMap((name) => all(openPackage(file).xml(name), 'xdr:row').concat(all(openPackage(file).xml(name), 'row')))
        .map(({ text }) => Number(text));
    expect(rowsOf(bytes).length).toBeGreaterThan(0);
    expect(rowsOf(after)).toEqual(rowsOf(bytes).map((row) => (row > 0 ? row + 3 : row)));
  });

  it('a name of one sheet follows what it means', async () => {
    const files = unzipSync(sample('water-book'));
    const workbook = strFromU8(files['xl/workbook.xml']!).replace(
      '<definedNames>',
      '<definedNames><definedName name="_xlnm._FilterDatabase" localSheetId="1" hidden="1">Tests!$A$5:$K$62</definedName>',
    );
    const after = await saved(
      zipSync({ ...files, 'xl/workbook.xml': strToU8(workbook) }),
      'Tests',
      withMoves(rows(1, 2)),
    );
    const names = all(openPackage(after).xml('xl/workbook.xml'), 'definedName');
    expect(names.find(({ attributes }) => attributes.name === '_xlnm._FilterDatabase')?.text).toBe('Tests!$A$7:$K$64');
  });
});

describe('a sheet whose rows did not move', () => {
  const xmlOf = (bytes: Uint8Array) => openPackage(bytes).xml('xl/worksheets/sheet2.xml');

  it('has one pane after other rows were frozen', async () => {
    const after = await saved(sample('water-book'), 'Tests', (sheet) => ({ ...sheet, frozenRows: 7 }));
    expect(all(xmlOf(after), 'pane').map(({ attributes }) => [attributes.ySplit, attributes.topLeftCell])).toEqual([
      ['7', 'B8'],
    ]);
    expect(all(xmlOf(after), 'selection')).toEqual([]);
  });

  it.each([
    ['another', 'water-book', 'Tests', 'FF00AA11'],
    ['a first', 'water-book', 'plain', 'FF00AA11'],
  ])('has %s color of its tab', async (_, name, kind, wanted) => {
    const files = unzipSync(sample(name));
    const part = 'xl/worksheets/sheet2.xml';
    const plain = strFromU8(files[part]!).replace(/<sheetPr>.*?<\/sheetPr>/, '');
    const bytes = kind === 'plain' ? zipSync({ ...files, [part]: strToU8(plain) }) : sample(name);
    const after = await saved(bytes, 'Tests', (sheet) => ({ ...sheet, tabColor: '00AA11' }));
    const [properties] = xmlOf(after).children;
    expect(properties?.children[0]).toMatchObject({ name: 'tabColor', attributes: { rgb: wanted } });
    expect(xmlOf(await saved(after, 'Tests', ({ tabColor: _tab, ...sheet }) => sheet)).children[0]).not.toMatchObject({
      children: [{ name: 'tabColor' }],
    });
  });

  it('has other rows and columns hidden, and shows those that were', async () => {
    const hide: Change = (sheet) => ({ ...sheet, hiddenRows: [1, 70], hiddenColumns: [0, 4, 20] });
    const after = await saved(sample('water-book'), 'Tests', hide);
    const hiddenIn = async (bytes: Uint8Array) => {
      const tests = (await readWorkbook(bytes)).sheets.find(({ name }) => name === 'Tests')!;
      return [tests.hiddenRows, tests.hiddenColumns, tests.columnWidths![5], tests.rowHeights![1]];
    };
    const [, , width, height] = await hiddenIn(sample('water-book'));
    expect(await hiddenIn(after)).toEqual([[1, 70], [0, 4, 20], width, height]);
    const shown: Change = ({ hiddenRows: _rows, hiddenColumns: _columns, ...sheet }) => sheet;
    expect(await hiddenIn(await saved(after, 'Tests', shown))).toEqual([undefined, undefined, width, height]);
    expect(await hiddenIn(await saved(after, 'Tests', (sheet) => sheet))).toEqual([[1, 70], [0, 4, 20], width, height]);
  });

  it('keeps the height of an empty row, and leaves a row that may fit its text to itself', async () => {
    const after = await saved(sample('water-book'), 'Tests', (sheet) => {
      const { 1: _second, ...rowHeights } = sheet.rowHeights!;
      return { ...sheet, rowHeights: { ...rowHeights, 70: 40, 80: 50 } };
    });
    const heights = all(xmlOf(after), 'row').map(({ attributes: { r, ht } }) => [r, ht] as const);
    expect(heights.find(([row]) => row === '2')?.[1]).toBeUndefined();
    expect(heights.slice(-2)).toEqual([
      ['71', '40'],
      ['81', '50'],
    ]);
  });
});
