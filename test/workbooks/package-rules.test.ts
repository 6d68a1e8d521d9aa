import { readFileSync } from 'node:fs';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { rulesBroken } from './package-rules';

const sample = new Uint8Array(readFileSync('sample-workbooks/metric/materials-sheet.xlsx'));

/** The sample with one part changed, or taken out. */
function changed(part: string, change: (xml: string) => string | undefined): Uint8Array {
  const files = unzipSync(sample);
  const after = change(strFromU8(files[part]!));
  if (after === undefined) delete files[part];
  else files[part] = strToU8(after);
  return zipSync(files);
}

describe('the check of the file format', () => {
  it('finds nothing wrong in a sample', () => {
    expect(rulesBroken(sample)).toEqual([]);
  });

  it.each([
    ['a part that is missing', 'xl/tables/table1.xml', () => undefined, /missing/],
    [
      'a call without the dynamic-array flag',
      'xl/worksheets/sheet3.xml',
      (xml: string) => xml.replace(/ cm="1"/g, ''),
      /flag/,
    ],
    [
      'a call by its typed name',
      'xl/worksheets/sheet3.xml',
      (xml: string) => xml.replace('_xldudf_SILT_PLAN_PARTS(', 'SILT.PLAN.PARTS('),
      /typed name/,
    ],
    [
      'a text that is not there',
      'xl/sharedStrings.xml',
      (xml: string) => xml.replace(/<si>.*<\/si>/s, ''),
      /no such text/,
    ],
    [
      'cells out of order',
      'xl/worksheets/sheet2.xml',
      (xml: string) => xml.replace('r="B6"', 'r="F6"'),
      /out of order/,
    ],
    [
      'elements out of order',
      'xl/worksheets/sheet2.xml',
      (xml: string) => xml.replace(/(<sheetData>.*<\/sheetData>)(<mergeCells.*<\/mergeCells>)/s, '$2$1'),
      /out of order/,
    ],
    [
      'a heading that differs from the table’s',
      'xl/tables/table1.xml',
      (xml: string) => xml.replace('name="pack size"', 'name="size"'),
      /heading/,
    ],
    [
      'a spill into the table',
      'xl/worksheets/sheet4.xml',
      (xml: string) =>
        xml
          .replace('<c r="A5"', '<c r="A5" cm="1"')
          .replace(/(<c r="A5"[^>]*?) t="s"><v>\d+<\/v>/, '$1><f t="array" ref="A5:B6">X()</f><v>1</v>'),
      /spills into the table/,
    ],
    [
      'a file that asks to be computed anew',
      'xl/workbook.xml',
      (xml: string) => xml.replace('<calcPr', '<calcPr fullCalcOnLoad="1"'),
      /computed anew/,
    ],
  ] as const)('finds %s', (_, part, change, fault) => {
    expect(rulesBroken(changed(part, change)).join('\n')).toMatch(fault);
  });
});
