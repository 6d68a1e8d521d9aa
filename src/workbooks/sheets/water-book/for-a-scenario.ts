import type { SheetData } from '../../../hosts/workbook-model';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { type Reading, testColumn } from './tests';

/** The figure of all tests; text may be the highest reading of all, so that none is taken from the others. */
function ofNumbers(reading: Reading, rule: 'AVERAGE' | 'MIN' | 'MAX'): string {
  const typed = testColumn(reading);
  const figure = `${rule}(${typed})`;
  const inUnit = reading === 'pH' ? figure : `SILT.UNIT.READ(SiltUnits,"${reading}",${figure})`;
  return `=IF(SUMPRODUCT(ISTEXT(${typed})*1)>0,"a test is text",${inUnit})`;
}

/** Scenario input, where it comes from, and its formula over the sheet Tests. */
const inputs = [
  ['temperature', 'mean of the tests', ofNumbers('temperature', 'AVERAGE'), 'temperature'],
  ['coldest water', 'lowest of the tests', ofNumbers('temperature', 'MIN'), 'temperature'],
  ['hottest water', 'highest of the tests', ofNumbers('temperature', 'MAX'), 'temperature'],
  ['pH', 'mean of the tests', ofNumbers('pH', 'AVERAGE'), undefined],
  ['highest pH', 'highest of the tests', ofNumbers('pH', 'MAX'), undefined],
] as const;

/** The farm's own water from the tests, named as scenario inputs. */
export function forScenarioSheet(profile: ReadyProfile): SheetData {
  const widths = [24, 16, 30, 30];
  const draft = framed({
    name: 'For a scenario',
    title: 'Your own water, for a scenario',
    step: 'No input needed on this sheet. Copy the first two columns into a scenario. Daytime tests miss the coldest and the hottest hours: if you know those, type them instead. For readings of the filter, use the workbook Own figures.',
    widths,
  });
  draft.across('A4', ['input', 'own water', 'where from', 'unit'], 'heading');
  inputs.forEach(([name, from, formula, kind], index) => {
    const row = 5 + index;
    draft
      .put(`A${row}`, name, 'result')
      .put(`B${row}`, formula, formatted('total', formats.one))
      .put(`C${row}`, from, 'note')
      .put(`D${row}`, kind === undefined ? '' : withUnit('in the unit of this book', kind), 'note');
  });
  return draft.sheet({
    columnWidths: columnWidths(widths),
    frozenRows: 4,
    tabColor: '1F7A8C',
    print: print(profile, `A1:D${4 + inputs.length}`, { fitToHeight: 1 }),
  });
}
