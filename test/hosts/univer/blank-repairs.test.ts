import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Headless, openHeadless } from '../../../src/hosts/univer/headless';
import { exampleFunctions } from './example-functions';

/**
 * What Excel makes of blank cells and of empty text, from memory; the workbook “check your Excel” asks a user's own
 * Excel. LibreOffice 7.4 gives the same but for a formula that gives a blank cell: it shows 0, but takes it for blank.
 */
const excel: readonly (readonly [source: string, reader: string, result: unknown])[] = [
  // Column D is blank.
  ['=IF(TRUE,D1)', '=ISNUMBER(B1)', true],
  ['=IFERROR(INDEX(D1:D3,2),"")', '=B2=""', false],
  ['=D3', '=B3+1', 1],
  ['=IF(FALSE,1,"")', '=ISTEXT(B4)', true],
  ['=IF(FALSE,1,"")', '=COUNTA(B5)', 1],
  ['=IF(FALSE,1,"")', '=IFERROR(B6*2,"text")', 'text'],
  ['=IF(FALSE,1,"")', '=SUM(B7,1)', 1],
  ['=IF(FALSE,1,"")', '=ISBLANK(B8)', false],
  ['=IF(ISTEXT(D9),1,"")', '=ISTEXT(IFERROR(B9,0))', true],
];

let host: Headless;
beforeAll(async () => {
  const cells = excel.flatMap(([source, reader], row) => [
    { row, column: 1, formula: source },
    { row, column: 2, formula: reader },
  ]);
  const spill = { row: 20, column: 0, formula: '=IF({1;0;1},"",7)' };
  const ofSpill = { row: 20, column: 1, formula: '=ISTEXT(A23)' };
  host = await openHeadless(exampleFunctions, { sheets: [{ name: 'S', cells: [...cells, spill, ofSpill] }] });
  await host.recalculate('everything');
});
afterAll(() => host.dispose());

const read = (column: number) => excel.map((_, row) => host.readCell('S', row, column).value);
const wanted = excel.map(([, , result]) => result);

test('blank cells and empty text are read as Excel reads them, in the calculation that makes them', () => {
  expect(read(2)).toEqual(wanted);
  expect(host.readCell('S', 20, 1).value).toBe(true);
});

test('and in the next one, for formulas that are entered again', async () => {
  host.setCells(
    'S',
    0,
    2,
    excel.map(([, reader]) => [`${reader}`]),
  );
  host.setCells('S', 20, 1, [['=ISTEXT(A23)']]);
  await host.recalculate();
  expect(read(2)).toEqual(wanted);
  expect(host.readCell('S', 20, 1).value).toBe(true);
});

test('a formula never leaves its cell blank', () => {
  expect(read(1).slice(0, 3)).toEqual([0, 0, 0]);
});
