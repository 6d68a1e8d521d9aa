import { OfficeMockObject } from 'office-addin-mock';
import { expect, test } from 'vitest';
import { readBlock } from '../../../src/hosts/excel/read-cells';
import { FakeExcel, FakeSheet } from './fake-excel';

/** Microsoft's own mock gives an error in place of a property that was not loaded and synced; it knows no collections. */
function mockedCells() {
  return new OfficeMockObject({
    values: [[22.5, 'in']],
    formulas: [[22.5, '=UPPER("in")']],
    valueTypes: [['Double', 'String']],
  });
}

test('cells are read only after they were loaded and synced', async () => {
  const fake = new FakeExcel(new FakeSheet('Farm'));
  fake.version = 1.11;
  fake.install();
  const cells = mockedCells();
  const sheet = { isNullObject: false, load: () => undefined, getRangeByIndexes: () => cells };
  const context = {
    workbook: { worksheets: { getItemOrNullObject: () => sheet } },
    sync: async () => cells.sync(),
  };
  expect(() => cells.values.map((line: unknown) => line)).toThrow();
  const range = { row: 4, column: 1, rows: 1, columns: 2 };
  const block = await readBlock(context as unknown as Excel.RequestContext, { sheet: 'Farm', range });
  expect([block.values, block.formulas]).toEqual([[[22.5, 'in']], [[undefined, '=UPPER("in")']]]);
});
