import type { SheetData } from '../../workbook-model';
import { columnWidths, framed, print, withUnit } from '../frame';
import type { ReadyProfile } from '../sheet-draft';
import { formats, formatted } from '../styles';
import { testColumn } from './tests';

/** Scenario input, where it comes from, and the cell formula over the book of tests. */
const inputs = [
  ['temperature', 'mean of the tests', `=AVERAGE(${testColumn('temperature')})`, 'temperature'],
  ['coldest water', 'least of the tests', `=MIN(${testColumn('temperature')})`, 'temperature'],
  ['hottest water', 'most of the tests', `=MAX(${testColumn('temperature')})`, 'temperature'],
  ['pH', 'mean of the tests', `=AVERAGE(${testColumn('pH')})`, undefined],
  ['highest pH', 'most of the tests', `=MAX(${testColumn('pH')})`, undefined],
] as const;

/** What the book says of the farm's own water, in the words of a scenario. */
export function forScenarioSheet(profile: ReadyProfile): SheetData {
  const widths = [24, 16, 30, 30];
  const draft = framed({
    name: 'For a scenario',
    title: 'Your own water, for a scenario',
    step: 'No input needed. Copy the first two columns into a scenario. Tests by day miss the coldest and the hottest hour: where you know them, type those. The workbook Own figures takes the filter’s own readings.',
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
