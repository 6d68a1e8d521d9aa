import { expect, test } from 'vitest';
import type { WorkbookData } from '../../../src/hosts/workbook-model';
import { freeName } from '../../../src/task-pane/sheets/free-name';
import { renamed } from '../../../src/task-pane/sheets/rename';

const names = {
  sheets: new Map([
    ['Drums', 'Drums 2'],
    ['Base mix', "Fern's mix"],
  ]),
  names: new Map([
    ['PullLog', 'PullLog2'],
    ['SiltUnits', 'SiltUnits2'],
  ]),
};

function formulaAfter(formula: string): string {
  return renamed({ sheets: [{ name: 'X', cells: [{ row: 0, column: 0, formula }] }] }, names).sheets[0]!.cells[0]!
    .formula!;
}

test.each([
  ['=Drums!A1', "='Drums 2'!A1"],
  ["='Base mix'!$B$5:$B$12", "='Fern''s mix'!$B$5:$B$12"],
  ['=drums!A1+A1', "='Drums 2'!A1+A1"],
  ['=Other!A1', '=Other!A1'],
  ["='Other sheet'!A1", "='Other sheet'!A1"],
  ['="Drums!A1"&Drums!B2', '="Drums!A1"&\'Drums 2\'!B2'],
  ['=SUM(PullLog[Liters])', '=SUM(PullLog2[Liters])'],
  ['=SILT.UNIT.LABEL(SiltUnits,"dimension")', '=SILT.UNIT.LABEL(SiltUnits2,"dimension")'],
  [
    '=LET(used,Drums!A5:A12<>"",FILTER(Drums!B5:B12,used))',
    "=LET(used,'Drums 2'!A5:A12<>\"\",FILTER('Drums 2'!B5:B12,used))",
  ],
])('%s becomes %s', (formula, expected) => {
  expect(formulaAfter(formula)).toBe(expected);
});

test('lists of choices, conditions, charts, names, tables and the open sheet use the new names', () => {
  const workbook: WorkbookData = {
    sheets: [
      {
        name: 'Drums',
        cells: [{ row: 0, column: 0, value: 'Drums!A1' }],
        validations: [
          { range: 'A1', type: 'list', formulas: ['Drums!$A$5:$A$12'] },
          { range: 'B1', type: 'list', formulas: ['"a,Drums"'] },
        ],
        conditions: [{ range: 'A1', formula: "='Base mix'!$A$1<>Drums!$A$1", style: {} }],
        charts: [
          {
            type: 'line',
            title: 'Drums',
            place: 'A1:C9',
            valueTitle: "'Base mix'!$B$4",
            series: [{ name: 'Drums!$A$1', values: 'Drums!$B$5:$B$9', categories: "'Base mix'!$A$5:$A$9" }],
          },
        ],
        tables: [{ name: 'PullLog', range: 'A4:D9' }],
      },
    ],
    names: [{ name: 'SiltUnits', refersTo: 'Drums!$B$4' }],
    activeSheet: 'Drums',
  };
  const after = renamed(workbook, names);
  const [sheet] = after.sheets;
  expect(sheet!.name).toBe('Drums 2');
  expect(sheet!.cells[0]!.value).toBe('Drums!A1');
  expect(sheet!.validations!.map(({ formulas }) => formulas[0])).toEqual(["'Drums 2'!$A$5:$A$12", '"a,Drums"']);
  expect(sheet!.conditions![0]!.formula).toBe("='Fern''s mix'!$A$1<>'Drums 2'!$A$1");
  expect(sheet!.charts![0]!.series[0]).toEqual({
    name: "'Drums 2'!$A$1",
    values: "'Drums 2'!$B$5:$B$9",
    categories: "'Fern''s mix'!$A$5:$A$9",
  });
  expect(sheet!.charts![0]).toMatchObject({ title: 'Drums', valueTitle: "'Fern''s mix'!$B$4" });
  expect(sheet!.tables![0]!.name).toBe('PullLog2');
  expect(after.names).toEqual([{ name: 'SiltUnits2', refersTo: "'Drums 2'!$B$4" }]);
  expect(after.activeSheet).toBe('Drums 2');
});

test('a free sheet name has no more than the 31 letters that Excel takes', () => {
  expect(freeName('Start', ['start', 'START 2', 'Drums'])).toBe('Start 3');
  const long = 'A sheet with a name of 31 lette';
  expect(freeName(long, [long])).toBe('A sheet with a name of 31 let 2');
});
