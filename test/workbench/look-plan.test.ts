import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { functionLibrary } from '../../src/functions/function-library';
import { functionId } from '../../src/functions/metadata';
import { createCustomFunctions } from '../../src/hosts/univer/custom-functions';
import type { CellData, WorkbookData } from '../../src/hosts/workbook-model';
import { lookPlan } from '../../src/tools/build/look-plan';
import { associatedCalls } from '../../src/workbench/first-look/associated-calls';
import { computeLook, isError } from '../../src/workbench/first-look/look-plan';
import { firstSample } from '../../src/workbench/first-sample';
import { readWorkbook } from '../../src/workbooks/read-xlsx';

const standIn = createCustomFunctions();
for (const row of functionLibrary.catalogue) {
  const adapted = functionLibrary.adapt(row, (code, message) => new standIn.Error(code, message));
  standIn.associate(functionId(row), adapted);
}

/** The computed cells of a sheet, by row and column. */
function computed(workbook: WorkbookData): ReadonlyMap<string, unknown> {
  const sheet = workbook.sheets.find(({ name }) => name === workbook.activeSheet) ?? workbook.sheets[0]!;
  const cells = computeLook(lookPlan(workbook, sheet, 12), associatedCalls(standIn));
  return new Map(cells.map(({ row, column, value }) => [`${row},${column}`, value]));
}

const named: WorkbookData['names'] = [{ name: 'SiltUnits', refersTo: "'Silt units'!$B$4" }];
const units = { name: 'Silt units', cells: [{ row: 3, column: 1, value: 'metric' }] };
const oneSheet = (cells: readonly CellData[]): WorkbookData => ({
  sheets: [{ name: 'Sheet 1', cells }, units],
  names: named,
});

test('diameters and heights of the first sample follow from what is typed there', async () => {
  const workbook = await readWorkbook(readFileSync(`sample-workbooks/${firstSample}`));
  const first = computed(workbook);
  // Plane geometry: a wall at 45 degrees is as high as the drum's radius less the drain's.
  const girth = 72 / Math.PI - 2 * 0.125;
  for (const [row, diameter] of [22.5, 21.75, girth].entries()) {
    expect(first.get(`${row + 4},10`)).toBeCloseTo(diameter, 9);
    expect(first.get(`${row + 4},11`)).toBeCloseTo((diameter - 4) / 2, 9);
  }
  expect(first.get('7,11')).toBe('');

  const retyped = {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => (cell.value === 21.75 ? { ...cell, value: '2 ft' } : cell)),
    })),
  };
  expect(computed(retyped).get('5,11')).toBeCloseTo((24 - 4) / 2, 9);
});

test('what a function refuses is an error in its cell and in those that follow from it', () => {
  const cells = computed(
    oneSheet([
      { row: 0, column: 0, value: '22 1/2 gal' },
      { row: 0, column: 1, formula: '=SILT.UNIT.READ(SiltUnits,"dimension",A1)' },
      { row: 0, column: 2, formula: '=IF(B1<>"","there","")' },
    ]),
  );
  expect(isError(cells.get('0,1'))).toBe(true);
  expect(cells.get('0,2')).toBe(cells.get('0,1'));
});

test('ISERROR and two conditions at once decide as they do in the spreadsheet', () => {
  const read = 'SILT.UNIT.READ(SiltUnits,"dimension",A1:A4)';
  const cells = computed(
    oneSheet([
      { row: 0, column: 0, value: 'nothing' },
      { row: 1, column: 0, value: 7 },
      { row: 2, column: 0, value: 0 },
      { row: 0, column: 1, formula: `=IF(ISERROR(${read}),"unread","read")`, spill: 'B1:B4' },
      { row: 0, column: 2, formula: '=IF((A1:A4<>"")*(A1:A4<>0),"there","not there")', spill: 'C1:C4' },
      { row: 0, column: 3, formula: '=IF(A1:A4=0,"none","some")', spill: 'D1:D4' },
    ]),
  );
  const column = (at: number) => [0, 1, 2, 3].map((row) => cells.get(`${row},${at}`));
  // A blank cell is read as one.
  expect(column(1)).toEqual(['unread', 'read', 'read', 'read']);
  expect(column(2)).toEqual(['there', 'there', 'not there', 'not there']);
  // A blank cell is 0.
  expect(column(3)).toEqual(['some', 'some', 'none', 'none']);
});

test('formulas with anything else, and what follows from them, are left to the spreadsheet', () => {
  const left = [
    '=A1+1',
    '=SUM(A1:A2)',
    '=IF(A1>2,"","x")',
    '=IF(A1,"","x")',
    '=A1&" drums"',
    "='Silt units'!B4",
    '=SILT.UNIT.READ(SiltUnits,"dimension",B1)',
    '=SILT.UNIT.READ(C9,"dimension",1+1)',
    '=C9',
  ].map((formula, row) => ({ row, column: row === 8 ? 3 : 2, formula }));
  const circle = { row: 8, column: 2, formula: '=SILT.UNIT.READ(SiltUnits,"dimension",C9)' };
  const base = { row: 0, column: 1, formula: '=A1*2' };
  expect([...computed(oneSheet([{ row: 0, column: 0, value: 3 }, base, circle, ...left])).keys()]).toEqual([]);
});

test('the plan has only the names and typed cells that its formulas read', () => {
  const typedIn = { name: 'SiltTypedIn', refersTo: "'Silt units'!$B$4" };
  const workbook = oneSheet([
    { row: 0, column: 0, value: '22 1/2 in' },
    { row: 1, column: 0, value: 7 },
    { row: 0, column: 1, formula: '=SILT.UNIT.READ(SiltUnits,"dimension",A1)' },
    { row: 1, column: 1, formula: '=IF(SiltTypedIn=A2,"",SUM(A2))' },
  ]);
  const plan = lookPlan({ ...workbook, names: [...(named ?? []), typedIn] }, workbook.sheets[0]!, 12);
  expect(plan.names).toEqual({ SiltUnits: 'metric' });
  expect(plan.typed).toEqual([[0, 0, '22 1/2 in']]);
});
