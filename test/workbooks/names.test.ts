import { expect, test } from 'vitest';
import { sourceFunctions } from '../../src/hosts/univer/source-functions';
import type { WorkbookData } from '../../src/hosts/workbook-model';
import { calculateWorkbook } from '../../src/workbooks/calculate';
import { readWorkbook } from '../../src/workbooks/read-xlsx';
import { writeWorkbook } from '../../src/workbooks/write-xlsx';
import { openPackage } from './package-parts';

/** An apostrophe is doubled inside a quoted sheet name, as ECMA-376 part 1, 18.17.2.3 has it. */
const names = [
  { name: 'total', refersTo: "'Oma''s drums'!$A$1" },
  { name: 'list', refersTo: "'Oma''s drums'!$A$1:$A$2" },
  { name: 'twice', refersTo: "2*'Oma''s drums'!$A$1" },
  { name: 'plain', refersTo: 'Plain!$B$1' },
];

const workbook: WorkbookData = {
  sheets: [
    {
      name: "Oma's drums",
      cells: [
        { row: 0, column: 0, value: 3 },
        { row: 1, column: 0, value: 4 },
      ],
    },
    { name: 'Plain', cells: [{ row: 0, column: 0, formula: '=total+SUM(list)+twice' }] },
  ],
  names,
};

test('names are written and read as they are, of a sheet with an apostrophe in its name and of a calculation', async () => {
  const bytes = await writeWorkbook(workbook);
  const list = openPackage(bytes)
    .xml('xl/workbook.xml')
    ?.children.find(({ name }) => name === 'definedNames');
  expect(list?.children.map(({ text }) => text)).toEqual(names.map(({ refersTo }) => refersTo));
  const read = await readWorkbook(bytes);
  expect(read.names).toEqual(names);
  const { sheets } = await calculateWorkbook(await sourceFunctions(), read);
  expect(sheets[1]?.cells[0]?.value).toBe(3 + (3 + 4) + 2 * 3);
});
